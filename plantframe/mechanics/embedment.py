"""Depth of a lasting post in the ground by the building code, from its allowable soil pressures.

For posts that stay for years where a design wind is known; a bean row put up for a summer does not
go by it. The local code and its building office have the last word.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from plantframe.mechanics.units import FT_M, PSF_PA, PSF_PER_FT_PA_PER_M

# Pressure grows with depth no further than this (12 ft): IBC 2021, 1807.3.2.1.
DEEPEST_COUNTED_M = 12 * FT_M

# A lone post that may move ½ in at the ground under a short load: IBC 2018, 1806.3.4.
LONE_POST_FACTOR = 2.0


@dataclass(frozen=True)
class PresumedSoil:
    """Values the code allows without a soil report: as printed, in psf, and per ft of depth.

    Source: IBC 2012, Table 1806.2. Mud, peat, organic silt and unprepared fill have none.
    """

    bearing_psf: float
    lateral_psf_per_ft: float
    friction_factor: float | None = None
    cohesion_psf: float | None = None

    @property
    def bearing_pa(self) -> float:
        """Allowable pressure under a foot, Pa."""
        return self.bearing_psf * PSF_PA

    @property
    def lateral_pa_per_m(self) -> float:
        """Allowable sideways pressure, Pa for each metre of depth."""
        return self.lateral_psf_per_ft * PSF_PER_FT_PA_PER_M


PRESUMED_SOILS = {
    "bedrock": PresumedSoil(12000, 1200, friction_factor=0.70),
    "layered rock": PresumedSoil(4000, 400, friction_factor=0.35),
    "gravel": PresumedSoil(3000, 200, friction_factor=0.35),  # and sandy gravel: GW, GP
    "sand": PresumedSoil(2000, 150, friction_factor=0.25),  # and silty or clayey: SW SP SM SC GM GC
    "clay": PresumedSoil(1500, 100, cohesion_psf=130),  # and silt: CL ML MH CH
}


def factor_a_m(force_n: float, width_m: float, pressure_pa: float) -> float:
    """A of the code's equation, m.

    force_n       sideways pull, N
    width_m       diameter of the post or its footing; for a square one, its diagonal, m
    pressure_pa   allowable lateral soil pressure a third of the way down, Pa

    Source: IBC 2021, 1807.3.2.1, A = 2.34 P / (S1 b).
    """
    return 2.34 * force_n / (pressure_pa * width_m)


def depth_for_pressure_m(
    force_n: float, force_height_m: float, width_m: float, pressure_pa: float
) -> float:
    """Depth of a post nothing holds at ground level, for a soil pressure already settled, m.

    One pass of the code's equation, as it is worked by hand from a trial depth.

    force_n          sideways pull, N
    force_height_m   height of that pull above the ground, m
    width_m          diameter of the post; for a square one, its diagonal, m
    pressure_pa      allowable lateral soil pressure a third of the trial depth down, Pa

    Source: IBC 2021, 1807.3.2.1, eq. 18-1: d = A/2 (1 + √(1 + 4.36 h / A)).
    """
    a_m = factor_a_m(force_n, width_m, pressure_pa)
    return (a_m + math.sqrt(a_m * (a_m + 4.36 * force_height_m))) / 2


def depth_unrestrained_m(
    force_n: float, force_height_m: float, width_m: float, soil_pa_per_m: float
) -> float:
    """Depth for a post that nothing holds at ground level, m.

    force_n          sideways pull, N
    force_height_m   height of that pull above the ground, m
    width_m          diameter of the post; for a square one, its diagonal, m
    soil_pa_per_m    allowable lateral soil pressure per metre of depth, Pa/m

    Source: IBC 2021, 1807.3.2.1, eq. 18-1. S1 is the pressure a third of the way down, so depth
    is on both sides; multiplied out, d³ = c (d + 1.09 h) with c = 7.02 P / (s b), which has one
    positive root. Below 3.66 m (12 ft) the pressure grows no more, and one pass is enough.
    Assumes: a stiff post in level ground.
    """
    c = 7.02 * force_n / (soil_pa_per_m * width_m)
    if c == 0:
        return 0.0
    k = 1.09 * c * force_height_m
    d = math.sqrt(c) + math.cbrt(k)  # above the root: Newton comes down onto it
    for _ in range(50):
        step = (d**3 - c * d - k) / (3 * d * d - c)
        d -= step
        if step <= 1e-12 * d:
            break
    if d <= DEEPEST_COUNTED_M:
        return d
    deepest_pa = soil_pa_per_m * DEEPEST_COUNTED_M / 3
    return depth_for_pressure_m(force_n, force_height_m, width_m, deepest_pa)


def depth_restrained_m(moment_nm: float, width_m: float, soil_pa_per_m: float) -> float:
    """Depth for a post held at ground level by rigid paving or a floor, m.

    moment_nm       moment at the ground, N·m: sideways pull times its height
    width_m         diameter of the post; for a square one, its diagonal, m
    soil_pa_per_m   allowable lateral soil pressure per metre of depth, Pa/m

    Source: IBC 2021, 1807.3.2.2, eq. 18-2 and 18-3: d² = 4.25 M / (S3 b), where S3 is the
    pressure at the foot, so that d³ = 4.25 M / (s b); below 3.66 m (12 ft) it grows no more.
    Assumes: a stiff post in level ground; turf and beaten earth do not hold a post so.
    """
    k = 4.25 * moment_nm / (soil_pa_per_m * width_m)
    d = math.cbrt(k)
    return d if d <= DEEPEST_COUNTED_M else math.sqrt(k / DEEPEST_COUNTED_M)
