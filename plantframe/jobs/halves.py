"""Half-days: when there is time to work, how long, with how much daylight, and who is there."""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.jobs.days import WEEKDAYS

if TYPE_CHECKING:
    from collections.abc import Collection

    from plantframe.jobs.people import Crew
    from plantframe.plan.things import Garden

# More hours than this in one day are a morning and an afternoon; and where the plan gives no
# hours, a half-day of any day is so long (both common practice, no source).
ONE_SITTING_HOURS: Final = 4.0
USUAL_HALF_HOURS: Final = 3.0
MORNING, AFTERNOON = "morning", "afternoon"


@frozen
class Half:
    """A half-day.

    name      morning or afternoon, "" where a day has one sitting only
    minutes   how long it is; `light` how much of it has daylight
    people    who is there
    wet       it rains: no work outdoors
    """

    day: date
    name: str
    minutes: float
    light: float
    people: tuple[str, ...]
    wet: bool = False


def hours_said(garden: Garden) -> bool:
    """Whether the plan says when there is time."""
    return any(hours > 0 for hours in garden.free_h.values())


def halves_of(
    garden: Garden, crew: Crew, first: date, last: date, wet: Collection[date] = ()
) -> tuple[Half, ...]:
    """The half-days between two days on which somebody is there.

    wet   days on which it rains
    """
    said = hours_said(garden)
    found: list[Half] = []
    for count in range((last - first).days + 1):
        day = first + timedelta(days=count)
        hours = garden.free_h.get(WEEKDAYS[day.weekday()], 0.0) if said else 2 * USUAL_HALF_HOURS
        people = crew.there(day)
        if hours <= 0 or not people:
            continue
        names = ("",) if hours <= ONE_SITTING_HOURS else (MORNING, AFTERNOON)
        minutes = hours * 60 / len(names)
        light = min(minutes, _light_minutes(garden, day) / len(names))
        found += [Half(day, name, minutes, light, people, day in wet) for name in names]
    return tuple(found)


def _light_minutes(garden: Garden, day: date) -> float:
    """How long it is light; all day long where the garden does not say where it is."""
    if garden.latitude is None:
        return 24 * 60.0
    from plantframe.sky.sun import day_length_hours

    return day_length_hours(garden.latitude, day) * 60
