"""What advice never does: vouch for a thing, or offer what makes matters worse.

Common practice, no source: no third of the post in the ground for what comes down each autumn, no
preserved wood as a better one beside food, no wire for a bar, no stake for all that is tall.
"""

from __future__ import annotations

import re

import pytest

from plantframe.advice.engine import rules
from plantframe.answers.answers import answers_to
from plantframe.season.units import Shown
from tests.advice.cases import TODAY, cases_of

MOST = 99
VOUCHES = re.compile(r"\b(safe|safely|passes|approved|certified|guaranteed?)\b", re.IGNORECASE)
PRESERVED = re.compile(r"\b(treated|creosot\w*|tarred|preservative)\b", re.IGNORECASE)
PLAN = """\
garden Must Not, 2027
  place 52 N, 1 W
  lines marked 2 March
bed Long Bed, 1.2 m x 6 m
frame Bean Net, net frame, in Long Bed
  bays 2 of 2 m
  posts 45x45 mm, {length}, {down} down
  bar 45x45 mm
  grow pole bean, 24 plants, sow 20 May
"""
TALL = """\
garden Must Not, 2027
  place 52 N, 1 W
border Back Border, 1 m x 6 m
  grow {plant}, 3 plants
"""


@pytest.mark.parametrize("rule", rules(), ids=lambda rule: rule.name)
def test_no_warning_vouches_for_anything(rule) -> None:
    for case in cases_of(rule):
        for one in case.answers().report.found:
            for shown in (Shown(imperial=False), Shown(imperial=True)):
                said = " ".join((*one.words(shown).__dict__.values(), *one.finding.ways))
                assert not VOUCHES.search(said), said


@pytest.mark.parametrize("rule", rules(), ids=lambda rule: rule.name)
def test_no_offer_brings_in_preserved_wood_or_a_wire_for_a_bar(rule) -> None:
    for case in cases_of(rule):
        for one in case.answers().report.found:
            for edit in one.candidates(MOST):
                new = " ".join(change.new or "" for change in edit.changes)
                old = " ".join(change.old or "" for change in edit.changes)
                assert not PRESERVED.search(new) or PRESERVED.search(old), new
                bar_goes = re.search(r"\bbar\b", old) and not re.search(r"\bbar\b", new)
                assert not (bar_goes and re.search(r"\bwires?\b", new)), new


@pytest.mark.parametrize(("length", "down"), [("2.4 m", "45 cm"), ("1.8 m", "40 cm")])
def test_what_comes_down_each_autumn_is_not_asked_for_a_third_of_its_post(
    length: str, down: str
) -> None:
    names = {
        one.rule.name
        for one in answers_to(PLAN.format(length=length, down=down), TODAY).report.found
    }
    assert not {"too-shallow-permanent", "too-shallow-seasonal"} & names


@pytest.mark.parametrize("plant", ["delphinium", "sunflower", "Culver's root", "sweet corn"])
def test_nobody_is_told_to_stake_what_is_only_tall(plant: str) -> None:
    found = answers_to(TALL.format(plant=plant), TODAY).report.found
    assert [one.rule.name for one in found] == []
