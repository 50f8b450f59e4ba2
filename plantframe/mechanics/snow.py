"""Snow on a roof or a light: by the American standard and by the Eurocode.

Snow on the ground comes from the local code or weather office. Houses and what is fixed to them
are not for these sums.
"""

from __future__ import annotations

from plantframe.mechanics.units import FT_M, PCF_N_PER_M3, PSF_PA

# ASCE 7-16, Table 7.3-2. A cold frame is unheated.
THERMAL_FACTORS = {
    "heated": 1.0,
    "just above freezing": 1.1,
    "unheated": 1.2,
    "freezer": 1.3,
    "heated greenhouse": 0.85,
}

# ASCE 7-16, Table 7.3-1: exposed to wind on all sides, on some, sheltered; by exposure category.
EXPOSURE_FACTORS = {
    "B": {"open": 0.9, "partly open": 1.0, "sheltered": 1.2},
    "C": {"open": 0.9, "partly open": 1.0, "sheltered": 1.1},
    "D": {"open": 0.8, "partly open": 0.9, "sheltered": 1.0},
}

# ASCE 7-16, risk categories I (a shed) to IV.
IMPORTANCE_FACTORS = {"I": 0.8, "II": 1.0, "III": 1.1, "IV": 1.2}


def flat_pressure_pa(
    ground_snow_pa: float,
    exposure_factor: float = 1.0,
    thermal_factor: float = 1.0,
    importance_factor: float = 1.0,
) -> float:
    """Snow on a flat roof, Pa.

    Snow on the ground in Pa; the three factors, Ce, Ct and Is, have no unit.
    Source: ASCE 7-16, 7.3, pf = 0.7 Ce Ct Is pg.
    """
    return 0.7 * exposure_factor * thermal_factor * importance_factor * ground_snow_pa


def least_flat_pressure_pa(ground_snow_pa: float, importance_factor: float = 1.0) -> float:
    """Least snow to count on a roof of low slope, Pa.

    Snow on the ground in Pa, importance factor without unit.
    Source: ASCE 7-16, 7.3.4: Is pg, and no more than 20 psf counted.
    """
    return importance_factor * min(ground_snow_pa, 20 * PSF_PA)


def slope_factor(slope_deg: float, thermal_factor: float = 1.0, *, slippery: bool = False) -> float:
    """Share of flat-roof snow that stays on a slope, Cs, no unit.

    slope_deg        slope of the roof or light, degrees from level
    thermal_factor   Ct, no unit
    slippery         True for glass, sheet plastic or metal that nothing holds snow on

    Source: ASCE 7-16, 7.4: all of it up to 5, 10 or 15 degrees on a slippery roof and 30, 37.5 or
    45 on others, by Ct up to 1.0, 1.1 and above; then in a straight line to none at 70.
    """
    column = 0 if thermal_factor <= 1.0 else 1 if thermal_factor <= 1.1 else 2
    full_deg = ((5.0, 10.0, 15.0) if slippery else (30.0, 37.5, 45.0))[column]
    if slope_deg <= full_deg:
        return 1.0
    return max(0.0, (70 - slope_deg) / (70 - full_deg))


def sloped_pressure_pa(flat_pa: float, slope_factor: float) -> float:
    """Snow on a sloping roof, Pa of level area. Source: ASCE 7-16, 7.4, ps = Cs pf."""
    return slope_factor * flat_pa


def windward_pressure_pa(sloped_pa: float) -> float:
    """Snow left on the windward side of a ridged roof when wind has drifted it over, Pa.

    Balanced snow on the slope in Pa. Source: ASCE 7-16, 7.6.1, 0.3 ps.
    """
    return 0.3 * sloped_pa


def snow_weight_n_per_m3(ground_snow_pa: float) -> float:
    """Unit weight of lying snow, N/m³. Snow on the ground in Pa.

    Source: ASCE 7-16, 7.7, γ = 0.13 pg + 14, at most 30 (psf and pcf).
    """
    return min(0.13 * ground_snow_pa / FT_M + 14 * PCF_N_PER_M3, 30 * PCF_N_PER_M3)


def shape_factor(slope_deg: float) -> float:
    """Share of ground snow on a roof of one slope, μ1, no unit.

    Slope in degrees from level; snow may slide off freely.
    Source: EN 1991-1-3, 5.3, Table 5.2: 0.8 up to 30 degrees, then straight to none at 60.
    """
    if slope_deg <= 30:
        return 0.8
    return max(0.0, 0.8 * (60 - slope_deg) / 30)


def valley_factor(slope_deg: float) -> float:
    """Share of ground snow in the valley between two slopes, μ2, no unit.

    Slope in degrees from level. Source: EN 1991-1-3, 5.3, Table 5.2: 0.8 + 0.8 α / 30, to 1.6.
    """
    return min(1.6, 0.8 + 0.8 * slope_deg / 30)


def roof_pressure_pa(
    ground_snow_pa: float,
    shape_factor: float,
    exposure_factor: float = 1.0,
    thermal_factor: float = 1.0,
) -> float:
    """Snow on a roof by the Eurocode, Pa of level area.

    ground_snow_pa    characteristic snow on the ground, Pa
    shape_factor      μ, no unit
    exposure_factor   0.8 windswept, 1.0 normal, 1.2 sheltered
    thermal_factor    1.0 unless much heat goes through the roof

    Source: EN 1991-1-3, 5.2, s = μ Ce Ct sk.
    """
    return shape_factor * exposure_factor * thermal_factor * ground_snow_pa
