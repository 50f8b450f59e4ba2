"""Scales a drawing may have, each with a name to put under it."""

from __future__ import annotations

import math
from typing import Final

from plantframe.frozen import frozen

METRIC: Final = (5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 250, 500, 1000)
# Inches of paper to a foot of garden.
INCHES: Final = {
    6: "2 in to the foot",
    12: "1 in to the foot",
    16: "¾ in to the foot",
    24: "½ in to the foot",
    32: "⅜ in to the foot",
    48: "¼ in to the foot",
    64: "3/16 in to the foot",
    96: "⅛ in to the foot",
    128: "3/32 in to the foot",
    192: "1/16 in to the foot",
}
LARGEST_M: Final = 10_000.0  # what is larger has a slip in its line


@frozen
class Scale:
    """One to so many. `name` is what stands under the drawing."""

    ratio: int
    name: str

    def mm(self, metres: float) -> float:
        """A length on paper."""
        return metres * 1000.0 / self.ratio


class TooLargeError(ValueError):
    """Something so large, or of no size at all, that no page shows it."""


def scale_for(
    wide_m: float, high_m: float, wide_mm: float, high_mm: float, *, imperial: bool
) -> Scale:
    """The largest usual scale at which something fits into so much paper.

    Raises TooLargeError where nobody builds a thing of that size.
    """
    if not all(math.isfinite(size) and 0 <= size <= LARGEST_M for size in (wide_m, high_m)):
        raise TooLargeError("one of its sizes is none that can be drawn")
    least = max(wide_m * 1000.0 / wide_mm, high_m * 1000.0 / high_mm)
    if imperial:
        for ratio, name in INCHES.items():
            if ratio >= least:
                return Scale(ratio, name)
    for ratio in METRIC:
        if ratio >= least:
            return Scale(ratio, f"1 to {ratio}")
    ratio = math.ceil(least / 1000.0) * 1000
    return Scale(ratio, f"1 to {ratio}")
