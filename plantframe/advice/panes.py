"""Panes of glass under snow that lies for days, against what glass stands for so long."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.lights import glazing, has_lights, is_ordinary_glass
from plantframe.mechanics.glass import design_strength_pa, duration_factor, plate_stress_pa
from plantframe.mechanics.ranges import Range
from plantframe.mechanics.snow import shape_factor

if TYPE_CHECKING:
    from plantframe.season.frames import WorkedFrame

LYING_M = 0.30  # of wet snow, as a hard winter brings it more than once (common practice)
LYING_H = 168.0  # a week: snow on a cold frame is not looked at every day
GRAVITY = 9.81
ONE_PANE_M = 0.85  # wider lights are glazed with several small panes
USUAL_THICK_M = 0.003


def pane_m(frame: WorkedFrame) -> tuple[float, float, float] | None:
    """Width, length and thickness of the one pane of a light; None where it is not such a light."""
    if not has_lights(frame) or not is_ordinary_glass(glazing(frame)):
        return None
    wide = frame.figure("pane_wide") or frame.figure("lights.wide") or 0.0
    long = frame.figure("pane_long") or frame.figure("lights.long") or 0.0
    if (frame.figure("lights.wide") or 0.0) >= ONE_PANE_M or wide <= 0 or long <= 0:
        return None
    return wide, long, frame.figure("lights.thick") or USUAL_THICK_M


def snow_ratio(pane: tuple[float, float, float], low: float, high: float) -> Range:
    """Stress under wet snow of two densities, kg/m3, over what glass stands for a week.

    Sources: EN 1991-1-3, 5.3 for the snow on a slope below 30 degrees; Roark for the pane held on
    four edges; EN 16612 for the strength of glass under a load that stays.
    """
    stands = design_strength_pa(duration_factor(LYING_H))
    weights = (low, (low + high) / 2, high)
    stresses = [
        plate_stress_pa(one * GRAVITY * LYING_M * shape_factor(0.0), *pane) for one in weights
    ]
    return Range(*(stress / stands for stress in stresses))
