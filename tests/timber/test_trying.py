"""Trying sets of boards: a first look, a closer one, and no more than the purse allows."""

from __future__ import annotations

from plantframe.timber.bounds import Named
from plantframe.timber.deciding import missing
from plantframe.timber.patterns import Patterns
from plantframe.timber.sawing import Pattern, Sawing, Stock, Wanted
from plantframe.timber.trying import Trials
from tests.timber.test_solver import big

# by hand: a stick of 100 takes 60 and 40, or two of 50; never 60 with 50
SAWING = Sawing((Wanted(60, 2), Wanted(50, 2), Wanted(40, 2)), (Stock(100, 7),), 0)


def trials() -> tuple[Trials, list[Pattern]]:
    return of(SAWING, 3)


def of(sawing: Sawing, number: int) -> tuple[Trials, list[Pattern]]:
    """Trials with ways known by which so many sticks would do, were they cut in fractions."""
    kept: list[Pattern] = []
    patterns = Patterns(sawing)
    assert missing(sawing, patterns, [number]) is None
    return Trials(sawing, patterns, kept.extend), kept


def test_boards_that_give_the_pieces_do_so_at_a_first_look() -> None:
    tried, kept = trials()
    assert tried.gives(Named((3,), 21))
    assert {stick.counts for stick in kept} == {(1, 0, 1), (0, 2, 0)}
    assert not tried.open


def test_boards_that_hold_enough_by_every_measure_and_yet_do_not_do_are_told() -> None:
    sawing = big(31, priced=True)
    numbers = (0, 0, 0, 7, 53, 0, 3, 2, 2, 3, 3, 2, 2, 1, 3, 3)
    patterns = Patterns(sawing)
    assert missing(sawing, patterns, numbers) is None
    kept: list[Pattern] = []
    tried = Trials(sawing, patterns, kept.extend)
    assert not tried.gives(Named(numbers, 62320))
    assert not tried.open
    # one board more does
    assert tried.likely(Named((1, *numbers[1:]), 0))
    made = [sum(stick.counts[place] for stick in kept) for place in range(len(sawing.wanted))]
    assert all(count >= one.count for count, one in zip(made, sawing.wanted, strict=True))


def test_with_an_empty_purse_no_dive_is_made_but_the_search_still_tells() -> None:
    tried, kept = trials()
    tried.purse = 0
    assert tried.gives(Named((3,), 21))
    assert {stick.counts for stick in kept} == {(1, 0, 1), (0, 2, 0)}
    assert tried.purse == 0


def test_a_dive_is_paid_from_the_purse() -> None:
    tried, _ = trials()
    full = tried.purse
    tried.gives(Named((3,), 21))
    assert tried.purse < full


def test_dearer_boards_are_tried_whatever_the_purse_says() -> None:
    tried, kept = trials()
    tried.purse = 0
    tried.gives(Named((3,), 21))
    kept.clear()
    assert tried.likely(Named((4,), 28))
    assert kept
