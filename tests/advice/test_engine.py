"""What was looked at and found in order, apart from what spoke and what had nothing to look at."""

from __future__ import annotations

from datetime import date

from plantframe.advice.engine import rules
from plantframe.answers.answers import answers_to

TODAY = date(2026, 11, 25)
BED_ALONE = """garden Fold End, 2027
  place 52 N, 1 W
bed East Bed, 2.9 m x 6 m
"""


def test_a_rule_is_fine_only_where_it_had_something_to_look_at() -> None:
    fine = set(answers_to(BED_ALONE, TODAY).report.fine)
    looks_at = {rule.name: rule.looks_at for rule in rules()}
    assert fine
    assert not {name for name in fine if looks_at[name] in {"frame", "planting"}}


def test_a_rule_that_spoke_is_not_fine_as_well() -> None:
    report = answers_to(BED_ALONE + "  grow lettuce, 10 plants\n", TODAY).report
    spoke = {one.rule.name for one in report.found}
    assert "too-wide-to-reach" in spoke
    assert not spoke & set(report.fine)
