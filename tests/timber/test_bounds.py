"""The bound: never above what a cutting costs, and named boards that hold what is needed."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from plantframe.timber.bounds import Boards, groups, worth
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
    assert named[1] <= plan.cost(sawing)


def test_lengths_themselves_as_worths_ask_for_the_length_that_is_wanted() -> None:
    # by hand: 5 x 60 = 300 from sticks that hold 100 (no cuts): 3 boards at the least
    sawing = Sawing((Wanted(60, 5),), (Stock(100, 7),), 0)
    boards = Boards(sawing)
    assert boards.hold(worth(sawing, [60.0]))
    # a stick holds one piece of 60 only, so five boards
    assert boards.least([7]) == ((5,), 35)


def test_worthless_pieces_ask_for_nothing() -> None:
    sawing = Sawing((Wanted(60, 5),), (Stock(100, 7),), 0)
    boards = Boards(sawing)
    assert not boards.hold(worth(sawing, [0.0]))
    assert boards.least([7]) == ((0,), 0)


def test_a_limit_holds_until_it_is_taken_back() -> None:
    sawing = Sawing((Wanted(60, 1),), (Stock(100, 7),), 0)
    boards = Boards(sawing)
    mark = boards.mark()
    boards.limit([7], 20.0, 100.0)
    assert boards.least([7]) == ((3,), 21)
    boards.back_to(mark)
    assert boards.least([7]) == ((0,), 0)


def test_boards_that_take_the_same_pieces_are_measured_together() -> None:
    stocks = (Stock(100, 1), Stock(80, 1, fits=frozenset({0})), Stock(90, 1))
    sawing = Sawing((Wanted(70, 1), Wanted(30, 1)), stocks, 0)
    assert groups(sawing) == {(0, 1): [0, 2], (0,): [1]}
