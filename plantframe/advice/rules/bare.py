"""bare: a row has so few plants that much of it stays empty."""

from __future__ import annotations

import math
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import is_yearly, opening, tied_by_custom
from plantframe.advice.edits import rewrite, swap
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.rows import is_row
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.mechanics.ranges import Range
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

LEAST = 0.7  # of the usual number in the row: fewer is said (common practice, no source)
SEVERAL = 2  # a plant too few is nobody's trouble


@frozen
class Facts:
    """How many there are on how much row, m, and how many are usual there."""

    plant: str
    frame: str
    count: int
    row_m: float
    usual: tuple[int, int]


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """A row of one yearly crop, its number given and no reason beside it."""
    if len(frame.plantings) != 1 or not is_row(frame) or tied_by_custom(frame):
        return
    planting = frame.plantings[0]
    own, usual = planting.planting, planting.usual_per_metre
    if own.count is None or usual is None or not planting.row_m or _is_meant(planting):
        return
    metres = planting.row_m  # one side of what leans together is enough for many
    low, middle = (math.floor(one * metres + 1e-6) for one in (usual.low, usual.middle))
    high = math.floor(usual.high * metres + 1e-6)
    if own.count >= LEAST * usual.middle * metres or own.count > low - SEVERAL:
        return
    yield Finding(
        level="note",
        where=own.fact.where,
        block=frame.frame.name,
        subject=planting.name,
        facts=Facts(planting.name, frame.frame.name, own.count, planting.row_m, (low, high)),
        by=own.sow.day if own.sow else frame.wanted_by,
        candidates=partial(_ways_out, planting, middle, usual),
        ways=("A second crop on what is left, or a shorter frame.",),
    )


def _is_meant(planting: WorkedPlanting) -> bool:
    """A remark gives a reason, or it has an end of its own; and what lasts for years fills out."""
    own, entry = planting.planting, planting.entry
    reason = any(fact.remark for fact in own.facts) or bool(own.fact.remark)
    return reason or own.spot is not None or entry is None or not is_yearly(entry)


def _ways_out(planting: WorkedPlanting, middle: int, usual: Range) -> Iterable[Edit]:
    """As many as usual; where that is many to sow, as few as is still usual."""
    fact = planting.planting.fact
    if "1 plant" in fact.text and planting.planting.count == 1:
        yield swap(fact, "1 plant", f"{middle} plants")
        return
    yield rewrite(fact, {"count": str(middle)})
    fewest = math.ceil(usual.low * (planting.row_m or 0.0) - 1e-6)
    if fewest != middle:
        yield rewrite(fact, {"count": str(fewest)})


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    low, high = facts.usual
    usual = f"{low} to {high}" if high > low else f"{low}"
    many = f"{facts.count} plants" if facts.count > 1 else "one plant"
    row = shown.length(facts.row_m)
    return Words(
        says=(
            f"{opening(facts.plant)} on {facts.frame}: {many} on {row} of row, where {usual} are "
            "usual."
        ),
        if_ignored="Much of the frame stays empty.",
        told=f"{many} on {row}.",
        assumed="Planted in a single row, for the whole of its length.",
        sum=f"{facts.count} of {usual}; said below {LEAST} of the usual number.",
    )


RULE = Rule(
    name="bare",
    summary="a row has so few plants that much of it stays empty",
    looks_at="frame",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
