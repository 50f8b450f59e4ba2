"""All jobs of a season, what goes before what, and the gardener's marks; no dates yet."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.jobs.building import (
    Standing,
    add_building,
    add_putting_on,
    add_taking_down,
    place_of,
    want_by,
    who_of,
)
from plantframe.jobs.care import add_frame_care
from plantframe.jobs.doubling import join_with_tasks
from plantframe.jobs.drafts import Drafts
from plantframe.jobs.marks import put_marks
from plantframe.jobs.nesting import keep_off_nests
from plantframe.jobs.own import Waiting, add_lines_marked, add_task, put_after
from plantframe.jobs.planting import Growing, Site, add_clearing, add_planting, follows, grown
from plantframe.plan.things import Bed, Frame, Thing

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import date

    from plantframe.plan.things import Task
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season


def gather(season: Season) -> Drafts:
    """Every job of the season, in the order of the plan."""
    out = Drafts()
    building: list[tuple[WorkedFrame, Mapping[str, str]]] = []
    waiting: list[Waiting] = []
    for one in _in_plan_order(season):
        if isinstance(one, Frame):
            frame = season.frames[one.name]
            building.append((frame, _add_frame(frame, season.today, out)))
        elif isinstance(one, Bed | Thing):
            _add_place(season, one, out)
        elif (later := add_task(one, out)) is not None:
            waiting.append(later)
    add_lines_marked(building, out)
    for later in waiting:
        put_after(later, season.plan, out)
    join_with_tasks(season, out)
    keep_off_nests(season, out)
    put_marks(season, out)
    return out


def _in_plan_order(season: Season) -> list[Frame | Bed | Thing | Task]:
    """Everything that has jobs, as it stands in the plan's files."""
    plan = season.plan
    everything: list[Frame | Bed | Thing | Task] = [
        *plan.frames.values(),
        *plan.beds.values(),
        *plan.things.values(),
        *plan.tasks,
    ]
    return sorted(everything, key=lambda one: (one.block.where.file, one.block.where.line))


def _add_frame(frame: WorkedFrame, today: date, out: Drafts) -> Mapping[str, str]:
    """The jobs of one frame: build, plant, lead, pick, take down, look after."""
    name, place = frame.frame.name, place_of(frame)
    standing = add_building(frame, today, out)
    add_putting_on(frame, standing.last, out)
    until = frame.frame.take_down.last if frame.frame.take_down else None
    how = frame.structure.planting.says if frame.structure else ""
    pickers = who_of(frame.frame, "picked by")
    crops: list[Growing] = []
    covered = frame.frame.word == "cover"
    all_grown = [
        grown(planting, until, today, there=frame.stands, covered=covered)
        for planting in frame.plantings
    ]
    for found in all_grown:
        later = any(follows(other, found) for other in all_grown)
        site = Site(name, place, pickers, "" if later else how, framed=True)
        crop = add_planting(found, site, out)
        crops.append(crop)
        if crop.placed:
            _put_round_planting(frame, standing, crop, out, later=later)
    add_clearing(crops, name, place, out)
    over = [one for crop in crops for one in crop.over]
    ends = [crop.grown.ends for crop in crops]
    add_taking_down(frame, (*standing.last, *over), ends, today, out)
    growing = [(crop.placed, crop.grown.in_ground, crop.grown.ends) for crop in crops]
    add_frame_care(frame, standing.last, growing, today, out)
    return standing.steps


def _put_round_planting(
    frame: WorkedFrame, standing: Standing, crop: Growing, out: Drafts, *, later: bool
) -> None:
    """Put planting after what it waits for, and before what waits for it.

    later   it follows another crop of the frame, which stands by then
    """
    for name, days, what in standing.before_plant:
        because = "no post goes through roots"
        out.put([name], [crop.placed], wait=days, waits_for=what, because=because)
    window = crop.grown.in_ground
    day = window.aim if window else None
    if not later and (frame.frame.on is None or day is None or day <= frame.frame.on.day):
        out.put([crop.placed], standing.after_plant)
    if not standing.before_plant:
        want_by(standing.steps.values(), day, out)


def _add_place(season: Season, place: Bed | Thing, out: Drafts) -> None:
    """The jobs of what grows in a bed or on a wall without a frame."""
    where = f"in {place.name}" if isinstance(place, Bed) else f"at {place.name}"
    for planting in season.held_by(place.name):
        found = grown(planting, None, season.today, there=True)
        add_planting(found, Site(place.name, where), out)
