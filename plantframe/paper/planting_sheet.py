"""The sheet for planting day: one card to each plant, how many, how far apart, where, when."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from plantframe.frozen import frozen
from plantframe.jobs.job import PLANT, SOW
from plantframe.paper.drawing import stacked
from plantframe.paper.job_rows import about_of, copy_back, listed_jobs, row_of
from plantframe.paper.planting_line import planting_line
from plantframe.paper.scale import TooLargeError
from plantframe.paper.sheet import (
    PLANTING,
    Aside,
    Danger,
    Number,
    Sheet,
    garden_words,
    plan_file,
)
from plantframe.paper.subject import subject_of
from plantframe.paper.text import sentence
from plantframe.season.likeness import short
from plantframe.season.plantings import as_range
from plantframe.season.units import dated, day, plural

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.answers.answers import Answers
    from plantframe.jobs.job import Job
    from plantframe.jobs.listing import Jobs
    from plantframe.paper.drawing import Drawing
    from plantframe.plan.things import Bed, Thing
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.units import Shown

LINE_MM = 180.0
BROAD_M = 0.6  # what is narrower has one row
MOST_ROWS = 40
TENDER = frozenset({"tender", "half hardy"})
HURTS = frozenset({"poisonous", "irritant", "thorny"})


def planting_sheet(answers: Answers, jobs: Jobs, frame: WorkedFrame) -> Sheet | None:
    """The sheet for planting one frame; None where nothing is to grow on it."""
    if not frame.plantings:
        return None
    how = frame.structure.planting.says if frame.structure else ""
    about = [about_of(frame)]
    ready = [job for job in jobs.jobs if job.block == frame.frame.name and job.kind == "build"]
    own_order = frame.structure is not None and frame.structure.planting.own_order
    if ready and not own_order:
        about.append(f"Not before the frame stands: {plural(len(ready), 'step')} to go.")
    return _sheet(answers, jobs, frame.frame.name, frame.plantings, tuple(about), how, frame)


def bed_planting_sheet(answers: Answers, jobs: Jobs, place: Bed | Thing) -> Sheet | None:
    """The sheet for what grows in a bed or on a wall without a frame; None where nothing does."""
    plantings = answers.season.held_by(place.name)
    if not plantings:
        return None
    return _sheet(answers, jobs, place.name, plantings, (place.word,), "", None, place)


def _sheet(
    answers: Answers,
    jobs: Jobs,
    block: str,
    plantings: Sequence[WorkedPlanting],
    about: tuple[str, ...],
    how: str,
    frame: WorkedFrame | None,
    place: Bed | Thing | None = None,
) -> Sheet:
    known = listed_jobs(jobs, {SOW, PLANT}, block)
    order = [*known.skipped.values(), *known.done.values(), *known.open.values()]
    rows = tuple(
        row_of(number, job.does, job.id, job, known, answers.shown)
        for number, job in enumerate(order, 1)
    )
    left = [job for job in order if job.id in known.open]
    across = _across_m(frame, place) / len(plantings)
    spreads = [spread_of(one, across) for one in plantings]
    cards = [
        _card(one, spread, answers.shown, left)
        for one, spread in zip(plantings, spreads, strict=True)
    ]
    drawn = [one for one, spread in zip(plantings, spreads, strict=True) if spread is None]
    asides = [*cards, Aside("Where", (sentence(how),) if how else ())]
    return Sheet(
        PLANTING,
        block,
        about,
        garden_words(answers),
        plan_file(answers),
        answers.today,
        poisons(plantings),
        _numbers(plantings[0], spreads[0], answers.shown),
        drawing=_lines(drawn, frame, answers.shown),
        caption="the row from above, plants numbered from the left",
        asides=tuple(aside for aside in asides if aside.lines),
        rows=rows,
        back=copy_back(block, short(left[0].does)) if left else "",
    )


def poisons(plantings: Sequence[WorkedPlanting]) -> tuple[Danger, ...]:
    """What the plants themselves can do to people and animals."""
    says = dict.fromkeys(
        f"{one.name}: {harm.what}"
        for one in plantings
        for harm in (one.entry.harm if one.entry else ())
        if harm.kind in HURTS
    )
    return tuple(Danger(one) for one in says)


@frozen
class Spread:
    """Plants over a broad bed or box: so many rows, so many in each, and their distances, m."""

    rows: int
    in_row: int
    step_m: float
    between_m: float


def spread_of(planting: WorkedPlanting, across_m: float) -> Spread | None:
    """The rows a number of plants stands in; None where one row has room for them.

    across_m   how broad the bed or box is
    The rows are as many as leave each plant farthest from its nearest neighbour.
    """
    own, along = planting.planting, planting.row_m
    usual = as_range(planting.entry.apart) if planting.entry else None
    if own.apart_m or not own.count or not along or usual is None or across_m < BROAD_M:
        return None
    if along / own.count >= usual.low:
        return None
    ways = []
    for rows in range(2, min(own.count, MOST_ROWS) + 1):
        in_row = math.ceil(own.count / rows)
        ways.append(Spread(rows, in_row, along / in_row, across_m / rows))
    return max(ways, key=lambda way: min(way.step_m, way.between_m)) if ways else None


def _across_m(frame: WorkedFrame | None, bed: Bed | Thing | None) -> float:
    """How broad it is, where plants stand all over it and not in one row; else 0."""
    if frame is None:
        return getattr(bed, "width_m", None) or 0.0
    if frame.worked is None or frame.structure is None or "cover" not in frame.structure.blocks:
        return 0.0
    return frame.worked.ground_m[1]


def _numbers(planting: WorkedPlanting, spread: Spread | None, shown: Shown) -> tuple[Number, ...]:
    found = []
    step = spread.step_m if spread else step_m(planting)
    if step:
        found.append(Number(shown.length(step), "from plant to plant"))
    if planting.planting.count:
        rows = ""
        if spread:
            rows = f", in {spread.rows} rows {shown.length(spread.between_m)} apart"
        found.append(Number(f"{planting.planting.count}", f"of {planting.name}{rows}"))
    soil = as_range(planting.entry.soil) if planting.entry else None
    if soil is not None:
        found.append(Number(shown.warmth(soil.low), "in the soil at least, in the morning"))
    return tuple(found)


def step_m(planting: WorkedPlanting) -> float | None:
    """From plant to plant: as the plan says, as its number gives, or as the trade plants."""
    own = planting.planting
    if own.apart_m:
        return own.apart_m
    if own.count and planting.row_m:
        return planting.row_m / own.count
    apart = as_range(planting.entry.apart) if planting.entry else None
    return apart.middle if apart is not None else None


def _card(
    planting: WorkedPlanting, spread: Spread | None, shown: Shown, left: Sequence[Job]
) -> Aside:
    """All there is to know of one plant on its day."""
    own, entry = planting.planting, planting.entry
    lines = []
    if step := spread.step_m if spread else step_m(planting):
        many = f"{plural(own.count, 'plant')}, " if own.count else ""
        usual = as_range(entry.apart) if entry else None
        trade = f" (usual: {shown.lengths(usual.low, usual.high)})" if usual is not None else ""
        rows = f"{spread.rows} rows of {spread.in_row}, " if spread else ""
        lines.append(f"{many}{rows}{shown.length(step)} apart{trade}")
    days = [job for job in left if own.named in job.does and job.planned]
    lines += [f"{_verb(job)} {dated(job.planned)}" for job in days if job.planned]
    frost = planting.garden.frost_last
    if entry is not None and entry.tender is not None and entry.tender.value in TENDER:
        if frost is not None:
            lines.append(f"frost kills it: the last is about {day(frost.day)}, in some years later")
        else:
            lines.append("frost kills it: wait until the last is over")
    soil = as_range(entry.soil) if entry is not None else None
    if soil is not None:
        lines.append(f"soil at least {shown.warmth(soil.low)} in the morning")
    if own.sow is not None and not planting.under_cover:
        lines.append("sow as deep as the packet says")
    elif own.out is not None:
        lines.append("as deep as it stood in its pot; water it in")
    return Aside(own.named, tuple(sentence(line) for line in lines))


def _verb(job: Job) -> str:
    """What is done on the day: hardening off is not yet planting."""
    if job.kind == SOW:
        return "sow"
    return "harden off from" if job.does.startswith("harden off") else "plant"


def _lines(
    plantings: Sequence[WorkedPlanting], frame: WorkedFrame | None, shown: Shown
) -> Drawing | None:
    """The row of each planting that has a number and a length."""
    subject = subject_of(frame, shown) if frame is not None else None
    drawn = []
    for one in plantings:
        if not one.planting.count or not one.row_m:
            continue
        try:
            found = planting_line(subject, one.row_m, one.planting.count, shown, LINE_MM)
        except TooLargeError:
            continue
        if found is not None:
            drawn.append(found)
    return stacked(drawn, 1.0) if drawn else None
