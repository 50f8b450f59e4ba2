"""Hours wanted against hours there are, week by week: what can wait, and what cannot."""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.jobs.job import BY_THE_PLANT, LINES, Trouble
from plantframe.season.units import day as shown
from plantframe.season.units import listed

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from plantframe.jobs.job import Job
    from plantframe.jobs.works import Sharing

WEEK: Final = timedelta(days=7)
MOST_NAMED: Final = 3


@frozen
class Week:
    """A week's work, Monday to Sunday, in hours of everybody's together.

    wanted  from and to; `there` the hours of all who are there; `over` what finds no room
    blocks  what is worked on, and `over_ids` the jobs without room
    """

    monday: date
    wanted: tuple[float, float]
    there: float
    over: float
    blocks: tuple[str, ...]
    over_ids: tuple[str, ...]


@frozen
class Project:
    """One frame's, bed's or task's work still to do.

    hours    from and to, of everybody's together
    first    the day its work begins, None where none is set
    last     the last day of the job of it that can wait least, None where no last day is set
    slack_days   how long that one can wait
    """

    block: str
    hours: tuple[float, float]
    first: date | None
    last: date | None
    slack_days: int | None


def monday_of(day: date) -> date:
    """The Monday of a day's week."""
    return day - timedelta(days=day.weekday())


def weeks_of(jobs: Iterable[Job], sharing: Sharing) -> tuple[Week, ...]:
    """Each week that has work, against its hours."""
    there: dict[date, float] = {}
    for half in sharing.halves:
        monday = monday_of(half.day)
        there[monday] = there.get(monday, 0.0) + half.minutes * len(half.people) / 60
    by_week: dict[date, list[tuple[Job, float]]] = {}
    for job in jobs:
        placed, work = sharing.placed.get(job.id), sharing.works.get(job.id)
        if placed is None or work is None or not work.minutes:
            continue
        spans = [(part.half.day, part.minutes / work.minutes) for part in placed.parts]
        for day, share in spans or [(placed.day, 1.0)]:
            by_week.setdefault(monday_of(day), []).append((job, min(share, 1.0)))
    return tuple(
        Week(
            monday,
            _hours(found, sharing),
            there.get(monday, 0.0),
            sum(_hours([one], sharing)[1] for one in found if _overruns(one[0], sharing)),
            tuple(dict.fromkeys(called(job) for job, _ in found)),
            tuple(job.id for job, _ in found if _overruns(job, sharing)),
        )
        for monday, found in sorted(by_week.items())
    )


def projects_of(jobs: Sequence[Job], sharing: Sharing) -> tuple[Project, ...]:
    """What there is to do by frame, bed and task: its hours, its days, how long it can wait."""
    by_block: dict[str, list[Job]] = {}
    for job in jobs:
        work = sharing.works.get(job.id)
        if work is not None and work.minutes:
            by_block.setdefault(called(job), []).append(job)
    found = []
    for block, some in by_block.items():
        days = [job.planned for job in some if job.planned]
        slacks = [
            (0 if _overruns(job, sharing) else slack, job.latest)
            for job in some
            if (slack := slack_days(job)) is not None
        ]
        tightest = min(slacks, key=lambda one: one[0], default=(None, None))
        found.append(
            Project(
                block,
                _hours([(job, 1.0) for job in some], sharing),
                min(days, default=None),
                tightest[1],
                tightest[0],
            )
        )
    return tuple(sorted(found, key=lambda one: (one.last or date.max, one.first or date.max)))


def slack_days(job: Job) -> int | None:
    """Days a job can wait beyond its planned day without making another late; None: no last day."""
    if job.latest is None or job.planned is None:
        return None
    return (job.latest - job.planned).days


def called(job: Job) -> str:
    """What a line of hours calls a job's work: its frame, bed or task."""
    if job.kind == LINES:
        return "buried lines marked"
    return job.block or job.says


def _hours(found: Iterable[tuple[Job, float]], sharing: Sharing) -> tuple[float, float]:
    low = high = 0.0
    for job, share in found:
        minutes = job.minutes or (sharing.works[job.id].minutes,) * 2
        low += minutes[0] * job.hands * share / 60
        high += minutes[1] * job.hands * share / 60
    return low, high


def _overruns(job: Job, sharing: Sharing) -> bool:
    return sharing.placed[job.id].overruns


# ---- what does not fit -------------------------------------------------------------------------
def overfull(jobs: Sequence[Job], sharing: Sharing) -> tuple[Trouble, ...]:
    """Each week whose work finds no room in the gardener's own hours."""
    if not sharing.said:
        return ()
    by_id = {job.id: job for job in jobs}
    weeks = weeks_of(jobs, sharing)
    blocks = {by_id[name].block for week in weeks for name in week.over_ids}
    troubles = []
    for week in weeks:
        if not week.over_ids:
            continue
        over = [by_id[name] for name in week.over_ids]
        sunday = week.monday + timedelta(days=6)
        others = [
            job
            for job in jobs
            if _has_hours(job, sharing) and job.block not in blocks and _by(job, sunday)
        ]
        wait = _named(_can_wait(job, sunday) for job in others)
        cannot = _named(_cannot_wait(job) for job in over)
        there, more = (hours_words(one, one) for one in (week.there, week.over))
        says = (
            f"The week of {shown(week.monday)} has {there} of everybody's together, and {more} "
            f"more is wanted. Cannot wait: {cannot}."
        )
        says += f" Can wait: {wait}." if wait else " Nothing else that week can wait for it."
        troubles.append(Trouble("overfull", says, week.over_ids, over[0].where))
    return tuple(troubles)


def _has_hours(job: Job, sharing: Sharing) -> bool:
    return job.id in sharing.placed and bool(sharing.placed[job.id].parts)


def _by(job: Job, sunday: date) -> bool:
    return job.planned is not None and sunday - WEEK * 4 <= job.planned <= sunday


def _can_wait(job: Job, sunday: date) -> str:
    """The words for a job that can wait a week beyond this one; "" for one that cannot.

    What the frost, the plants or buried lines set the day of never waits.
    """
    if job.kind in BY_THE_PLANT or job.kind == LINES:
        return ""
    if job.latest is not None and job.latest < sunday + WEEK:
        return ""
    until = f"until {shown(job.latest)}" if job.latest else "no last day"
    return f"{called(job)} ({until})"


def _cannot_wait(job: Job) -> str:
    by = f" (by {shown(job.latest)})" if job.latest else ""
    return f"{called(job)}{by}"


def _named(words: Iterable[str]) -> str:
    unique = list(dict.fromkeys(word for word in words if word))
    more = len(unique) - MOST_NAMED
    return listed([*unique[:MOST_NAMED], *([f"{more} more"] if more > 0 else [])])


def hours_words(low: float, high: float) -> str:
    """Hours to the half hour, as one says them: `2.5 to 3 h`, `under half an hour`."""
    first, last = (round(one * 2) / 2 for one in (low, high))
    if last == 0:
        return "under half an hour"
    return f"{last:g} h" if first == last else f"{first:g} to {last:g} h"
