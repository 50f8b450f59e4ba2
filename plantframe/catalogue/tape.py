"""Lengths that are taken for granted, as a gardener of feet or one of metres would choose them.

An entry gives one ordinary length. Whoever works in feet takes 8 ft for its 2.4 m, and whoever
works in metres takes 2.4 m for its 2.44: so the pieces fit the boards that are sold there, and
the figures can be found on the tape.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.frozen import replace

if TYPE_CHECKING:
    from plantframe.catalogue.sourced import Sourced

FEET: Final = "feet"
METRES: Final = "metres"
INCH_M: Final = 0.0254
ROUND_M: Final = 0.05  # a multiple of this is round enough in metres
# The least length that is made rounder (m), the steps tried in turn, coarse first (m), and by
# what share a length may change.
_RULES: Final = {
    FEET: (INCH_M * 0.98, tuple(INCH_M * inches for inches in (12, 6, 3, 1, 0.5, 0.25)), 0.035),
    METRES: (0.3, (0.1, 0.05, 0.01), 0.025),
}
HAIR: Final = 1e-6


def rounded_m(metres: float, measure: str) -> float:
    """The round length next to one, in the measure of the garden; itself where none is near."""
    rule = _RULES.get(measure)
    if rule is None:
        return metres
    least, steps, share = rule
    if metres < least or (measure == METRES and _is_multiple(metres, ROUND_M)):
        return metres
    for step in steps:
        near = round(metres / step) * step
        if near > 0 and abs(near - metres) <= share * metres + HAIR:
            return near
    return metres


def _is_multiple(metres: float, step: float) -> bool:
    return abs(metres / step - round(metres / step)) < HAIR


def chosen(value: Sourced, measure: str) -> Sourced:
    """An assumed length as somebody who works in that measure takes it; others as they are."""
    if not measure or value.is_word or value.base != "m":
        return value
    usual = value.usual
    near = rounded_m(usual, measure)
    return value if near == usual else replace(value, middle=near)
