"""Times of the year in words, and days that are free."""

from __future__ import annotations

from datetime import date, timedelta

from hypothesis import given
from hypothesis import strategies as st

from plantframe.jobs.days import FreeDays, season_bounds, time_of_year, window_of
from plantframe.plan.dates import Dated
from plantframe.season import times
from tests.jobs.gardens import HEAD, SOUTH, season

NORTH = season(HEAD).plan.garden
SOUTHERN = season(SOUTH).plan.garden


def test_a_time_of_year_is_the_gardens_own() -> None:
    window, found = time_of_year("late winter", NORTH), times.time_of_year("late winter", NORTH)
    assert window is not None
    assert found is not None
    assert (window.not_before, window.not_after) == (found.first, found.last)
    assert window.said == f"late winter here: {times.days_words(found.first, found.last)}"


def test_an_event_is_no_time_of_year() -> None:
    assert time_of_year("after a gale", NORTH) is None


def test_a_month_alone_leaves_two_weeks_either_way() -> None:
    window = window_of(Dated(date(2027, 4, 15), date(2027, 4, 15), 14, "April"))
    assert (window.not_before, window.aim) == (date(2027, 4, 1), date(2027, 4, 15))
    assert window.not_after == date(2027, 4, 29)


def test_autumn_before_belongs_to_the_season() -> None:
    assert season_bounds(NORTH) == (date(2026, 8, 1), date(2027, 12, 31))
    assert season_bounds(SOUTHERN) == (date(2026, 2, 1), date(2027, 9, 30))


FREE = FreeDays(
    season(HEAD + "  free Saturday 6 h, Wednesday 2 h\n  away 10 to 20 July\n").plan.garden
)


@given(st.dates(date(2027, 1, 1), date(2027, 12, 31)))
def test_a_free_day_is_one_that_is_named_and_nobody_is_away(day: date) -> None:
    for found, way in ((FREE.at_or_before(day), -1), (FREE.at_or_after(day), 1)):
        assert found.weekday() in {2, 5}
        assert not date(2027, 7, 10) <= found <= date(2027, 7, 20)
        assert (found - day).days * way >= 0
        assert abs(found - day) <= timedelta(days=15)


def test_every_day_is_free_where_the_garden_names_none() -> None:
    assert FreeDays(NORTH).at_or_before(date(2027, 5, 4)) == date(2027, 5, 4)


def test_who_is_away_alone_leaves_the_day_free() -> None:
    garden = season(HEAD + "  person Isa\n  person Bram\n  away 1 to 5 May, Isa\n").plan.garden
    assert FreeDays(garden).is_free(date(2027, 5, 3))
