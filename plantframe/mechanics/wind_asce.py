"""Wind by the American standard: velocity pressure, open frames, walls with holes.

ASCE 7. Speeds are three-second gusts at 10 m in open country. The local code has the last word.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from plantframe.mechanics.units import FT_M


@dataclass(frozen=True)
class Exposure:
    """Power law of one exposure category: α, no unit, and gradient height, m."""

    power_factor: float
    gradient_m: float


# ASCE 7-05 to 7-16: suburb or wood, open country, flat and bare or shore.
EXPOSURES = {
    "B": Exposure(7.0, 1200 * FT_M),
    "C": Exposure(9.5, 900 * FT_M),
    "D": Exposure(11.5, 700 * FT_M),
}

LEAST_HEIGHT_M = 15 * FT_M

# Solid signs and open lattices.
DIRECTIONALITY_FACTOR = 0.85

# Table 29.4-2 on solid area, up to so much solid: flat members, small round, large round.
LATTICE_COEFFICIENTS = (
    (0.10, {"flat": 2.0, "small round": 1.2, "large round": 0.8}),
    (0.30, {"flat": 1.8, "small round": 1.3, "large round": 0.9}),
    (0.70, {"flat": 1.6, "small round": 1.5, "large round": 1.1}),
)


def exposure_factor_at(exposure: Exposure, height_m: float) -> float:
    """Velocity pressure coefficient Kz, no unit.

    Height above the ground in m; below 4.57 m (15 ft) that height is taken.
    Source: ASCE 7-05 to 7-16: Kz = 2.01 (z / zg)^(2/α).
    """
    height_m = max(height_m, LEAST_HEIGHT_M)
    return float(2.01 * (height_m / exposure.gradient_m) ** (2 / exposure.power_factor))


def elevation_factor_at(above_sea_m: float) -> float:
    """Thinner air higher up: ground elevation factor Ke, no unit. Height above the sea in m.

    Source: ASCE 7-16 and 7-22: Ke = exp(-0.000119 z).
    """
    return math.exp(-0.000119 * above_sea_m)


def velocity_pressure_pa(
    speed_m_per_s: float,
    exposure_factor: float,
    *,
    directionality_factor: float = DIRECTIONALITY_FACTOR,
    topography_factor: float = 1.0,
    elevation_factor: float = 1.0,
) -> float:
    """Velocity pressure at a height, Pa.

    speed_m_per_s           three-second gust at 10 m in open country, m/s
    exposure_factor         Kz at that height (`exposure_factor_at`), no unit
    directionality_factor   Kd, no unit
    topography_factor       Kzt, no unit
    elevation_factor        Ke (`elevation_factor_at`), no unit

    Source: ASCE 7-16, velocity pressure, SI form: q = 0.613 Kz Kzt Kd Ke V². ASCE 7-22 brings in
    Kd later, with the same result.
    """
    factors = exposure_factor * topography_factor * directionality_factor * elevation_factor
    return 0.613 * factors * speed_m_per_s**2


def frame_force_n(
    pressure_pa: float, solid_area_m2: float, force_coefficient: float, gust_factor: float = 0.85
) -> float:
    """Push of the wind on an open frame or lattice, N.

    Velocity pressure in Pa, solid area in m², force coefficient and gust factor without unit.
    Source: ASCE 7, other structures: F = q G Cf A.
    """
    return pressure_pa * gust_factor * force_coefficient * solid_area_m2


def lattice_coefficient(solidity: float, member: str = "flat") -> float:
    """Force coefficient of an open frame, on its solid area, no unit.

    solidity   solid over gross area, above 0 and at most 0.7
    member     "flat", "small round" or "large round"

    Raises ValueError for a fuller frame or another member.
    Source: ASCE 7-16, Table 29.4-2. A round member is small while D √q is at most 2.5
    (ft and psf): that threshold is from memory.
    """
    if not 0 < solidity <= 0.7:
        raise ValueError("the table holds for frames at least 30 % open")
    last = LATTICE_COEFFICIENTS[-1]
    _, coefficients = next((row for row in LATTICE_COEFFICIENTS if solidity < row[0]), last)
    if member not in coefficients:
        raise ValueError(f"members are flat, small round or large round, not {member!r}")
    return coefficients[member]


def openings_factor(solidity: float) -> float:
    """Reduction for a wall or sign with holes, less than 30 % of it, no unit.

    Solidity is solid over gross area, 0.7 to 1. Source: ASCE 7-16, note to fig. 29.3-1:
    1 - (1 - ε)^1.5.
    """
    return float(1 - (1 - solidity) ** 1.5)
