"""When the ground is ready for seed: warm enough in spring, or wet enough where no frost comes."""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.language.slots import When
from plantframe.season.plantings import as_range
from plantframe.season.units import day as shown

if TYPE_CHECKING:
    from plantframe.catalogue.entries import Plant
    from plantframe.language.values import Day
    from plantframe.plan.things import Garden

# Rain-fed crops go in once the rains have set in, in the first weeks of them; what bears cool
# weather goes in as they end, for the dry months after them (both common practice, no source).
SETTLED: Final = timedelta(days=7)
SOWN_WITHIN: Final = timedelta(days=35)
PARTS: Final = {"mid": 15, "late": 21, "end": 28}  # the day that part of a month begins on


@frozen
class Ground:
    """The days the ground leaves for sowing, and what they are reckoned from."""

    first: date
    last: date
    why: str


def warm_soil_day(entry: Plant, garden: Garden) -> date | None:
    """The day the soil is likely to have the least warmth a seed comes up in: an estimate.

    None where the plan gives no frosts, or nobody says how warm the seed wants it.
    """
    wants = as_range(entry.soil)
    last, first = garden.frost_last, garden.frost_first
    if wants is None or last is None or first is None:
        return None
    from plantframe.sky.soil import first_warm_day

    return first_warm_day(last.day, first.day, wants.low, last.day.year)


def with_the_rains(entry: Plant, garden: Garden, today: date) -> Ground | None:
    """When a crop is sown by the rains, where there is no frost to go by.

    The next rains of the season from today on, else the last; None where there is frost, or the
    plan tells of no rains.
    """
    if not garden.frost_none:
        return None
    hardy = entry.tender is not None and entry.tender.value == "hardy"
    grounds = []
    for begins, ends in _rains(garden):
        start = ends if hardy else begins + SETTLED
        why = f"your rains {'end' if hardy else 'begin'} about {shown(ends if hardy else begins)}"
        grounds.append(Ground(start, start + SOWN_WITHIN, why))
    coming = [one for one in grounds if one.last >= today]
    return min(coming or grounds[-1:], key=lambda one: one.first, default=None)


def _rains(garden: Garden) -> list[tuple[date, date]]:
    """First and last day of each rains that begin in the plan's season or the year before it."""
    found = []
    for fact in garden.facts.get("rains", ()):
        for when in fact.all("dates"):
            if not isinstance(when, When) or when.day is None:
                continue
            for year in range(garden.seasons[0] - 1, garden.seasons[1] + 1):
                begins = _first_of(when.day, year)
                last = when.last or when.day
                found.append((begins, _last_of(last, year + (last.month < begins.month))))
    return sorted(found)


def _first_of(day: Day, year: int) -> date:
    """The first day that is meant: a month alone begins on its first."""
    return date(year, day.month, min(day.day or PARTS.get(day.part, 1), 28))


def _last_of(day: Day, year: int) -> date:
    """The last day that is meant: a month alone ends on its last."""
    if day.day or day.part:
        return _first_of(day, year)
    return date(year + day.month // 12, day.month % 12 + 1, 1) - timedelta(days=1)
