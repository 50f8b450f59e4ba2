"""Sawing the longest piece first, as one would without a list."""

from __future__ import annotations

from plantframe.timber.longest_first import longest_first
from plantframe.timber.sawing import Sawing, Stock, Wanted, faults


def test_an_old_board_is_begun_before_one_is_bought() -> None:
    sawing = Sawing((Wanted(1500, 2),), (Stock(2400, 460), Stock(1800, 0, 1)), 3)
    plan = longest_first(sawing)
    assert plan is not None
    assert faults(sawing, plan) == []
    assert plan.boards == (1, 1)


def test_a_short_piece_goes_on_a_board_already_begun() -> None:
    sawing = Sawing((Wanted(600, 1), Wanted(1700, 1)), (Stock(2400, 460),), 3)
    plan = longest_first(sawing)
    assert plan is not None
    assert plan.boards == (1,)


def test_of_two_habits_of_buying_the_cheaper_is_taken() -> None:
    # cheapest board it fits in: 2 x 480; cheapest for its length: one of 3600 at 900
    sawing = Sawing((Wanted(1750, 2),), (Stock(1800, 480), Stock(3600, 900)), 3)
    plan = longest_first(sawing)
    assert plan is not None
    assert plan.cost(sawing) == 900


def test_a_piece_longer_than_every_board_has_no_place() -> None:
    assert longest_first(Sawing((Wanted(2500, 1),), (Stock(2400, 1),), 3)) is None


def test_a_pool_of_boards_is_used_up_once_whole_or_ripped() -> None:
    stocks = (Stock(1800, 0, 1, 1, "old"), Stock(1800, 0, 1, 2, "old"), Stock(1800, 480))
    plan = longest_first(Sawing((Wanted(1800, 3),), stocks, 3))
    assert plan is not None
    assert plan.boards[0] + plan.boards[1] == 1
