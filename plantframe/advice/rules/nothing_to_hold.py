"""nothing-to-hold: a plant that must be tied has no tie, or tendrils find only bare poles."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import (
    STICKS,
    bare_sticks,
    is_listed,
    is_tied,
    is_tied_as_grown,
    is_yearly,
    matter,
    opening,
    tied_by_custom,
    word,
)
from plantframe.advice.edits import add_block, rewrite, set_fact
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

GRACE_M = 0.001
# Ways of training tomatoes and the like that are tying in themselves: nobody grows them without.
TIED_AS_GROWN = frozenset({"leaders", "weave"})


@frozen
class Facts:
    """The plant and what it finds.

    tendrils   it would hold on by itself to something thinner; else it must be tied
    found      what there is: "net", or a part of the frame
    """

    plant: str
    frame: str
    tendrils: bool
    found: str
    thickness_m: float
    listed: bool


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """Leaning plants without a tie on poles or nets; tendrils on bare poles."""
    if not frame.holds or tied_by_custom(frame):
        return
    for planting in frame.plantings:
        entry = planting.entry
        if entry is None:
            continue
        tendrils = _tendrils_miss(frame, entry)
        if not (tendrils or _lies_loose(frame, entry)) or is_tied(season, frame, planting):
            continue
        thinnest = frame.holds[0]
        listed = is_listed(frame, entry)
        yield Finding(
            level="note" if listed else "warn",
            where=planting.planting.fact.where,
            block=frame.frame.name,
            subject=planting.name,
            facts=Facts(
                planting.name,
                frame.frame.name,
                tendrils,
                thinnest.hold.part,
                thinnest.thickness_m,
                listed,
            ),
            by=frame.wanted_by,
            candidates=partial(_ways_out, frame, planting, tendrils=tendrils),
        )


def _tendrils_miss(frame: WorkedFrame, entry: Plant) -> bool:
    if word(entry.holds_on) != "tendrils" or is_tied_as_grown(entry) or not bare_sticks(frame):
        return False
    grip = entry.grip.high if entry.grip else None
    return grip is not None and frame.holds[0].thickness_m > grip + GRACE_M


def _lies_loose(frame: WorkedFrame, entry: Plant) -> bool:
    """Leans, holds on to nothing, and finds only a net or upright sticks.

    Where there are rails, wires, twine or a stiff mesh, tying is taken as read.
    """
    if word(entry.habit) != "leaner" or word(entry.holds_on) != "tied in":
        return False
    if is_yearly(entry) and entry.training is not None and entry.training.kind in TIED_AS_GROWN:
        return False
    return all(
        matter(frame, held) == "net" or (held.hold.runs == "up" and matter(frame, held) in STICKS)
        for held in frame.holds
    )


def _ways_out(frame: WorkedFrame, planting: WorkedPlanting, *, tendrils: bool) -> Iterable[Edit]:
    if tendrils:
        imperial = frame.garden.imperial
        mesh, apart = ("4 in", "8 in") if imperial else ("10 cm", "20 cm")
        yield set_fact(frame.frame, "net", f"net mesh {mesh}")
        yield set_fact(frame.frame, "strings", f"strings {apart} apart")
    yield rewrite(planting.planting.fact, {"trained": "tied in"})
    if not tendrils:
        month = "August" if frame.garden.southern else "February"
        line = f"task tie in the {planting.name} on {frame.frame.name}, by end {month}"
        yield add_block(frame.frame, line)


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    plant = opening(facts.plant)
    if facts.tendrils:
        says = (
            f"{plant} on {facts.frame}: tendrils find nothing to close round. There are only "
            f"{facts.found}s, {shown.bench(facts.thickness_m)} thick."
        )
        ignored = (
            "Growers wind string round them, or hang a net on them."
            if facts.listed
            else "It falls off them in the first wind."
        )
    else:
        says = (
            f"{plant} on {facts.frame} holds on to nothing by itself, and nothing is said of "
            f"tying it in. There is only the {facts.found} to lean on."
        )
        ignored = (
            "It flops forward under its own weight. Level wires or rails every "
            f"{shown.lengths(0.3, 0.45)} and a yearly tying-in keep it up."
        )
    return Words(
        says=says,
        if_ignored=ignored,
        told=f"{plant} on {facts.frame}; no tie, no task of tying.",
        assumed="",
        sum="How the plant holds on, against what the frame is made of.",
    )


RULE = Rule(
    name="nothing-to-hold",
    summary="a plant that must be tied has no tie, or tendrils find only bare poles",
    looks_at="frame",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
)
