"""The sheet to take a frame down by, and to look its parts over."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.catalogue.wares import several
from plantframe.jobs.job import TAKE_DOWN, Job
from plantframe.paper.job_rows import about_of, copy_back, listed_jobs, row_of
from plantframe.paper.sheet import (
    TAKING_DOWN,
    Aside,
    Number,
    Sheet,
    dangers_of,
    garden_words,
    plan_file,
)
from plantframe.paper.text import sentence
from plantframe.season.likeness import short
from plantframe.season.units import dated, plural

if TYPE_CHECKING:
    from plantframe.answers.answers import Answers
    from plantframe.catalogue.workings import Working
    from plantframe.jobs.listing import Jobs
    from plantframe.season.frames import WorkedFrame

ROOM_TO_WRITE: Final = "…………………"
COUNTED: Final = 3
# What is not gathered in again piece by piece.
USED_UP: Final = frozenset({"screw", "staple", "concrete", "fill"})


def taking_down_sheet(answers: Answers, jobs: Jobs, frame: WorkedFrame) -> Sheet | None:
    """The sheet to take a frame down by; None for a kind whose entry says nothing of it."""
    if frame.worked is None or not frame.worked.down or frame.builders_work:
        return None
    known = listed_jobs(jobs, {TAKE_DOWN}, frame.frame.name)
    order = [*known.skipped.values(), *known.done.values(), *known.open.values()]
    if not order:
        order = [_as_job(frame, working) for working in frame.worked.down]
    rows = tuple(
        row_of(number, job.does, job.id, job, known, answers.shown)
        for number, job in enumerate(order, 1)
    )
    about = [about_of(frame)]
    days = [job.planned for job in known.open.values() if job.planned]
    if days:
        about.append(f"planned {dated(min(days))}")
    elif frame.lasting:
        about.append("It stays up; this is for the day it has to go.")
    left = [job for job in order if job.id in known.open]
    found = [
        Aside("Where it goes", _sentences(frame.structure.storage if frame.structure else "")),
        Aside("Look it over, write", _to_look_at(frame)),
    ]
    return Sheet(
        TAKING_DOWN,
        frame.frame.name,
        tuple(about),
        garden_words(answers),
        plan_file(answers),
        answers.today,
        dangers_of([(number, job.dangers) for number, job in enumerate(order, 1)]),
        _counts(frame),
        asides=tuple(aside for aside in found if aside.lines),
        rows=rows,
        back=copy_back(frame.frame.name, short(left[0].does)) if left else "",
    )


def _as_job(frame: WorkedFrame, working: Working) -> Job:
    """A step of a frame that has no day to come down."""
    step = working.step
    dangers = frame.structure.dangers if frame.structure else ()
    return Job(
        step.id,
        step.do,
        "",
        TAKE_DOWN,
        hands=step.hands,
        tools=step.tools,
        minutes=working.minutes,
        alone=step.alone,
        dangers=tuple(danger.says for danger in dangers if {step.id, "down"} & set(danger.at)),
    )


def _sentences(text: str) -> tuple[str, ...]:
    return tuple(sentence(one) for one in text.split(". ") if one.strip())


def _counts(frame: WorkedFrame) -> tuple[Number, ...]:
    """How many of each must come together in the shed: the first few parts."""
    pieces = frame.worked.pieces.items() if frame.worked else ()
    counted = [
        Number(f"{one.count}", name if one.count == 1 else several(name))
        for name, one in pieces
        if one.part.of not in USED_UP
    ]
    return tuple(counted[:COUNTED])


def _to_look_at(frame: WorkedFrame) -> tuple[str, ...]:
    """What its kind is looked over for each year, with room to write beside it."""
    lines = []
    for care in frame.structure.care if frame.structure else ():
        if care.every is None or care.every.base != "years" or care.when:
            continue
        pieces = frame.worked.pieces.get(care.per) if frame.worked else None
        count = pieces.count if pieces is not None else 0
        of = f" ({plural(count, care.per, several(care.per))})" if count > 1 else ""
        lines.append(f"{sentence(care.do)}{of}: {ROOM_TO_WRITE}")
    return tuple(lines)
