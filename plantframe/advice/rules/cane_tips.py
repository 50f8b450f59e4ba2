"""cane-tips: thin bare tips at the height of a face."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.advice.edits import add_task, uprights
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.units import plural

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

LOW_M, HIGH_M = 0.9, 1.8  # a bent face and a standing one
THIN_M = 0.021
CAPPED = re.compile(r"\b(cap|caps|capped|cork|corks|corked)\b", re.IGNORECASE)


@frozen
class Facts:
    """How many tips, and how high they end, m."""

    frame: str
    called: str
    count: int
    tip_m: float


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """Canes and thin stakes that end between 0.9 and 1.8 m, and no word of caps."""
    worked = frame.worked
    thick = max(frame.figure("posts.width") or 1.0, frame.figure("posts.depth") or 1.0)
    count = frame.figure("posts.count")
    if worked is None or not count or thick > THIN_M:
        return
    if worked.carries is not None and worked.carries.by in {"bar", "mesh", "wire"}:
        return  # something lies over the tips
    tip = frame.figure("tips") or frame.figure("posts.up")
    if tip is None or not LOW_M <= tip < HIGH_M or _capped(frame, season):
        return
    fact = uprights(frame.frame)
    name = frame.frame.name
    yield Finding(
        level="note",
        where=fact.where if fact else frame.frame.block.where,
        block=name,
        facts=Facts(name, frame.uprights, round(count), tip),
        by=frame.wanted_by,
        candidates=(
            add_task(frame.frame.block, f"cap the tips of the {frame.uprights}, at {name}"),
        ),
        ways=("Caps, corks, or a hoop that ties the tips in.",),
    )


def _capped(frame: WorkedFrame, season: Season) -> bool:
    """A line of the frame, or a job at it or at none, speaks of caps."""
    if any(CAPPED.search(fact.text) for facts in frame.frame.facts.values() for fact in facts):
        return True
    return any(CAPPED.search(task.what) for task in season.tasks_about(frame.frame.name))


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    tips = plural(facts.count, "bare tip")
    return Words(
        says=(
            f"{facts.frame}: {tips} of {facts.called} {'ends' if facts.count == 1 else 'end'} "
            f"{shown.length(facts.tip_m)} up, where a face comes down to weed or pick."
        ),
        if_ignored="A thin cane is not seen end on; eyes are lost to them.",
        told=f"{facts.count} {facts.called}, {shown.length(facts.tip_m)} up.",
        sum="From a bent face to a standing one: common practice.",
    )


RULE = Rule(
    name="cane-tips",
    summary="thin bare tips of canes end at the height of a face",
    looks_at="frame",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
