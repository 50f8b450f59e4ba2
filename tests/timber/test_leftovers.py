"""What is left, and what is of most use."""

from __future__ import annotations

import pytest

from plantframe.timber.leftovers import trimmed, useful, usefulness
from plantframe.timber.sawing import Pattern, Plan, Sawing, Stock, Wanted, faults

SAWING = Sawing((Wanted(600, 3),), (Stock(2400, 460), Stock(2000, 0, 1)), 3)


def test_one_long_rest_is_of_more_use_than_two_of_half_its_length() -> None:
    stock = SAWING.stocks[0]
    assert usefulness(SAWING, stock, 1200) > 2 * usefulness(SAWING, stock, 600)


def test_kindling_is_of_no_use() -> None:
    assert usefulness(SAWING, SAWING.stocks[0], 200) == 0


def test_an_old_board_left_alone_counts_whole() -> None:
    plan = Plan((Pattern(0, (3,)),), (1, 0))
    bought = usefulness(SAWING, SAWING.stocks[0], 591)
    assert useful(SAWING, plan) == pytest.approx(
        bought + usefulness(SAWING, SAWING.stocks[1], 2000)
    )


def test_pieces_too_many_are_taken_off_where_a_board_is_saved() -> None:
    plan = trimmed(SAWING, Plan((Pattern(0, (3,)), Pattern(0, (1,))), (2, 0)))
    assert plan.boards == (1, 0)
    assert faults(SAWING, plan) == []
