"""Which plant goes where along a row: each a circle on the string, posts between them."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.paper import measures
from plantframe.paper.drawing import BOLD, FINE, SMALL_MM, Drawing, text_mm
from plantframe.paper.pegs import plumb_row, ring_m
from plantframe.paper.scale import scale_for

if TYPE_CHECKING:
    from plantframe.paper.subject import Subject
    from plantframe.season.units import Shown

EDGE_MM: Final = 8.0
HIGH_MM: Final = 22.0
NUMBERED: Final = (1, 2)  # these, the last and every tenth have their number
EVERY: Final = 10
MOST: Final = 200


def places_m(row_m: float, count: int) -> list[float]:
    """Where plants stand along a row, the first and last half a step from its ends."""
    step = row_m / count
    return [step * (place + 0.5) for place in range(count)]


def planting_line(
    subject: Subject | None, row_m: float, count: int, shown: Shown, room_mm: float
) -> Drawing | None:
    """The row from above; None for a ring of poles, or more plants than can be told apart.

    Raises TooLargeError for a row of no real length.
    """
    if not 0 < count <= MOST or (subject is not None and ring_m(subject) is not None):
        return None
    scale = scale_for(row_m, 0.1, room_mm - 2 * EDGE_MM, HIGH_MM, imperial=shown.imperial)
    out = Drawing(room_mm, HIGH_MM)
    left, level = (room_mm - scale.mm(row_m)) / 2, 8.0
    out.line((left, level), (left + scale.mm(row_m), level), FINE)
    posts = plumb_row(subject) if subject is not None else []
    for x in posts:
        out.box((left + scale.mm(x) - 0.9, level - 0.9), (1.8, 1.8), BOLD)
    places = places_m(row_m, count)
    across = min(scale.mm(row_m / count) * 0.35, 1.6)
    for number, x in enumerate(places, 1):
        at = left + scale.mm(x)
        out.ellipse((at, level), (across, across))
        if number in {*NUMBERED[: 2 if across > 1.2 else 1], count} or number % EVERY == 0:
            out.text((at, level - 3.0), f"{number}", anchor="middle")
    first = left + scale.mm(places[0])
    key = "squares: posts; circles: plants" if posts else "circles: plants"
    right, under = left + scale.mm(row_m), level + 6.0
    if count > 1:
        second = left + scale.mm(places[1])
        measures.across(out, first, second, under, shown.length(places[1] - places[0]))
        if second > right - text_mm(key) - 2.0:
            under += SMALL_MM + 2.0
    out.text((max(right, text_mm(key)), under + SMALL_MM / 3), key, anchor="end")
    return out
