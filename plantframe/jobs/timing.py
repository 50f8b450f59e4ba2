"""The days of the jobs: the earliest from what goes before, the latest from what comes after."""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.jobs.job import (
    BY_THE_PLANT,
    CARE,
    DONE,
    IN_HAND,
    OPEN,
    PICK,
    SKIPPED,
    TAKE_DOWN,
    TRAIN,
)

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from plantframe.jobs.days import FreeDays
    from plantframe.jobs.job import Before, Draft

# What follows on other work without asking it to be done by a day.
AFTERWARDS: Final = frozenset({TAKE_DOWN, CARE, TRAIN, PICK})

Days = dict[str, date | None]


@frozen
class Network:
    """The jobs in an order that keeps to what goes before what, with their waits.

    floor    the first day on which undone work can still be done
    hurried  pairs between which only the fewest days of the wait fit
    """

    names: Sequence[str]
    drafts: Mapping[str, Draft]
    befores: Sequence[Before]
    floor: date
    hurried: frozenset[tuple[str, str]] = frozenset()

    def into(self) -> dict[str, list[Before]]:
        """What goes before each job."""
        found: dict[str, list[Before]] = {name: [] for name in self.names}
        for before in self.befores:
            found[before.then].append(before)
        return found

    def out_of(self) -> dict[str, list[Before]]:
        """What comes after each job."""
        found: dict[str, list[Before]] = {name: [] for name in self.names}
        for before in self.befores:
            found[before.first].append(before)
        return found

    def wait(self, before: Before) -> timedelta:
        """The days between two jobs. What was left out keeps nobody waiting."""
        if self.drafts[before.first].state == SKIPPED:
            return timedelta(0)
        low, high = before.wait
        return timedelta(days=low if (before.first, before.then) in self.hurried else high)

    def in_hand(self, name: str) -> date:
        """The first day that is left for a job, as far as it alone is concerned."""
        start = self.drafts[name].window.not_before
        return max(start, self.floor) if start else self.floor


# ---- forward ----------------------------------------------------------------------------------
def ready_days(network: Network) -> Days:
    """The first day each job can be done on, whatever day it is down for.

    A job that was moved or is done stands on its day for what comes after it, and what has no day
    of its own and waits for nothing begins on the first day left.
    """
    into = network.into()
    ready: Days = {}
    for name in network.names:
        draft = network.drafts[name]
        days = [
            held + network.wait(before)
            for before in into[name]
            if (held := held_day(network, ready, before.first)) is not None
        ]
        if draft.state == OPEN and not draft.job.whenever:
            days.append(network.in_hand(name))
        ready[name] = max(days, default=None)
    return ready


def held_day(network: Network, ready: Days, name: str) -> date | None:
    """The day that what comes after a job has to reckon with."""
    draft = network.drafts[name]
    if draft.pinned is not None:
        return draft.pinned
    return None if draft.state == DONE else ready[name]


# ---- backward ---------------------------------------------------------------------------------
def last_days(network: Network, ready: Days) -> Days:
    """The last day each job can be done on without making another late."""
    out_of = network.out_of()
    last: Days = {}
    for name in reversed(network.names):
        draft = network.drafts[name]
        days = [
            served - network.wait(before)
            for before in out_of[name]
            if _sets_a_day(draft, network.drafts[before.then])
            and (served := _served_day(network, ready, last, before.then)) is not None
        ]
        if draft.window.not_after is not None:
            days.append(draft.window.not_after)
        last[name] = min(days, default=None)
        if draft.pinned is not None and draft.state == OPEN:
            last[name] = draft.pinned
    return last


def _sets_a_day(first: Draft, then: Draft) -> bool:
    """Whether the one is wanted by the other's day: taking down only comes after what went up."""
    return then.job.kind not in AFTERWARDS or first.job.kind == then.job.kind


def _served_day(network: Network, ready: Days, last: Days, name: str) -> date | None:
    """The day by which a job wants those before it done: the day it is meant for, if it can be."""
    aim, limit, first = network.drafts[name].window.aim, last[name], ready[name]
    if network.drafts[name].state != OPEN or aim is None or limit is None:
        return limit
    return min(max(aim, first), limit) if first is not None else min(aim, limit)


# ---- the day it is put on -----------------------------------------------------------------------
def planned_days(network: Network, last: Days, free: FreeDays) -> Days:
    """A sensible day for each job; None where any day will do.

    The day the gardener wrote, where what goes before allows it, and in any case where the job was
    moved; else as late as leaves a week in hand before what it serves, on a day that is free.
    """
    into = network.into()
    planned: Days = {}
    for name in network.names:
        draft = network.drafts[name]
        days = {one: planned[one.first] for one in into[name]}
        held = max((day + network.wait(one) for one, day in days.items() if day), default=None)
        if draft.pinned is not None or draft.state == DONE:
            planned[name] = draft.pinned
        elif draft.state == SKIPPED or draft.job.whenever:
            planned[name] = held
        elif draft.job.every_days is not None and _no_day_yet(network, days):
            planned[name] = None
        else:
            planned[name] = _sensible(network, name, held, last[name], free)
    return planned


def _no_day_yet(network: Network, days: Mapping[Before, date | None]) -> bool:
    """Whether a round waits for something that nobody has set a day for."""
    return any(day is None and network.drafts[one.first].state == OPEN for one, day in days.items())


def _sensible(
    network: Network, name: str, held: date | None, last: date | None, free: FreeDays
) -> date | None:
    draft = network.drafts[name]
    own = network.in_hand(name)
    first = max(held, own) if held else own
    if draft.job.every_days is not None:
        return _next_round(network, name, held)
    if draft.window.aim is not None:
        return max(first, draft.window.aim)
    if draft.job.kind in BY_THE_PLANT:
        if not held and not draft.window.not_before:
            return None
        back = free.home_from(first)
        return back if last is None or back <= last else first
    if draft.window.wanted is not None:
        wanted = max(draft.window.wanted, first + IN_HAND)
        last = min(last, wanted) if last is not None else wanted
    if last is None:
        follows = held is not None and draft.job.kind not in AFTERWARDS
        return free.at_or_after(first) if follows else None
    day = free.at_or_before(last - IN_HAND)
    if day >= first:
        return day
    day = free.at_or_after(first)
    return day if day <= last else first


def _next_round(network: Network, name: str, held: date | None) -> date | None:
    """The next time a round comes, counted from the first."""
    draft = network.drafts[name]
    starts = [one for one in (held, draft.window.aim or draft.window.not_before) if one]
    if not starts or draft.job.every_days is None:
        return None
    first, every = max(starts), draft.job.every_days[1]
    late = (network.floor - first).days
    return first if late <= 0 else first + timedelta(days=-(-late // every) * every)
