"""Lengths in the smallest step a tape shows, so that a cutting list adds up: 1 mm, or 1/16 in."""

from __future__ import annotations

import math
from typing import Final

from plantframe.frozen import frozen
from plantframe.season.units import INCH_M, Shown

KERF_M: Final = 0.003  # a power saw's cut (common practice); an eighth of an inch on an inch tape


@frozen
class Tape:
    """A tape in inches or in millimetres."""

    imperial: bool = False

    @property
    def step_m(self) -> float:
        """The smallest step."""
        return INCH_M / 16 if self.imperial else 0.001

    def nearest(self, metres: float) -> int:
        """A length wanted, in steps."""
        return round(metres / self.step_m)

    def within(self, metres: float) -> int:
        """A length there is: never more than it measures."""
        return math.floor(metres / self.step_m + 1e-6)

    def kerf(self, metres: float) -> int:
        """What a cut takes: never less. Half a step over counts as none: 3 mm is an eighth."""
        if self.imperial:
            return max(round(metres / self.step_m), 1)
        return math.ceil(metres / self.step_m - 1e-6)

    def metres(self, steps: int) -> float:
        """Steps as metres."""
        return steps * self.step_m

    def millimetres(self, steps: int) -> int:
        """Steps to the nearest millimetre."""
        return round(self.metres(steps) * 1000)

    def says(self, steps: int) -> str:
        """Steps as a carpenter reads them: `4 ft 2 in`, `42-3/16 in`, `1981 mm`."""
        if self.imperial:
            return Shown(imperial=True).exact(self.metres(steps))
        return f"{steps} mm"

    def board(self, steps: int) -> str:
        """The length of a board as it is sold: `8 ft`, `2.4 m`."""
        tenths = self.metres(steps) * 10
        if self.imperial and steps % 16 and abs(tenths - round(tenths)) * 100 < self.step_m * 1000:
            return f"{round(tenths) / 10:g} m"  # sold by the metre, whatever the tape
        if self.imperial or steps < 1000:
            return self.says(steps)
        return f"{steps / 1000:.3f}".rstrip("0").rstrip(".") + " m"

    def kerf_says(self, steps: int) -> str:
        """What a cut takes, in words."""
        return self.says(steps)
