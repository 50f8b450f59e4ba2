"""Rounds that come again, as rows of a tick sheet with a column for each week or month."""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.season.units import MONTHS, every_words

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.jobs.job import Job

MOST_WEEKS: Final = 18  # as many columns as a page has room for; a longer season goes by months
MOST_IN_ONE: Final = 3  # boxes of one week
UNENDING_DAYS: Final = 120  # how far a round without an end is followed


@frozen
class Columns:
    """The weeks, or months, of a tick sheet.

    starts   the first day of each, and after the last the day they end
    heads    what stands over each
    """

    starts: tuple[date, ...]
    heads: tuple[str, ...]

    def of(self, job: Job) -> tuple[int, ...]:
        """How many boxes a round has in each column."""
        days = round_days(job)
        counted = [
            sum(start <= one < end for one in days)
            for start, end in zip(self.starts, self.starts[1:], strict=False)
        ]
        return tuple(min(one, MOST_IN_ONE) for one in counted)


def round_days(job: Job) -> list[date]:
    """The days a round falls on, as far apart as it may be."""
    if job.planned is None:
        return []
    if job.every_days is None:
        return [job.planned]
    until = job.until or job.planned + timedelta(days=UNENDING_DAYS)
    step = max(job.every_days[1], 1)
    count = max((until - job.planned).days // step, 0)
    return [job.planned + timedelta(days=step * turn) for turn in range(count + 1)]


def columns_of(jobs: Sequence[Job]) -> Columns | None:
    """Weeks from the first round to the last; months where those are too many."""
    days = [one for job in jobs for one in round_days(job)]
    if not days:
        return None
    first, last = min(days), max(days)
    monday = first - timedelta(days=first.weekday())
    weeks = (last - monday).days // 7 + 1
    if weeks <= MOST_WEEKS:
        starts = [monday + timedelta(days=7 * turn) for turn in range(weeks + 1)]
        heads = [f"{one.day} {MONTHS[one.month - 1][:3]}" for one in starts[:-1]]
        return Columns(tuple(starts), tuple(heads))
    starts = [date(first.year, first.month, 1)]
    while starts[-1] <= last:
        starts.append((starts[-1] + timedelta(days=32)).replace(day=1))
    return Columns(tuple(starts), tuple(MONTHS[one.month - 1][:3] for one in starts[:-1]))


def often(job: Job) -> str:
    """How often a round comes, or what calls for it."""
    if job.every_days is not None:
        return every_words(job.every_days, job.until)
    return job.whenever
