"""overfull-week: more work falls due than there are free hours for it."""

from __future__ import annotations

import re
from datetime import date, timedelta
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.units import Shown, day, listed, two_figures
from plantframe.season.work import marked, steps_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from plantframe.language.mistakes import Where
    from plantframe.plan.dates import Dated
    from plantframe.plan.things import Garden
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

OVER = 1.2  # so much more than the free hours is told of: minutes are estimates
AHEAD_DAYS = 28  # what is to stand by a day is commonly built in the four weeks before
NOBODY_NAMED = 2  # where the plan names nobody, two share the garden (common practice, no source)
WEEKDAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
MOST_NAMED = 4
BEFORE = re.compile(r"(?:before|by|until|not later)\b")


@frozen
class Due:
    """Work that falls due: between which days it can be done, and its hours for one person."""

    name: str
    first: date
    last: date
    low_h: float
    high_h: float
    where: Where
    building: bool


@frozen
class Facts:
    """What is due between two days, and the hours there are, for all hands together."""

    names: tuple[str, ...]
    first: date
    last: date
    low_h: float
    high_h: float
    free_h: float


def check(season: Season, _season: Season) -> Iterable[Finding]:
    """For every day on which work falls due, all that has to be done before it."""
    garden = season.plan.garden
    if not any(garden.free_h.values()):
        return
    work = sorted(
        (one for one in _work(season) if one.last >= season.today),
        key=lambda one: (one.last, one.name),
    )
    free = _free_by(garden, work)
    worst: tuple[float, Facts, list[Due]] | None = None
    for last in sorted({one.last for one in work}):
        for first in sorted({one.first for one in work if one.first <= last}):
            inside = [one for one in work if one.first >= first and one.last <= last]
            free_h = free[last] - free[first - timedelta(days=1)]
            facts = _facts(inside, first, last, free_h)
            over = (facts.low_h + facts.high_h) / 2 - facts.free_h * OVER
            if inside and over > 0 and (worst is None or over > worst[0]):
                worst = over, facts, inside
    if worst is None:
        return
    _over, facts, inside = worst
    yield Finding(
        level="note",
        where=inside[0].where,
        block=garden.name,
        facts=facts,
        by=facts.first,
        ways=tuple(_ways(inside)),
    )


def _facts(inside: list[Due], first: date, last: date, free_h: float) -> Facts:
    return Facts(
        tuple(one.name for one in inside),
        first,
        last,
        sum(one.low_h for one in inside),
        sum(one.high_h for one in inside),
        free_h,
    )


def _work(season: Season) -> Iterator[Due]:
    """Frames still to be built by a day, and the gardener's own jobs that give their hours."""
    today = season.today
    for frame in season.frames.values():
        by = frame.wanted_by
        if by is None or frame.stands or frame.builders_work:
            continue
        low, high = _building_h(frame)
        if high:
            # what stays for years may be built in any month before
            first = today if frame.lasting else max(today, by - timedelta(days=AHEAD_DAYS))
            where = frame.frame.block.where
            yield Due(frame.frame.name, first, by, low, high, where, building=True)
    for task in season.plan.tasks:
        dated = task.moved or task.on or task.by
        if task.done is not None or dated is None or not task.hours:
            continue
        first, last = _span(dated, by=dated is task.by, today=today)
        hours = task.hours * task.hands
        yield Due(task.what, first, last, hours, hours, task.block.where, building=False)


def _span(dated: Dated, *, by: bool, today: date) -> tuple[date, date]:
    """The days a job may be done on: the whole week of its day, or the weeks up to it."""
    if by or BEFORE.match(dated.said.lower()):
        return max(today, dated.day - timedelta(days=AHEAD_DAYS)), dated.last
    give = timedelta(days=dated.give)
    first, last = dated.day - give, dated.last + give
    monday = first - timedelta(days=first.weekday())
    return max(monday, min(today, last)), last + timedelta(days=6 - last.weekday())


def _building_h(frame: WorkedFrame) -> tuple[float, float]:
    """Hours of building that are left, for one person, from and to."""
    steps = steps_of(frame)
    marks = marked(frame, steps)
    left = [step for step in steps if step.id not in marks.done and step.id not in marks.skipped]
    timed = [(step.minutes, step.step.hands) for step in left if step.minutes is not None]
    low = sum(minutes[0] * hands for minutes, hands in timed)
    high = sum(minutes[1] * hands for minutes, hands in timed)
    return low / 60, high / 60


def _free_by(garden: Garden, work: list[Due]) -> dict[date, float]:
    """The free hours up to each day, for all hands together, from before the first work is due."""
    if not work:
        return {}
    when = min(one.first for one in work) - timedelta(days=1)
    end, total, out = max(one.last for one in work), 0.0, {when: 0.0}
    while when < end:
        when += timedelta(days=1)
        total += garden.free_h.get(WEEKDAYS[when.weekday()], 0.0) * _hands(garden, when)
        out[when] = total
    return out


def _hands(garden: Garden, when: date) -> int:
    """How many are there on a day."""
    gone = [one.who for one in garden.away if one.first <= when <= one.last]
    if "" in gone:
        return 0
    return max(0, (len(garden.people) or NOBODY_NAMED) - len(set(gone)))


def _ways(inside: list[Due]) -> Iterator[str]:
    """What can be begun sooner, and what can wait."""
    if any(one.building for one in inside):
        yield "Saw, bore and paint at the bench in the months before, whatever the weather."
    if not all(one.building for one in inside):
        yield "A job that hangs on no date can go to another week."


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    names = list(facts.names[:MOST_NAMED])
    if len(facts.names) > MOST_NAMED:
        names.append(f"{len(facts.names) - MOST_NAMED} more")
    low, high = two_figures(facts.low_h), two_figures(facts.high_h)
    hours = f"{low} hours" if low == high else f"{low} to {high} hours"
    span = (
        f"on {day(facts.last)}"
        if facts.first == facts.last
        else f"between {day(facts.first)} and {day(facts.last)}"
    )
    free = f"{two_figures(facts.free_h)} hours" if facts.free_h else "none"
    return Words(
        says=(
            f"{opening(listed(names))}: about {hours} of work {span}, counted for one pair of "
            f"hands, and {free} free."
        ),
        if_ignored="Something is put up in a hurry, or after the plants.",
        told="The hours that the plan calls free.",
        assumed=f"That building is done in the {AHEAD_DAYS // 7} weeks before it is wanted.",
        sum=f"Hours of each job times its hands, against {free} free, times those there.",
    )


RULE = Rule(
    name="overfull-week",
    summary="more work falls due than there are free hours for",
    looks_at="season",
    levels=("note",),
    basis="estimate",
    check=check,
    words=words,
)
