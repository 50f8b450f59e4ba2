"""Did a frame pay: what came off it, against the hours its work is reckoned to take."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.diary.picks import totals_of
from plantframe.frozen import frozen, replace
from plantframe.jobs.days import season_bounds
from plantframe.jobs.job import CARE
from plantframe.jobs.listing import jobs_of

if TYPE_CHECKING:
    from datetime import date

    from plantframe.jobs.job import Job
    from plantframe.season.season import Season


@frozen
class Paid:
    """A frame's year.

    hours   from and to, of everybody's together, as reckoned for building, leading, picking and
            taking down; None where nothing gives the time
    kg, count   what the log says came off it
    """

    block: str
    kg: float | None
    count: int | None
    kg_per_m: float | None
    hours: tuple[float, float] | None


def paid(season: Season) -> tuple[Paid, ...]:
    """Each frame of a season with what came off it and the hours that went into it."""
    start, end = season_bounds(season.plan.garden)
    whole = jobs_of(replace(season, today=start))
    hours: dict[str, tuple[float, float]] = {}
    for job in (*whole.jobs, *whole.done):
        low, high = _hours(job, end)
        old = hours.get(job.block, (0.0, 0.0))
        hours[job.block] = old[0] + low, old[1] + high
    found = []
    for name in season.plan.frames:
        totals = [one for one in totals_of([season]) if one.block == name]
        kgs = [one.weight_kg for one in totals if one.weight_kg is not None]
        counts = [one.count for one in totals if one.count is not None]
        per = [one.kg_per_m for one in totals if one.kg_per_m is not None]
        spent = hours.get(name)
        found.append(
            Paid(
                name,
                sum(kgs) if kgs else None,
                sum(counts) if counts else None,
                sum(per) if per else None,
                spent if spent and spent[1] > 0 else None,
            )
        )
    return tuple(found)


def _hours(job: Job, end: date) -> tuple[float, float]:
    """The hours of a job, a round as often as it comes."""
    if job.minutes is None or job.whenever:
        return 0.0, 0.0
    low, high = (minutes * job.hands / 60 for minutes in job.minutes)
    if job.every_days is None:
        return low, high
    if job.planned is None or (job.until is None and job.kind == CARE):
        return 0.0, 0.0
    days = max(((job.until or end) - job.planned).days, 0)
    return low * (days // job.every_days[1] + 1), high * (days // job.every_days[0] + 1)
