"""Holes and mortises as they are marked at the bench, in drawings larger than the whole."""

from __future__ import annotations

import itertools
from typing import TYPE_CHECKING, Final

from plantframe.catalogue import reading as catalogue
from plantframe.catalogue.mistakes import CatalogueError
from plantframe.paper import measures
from plantframe.paper.drawing import FINE, HIDDEN, LINE, Drawing, paragraphs, stacked
from plantframe.paper.scale import Scale, scale_for
from plantframe.paper.views import LEVEL, seen

if TYPE_CHECKING:
    from plantframe.catalogue.entries import Material
    from plantframe.catalogue.workings import Placed
    from plantframe.paper.subject import Subject

BAR_END_M: Final = 0.16  # as much of a bar as its end view shows
HALF_SIZE: Final = Scale(2, "half size")
SIXTH_SIZE: Final = Scale(6, "1 to 6")
MARGIN_MM: Final = 24.0
USUAL_PIN: Final = "20d"  # the pin whose hole the trade gives
SAW_MARK_MM: Final = 1.4


def joints(subject: Subject, room_mm: float) -> Drawing | None:
    """The joints that the entry gives places for, one under the other; None where it gives none."""
    found = [one for one in (_mortises(subject, room_mm), _pin_hole(subject, room_mm)) if one]
    return stacked(found) if found else None


# ---- mortises -----------------------------------------------------------------------------------
def _mortises(subject: Subject, room_mm: float) -> Drawing | None:
    """A mortised post as it lies on the bench, its head to the right."""
    high, wide = subject.figure("mortises.high"), subject.figure("mortises.wide")
    post = next((place for _, p, place in seen(subject, "front") if "mortised" in p.part.cut), None)
    pieces = next((p for p in subject.worked.pieces.values() if "mortised" in p.part.cut), None)
    if not high or not wide or post is None or pieces is None or not pieces.width_m:
        return None
    length = post.y[1] - post.y[0]
    scale = scale_for(
        length, pieces.width_m, room_mm - 2 * MARGIN_MM, 20.0, imperial=subject.shown.imperial
    )
    thick = scale.mm(pieces.width_m)
    out = Drawing(room_mm, thick + 17.0)
    left, top = MARGIN_MM, 10.0

    def along(y_m: float) -> float:
        """Where a height of the post lies on paper."""
        return left + scale.mm(y_m - post.y[0])

    out.box((left, top), (scale.mm(length), thick))
    out.line((along(0.0), top - 1.5), (along(0.0), top + thick + 1.5), HIDDEN)
    out.text((along(0.0), top - 2.5), "pencil line", anchor="middle")
    cut = scale.mm(wide)
    levels = _rail_levels(subject)
    for level in levels:
        corner = (along(level - high / 2), top + (thick - cut) / 2)
        out.box(corner, (scale.mm(high), cut))
    bench = subject.shown.bench
    measures.across(out, left, along(0.0), top + thick + 5.0, bench(-post.y[0]))
    edges = [level + high / 2 for level in levels]
    for start, end in zip(edges, [*edges[1:], post.y[1]], strict=True):
        says = _measure(subject, "mortises.below", end - start)
        measures.across(out, along(start), along(end), top + thick + 5.0, says)
    tall, broad = (
        _measure(subject, f"mortises.{side}", size)
        for side, size in (("high", high), ("wide", wide))
    )
    says = (
        f"A post on the bench, {scale.name}, its head to the right. Each mortise is {tall} high "
        f"and {broad} wide; the figures run from the head to its upper edge."
    )
    return stacked([out, paragraphs([says], room_mm)], 1.0)


def _measure(subject: Subject, fact: str, metres: float) -> str:
    """A measure as the plan gives it; one that is assumed, no finer than it deserves."""
    said = subject.worked.facts.origins.get(fact) == "said"
    return subject.shown.bench(metres) if said else subject.shown.length(metres)


def _rail_levels(subject: Subject) -> list[float]:
    """How high the middles of the mortises are, lowest first."""
    places: list[Placed] = [
        place
        for _, pieces, place in seen(subject, "front")
        if pieces.part.section == "rails" and abs(place.y[1] - place.y[0]) < LEVEL
    ]
    return sorted({round(place.y[0], 3) for place in places})


# ---- holes for pins ------------------------------------------------------------------------------
def _pin_hole(subject: Subject, room_mm: float) -> Drawing | None:
    """The end of a bar from above, with the hole for its pin and the lap that is sawn away."""
    bar, nails = subject.worked.pieces.get("bar"), _nails()
    pins = subject.worked.pieces.get("pin")
    if bar is None or pins is None or nails is None or not bar.width_m or not bar.depth_m:
        return None
    low, high = _from_end(subject, nails)
    if not low or not high:
        return None
    shown, wide_m = subject.shown, subject.figure("bar_wide") or bar.width_m
    scale = HALF_SIZE if wide_m < 0.1 else SIXTH_SIZE
    thick, long = scale.mm(wide_m), scale.mm(BAR_END_M)
    out = Drawing(room_mm, thick + 15.0)
    left, top = MARGIN_MM, 8.0
    middle = top + thick / 2
    out.line((left, top), (left, top + thick))
    for y in (top, top + thick):
        out.line((left, y), (left + long, y))
    _break(out, left + long, top, thick)
    hole = left + scale.mm((low + high) / 2)
    across = scale.mm(_hole_m(nails, pins.size)) / 2
    out.ellipse((hole, middle), (across, across))
    out.line((hole - across - 1.5, middle), (hole + across + 1.5, middle), FINE)
    out.line((hole, middle - across - 1.5), (hole, middle + across + 1.5), FINE)
    halved = bar.count > 1 and subject.worked.facts.values.get("bar.joint") == "halved"
    if halved:
        lap = left + scale.mm(subject.figure("posts.width") or wide_m)
        out.line((lap, top - SAW_MARK_MM), (lap, top + thick + SAW_MARK_MM), LINE)
        out.text((lap + 1.0, top - 2.0), "saw half through here, on ends that share a post")
    first, last = shown.bench(low), shown.bench(high)
    says = first if first == last else f"{first} to {last}"
    measures.across(out, left, hole, top + thick + 5.0, says)
    words = f"The end of a bar from above, {scale.name}: {_hole_words(subject, nails, pins.size)}."
    return stacked([out, paragraphs([words], room_mm)], 1.0)


def _from_end(subject: Subject, nails: Material) -> tuple[float, float]:
    """From the end of a bar to the hole: as the plan says, else as the trade keeps it."""
    own = subject.figure("pins.end")
    if own:
        return own, own
    trade = nails.figures.get("end distance")
    return (trade.low or 0.0, trade.high or 0.0) if trade is not None else (0.0, 0.0)


def _break(drawing: Drawing, x: float, top: float, thick: float) -> None:
    """The line that says: it goes on."""
    points = [
        (x, top),
        (x + 1.5, top + thick * 0.4),
        (x - 1.5, top + thick * 0.6),
        (x, top + thick),
    ]
    for start, end in itertools.pairwise(points):
        drawing.line(start, end, FINE)


def _nails() -> Material | None:
    try:
        return catalogue.material("nails")
    except CatalogueError:
        return None


def _hole_m(nails: Material, pin: str) -> float:
    """About how wide the hole is drawn."""
    hole = nails.figures.get("clearance hole")
    if pin == USUAL_PIN and hole is not None:
        return hole.usual
    nail = nails.sizes.get(pin, {}).get("thickness")
    return nail.usual * 1.15 if nail is not None else 0.006


def _hole_words(subject: Subject, nails: Material, pin: str) -> str:
    """How wide to bore, as far as the trade gives it."""
    hole = nails.figures.get("clearance hole")
    nail = nails.sizes.get(pin, {}).get("thickness")
    bench = subject.shown.bench
    if pin == USUAL_PIN and hole is not None and hole.low and hole.high:
        low, high = bench(hole.low), bench(hole.high)
        wide = low if low == high else f"{low} to {high}"
        return f"hole {wide} for a {pin} nail as the pin"
    if nail is not None:
        return f"hole a little wider than the {pin} nail that is the pin ({bench(nail.usual)})"
    return f"hole a little wider than the pin ({pin})"
