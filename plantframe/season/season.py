"""The season of a plan: everything worked out from it, on demand and once."""

from __future__ import annotations

from functools import cached_property
from types import MappingProxyType
from typing import TYPE_CHECKING

from plantframe.frozen import frozen, replace
from plantframe.plan.things import INSIDE
from plantframe.season.entries import entry_of, kind_of
from plantframe.season.frames import WorkedFrame
from plantframe.season.plantings import WorkedPlanting
from plantframe.season.sunlight import HIGH, bed_sun_h, wall_sun_h

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import date

    from plantframe.plan.things import Bed, Frame, Grown, Plan, Task, Thing


@frozen
class Season:
    """A plan worked out. `today` stands for the day it is asked on.

    before   the season of the same plan before a line was changed: what is the same in both
             need not be worked out again
    """

    plan: Plan
    today: date
    before: Season | None = None

    @cached_property
    def frames(self) -> Mapping[str, WorkedFrame]:
        """Each frame, line, cover and fence by its name."""
        return MappingProxyType(
            {name: self._frame(frame) for name, frame in self.plan.frames.items()}
        )

    @cached_property
    def beds(self) -> Mapping[str, Bed]:
        """Each bed by its name, with the sun that hedges and walls leave it where it says none."""
        return MappingProxyType({name: self._lit(bed) for name, bed in self.plan.beds.items()})

    def _lit(self, bed: Bed) -> Bed:
        if bed.sun_h is not None or not self._has_high:
            return bed
        if self.before is not None and self.before.plan.things == self.plan.things:
            old = self.before.plan.beds.get(bed.name)
            if self._same_garden and old == bed:
                return self.before.beds[bed.name]
        return replace(bed, sun_h=bed_sun_h(self.plan, bed))

    @cached_property
    def _has_high(self) -> bool:
        return any(one.word in HIGH and one.high_m for one in self.plan.things.values())

    def _frame(self, frame: Frame) -> WorkedFrame:
        bed, wall = self.plan.bed_of(frame), self.plan.wall_of(frame)
        bed = self.beds[bed.name] if bed is not None else None
        if self._same_garden and self.before is not None:
            old = self.before.frames.get(frame.name)
            if old is not None and (old.frame, old.bed, old.wall) == (frame, bed, wall):
                return old
        return WorkedFrame(
            frame, self.plan.garden, bed, wall, kind_of(frame.kind, self.plan.garden)
        )

    @cached_property
    def _same_garden(self) -> bool:
        return self.before is not None and self.before.plan.garden == self.plan.garden

    @cached_property
    def plantings(self) -> tuple[WorkedPlanting, ...]:
        """Every planting: on frames, in beds, on walls."""
        on_frames = [one for frame in self.frames.values() for one in frame.plantings]
        plan = self.plan
        holders: tuple[Bed | Thing, ...] = (*plan.beds.values(), *plan.things.values())
        elsewhere = [
            WorkedPlanting(
                planting,
                entry_of(planting.plant, plan.garden),
                getattr(holder, "length_m", None),
                plan.garden,
                holder.name,
            )
            for holder in holders
            for planting in holder.plantings
        ]
        return (*on_frames, *elsewhere)

    def held_by(self, holder: str) -> tuple[WorkedPlanting, ...]:
        """The plantings of a frame, bed or wall, in their order."""
        return self._plantings_by["holder"].get(holder, ())

    def growing_in(self, bed: str) -> tuple[WorkedPlanting, ...]:
        """The plantings in a bed, on its frames too."""
        return self._plantings_by["bed"].get(bed, ())

    @cached_property
    def _plantings_by(self) -> Mapping[str, Mapping[str, tuple[WorkedPlanting, ...]]]:
        holders: dict[str, list[WorkedPlanting]] = {}
        beds: dict[str, list[WorkedPlanting]] = {}
        for one in self.plantings:
            holders.setdefault(one.holder, []).append(one)
            if name := self.bed_name(one):
                beds.setdefault(name, []).append(one)
        return {
            "holder": {name: tuple(some) for name, some in holders.items()},
            "bed": {name: tuple(some) for name, some in beds.items()},
        }

    def bed_name(self, planting: WorkedPlanting) -> str:
        """The bed a planting is in, "" where it is in none."""
        if planting.holder in self.plan.beds:
            return planting.holder
        frame = self.frames.get(planting.holder)
        return frame.bed.name if frame and frame.bed else ""

    def sun_at(self, planting: WorkedPlanting) -> tuple[float, float] | None:
        """Hours of direct sun where a planting stands; None where nobody can tell."""
        frame = self.frames.get(planting.holder)
        if frame is not None:
            return frame.sun_h
        bed = self.beds.get(planting.holder)
        if bed is not None:
            return bed.sun_h
        return wall_sun_h(self.plan.things.get(planting.holder), self.plan.garden)

    def is_covered(self, planting: WorkedPlanting) -> bool:
        """It stands under glass, film or fabric: its own, or one that is over its bed."""
        frame = self.frames.get(planting.holder)
        if frame is not None and (frame.frame.word == "cover" or "fabric" in frame.frame.facts):
            return True
        # a box `west of Long Bed` covers nothing in it
        return any(
            spot.relation in INSIDE and other.word == "cover"
            for place in {planting.holder, self.bed_name(planting)} - {""}
            for other, spot in self.plan.placed_by.get(place, ())
        )

    def tasks_about(self, *names: str) -> tuple[Task, ...]:
        """The gardener's own tasks for things of these names, and those that name nothing."""
        found = [task for name in ("", *names) for task in self._tasks_by_name.get(name, ())]
        return tuple({id(task): task for task in found}.values())

    @cached_property
    def _tasks_by_name(self) -> dict[str, list[Task]]:
        plan, before = self.plan, self.before
        names = {name.lower(): name for name in (*plan.frames, *plan.beds, *plan.things)}
        if before is not None and before.plan.tasks == plan.tasks:
            known = before.plan
            if {*names.values()} == {*known.frames, *known.beds, *known.things}:
                return before._tasks_by_name  # noqa: SLF001 - another season's own
        found: dict[str, list[Task]] = {}
        for task in plan.tasks:
            text = f"{task.what} {task.block.head.text}".lower()
            about = {name for low, name in names.items() if low in text}
            if task.spot and task.spot.thing in names.values():
                about.add(task.spot.thing)
            for name in about or {""}:
                found.setdefault(name, []).append(task)
        return found

    def history(self, bed: str) -> tuple[Grown, ...]:
        """What grew in a bed in years before, as it says itself and as last year's plan says."""
        return self._histories.get(bed, ())

    @cached_property
    def _histories(self) -> dict[str, tuple[Grown, ...]]:
        """The history of every bed."""
        gathered: dict[str, list[Grown]] = {
            name: list(bed.had) for name, bed in self.plan.beds.items()
        }
        for frame in self.plan.frames.values():
            # wear goes with the frame, rotation with the bed it stood in at the time
            for grown in frame.had:
                if bed := frame.bed_in(grown.year):
                    gathered.setdefault(bed, []).append(grown)
        for name, before in self.plan.history.items():
            gathered.setdefault(name, []).extend(before)
        return {name: _once_a_year(grown) for name, grown in gathered.items()}


def _once_a_year(grown: list[Grown]) -> tuple[Grown, ...]:
    """Each plant once a year, the years in order."""
    seen: dict[tuple[str, int], Grown] = {}
    for one in grown:
        seen.setdefault((one.plant.lower(), one.year), one)
    return tuple(sorted(seen.values(), key=lambda one: one.year))
