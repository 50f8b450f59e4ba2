"""The front view of a structure with the few dimensions that matter; its side and top beside it."""

from __future__ import annotations

from itertools import pairwise
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.paper import measures
from plantframe.paper.drawing import BOLD, FINE, SMALL_MM, Drawing, stacked, text_mm
from plantframe.paper.scale import scale_for
from plantframe.paper.subject import CUT_AT_BENCH
from plantframe.paper.text import folded
from plantframe.paper.views import (
    LEVEL,
    UPRIGHT_WORDS,
    Sight,
    draw,
    extent_of,
    seen,
    stands_at_wall,
    uprights,
)

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from plantframe.catalogue.workings import Pieces, Placed
    from plantframe.paper.drawing import Point
    from plantframe.paper.scale import Scale
    from plantframe.paper.subject import Subject
    from plantframe.paper.views import Extent

VIEWS: Final = ("front", "side", "top")
CAPTIONS: Final = {"front": "front", "side": "from the side", "top": "from above"}
LEFT_MM, RIGHT_MM, FOOT_MM = 28.0, 24.0, 14.0
VIEWS_GAP_MM: Final = 4.0
CAPTION_MM: Final = 4.0
LABEL_LINE_MM: Final = 3.4
LEAD_MM: Final = 4.0
LABEL_LEAST_MM: Final = 24.0  # narrower labels break too often to be read
MOST_LABELS: Final = 5
CUT_TO_M: Final = 0.01
MOST_COURSES: Final = 6
COURSES: Final = frozenset({"wire", "wood", "twine", "strip"})


@frozen
class Label:
    """A part's name and the point it leads to."""

    lines: tuple[str, ...]
    target: Point


def front(subject: Subject, room: Point) -> tuple[Drawing, Scale] | None:
    """The view that says most, from the front where there is one, within so much paper.

    None where the entry gives no part a place. Raises TooLargeError for a thing of no real size.
    """
    for view in VIEWS:
        if (extent := extent_of(subject, view)) is not None:
            return _view(subject, view, extent, room, None)
    return None


def all_views(subject: Subject, room: Point) -> tuple[Drawing, Scale] | None:
    """Every view at one scale: the side beside the front, what is seen from above under them.

    Raises TooLargeError for a thing of no real size.
    """
    extents = {view: found for view in VIEWS if (found := extent_of(subject, view)) is not None}
    if len(extents) < 2:
        return front(subject, room)
    scale = _shared_scale(subject, extents, room)
    told: frozenset[str] = frozenset()
    drawn: dict[str, Drawing] = {}
    for view, extent in extents.items():
        wide = scale.mm(extent.wide) + LEFT_MM + RIGHT_MM if view == "side" else room[0]
        if view == "front" and "side" in extents:
            wide = room[0] - scale.mm(extents["side"].wide) - LEFT_MM - RIGHT_MM
        drawn[view] = _captioned(
            _view(subject, view, extent, (wide, room[1]), scale, told)[0], view
        )
        told |= {name for name, _, _ in seen(subject, view)}
    upper = [drawn[view] for view in ("front", "side") if view in drawn]
    lower = [drawn["top"]] if "top" in drawn else []
    return stacked([_beside(upper), *lower], VIEWS_GAP_MM), scale


def _shared_scale(subject: Subject, extents: Mapping[str, Extent], room: Point) -> Scale:
    """The scale at which all views fit together."""
    upper = [extents[view] for view in ("front", "side") if view in extents]
    lower = [extents["top"]] if "top" in extents else []
    wide = max([sum(one.wide for one in upper), *(one.wide for one in lower)])
    high = max((one.high for one in upper), default=0.0) + sum(one.high for one in lower)
    rows = bool(upper) + bool(lower)
    taken = rows * (FOOT_MM + CAPTION_MM + LEAD_MM + 2 * LABEL_LINE_MM)
    free_wide = room[0] - max(len(upper), 1) * (LEFT_MM + RIGHT_MM)
    free_high = max(room[1] - taken, 20.0)
    return scale_for(wide, high, free_wide, free_high, imperial=subject.shown.imperial)


def _captioned(drawing: Drawing, view: str) -> Drawing:
    out = Drawing(drawing.width_mm, drawing.height_mm + CAPTION_MM)
    out.put(drawing, (0.0, 0.0))
    middle = drawing.width_mm / 2 + (LEFT_MM - RIGHT_MM) / 2
    out.text((middle, out.height_mm - 1.5), CAPTIONS[view], bold=True, anchor="middle")
    return out


def _beside(drawings: Sequence[Drawing]) -> Drawing:
    """Drawings in a row, standing on one line."""
    high = max((one.height_mm for one in drawings), default=0.0)
    out = Drawing(sum(one.width_mm for one in drawings), high)
    along = 0.0
    for one in drawings:
        out.put(one, (along, high - one.height_mm))
        along += one.width_mm
    return out


def _view(
    subject: Subject,
    view: str,
    extent: Extent,
    room: Point,
    scale: Scale | None,
    told: frozenset[str] = frozenset(),
) -> tuple[Drawing, Scale]:
    """One view with its dimensions and labels; parts told of before get no label again."""
    names = _named(subject, view, told)
    column = room[0] / max(len(names), 1)
    lines = [_lines(subject, name, column - 2.0) for name in names]
    head = max((len(one) for one in lines), default=0) * LABEL_LINE_MM + LEAD_MM
    if scale is None:
        wide = room[0] - LEFT_MM - RIGHT_MM
        high = max(room[1] - head - FOOT_MM, 15.0)
        scale = scale_for(extent.wide, extent.high, wide, high, imperial=subject.shown.imperial)
    left = max((room[0] - RIGHT_MM - LEFT_MM - scale.mm(extent.wide)) / 2, 0.0) + LEFT_MM
    out = Drawing(room[0], head + scale.mm(extent.high) + FOOT_MM)
    sight = Sight(scale, extent, (left, head))
    draw(out, subject, view, sight)
    # figures after the lines of the labels: their white edge keeps them clear where they cross
    _labels(out, subject, view, sight, list(zip(names, lines, strict=True)))
    if view == "front":
        _front_dimensions(out, subject, sight)
    else:
        _outer_dimensions(out, subject, view, sight)
    return out, scale


# ---- what the parts are called ----------------------------------------------------------------
def _named(subject: Subject, view: str, told: frozenset[str]) -> list[str]:
    """The parts that get a label in a view, most of them once."""
    names = dict.fromkeys(name for name, _, _ in seen(subject, view) if name not in told)
    order = [name for name in subject.worked.pieces if name in names]
    return order[:MOST_LABELS]


def _lines(subject: Subject, name: str, room_mm: float) -> tuple[str, ...]:
    words = subject.piece_words(name, subject.worked.pieces[name])
    return tuple(folded(words, max(room_mm, LABEL_LEAST_MM) / SMALL_MM))


def _labels(
    drawing: Drawing,
    subject: Subject,
    view: str,
    sight: Sight,
    labels: list[tuple[str, tuple[str, ...]]],
) -> None:
    """The labels over the drawing, each with a line to the nearest of its pieces."""
    if not labels:
        return
    extent = sight.extent
    left, right = sight.at(extent.left, 0.0)[0], sight.at(extent.right, 0.0)[0]
    for place, ((name, lines), middle) in enumerate(
        zip(labels, _middles([one for _, one in labels], left, right, drawing), strict=True)
    ):
        for row, line in enumerate(lines):
            drawing.text((middle, (row + 1) * LABEL_LINE_MM - 0.7), line, anchor="middle")
        pieces = [spot for found, _, spot in seen(subject, view) if found == name]
        if view != "top":  # what is in sight before what is buried
            pieces = [spot for spot in pieces if max(spot.y) > LEVEL] or pieces
        target = min(
            (_aim(spot, view, sight, middle, place) for spot in pieces),
            key=lambda point: abs(point[0] - middle),
        )
        start = (middle, len(lines) * LABEL_LINE_MM + 0.4)
        drawing.line(start, target, FINE)
        drawing.ellipse(target, (0.45, 0.45), BOLD)


def _middles(
    labels: Sequence[tuple[str, ...]], left_mm: float, right_mm: float, drawing: Drawing
) -> list[float]:
    """Where the labels stand: spread over what is drawn, and wider where they need it."""
    widths = [max(text_mm(line) for line in lines) + 4.0 for lines in labels]
    need = sum(widths)
    spread = min(max(right_mm - left_mm, need), drawing.width_mm)
    start = (left_mm + right_mm - spread) / 2
    start = min(max(start, 0.0), drawing.width_mm - spread)
    loose = max(spread - need, 0.0) / len(labels)
    middles = []
    for wide in widths:
        middles.append(start + (wide + loose) / 2)
        start += wide + loose
    return middles


def _aim(spot: Placed, view: str, sight: Sight, middle_mm: float, turn: int) -> Point:
    """The point of a piece that a label leads to, near the label; above ground where it can be."""
    (x0, x1), (y0, y1) = spot.x, spot.y
    if spot.as_ == "arc":
        return sight.at((x0 + x1) / 2, 0.0 if view == "top" and y0 == 0 else y1)
    foot = max(min(y0, y1), 0.0) if view != "top" and max(y0, y1) > LEVEL else min(y0, y1)
    top = max(y0, y1)
    if spot.as_ == "area" or abs(y1 - y0) < LEVEL:
        left, right = sight.at(min(x0, x1), top)[0], sight.at(max(x0, x1), top)[0]
        inset = min(3.0, (right - left) / 3)
        x = min(max(middle_mm, left + inset), right - inset)
        level = foot + (top - foot) * (0.62 - 0.07 * (turn % 2))
        return x, sight.at(x0, level)[1]
    share = 0.72 - 0.08 * (turn % 3)
    level = foot + share * (top - foot)
    along = (level - y0) / (y1 - y0)
    return sight.at(x0 + along * (x1 - x0), level)


# ---- dimensions of the front --------------------------------------------------------------------
def _front_dimensions(drawing: Drawing, subject: Subject, sight: Sight) -> None:
    """Depth and height at the left, courses at the right, spacing and whole length below."""
    posts = _uprights(subject)
    _heights(drawing, subject, sight, posts)
    _courses(drawing, subject, sight)
    _lengths(drawing, subject, sight, posts)


def _uprights(subject: Subject) -> list[tuple[Pieces, Placed]]:
    """What stands in the ground, from left to right."""
    return sorted(uprights(subject), key=lambda pair: pair[1].x[0])


def _heights(
    drawing: Drawing, subject: Subject, sight: Sight, posts: Sequence[tuple[Pieces, Placed]]
) -> None:
    shown, extent = subject.shown, sight.extent
    foot = min((min(place.y) for _, place in posts), default=extent.bottom)
    top = max((max(place.y) for _, place in posts), default=extent.top)
    plumb = all(abs(place.x[1] - place.x[0]) < LEVEL for _, place in posts)
    x = sight.at(extent.left, 0.0)[0] - 7.5
    ground = sight.at(0.0, 0.0)[1]
    if top > LEVEL:
        high = _outer(subject, top)
        says = high if plumb else f"{high} high"
        measures.upright(drawing, x, sight.at(0.0, top)[1], ground, says)
    if foot < -LEVEL:
        low = sight.at(0.0, foot)[1]
        measures.upright(drawing, x, ground, low, f"{shown.length(-foot)} down")
        measures.reach(drawing, (x - 1.5, low), (sight.at(extent.left, 0.0)[0], low))


def _courses(drawing: Drawing, subject: Subject, sight: Sight) -> None:
    """How high each wire, rail and string is; the first, the step and the last of many."""
    ends: dict[float, float] = {}
    for _, pieces, place in seen(subject, "front"):
        level_above = abs(place.y[1] - place.y[0]) < LEVEL and place.y[0] > LEVEL
        course = pieces.part.of in COURSES and pieces.part.section not in UPRIGHT_WORDS
        if place.as_ == "line" and level_above and course:
            high = round(place.y[0], 3)
            ends[high] = max(ends.get(high, place.x[1]), *place.x)
    levels = sorted(ends)
    if not levels or (len(levels) == 1 and levels[0] > sight.extent.top - 0.02):
        return
    tops = [max(place.y) for _, place in _uprights(subject)]
    if len(levels) == 1 and tops and _outer(subject, levels[0]) == _outer(subject, max(tops)):
        return  # the posts' height says it
    if len(levels) > MOST_COURSES:
        levels = [levels[0], levels[1], levels[-1]]
    x = sight.at(sight.extent.right, 0.0)[0] + 5.0
    free = 0.0
    for level in reversed(levels):
        start = sight.at(ends[level], level)
        drawing.line((start[0] + 1.0, start[1]), (x, start[1]), FINE)
        baseline = max(start[1] + SMALL_MM / 3, free)
        drawing.text((x + 0.6, baseline), subject.shown.length(level))
        free = baseline + SMALL_MM + 0.4


def _lengths(
    drawing: Drawing, subject: Subject, sight: Sight, posts: Sequence[tuple[Pieces, Placed]]
) -> None:
    extent = sight.extent
    below = sight.at(0.0, extent.bottom)[1]
    xs = sorted({round(place.x[0], 3) for _, place in posts})
    level = below + 6.0
    plumb = all(abs(place.x[1] - place.x[0]) < LEVEL for _, place in posts)
    if len(xs) >= 2 and plumb:  # what leans stands on a ring or a square, not in a row
        first, second = xs[0], xs[1]
        left, right = sight.at(first, 0.0)[0], sight.at(second, 0.0)[0]
        steps = {round(b - a, 2) for a, b in pairwise(xs)}
        each = " each" if len(steps) == 1 and len(xs) > 2 else ""
        if len(xs) > 2 or abs(second - first - extent.wide) > 0.05:
            measures.across(drawing, left, right, level, f"{subject.tape(second - first)}{each}")
            for x in (left, right):
                measures.reach(drawing, (x, below + 1.0), (x, level + 1.0))
            level += 5.5
    if extent.wide > LEVEL:
        left, right = sight.at(extent.left, 0.0)[0], sight.at(extent.right, 0.0)[0]
        by_posts = plumb and len(xs) >= 2 and abs(xs[-1] - xs[0] - extent.wide) < 0.05
        says = subject.tape(extent.wide) if by_posts else _outer(subject, extent.wide)
        measures.across(drawing, left, right, level, says)


def _outer(subject: Subject, metres: float) -> str:
    """A whole length: as at the bench where one piece of wood is that long, else as outdoors."""
    cut = any(
        abs((length or 0.0) - metres) < CUT_TO_M
        for pieces in subject.worked.pieces.values()
        if pieces.part.of in CUT_AT_BENCH
        for length in (pieces.length_m, pieces.breadth_m)
    )
    return subject.shown.bench(metres) if cut else subject.shown.length(metres)


def _outer_dimensions(drawing: Drawing, subject: Subject, view: str, sight: Sight) -> None:
    """The whole of a side or top view, and the heights of its two ends where they differ."""
    extent = sight.extent
    left, foot = sight.at(extent.left, extent.bottom)
    right = sight.at(extent.right, 0.0)[0]
    gap = subject.figure("gap") if view == "side" and stands_at_wall(subject) else None
    if gap:
        face, out = sight.at(0.0, 0.0)[0], sight.at(gap, 0.0)[0]
        measures.across(drawing, face, out, foot + 6.0, f"{subject.shown.length(gap)} clear")
    elif extent.wide > LEVEL:
        measures.across(drawing, left, right, foot + 6.0, _outer(subject, extent.wide))
    if view == "top":
        if extent.high > LEVEL:
            top = sight.at(0.0, extent.top)[1]
            measures.upright(drawing, left - 7.5, top, foot, _outer(subject, extent.high))
        return
    ground = sight.at(0.0, 0.0)[1]
    ends = [_end_height(subject, view, x) for x in (extent.left, extent.right)]
    sides = [(left - 7.5, "left", ends[0]), (right + 9.0, "right", ends[1])]
    if max(ends) < extent.top - 0.02 or gap:
        sides = [(left - 7.5, "left", extent.top)]
    elif abs(ends[0] - ends[1]) < 0.02:
        sides = sides[:1]
    for x, outwards, high in sides:
        if high > LEVEL:
            top = sight.at(0.0, high)[1]
            measures.upright(drawing, x, top, ground, _outer(subject, high), outwards=outwards)


def _end_height(subject: Subject, view: str, x_m: float) -> float:
    """How high a view reaches at one of its ends, m."""
    near = [
        y
        for _, _, place in seen(subject, view)
        for x, y in zip(place.x, place.y, strict=True)
        if abs(x - x_m) < 0.06 and place.as_ != "arc"
    ]
    return max(near, default=0.0)
