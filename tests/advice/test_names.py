"""A rule's name reads after `ok`, and is understood without its apostrophe too."""

from __future__ import annotations

import re
from datetime import date

import pytest

from plantframe.advice.engine import rule_named, rules
from plantframe.answers.answers import answers_to

PLAN = """\
garden Fold End, 2027
  place 52 N, 1 W
wall House Wall, faces south, shingles
frame Blue Lattice, hinged lattice, on House Wall
  size 2.4 m x 1.8 m
  hinges at the foot, 30 cm up
  hooks 15 cm
  built 2025
  grow climbing rose, 1 plant
  ok {name} because "it is folded once and cut back then", 2 March
"""


@pytest.mark.parametrize("name", ["won't-fold", "wont-fold", "won\u2019t-fold"])
def test_a_warning_is_set_aside_with_its_apostrophe_or_without(name: str) -> None:
    answers = answers_to(PLAN.format(name=name), date(2026, 11, 25))
    assert [aside.found.rule.name for aside in answers.advice.aside] == ["won't-fold"]
    assert answers.advice.mistakes == ()


def test_no_two_rules_share_a_name_and_each_is_found_by_it() -> None:
    names = [rule.name for rule in rules()]
    assert len(set(names)) == len(names)
    assert [rule_named(name) for name in names] == list(rules())


@pytest.mark.parametrize("rule", rules(), ids=lambda rule: rule.name)
def test_a_rules_name_is_small_words_with_hyphens(rule) -> None:
    assert re.fullmatch(r"[a-z']+(-[a-z']+)*", rule.name)
    assert rule.summary
    assert rule.summary[0].islower() or rule.summary[0].isdigit()
    assert not rule.summary.endswith(".")
