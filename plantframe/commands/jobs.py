"""jobs: the ordered list, each job with its day, hands and tools, and what must not come yet."""

from __future__ import annotations

import sys
from datetime import timedelta
from itertools import groupby
from typing import TYPE_CHECKING, Any

from plantframe.jobs.job import OWN
from plantframe.jobs.listing import jobs_of
from plantframe.season.units import day, listed, plural

if TYPE_CHECKING:
    import argparse
    from collections.abc import Sequence
    from datetime import date

    from plantframe.answers.answers import Answers
    from plantframe.commands.screen import Screen
    from plantframe.jobs.job import Job
    from plantframe.jobs.listing import Jobs

WALK = 8  # lines of a ten-minute walk
WEEKDAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")


def run(given: argparse.Namespace, today: date) -> int:
    """Print the jobs that were asked for."""
    from plantframe.commands.main import FINE, Refused, one_answer, write_json
    from plantframe.commands.screen import Screen

    answers = one_answer(given.plan, today)
    jobs = jobs_of(answers.season)
    chosen = choose(answers, jobs, given)
    if given.frame and not chosen and given.frame.lower() not in _blocks(answers, jobs):
        names = listed(sorted({job.block for job in jobs.jobs}), "or")
        raise Refused(f"No frame or bed here is called “{given.frame}”. There are {names}.")
    if given.json:
        write_json({"plan": answers.plan.name, **as_data(jobs, chosen)})
        return FINE
    show(answers, jobs, chosen, Screen.of(sys.stdout), short=given.walk)
    return FINE


def _blocks(answers: Answers, jobs: Jobs) -> set[str]:
    return {name.lower() for name in (*answers.plan.frames, *answers.plan.beds)} | {
        job.block.lower() for job in jobs.jobs
    }


def choose(answers: Answers, jobs: Jobs, given: argparse.Namespace) -> list[Job]:
    """The jobs of a day, a week, a person, a frame or a walk; all of them where none is named."""
    chosen = list(jobs.jobs)
    if given.day is not None:
        chosen = [job for job in chosen if _falls(job, given.day, given.day)]
    if given.week is not None:
        first = given.week - timedelta(days=given.week.weekday())
        chosen = [job for job in chosen if _falls(job, first, first + timedelta(days=6))]
    if given.person:
        name = given.person.lower()
        chosen = [job for job in chosen if not job.who or name in {who.lower() for who in job.who}]
    if given.frame:
        chosen = [job for job in chosen if job.block.lower() == given.frame.lower()]
    if given.walk:
        today = answers.today
        soon = today + timedelta(days=1)
        near = [job for job in chosen if job.kind != "build" and _falls(job, today, soon)]
        chosen = near[:WALK]
    return chosen


def _falls(job: Job, first: date, last: date) -> bool:
    """Is the job, or a round of it, down for one of these days?"""
    if job.planned is None or job.planned > last:
        return False
    if job.every_days is None:
        return job.planned >= first
    if job.until is not None and job.until < first:
        return False
    if job.planned >= first:
        return True
    step = max(job.every_days[0], 1)
    rounds = -(-(first - job.planned).days // step)
    return job.planned + timedelta(days=rounds * step) <= last


# ---- on the screen --------------------------------------------------------------------------
def show(
    answers: Answers, jobs: Jobs, chosen: Sequence[Job], screen: Screen, *, short: bool
) -> None:
    """Print a list of jobs."""
    title = answers.plan.garden.name or answers.plan.name
    screen.line(screen.strong(f"{title}: {plural(len(chosen), 'job')}"))
    for trouble in jobs.troubles:
        screen.line()
        screen.labelled("Cannot be as written:", trouble.says, "")
    for slip in jobs.mistakes:
        screen.labelled(f"line {slip.where.line}:", slip.says, "")
    if short:
        for job in chosen:
            screen.wrapped(f"[ ] {job.says}", "", "    ")
        return
    number = 0
    for (when, until, block), group in groupby(chosen, key=_group):
        screen.line()
        screen.ends(f"{when}  {block}" if block else when, until)
        for job in group:
            number += 1
            _job(job, number, screen)
    if jobs.done:
        screen.line()
        screen.wrapped(f"Done: {'; '.join(job.says for job in jobs.done)}.", "", "  ")
    for job in jobs.skipped:
        screen.wrapped(f"Left out: {job.says}.", "", "  ")


def _group(job: Job) -> tuple[str, str, str]:
    """Jobs of one day and one block stand together, with the day they must be done by."""
    if job.planned is None:
        when = job.whenever[:1].upper() + job.whenever[1:] if job.whenever else "Any time"
    else:
        when = f"{WEEKDAYS[job.planned.weekday()]} {day(job.planned)} {job.planned.year}"
    by = ""
    if job.latest is not None and job.every_days is None and job.latest != job.planned:
        by = f"by {day(job.latest)}"
    return when, by, "" if job.kind == OWN else job.block


def _job(job: Job, number: int, screen: Screen) -> None:
    screen.labelled(f"[ ] {number:3}.", _sentence(job), "")
    pad = " " * 10
    if job.hands > 1:
        alone = f" Alone: {job.alone}." if job.alone else ""
        screen.wrapped(f"{job.hands} people.{alone}", pad)
    if job.dont_yet:
        screen.wrapped(f"Not yet: {job.dont_yet}.", pad)
    if job.how:
        screen.wrapped(job.how, pad)
    for danger in job.dangers:
        screen.wrapped(f"Mind: {danger}.", pad)
    if job.wait:
        screen.wrapped(f"Then wait {job.wait}.", pad)
    if job.stop_point:
        screen.wrapped("A good place to stop.", pad)
    if job.overdue:
        screen.wrapped("Its days are over: is it done? Mark it, or move it.", pad)


def _sentence(job: Job) -> str:
    """What is done, and in brackets where, how long, how often, by whom, with what."""
    told = []
    if job.place:
        told.append(job.place)
    if job.minutes is not None:
        told.append(_minutes(job.minutes))
    if job.every_days is not None:
        told.append(_every(job.every_days, job.until))
    if job.who:
        told.append(listed(list(job.who)))
    if job.tools:
        told.append(", ".join(job.tools))
    extra = "; ".join(told)
    return f"{job.does} ({extra})" if extra else job.does


def _minutes(minutes: tuple[float, float]) -> str:
    low, high = (max(round(one), 1) for one in minutes)
    if high >= 90:
        hours = (round(low / 30) / 2, round(high / 30) / 2)
        return f"{hours[0]:g} h" if hours[0] == hours[1] else f"{hours[0]:g} to {hours[1]:g} h"
    return f"{low} min" if low == high else f"{low} to {high} min"


def _every(days: tuple[int, int], until: date | None) -> str:
    low, high = days
    if low == high == 1:
        often = "every day"
    elif low == high == 7:
        often = "every week"
    elif low == high:
        often = f"every {low} days"
    else:
        often = f"every {low} to {high} days"
    return f"{often} until {day(until)}" if until is not None else often


# ---- as data --------------------------------------------------------------------------------
def as_data(jobs: Jobs, chosen: Sequence[Job]) -> dict[str, Any]:
    """The jobs as data: the promise of the commands page."""
    return {
        "jobs": [job_data(job) for job in chosen],
        "troubles": [
            {"name": one.name, "says": one.says, "jobs": list(one.jobs)} for one in jobs.troubles
        ],
        "mistakes": [
            {"name": one.name, "line": one.where.line, "file": one.where.file, "says": one.says}
            for one in jobs.mistakes
        ],
        "done": [job.id for job in jobs.done],
        "skipped": [job.id for job in jobs.skipped],
    }


def job_data(job: Job) -> dict[str, Any]:
    """One job as data."""

    def iso(value: date | None) -> str | None:
        return value.isoformat() if value is not None else None

    return {
        "id": job.id,
        "says": job.says,
        "block": job.block,
        "kind": job.kind,
        "hands": job.hands,
        "tools": list(job.tools),
        "minutes": round(sum(job.minutes) / 2) if job.minutes else None,
        "minutes_range": [round(one) for one in job.minutes] if job.minutes else None,
        "after": list(job.after),
        "earliest": iso(job.earliest),
        "latest": iso(job.latest),
        "planned": iso(job.planned),
        "who": list(job.who),
        "dont_yet": job.dont_yet or None,
        "stop_point": job.stop_point,
        "alone": job.alone or None,
        "wait": job.wait or None,
        "how": job.how or None,
        "dangers": list(job.dangers),
        "place": job.place or None,
        "every_days": list(job.every_days) if job.every_days else None,
        "until": iso(job.until),
        "whenever": job.whenever or None,
        "overdue": job.overdue,
    }
