"""crowded: many more plants than the row has room for."""

from __future__ import annotations

import math
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening, tied_by_custom
from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.rows import is_row, rows
from plantframe.frozen import frozen
from plantframe.mechanics.ranges import Range
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

# Times the usual number in the row: more than this is said (common practice, no source).
MOST = 1.4
SEVERAL = 1.5
PER_POLE = 2  # plants that one pole carries as the trade grows them


@frozen
class Facts:
    """How many there are, and how many the row usually has.

    count      as the plan says, None where it gives a distance
    row_m      None where only a distance counts
    per_m      plants a metre in one row
    usual      the same, as the trade plants
    sides      rows it is planted in
    """

    plant: str
    frame: str
    count: int | None
    row_m: float | None
    per_m: float
    usual: Range
    sides: int


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Plants to a metre of row against what is usual; a plant or two to a pole is never many."""
    if not frame.holds or frame.worked is None:
        return
    sides = rows(frame)
    for planting in frame.plantings:
        usual = planting.usual_per_metre
        per_m = _per_m(frame, planting)
        if usual is None or per_m is None or planting.planting.spot is not None:
            continue
        per_m /= sides
        if per_m <= max(MOST * usual.middle, usual.high) + 0.05 or not _by_several(planting, sides):
            continue
        yield Finding(
            level="note",
            where=planting.planting.fact.where,
            block=frame.frame.name,
            subject=planting.name,
            facts=Facts(
                planting.name,
                frame.frame.name,
                planting.planting.count,
                planting.row_m,
                per_m,
                usual,
                sides,
            ),
            ratio=Range(per_m / usual.high, per_m / usual.middle, per_m / usual.low),
            by=planting.planting.sow.day if planting.planting.sow else frame.wanted_by,
            candidates=partial(_ways_out, frame, planting, usual, sides),
        )


def _by_several(planting: WorkedPlanting, sides: int) -> bool:
    """More than one plant too many: nobody counts so few."""
    count, usual = planting.planting.count, planting.usual_per_metre
    if count is None or usual is None or not planting.row_m:
        return True
    return count >= usual.high * sides * planting.row_m + SEVERAL


def _per_m(frame: WorkedFrame, planting: WorkedPlanting) -> float | None:
    """Plants to a metre; None where the plan does not say, or where no row is planted."""
    if tied_by_custom(frame):
        spacing = frame.figure("spacing")
        return 1 / spacing if spacing and frame.is_said("spacing") else None
    if is_row(frame):
        return planting.per_metre
    # a ring or a crossed row of poles: a plant or two to each is never many
    poles, count = frame.figure("posts.count"), planting.planting.count
    leans = frame.structure is not None and frame.structure.stands.held == "braces itself"
    if not leans or not poles or count is None or count <= PER_POLE * poles:
        return None
    return planting.per_metre


def _ways_out(
    frame: WorkedFrame, planting: WorkedPlanting, usual: Range, sides: int
) -> Iterable[Edit]:
    """As many as usual, or the usual distance."""
    fact = planting.planting.fact
    if planting.planting.count is not None and planting.row_m:
        fit = max(1, math.floor(usual.middle * sides * planting.row_m + 1e-6))
        yield rewrite(fact, {"count": str(fit)})
    elif planting.planting.apart_m is not None:
        shown = Shown(frame.garden.imperial)
        yield rewrite(fact, {"apart": shown.length(1 / usual.middle)})
    spacing = frame.frame.fact("spacing")
    if tied_by_custom(frame) and spacing is not None:
        shown = Shown(frame.garden.imperial)
        yield rewrite(spacing, {"lengths": shown.length(1 / usual.middle)})


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    usual = shown.lengths(1 / facts.usual.high, 1 / facts.usual.low)
    rows_said = " in each of its two rows" if facts.sides > 1 else ""
    every = f"one every {shown.length(1 / facts.per_m)}{rows_said}"
    fit = ""
    if facts.count is not None and facts.row_m:
        low, high = (
            max(1, math.floor(one * facts.sides * facts.row_m + 1e-6))
            for one in (facts.usual.low, facts.usual.high)
        )
        every = f"{facts.count} plants on {shown.length(facts.row_m)} are {every}"
        fit = f": {low} to {high} plants here" if high > low else f": {low} here"
    says = f"{opening(facts.plant)} on {facts.frame}: {every}. One every {usual} is usual{fit}."
    return Words(
        says=says,
        if_ignored="They shade one another, dry the ground out and mildew; each bears less.",
        told=f"{opening(facts.plant)} on {facts.frame}, {every}.",
        assumed="" if facts.sides > 1 else "Planted in a single row, for the whole of its length.",
        sum=(
            f"{shown.per_metre(facts.per_m)} over {shown.per_metre(facts.usual.middle)} is "
            f"{facts.per_m / facts.usual.middle:.2g}; said from {MOST} on."
        ),
    )


RULE = Rule(
    name="crowded",
    summary="many more plants on a row than the trade plants there",
    looks_at="frame",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
