"""The season's book: one HTML file with everything, to print in winter or carry on a phone."""

from __future__ import annotations

from itertools import groupby
from typing import TYPE_CHECKING, Final

from plantframe.answers.offers import offers_for
from plantframe.frozen import frozen
from plantframe.jobs.job import OWN
from plantframe.jobs.listing import jobs_of
from plantframe.paper.bed_drawing import bed_drawing
from plantframe.paper.cutting_drawing import cutting_drawings
from plantframe.paper.frame_drawing import frame_drawing
from plantframe.paper.job_rows import about_of
from plantframe.paper.labels import labels_sheet
from plantframe.paper.layout import pages_of
from plantframe.paper.neighbour import neighbour_sheet
from plantframe.paper.open_questions import unread_words
from plantframe.paper.pages import rendered
from plantframe.paper.scale import TooLargeError
from plantframe.paper.sheet import garden_words, plan_file
from plantframe.paper.sheets import ALL_KINDS, season_sheets
from plantframe.paper.subject import subject_of
from plantframe.paper.text import sentence
from plantframe.season.units import MONTHS, dated, every_words, listed, minutes_words
from plantframe.timber.buying import buying_of
from plantframe.timber.counters import COUNTERS, SEED

if TYPE_CHECKING:
    from collections.abc import Iterator

    from plantframe.advice.findings import Found
    from plantframe.answers.answers import Answers
    from plantframe.jobs.job import Job
    from plantframe.jobs.listing import Jobs
    from plantframe.paper.drawing import Drawing
    from plantframe.paper.layout import Page, Paper
    from plantframe.paper.sheet import Sheet
    from plantframe.timber.buying import Buying
    from plantframe.timber.counters import Line

OFFERS: Final = 2
SOON: Final = "any time, or when something calls for it"


@frozen
class Advice:
    """One warning as the book tells it."""

    level: str
    name: str
    block: str
    says: str
    by: str
    cures: tuple[str, ...]
    basis: str


@frozen
class Entry:
    """One job in the list of the season."""

    says: str
    block: str
    when: str
    extra: str
    dangers: tuple[str, ...]


@frozen
class Month:
    """The jobs planned for one month."""

    name: str
    entries: tuple[Entry, ...]


@frozen
class Counter:
    """What is bought at one counter: (what, what it is for, the cost or "")."""

    name: str
    lines: tuple[tuple[str, str, str], ...]


@frozen
class Figure:
    """A drawing with its heading and the anchor it is reached by."""

    title: str
    anchor: str
    drawing: Drawing


@frozen
class Printed:
    """The pages of a sheet and the anchor they are reached by."""

    sheet: Sheet
    anchor: str
    pages: tuple[Page, ...]


def book(answers: Answers, paper: Paper, *, large: bool = False) -> str:
    """The book as one HTML file that needs no other, no network and no script."""
    jobs = jobs_of(answers.season)
    buying = buying_of(answers.season)
    sheets = season_sheets(answers, jobs, ALL_KINDS)
    extra = (neighbour_sheet(answers, jobs), labels_sheet(answers))
    sheets += [sheet for sheet in extra if sheet is not None]
    printed = [
        Printed(sheet, f"sheet-{number}", pages_of(sheet, paper, large=large))
        for number, sheet in enumerate(sheets, 1)
    ]
    cutting = [
        Figure(title, f"cut-{number}", drawing)
        for number, (title, drawing) in enumerate(
            cutting_drawings(buying.cutting, answers.plan.garden), 1
        )
    ]
    return rendered(
        "book.html",
        paper,
        title=garden_words(answers),
        file=plan_file(answers),
        today=answers.today,
        unread=unread_words(answers),
        advice=[_advice(answers, found) for found in answers.advice.active],
        aside=_set_aside(answers),
        troubles=[trouble.says for trouble in jobs.troubles],
        months=list(_months(jobs)),
        counters=_counters(buying),
        yard=buying.to_rip,
        cutting=cutting,
        beds=_beds(answers),
        frames=_frames(answers),
        sheets=printed,
        notes=[
            f"{note.about}: {note.words}" if note.about else note.words
            for note in answers.plan.notes
        ],
    )


# ---- what to settle ---------------------------------------------------------------------------
def _advice(answers: Answers, found: Found) -> Advice:
    words = found.words(answers.shown)
    by = found.finding.by
    source = f", {found.rule.source}" if found.rule.source else ""
    reviewed = "" if found.rule.reviewed else "; not yet reviewed"
    says = f"{words.says} {words.if_ignored}" if words.if_ignored else words.says
    cures = (
        [edit.says for edit in offers_for(answers, found, OFFERS)]
        if found.level in {"stop", "warn"}
        else []
    )
    return Advice(
        found.level,
        found.rule.name,
        found.finding.block,
        says,
        dated(by) if by is not None else "",
        (*cures, *found.finding.ways),
        f"{found.rule.basis}{source}{reviewed}",
    )


def _set_aside(answers: Answers) -> list[str]:
    return [
        f"{one.found.finding.block}: {one.found.rule.name}, “{one.by.because}”"
        + (f", {one.by.who}" if one.by.who else "")
        for one in answers.advice.aside
    ]


# ---- the season's jobs --------------------------------------------------------------------------
def _months(jobs: Jobs) -> Iterator[Month]:
    """The jobs by the month they are planned for; those without a day last."""
    planned = [job for job in jobs.jobs if job.planned is not None]
    for (year, month), some in groupby(planned, key=_month_of):
        yield Month(f"{MONTHS[month - 1]} {year}", tuple(_entry(job) for job in some))
    rest = sorted((job for job in jobs.jobs if job.planned is None), key=lambda job: job.whenever)
    if rest:
        yield Month(SOON[:1].upper() + SOON[1:], tuple(_entry(job) for job in rest))


def _month_of(job: Job) -> tuple[int, int]:
    return (job.planned.year, job.planned.month) if job.planned else (0, 0)


def _entry(job: Job) -> Entry:
    told = [job.place, minutes_words(job.minutes) if job.minutes else ""]
    told += [every_words(job.every_days, job.until) if job.every_days else ""]
    told += [f"{job.hands} people" if job.hands > 1 else "", listed(list(job.who))]
    told += [", ".join(job.tools), f"not yet: {job.dont_yet}" if job.dont_yet else ""]
    told += [f"then wait {job.wait}" if job.wait else ""]
    told += ["its days are over: is it done?" if job.overdue else ""]
    when = dated(job.planned) if job.planned else job.whenever
    return Entry(
        sentence(job.does),
        "" if job.kind == OWN else job.block,
        when,
        "; ".join(one for one in told if one),
        job.dangers,
    )


# ---- buying -------------------------------------------------------------------------------------
def _counters(buying: Buying) -> list[Counter]:
    found = []
    for name in COUNTERS:
        lines = [line for line in buying.lines if line.counter == name and line.count]
        if lines:
            found.append(Counter(sentence(name), tuple(_line(line) for line in lines)))
    return found


def _line(line: Line) -> tuple[str, str, str]:
    told = [listed(list(line.for_))]
    told += [f"{line.spare} of them to spare" if line.spare else ""]
    told += [f"{line.from_shed} more from the shed" if line.from_shed else "", *line.minds]
    told += [f"if they are out of it: {line.instead}" if line.instead else ""]
    cost = f"{line.cost:.2f}" if line.cost is not None else ""
    counted = line.count > 1 and line.counter != SEED
    what = f"{line.count} × {line.says}" if counted else line.says
    return what, "; ".join(one for one in told if one), cost


# ---- drawings -----------------------------------------------------------------------------------
def _beds(answers: Answers) -> list[Figure]:
    found = []
    for number, bed in enumerate(answers.plan.beds.values(), 1):
        try:
            drawing = bed_drawing(answers, bed, ())
        except TooLargeError:
            continue
        if drawing is not None:
            found.append(Figure(bed.name, f"bed-{number}", drawing))
    return found


def _frames(answers: Answers) -> list[Figure]:
    found = []
    for number, frame in enumerate(answers.season.frames.values(), 1):
        subject = subject_of(frame, answers.shown)
        try:
            drawing = frame_drawing(subject, [about_of(frame)]) if subject is not None else None
        except TooLargeError:
            continue
        if drawing is not None:
            found.append(Figure(frame.frame.name, f"frame-{number}", drawing))
    return found
