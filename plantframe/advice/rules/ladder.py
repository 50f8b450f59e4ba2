"""ladder: work above reach, on soft ground or with nobody to hold the steps."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

REACH_M = 2.0  # from the ground, of a person of middling height (common practice, no source)
STRETCH_M = 0.30
SOFT = frozenset({"loose sand", "wet clay"})


@frozen
class Facts:
    """How high the work is and how high somebody reaches, m; and what makes steps a worry."""

    frame: str
    height_m: float
    reach_m: float
    who: str
    soft: bool
    alone: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Steps for which a ladder is used: higher than reach, and alone or on soft ground."""
    if frame.stands or frame.builders_work:
        return
    if not any("steps" in working.step.tools for working in frame.steps):
        return
    height = frame.figure("hang") or frame.figure("posts.up") or frame.figure("top")
    people = frame.garden.people
    tallest = max(people, key=lambda person: person.reach_m or REACH_M, default=None)
    reach = (tallest.reach_m if tallest else None) or REACH_M
    soft, alone = frame.soil in SOFT, len(people) == 1
    if height is None or height <= reach + STRETCH_M + 0.005 or not (soft or alone):
        return
    yield Finding(
        level="warn",
        where=frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, height, reach, tallest.name if tallest else "", soft, alone),
        by=frame.wanted_by,
        ways=(
            "A board under the feet of the steps, on firm level ground, and no leaning out.",
            "A second person to hold them.",
            "Put it together lying down, and tilt it up into its holes.",
        ),
    )


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    who = f"{facts.who} reaches" if facts.who else "A hand reaches"
    ground = "The ground is soft" if facts.soft else ""
    nobody = "nobody else is there to hold the steps" if facts.alone else ""
    worry = " and ".join(part for part in (ground, nobody) if part)
    return Words(
        says=(
            f"{facts.frame}: the top is {shown.length(facts.height_m)} up. {who} "
            f"{shown.length(facts.reach_m)}. {worry[:1].upper()}{worry[1:]}."
        ),
        if_ignored="One leg of the steps sinks, and whoever is on them comes down.",
        told=f"{facts.frame} {shown.length(facts.height_m)} high.",
        assumed="" if facts.who else f"A reach of {shown.length(REACH_M)}.",
        sum=f"More than {shown.length(STRETCH_M)} over reach: common practice.",
    )


RULE = Rule(
    name="ladder",
    summary="work above reach, on soft ground or with nobody to hold the steps",
    looks_at="frame",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
