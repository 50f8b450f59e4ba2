"""A bed and what stands on it and beside it, laid out on level ground. Metres east and north."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.language.slots import COMPASS
from plantframe.plan.things import INSIDE, Bed, Frame
from plantframe.season.beside import beside

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from plantframe.plan.things import Spot, Thing
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

Point = tuple[float, float]

RUNS_DEG: Final = {"north-south": 0.0, "east-west": 90.0}
LEAST_DEEP_M: Final = 0.1  # a row thinner than this is shown as thick as this
NEAR_ENOUGH_M: Final = 0.01
LEAST_SHARED_M: Final = 1e-6
BAND_M: Final = 0.5  # how much is shown of a hedge or a wall whose width is not said


@frozen
class Row:
    """Something that stands in a bed.

    corners   its outline on the ground
    tip       where its top draws together, of a wigwam; None where it is as long at the top
    placed    the plan says where in the bed it stands
    along_m   from and to along the bed, from its middle
    """

    name: str
    grows: str
    corners: tuple[Point, ...]
    high_m: float
    tip: Point | None
    placed: bool
    along_m: tuple[float, float]


@frozen
class Beside:
    """Something beside a bed.

    corners   its outline, empty where the plan gives no distance
    high_m    0 for a bed or a path
    """

    name: str
    bearing_deg: float
    distance_m: float | None
    corners: tuple[Point, ...]
    high_m: float
    word: str


@frozen
class Ground:
    """A bed laid out, its middle at nought.

    runs_deg   which way its length runs, None where the plan does not say: then length is drawn
               from left to right and there is no north
    """

    bed: Bed
    length_m: float
    width_m: float
    runs_deg: float | None
    corners: tuple[Point, ...]
    rows: tuple[Row, ...]
    beside: tuple[Beside, ...]


def ground_of(season: Season, bed: Bed) -> Ground | None:
    """Lay a bed out; None where nothing tells how large it is."""
    frames = [one for one in season.frames.values() if one.bed is not None and one.bed == bed]
    length = bed.length_m or sum(one.row_m or 0.0 for one in frames)
    width = bed.width_m or max((_deep_m(one) for one in frames), default=0.0)
    if not (0 < length < math.inf and 0 < width < math.inf):
        return None
    runs = RUNS_DEG.get(bed.runs)
    turn = 90.0 if runs is None else runs
    corners = _oblong((0.0, 0.0), length, width, turn)
    rows = _rows(frames, (length, width), turn)
    others = tuple(_others(season, bed, length, width, turn)) if runs is not None else ()
    return Ground(bed, length, width, runs, corners, tuple(rows), others)


def overlaps(ground: Ground) -> list[tuple[str, str, float]]:
    """Pairs of rows that the plan puts into one stretch of the bed, and how long that is, m."""
    found = []
    for place, one in enumerate(ground.rows):
        for other in ground.rows[place + 1 :]:
            shared = min(one.along_m[1], other.along_m[1]) - max(one.along_m[0], other.along_m[0])
            if shared > NEAR_ENOUGH_M and _meet(one.corners, other.corners):
                found.append((one.name, other.name, shared))
    return found


def _meet(one: Sequence[Point], other: Sequence[Point]) -> bool:
    """Whether two oblongs that lie the same way cover some ground in common."""
    return all(
        min(max(p[axis] for p in one), max(p[axis] for p in other))
        > max(min(p[axis] for p in one), min(p[axis] for p in other)) + LEAST_SHARED_M
        for axis in (0, 1)
    )


def _oblong(middle: Point, long_m: float, wide_m: float, bearing_deg: float) -> tuple[Point, ...]:
    """The corners of an oblong whose length runs along a bearing."""
    turn = math.radians(bearing_deg)
    along, across = (math.sin(turn), math.cos(turn)), (math.cos(turn), -math.sin(turn))
    ends = [(-1, -1), (1, -1), (1, 1), (-1, 1)]
    return tuple(
        (
            middle[0] + a * along[0] * long_m / 2 + c * across[0] * wide_m / 2,
            middle[1] + a * along[1] * long_m / 2 + c * across[1] * wide_m / 2,
        )
        for a, c in ends
    )


# ---- rows -------------------------------------------------------------------------------------
def _rows(frames: Sequence[WorkedFrame], bed: tuple[float, float], turn: float) -> list[Row]:
    """The frames of a bed; one whose place is not said goes where there is room left."""
    sizes = {one.frame.name: _size_of(one, bed[0]) for one in frames}
    spots = {
        one.frame.name: _where(one.frame.spots, sizes[one.frame.name], bed, turn) for one in frames
    }
    taken = [
        (spot[0] - sizes[name][0] / 2, spot[0] + sizes[name][0] / 2)
        for name, spot in spots.items()
        if spot is not None
    ]
    rows = []
    for frame in frames:
        name = frame.frame.name
        long, deep = sizes[name]
        spot = spots[name]
        along, across = spot if spot is not None else (_free(taken, long, bed[0]), 0.0)
        if spot is None:
            taken.append((along - long / 2, along + long / 2))
        radians = math.radians(turn)
        middle = (
            along * math.sin(radians) + across * math.cos(radians),
            along * math.cos(radians) - across * math.sin(radians),
        )
        rows.append(
            Row(
                name,
                ", ".join(one.planting.named for one in frame.plantings),
                _oblong(middle, long, deep, turn),
                frame.height_m or 0.0,
                middle if _draws_together(frame) else None,
                spot is not None,
                (along - long / 2, along + long / 2),
            )
        )
    return rows


def _size_of(frame: WorkedFrame, bed_m: float) -> tuple[float, float]:
    """How long and how deep a frame is on the ground, no longer than its bed."""
    long = frame.worked.ground_m[0] if frame.worked else frame.row_m or bed_m
    deep = max(_deep_m(frame), LEAST_DEEP_M)
    return (min(long, bed_m) if long > 0 else deep), deep


def _free(taken: Sequence[tuple[float, float]], long: float, bed_m: float) -> float:
    """The middle of the first stretch with room for so much; of the bed where there is none."""
    edge = bed_m / 2
    for start, end in sorted(taken, key=lambda stretch: -stretch[1]):
        if edge - end >= long - NEAR_ENOUGH_M:
            break
        edge = min(edge, start)
    fits = edge - long >= -bed_m / 2 - NEAR_ENOUGH_M
    return edge - long / 2 if fits else 0.0


def _deep_m(frame: WorkedFrame) -> float:
    return frame.worked.ground_m[1] if frame.worked else LEAST_DEEP_M


def _draws_together(frame: WorkedFrame) -> bool:
    """Its poles meet at the top: a wigwam, a tripod."""
    return frame.figure("tie.height") is not None and frame.figure("circle") is not None


def _where(
    spots: Iterable[Spot], size: tuple[float, float], bed: tuple[float, float], turn: float
) -> tuple[float, float] | None:
    """How far along and across from the middle of a bed a frame stands; None where nobody says."""
    for spot in (one for one in spots if one.relation in INSIDE):
        if spot.along_m is not None:
            start, end = spot.along_m
            return bed[0] / 2 - (start + end) / 2, 0.0
        side = spot.part.rpartition(" ")[0]
        if spot.part == "middle":
            return 0.0, 0.0
        if side in COMPASS:
            apart = math.radians(COMPASS[side] - turn)
            shares = round(math.cos(apart), 6), round(math.sin(apart), 6)
            along, across = (
                _towards(share) * (whole - own) / 2
                for share, whole, own in zip(shares, bed, size, strict=True)
            )
            return along, across
    return None


def _towards(share: float) -> int:
    return (share > 0) - (share < 0)


# ---- neighbours ------------------------------------------------------------
def _others(season: Season, bed: Bed, length: float, width: float, turn: float) -> Iterable[Beside]:
    """What lies beside the bed, at the distance the plan gives."""
    for found in beside(season.plan, bed.name):
        other = found.thing
        high = _height_m(season, other)
        corners: tuple[Point, ...] = ()
        if found.distance_m is not None:
            along = math.radians(found.bearing_deg - turn)
            reach = (abs(math.cos(along)) * length + abs(math.sin(along)) * width) / 2
            deep, long = _size(other, found.bearing_deg, length, width, turn)
            out = reach + found.distance_m + deep / 2
            bearing = math.radians(found.bearing_deg)
            middle = (math.sin(bearing) * out, math.cos(bearing) * out)
            corners = _oblong(middle, long, deep, found.bearing_deg + 90.0)
        yield Beside(
            other.name, found.bearing_deg, found.distance_m, corners, high, other.block.word
        )


def _height_m(season: Season, other: Bed | Frame | Thing) -> float:
    if isinstance(other, Bed):
        return 0.0
    if isinstance(other, Frame):
        return season.frames[other.name].height_m or 0.0
    return other.high_m or 0.0


def _size(
    other: Bed | Frame | Thing, bearing_deg: float, length: float, width: float, turn: float
) -> tuple[float, float]:
    """How deep a neighbour is, seen from the bed, and how long its face."""
    apart = math.radians(bearing_deg - turn)
    face = abs(math.sin(apart)) * length + abs(math.cos(apart)) * width
    if isinstance(other, Bed):
        same = RUNS_DEG.get(other.runs, turn)
        sideways = abs(math.sin(math.radians(bearing_deg - same))) > math.sqrt(0.5)
        long, wide = other.length_m or face, other.width_m or BAND_M
        return (wide, long) if sideways else (long, wide)
    if isinstance(other, Frame):
        return BAND_M, face
    return other.wide_m or BAND_M, other.long_m or face


# ---- shade ------------------------------------------------------------
def shade_of(
    corners: Sequence[Point], tip: Point | None, high_m: float, ratio: float, bearing_deg: float
) -> tuple[Point, ...]:
    """The outline of the shade on the ground of something so high, the thing itself included.

    ratio        length of a shadow as a multiple of the height
    bearing_deg  where shadows point
    """
    bearing = math.radians(bearing_deg)
    east, north = math.sin(bearing) * ratio * high_m, math.cos(bearing) * ratio * high_m
    tops = corners if tip is None else [tip]
    return hull([*corners, *((x + east, y + north) for x, y in tops)])


def hull(points: Iterable[Point]) -> tuple[Point, ...]:
    """The outline round points, without hollow sides (the monotone chain of A. M. Andrew, 1979)."""
    order = sorted(set(points))
    if len(order) < 3:
        return tuple(order)
    sides: list[list[Point]] = []
    for run in (order, order[::-1]):
        side: list[Point] = []
        for point in run:
            while len(side) > 1 and _turns(side[-2], side[-1], point) <= 0:
                side.pop()
            side.append(point)
        sides.append(side[:-1])
    return tuple(sides[0] + sides[1])


def _turns(one: Point, two: Point, three: Point) -> float:
    return (two[0] - one[0]) * (three[1] - one[1]) - (two[1] - one[1]) * (three[0] - one[0])


def cut_to(corners: Sequence[Point], low: Point, high: Point) -> tuple[Point, ...]:
    """What of a figure without hollow sides lies in a window (Sutherland and Hodgman, 1974)."""
    found = list(corners)
    for axis, level, sign in ((0, low[0], 1), (0, high[0], -1), (1, low[1], 1), (1, high[1], -1)):
        kept: list[Point] = []
        for here, there in zip(found, [*found[1:], *found[:1]], strict=True):
            one, two = sign * (here[axis] - level), sign * (there[axis] - level)
            if one >= 0:
                kept.append(here)
            if (one < 0) != (two < 0):
                share = one / (one - two)
                kept.append(
                    (
                        here[0] + share * (there[0] - here[0]),
                        here[1] + share * (there[1] - here[1]),
                    )
                )
        found = kept
        if not found:
            return ()
    return tuple(found)
