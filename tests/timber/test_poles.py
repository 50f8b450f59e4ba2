"""Poles: one in ten to spare, old ones first, and a hand for a gauge."""

from __future__ import annotations

import pytest

from plantframe.timber.poles import hand
from tests.timber.gardens import buying, line

WIGWAM = "frame Wigwam, wigwam\n  poles 8 of 20 mm round, 2.4 m, 25 cm down\n"
FENCE = """fence Rose Fence, mortised fence
  posts 5 of 4 in round, 6 ft, 24 in down
  rails 8 of 3 in round, 9 ft 6 in
  bays 4 of 9 ft
"""


def test_eight_canes_are_bought_with_one_to_spare() -> None:
    # common practice: one in ten
    found = line(WIGWAM, "canes")
    assert (found.count, found.spare) == (9, 1)


def test_canes_in_the_shed_are_taken_first() -> None:
    found = line(WIGWAM + "shed\n  6 canes 20 mm round, 2.4 m\n", "canes")
    assert (found.count, found.from_shed) == (3, 6)


def test_a_cane_that_is_too_short_or_too_thin_is_left_where_it_is() -> None:
    text = WIGWAM + "shed\n  6 canes 20 mm round, 1.5 m\n  6 canes 10 mm round, 2.4 m\n"
    found = buying(text)
    assert line(text, "canes").from_shed == 0
    assert sum(count for _, count in found.idle) == 12


def test_fence_poles_are_cut_in_the_wood() -> None:
    found = buying(FENCE)
    assert [(one.count, one.hand) for one in found.to_cut] == [(9, "a forearm"), (6, "a fist")]
    assert not any("pole" in one.what for one in found.lines)


def test_poles_the_yard_sells_are_bought_there() -> None:
    found = line(FENCE + "yard\n  100 mm round poles, 1.83 m, at 6.00\n", "round poles, 4 in")
    assert (found.count, found.cost) == (6, 36.0)


@pytest.mark.parametrize(
    ("thick_m", "like"),
    # common practice, no source; hands differ
    [(0.012, "a finger"), (0.022, "a thumb"), (0.06, "a wrist"), (0.1, "a fist"), (0.3, "a calf")],
)
def test_a_thickness_is_told_by_hand(thick_m: float, like: str) -> None:
    assert hand(thick_m) == like


def test_short_pieces_come_from_the_tops_of_long_poles() -> None:
    found = buying("fence Old Fence, paired-pole fence\n  bays 2 of 2.4 m\n")
    assert any(one.stubs and one.length_m < 0.6 for one in found.to_cut)
