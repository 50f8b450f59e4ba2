"""Panes of ordinary annealed glass: mass, strength with time under load, stress and bow.

For cold frames and lights. Broken glass cuts; overhead glazing and glass in doors or beside paths
is for a glazier and the local code.
"""

from __future__ import annotations

import itertools
import math

DENSITY_KG_PER_M3 = 2500.0  # 2.5 kg/m² for each millimetre, as glass tables print
STIFFNESS_PA = 70e9  # EN 572-1
CHARACTERISTIC_STRENGTH_PA = 45e6  # EN 572-1, float glass in bending
MATERIAL_FACTOR = 1.8  # EN 16612; 1.6 in British practice
PATTERNED_FACTOR = 0.75  # EN 16612, surface of patterned glass; float glass 1.0

# Roark's Formulas for Stress and Strain, 7th ed., Table 11.4 case 1a, ν = 0.3: long side over
# short side, then β of stress and α of bow.
PLATE = (
    (1.0, 0.2874, 0.0444),
    (1.2, 0.3762, 0.0616),
    (1.4, 0.4530, 0.0770),
    (1.6, 0.5172, 0.0906),
    (1.8, 0.5688, 0.1017),
    (2.0, 0.6102, 0.1110),
    (3.0, 0.7134, 0.1335),
    (4.0, 0.7410, 0.1400),
    (5.0, 0.7476, 0.1417),
    (math.inf, 0.7500, 0.1421),
)


def pane_mass_kg(area_m2: float, thickness_m: float) -> float:
    """Mass of a pane, kg. Area in m², thickness in m. Source: 2500 kg/m³, glass weight tables."""
    return DENSITY_KG_PER_M3 * area_m2 * thickness_m


def duration_factor(load_h: float) -> float:
    """Strength of glass under a load that stays, kmod: at most 1, no unit.

    Time under load in hours, above zero.
    Source: EN 16612, kmod = 0.663 t^(-1/16). The equation is from memory and gives the values of
    the standard's table.
    """
    return min(1.0, 0.663 * math.pow(load_h, -1 / 16))


def design_strength_pa(
    duration_factor: float,
    *,
    edge_factor: float = 1.0,
    surface_factor: float = 1.0,
    material_factor: float = MATERIAL_FACTOR,
) -> float:
    """Stress allowed in annealed glass, Pa.

    duration_factor   kmod, no unit
    edge_factor       ke, 1.0 where all four edges are held
    surface_factor    ksp, 1.0 for float glass, 0.75 for patterned
    material_factor   γ of the material, no unit

    Source: EN 16612, fg,d = ke kmod ksp fg,k / γMA with fg,k = 45 N/mm² (EN 572-1).
    """
    factors = edge_factor * duration_factor * surface_factor
    return factors * CHARACTERISTIC_STRENGTH_PA / material_factor


def _plate_factors(side_ratio: float) -> tuple[float, float]:
    """β and α between the printed rows by a straight line; beyond the last, the endless strip's."""
    for (low, low_beta, low_alpha), (high, high_beta, high_alpha) in itertools.pairwise(PLATE):
        if side_ratio == low:
            return low_beta, low_alpha
        if side_ratio < high:
            if math.isinf(high):
                break
            t = (side_ratio - low) / (high - low)
            return low_beta + t * (high_beta - low_beta), low_alpha + t * (high_alpha - low_alpha)
    return PLATE[-1][1:]


def plate_stress_pa(
    pressure_pa: float, side_m: float, other_side_m: float, thickness_m: float
) -> float:
    """Largest stress in a pane held along all four edges, Pa.

    pressure_pa            even pressure, Pa
    side_m, other_side_m   the two sides, m, in any order
    thickness_m            thickness, m

    Assumes: edges rest freely and the bow stays below half the thickness; beyond that the pane is
    stiffer than this says.
    Source: Roark, 7th ed., Table 11.4 case 1a: σ = β q b² / t², b the short side.
    """
    short_m, long_m = sorted((side_m, other_side_m))
    return _plate_factors(long_m / short_m)[0] * pressure_pa * (short_m / thickness_m) ** 2


def plate_bow_m(
    pressure_pa: float, side_m: float, other_side_m: float, thickness_m: float
) -> float:
    """Bow at the middle of a pane held along all four edges, m. Arguments as `plate_stress_pa`.

    Source: Roark, 7th ed., Table 11.4 case 1a: y = α q b⁴ / (E t³), E = 70 GPa.
    """
    short_m, long_m = sorted((side_m, other_side_m))
    alpha = _plate_factors(long_m / short_m)[1]
    return alpha * pressure_pa * short_m**4 / (STIFFNESS_PA * thickness_m**3)


def strip_stress_pa(pressure_pa: float, span_m: float, thickness_m: float) -> float:
    """Largest stress in a pane held along two edges only, Pa.

    Pressure in Pa, distance between the held edges in m, thickness in m.
    Source: a strip one metre wide as a simple beam: σ = 0.75 q L² / t².
    """
    return 0.75 * pressure_pa * (span_m / thickness_m) ** 2


def strip_bow_m(pressure_pa: float, span_m: float, thickness_m: float) -> float:
    """Bow of a pane held along two edges only, m. Arguments as `strip_stress_pa`.

    Source: a strip one metre wide as a simple beam: y = 5/32 q L⁴ / (E t³), E = 70 GPa.
    """
    return 5 / 32 * pressure_pa * span_m**4 / (STIFFNESS_PA * thickness_m**3)
