"""The page for whoever looks after the garden while nobody is at home: plain words, one page."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from plantframe.jobs.away import next_away, while_away
from plantframe.paper.planting_sheet import poisons
from plantframe.paper.sheet import AWAY, Aside, Danger, Row, Sheet, garden_words, plan_file
from plantframe.paper.text import sentence
from plantframe.season.units import dated, day, every_words, minutes_words

if TYPE_CHECKING:
    from datetime import date

    from plantframe.answers.answers import Answers
    from plantframe.jobs.job import Job
    from plantframe.jobs.listing import Jobs

MOST_DAYS = 16  # as many columns as a page has room for


def neighbour_sheet(answers: Answers, jobs: Jobs) -> Sheet | None:
    """The page; None where the plan names no days when nobody is at home."""
    garden = answers.plan.garden
    span = next_away(garden, answers.today)
    if span is None:
        return None
    found = while_away(jobs.jobs, span.first, span.last, garden)
    days = (span.last - span.first).days + 1
    columns = (
        tuple(f"{(span.first + timedelta(days=turn)).day}" for turn in range(days))
        if days <= MOST_DAYS
        else ()
    )
    rows = tuple(
        Row(
            number,
            f"{job.block}: {sentence(job.does)}",
            _notes(job),
            job.hands,
            minutes_words(job.minutes) if job.minutes else "",
            ", ".join(job.tools),
            weeks=_boxes(job, span.first, span.last) if columns else (),
        )
        for number, job in enumerate((*found.rounds, *found.events), 1)
    )
    blocks = {job.block for job in (*found.rounds, *found.events)}
    growing = [one for one in answers.season.plantings if one.holder in blocks]
    leaving = [f"{job.block}: {job.does}" if job.block else job.does for job in found.leaving]
    asides = [
        Aside("Thank you", ("What is ripe is yours. Tick what is done.",)),
        Aside("If something is wrong, ring", ("………………………………………",)),
        Aside("Where things are", ("watering can: ………………   key: ………………",)),
        Aside(f"Ourselves, before {day(span.first)}", tuple(sentence(one) for one in leaving)),
    ]
    return Sheet(
        AWAY,
        garden.name or answers.plan.name,
        (f"{dated(span.first)} to {dated(span.last)}",),
        garden_words(answers),
        plan_file(answers),
        answers.today,
        (*_dangers(answers, blocks), *poisons(growing)),
        asides=tuple(aside for aside in asides if aside.lines),
        rows=rows,
        columns=columns,
    )


def _notes(job: Job) -> tuple[tuple[str, str], ...]:
    often = every_words(job.every_days, None) if job.every_days else job.whenever
    notes = [("", sentence(often))] if often else []
    if job.place:
        notes.append(("", sentence(job.place)))
    return tuple(notes)


def _boxes(job: Job, first: date, last: date) -> tuple[int, ...]:
    """One box on each day a round falls on; none for what the weather calls for."""
    days = [first + timedelta(days=turn) for turn in range((last - first).days + 1)]
    if job.every_days is None:
        return (0,) * len(days)
    start, until, step = job.planned or first, job.until or last, max(job.every_days[1], 1)
    return tuple(int(start <= one <= until and (one - start).days % step == 0) for one in days)


def _dangers(answers: Answers, blocks: set[str]) -> tuple[Danger, ...]:
    """What the frames that stand there can do to somebody who does not know them."""
    says = dict.fromkeys(
        danger.says
        for name, frame in answers.season.frames.items()
        if name in blocks and frame.structure is not None
        for danger in frame.structure.dangers
        if "use" in danger.at
    )
    return tuple(Danger(one) for one in says)
