"""What the soil puts against a short stiff post that is pushed over: the ultimate moment.

For posts put up and taken down each year. Lasting posts go by depth (`practice`, `embedment`).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from plantframe.mechanics import practice
from plantframe.mechanics.ranges import Range


@dataclass(frozen=True)
class Clay:
    """Soil that sticks together: undrained shear strength, Pa."""

    strength_pa: Range


@dataclass(frozen=True)
class Sand:
    """Soil that runs: angle of friction, degrees, and unit weight, N/m³."""

    friction_deg: Range
    weight_n_per_m3: Range


# Garden soils in the gardener's words: estimates tuned to practice. Loam is taken as a clay. Clays
# may be a third weaker or stronger; freshly dug or sodden soil belongs with wet clay.
SOILS: dict[str, Clay | Sand] = {
    "loose sand": Sand(Range(27, 30, 33), Range(16e3, 17e3, 18e3)),
    "wet clay": Clay(Range(13e3, 20e3, 27e3)),
    "firm loam": Clay(Range(20e3, 30e3, 40e3)),
    "firm clay": Clay(Range(27e3, 40e3, 53e3)),
    "stiff clay": Clay(Range(53e3, 80e3, 107e3)),
}


def uncounted_top_m(width_m: float) -> float:
    """Depth of soil at the top that is taken to hold nothing, m.

    Width of the post in m. Source: 1½ widths, B. B. Broms 1964 (from memory), capped at 5.7 cm:
    the cap is an estimate tuned to practice.
    """
    return min(practice.UNCOUNTED_WIDTHS * width_m, practice.UNCOUNTED_MOST_M)


def clay_force_n(strength_pa: float, width_m: float, depth_m: float, push_height_m: float) -> float:
    """Sideways push that turns a short stiff post over in clay or loam, N.

    strength_pa     undrained shear strength, Pa
    width_m         side or diameter of the post, m
    depth_m         depth in the ground, m
    push_height_m   height of the push above the ground, m

    The soil presses 9 cu on the post below the uncounted top t. The push is balanced over a
    length f; the rest g = L - t - f turns. From H = 9 cu B f and H (e + t + f/2) = 9/4 cu B g²
    follows f² / 4 + f (e + t + (L - t) / 2) = (L - t)² / 4, which has one positive root.
    Zero where the post is not deeper than the uncounted top.
    Source: B. B. Broms, Lateral resistance of piles in cohesive soils, ASCE 1964: a short pile
    with a free head. The formula is from memory; an ultimate value, not an allowable one.
    """
    top_m = uncounted_top_m(width_m)
    counted_m = depth_m - top_m
    if counted_m <= 0:
        return 0.0
    b = push_height_m + top_m + counted_m / 2
    # Written so that nothing cancels: 2 (√(b² + c²/4) - b) = (c²/2) / (√(b² + c²/4) + b).
    f = counted_m**2 / 2 / (math.hypot(b, counted_m / 2) + b)
    return 9 * strength_pa * width_m * f


def passive_factor(friction_deg: float) -> float:
    """Passive pressure of a loose soil over its own weight, no unit.

    Angle of friction in degrees. Source: Rankine, Kp = tan²(45° + φ/2) (from memory).
    """
    return math.tan(math.radians(45 + friction_deg / 2)) ** 2


def sand_force_n(
    friction_deg: float,
    weight_n_per_m3: float,
    width_m: float,
    depth_m: float,
    push_height_m: float,
) -> float:
    """Sideways push that turns a short stiff post over in sand, N.

    friction_deg      angle of friction, degrees
    weight_n_per_m3   unit weight of the soil, N/m³
    width_m           side or diameter of the post, m
    depth_m           depth in the ground, m, above zero
    push_height_m     height of the push above the ground, m

    Source: B. B. Broms, Lateral resistance of piles in cohesionless soils, ASCE 1964:
    H = ½ γ B L³ Kp / (e + L), a short pile with a free head. The formula is from memory;
    an ultimate value, not an allowable one.
    """
    kp = passive_factor(friction_deg)
    return 0.5 * weight_n_per_m3 * width_m * depth_m**3 * kp / (push_height_m + depth_m)


def ground_force_n(soil: str, width_m: float, depth_m: float, push_height_m: float) -> Range:
    """Sideways push that turns a post over, N: low, middle, high.

    soil            one of `SOILS`
    width_m         side or diameter of the post, m
    depth_m         depth in the ground, m, above zero
    push_height_m   height of the push above the ground, m

    Raises ValueError for a soil that is not in `SOILS`.
    Source: `clay_force_n` or `sand_force_n`; the soils are estimates tuned to practice.
    """
    if soil not in SOILS:
        raise ValueError(f"no soil is called '{soil}': one of {', '.join(SOILS)}")
    ground = SOILS[soil]
    if isinstance(ground, Clay):
        forces = (
            clay_force_n(strength_pa, width_m, depth_m, push_height_m)
            for strength_pa in ground.strength_pa
        )
    else:
        forces = (
            sand_force_n(friction_deg, weight_n_per_m3, width_m, depth_m, push_height_m)
            for friction_deg, weight_n_per_m3 in zip(
                ground.friction_deg, ground.weight_n_per_m3, strict=True
            )
        )
    return Range(*forces)


def ground_moment_nm(soil: str, width_m: float, depth_m: float, push_height_m: float) -> Range:
    """Moment at ground level at which a post goes over, N·m: low, middle, high.

    Arguments and ValueError as `ground_force_n`; it is that push times its height, so that it can
    be set against the wind's moment at the same level.
    Source: `ground_force_n`, an estimate tuned to practice.
    """
    return ground_force_n(soil, width_m, depth_m, push_height_m).times(push_height_m)
