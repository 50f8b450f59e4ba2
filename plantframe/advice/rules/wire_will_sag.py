"""wire-will-sag: a top wire hangs low under what climbs to it."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening, word
from plantframe.advice.edits import drop, rewrite, set_fact, together
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.mechanics.practice import WIRE_SAG_NOTE_SHARE, WIRE_SAG_WARN_SHARE
from plantframe.mechanics.ranges import Range
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.loads import Droop
    from plantframe.season.season import Season

HANGING = frozenset({"soft", "brittle"})  # canes and trunks stand by themselves


@frozen
class Facts:
    """The wire under the plant."""

    plant: str
    frame: str
    asked: Range
    droop: Droop


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The sag under the heaviest of what hangs, as a share of the span."""
    worked = frame.worked
    if worked is None or worked.carries is None or worked.carries.by != "wire":
        return
    soft = [
        (one, one.weight_kg_per_m)
        for one in frame.plantings
        if one.entry is not None and _hangs(one.entry) and one.weight_kg_per_m is not None
    ]
    if not soft:
        return
    planting, asked = max(soft, key=lambda pair: pair[1].middle)
    count = worked.figure(worked.carries.count) if worked.carries.count else 1.0
    droop = frame.droop_of(asked.times(1 / max(count, 1.0)))
    if droop is None or droop.share <= WIRE_SAG_NOTE_SHARE:
        return
    fact = frame.frame.fact("wires")
    ratio = droop.share / WIRE_SAG_WARN_SHARE
    yield Finding(
        level="warn" if droop.share > WIRE_SAG_WARN_SHARE else "note",
        where=fact.where if fact else planting.planting.fact.where,
        block=frame.frame.name,
        facts=Facts(planting.name, frame.frame.name, asked, droop),
        ratio=Range(ratio * asked.low / asked.middle, ratio, ratio * asked.high / asked.middle),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, droop),
    )


def _hangs(entry: Plant) -> bool:
    return word(entry.stem) in HANGING and word(entry.life) != "woody"


def _ways_out(frame: WorkedFrame, droop: Droop) -> Iterable[Edit]:
    """A bar for the wire where the kind has one; strained wire and ends that hold; more posts."""
    facts = frame.structure.facts if frame.structure else {}
    wires = frame.frame.fact("wires")
    if "bar" in facts and wires is not None:
        bar = "2x2" if frame.garden.imperial else "38x38 mm"
        line = f"bar {bar}"
        yield together(f"{line}, and no wire", set_fact(frame.frame, "bar", line), drop(wires, ""))
    braced = set_fact(frame.frame, "ends", "ends braced") if "ends" in facts else None
    if wires is not None and not droop.strained:
        strained = rewrite(wires, {"strain": "strained"})
        if braced is not None and not droop.held:
            yield together("the wire strained, ends braced", strained, braced)
        yield strained
    elif braced is not None and not droop.held:
        yield braced
    bays, length = frame.figure("bays.count"), frame.figure("bays.length")
    if bays and length:
        shown = Shown(frame.garden.imperial)
        line = f"bays {bays * 2:.0f} of {shown.typed(length / 2)}"
        yield set_fact(frame.frame, "bays", line, f"{line} (a post in the middle of each bay)")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    droop = facts.droop
    tight = "strained" if droop.strained else "pulled tight by hand"
    ends = "" if droop.held else ", between posts that give"
    says = (
        f"{opening(facts.plant)} on {facts.frame}: {shown.length(droop.span_m)} of wire, {tight}"
        f"{ends}, hangs about {shown.length(droop.sag_m)} low in the middle under it."
    )
    return Words(
        says=says,
        if_ignored="The net bags, and the lower half of the crop lies on the ground."
        if droop.share > WIRE_SAG_WARN_SHARE
        else "The middle of the row hangs lower than its ends.",
        told=f"{opening(facts.plant)} on {shown.length(droop.span_m)} of wire, {tight}.",
        assumed=(
            "A wire pulled tight by hand holds about 300 N, a strained one 1000 N; between ends "
            "that hold it tightens as it sags."
        ),
        sum=(
            f"{shown.hanging(facts.asked)} wet: {droop.share * 100:.0f} in a hundred of the span; "
            "said from 4 on, warned of from 6."
        ),
    )


RULE = Rule(
    name="wire-will-sag",
    summary="a top wire hangs low under a crop that hangs from it",
    looks_at="frame",
    levels=("note", "warn"),
    basis="sum",
    check=check,
    words=words,
)
