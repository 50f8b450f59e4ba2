"""bar-bows: the bar carries what hangs on it, and hangs low in the middle by late summer."""

from __future__ import annotations

import math
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening
from plantframe.advice.edits import add_fact, set_fact, together
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.mechanics.practice import BOW_WORTH_SAYING_M
from plantframe.mechanics.ranges import Range
from plantframe.season.loads import TIGHT, Load
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

LONGEST_BAY_M = 2.44  # 8 ft


@frozen
class Facts:
    """The bow of a bar under what hangs on it."""

    plant: str
    frame: str
    load: Load
    bow_m: float


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The bow after some weeks, of a bar that is strong enough."""
    load, heaviest = frame.load, frame.heaviest
    if load is None or heaviest is None or load.ratio.middle > TIGHT:
        return
    bow = load.bow_m
    if bow <= BOW_WORTH_SAYING_M:
        return
    fact = frame.frame.fact(load.part) or heaviest.planting.fact
    ratio = bow / BOW_WORTH_SAYING_M
    yield Finding(
        level="note",
        where=fact.where,
        block=frame.frame.name,
        subject=load.part,
        facts=Facts(heaviest.name, frame.frame.name, load, bow),
        ratio=Range(ratio * 0.7, ratio, ratio * 1.3),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame),
    )


def _ways_out(frame: WorkedFrame) -> Iterable[Edit]:
    """A prop, shorter bays, a stouter bar."""
    structure = frame.structure
    if structure is not None and "prop" in structure.facts:
        yield add_fact(frame.frame, "prop in the middle of every bar")
    bays, length = frame.figure("bays.count"), frame.figure("bays.length")
    if bays and length and length > LONGEST_BAY_M:
        shown = Shown(frame.garden.imperial)
        parts = math.ceil(bays * length / LONGEST_BAY_M - 1e-6)
        line = f"bays {parts} of {shown.typed(bays * length / parts)}"
        yield set_fact(frame.frame, "bays", line)
    stout = "bar 2x4, on edge" if frame.garden.imperial else "bar 45x95 mm, on edge"
    pins = "pins 40d" if frame.garden.imperial else "pins 140 mm"
    yield together(
        f"{stout}, with {pins}",
        set_fact(frame.frame, "bar", stout),
        set_fact(frame.frame, "pins", pins),
    )


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    low = shown.lengths(facts.bow_m * 0.9, facts.bow_m * 1.1)
    says = (
        f"{opening(facts.plant)} on {facts.frame}: the {shown.length(facts.load.span_m)} bar "
        f"hangs about {low} low in the middle by late summer. It carries the weight."
    )
    return Words(
        says=says,
        if_ignored="Harmless, but the net slackens; a prop under the middle takes it up.",
        told=f"{opening(facts.plant)} on {facts.frame}, pin to pin "
        f"{shown.length(facts.load.span_m)}.",
        assumed="Ordinary softwood at 8 GPa, and half as much bow again after some weeks.",
        sum=(
            f"A bow of {shown.bench(facts.bow_m)}; said from {shown.bench(BOW_WORTH_SAYING_M)} on."
        ),
    )


RULE = Rule(
    name="bar-bows",
    summary="a bar that is strong enough hangs low in the middle by late summer",
    looks_at="frame",
    levels=("note",),
    basis="sum",
    check=check,
    words=words,
)
