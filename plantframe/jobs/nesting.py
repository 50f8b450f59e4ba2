"""Cutting of hedges and thick climbers kept off the months in which birds nest in them."""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING

from plantframe.frozen import replace
from plantframe.jobs.job import CARE, OWN, TRAIN
from plantframe.season.nesting import cuts, cuts_into_nests, is_thick, nesting_days
from plantframe.season.units import day as shown

if TYPE_CHECKING:
    from plantframe.jobs.drafts import Drafts
    from plantframe.jobs.job import Draft
    from plantframe.plan.things import Garden
    from plantframe.season.season import Season

DAY = timedelta(days=1)
LOOK = (
    "look before you cut, and leave a nest in use alone until it is empty; in many places the law "
    "guards it"
)


def keep_off_nests(season: Season, out: Drafts) -> None:
    """Put the cutting of what birds nest in before the nesting or after it, and say why."""
    cutting = {task.block.where for task in season.plan.tasks if cuts_into_nests(task, season)}
    thick = {
        one.planting.fact.where for one in season.plantings if one.entry and is_thick(one.entry)
    }
    for name, draft in out.by_id.items():
        job = draft.job
        own = job.kind == OWN and job.where in cutting
        if own or (job.kind in {CARE, TRAIN} and job.where in thick and cuts(job.does)):
            out.by_id[name] = clear_of_nests(draft, season.plan.garden, season.today)


def clear_of_nests(draft: Draft, garden: Garden, today: date) -> Draft:
    """A job of cutting with what days the nests leave it; a day the gardener wrote stays."""
    days = nesting_days(garden)
    if days is None:
        return _told(draft, f"Birds may nest in it: {LOOK}")
    first, last = days
    window = draft.window
    begin = max(window.not_before or today, today)
    end = window.not_after
    apart = (end is not None and end < first) or begin > last
    free = window.aim is None and not draft.job.whenever and draft.job.every_days is None
    if free and not apart:
        if begin < first:
            window = replace(window, not_after=first - DAY, said="before birds nest")
        elif end is None or end > last:
            window = replace(window, not_before=last + DAY)
    told = f"Birds nest in it from {shown(first)} to {shown(last)}: {LOOK}"
    return _told(replace(draft, window=window), told)


def _told(draft: Draft, caution: str) -> Draft:
    return replace(draft, job=replace(draft.job, dangers=(*draft.job.dangers, caution)))
