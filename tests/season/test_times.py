"""Early spring is not the same days in every garden."""

from __future__ import annotations

from datetime import date, timedelta
from itertools import pairwise
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.answers.answers import answers_to
from plantframe.season.times import MONTHS, days_words, is_tropical, time_of_year

if TYPE_CHECKING:
    from plantframe.plan.things import Garden

TODAY = date(2027, 1, 15)
# Round the year, as they follow each other.
PARTS = (
    *("late winter", "early spring", "mid spring", "late spring", "early summer", "midsummer"),
    *("late summer", "early autumn", "mid autumn", "late autumn", "early winter"),
)


def garden(frost: str, place: str = "52 N, 1 W", year: str = "2027") -> Garden:
    return answers_to(f"garden Hill, {year}\n  place {place}\n  {frost}\n", TODAY).plan.garden


UNSAID = answers_to("garden Hill, 2027\n  place 52 N, 1 W\n", TODAY).plan.garden
UNSAID_SOUTH = answers_to("garden Flat, 2026-27\n  place 37 S, 145 E\n", TODAY).plan.garden


@pytest.mark.parametrize(
    ("words", "first", "last"),
    [
        ("late winter", date(2027, 2, 1), date(2027, 2, 28)),
        ("early spring", date(2027, 3, 1), date(2027, 3, 31)),
        ("in spring, after the frost", date(2027, 3, 1), date(2027, 5, 31)),
        ("late autumn", date(2027, 11, 1), date(2027, 11, 30)),
    ],
)
def test_where_no_frost_is_known_it_is_the_calendars_months(
    words: str, first: date, last: date
) -> None:
    # Source: the meteorologists' seasons, three whole months each from March on.
    found = time_of_year(words, UNSAID)
    assert found is not None
    assert (found.first, found.last) == (first, last)


@pytest.mark.parametrize(
    ("words", "first"),
    [
        ("early spring", date(2026, 9, 1)),
        ("late winter", date(2026, 8, 1)),
        ("midsummer", date(2027, 1, 1)),
        ("autumn", date(2027, 3, 1)),
    ],
)
def test_south_of_the_equator_it_is_half_a_year_on(words: str, first: date) -> None:
    found = time_of_year(words, UNSAID_SOUTH)
    assert found is not None
    assert found.first == first


def test_an_early_last_frost_brings_an_early_spring_by_less_than_itself() -> None:
    mild, hard = garden("frost last 1 March, first 1 December"), garden("frost last 1 June")
    early, late = time_of_year("early spring", mild), time_of_year("early spring", hard)
    assert early is not None
    assert late is not None
    assert early.first < date(2027, 3, 1) < late.first
    assert late.first - early.first < date(2027, 6, 1) - date(2027, 3, 1)


def test_a_late_first_frost_brings_a_late_autumn() -> None:
    mild = time_of_year("late autumn", garden("frost last 1 March, first 1 December"))
    cold = time_of_year("late autumn", garden("frost last 1 June, first 10 September"))
    assert mild is not None
    assert cold is not None
    assert mild.first > cold.first


def test_the_sun_and_not_the_frost_says_when_midwinter_is() -> None:
    for frost in ("frost last 1 March, first 1 December", "frost last 1 June, first 10 September"):
        found = time_of_year("midwinter", garden(frost))
        assert found is not None
        assert found.first == date(2027, 1, 1)


def test_between_the_tropics_without_frost_there_is_no_early_spring() -> None:
    darwin = garden("frost none", "12.4 S, 130.8 E")
    assert is_tropical(darwin)
    assert time_of_year("early spring", darwin) is None


def test_it_is_told_with_its_days() -> None:
    found = time_of_year("early spring", UNSAID)
    assert found is not None
    assert found.here == "early spring here: 1 to 31 March"
    assert days_words(date(2027, 2, 24), date(2027, 3, 26)) == "24 February to 26 March"
    assert days_words(date(2027, 3, 3), date(2027, 3, 3)) == "3 March"


FROSTS = st.tuples(
    st.dates(date(2027, 1, 2), date(2027, 6, 29)), st.dates(date(2027, 8, 2), date(2027, 12, 30))
)


@given(FROSTS, st.booleans())
def test_the_times_of_the_year_follow_each_other_whatever_the_frosts(
    frosts: tuple[date, date], south: bool
) -> None:
    last, first = (f"{one:%d %B}" for one in (frosts[::-1] if south else frosts))
    place, year = ("40 S, 145 E", "2026-27") if south else ("52 N, 1 W", "2027")
    here = garden(f"frost last {last}, first {first}", place, year)
    found = [time_of_year(words, here) for words in PARTS]
    days = [(one.first, one.last) for one in found if one is not None]
    assert len(days) == len(PARTS)
    for before, after in pairwise(days):
        gap = (after[0] - before[1]) % timedelta(days=365)
        assert gap <= timedelta(days=2), (before, after)
    assert all(first < last for first, last in days)


def test_every_word_for_a_time_of_year_means_some_days() -> None:
    for words in MONTHS:
        found = time_of_year(words, UNSAID)
        assert found is not None
        assert found.first <= found.last
