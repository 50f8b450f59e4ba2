"""too-wet-or-hard-to-dig: holes are dug when the ground is baked, frozen or under water."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climate import is_in, normals_c, spans
from plantframe.advice.edits import rewrite, uprights
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.seasons import turned
from plantframe.frozen import frozen
from plantframe.season.units import MONTHS, Shown
from plantframe.season.work import digging_steps

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import date

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

BAKED = ((7, 8),)
FROZEN = ((1, 2),)
FROZEN_C = -5.0  # of usual nights
FROZEN_DEEP_M = 0.30
CLAYS = frozenset({"firm clay", "stiff clay"})
HOW = {
    "baked": ("clay is baked as hard as brick then: an iron bar bounces off it", "a soaking"),
    "frozen": ("the ground is frozen then", "a thaw"),
    "wet": ("clay stands full of water then, and a hole fills as it is dug", "a dry spell"),
}


@frozen
class Facts:
    """The frame, how deep its holes are, m, the month, and what is wrong with the ground in it."""

    frame: str
    down_m: float
    month: int
    how: str


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The month in which it is to stand, against what the ground is like in that month."""
    ready, down = frame.frame.ready_by, frame.down_m
    if ready is None or frame.stands or frame.builders_work or not down or down < FROZEN_DEEP_M:
        return
    if not digging_steps(frame):
        return
    how = _how(frame, ready.day.month)
    if not how:
        return
    fact = uprights(frame.frame)
    yield Finding(
        level="note",
        where=fact.where if fact else frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, down, ready.day.month, how),
        by=ready.day,
        candidates=partial(_ways_out, frame, ready.day),
        ways=_ways(how, Shown(frame.garden.imperial)),
    )


def _how(frame: WorkedFrame, month: int) -> str:
    """What hinders digging in that month; "" for nothing the plan tells of."""
    garden = frame.garden
    own = turned(month) if garden.southern else month
    clay = frame.soil in CLAYS
    if clay and is_in(month, spans(garden, "rains")):
        return "wet"
    if clay and is_in(own, BAKED):
        return "baked"
    low = normals_c(garden, "normal low").get(month)
    deep = garden.frost_depth_m is not None and garden.frost_depth_m >= FROZEN_DEEP_M
    if (low is not None and low <= FROZEN_C) or (low is None and deep and is_in(own, FROZEN)):
        return "frozen"
    return ""


def _ways(how: str, shown: Shown) -> tuple[str, ...]:
    if how == "baked":
        soak = f"Fill a hole {shown.length(0.1)} deep with water the evening before, twice"
        return (f"{soak}; then an iron bar goes in.",)
    return ("Wait for a mild, dry week; mark the places now.",)


def _ways_out(frame: WorkedFrame, ready: date) -> Iterable[Edit]:
    """In the middle of autumn or of spring, as long as that is before planting."""
    planted = min((one.in_ground.day for one in frame.plantings if one.in_ground), default=None)
    fact = frame.frame.fact("ready by")
    for month in (4, 10):
        there = turned(month) if frame.garden.southern else month
        when = ready.replace(month=there, day=15)
        if planted is not None and when > planted:
            continue
        if fact is not None and not _how(frame, there):
            yield rewrite(fact, {"date": f"15 {MONTHS[there - 1]}"})


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    ground, wants = HOW[facts.how]
    return Words(
        says=(
            f"{facts.frame}: its holes, {shown.length(facts.down_m)} deep, are for "
            f"{MONTHS[facts.month - 1]}, and {ground}."
        ),
        if_ignored=f"A hole takes an hour and more; after {wants} it takes ten minutes.",
        told=f"Ready in {MONTHS[facts.month - 1]}.",
        sum="Its month against those in which such ground is hard or frozen.",
    )


RULE = Rule(
    name="too-wet-or-hard-to-dig",
    summary="holes are dug when the ground is baked, frozen or full of water",
    looks_at="frame",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
