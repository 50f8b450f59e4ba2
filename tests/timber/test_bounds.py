"""The bound: never above what a cutting costs, and named boards that hold what is needed."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from plantframe.timber.bounds import Boards, Named, groups, worth
from plantframe.timber.longest_first import longest_first
from plantframe.timber.sawing import Sawing, Stock, Wanted

LISTS = st.lists(st.tuples(st.integers(5, 48), st.integers(1, 4)), min_size=1, max_size=4)


@given(LISTS, st.lists(st.floats(0, 50), min_size=4, max_size=4))
def test_whatever_pieces_are_held_to_be_worth_the_bound_stays_below_any_cutting(
    pieces, worths
) -> None:
    stocks = (Stock(48, 30), Stock(72, 44), Stock(50, 0, 2))
    sawing = Sawing(tuple(Wanted(size, count) for size, count in pieces), stocks, 1)
    boards = Boards(sawing)
    boards.hold(worth(sawing, worths[: len(pieces)]))
    named = boards.least([stock.cost for stock in stocks])
    plan = longest_first(sawing)
    assert named is not None
    assert plan is not None
    assert named.bound <= plan.cost(sawing)


def test_lengths_themselves_as_worths_ask_for_the_length_that_is_wanted() -> None:
    # by hand: 5 x 60 = 300 from sticks that hold 100 (no cuts): 3 boards at the least
    sawing = Sawing((Wanted(60, 5),), (Stock(100, 7),), 0)
    boards = Boards(sawing)
    assert boards.hold(worth(sawing, [60.0]))
    # a stick holds one piece of 60 only, so five boards
    assert boards.least([7]) == Named((5,), 35)


def test_worthless_pieces_ask_for_nothing() -> None:
    sawing = Sawing((Wanted(60, 5),), (Stock(100, 7),), 0)
    boards = Boards(sawing)
    assert not boards.hold(worth(sawing, [0.0]))
    assert boards.least([7]) == Named((0,), 0)


def test_a_limit_holds_until_it_is_taken_back() -> None:
    sawing = Sawing((Wanted(60, 4),), (Stock(100, 7),), 0)
    boards = Boards(sawing)
    mark = boards.mark()
    boards.limit([7], 20.0, 100.0)
    assert boards.least([7]) == Named((3,), 21)
    boards.back_to(mark)
    assert boards.least([7]) == Named((0,), 0)


def test_boards_that_take_the_same_pieces_are_measured_together() -> None:
    stocks = (Stock(100, 1), Stock(80, 1, fits=frozenset({0})), Stock(90, 1))
    sawing = Sawing((Wanted(70, 1), Wanted(30, 1)), stocks, 0)
    assert groups(sawing) == {(0, 1): [0, 2], (0,): [1]}


def test_boards_too_short_for_a_length_are_of_its_group_and_hold_none_of_it() -> None:
    sawing = Sawing((Wanted(70, 1), Wanted(30, 1)), (Stock(100, 1), Stock(50, 1)), 0)
    assert groups(sawing) == {(0, 1): [0, 1]}
    measured = worth(sawing, [64.0, 32.0])
    # one of each in the long one, the lesser alone in the short one
    assert measured.held[1] * 3 == measured.held[0]
    assert measured.holds(sawing, [1, 0]) == measured.need


def test_a_bound_is_a_sum_that_prices_can_make() -> None:
    # by hand: 7 pieces of 60, one to a stick of 35 or two to one of 65: 3 x 65 + 35 = 230
    sawing = Sawing((Wanted(60, 7),), (Stock(100, 35), Stock(120, 65)), 0)
    boards = Boards(sawing)
    assert boards.hold(worth(sawing, [60.0]))
    assert boards.least([35, 65]) == Named((1, 3), 230)


def test_boards_that_were_excluded_are_named_no_more_nor_are_fewer_of_them() -> None:
    sawing = Sawing((Wanted(60, 4),), (Stock(100, 7), Stock(120, 13)), 0)
    boards = Boards(sawing)
    assert boards.hold(worth(sawing, [60.0]))
    assert boards.least([7, 13]) == Named((0, 2), 26)
    boards.exclude([0, 2])
    # one of 7 more than none, or a third of 13
    assert boards.least([7, 13]) == Named((2, 1), 27)


def test_ample_boards_hold_most_by_the_measure_that_is_least_kind() -> None:
    sawing = Sawing((Wanted(60, 2), Wanted(40, 2)), (Stock(100, 10), Stock(60, 10)), 0)
    boards = Boards(sawing)
    assert boards.hold(worth(sawing, [60.0, 40.0]))
    assert boards.hold(worth(sawing, [1.0, 0.0]))
    # 30 buys three: only three long ones hold half as much again as is needed, in length and in
    # pieces of 60; a short one in their place holds less length
    assert boards.ample([10, 10], 30) == (3, 0)
    assert boards.ample([10, 10], 10) is None


def test_the_most_that_boards_of_a_cost_hold_counts_old_ones_too() -> None:
    sawing = Sawing((Wanted(50, 9),), (Stock(100, 10), Stock(60, 0, 2)), 0)
    boards = Boards(sawing)
    measured = worth(sawing, [50.0])
    one = measured.worths[0]
    # by hand: 25 buys two of two pieces each, and two old ones give one each
    most = boards.most(measured, [10, 0], 25)
    assert most is not None
    assert 6 * one <= most < 6 * one * 1.00001
