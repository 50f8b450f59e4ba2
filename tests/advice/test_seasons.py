"""Seasons in a catalogue's words, as months north and south of the equator."""

from __future__ import annotations

import pytest

from plantframe.advice.seasons import before, months_of, turned, within

# The seasons of the weather services: three calendar months each, spring from March in the north.
WORDS = [
    ("late spring", (5, 5), (11, 11)),
    ("mid and late summer", (7, 8), (1, 2)),
    ("late spring and early summer", (5, 6), (11, 12)),
    ("midsummer to autumn", (7, 11), (1, 5)),
    ("winter", (12, 2), (6, 8)),
    ("mid spring, from late winter on", (2, 4), (8, 10)),
]


@pytest.mark.parametrize(("words", "north", "south"), WORDS)
def test_words_for_a_season_are_months_and_half_a_year_later_in_the_south(
    words: str, north: tuple[int, int], south: tuple[int, int]
) -> None:
    assert months_of(words) == north
    assert months_of(words, southern=True) == south


def test_words_without_a_season_are_no_months() -> None:
    assert months_of("after flowering") is None
    assert months_of("") is None


def test_what_flowers_till_frost_goes_on_into_october() -> None:
    assert months_of("summer to frost") == (6, 10)


@pytest.mark.parametrize("month", range(1, 13))
def test_twice_half_a_year_is_the_same_month(month: int) -> None:
    assert turned(turned(month)) == month
    assert before(month, 12) == month


def test_a_span_may_run_over_the_new_year() -> None:
    assert [month for month in range(1, 13) if within(month, 11, 2)] == [1, 2, 11, 12]
