"""The saw's own sums: cuts, rests, and a recount that finds what is wrong."""

from __future__ import annotations

import pytest

from plantframe.timber.sawing import Pattern, Plan, Sawing, Stock, Wanted, faults, whole_plan

INCH = 16  # sixteenths


def test_two_pieces_of_48_in_and_one_cut_want_96_and_an_eighth() -> None:
    # by hand: 48 + 1/8 + 48
    for board, fits in ((96 * INCH, False), (96 * INCH + 2, True)):
        sawing = Sawing((Wanted(48 * INCH, 2),), (Stock(board, 1),), 2)
        assert sawing.fits(sawing.stocks[0], (2,)) is fits


def test_a_board_as_long_as_its_piece_needs_no_cut() -> None:
    sawing = Sawing((Wanted(2400, 1),), (Stock(2400, 1),), 3)
    assert sawing.fits(sawing.stocks[0], (1,))
    assert sawing.left(sawing.stocks[0], (1,)) == 0


def test_pieces_cuts_and_rest_add_up_to_the_board() -> None:
    # by hand: 3 x 600 and 3 cuts of 3 from 2400 leave 591
    sawing = Sawing((Wanted(600, 3),), (Stock(2400, 1),), 3)
    assert sawing.left(sawing.stocks[0], (3,)) == 591


def test_a_rest_thinner_than_the_cut_goes_to_dust() -> None:
    sawing = Sawing((Wanted(2398, 1),), (Stock(2400, 1),), 3)
    assert sawing.left(sawing.stocks[0], (1,)) == 0


def test_a_board_that_is_not_sawn_stays_whole() -> None:
    sawing = Sawing((Wanted(600, 1),), (Stock(2400, 1),), 3)
    assert sawing.left(sawing.stocks[0], (0,)) == 2400


def test_half_a_ripped_board_left_over_stays_on_the_list() -> None:
    sawing = Sawing((Wanted(2400, 1),), (Stock(2400, 5, None, 2),), 3)
    plan = whole_plan(sawing, [Pattern(0, (1,))])
    assert plan.boards == (1,)
    assert [stick.counts for stick in plan.sticks] == [(1,), (0,)]
    assert plan.cost(sawing) == 5


@pytest.mark.parametrize(
    ("sticks", "boards", "says"),
    [
        ([(0, (1,))], (1, 0), "1 pieces of 600, 2 wanted"),
        ([(0, (2,))], (1, 0), "do not fit"),
        ([(1, (2,))], (0, 2), "1 sticks from 2 boards"),
        ([(1, (1,)), (1, (1,))], (0, 2), "2 boards of old, 1 there"),
    ],
)
def test_a_recount_finds_what_is_wrong(sticks, boards, says) -> None:
    sawing = Sawing((Wanted(600, 2),), (Stock(1000, 1), Stock(1300, 0, 1, 1, "old")), 3)
    plan = Plan(tuple(Pattern(*stick) for stick in sticks), boards)
    assert any(says in one for one in faults(sawing, plan))


def test_a_recount_of_a_right_plan_finds_nothing() -> None:
    sawing = Sawing((Wanted(600, 2),), (Stock(1203, 1),), 3)
    assert faults(sawing, Plan((Pattern(0, (2,)),), (1,))) == []
