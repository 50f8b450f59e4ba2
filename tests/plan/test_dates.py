"""Dates of a season: years, halves of months, frosts, feasts, and days that cannot be."""

from __future__ import annotations

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.language.phrases import phrase
from plantframe.language.slots import When, take
from plantframe.plan.dates import Dated, DateSlip, Season, check_year, resolve

NORTH = Season((2027, 2027), False, date(2027, 5, 6), date(2027, 10, 12))
SOUTH = Season((2026, 2027), True, date(2026, 9, 25), date(2027, 5, 20))
NO_FROST = Season((2027, 2027), frost_none=True)
UNSAID = Season((2027, 2027))


def when(typed: str) -> When:
    """A date as typed."""
    taken = take("dates", phrase(typed, 1), 0, frozenset())
    assert taken is not None
    assert isinstance(taken[0], When)
    return taken[0]


def days(typed: str, season: Season = NORTH) -> tuple[str, str, int]:
    """First day, last day, give or take."""
    found = resolve(when(typed), season)
    return found.day.isoformat(), found.last.isoformat(), found.give


NORTHERN = [
    ("18 May", "2027-05-18", "2027-05-18", 0),
    ("18 May 2026", "2026-05-18", "2026-05-18", 0),
    ("2027-05-18", "2027-05-18", "2027-05-18", 0),
    ("May", "2027-05-15", "2027-05-15", 14),
    ("early May", "2027-05-05", "2027-05-05", 5),
    ("mid May", "2027-05-15", "2027-05-15", 5),
    ("late May", "2027-05-25", "2027-05-25", 5),
    ("start of May", "2027-05-01", "2027-05-01", 0),
    ("end of May", "2027-05-31", "2027-05-31", 0),
    ("end of February", "2027-02-28", "2027-02-28", 0),
    ("10 to 20 July", "2027-07-10", "2027-07-20", 0),
    ("June to September", "2027-06-01", "2027-09-30", 0),
    ("1 October to 15 April", "2027-10-01", "2028-04-15", 0),
    ("1 October until 15 April", "2027-10-01", "2028-04-15", 0),
    ("24 Dec to 6 Jan", "2027-12-24", "2028-01-06", 0),
    ("first week of May", "2027-05-01", "2027-05-07", 0),
    ("last week of May", "2027-05-25", "2027-05-31", 0),
    ("last two weeks of May", "2027-05-18", "2027-05-31", 0),
    ("second half of May", "2027-05-17", "2027-05-31", 0),
    ("mid to late May", "2027-05-15", "2027-05-25", 0),
    ("last frost", "2027-05-06", "2027-05-06", 0),
    ("first frost", "2027-10-12", "2027-10-12", 0),
    ("2 weeks after last frost", "2027-05-20", "2027-05-20", 0),
    ("10 days before the last frost", "2027-04-26", "2027-04-26", 0),
    ("before Christmas", "2027-12-25", "2027-12-25", 0),
    ("Michaelmas", "2027-09-29", "2027-09-29", 0),
    ("Easter", "2027-03-28", "2027-03-28", 0),
    ("Good Friday", "2027-03-26", "2027-03-26", 0),
    ("Whitsun", "2027-05-16", "2027-05-16", 0),
    ("18/5", "2027-05-18", "2027-05-18", 0),
    ("5/18", "2027-05-18", "2027-05-18", 0),
    ("5/5", "2027-05-05", "2027-05-05", 0),
    ("18/5/2026", "2026-05-18", "2026-05-18", 0),
    ("18/5/26", "2026-05-18", "2026-05-18", 0),
]


@pytest.mark.parametrize(("typed", "first", "last", "give"), NORTHERN)
def test_a_date_is_a_day_of_the_season(typed: str, first: str, last: str, give: int) -> None:
    assert days(typed) == (first, last, give)


SOUTHERN = [
    ("25 September", "2026-09-25"),
    ("early October", "2026-10-05"),
    ("15 December", "2026-12-15"),
    ("3 Jan", "2027-01-03"),
    ("20 May", "2027-05-20"),
    ("30 June", "2027-06-30"),
    ("1 July", "2026-07-01"),
    ("2 weeks after last frost", "2026-10-09"),
    ("Easter", "2027-03-28"),
    ("before Christmas", "2026-12-25"),
    ("New Year", "2027-01-01"),
]


@pytest.mark.parametrize(("typed", "day"), SOUTHERN)
def test_a_southern_season_runs_from_winter_to_winter(typed: str, day: str) -> None:
    assert days(typed, SOUTH)[0] == day


def test_a_span_over_new_year_stays_within_a_southern_season() -> None:
    assert days("24 Dec to 6 Jan", SOUTH)[:2] == ("2026-12-24", "2027-01-06")


def test_a_season_is_labelled_as_a_gardener_writes_it() -> None:
    assert (NORTH.label, SOUTH.label) == ("2027", "2026-27")


IMPOSSIBLE = [
    ("31 June", NORTH, "June has 30 days."),
    ("29 February", NORTH, "February 2027 has 28 days."),
    ("0 May", NORTH, "May has 31 days."),
    ("2027-13-05", NORTH, "there is no month 13."),
    ("2027-00-05", NORTH, "there is no month 0."),
    ("0001-05-18", NORTH, "no plan reaches to the year 1."),
    ("31/6", NORTH, "June has 30 days."),
    ("31/31", NORTH, "neither is a month."),
    ("1/2/9999", NORTH, "no plan reaches to the year 9999."),
    ("last frost", NO_FROST, "there is no frost here to reckon from."),
    ("last frost", UNSAID, "the garden does not say when its last frost is"),
    ("2 weeks before first frost", UNSAID, "add `frost last …, first …`."),
    ("9999 weeks after last frost", NORTH, "that is years away."),
]


@pytest.mark.parametrize(("typed", "season", "why"), IMPOSSIBLE)
def test_a_day_that_cannot_be_says_why(typed: str, season: Season, why: str) -> None:
    with pytest.raises(DateSlip) as slip:
        resolve(when(typed), season)
    assert slip.value.name == "impossible-date"
    assert why in slip.value.told["why"]


def test_the_29th_of_february_is_a_day_in_a_leap_year() -> None:
    assert days("29 February", Season((2028, 2028)))[0] == "2028-02-29"
    assert days("29 Feb 2028")[0] == "2028-02-29"


@pytest.mark.parametrize("typed", ["5/6", "3/11/2026", "1/12"])
def test_which_figure_is_the_month_is_asked(typed: str) -> None:
    with pytest.raises(DateSlip) as slip:
        resolve(when(typed), NORTH)
    assert slip.value.name == "which-month"
    assert len(slip.value.write) == 2


@pytest.mark.parametrize(
    ("typed", "season", "off", "likely"),
    [
        ("18 May 2026", NORTH, "last year", "18 May 2027"),
        ("18 May 2028", NORTH, "a year ahead", "18 May 2027"),
        ("18 May 2022", NORTH, "5 years off", "18 May 2027"),
        ("10 October 2025", SOUTH, "last year", "10 October 2026"),
        ("10 October 2027", SOUTH, "a year ahead", "10 October 2026"),
    ],
)
def test_a_sowing_a_year_off_is_asked_about(
    typed: str, season: Season, off: str, likely: str
) -> None:
    typed_when = when(typed)
    assert typed_when.day is not None
    with pytest.raises(DateSlip) as slip:
        check_year(resolve(typed_when, season), season, typed_when.day.year)
    assert slip.value.name == "a-year-off"
    assert slip.value.told["off"] == off
    assert slip.value.write == (likely,)


@pytest.mark.parametrize(
    ("typed", "season"),
    [
        ("15 October 2026", NORTH),  # the autumn before is ordinary
        ("1 August 2026", NORTH),
        ("31 December 2027", NORTH),
        ("18 May 2027", NORTH),
        ("1 March 2026", SOUTH),
        ("10 October 2026", SOUTH),
        ("10 September 2027", SOUTH),
    ],
)
def test_a_sowing_within_the_season_or_the_autumn_before_is_not(typed: str, season: Season) -> None:
    typed_when = when(typed)
    assert typed_when.day is not None
    check_year(resolve(typed_when, season), season, typed_when.day.year)
    assert resolve(typed_when, season).exact


def test_a_date_without_a_year_is_never_a_year_off() -> None:
    check_year(Dated(date(1999, 1, 1), date(1999, 1, 1), 0, ""), NORTH, None)
    assert resolve(when("1 January"), NORTH).day.year == 2027


# Easter Sundays, from memory.
@pytest.mark.parametrize(
    ("year", "month", "day"),
    [(2008, 3, 23), (2011, 4, 24), (2024, 3, 31), (2025, 4, 20), (2027, 3, 28), (2038, 4, 25)],
)
def test_easter_falls_where_it_fell(year: int, month: int, day: int) -> None:
    assert resolve(when("Easter"), Season((year, year))).day == date(year, month, day)


# The days of some years, from memory of the calendars of each country.
@pytest.mark.parametrize(
    ("typed", "year", "month", "day"),
    [
        ("Memorial Day", 2024, 5, 27),
        ("Memorial Day", 2027, 5, 31),
        ("Victoria Day", 2024, 5, 20),
        ("Victoria Day weekend", 2026, 5, 18),
        ("Labor Day", 2025, 9, 1),
        ("Labour weekend", 2024, 10, 28),
        ("Labour weekend", 2026, 10, 26),
        ("Cup Day", 2024, 11, 5),
    ],
)
def test_holidays_that_gardeners_plant_by(typed: str, year: int, month: int, day: int) -> None:
    assert resolve(when(typed), Season((year, year))).day == date(year, month, day)


@given(st.integers(1, 12), st.integers(0, 40), st.sampled_from([NORTH, SOUTH]))
def test_a_day_is_a_day_of_the_season_or_impossible(month: int, day: int, season: Season) -> None:
    typed = f"{day} {date(2027, month, 1).strftime('%B')}"
    longest = (date(2027, month, 28) + timedelta(days=4)).replace(day=1) - timedelta(days=1)
    if 1 <= day <= longest.day:
        found = resolve(when(typed), season)
        assert (found.day.month, found.day.day) == (month, day)
        assert found.day.year in season.years
        return
    with pytest.raises(DateSlip):
        resolve(when(typed), season)
