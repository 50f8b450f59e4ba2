"""The ordered list of a season's jobs, with what is wrong about their order and days."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from plantframe.frozen import frozen, replace
from plantframe.jobs.days import FreeDays, season_bounds
from plantframe.jobs.fitting import overfull
from plantframe.jobs.gathering import gather
from plantframe.jobs.job import DONE, OPEN, SKIPPED
from plantframe.jobs.order import in_order, without_circles
from plantframe.jobs.presumed import as_done, presumed_done
from plantframe.jobs.timing import AFTERWARDS, Days, Network, last_days, planned_days, ready_days
from plantframe.jobs.troubles import circles, hurried, misfits
from plantframe.jobs.works import shared_out

if TYPE_CHECKING:
    from collections.abc import Collection, Mapping, Sequence

    from plantframe.jobs.job import Before, Draft, Job, Trouble
    from plantframe.jobs.sharing import Placed
    from plantframe.jobs.works import Sharing
    from plantframe.language.mistakes import Mistake
    from plantframe.season.season import Season


@frozen
class Jobs:
    """What there is to do, in order.

    jobs      each after all that goes before it
    troubles  what cannot be as written
    mistakes  marks that mean no job, and what the others were taken for
    done, skipped   jobs that are not listed any more
    sharing   how the work is shared out over the half-days
    """

    jobs: tuple[Job, ...]
    troubles: tuple[Trouble, ...]
    mistakes: tuple[Mistake, ...]
    done: tuple[Job, ...]
    skipped: tuple[Job, ...]
    sharing: Sharing

    def job(self, name: str) -> Job | None:
        """The listed job of that id."""
        return next((job for job in self.jobs if job.id == name), None)


def jobs_of(season: Season, wet: Collection[date] = ()) -> Jobs:
    """All jobs of a season in order, with their days. The same season gives the same list.

    wet   days on which it rains: what is done outdoors slides from them
    """
    drafts = gather(season)
    names = tuple(drafts.by_id)
    befores, left_out = without_circles(names, drafts.befores)
    floor = first_day(season)
    start = Network(in_order(names, befores, {}), drafts.by_id, befores, floor)
    network, short_waits = hurried(start)
    ready = ready_days(network)
    last = last_days(network, ready)
    presumed = presumed_done(network, last, floor) if floor == season.today else {}
    left = as_done(network, presumed)
    if presumed:
        ready = {**ready_days(left), **presumed}
        last = {**last_days(left, ready), **presumed}
    wished = planned_days(left, last, FreeDays(season.plan.garden))
    sharing = shared_out(left, last, wished, season.plan.garden, wet)
    planned = _days_given(wished, sharing)
    order = in_order(names, befores, _listed_by(planned, drafts.by_id), sharing.afternoons)
    before = _listed_before(order, befores, drafts.by_id)
    jobs = []
    for name in order:
        draft = drafts.by_id[name]
        if draft.state != OPEN:
            continue
        job = replace(
            draft.job,
            after=before[name],
            earliest=draft.pinned or ready[name],
            latest=None if draft.job.every_days else last[name],
            planned=None if draft.job.whenever or name in presumed else planned[name],
            overdue=_overdue(draft, last[name], floor, season.today),
            **_shared(draft.job, sharing.placed.get(name), sharing),
        )
        if job.until is None or job.until >= floor:
            jobs.append(_within(job))
    troubles = (
        *circles(left_out, network),
        *misfits(left, season.today, [drafts.by_id[name] for name in presumed]),
        *short_waits,
        *overfull(jobs, sharing),
    )
    return Jobs(
        tuple(jobs),
        troubles,
        tuple(drafts.mistakes),
        _not_listed(DONE, order, drafts.by_id, (planned, last, ready)),
        _not_listed(SKIPPED, order, drafts.by_id, (planned,)),
        sharing,
    )


def _not_listed(
    state: str, order: list[str], drafts: Mapping[str, Draft], days: Sequence[Days]
) -> tuple[Job, ...]:
    """The jobs that are done, or left out, with the day each was or would have been."""
    some = [drafts[name] for name in order if drafts[name].state == state]
    return tuple(
        replace(
            draft.job,
            planned=draft.pinned or next((day for one in days if (day := one[draft.id])), None),
        )
        for draft in some
    )


def first_day(season: Season) -> date:
    """The first day left for work: today, or the first of the season; that too when all is over."""
    start, end = season_bounds(season.plan.garden)
    return season.today if start <= season.today <= end else start


def _days_given(wished: Days, sharing: Sharing) -> Days:
    """The day of each job: as shared out where it has one, or where hours were found for it."""
    given: Days = {}
    for name, wish in wished.items():
        work = sharing.works.get(name)
        has_day = wish is not None or (work is not None and bool(work.minutes))
        given[name] = sharing.day(name) if work is not None and has_day else wish
    return given


def _shared(job: Job, placed: Placed | None, sharing: Sharing) -> dict[str, object]:
    """Half-day and hands of a job. Hours nobody gave, and people nobody named, are not told."""
    if placed is None or not placed.parts:
        return {}
    part = placed.parts[0]
    days = tuple(dict.fromkeys(one.half.day for one in placed.parts))
    return {
        "half": part.half.name if sharing.said else "",
        "begins": part.start if sharing.said else None,
        "who": part.who if sharing.crew.named else job.who,
        "short": placed.short,
        "days": days if len(days) > 1 else (),
    }


def _listed_by(planned: Days, drafts: Mapping[str, Draft]) -> Days:
    """The days to list by.

    What is done or left out keeps no other job waiting for its place, and care that some event
    calls for comes last.
    """
    days: Days = {}
    for name, draft in drafts.items():
        if draft.state != OPEN:
            days[name] = date.min
        else:
            event = draft.job.whenever and draft.job.kind in AFTERWARDS
            days[name] = None if event else planned[name]
    return days


def _overdue(draft: Draft, last: date | None, floor: date, today: date) -> bool:
    """Whether the days of undone work are over."""
    return last is not None and last < floor <= today and draft.job.every_days is None


def _within(job: Job) -> Job:
    """A round that can only begin after its last day has none: the trouble with that is told."""
    late = job.until is not None and job.planned is not None and job.planned > job.until
    return replace(job, until=None) if late else job


def _listed_before(
    order: list[str], befores: list[Before], drafts: Mapping[str, Draft]
) -> dict[str, tuple[str, ...]]:
    """The listed jobs that go directly before each; what is not listed hands on its own."""
    firsts: dict[str, list[str]] = {name: [] for name in order}
    for before in befores:
        firsts[before.then].append(before.first)
    found: dict[str, tuple[str, ...]] = {}
    for name in order:
        listed: dict[str, None] = {}
        for first in firsts[name]:
            open_ = drafts[first].state == OPEN
            listed.update(dict.fromkeys((first,) if open_ else found[first]))
        found[name] = tuple(listed)
    return found
