"""rows-too-close: of two tall rows side by side one stands in the shade of the other."""

from __future__ import annotations

import math
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import swap, together
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.heights import standing, step_m
from plantframe.advice.rows import RUNS_DEG, is_row, runs
from plantframe.frozen import frozen
from plantframe.language.slots import COMPASS
from plantframe.season.beside import apart_deg, beside
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from plantframe.language.edits import Edit
    from plantframe.season.beside import Neighbour
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

# Clear ground to a row's height, by the way the rows run (common practice, no source).
ROOM = {"north-south": 1.0, "east-west": 1.5}
TALL_M = 1.2
GRACE_M = 0.05
BESIDE_DEG = 45.0
TROPIC_DEG = 23.4  # nearer the equator the sun stands overhead
LOWEST_M = 0.9  # no row is offered lower than this


@frozen
class Facts:
    """Two rows, which way they run; the ground between, the height and the room wanted, m."""

    frame: str
    other: str
    runs: str
    gap_m: float
    high_m: float
    wants_m: float


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """The ground between two rows that run the same way, where the plan gives it."""
    way = runs(frame)
    if way not in ROOM or not _is_tall(frame):
        return
    for found, other, gap_m in _beside(frame, season):
        if not _is_tall(other) or runs(other) not in {way, ""} or not _across(found, way):
            continue
        high_m = _shading_m(frame, other, found, way)
        wants_m = ROOM[way] * high_m
        if gap_m >= wants_m - GRACE_M:
            continue
        yield Finding(
            level="warn",
            where=frame.frame.block.where,
            block=frame.frame.name,
            subject=other.frame.name,
            facts=Facts(frame.frame.name, other.frame.name, way, gap_m, high_m, wants_m),
            by=frame.wanted_by,
            candidates=partial(_ways_out, frame, other, found, gap_m, wants_m),
            ways=("Salads between the two, and the lower row on the side of the sun.",),
        )


def _is_tall(frame: WorkedFrame) -> bool:
    """A row with something growing on it, higher than a hand's reach over a bed."""
    high = frame.height_m
    return high is not None and high >= TALL_M and bool(frame.plantings) and is_row(frame)


def _beside(frame: WorkedFrame, season: Season) -> Iterator[tuple[Neighbour, WorkedFrame, float]]:
    """Rows beside this one: placed from it, or in the middle of a bed beside its own.

    Each pair once, from the row whose place is given.
    """
    for found in beside(season.plan, frame.frame.name):
        other = season.frames.get(found.thing.name)
        if other is not None and found.own and found.distance_m is not None:
            yield found, other, found.distance_m
    bed = frame.bed
    if bed is None or any(spot.part for spot in frame.frame.spots) or bed.width_m is None:
        return
    for found in beside(season.plan, bed.name):
        there = season.plan.beds.get(found.thing.name)
        if there is None or not found.own or found.distance_m is None or there.width_m is None:
            continue
        for other in season.frames.values():
            alone = not any(spot.part for spot in other.frame.spots)
            if other.bed is None or other.bed.name != there.name or not alone:
                continue
            nearer = _off_the_middle_m(frame, found.bearing_deg, season)
            farther = _off_the_middle_m(other, found.bearing_deg, season)
            if nearer is not None and farther is not None:
                middles_m = found.distance_m + (bed.width_m + there.width_m) / 2
                yield found, other, middles_m - nearer + farther


def _off_the_middle_m(frame: WorkedFrame, bearing_deg: float, season: Season) -> float | None:
    """How far a row lies from the middle of its bed along a bearing; None where nobody can know.

    A row is in the middle unless it is placed from another of the same bed, which then is.
    """
    off_m = 0.0
    for spot in frame.frame.spots:
        from_ = season.frames.get(spot.thing)
        if spot.relation not in COMPASS or from_ is None or frame.bed is None:
            continue
        same_bed = from_.bed is not None and from_.bed.name == frame.bed.name
        placed_too = any(one.relation in COMPASS for one in from_.frame.spots)
        if not same_bed or placed_too or spot.distance_m is None:
            return None
        turn = math.radians(apart_deg(COMPASS[spot.relation], bearing_deg))
        off_m += spot.distance_m * math.cos(turn)
    return off_m


def _across(found: Neighbour, way: str) -> bool:
    """The other lies to the side of the row and not beyond its end."""
    row = RUNS_DEG[way]
    ends = min(apart_deg(found.bearing_deg, row), apart_deg(found.bearing_deg, row + 180.0))
    return ends > BESIDE_DEG


def _shading_m(frame: WorkedFrame, other: WorkedFrame, found: Neighbour, way: str) -> float:
    """Height of the row that throws the shade: either, or the one on the side of the sun."""
    own, others = frame.height_m or 0.0, other.height_m or 0.0
    latitude = frame.garden.latitude
    if way == "north-south" or latitude is None or abs(latitude) <= TROPIC_DEG:
        return max(own, others)
    sunward = 180.0 if latitude > 0 else 0.0
    return others if apart_deg(found.bearing_deg, sunward) < BESIDE_DEG else own


def _ways_out(
    frame: WorkedFrame, other: WorkedFrame, found: Neighbour, gap_m: float, wants_m: float
) -> Iterable[Edit]:
    """Farther apart, where this row's own place gives the distance; both rows lower."""
    head, shown = frame.frame.block.head, Shown(frame.garden.imperial)
    if any(slot.text == found.spot.said for slot in head.slots) and not frame.stands:
        _, relation, rest = found.spot.said.partition(f" {found.spot.relation}")
        step = step_m(frame)
        wide = shown.typed(-(-wants_m // step) * step)
        yield swap(head, found.spot.said, f"{wide}{relation}{rest}", f"{wide}{relation}{rest}")
    lower = (
        int(gap_m / (wants_m / max(_shading_m(frame, other, found, runs(frame)), 0.1)) * 10) / 10
    )
    if lower >= LOWEST_M and not frame.stands and not other.stands:
        for one, two in zip(standing(frame, lower), standing(other, lower), strict=False):
            yield together(f"both rows {shown.typed(lower)} high", one, two)


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    return Words(
        says=(
            f"{facts.frame} and {facts.other}: {shown.length(facts.gap_m)} of ground between rows "
            f"{shown.length(facts.high_m)} high that run {_way(facts.runs)}. About "
            f"{shown.length(facts.wants_m)} is usual."
        ),
        if_ignored="The lower half of the shaded row goes bare.",
        told=f"{shown.length(facts.gap_m)} between {facts.frame} and {facts.other}.",
        assumed="Rows in the middle of their beds, unless the plan gives the distance of the rows.",
        sum=(
            "Common practice: as much ground as the rows are high from north to south, half as "
            "much again from east to west."
        ),
    )


def _way(runs_said: str) -> str:
    return runs_said.replace("-", " to ")


RULE = Rule(
    name="rows-too-close",
    summary="of two tall rows side by side one stands in the shade of the other",
    looks_at="frame",
    levels=("warn",),
    basis="sum",
    check=check,
    words=words,
)
