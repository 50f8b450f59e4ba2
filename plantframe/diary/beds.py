"""Beds by year: what grew where, with its family, over the last four seasons and this one."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.season.entries import entry_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from plantframe.season.season import Season

YEARS: Final = 4  # as long as most wait before a family comes back (common practice, no source)


@frozen
class Crop:
    """A plant in a bed in a year, with its family; "" where nobody can tell."""

    plant: str
    family: str


@frozen
class BedYears:
    """A bed's crops by the year each season begins in."""

    bed: str
    by_year: tuple[tuple[int, tuple[Crop, ...]], ...]

    def crops(self, year: int) -> tuple[Crop, ...]:
        """What it grew in a year."""
        return next((crops for one, crops in self.by_year if one == year), ())


def beds_by_year(season: Season) -> tuple[BedYears, ...]:
    """Every bed with what it grew, this season last."""
    this = season.plan.garden.seasons[0]
    found = []
    for name in season.plan.beds:
        by_year: dict[int, dict[str, Crop]] = {}
        for grown in season.history(name):
            if this - YEARS <= grown.year < this:
                crop = Crop(grown.plant, family_of(grown.plants))
                by_year.setdefault(grown.year, {}).setdefault(grown.plant.lower(), crop)
        for planting in season.growing_in(name):
            crop = Crop(planting.name, family_of(planting.planting.plants))
            by_year.setdefault(this, {}).setdefault(planting.name.lower(), crop)
        years = tuple((year, tuple(by_year[year].values())) for year in sorted(by_year))
        found.append(BedYears(name, years))
    return tuple(found)


def years_shown(beds: Iterable[BedYears], season: Season) -> tuple[int, ...]:
    """The years that have something in them, this one always."""
    this = season.plan.garden.seasons[0]
    return tuple(sorted({this, *(year for bed in beds for year, _ in bed.by_year)}))


def family_of(names: Sequence[str]) -> str:
    """The family all these plants are of, "" where they differ or nothing is known."""
    entries = [entry for name in names if (entry := entry_of(name)) is not None]
    families = {entry.family_name or entry.family for entry in entries}
    return families.pop() if len(families) == 1 else ""
