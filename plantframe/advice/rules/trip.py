"""trip: a stay that comes down on a path or beside it."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.beside import apart_deg, beside

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

CLEAR_M = 0.60  # of ground wanted between a stay's peg and a path (common practice, no source)
PATH = re.compile(r"\b(path|walk|drive|door|gate)\b", re.IGNORECASE)
RUNS_DEG = {"north-south": 0.0, "east-west": 90.0}
BROADSIDE_DEG = 45.0


@frozen
class Facts:
    """The stays, the path, and how far out the pegs are, m."""

    frame: str
    path: str
    out_m: float
    said: bool


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """How far out the stays come down against where the path runs."""
    fact = frame.frame.fact("stays")
    if fact is None or not frame.figure("stays.count"):
        return
    out = frame.figure("stays.out")
    said = out is not None
    if out is None:
        # a stay at half a right angle comes down as far out as it is tied high
        out = frame.figure("stays.up") or frame.figure("posts.up") or 0.0
    path = "the path" if PATH.search(fact.text) else _path_within(frame, season, out)
    if not path:
        return
    yield Finding(
        level="warn",
        where=fact.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, path, out, said),
        by=frame.wanted_by,
        ways=(
            "A raking brace inside the bed instead of a stay.",
            "A bright rag on it at shin height and at the height of the eyes.",
        ),
    )


def _path_within(frame: WorkedFrame, season: Season, out: float) -> str:
    """The path by the bed that stays square to the row reach, "" where there is none."""
    bed = frame.bed
    row = RUNS_DEG.get(frame.word("runs") or (bed.runs if bed else ""))
    if bed is None or bed.width_m is None or row is None or not frame.stayed_square:
        return ""
    for neighbour in beside(season.plan, bed.name):
        along = min(
            apart_deg(neighbour.bearing_deg, row), apart_deg(neighbour.bearing_deg, row + 180)
        )
        if getattr(neighbour.thing, "word", "") != "path" or along < BROADSIDE_DEG:
            continue
        # a row stands in the middle of its bed unless the plan says other
        clear = bed.width_m / 2 + (neighbour.distance_m or 0.0)
        if out > clear - CLEAR_M:
            return neighbour.thing.name
    return ""


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    return Words(
        says=(
            f"{facts.frame}: its stays come down about {shown.length(facts.out_m)} out, on "
            f"{facts.path} or close beside it."
        ),
        if_ignored="A cord at shin height in the dusk brings somebody down.",
        told=f"Stays, and {facts.path}.",
        assumed="" if facts.said else "That they come down as far out as they are tied high.",
        sum=f"Within {shown.length(CLEAR_M)} of a path: common practice.",
    )


RULE = Rule(
    name="trip",
    summary="a stay comes down on a path or beside it",
    looks_at="frame",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
