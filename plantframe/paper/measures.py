"""Dimension lines: how far, between which two points, with the figure on the line."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.paper.drawing import FINE, SMALL_MM, text_mm

if TYPE_CHECKING:
    from plantframe.paper.drawing import Drawing, Point

TICK_MM: Final = 1.1
GAP_MM: Final = 0.9  # between a dimension's line and its figure


def across(drawing: Drawing, left_mm: float, right_mm: float, level_mm: float, says: str) -> None:
    """A level dimension line with its figure on it; beside it, where the figure is the longer."""
    drawing.line((left_mm, level_mm), (right_mm, level_mm), FINE)
    for x in (left_mm, right_mm):
        _tick(drawing, (x, level_mm))
    if text_mm(says) <= abs(right_mm - left_mm):
        middle = (left_mm + right_mm) / 2
        drawing.text((middle, level_mm - GAP_MM), says, anchor="middle")
    else:
        drawing.text((right_mm + 1.6, level_mm + 1.0), says)


def upright(
    drawing: Drawing,
    x_mm: float,
    top_mm: float,
    foot_mm: float,
    says: str,
    *,
    outwards: str = "left",
) -> None:
    """An upright dimension line, its figure turned along it, or level beside one too short.

    outwards   the side on which there is room: left or right
    """
    drawing.line((x_mm, top_mm), (x_mm, foot_mm), FINE)
    for y in (top_mm, foot_mm):
        _tick(drawing, (x_mm, y))
    middle = (top_mm + foot_mm) / 2
    if text_mm(says) <= abs(foot_mm - top_mm):
        drawing.text((x_mm - GAP_MM, middle), says, anchor="middle", upright=False)
    else:
        aside, anchor = (1.6, "start") if outwards == "right" else (-1.6, "end")
        drawing.text((x_mm + aside, middle + SMALL_MM / 3), says, anchor=anchor)


def reach(drawing: Drawing, start: Point, end: Point) -> None:
    """The fine line that leads from a thing to its dimension."""
    drawing.line(start, end, FINE)


def _tick(drawing: Drawing, at: Point) -> None:
    half = TICK_MM / 2
    drawing.line((at[0] - half, at[1] + half), (at[0] + half, at[1] - half))
