"""Wind in a garden: speed to pressure, sheltered and windy places, the Beaufort scale."""

from __future__ import annotations

from plantframe.mechanics import practice

# Lowest speed of each force, m/s, as a ten-minute mean at 10 m: Beaufort scale of the WMO.
BEAUFORT_FROM_M_PER_S = (0.0, 0.3, 1.6, 3.4, 5.5, 8.0, 10.8, 13.9, 17.2, 20.8, 24.5, 28.5, 32.7)


def velocity_pressure_pa(
    speed_m_per_s: float, air_kg_per_m3: float = practice.AIR_KG_PER_M3
) -> float:
    """Pressure of moving air brought to rest, Pa.

    speed_m_per_s   speed at the place itself, m/s
    air_kg_per_m3   density of the air, kg/m³

    Source: q = ½ ρ v², with ρ = 1.25 kg/m³ as EN 1991-1-4, 4.5 recommends.
    """
    return 0.5 * air_kg_per_m3 * speed_m_per_s**2


def garden_gust_m_per_s(place: str) -> float:
    """Ordinary summer gust at the leaves, m/s, in a "sheltered", "average" or "windy" place.

    Raises ValueError for any other word. Source: estimate tuned to practice.
    """
    if place not in practice.SHELTER_FACTORS:
        raise ValueError(f"no place is called '{place}': sheltered, average or windy")
    return practice.MAST_GUST_M_PER_S * practice.SHELTER_FACTORS[place]


def garden_pressure_pa(place: str, *, stays_for_years: bool = False) -> float:
    """Pressure of the season's ordinary gust, Pa, in a "sheltered", "average" or "windy" place.

    place             how open the place is
    stays_for_years   True for what stands winter and summer and so meets a rarer gust

    Raises ValueError for any other word. Source: estimate tuned to practice.
    """
    pressure_pa = velocity_pressure_pa(garden_gust_m_per_s(place))
    return pressure_pa * (practice.YEARS_PRESSURE_FACTOR if stays_for_years else 1.0)


def beaufort_force(speed_m_per_s: float) -> int:
    """Force on the Beaufort scale of a ten-minute mean speed at 10 m, m/s, not below zero.

    Source: Beaufort scale of the WMO, by the lowest speed of each force.
    """
    return sum(1 for lowest in BEAUFORT_FROM_M_PER_S if speed_m_per_s >= lowest) - 1


def beaufort_speed_m_per_s(force: int) -> float:
    """Lowest ten-minute mean speed of a force on the Beaufort scale, m/s.

    Raises ValueError for a force that is not 0 to 12. Source: Beaufort scale of the WMO.
    """
    if not 0 <= force <= 12:
        raise ValueError(f"the Beaufort scale runs from 0 to 12, not {force}")
    return BEAUFORT_FROM_M_PER_S[force]
