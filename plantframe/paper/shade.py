"""Shade over a bed at nine, noon and three, on a spring, a midsummer and a late summer day."""

from __future__ import annotations

import math
from datetime import date
from typing import TYPE_CHECKING, Final

from plantframe.paper.bed_map import Laid, compass, is_turned, window
from plantframe.paper.drawing import BOLD, FINE, LINE, SMALL_MM, Drawing
from plantframe.paper.ground import cut_to, shade_of
from plantframe.paper.scale import scale_for
from plantframe.season.units import day as shown_day
from plantframe.sky.shadow import shadow_bearing_deg, shadow_ratio

if TYPE_CHECKING:
    from plantframe.paper.drawing import Point
    from plantframe.paper.ground import Ground
    from plantframe.season.units import Shown

HOURS: Final = (9.0, 12.0, 15.0)
NORTHERN: Final = ((5, 1), (6, 21), (9, 1))  # southern ones half a year later
HEAD_MM, SIDE_MM, BELOW_MM, GAP_MM = 7.0, 12.0, 5.0, 4.0
ROUND_M: Final = 2.4  # ground shown round the bed
NOTE: Final = (
    "Hours are by the sun: 12 is when it stands highest. Hatched: shade on level ground of what is "
    "solid; a net in leaf lets some light through, so its shade is at most this."
)


def shade(ground: Ground, latitude_deg: float, year: int, shown: Shown, room: Point) -> Drawing:
    """Nine small maps of shade: a day to a row, an hour to a column.

    Raises TooLargeError for a bed of no real size.
    """
    low, high = window(ground, ROUND_M)
    wide = (room[0] - SIDE_MM - 20.0 - 2 * GAP_MM) / 3
    tall = (room[1] - HEAD_MM - 3 * (BELOW_MM + GAP_MM)) / 3
    scale = scale_for(high[0] - low[0], high[1] - low[1], wide, tall, imperial=shown.imperial)
    panel = scale.mm(high[0] - low[0]), scale.mm(high[1] - low[1])
    step = max(panel[0], 34.0) + GAP_MM, panel[1] + BELOW_MM + GAP_MM
    out = Drawing(room[0], HEAD_MM + 3 * step[1])
    turned = is_turned(ground)
    compass(out, (room[0] - 9.0, HEAD_MM + 10.0), 5.0, turned=turned)
    for column, hour in enumerate(HOURS):
        middle = SIDE_MM + column * step[0] + panel[0] / 2
        out.text((middle, HEAD_MM - 2.5), f"{hour:.0f} o'clock", anchor="middle", bold=True)
    for line, day in enumerate(days_of(latitude_deg, year)):
        top = HEAD_MM + line * step[1]
        out.text(
            (SIDE_MM - 4.0, top + panel[1] / 2), shown_day(day), anchor="middle", upright=False
        )
        for column, hour in enumerate(HOURS):
            laid = Laid(scale, low, high, (SIDE_MM + column * step[0], top), turned)
            sun = shadow_ratio(latitude_deg, day, hour), shadow_bearing_deg(latitude_deg, day, hour)
            _panel(out, ground, laid, sun)
            says = _longest(ground, sun, shown)
            left = SIDE_MM + column * step[0]
            out.text((left + panel[0] / 2, top + panel[1] + SMALL_MM + 0.6), says, anchor="middle")
    return out


def days_of(latitude_deg: float, year: int) -> tuple[date, date, date]:
    """The three days, in the growing season of that half of the world."""
    found = []
    for month, day in NORTHERN:
        if latitude_deg >= 0:
            found.append(date(year, month, day))
        else:
            later = month + 6
            found.append(date(year + (later > 12), (later - 1) % 12 + 1, day))
    return found[0], found[1], found[2]


def _panel(drawing: Drawing, ground: Ground, laid: Laid, sun: tuple[float, float | None]) -> None:
    ratio, bearing = sun
    size = laid.scale.mm(laid.high[0] - laid.low[0]), laid.scale.mm(laid.high[1] - laid.low[1])
    drawing.box(laid.corner, size, FINE)
    for one in ground.beside:
        if one.corners:
            drawing.outline([laid.at(point) for point in one.corners], FINE)
    drawing.outline([laid.at(point) for point in ground.corners], BOLD, filled=False)
    if bearing is None or not math.isfinite(ratio):
        return
    things = [(row.corners, row.tip, row.high_m) for row in ground.rows]
    things += [(one.corners, None, one.high_m) for one in ground.beside if one.corners]
    for corners, tip, high in things:
        if high <= 0:
            continue
        dark = [laid.at(point) for point in shade_of(corners, tip, high, ratio, bearing)]
        end = laid.corner[0] + size[0], laid.corner[1] + size[1]
        drawing.hatch(cut_to(dark, laid.corner, end), 1.3, 45.0)
    for row in ground.rows:
        drawing.outline([laid.at(point) for point in row.corners], LINE)


def _longest(ground: Ground, sun: tuple[float, float | None], shown: Shown) -> str:
    """How long the shade of the tallest row is."""
    ratio, bearing = sun
    high = max((row.high_m for row in ground.rows), default=0.0)
    if bearing is None or not math.isfinite(ratio):
        return "the sun is not up"
    return f"shade {shown.length(ratio * high)} long" if high else ""
