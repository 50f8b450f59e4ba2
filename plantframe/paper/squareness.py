"""How to know that it is square, upright and level: figures to hold a tape against."""

from __future__ import annotations

import math
from itertools import pairwise
from typing import TYPE_CHECKING, Final

from plantframe.paper.pegs import corners_m, plumb_row, ring_m

if TYPE_CHECKING:
    from plantframe.paper.subject import Subject

# How near two diagonals of rough carpentry come (common practice, no source).
NEAR_METRIC, NEAR_IMPERIAL = "1 cm", "½ in"
LONGEST_BAY_M: Final = 3.2  # a longer one is not measured across


def checks_of(subject: Subject) -> tuple[str, ...]:
    """The measures that tell whether it is true, in sentences; none where nothing is square."""
    checks = [*_on_the_ground(subject), *_panel(subject), *_bays(subject)]
    row = plumb_row(subject) if subject.structure.stands.by else []
    if len(row) > 1:
        checks.append("Each post plumb on two faces, the tops level along a string")
    elif row:
        checks.append("Plumb on two faces")
    elif ring_m(subject) is not None:
        checks.append("Tips bound over the middle peg, all feet the same depth")
    return tuple(checks)


def _near(subject: Subject) -> str:
    return NEAR_IMPERIAL if subject.shown.imperial else NEAR_METRIC


def _agree(subject: Subject, what: str, wide: float, high: float) -> str:
    diagonal = subject.tape(math.hypot(wide, high))
    return f"{what}: {diagonal} both ways, within {_near(subject)}"


def _on_the_ground(subject: Subject) -> list[str]:
    corners = corners_m(subject)
    return [] if corners is None else [_agree(subject, "Diagonals on the ground", *corners)]


def _panel(subject: Subject) -> list[str]:
    """A panel is squared lying flat."""
    for high, wide in (("size.high", "size.long"), ("size.high", "size.wide")):
        sides = subject.figure(high), subject.figure(wide)
        if sides[0] and sides[1]:
            return [_agree(subject, "Diagonals of the panel, lying flat", sides[1], sides[0])]
    high_m, wide_m = subject.figure("panels.high"), subject.figure("panels.wide")
    if high_m and wide_m:
        return [_agree(subject, "Diagonals of each panel, lying flat", wide_m, high_m)]
    return []


def _bays(subject: Subject) -> list[str]:
    """From the ground line of one post to the head of the next."""
    xs, up = plumb_row(subject), subject.figure("posts.up")
    if len(xs) < 2 or not up or not subject.structure.stands.by:
        return []
    steps = {round(b - a, 2) for a, b in pairwise(xs)}
    if len(steps) > 1 or xs[1] - xs[0] > LONGEST_BAY_M:
        return []
    what = "From the ground line of a post to the head of the next"
    return [_agree(subject, what, xs[1] - xs[0], up)]
