"""Half-days, from the hours the garden names, its people and its daylight."""

from __future__ import annotations

from datetime import date

import pytest

from plantframe.jobs.halves import AFTERNOON, MORNING, Half, halves_of
from plantframe.jobs.people import crew_of
from tests.jobs.gardens import HEAD, SOUTH, season

MAY = date(2027, 5, 3), date(2027, 5, 9)  # Monday to Sunday


def halves(text: str, first: date = MAY[0], last: date = MAY[1]) -> tuple[Half, ...]:
    garden = season(text).plan.garden
    return halves_of(garden, crew_of(garden), first, last)


def test_a_long_day_is_a_morning_and_an_afternoon_and_a_short_one_is_one_sitting() -> None:
    found = halves(HEAD + "  free Saturday 6 h, Wednesday 2 h\n")
    assert [(one.day.day, one.name, one.minutes) for one in found] == [
        (5, "", 120),
        (8, MORNING, 180),
        (8, AFTERNOON, 180),
    ]


def test_without_hours_any_day_has_two_half_days() -> None:
    assert len(halves(HEAD)) == 14


def test_nobody_works_on_days_away() -> None:
    assert halves(HEAD + "  free Saturday 6 h\n  away 1 to 20 May\n") == ()


@pytest.mark.parametrize(("day", "hours"), [(date(2027, 12, 18), 7.8), (date(2027, 6, 19), 16.6)])
def test_outdoors_is_no_longer_than_it_is_light(day: date, hours: float) -> None:
    """Day length at 52 N round the solstices, to a quarter of an hour (from memory, no source)."""
    found = halves(HEAD + "  free Saturday 24 h\n", day, day)
    assert sum(one.light for one in found) / 60 == pytest.approx(hours, abs=0.25)
    assert sum(one.minutes for one in found) == 24 * 60


def test_southern_winter_days_are_short_too() -> None:
    june, december = date(2026, 6, 20), date(2026, 12, 19)
    text = SOUTH + "  free Saturday 20 h\n"
    winter, summer = (sum(one.light for one in halves(text, day, day)) for day in (june, december))
    assert winter < summer
