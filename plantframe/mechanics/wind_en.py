"""Wind by the Eurocode: peak velocity pressure, free-standing walls, plane lattices.

EN 1991-1-4:2005. National annexes change figures; the national one has the last word.
"""

from __future__ import annotations

import itertools
import math
from dataclasses import dataclass

from plantframe.mechanics import practice


@dataclass(frozen=True)
class Terrain:
    """Roughness length and least height of one terrain category, m."""

    roughness_m: float
    least_height_m: float


# Table 4.1: sea, lake or flat and bare, low growth, suburb or wood, town.
TERRAINS = {
    "0": Terrain(0.003, 1),
    "I": Terrain(0.01, 1),
    "II": Terrain(0.05, 2),
    "III": Terrain(0.3, 5),
    "IV": Terrain(1.0, 10),
}

# Table 7.9, without return corners: length over height, then zones A to D from the free end.
WALL_COEFFICIENTS = (
    (3.0, (2.3, 1.4, 1.2, 1.2)),
    (5.0, (2.9, 1.8, 1.4, 1.2)),
    (10.0, (3.4, 2.1, 1.7, 1.2)),
)
WALL_WITH_RETURNS = (2.1, 1.8, 1.4, 1.2)
WALL_ONE_FIFTH_OPEN = 1.2

WALL_ZONES = "ABCD"


def probability_factor(years: float, shape_factor: float = 0.2, power_factor: float = 0.5) -> float:
    """Basic wind speed for another return period over the fifty-year one, no unit.

    years          mean return period, years, above 1
    shape_factor   K, 0.2 unless a national annex says otherwise
    power_factor   n, 0.5 unless a national annex says otherwise

    Source: EN 1991-1-4, 4.2, eq. 4.2.
    """

    def rarity_factor(chance_ratio: float) -> float:
        return 1 - shape_factor * math.log(-math.log(1 - chance_ratio))

    return float((rarity_factor(1 / years) / rarity_factor(1 / 50)) ** power_factor)


def terrain_factor(terrain: Terrain) -> float:
    """Terrain factor kr, no unit. Source: EN 1991-1-4, 4.3.2, eq. 4.5."""
    return float(0.19 * (terrain.roughness_m / TERRAINS["II"].roughness_m) ** 0.07)


def _height_factor(terrain: Terrain, height_m: float) -> float:
    return math.log(max(height_m, terrain.least_height_m) / terrain.roughness_m)


def roughness_factor(terrain: Terrain, height_m: float) -> float:
    """Mean speed at a height over basic speed, on level ground, no unit.

    Height above ground in m; below the terrain's least height that height is taken.
    Source: EN 1991-1-4, 4.3.2, eq. 4.4.
    """
    return terrain_factor(terrain) * _height_factor(terrain, height_m)


def turbulence_factor(terrain: Terrain, height_m: float) -> float:
    """Turbulence intensity Iv at a height on level ground, no unit; k1 is taken as 1.

    Height above ground in m. Source: EN 1991-1-4, 4.4, eq. 4.7.
    """
    return 1 / _height_factor(terrain, height_m)


def exposure_factor(terrain: Terrain, height_m: float) -> float:
    """Peak velocity pressure at a height over basic velocity pressure, no unit.

    Height above ground in m. Source: EN 1991-1-4, 4.5, eq. 4.8 and 4.9.
    """
    gusts = 1 + 7 * turbulence_factor(terrain, height_m)
    return gusts * roughness_factor(terrain, height_m) ** 2


def peak_pressure_pa(basic_speed_m_per_s: float, terrain: Terrain, height_m: float) -> float:
    """Peak velocity pressure at a height, Pa.

    basic_speed_m_per_s   basic wind speed vb: ten-minute mean at 10 m in open country, m/s
    terrain               one of `TERRAINS`
    height_m              height above the ground, m

    Assumes: level ground (orography factor 1), air of 1.25 kg/m³.
    Source: EN 1991-1-4, 4.5, eq. 4.8.
    """
    basic_pa = 0.5 * practice.AIR_KG_PER_M3 * basic_speed_m_per_s**2
    return exposure_factor(terrain, height_m) * basic_pa


def wall_coefficient(zone: str, length_ratio: float, solidity: float = 1.0) -> float:
    """Net pressure coefficient of a free-standing wall or fence without corners, on gross area.

    zone           "A" to 0.3 h from the free end, "B" to 2 h, "C" to 4 h, "D" beyond
    length_ratio   length of the wall over its height
    solidity       filled share, 0.8 to 1; below that it is a lattice (EN 1991-1-4, 7.11)

    Raises ValueError for another zone or a solidity out of that range.
    Source: EN 1991-1-4, 7.4.1, Table 7.9; straight lines between the printed values.
    """
    if zone not in tuple(WALL_ZONES):
        raise ValueError(f"a wall's zones are A, B, C and D, not {zone!r}")
    if not 0.8 <= solidity <= 1:
        raise ValueError("the table holds for walls filled from four fifths to wholly")
    column = WALL_ZONES.index(zone)
    rows = [(ratio, zones[column]) for ratio, zones in WALL_COEFFICIENTS]
    ratio = min(max(length_ratio, rows[0][0]), rows[-1][0])
    solid = rows[-1][1]
    for (low, at_low), (high, at_high) in itertools.pairwise(rows):
        if ratio <= high:
            solid = at_low + (at_high - at_low) * (ratio - low) / (high - low)
            break
    return WALL_ONE_FIFTH_OPEN + (solid - WALL_ONE_FIFTH_OPEN) * (solidity - 0.8) / 0.2


def lattice_force_n(
    pressure_pa: float, solid_area_m2: float, force_coefficient: float, end_factor: float = 1.0
) -> float:
    """Push of the wind on a plane lattice, N.

    pressure_pa         peak velocity pressure, Pa
    solid_area_m2       area of the slats alone, m²
    force_coefficient   about 1.6 for flat slats, no unit
    end_factor          wind slips round the ends: at most 1, no unit

    Source: EN 1991-1-4, 7.11, eq. 7.25 and 5.3.
    """
    return pressure_pa * solid_area_m2 * force_coefficient * end_factor
