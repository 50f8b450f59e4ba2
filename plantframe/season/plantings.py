"""A planting worked out: its plant, its weight, its room, and when it is where."""

from __future__ import annotations

from datetime import date, timedelta
from functools import cached_property
from typing import TYPE_CHECKING

from plantframe.frozen import frozen
from plantframe.mechanics.ranges import Range
from plantframe.sky.emergence import emergence_days
from plantframe.sky.soil import soil_warmth_c

if TYPE_CHECKING:
    from plantframe.catalogue.entries import Plant
    from plantframe.catalogue.sourced import Sourced
    from plantframe.plan.dates import Dated
    from plantframe.plan.things import Garden, Planting

UNDER_COVER = frozenset({"indoors", "inside", "under cover", "under glass", "in the frame"})
# Days from seed to first leaves where neither the plan nor print says (common practice, no source).
USUAL_EMERGENCE_DAYS = 10


def as_range(value: Sourced | None) -> Range | None:
    """A sourced figure as low, middle, high."""
    if value is None or value.is_word:
        return None
    middle = value.usual
    low = value.low if value.low is not None else middle
    high = value.high if value.high is not None else middle
    return Range(low, middle, high)


def wet_weight_kg_per_m(entry: Plant, leaders: int | None = None) -> Range | None:
    """Wet weight of a plant at its heaviest, kg per metre of row.

    leaders   stems kept to a plant, None for as many as the trade keeps
    """
    kept = leaders if leaders is not None else entry.training.leaders if entry.training else None
    by_leaders = entry.weight_by_leaders
    if by_leaders and kept is not None:
        return as_range(by_leaders[min(by_leaders, key=lambda number: abs(number - kept))])
    return as_range(entry.wet_weight)


@frozen
class WorkedPlanting:
    """What grows somewhere, with the catalogue's knowledge of it.

    entry     the plant, None where unknown or still to be asked about
    row_m     metres of row it has, None where nothing says
    holder    the name of the frame, bed or wall it grows on
    """

    planting: Planting
    entry: Plant | None
    row_m: float | None
    garden: Garden
    holder: str

    @cached_property
    def kept(self) -> dict[str, object]:
        """What others worked out from it alone, by their names, so that they do it once."""
        return {}

    @property
    def name(self) -> str:
        """The plant as the gardener wrote it."""
        return self.planting.said

    @cached_property
    def leaders(self) -> int | None:
        """Leaders kept to a plant, as the plan says or as the trade trains it."""
        if self.planting.leaders is not None:
            return self.planting.leaders
        training = self.entry.training if self.entry else None
        return training.leaders if training else None

    @cached_property
    def weight_kg_per_m(self) -> Range | None:
        """Wet weight at its heaviest, kg per metre of row: the gardener's own figure first."""
        own = self.planting.weighs_kg_per_m
        if own is not None:
            return Range(own, own, own)
        return wet_weight_kg_per_m(self.entry, self.leaders) if self.entry else None

    @cached_property
    def per_metre(self) -> float | None:
        """Plants per metre of row, None where the plan does not say."""
        if self.planting.count is not None and self.row_m:
            return self.planting.count / self.row_m
        if self.planting.apart_m:
            return 1 / self.planting.apart_m
        return None

    @cached_property
    def usual_per_metre(self) -> Range | None:
        """Plants per metre as the trade plants them, with as many leaders as the plan keeps."""
        return as_range(self.entry.plants_per_metre) if self.entry else None

    @property
    def under_cover(self) -> bool:
        """Raised where frost does not reach."""
        return self.planting.raised in UNDER_COVER

    @cached_property
    def emergence_days(self) -> int | None:
        """Days from sowing outdoors to first leaves, at the soil's warmth by then."""
        sow = self.planting.sow
        if sow is None or self.under_cover:
            return None
        warmth = None
        last, first = self.garden.frost_last, self.garden.frost_first
        if last is not None and first is not None:
            warmth = soil_warmth_c(last.day, first.day, sow.day)
        entry = self.entry.emergence if self.entry else None
        if warmth is not None and entry is not None:
            table = dict(entry.table)
            days = emergence_days(table, warmth.middle_c)
            if days is not None:
                return round(days)
            # below the printed temperatures nothing is said; the coldest printed stands for it
            cold = min(table)
            if warmth.middle_c < cold:
                return round(table[cold])
        return USUAL_EMERGENCE_DAYS

    @cached_property
    def outdoors(self) -> tuple[date, Dated] | None:
        """The first day frost can catch something outdoors, and the date it rests on."""
        planting = self.planting
        if planting.out is not None:
            return planting.out.day, planting.out
        if planting.sow is not None and not self.under_cover:
            return planting.sow.day + timedelta(days=self.emergence_days or 0), planting.sow
        return None

    @cached_property
    def in_ground(self) -> Dated | None:
        """When seed or plant first goes into its place on the frame."""
        if self.planting.out is not None:
            return self.planting.out
        return None if self.under_cover else self.planting.sow

    @cached_property
    def harvest(self) -> tuple[date, date] | None:
        """First and last likely day of the first picking, where sowing or planting is dated."""
        days = as_range(self.entry.harvest) if self.entry else None
        if days is None or self.entry is None or self.entry.harvest is None:
            return None
        start = self.planting.sow
        base = self.entry.harvest.base
        if "planting" in base:
            start = self.planting.out or self.planting.sow
        if start is None or "year" in base:
            start = self.planting.out
        if start is None or days.high > 400:
            return None
        return start.day + timedelta(days=days.low), start.day + timedelta(days=days.high)
