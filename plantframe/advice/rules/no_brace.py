"""no-brace: the long sides of a box have nothing between them to stop them spreading."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from plantframe.advice.edits import set_fact
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

# A side stays straight for about 6 ft and a bit (common practice, no source).
FREE_M = 1.85
GRACE_M = 0.01


@frozen
class Facts:
    """How long a side is free of any brace."""

    frame: str
    side_m: float
    free_m: float
    braces: int


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The long side divided by the braces that the plan gives it; an assumed brace is built in."""
    side, braces = frame.figure("size.long"), frame.figure("brace.count")
    fact = frame.frame.fact("brace")
    if side is None or braces is None or fact is None:
        return
    free = side / (braces + 1)
    if free <= FREE_M + GRACE_M:
        return
    wanted = math.ceil(side / FREE_M - 0.02) - 1
    stick = "2x4" if frame.garden.imperial else "38x89 mm"
    line = f"brace {wanted} of {stick}" if wanted > 1 else f"brace {stick}"
    yield Finding(
        level="warn",
        where=fact.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, side, free, round(braces)),
        by=frame.wanted_by,
        candidates=(set_fact(frame.frame, "brace", line),),
    )


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    free = shown.length(facts.free_m)
    braces = "nothing across" if facts.braces == 0 else f"{facts.braces} across"
    says = (
        f"{facts.frame}: {shown.length(facts.side_m)} of side with {braces} leaves {free} free; "
        f"{shown.length(FREE_M)} is the most that stays straight."
    )
    return Words(
        says=says,
        if_ignored="It bellies out a finger's width or two by the second year, and lights drop in.",
        told=f"{facts.frame}: {braces}.",
        assumed="",
        sum=f"{free} against {shown.length(FREE_M)}.",
    )


RULE = Rule(
    name="no-brace",
    summary="the long sides of a box have nothing between them to stop them spreading",
    looks_at="frame",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
