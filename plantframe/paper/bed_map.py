"""The map of a bed: its rows, what lies beside it, and the compass."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.language.slots import COMPASS
from plantframe.paper import measures
from plantframe.paper.drawing import BOLD, FINE, HIDDEN, LINE, Drawing
from plantframe.paper.ground import overlaps
from plantframe.paper.scale import scale_for
from plantframe.season.beside import apart_deg
from plantframe.season.units import plural

if TYPE_CHECKING:
    from plantframe.paper.drawing import Point
    from plantframe.paper.ground import Beside, Ground, Row
    from plantframe.paper.scale import Scale
    from plantframe.season.units import Shown

EDGE_MM: Final = 17.0  # round the bed: dimensions and names of what lies beside it
COMPASS_MM: Final = 28.0
NAME_MM: Final = 3.2


@frozen
class Laid:
    """Ground on paper. A bed's length lies from left to right, whichever way it runs.

    turned      north is at the left and not above
    low, high   corners of the window, in the directions of the paper, m
    """

    scale: Scale
    low: Point
    high: Point
    corner: Point
    turned: bool

    def at(self, point: Point) -> Point:
        """A point of the ground, metres east and north, on paper."""
        x, y = turn(point, turned=self.turned)
        left, top = self.corner
        return left + self.scale.mm(x - self.low[0]), top + self.scale.mm(self.high[1] - y)


def turn(point: Point, *, turned: bool) -> Point:
    """A point east and north in the directions of the paper: right and up."""
    return (-point[1], point[0]) if turned else point


def is_turned(ground: Ground) -> bool:
    """Whether north comes to lie at the left."""
    return ground.runs_deg == 0.0


def bed_map(ground: Ground, shown: Shown, room: Point) -> tuple[Drawing, Scale]:
    """The map within so much paper, and its scale.

    Raises TooLargeError for a bed of no real size.
    """
    low, high = window(ground)
    wide, deep = room[0] - 2 * EDGE_MM - COMPASS_MM, room[1] - 2 * EDGE_MM
    scale = scale_for(high[0] - low[0], high[1] - low[1], wide, deep, imperial=shown.imperial)
    out = Drawing(room[0], scale.mm(high[1] - low[1]) + 2 * EDGE_MM)
    left = (room[0] - COMPASS_MM - scale.mm(high[0] - low[0])) / 2
    laid = Laid(scale, low, high, (left, EDGE_MM), is_turned(ground))
    for one in ground.beside:
        if one.corners:
            _beside(out, one, laid)
    out.outline([laid.at(point) for point in ground.corners], BOLD)
    for number, row in enumerate(ground.rows, 1):
        _row(out, row, number, laid)
    _sides(out, ground, shown, laid)
    _elsewhere(out, ground, laid)
    if ground.runs_deg is not None:
        compass(out, (room[0] - COMPASS_MM / 2 - 2.0, EDGE_MM), turned=laid.turned)
    return out, scale


def window(ground: Ground, margin_m: float = 0.0) -> tuple[Point, Point]:
    """The lowest and highest corner of all that is drawn, in the directions of the paper."""
    figures = [ground.corners, *(one.corners for one in ground.beside if one.corners)]
    points = [turn(one, turned=is_turned(ground)) for figure in figures for one in figure]
    return (
        (min(x for x, _ in points) - margin_m, min(y for _, y in points) - margin_m),
        (max(x for x, _ in points) + margin_m, max(y for _, y in points) + margin_m),
    )


def compass(drawing: Drawing, middle: Point, size_mm: float = 7.0, *, turned: bool) -> None:
    """An arrow to the north, up or to the left."""
    x, y = middle

    def at(right: float, up: float) -> Point:
        return (x - up, y - right) if turned else (x + right, y - up)

    drawing.line(at(0.0, -size_mm), at(0.0, size_mm))
    tip, notch = at(0.0, size_mm + 2.0), at(0.0, size_mm - 1.0)
    drawing.solid([tip, at(-1.6, size_mm - 2.0), notch])
    drawing.outline([tip, at(1.6, size_mm - 2.0), notch])
    drawing.line(at(-size_mm / 2, 0.0), at(size_mm / 2, 0.0), FINE)
    letter = at(0.0, size_mm + 4.5)
    drawing.text((letter[0], letter[1] + 1.1), "N", NAME_MM, anchor="middle", bold=True)


def _row(drawing: Drawing, row: Row, number: int, laid: Laid) -> None:
    """A row, hatched, with its number; the list beside the map says what it is."""
    corners = [laid.at(point) for point in row.corners]
    if row.tip is not None:
        xs, ys = [x for x, _ in corners], [y for _, y in corners]
        middle = (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2
        across = (max(xs) - min(xs)) / 2, (max(ys) - min(ys)) / 2
        drawing.ellipse(middle, across)
        drawing.ellipse(middle, (0.5, 0.5), LINE)
    else:
        drawing.outline(corners, LINE if row.placed else HIDDEN)
        drawing.hatch(corners, 1.6, 45.0)
    x = sum(x for x, _ in corners) / 4
    y = sum(y for _, y in corners) / 4
    drawing.ellipse((x + 5.0, y), (2.4, 2.4))
    drawing.text((x + 5.0, y + 1.1), f"{number}", NAME_MM, anchor="middle", bold=True)


def _beside(drawing: Drawing, one: Beside, laid: Laid) -> None:
    corners = [laid.at(point) for point in one.corners]
    drawing.outline(corners, LINE)
    if one.high_m > 0:
        drawing.hatch(corners, 1.2, 135.0)
    x = sum(x for x, _ in corners) / 4
    y = sum(y for _, y in corners) / 4
    broad = max(x for x, _ in corners) - min(x for x, _ in corners)
    tall = max(y for _, y in corners) - min(y for _, y in corners)
    drawing.text((x, y + 1.0), one.name, anchor="middle", upright=broad >= tall)


def _box(ground: Ground, laid: Laid) -> tuple[Point, Point]:
    """The bed's upper left and lower right corner on paper."""
    points = [laid.at(point) for point in ground.corners]
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return (min(xs), min(ys)), (max(xs), max(ys))


def _sides(drawing: Drawing, ground: Ground, shown: Shown, laid: Laid) -> None:
    """How long and how wide, below and at the left."""
    (left, top), (right, foot) = _box(ground, laid)
    below = max(foot, laid.corner[1] + laid.scale.mm(laid.high[1] - laid.low[1])) + 11.0
    measures.across(drawing, left, right, below, shown.length(ground.length_m))
    measures.upright(drawing, left - 9.0, top, foot, shown.length(ground.width_m))


def _elsewhere(drawing: Drawing, ground: Ground, laid: Laid) -> None:
    """Neighbours without a distance, named at the margin on their side."""
    (left, top), (right, foot) = _box(ground, laid)
    taken: dict[str, int] = {}
    for one in ground.beside:
        if one.corners:
            continue
        bearing = math.radians(one.bearing_deg)
        across, up = turn((math.sin(bearing), math.cos(bearing)), turned=laid.turned)
        side = (
            ("right" if across > 0 else "left") if abs(across) > 0.8 else "up" if up > 0 else "down"
        )
        count = taken.get(side, 0)
        taken[side] = count + 1
        middle = ((left + right) / 2, (top + foot) / 2)
        says = f"{one.name}, {_name_of(one.bearing_deg)}"
        if side in {"left", "right"}:
            x = right + 4.5 + count * 3.6 if side == "right" else left - 2.5 - count * 3.6
            drawing.text((x, middle[1]), says, anchor="middle", upright=False)
        else:
            x = middle[0] + across * (right - left) / 3
            y = top - 2.5 - count * 3.6 if side == "up" else foot + 4.5 + count * 3.6
            drawing.text((x, y), says, anchor="middle")


def _name_of(bearing_deg: float) -> str:
    """The name of a direction: north-west."""
    return min(COMPASS, key=lambda name: apart_deg(COMPASS[name], bearing_deg))


def row_lines(ground: Ground, shown: Shown) -> list[str]:
    """The list that goes with a map: what each number is, and what is not drawn to scale."""
    lines = []
    for number, row in enumerate(ground.rows, 1):
        high = f", {shown.length(row.high_m)} high" if row.high_m else ""
        place = "" if row.placed else " (drawn dashed: the plan does not say where in the bed)"
        grows = f": {row.grows}" if row.grows else ""
        lines.append(f"{number}  {row.name}{grows}{high}{place}")
    lines += [
        f"in the bed itself: {one.named}" + (f", {plural(one.count, 'plant')}" if one.count else "")
        for one in ground.bed.plantings
    ]
    if ground.runs_deg is None:
        lines.append("The plan does not say which way the bed runs, so there is no compass.")
    placed = {row.name for row in ground.rows if row.placed}
    loose = []
    for one, other, shared in overlaps(ground):
        if {one, other} <= placed:
            length = shown.length(shared)
            lines.append(f"{one} and {other} share {length} of the bed where the plan puts them.")
        else:
            loose += [name for name in (one, other) if name not in placed]
    if loose:
        names = ", ".join(dict.fromkeys(loose))
        lines.append(f"No free stretch is left for: {names}.")
    unknown = [one.name for one in ground.beside if not one.corners]
    if unknown:
        lines.append(f"How far off is not said: {', '.join(unknown)}.")
    had = [f"{grown.plant} in {grown.year}" for grown in ground.bed.had]
    if had:
        lines.append(f"Had: {', '.join(had)}.")
    return lines
