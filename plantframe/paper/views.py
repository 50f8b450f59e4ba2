"""A structure seen from the front, the side or above: each part where its entry puts it."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.paper.drawing import BOLD, DOTTED, FINE, HIDDEN, LINE, Pen

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from plantframe.catalogue.workings import Pieces, Placed
    from plantframe.paper.drawing import Drawing, Point
    from plantframe.paper.scale import Scale
    from plantframe.paper.subject import Subject

NET: Final = Pen(0.1)
FINEST_MESH_MM: Final = 1.6  # on paper; a closer one is drawn as close as this
THINNEST_MM: Final = 0.6  # a stick thinner than this on paper is one line
GROUND_BEYOND_MM: Final = 5.0
UPRIGHT_WORDS: Final = frozenset({"posts", "end posts"})
LEVEL: Final = 1e-6
AT_WALL: Final = frozenset({"wall", "elsewhere"})
WALL_MM: Final = 3.0  # how much of a wall is drawn
# How each matter is hatched: step on paper and leanings.
HATCHES: Final = {
    "cloth": (3.0, (45.0,)),
    "strip": (3.0, (45.0, 135.0)),
    "brush": (1.6, (0.0,)),
    "fill": (2.4, (135.0,)),
}


@frozen
class Extent:
    """How far a view reaches, m."""

    left: float
    right: float
    bottom: float
    top: float

    @property
    def wide(self) -> float:
        """From left to right."""
        return self.right - self.left

    @property
    def high(self) -> float:
        """From bottom to top."""
        return self.top - self.bottom


@frozen
class Sight:
    """Where metres of a view fall on paper. The corner is that of its upper left."""

    scale: Scale
    extent: Extent
    corner: Point

    def at(self, x: float, y: float) -> Point:
        """A point of the view on paper."""
        left, top = self.corner
        return left + self.scale.mm(x - self.extent.left), top + self.scale.mm(self.extent.top - y)


def seen(subject: Subject, view: str) -> Iterator[tuple[str, Pieces, Placed]]:
    """Every piece that a view shows, with its part's name, in the order they are drawn.

    What is mortised stands before what enters it.
    """
    parts = sorted(subject.worked.pieces.items(), key=lambda part: "mortised" in part[1].part.cut)
    for surface in (True, False):
        for name, pieces in parts:
            for place in pieces.places:
                if place.view == view and (place.as_ == "area") == surface:
                    yield name, pieces, place


def uprights(subject: Subject) -> list[tuple[Pieces, Placed]]:
    """What stands in the ground as seen from the front; props and braces on it are none of them."""
    found = [
        (name, pieces, place)
        for name, pieces, place in seen(subject, "front")
        if pieces.part.section in UPRIGHT_WORDS and place.as_ == "line"
    ]
    buried = {name for name, _, place in found if min(place.y) < -LEVEL}
    return [(pieces, place) for name, pieces, place in found if not buried or name in buried]


def extent_of(subject: Subject, view: str) -> Extent | None:
    """How far a view reaches, ground included; None where there is nothing to see."""
    places = [place for _, _, place in seen(subject, view)]
    if not places:
        return None
    xs = [x for place in places for x in place.x]
    ys = [y for place in places for y in place.y]
    if view == "side" and stands_at_wall(subject):
        xs.append(0.0)
    if view == "top":
        ys += [-place.y[1] for place in places if place.as_ == "arc"]
    else:
        ys.append(0.0)
    return Extent(min(xs), max(xs), min(ys), max(ys))


def stands_at_wall(subject: Subject) -> bool:
    """Whether a side view has a wall at its left, a gap away from what is fixed to it."""
    return subject.figure("gap") is not None and subject.structure.stands.held in AT_WALL


def draw(drawing: Drawing, subject: Subject, view: str, sight: Sight) -> None:
    """Draw a view: surfaces first, then sticks and lines, and the ground."""
    for _, pieces, place in seen(subject, view):
        if place.as_ == "area":
            _surface(drawing, subject, pieces, place, sight)
        elif place.as_ == "arc":
            _arc(drawing, place, view, sight)
        else:
            _stick(drawing, subject, pieces, place, view, sight)
    if view != "top":
        _ground(drawing, subject, sight)
    if view == "side" and stands_at_wall(subject):
        _wall(drawing, sight)


def ground_m(subject: Subject, extent: Extent) -> float:
    """The level of the ground in a view: nought, but under a tub its foot."""
    tub = any(pieces.part.of == "tub" for pieces in subject.worked.pieces.values())
    return extent.bottom if tub else 0.0


def _surface(
    drawing: Drawing, subject: Subject, pieces: Pieces, place: Placed, sight: Sight
) -> None:
    (left, top), (right, foot) = sight.at(place.x[0], place.y[1]), sight.at(place.x[1], place.y[0])
    corners = [(left, top), (right, top), (right, foot), (left, foot)]
    matter = pieces.part.of
    if matter in {"net", "mesh"}:
        mesh = subject.figure("net.mesh") or subject.figure("mesh.length") or 0.15
        step = sight.scale.mm(mesh)
        for lean in (0.0, 90.0):
            for start, end in _grid(corners, max(step, FINEST_MESH_MM), lean):
                drawing.line(start, end, NET)
        drawing.outline(corners, FINE, filled=False)
        return
    buried = place.y[1] <= LEVEL and matter != "tub"
    drawing.outline(corners, HIDDEN if buried else LINE, filled=not buried)
    if matter in HATCHES:
        step, leanings = HATCHES[matter]
        for lean in leanings:
            drawing.hatch(corners, step, lean)


def _grid(corners: Sequence[Point], step: float, lean: float) -> Iterator[tuple[Point, Point]]:
    """The cords of a net one way, counted from its upper left corner."""
    (left, top), (right, foot) = corners[0], corners[2]
    if lean:
        for count in range(1, math.ceil((right - left) / step - LEVEL)):
            yield (left + count * step, top), (left + count * step, foot)
    else:
        for count in range(1, math.ceil((foot - top) / step - LEVEL)):
            yield (left, top + count * step), (right, top + count * step)


def _arc(drawing: Drawing, place: Placed, view: str, sight: Sight) -> None:
    left, right = sight.at(place.x[0], place.y[0]), sight.at(place.x[1], place.y[0])
    crown = sight.scale.mm(place.y[1] - place.y[0])
    if view == "top":  # a ring seen from above: its other half as well
        centre = ((left[0] + right[0]) / 2, left[1])
        drawing.ellipse(centre, ((right[0] - left[0]) / 2, crown), filled=False)
    else:
        drawing.half_ellipse(left, right, crown)


def _stick(
    drawing: Drawing, subject: Subject, pieces: Pieces, place: Placed, view: str, sight: Sight
) -> None:
    """One stick or line; what is in the ground is broken."""
    start, end = (place.x[0], place.y[0]), (place.x[1], place.y[1])
    if start[1] > end[1]:
        start, end = end, start
    thick = sight.scale.mm(_thickness(subject, pieces, place, view))
    if math.dist(start, end) < LEVEL:
        _spot(drawing, pieces, sight.at(*start), max(thick, 1.2))
        return
    pen = DOTTED if pieces.part.of in {"twine", "rope"} else LINE
    if view != "top" and start[1] < -LEVEL and end[1] > LEVEL:
        share = -start[1] / (end[1] - start[1])
        at_ground = (start[0] + share * (end[0] - start[0]), 0.0)
        _length(drawing, sight.at(*start), sight.at(*at_ground), thick, HIDDEN)
        _length(drawing, sight.at(*at_ground), sight.at(*end), thick, pen)
        return
    buried = view != "top" and end[1] <= LEVEL and start[1] < -LEVEL
    _length(drawing, sight.at(*start), sight.at(*end), thick, HIDDEN if buried else pen)


def _spot(drawing: Drawing, pieces: Pieces, at: Point, across: float) -> None:
    """A stick seen from its end."""
    half = across / 2
    if pieces.round or pieces.width_m is None:
        drawing.ellipse(at, (half, half))
    else:
        drawing.box((at[0] - half, at[1] - half), (across, across))


def _length(drawing: Drawing, start: Point, end: Point, thick: float, pen: Pen) -> None:
    """A stick as the outline of its real thickness, or as one line where that is too thin."""
    if thick < THINNEST_MM:
        drawing.line(start, end, pen)
        return
    run = math.dist(start, end)
    aside = ((start[1] - end[1]) / run * thick / 2, (end[0] - start[0]) / run * thick / 2)
    corners = [
        (start[0] + aside[0], start[1] + aside[1]),
        (end[0] + aside[0], end[1] + aside[1]),
        (end[0] - aside[0], end[1] - aside[1]),
        (start[0] - aside[0], start[1] - aside[1]),
    ]
    drawing.outline(corners, pen)


def _thickness(subject: Subject, pieces: Pieces, place: Placed, view: str) -> float:
    """How thick a stick looks, m; 0 for wire, twine and what is drawn as a line."""
    if pieces.width_m is None or pieces.depth_m is None:
        return 0.0
    thin, broad = sorted((pieces.width_m, pieces.depth_m))
    if pieces.breadth_m is not None:  # a board: seen on its edge, but for the slope of an end
        level = abs(place.y[1] - place.y[0]) < LEVEL
        plumb = abs(place.x[1] - place.x[0]) < LEVEL
        return thin if level or plumb else 0.0
    if view != "front":
        return thin
    carries = subject.worked.carries
    lies = abs(place.y[1] - place.y[0]) < LEVEL
    if lies and carries and carries.tall and carries.section == pieces.part.section:
        return subject.worked.figure(carries.tall)
    return broad


def _ground(drawing: Drawing, subject: Subject, sight: Sight) -> None:
    """The ground: a bold line with short strokes under it."""
    level = ground_m(subject, sight.extent)
    left = sight.at(sight.extent.left, level)[0] - GROUND_BEYOND_MM
    right, y = sight.at(sight.extent.right, level)
    right += GROUND_BEYOND_MM
    drawing.line((left, y), (right, y), BOLD)
    for end in (left, right - GROUND_BEYOND_MM):
        for step in range(4):
            x = end + step * 1.3
            drawing.line((x + 1.1, y), (x, y + 1.3), FINE)


def _wall(drawing: Drawing, sight: Sight) -> None:
    """The face of a wall, its inside hatched."""
    face, top = sight.at(0.0, sight.extent.top)
    foot = sight.at(0.0, 0.0)[1]
    drawing.line((face, top), (face, foot), BOLD)
    inside = [(face - WALL_MM, top), (face, top), (face, foot), (face - WALL_MM, foot)]
    drawing.hatch(inside, 1.6, 45.0)
