"""While nobody is at home: what a neighbour does, and what is done before leaving."""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING

from plantframe.frozen import frozen
from plantframe.jobs.job import BUILD, CARE, LINES, PICK, TAKE_DOWN

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.jobs.job import Job
    from plantframe.plan.things import Away, Garden


@frozen
class WhileAway:
    """The days nobody is there.

    rounds   what somebody else does, by frame and bed
    events   what the weather may call for while they are away
    leaving  what has its last day in that time or falls in it, to be done before leaving
    """

    first: date
    last: date
    rounds: tuple[Job, ...]
    events: tuple[Job, ...]
    leaving: tuple[Job, ...]


def next_away(garden: Garden, today: date) -> Away | None:
    """The next days on which nobody is at home; None where the plan names none."""
    coming = [one for one in _nobody_home(garden) if one.last >= today]
    return min(coming, key=lambda one: one.first, default=None)


def _nobody_home(garden: Garden) -> list[Away]:
    """Days when everybody is away: said so, or the days that all who are named have in common."""
    everybody = [one for one in garden.away if not one.who]
    if garden.people:
        by_person = [
            [one for one in garden.away if one.who.lower() == person.name.lower()]
            for person in garden.people
        ]
        common = by_person[0]
        for spans in by_person[1:]:
            common = [
                type(one)(max(one.first, other.first), min(one.last, other.last), "")
                for one in common
                for other in spans
                if max(one.first, other.first) <= min(one.last, other.last)
            ]
        everybody += common
    return everybody


def while_away(jobs: Sequence[Job], first: date, last: date, garden: Garden) -> WhileAway:
    """What there is to do while nobody is there."""
    rounds = [job for job in jobs if _round_in(job, first, last)]
    up = _standing(jobs, first, last)
    events = [job for job in jobs if job.block in up and _may_call(job, first, last, garden)]
    leaving = [
        job
        for job in jobs
        if job.every_days is None
        and not job.whenever
        and job.kind != LINES
        and job.planned is not None
        and _bites(job, first, last)
    ]
    return WhileAway(first, last, tuple(rounds), tuple(events), tuple(leaving))


def _standing(jobs: Sequence[Job], first: date, last: date) -> frozenset[str]:
    """The frames that stand on one of the days: built by then, and not down again."""
    to_build, to_clear = set(), set()
    for job in jobs:
        if job.kind == BUILD and not job.overdue and not job.whenever:
            if job.planned is None or job.planned > last:
                to_build.add(job.block)
        elif job.kind == TAKE_DOWN and job.planned is not None and job.planned < first:
            to_clear.add(job.block)
    return frozenset({job.block for job in jobs} - to_build - to_clear)


def _bites(job: Job, first: date, last: date) -> bool:
    """Whether a job has its last day while they are away, or its day where it has no last one."""
    if job.latest is not None and job.latest >= first:
        return job.latest <= last
    return job.planned is not None and first <= job.planned <= last


def _round_in(job: Job, first: date, last: date) -> bool:
    """Whether a round of picking or care falls on one of these days."""
    if job.kind not in {PICK, CARE} or job.every_days is None or job.planned is None:
        return False
    if job.planned > last or (job.until is not None and job.until < first):
        return False
    return job.planned + timedelta(days=_turns(job, first)) <= last


def _turns(job: Job, first: date) -> int:
    """Days from the first round to the first that falls in the time away."""
    if job.planned is None or job.every_days is None or job.planned >= first:
        return 0
    every = max(job.every_days[0], 1)
    return -(-(first - job.planned).days // every) * every


def _may_call(job: Job, first: date, last: date, garden: Garden) -> bool:
    """Whether the weather of those days may call for a job: a gale always, snow in the cold."""
    words = job.whenever.lower()
    if job.kind != CARE:
        return False
    if "snow" in words or "frost" in words:
        return not garden.frost_none and _cold(first, last, garden)
    return any(word in words for word in ("gale", "wind", "lights", "hot"))


def _cold(first: date, last: date, garden: Garden) -> bool:
    """Whether frost is usual on one of the days; so it is where the garden does not say when."""
    if garden.frost_last is None or garden.frost_first is None:
        return True
    spring, autumn = garden.frost_last.day, garden.frost_first.day
    return first <= spring or last >= autumn
