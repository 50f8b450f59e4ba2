"""frame-not-needed: a support is planned for a plant that stands by itself."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening, word
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown


@frozen
class Facts:
    """What stands by itself, what is planned for it, and the kind that is."""

    plant: str
    frame: str
    kind: str


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """A frame still to be made on which everything stands by itself."""
    if frame.structure is None or frame.frame.word not in {"frame", "line"} or frame.stands:
        return
    entries = [one.entry for one in frame.plantings]
    if not entries or not frame.holds or not all(e and _stands_alone(e) for e in entries):
        return
    first = frame.plantings[0]
    yield Finding(
        level="note",
        where=first.planting.fact.where,
        block=frame.frame.name,
        subject=first.name,
        facts=Facts(first.name, frame.frame.name, frame.structure.name),
        by=frame.wanted_by,
        ways=(f"Leave {frame.frame.name} out, and what it is made of off the buying list.",),
    )


def _stands_alone(entry: Plant) -> bool:
    """It never wants a support; one that does in wind or rich soil is left to the gardener."""
    return (
        word(entry.holds_on) == "stands alone"
        and word(entry.habit) in {"upright", "bush", "low"}
        and word(entry.other.get("staking")) == "none"
    )


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    return Words(
        says=f"{opening(facts.plant)} on {facts.frame}: it stands by itself and wants no support.",
        if_ignored="The work and the wood are spent for nothing.",
        told=f"{opening(facts.plant)} on {facts.frame}, {facts.kind}.",
        sum="Said where every plant on a frame stands by itself in wind and in rich soil too.",
    )


RULE = Rule(
    name="frame-not-needed",
    summary="a support is planned for a plant that stands by itself",
    looks_at="frame",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
