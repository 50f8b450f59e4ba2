"""The sheet for the summer walk: how each plant is led, and boxes for the rounds."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.jobs.job import CARE, PICK, TRAIN
from plantframe.paper.job_rows import about_of
from plantframe.paper.planting_sheet import poisons
from plantframe.paper.rounds import columns_of, often
from plantframe.paper.sheet import (
    TRAINING,
    Aside,
    Danger,
    Number,
    Row,
    Sheet,
    garden_words,
    plan_file,
)
from plantframe.paper.text import sentence
from plantframe.season.units import day, minutes_words

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.answers.answers import Answers
    from plantframe.jobs.job import Job
    from plantframe.jobs.listing import Jobs
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting

NOTHING = "none"  # a plant that is not led
ROUNDS = frozenset({TRAIN, PICK, CARE})


def training_sheet(answers: Answers, jobs: Jobs, frame: WorkedFrame) -> Sheet | None:
    """The sheet for leading, picking and looking after; None where nothing comes round."""
    found = [job for job in jobs.jobs if job.block == frame.frame.name and job.kind in ROUNDS]
    if not found:
        return None
    dangers = frame.structure.dangers if frame.structure else ()
    in_use = tuple(Danger(danger.says) for danger in dangers if "use" in danger.at)
    return Sheet(
        TRAINING,
        frame.frame.name,
        (about_of(frame),),
        garden_words(answers),
        plan_file(answers),
        answers.today,
        (*in_use, *poisons(frame.plantings)),
        _numbers(answers, frame),
        asides=tuple(aside for one in frame.plantings if (aside := _how(one)) is not None),
        rows=round_rows(found),
        columns=round_heads(found),
    )


def round_heads(jobs: Sequence[Job]) -> tuple[str, ...]:
    """What stands over the columns of boxes."""
    columns = columns_of(jobs)
    return columns.heads if columns is not None else ()


def round_rows(jobs: Sequence[Job]) -> tuple[Row, ...]:
    """Each round with its boxes, and what is done once or when the weather calls for it."""
    columns = columns_of(jobs)
    rows = []
    for number, job in enumerate(jobs, 1):
        notes = [("", sentence(often(job)))] if often(job) else []
        if job.planned and job.every_days is None:
            by = f"{day(job.planned)}"
            if job.latest and job.latest != job.planned:
                by += f", {day(job.latest)} at latest"
            notes.append(("", sentence(by)))
        notes += [("not yet", job.dont_yet)] if job.dont_yet else []
        notes += [("mind", danger) for danger in job.dangers]
        rows.append(
            Row(
                number,
                sentence(job.does),
                tuple(notes),
                job.hands,
                minutes_words(job.minutes) if job.minutes else "",
                ", ".join(job.tools),
                weeks=columns.of(job) if columns is not None else (),
            )
        )
    return tuple(rows)


def _numbers(answers: Answers, frame: WorkedFrame) -> tuple[Number, ...]:
    shown = answers.shown
    found = []
    if frame.height_m and frame.holds:
        there = ": pinch there" if any(map(_is_pinched, frame.plantings)) else ""
        found.append(Number(shown.length(frame.height_m), f"top of the frame{there}"))
    leaders = next((one.leaders for one in frame.plantings if one.leaders), None)
    if leaders:
        found.append(
            Number(f"{leaders}", "leaders kept to a plant" if leaders > 1 else "leader kept")
        )
    heavy = frame.heaviest
    if heavy is not None and heavy.weight_kg_per_m is not None:
        weight = shown.hanging_bare(heavy.weight_kg_per_m)
        found.append(Number(weight, f"{shown.a_metre} at its heaviest, wet: an estimate"))
    return tuple(found)


def _is_pinched(planting: WorkedPlanting) -> bool:
    """Whether its tips are taken out where the frame ends."""
    entry = planting.entry
    if entry is None:
        return False
    told = [entry.training.how if entry.training else "", *(care.do for care in entry.care)]
    told.append(planting.planting.pinched)
    return any(re.search(r"\bpinch", one, re.IGNORECASE) for one in told)


def _how(planting: WorkedPlanting) -> Aside | None:
    """How a plant is led, in the words of its entry."""
    training = planting.entry.training if planting.entry else None
    if training is None or not training.how or training.kind == NOTHING:
        return None
    lines = [sentence(training.how)]
    own = planting.planting
    lines += [f"Your plan: {words}" for words in (own.trained, own.pinched) if words]
    return Aside(own.named, tuple(lines))
