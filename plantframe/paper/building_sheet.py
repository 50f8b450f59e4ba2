"""The sheet to build a frame by."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, Final

from plantframe.jobs.job import BUILD, Job
from plantframe.paper.job_rows import about_of, copy_back, listed_jobs, row_of
from plantframe.paper.numbers import numbers_of
from plantframe.paper.open_questions import settle_first, stops, unread_words
from plantframe.paper.sheet import (
    BUILDING,
    Aside,
    Danger,
    Row,
    Sheet,
    dangers_of,
    garden_words,
    plan_file,
)
from plantframe.paper.squareness import checks_of
from plantframe.paper.subject import subject_of
from plantframe.paper.text import sentence
from plantframe.season.units import dated, day, listed, minutes_words
from plantframe.season.work import before, marked, steps_of

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.answers.answers import Answers
    from plantframe.jobs.listing import Jobs
    from plantframe.paper.job_rows import Listed
    from plantframe.paper.subject import Subject
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.work import FrameStep

NEAR_MINUTES: Final = 5.0  # to which the whole is rounded
SHORT_BY: Final = 0.1  # of its depth a post may stand short (common practice, no source)


def building_sheet(answers: Answers, jobs: Jobs, frame: WorkedFrame) -> Sheet:
    """The sheet to build a frame by. What a builder must answer for is a list of questions."""
    shown = answers.shown
    subject = subject_of(frame, shown)
    steps = in_order(steps_of(frame))
    known = listed_jobs(jobs, {BUILD}, frame.frame.name, _ticked(frame, steps))
    steps.sort(key=lambda step: _day_of(step, known))  # of one day they stay in their order
    order = [known.job(step.job) or _as_job(step) for step in steps]
    if frame.builders_work and frame.structure is not None:
        rows = _questions(frame.structure.questions)
        dangers = tuple(Danger(danger.says) for danger in frame.structure.dangers)
    else:
        rows = tuple(
            row_of(number, step.says, step.job, job, known, shown)
            for number, (step, job) in enumerate(zip(steps, order, strict=True), 1)
        )
        dangers = dangers_of([(number, job.dangers) for number, job in enumerate(order, 1)])
    return Sheet(
        BUILDING,
        frame.frame.name,
        (*_about(frame, known), *unread_words(answers)),
        garden_words(answers),
        plan_file(answers),
        answers.today,
        (*stops(answers, frame.frame.name), *dangers),
        numbers_of(subject) if subject else (),
        subject,
        asides=(
            *settle_first(answers, frame.frame.name),
            *_asides(frame, subject, steps, order, rows),
        ),
        rows=rows,
        back=_copy_back(frame, rows, steps),
    )


def in_order(steps: Sequence[FrameStep]) -> list[FrameStep]:
    """The steps as their kind lists them, each after all that goes before it."""
    firsts = before(steps)
    left = list(steps)
    found: list[FrameStep] = []
    while left:
        done = {step.id for step in found}
        known = {step.id for step in left} | done
        ready = next((step for step in left if firsts[step.id] & known <= done), left[0])
        left.remove(ready)
        found.append(ready)
    return found


def _day_of(step: FrameStep, known: Listed) -> tuple[bool, date]:
    """The day a step is down for; what is over comes first and what has no day last."""
    job = known.open.get(step.job)
    if job is None:
        return False, date.min
    return True, job.planned or date.max


def _ticked(frame: WorkedFrame, steps: Sequence[FrameStep]) -> dict[str, date]:
    """The day of each step that the plan says is done."""
    done = marked(frame, steps).done
    return {
        step.job: mark.day.day
        for step in steps
        if (mark := done.get(step.id)) is not None and mark.day is not None
    }


def _as_job(step: FrameStep) -> Job:
    """A step of a frame that stands already, for which there is no job."""
    return Job(
        step.job,
        step.says,
        "",
        BUILD,
        hands=step.step.hands,
        tools=step.step.tools,
        minutes=step.minutes,
        dont_yet=step.step.not_yet,
        stop_point=step.step.stop,
        alone=step.step.alone,
        wait=_wait(step),
        dangers=tuple(danger.says for danger in step.dangers),
        place={"bench": "at the bench"}.get(step.step.at, ""),
        power=step.step.power,
    )


def _wait(step: FrameStep) -> str:
    low, high = step.wait_days
    if not high:
        return ""
    days = f"{low}" if low == high else f"{low} to {high}"
    return f"{days} days for {step.waits_for}"


def _questions(questions: Sequence[str]) -> tuple[Row, ...]:
    """What to ask a builder: no steps are given for what others must answer for."""
    return tuple(Row(number, sentence(says)) for number, says in enumerate(questions, 1))


def _about(frame: WorkedFrame, known: Listed) -> tuple[str, ...]:
    lines = [about_of(frame)]
    if frame.builders_work:
        lines.append("Work for a builder: take these questions to one. No steps are given here.")
    if frame.stands:
        lines.append(f"It stands since {frame.frame.built}; this is for building it again.")
    days = [job.planned for job in known.open.values() if job.planned]
    told = []
    if days:
        first, last = min(days), max(days)
        told.append(f"planned {dated(first)}" + (f" to {dated(last)}" if last != first else ""))
    if frame.frame.ready_by is not None:
        told.append(f"ready by {day(frame.frame.ready_by.last)}")
    people = list(dict.fromkeys(who for job in known.open.values() for who in job.who))
    if people:
        told.append(listed(people))
    return (*lines, *(["; ".join(told)] if told else []))


def _asides(
    frame: WorkedFrame,
    subject: Subject | None,
    steps: Sequence[FrameStep],
    order: Sequence[Job],
    rows: Sequence[Row],
) -> tuple[Aside, ...]:
    """What to take along, how to know it is true, where to stop, what wants two."""
    if frame.builders_work:
        return ()
    found = [
        Aside("Pieces", _pieces(subject)) if subject else None,
        Aside("Carry to the bed", _tools(steps, there=True)),
        Aside("Stays at the house", _tools(steps, there=False)),
        Aside("It is true if", checks_of(subject)) if subject else None,
        Aside("Post stuck short", (_stuck(subject),)) if subject else None,
        Aside("In all", _in_all(order, rows)),
    ]
    return tuple(aside for aside in found if aside and any(aside.lines))


def _pieces(subject: Subject) -> tuple[str, ...]:
    pieces = subject.worked.pieces.items()
    return ("; ".join(subject.piece_words(name, one) for name, one in pieces),)


def _tools(steps: Sequence[FrameStep], *, there: bool) -> tuple[str, ...]:
    """The tools of the steps done at the bed, or of those done at the bench or with a socket."""
    tools = [
        tool
        for step in steps
        if (step.step.at == "there" and not step.step.power) == there
        for tool in step.step.tools
    ]
    return (", ".join(dict.fromkeys(tools)),) if tools else ()


def _stuck(subject: Subject) -> str:
    """How far a post may stand short before more than a saw is needed."""
    down = subject.figure("posts.down")
    if not down or not subject.structure.seasonal or not subject.structure.stands.by:
        return ""
    return (
        f"By {subject.shown.length(down * SHORT_BY)} at most: saw its head level with the others. "
        "By more: shift it a hand along, or brace it"
    )


def _in_all(order: Sequence[Job], rows: Sequence[Row]) -> tuple[str, ...]:
    lines = []
    spent = [job.minutes for job in order if job.minutes]
    if spent:
        low, high = (
            NEAR_MINUTES * round(sum(one) / NEAR_MINUTES) for one in zip(*spent, strict=True)
        )
        lines.append(f"About {minutes_words((low, high))}, an estimate")
    if two := [str(row.number) for row in rows if row.hands > 1]:
        lines.append(f"Two pairs of hands for {_steps(two)}")
    else:
        lines.append("One person can do it all")
    if stops := [str(row.number) for row in rows if row.stop]:
        lines.append(f"Good to stop after {_steps(stops)} (■)")
    return tuple(lines)


def _steps(numbers: Sequence[str]) -> str:
    return f"step{'s' if len(numbers) > 1 else ''} {listed(list(numbers))}"


def _copy_back(frame: WorkedFrame, rows: Sequence[Row], steps: Sequence[FrameStep]) -> str:
    """The line that a tick becomes in the plan."""
    if frame.builders_work or not steps or frame.stands:
        return ""
    left = [step for row, step in zip(rows, steps, strict=True) if not row.state]
    if not left:
        return ""
    return copy_back(frame.frame.name, left[0].short)
