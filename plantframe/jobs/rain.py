"""A day of rain: what slides from it, where to, and what can be done under a roof instead."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.jobs.listing import jobs_of
from plantframe.jobs.works import is_outdoors

if TYPE_CHECKING:
    from datetime import date

    from plantframe.jobs.job import Job, Trouble
    from plantframe.jobs.listing import Jobs
    from plantframe.season.season import Season

MOST_INDOORS: Final = 4  # jobs for a wet day; nobody does more (common practice, no source)


@frozen
class Move:
    """A job and the days it moves between."""

    job: Job
    was: date
    becomes: date


@frozen
class Slid:
    """What a day of rain does.

    moved   what moves, in the order of the list: that day's work and what follows it
    stays   what is done that day all the same
    roof    work under a roof that nothing keeps waiting
    troubles   what cannot be as written any more because of it
    jobs    the whole list as it then is
    """

    day: date
    moved: tuple[Move, ...]
    stays: tuple[Job, ...]
    roof: tuple[Job, ...]
    troubles: tuple[Trouble, ...]
    jobs: Jobs


def slid(season: Season, before: Jobs, day: date) -> Slid:
    """What rain on a day moves.

    before   the list as it is without the rain
    """
    after = jobs_of(season, wet=(day,))
    was = {job.id: job.planned for job in before.jobs}
    moved = []
    for job in after.jobs:
        old, new = was.get(job.id), job.planned
        if old is not None and new is not None and new != old and not job.every_days:
            moved.append(Move(job, old, new))
    known = {(trouble.name, trouble.jobs) for trouble in before.troubles}
    return Slid(
        day,
        tuple(moved),
        tuple(job for job in after.jobs if job.planned == day and job.every_days is None),
        _under_a_roof(after.jobs, day),
        tuple(one for one in after.troubles if (one.name, one.jobs) not in known),
        after,
    )


def _under_a_roof(jobs: tuple[Job, ...], day: date) -> tuple[Job, ...]:
    """The next jobs that want no dry weather and whose own work before them is not outdoors."""
    to_do = {job.id for job in jobs}
    found: list[Job] = []
    ready: set[str] = set()
    for job in jobs:
        asked = job.planned is None and job.overdue  # most likely it is done
        later = not asked and (job.planned is None or job.planned > day)
        free = set(job.after) & to_do <= ready
        if job.begins is None and job.kind not in {"build", "task"}:
            continue
        if later and free and not is_outdoors(job) and not job.whenever:
            ready.add(job.id)
            found.append(job)
    return tuple(found[:MOST_INDOORS])
