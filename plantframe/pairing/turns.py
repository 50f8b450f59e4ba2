"""What shares a frame with a crop, and what takes its place in the same year.

Days are those of this garden: what the plan gives for the crop, else its usual ones.
"""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING, Final

from plantframe.pairing.cautions import disturbs
from plantframe.pairing.climber import Climber
from plantframe.pairing.matches import Turn
from plantframe.season.times import days_words
from plantframe.season.units import day
from plantframe.season.windows import (
    PICKED_FOR,
    SHORT_DAYS,
    begins,
    harvest_days,
    is_over,
    is_tender,
    usual,
)

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from plantframe.catalogue.entries import Plant
    from plantframe.pairing.pair import Pair
    from plantframe.plan.things import Garden
    from plantframe.season.plantings import WorkedPlanting

CLEARED_DAYS: Final = 7  # from the last picking to the next sowing (common practice, no source)
# Days before the first frost by which a tender crop must bear, or it is not worth the ground
# (common practice, no source).
WORTH_DAYS: Final = 21
# Weeks of frost that what is half hardy or hardy goes on bearing in (common practice, no source).
HARDY_DAYS: Final = 28
# Heights that are one height to somebody who picks.
LEVEL_M: Final = 0.8
MOST_TOLD: Final = 16


def sharing(crop: WorkedPlanting, pairs: Iterable[Pair]) -> Iterator[Turn]:
    """What goes on one frame with a crop, each on its own part of the row.

    pairs   plants that suit the frame, the best first
    """
    entry = crop.entry
    if entry is None:
        return
    mine = Climber(entry, crop.name)
    for pair in pairs:
        other = pair.climber
        if other.name == entry.name or other.lasting != mine.lasting or disturbs(pair):
            continue
        high, low = other.height_m, mine.height_m
        if high is None or low is None or abs(sum(high) - sum(low)) / 2 > LEVEL_M:
            continue
        same = other.entry.family == entry.family
        says = "of the same height"
        says += ", but of the same family: what ails one ails both" if same else ", another family"
        yield Turn(other.name, "beside", f"{says}; each on its own part of the row")


def following(crop: WorkedPlanting, plants: Iterable[Plant]) -> Iterator[Turn]:
    """What can still be sown or planted when a crop is over, and bear in the same year."""
    garden, entry = crop.garden, crop.entry
    free = free_day(crop)
    if entry is None or free is None:
        return
    for plant in plants:
        found = harvest_days(plant)
        if found is None or plant.name == entry.name or plant.family == entry.family:
            continue
        last = _last_start(plant, garden, found[0])
        start = _not_before(plant, garden, free)
        if last is None or start is None or start > last:
            continue
        first = start + timedelta(days=found[0] + SHORT_DAYS)
        does = "sown" if plant.sow is not None else "planted"
        says = f"{does} {days_words(start, last)}, first picked from about {day(first)}"
        yield Turn(plant.name, "after", says, start, last)


def preceding(crop: WorkedPlanting, plants: Iterable[Plant]) -> Iterator[Turn]:
    """What is sown early and done with before a crop is put in."""
    garden, entry = crop.garden, crop.entry
    starts = crop.in_ground.day if crop.in_ground else None
    if starts is None and entry is not None:
        window = begins(entry, garden)
        starts = window[0] if window else None
    if entry is None or starts is None:
        return
    for plant in plants:
        found, sown = harvest_days(plant), usual(plant.sow, garden)
        if found is None or sown is None or plant.family == entry.family or is_tender(plant):
            continue
        if "last" not in (plant.sow.base if plant.sow else ""):
            continue
        over = sown[0] + timedelta(days=found[1] + CLEARED_DAYS)
        if over > starts:
            continue
        says = f"sown from {day(sown[0])}, done with by about {day(over)}"
        yield Turn(plant.name, "before", says, sown[0], sown[1])


def free_day(crop: WorkedPlanting) -> date | None:
    """The day on which a crop's ground is likely to be free again."""
    entry, own = crop.entry, crop.planting
    if entry is None or Climber(entry, crop.name).lasting:
        return None
    if own.until is not None:
        return own.until.last + timedelta(days=1)
    over = is_over(entry, crop.garden)
    picked = crop.harvest
    if picked is not None and not is_tender(entry):
        over = picked[1] + timedelta(days=PICKED_FOR)
    return over + timedelta(days=CLEARED_DAYS) if over is not None else None


def _last_start(plant: Plant, garden: Garden, days: int) -> date | None:
    """The last day it may go in and still be picked; None where no frost sets an end."""
    frost = garden.frost_first
    if frost is None:
        return None
    more = -WORTH_DAYS if is_tender(plant) else HARDY_DAYS
    end = frost.day + timedelta(days=more)
    last = end - timedelta(days=days + SHORT_DAYS)
    window = usual(plant.sow, garden) if plant.sow and "first" in plant.sow.base else None
    return min(last, window[1]) if window else last


def _not_before(plant: Plant, garden: Garden, free: date) -> date | None:
    """The first day that the ground is free and it is time for it."""
    window = usual(plant.sow or plant.plant_out, garden)
    return max(free, window[0]) if window else free
