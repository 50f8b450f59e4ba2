"""row-direction: a tall row runs from east to west through a bed and shades what grows there."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import word
from plantframe.advice.edits import swap
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.rows import is_row, runs
from plantframe.frozen import frozen
from plantframe.season.plantings import as_range

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

TALL_M = 1.4
SUN_H = 6.0
TROPIC_DEG = 23.4  # nearer the equator the sun stands overhead


@frozen
class Facts:
    """The row and its height, m; the bed, what grows low in it, and the side away from the sun."""

    frame: str
    high_m: float
    bed: str
    low: str
    side: str


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """A tall east-west row in the middle of a bed in which something low wants sun."""
    latitude, bed, high = frame.garden.latitude, frame.bed, frame.height_m
    if latitude is None or abs(latitude) <= TROPIC_DEG or bed is None or high is None:
        return
    if high < TALL_M or not frame.plantings or not is_row(frame) or frame.stands:
        return
    if runs(frame) != "east-west" or any(spot.part for spot in frame.frame.spots):
        return
    low = _low_crop(season, bed.name)
    if not low:
        return
    side = "north side" if latitude > 0 else "south side"
    yield Finding(
        level="note",
        where=frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, high, bed.name, low, side),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, bed.name, side),
        ways=("A row that runs from north to south shares its shade out between both sides.",),
    )


def _low_crop(season: Season, bed: str) -> str:
    """Something in the bed itself that stays low and wants sun."""
    for planting in season.held_by(bed):
        wants = as_range(planting.entry.sun) if planting.entry else None
        if planting.entry is None or wants is None:
            continue
        if wants.low >= SUN_H and word(planting.entry.habit) not in {"climber", "leaner"}:
            return planting.name
    return ""


def _ways_out(frame: WorkedFrame, bed: str, side: str) -> Iterable[Edit]:
    """Along the edge of the bed that is farthest from the sun."""
    place = f"in {bed}"
    if place in frame.frame.block.where.typed:
        yield swap(frame.frame.block.head, place, f"{place}, {side}", f"in {bed}, {side}")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    return Words(
        says=(
            f"{facts.frame}, {shown.length(facts.high_m)} high, runs from east to west through "
            f"{facts.bed}: {facts.low} on its {facts.side} stands in its shade most of the day."
        ),
        if_ignored="That half of the bed ripens late.",
        told=f"{facts.frame} in {facts.bed}, east to west.",
        assumed="A row in the middle of its bed; level ground.",
        sum=(
            f"Said of rows from {shown.length(TALL_M)} up, where what stands low in the bed wants "
            f"{SUN_H:.0f} hours of sun."
        ),
    )


RULE = Rule(
    name="row-direction",
    summary="a tall row runs from east to west through a bed and shades half of it",
    looks_at="frame",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
