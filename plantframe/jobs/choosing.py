"""Some of the jobs: those of a day, a week, a person, a frame, or a walk round with ten minutes."""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING, Final

from plantframe.jobs.job import OWN, PICK, TRAIN

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.jobs.job import Job

WALK_LINES: Final = 8  # what one keeps in mind on a walk (common practice, no source)
WALK_MINUTES: Final = 10.0
A_LOOK_MINUTES: Final = 1.0  # of what nobody has put a time to


def of_day(jobs: Iterable[Job], day: date) -> tuple[Job, ...]:
    """What is down for a day, with the rounds that fall on it."""
    return tuple(job for job in jobs if _falls_on(job, day))


def of_week(jobs: Iterable[Job], day: date) -> tuple[Job, ...]:
    """What is down for the week of a day, Monday to Sunday; a round is listed once."""
    monday = day - timedelta(days=day.weekday())
    days = [monday + timedelta(days=count) for count in range(7)]
    return tuple(job for job in jobs if any(_falls_on(job, one) for one in days))


def of_person(jobs: Iterable[Job], name: str) -> tuple[Job, ...]:
    """What a person can do: their own, and what is nobody's in particular."""
    return tuple(job for job in jobs if not job.who or _named(name, job))


def while_there(jobs: Iterable[Job], first: date, last: date) -> tuple[Job, ...]:
    """What falls on the days somebody is there who comes to help, and what has their name."""
    days = [first + timedelta(days=count) for count in range((last - first).days + 1)]
    return tuple(job for job in jobs if any(_falls_on(job, day) for day in days))


def of_frame(jobs: Iterable[Job], name: str) -> tuple[Job, ...]:
    """The jobs of one block, whatever the capitals."""
    return tuple(job for job in jobs if job.block.lower() == name.lower())


def walk(jobs: Iterable[Job], day: date, most: int = WALK_LINES) -> tuple[Job, ...]:
    """A walk round on that day: at most eight lines, and no more than ten minutes.

    First the rounds that fall on the day and what comes round oftenest; then small jobs of the day
    that want one person. Looking, picking and tying; nothing with a ladder.
    """
    return _parted(jobs, day, most)[0]


def beyond_walk(jobs: Iterable[Job], day: date, most: int = WALK_LINES) -> tuple[Job, ...]:
    """What is due on that day as well, and wants more time than the walk has."""
    return _parted(jobs, day, most)[1]


def _parted(jobs: Iterable[Job], day: date, most: int) -> tuple[tuple[Job, ...], tuple[Job, ...]]:
    """What goes into a walk, and what does not."""
    due = [
        job for job in jobs if not job.overdue and "steps" not in job.tools and _on_a_walk(job, day)
    ]
    goes: list[Job] = []
    rest: list[Job] = []
    left = WALK_MINUTES
    # of equals the order of the list stays
    for job in sorted(due, key=lambda job: (not _falls_on(job, day), _oftenest(job))):
        minutes = job.minutes[0] if job.minutes else A_LOOK_MINUTES
        fits = len(goes) < most and minutes <= left
        left -= minutes if fits else 0.0
        (goes if fits else rest).append(job)
    return tuple(goes), tuple(rest)


def _falls_on(job: Job, day: date) -> bool:
    if job.planned is None:
        return False
    if job.every_days is None:
        return job.planned == day or day in job.days
    if day < job.planned or (job.until is not None and day > job.until):
        return False
    return (day - job.planned).days % job.every_days[1] == 0


def _on_a_walk(job: Job, day: date) -> bool:
    if job.planned is None:
        return False
    if job.every_days is not None:
        over = job.until is not None and day > job.until
        # every two to three days: one day early is in its turn too, once the rounds have begun
        begun = job.earliest is not None and job.earliest <= day
        early = timedelta(days=job.every_days[1] - job.every_days[0] if begun else 0)
        return job.planned - early <= day and not over and job.hands == 1
    small = job.hands == 1 and job.minutes is not None and job.minutes[1] <= WALK_MINUTES
    return job.planned == day and small and job.kind in {PICK, TRAIN, OWN}


def _oftenest(job: Job) -> int:
    return job.every_days[0] if job.every_days else WALK_LINES


def _named(name: str, job: Job) -> bool:
    return name.lower() in {one.lower() for one in job.who}
