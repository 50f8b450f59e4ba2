"""frost-heave: lasting posts end above the depth that the ground freezes to."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.climbers import is_planned
from plantframe.advice.edits import add_block
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

FIRMING = r"\b(?:re-?)?firm\w*\b"


@frozen
class Facts:
    """How deep the posts go, and the frost."""

    frame: str
    posts: str
    down_m: float
    frost_m: float
    soil: str


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """Depth of lasting posts in clay or wet ground against the depth of frost."""
    frost, down = frame.garden.frost_depth_m, frame.down_m
    if frost is None or not down or not frame.lasting or frame.stands or frame.builders_work:
        return
    heaves = "clay" in frame.soil or "wet" in frame.soil
    if not heaves or down >= frost or is_planned(season, frame, FIRMING):
        return
    month = "October" if frame.garden.southern else "April"
    name = frame.frame.name
    yield Finding(
        level="note",
        where=frame.frame.block.where,
        block=name,
        facts=Facts(name, frame.uprights, down, frost, frame.soil),
        by=frame.wanted_by,
        candidates=(
            add_block(frame.frame, f"task firm the {frame.uprights} of {name} again, in {month}"),
        ),
        ways=("Gravel under each foot lets the water out; a gate's posts want to go deeper.",),
    )


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    says = (
        f"{facts.frame}: its {facts.posts} go {shown.length(facts.down_m)} down, and {facts.soil} "
        f"freezes here to about {shown.length(facts.frost_m)}."
    )
    return Words(
        says=says,
        if_ignored=(
            "Frost lifts some of them a little each winter. Rails forgive that, gates do not; "
            "firm them again in spring."
        ),
        told=f"{facts.frame}, {shown.length(facts.down_m)} down in {facts.soil}.",
        assumed="",
        sum=f"{shown.length(facts.down_m)} against {shown.length(facts.frost_m)}.",
    )


RULE = Rule(
    name="frost-heave",
    summary="lasting posts in clay or wet ground end above the depth of frost",
    looks_at="frame",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
