"""Paint, oil and preservative for the frames that are finished so: how much wood it is for."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from plantframe.season.entries import material_of
from plantframe.season.units import Shown, two_figures
from plantframe.timber.counters import PAINT, Line

if TYPE_CHECKING:
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

_FEET: Final = re.compile(r"\bfeet|preservative\b", re.IGNORECASE)
_ABOVE_M: Final = 0.1  # the foot is coated to above the ground line
_COATS: Final = 2


def finish_lines(season: Season, frames: frozenset[str] = frozenset()) -> tuple[Line, ...]:
    """A line for each finish, all its frames together."""
    groups: dict[str, list[tuple[str, float, bool]]] = {}
    for name, frame in season.frames.items():
        fact = frame.frame.fact("finish")
        if (frames and name not in frames) or frame.stands or fact is None:
            continue
        what = " ".join(str(one) for one in fact.all("stuff")).strip().lower()
        if not what or fact.get("none") is not None:
            continue
        feet = bool(_FEET.search(fact.text))
        groups.setdefault(what, []).append((name, _area_m2(frame, feet=feet), feet))
    return tuple(_line(what, group, season) for what, group in groups.items())


def _line(what: str, group: list[tuple[str, float, bool]], season: Season) -> Line:
    area = sum(area for _, area, _ in group)
    shown = Shown(season.plan.garden.imperial)
    part = "post feet" if all(feet for _, _, feet in group) else "wood"
    litres = area * _COATS / _covers_m2()
    return Line(
        PAINT,
        what,
        f"{what}, for {shown.area(area)} of {part}, {_COATS} coats: about {_amount(litres, shown)}",
        1,
        tuple(name for name, _, _ in group),
        wanted=1,
        minds=("the tin says what a litre covers, and what to wear; keep it off soil and plants",),
    )


def _amount(litres: float, shown: Shown) -> str:
    if shown.imperial:
        return f"{two_figures(litres / 0.946352946)} quarts"
    return f"{two_figures(litres)} litres"


def _covers_m2() -> float:
    entry = material_of("finishes")
    figure = entry.figures.get("a litre covers") if entry else None
    return figure.usual if figure is not None else 8.0


def _area_m2(frame: WorkedFrame, *, feet: bool) -> float:
    """The wood's surface, or that of the feet alone."""
    if frame.worked is None:
        return 0.0
    area = 0.0
    for pieces in frame.worked.pieces.values():
        if pieces.part.of not in {"wood", "strip"} or pieces.width_m is None:
            continue
        depth = pieces.depth_m or pieces.width_m
        round_it = 3.1416 * pieces.width_m if pieces.round else 2 * (pieces.width_m + depth)
        if not feet:
            area += round_it * sum(pieces.lengths_m)
        elif pieces.part.section in {"posts", "end posts"} and frame.down_m:
            area += round_it * (frame.down_m + _ABOVE_M) * pieces.count
    return area
