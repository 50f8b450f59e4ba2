"""When birds nest, and in what: hedges, ivy, whatever is thick or keeps its leaves."""

from __future__ import annotations

import re
from datetime import date
from typing import TYPE_CHECKING, Final

from plantframe.season.times import is_tropical

if TYPE_CHECKING:
    from plantframe.catalogue.entries import Plant
    from plantframe.plan.things import Garden, Task
    from plantframe.season.season import Season

# From March to August in the north, half a year later in the south (common practice, no source).
FIRST_MONTH: Final = 3
MONTHS_LONG: Final = 6
_CUTS = re.compile(
    r"\b(trim|clip|cut|prune|shear|lay|grub|take (down|out)|fell|saw)\w*\b", re.IGNORECASE
)


def nesting_days(garden: Garden) -> tuple[date, date] | None:
    """The first and the last day of nesting this season; None between the tropics."""
    if is_tropical(garden):
        return None
    first, second = garden.seasons
    if garden.southern:
        return date(first, FIRST_MONTH + MONTHS_LONG, 1), _month_end(second, FIRST_MONTH - 1)
    return date(second, FIRST_MONTH, 1), _month_end(second, FIRST_MONTH + MONTHS_LONG - 1)


def _month_end(year: int, month: int) -> date:
    return date.fromordinal(date(year, month + 1, 1).toordinal() - 1)


def is_thick(entry: Plant) -> bool:
    """It clings, is grown for its leaf, or keeps it in winter: birds nest in it."""
    leaf = entry.other.get("leaf")
    evergreen = leaf is not None and leaf.is_word and "evergreen" in leaf.value
    clings = entry.holds_on is not None and entry.holds_on.value == "clings"
    woody = entry.life is not None and entry.life.value == "woody"
    return woody and (clings or evergreen or entry.grown_for == "leaf cover")


def cuts(words: str) -> bool:
    """Whether work in these words cuts growth away."""
    return bool(_CUTS.search(words))


def cuts_into_nests(task: Task, season: Season) -> bool:
    """Whether a task cuts a hedge, or a climber of the plan that is thick enough to nest in."""
    text = task.block.head.text.lower()
    if not cuts(task.what):
        return False
    place = task.spot.thing if task.spot else ""
    hedges = [one.name for one in season.plan.things.values() if one.word == "hedge"]
    if re.search(r"\bhedges?\b", text) or any(
        name.lower() in text or name == place for name in hedges
    ):
        return True
    return any(
        name.lower() in text
        for planting in season.plantings
        if planting.entry is not None and is_thick(planting.entry)
        for name in (planting.name, planting.entry.name)
    )
