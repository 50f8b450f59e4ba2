"""support-too-fat: a climber finds nothing thin enough to take hold of."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import (
    bare_sticks,
    is_listed,
    is_tied,
    is_tied_as_grown,
    opening,
    tied_by_custom,
    word,
)
from plantframe.advice.edits import rewrite, set_fact
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.catalogue.workings import Held
    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

GRACE_M = 0.001
# Rungs and strips this close give a plant a step to lean over, however thick they are (common
# practice, no source).
LADDER_M = 0.4
NEAR = 1.5  # times the grip: where there are rungs as well, or the trade grows it so, it manages
HOLDS = {
    "tendrils": "it holds on by tendrils, which close round",
    "leaf stalks": "it holds on by its leaf stalks, which close round",
    "twines": "it winds round what it climbs, if that is no thicker than",
}


@frozen
class Facts:
    """What the plant takes hold of, and the thinnest there is."""

    plant: str
    frame: str
    way: str
    grip_m: float
    part: str
    thickness_m: float
    ladder: bool
    listed: bool


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """The thinnest that the frame offers against the thickest that the plant takes hold of."""
    if not frame.holds or tied_by_custom(frame) or frame.builders_work:
        return
    thinnest = frame.holds[0]
    for planting in frame.plantings:
        entry = planting.entry
        if entry is None or entry.grip is None or entry.grip.high is None:
            continue
        way = word(entry.holds_on)
        if way not in HOLDS or thinnest.thickness_m <= entry.grip.high + GRACE_M:
            continue
        if way == "tendrils" and bare_sticks(frame):
            continue  # nothing-to-hold speaks of that
        if is_tied_as_grown(entry) or is_tied(season, frame, planting):
            continue
        ladder, listed = _is_ladder(frame.holds), is_listed(frame, entry)
        if (ladder or listed) and thinnest.thickness_m <= NEAR * entry.grip.high + GRACE_M:
            continue
        yield Finding(
            level="note" if ladder or listed else "warn",
            where=planting.planting.fact.where,
            block=frame.frame.name,
            subject=planting.name,
            facts=Facts(
                planting.name,
                frame.frame.name,
                way,
                entry.grip.high,
                thinnest.hold.part,
                thinnest.thickness_m,
                ladder,
                listed,
            ),
            by=frame.wanted_by,
            candidates=partial(_ways_out, frame, planting, entry),
            ways=("Soft twine wound up it in a spiral gives it something to hold.",),
        )


def _is_ladder(holds: tuple[Held, ...]) -> bool:
    return any(
        held.hold.runs in {"across", "both"}
        and held.every_m is not None
        and held.every_m <= LADDER_M + GRACE_M
        for held in holds
    )


def _ways_out(frame: WorkedFrame, planting: WorkedPlanting, entry: Plant) -> Iterable[Edit]:
    """String or net on what stands there, or ties."""
    if word(entry.holds_on) == "twines":
        apart = "8 in" if frame.garden.imperial else "20 cm"
        yield set_fact(frame.frame, "strings", f"strings {apart} apart")
    else:
        mesh = "4 in" if frame.garden.imperial else "10 cm"
        yield set_fact(frame.frame, "net", f"net mesh {mesh}")
    yield rewrite(planting.planting.fact, {"trained": "tied in"})


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    grip, thick = shown.bench(facts.grip_m), shown.bench(facts.thickness_m)
    most = f"{HOLDS[facts.way]} {grip}"
    if facts.way != "twines":
        most += " at most"
    says = (
        f"{opening(facts.plant)} on {facts.frame}: {most}. "
        f"The thinnest it finds here is the {facts.part}, {thick}."
    )
    if facts.ladder:
        ignored = "It will lean over the rungs once it is up; until then it wants tying."
    elif facts.listed:
        ignored = "It is grown on these all the same, with twine or a tie here and there."
    else:
        ignored = "It slides down and lies in a heap at the foot."
    return Words(
        says=says,
        if_ignored=ignored,
        told=f"{opening(facts.plant)} on {facts.frame}; no string, net or tie for it.",
        assumed="",
        sum=f"{thick} against {grip}, the thickest this plant takes hold of readily.",
    )


RULE = Rule(
    name="support-too-fat",
    summary="a climber finds nothing on the frame thin enough to hold on to",
    looks_at="frame",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
)
