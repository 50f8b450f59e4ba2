"""The jobs as plain data, for scripts and editors: names that stay as they are."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from plantframe.jobs.fitting import slack_days

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import date

    from plantframe.jobs.job import Job, Trouble
    from plantframe.jobs.listing import Jobs


def as_data(found: Jobs, jobs: Iterable[Job] | None = None) -> dict[str, Any]:
    """The list as data; dates as 2027-05-18, null where there is none.

    found  the whole list, with its troubles and what was made of the gardener's marks
    jobs   some of the jobs, where not all are wanted
    """
    chosen = found.jobs if jobs is None else jobs
    return {
        "jobs": [job_data(job) for job in chosen],
        "troubles": [trouble_data(trouble) for trouble in found.troubles],
        "mistakes": [
            {
                "name": slip.name,
                "level": slip.level,
                "says": slip.says,
                "file": slip.where.file,
                "line": slip.where.line,
            }
            for slip in found.mistakes
        ],
        "done": [job.id for job in found.done],
        "skipped": [{"id": job.id, "because": job.because} for job in found.skipped],
    }


def job_data(job: Job) -> dict[str, Any]:
    """One job. `minutes` is the middle of the range.

    `begins` is counted in minutes from the beginning of the day's hours, or of its half.
    """
    minutes = job.minutes
    return {
        "id": job.id,
        "says": job.says,
        "block": job.block,
        "kind": job.kind,
        "hands": job.hands,
        "tools": list(job.tools),
        "minutes": round(sum(minutes) / 2) if minutes else None,
        "minutes_range": [round(minutes[0]), round(minutes[1])] if minutes else None,
        "after": list(job.after),
        "earliest": _day(job.earliest),
        "latest": _day(job.latest),
        "planned": _day(job.planned),
        "who": list(job.who),
        "dont_yet": job.dont_yet or None,
        "stop_point": job.stop_point,
        "alone": job.alone or None,
        "wait": job.wait or None,
        "how": job.how or None,
        "dangers": list(job.dangers),
        "place": job.place or None,
        "power": job.power,
        "every_days": list(job.every_days) if job.every_days else None,
        "until": _day(job.until),
        "whenever": job.whenever or None,
        "reckoned": job.reckoned or None,
        "overdue": job.overdue,
        "days": [day.isoformat() for day in job.days] or None,
        "half": job.half or None,
        "begins": round(job.begins) if job.begins is not None else None,
        "short_handed": job.short,
        "slack_days": slack_days(job),
        "file": job.where.file if job.where else None,
        "line": job.where.line if job.where else None,
    }


def trouble_data(trouble: Trouble) -> dict[str, Any]:
    """One trouble."""
    where = trouble.where
    return {
        "name": trouble.name,
        "says": trouble.says,
        "jobs": list(trouble.jobs),
        "file": where.file if where else None,
        "line": where.line if where else None,
    }


def _day(day: date | None) -> str | None:
    return day.isoformat() if day else None
