"""What a cold frame weighs, against a sum by hand."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

import pytest

from plantframe.answers.answers import answers_to
from plantframe.season.weights import box_kg, wood_named

if TYPE_CHECKING:
    from plantframe.mechanics.ranges import Range

PLAN = """garden Barn End, 2027
  place 52 N, 1 W
cover Seed Box, cold frame
  size 2438 mm x 1219 mm, low side south
  back 38x286 mm{wood}
  front 38x184 mm
  lights 4 of 600 mm, glass
  strips 38x38 mm
  brace 38x89 mm
frame Pea Net, net frame
  bays 2 of 2.4 m
"""


def _box(wood: str = "") -> Range:
    answers = answers_to(PLAN.format(wood=wood), date(2026, 11, 25))
    weight = box_kg(answers.season.frames["Seed Box"])
    assert weight is not None
    return weight


def _by_hand_m3() -> float:
    """Back, front, two sloping ends of their mean height, strips all round, one brace."""
    inside = 1.219 - 2 * 0.038
    back, front = 2.438 * 0.286 * 0.038, 2.438 * 0.184 * 0.038
    ends = 2 * inside * (0.286 + 0.184) / 2 * 0.038
    strips = (2 * 2.438 + 2 * inside) * 0.038 * 0.038
    return back + front + ends + strips + 1.219 * 0.038 * 0.089


def test_an_eight_foot_box_of_dry_pine_weighs_34_to_44_kg() -> None:
    # the two figures are a sum by hand at 430 and 560 kg a cubic metre
    weight = _box()
    assert weight.low == pytest.approx(34, abs=0.5)
    assert weight.high == pytest.approx(44, abs=0.5)


def test_the_volume_is_that_of_its_boards() -> None:
    assert _box().low / 430 == pytest.approx(_by_hand_m3(), rel=0.005)


def test_a_box_of_cedar_is_lighter() -> None:
    assert _box(", cedar").middle < _box().middle


def test_a_net_frame_is_no_box() -> None:
    answers = answers_to(PLAN.format(wood=""), date(2026, 11, 25))
    assert box_kg(answers.season.frames["Pea Net"]) is None


def test_an_unknown_wood_counts_as_ordinary_softwood() -> None:
    assert wood_named("driftwood") == wood_named("softwood")
