"""Pieces that a frame needs, and lengths that saw cuts make too short."""

from __future__ import annotations

from datetime import date

import pytest

from plantframe.advice.stock import lost_to_kerf, needed
from plantframe.answers.answers import answers_to

PLAN = """\
garden Fold End, 2027
  place 52 N, 1 W
  timber actual
  lines marked 2 March
bed East Bed, 1.2 m x 12 m
frame Pea Net, net frame, in East Bed
  bays 2 of 2.4 m
  posts 50x50 mm, 2.5 m, 50 cm down
  bar 38x89 mm, on edge
  piece sill, 25x100 mm, 1.2 m
  grow tall pea, 60 plants
"""


def test_each_piece_is_told_thin_side_first_and_one_where_no_count_is_written() -> None:
    frame = answers_to(PLAN, date(2026, 11, 25)).season.frames["Pea Net"]
    found = {one.part: one for one in needed(frame)}
    sides = {part: one.sides_m for part, one in found.items()}
    assert sides["piece"] == pytest.approx((0.025, 0.1))
    assert sides["bar"] == pytest.approx((0.038, 0.089))
    assert {part: one.count for part, one in found.items()} == {"piece": 1, "bar": 2, "post": 3}
    assert [part for part, one in found.items() if not one.said] == ["bar"]


def test_four_pieces_of_sixty_do_not_come_out_of_two_forty_for_the_saw() -> None:
    # three cuts of 3 mm: 4 x 0.6 m + 9 mm is more than 2.4 m
    assert lost_to_kerf((2.4,), 0.6, 4, 0.003) == (2.4, 4)


def test_a_length_too_short_for_two_does_not_hide_a_longer_one() -> None:
    assert lost_to_kerf((1.0, 2.4), 0.6, 4, 0.003) == (2.4, 4)


def test_another_length_that_gives_them_leaves_nothing_to_say() -> None:
    assert lost_to_kerf((2.4, 3.0), 0.6, 4, 0.003) is None
