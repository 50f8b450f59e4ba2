"""Filling one stick: against trying everything."""

from __future__ import annotations

from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.timber.filling import Filling, TooMany, fillings
from plantframe.timber.sawing import Sawing, Stock, Wanted

PIECES = st.lists(
    st.tuples(st.integers(3, 40), st.integers(1, 4), st.integers(0, 30)), min_size=1, max_size=4
)


def everything(sawing: Sawing, length: int) -> list[tuple[int, ...]]:
    """All counts that fit on a stick."""
    ranges = [range(one.count + 1) for one in sawing.wanted]
    return [c for c in product(*ranges) if sawing.used(c) <= length + sawing.kerf]


def problem(pieces: list[tuple[int, int, int]], length: int, kerf: int) -> Sawing:
    wanted = tuple(Wanted(size, count) for size, count, _ in pieces)
    return Sawing(wanted, (Stock(length, 1),), kerf)


@given(PIECES, st.integers(10, 90), st.integers(0, 3))
def test_the_fullest_worth_is_that_of_trying_everything(pieces, length, kerf) -> None:
    sawing = problem(pieces, length, kerf)
    worths = [worth for _, _, worth in pieces]
    filling = Filling(sawing, worths, range(len(pieces)), length)
    best = max(
        sum(c * w for c, w in zip(counts, worths, strict=True))
        for counts in everything(sawing, length)
    )
    counts = filling.counts(length + kerf)
    assert filling.worth(length + kerf) == best
    assert sum(c * w for c, w in zip(counts, worths, strict=True)) == best
    assert sawing.used(counts) <= length + kerf
    assert all(count <= one.count for count, one in zip(counts, sawing.wanted, strict=True))


@given(PIECES, st.integers(10, 90), st.integers(0, 3), st.integers(0, 60))
def test_every_full_stick_worth_enough_is_listed_once(pieces, length, kerf, enough) -> None:
    sawing = problem(pieces, length, kerf)
    worths = [float(worth) for _, _, worth in pieces]
    places = [place for place, (size, _, _) in enumerate(pieces) if size <= length]
    room = length + kerf
    found = [
        counts for _, counts in fillings(sawing, worths, places, length, [(room, enough)], 10_000)
    ]

    def full(counts: tuple[int, ...]) -> bool:
        rest = room - sawing.used(counts)
        return all(
            counts[p] == sawing.wanted[p].count or sawing.wanted[p].length + kerf > rest
            for p in places
        )

    expected = {
        counts
        for counts in everything(sawing, length)
        if full(counts) and sum(c * w for c, w in zip(counts, worths, strict=True)) >= enough
    }
    assert len(found) == len(set(found))
    assert set(found) == expected


def test_a_list_too_long_to_be_of_use_is_given_up() -> None:
    sawing = Sawing(tuple(Wanted(size, 9) for size in range(10, 30)), (Stock(300, 1),), 0)
    with pytest.raises(TooMany):
        list(fillings(sawing, [1.0] * 20, range(20), 300, [(300, 0.0)], 50))
