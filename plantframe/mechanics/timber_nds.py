"""Strength of graded North American softwood: reference values and what adjusts them.

NDS, National Design Specification for Wood Construction, 2018, and its Supplement. For what stays
for years; a seconds-grade garden stick has no grade and goes by `practice`.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from plantframe.mechanics.units import PSI_PA


@dataclass(frozen=True)
class Grade:
    """Reference design values as printed, psi; Pa from the properties.

    Bending, tension, shear, pressure across and along the grain, stiffness, least stiffness.
    """

    bending_psi: float
    tension_psi: float
    shear_psi: float
    across_psi: float
    along_psi: float
    stiffness_psi: float
    least_stiffness_psi: float

    @property
    def bending_pa(self) -> float:
        """Reference bending stress Fb, Pa."""
        return self.bending_psi * PSI_PA

    @property
    def tension_pa(self) -> float:
        """Reference tension Ft, Pa."""
        return self.tension_psi * PSI_PA

    @property
    def stiffness_pa(self) -> float:
        """Modulus of elasticity E, Pa."""
        return self.stiffness_psi * PSI_PA

    @property
    def least_stiffness_pa(self) -> float:
        """Modulus of elasticity for buckling Emin, Pa."""
        return self.least_stiffness_psi * PSI_PA


# NDS Supplement 2018, Table 4A, No. 2, 2 to 4 in thick.
NUMBER_TWO = {
    "douglas fir and larch": Grade(900, 575, 180, 625, 1350, 1.6e6, 0.58e6),
    "hem-fir": Grade(850, 525, 150, 405, 1300, 1.3e6, 0.47e6),
    "spruce, pine and fir": Grade(875, 450, 135, 425, 1150, 1.4e6, 0.51e6),
    "western cedars": Grade(700, 425, 155, 425, 650, 1.0e6, 0.37e6),
}

# NDS 2018, Table 2.3.2. Not applied to stiffness or to pressure across the grain.
DURATION_FACTORS = {
    "permanent": 0.9,
    "ten years": 1.0,
    "two months": 1.15,  # snow
    "seven days": 1.25,
    "ten minutes": 1.6,  # wind
    "impact": 2.0,
}

REPETITIVE_FACTOR = 1.15  # three members or more, at most 24 in apart: NDS Supplement, Table 4A

# NDS Supplement 2018, Table 4A: nominal width up to so many inches, by nominal thickness. The
# 5 in width of a 4 in thick piece is from memory.
_SIZE_THIN = ((4, 1.5), (5, 1.4), (6, 1.3), (8, 1.2), (10, 1.1), (12, 1.0), (math.inf, 0.9))
_SIZE_FOUR = ((4, 1.5), (5, 1.4), (6, 1.3), (8, 1.3), (10, 1.2), (12, 1.1), (math.inf, 1.0))
_FLAT_THIN = ((3, 1.0), (4, 1.1), (5, 1.1), (6, 1.15), (8, 1.15), (math.inf, 1.2))
_FLAT_FOUR = ((4, 1.0), (8, 1.05), (math.inf, 1.1))


def _by_width(rows: tuple[tuple[float, float], ...], nominal_width_in: float) -> float:
    return next(factor for most, factor in rows if nominal_width_in <= most)


def size_factor(nominal_thickness_in: float, nominal_width_in: float) -> float:
    """Size factor of bending strength, CF, no unit: No. 1 to No. 3, not southern pine.

    Nominal thickness 2 to 4 in, nominal width in in; raises ValueError for another thickness.
    Source: NDS Supplement 2018, Table 4A.
    """
    return _by_width(_rows(nominal_thickness_in, _SIZE_THIN, _SIZE_FOUR), nominal_width_in)


def flat_use_factor(nominal_thickness_in: float, nominal_width_in: float) -> float:
    """Factor of bending strength for a piece laid flat, Cfu, no unit.

    Nominal thickness 2 to 4 in, nominal width in in; raises ValueError for another thickness.
    Source: NDS Supplement 2018, Table 4A.
    """
    return _by_width(_rows(nominal_thickness_in, _FLAT_THIN, _FLAT_FOUR), nominal_width_in)


def _rows(
    nominal_thickness_in: float,
    thin: tuple[tuple[float, float], ...],
    four: tuple[tuple[float, float], ...],
) -> tuple[tuple[float, float], ...]:
    if not 2 <= nominal_thickness_in <= 4:
        raise ValueError("the table holds for pieces 2 to 4 in thick")
    return four if nominal_thickness_in == 4 else thin


def wet_bending_factor(bending_pa: float, size_factor: float) -> float:
    """Factor of bending strength for wood wetter than 19 % in service, CM, no unit.

    Reference bending stress Fb in Pa, size factor CF without unit.
    Source: NDS Supplement 2018, Table 4A: 0.85, or 1.0 where Fb CF is at most 1150 psi.
    """
    return 1.0 if bending_pa * size_factor <= 1150 * PSI_PA else 0.85


WET_STIFFNESS_FACTOR = 0.9  # NDS Supplement 2018, Table 4A, E and Emin


def adjusted_bending_pa(bending_pa: float, *adjustment_factors: float) -> float:
    """Bending stress allowed once every factor that applies is counted, Pa.

    Reference bending stress in Pa; duration, size, wet service, repetitive, flat use, stability.
    Source: NDS 2018, Table 4.3.1, ASD: Fb' is Fb times its factors.
    """
    return bending_pa * math.prod(adjustment_factors)


def effective_length_m(unbraced_m: float, depth_m: float) -> float:
    """Effective length of a simple beam under an even load, m, for its sideways stability.

    Length between sideways holds in m, depth of the beam in m.
    Source: NDS 2018, Table 3.3.3: 2.06 lu below 7 depths, then 1.63 lu + 3 d (from memory).
    """
    if unbraced_m < 7 * depth_m:
        return 2.06 * unbraced_m
    return 1.63 * unbraced_m + 3 * depth_m


def slenderness_ratio(effective_m: float, width_m: float, depth_m: float) -> float:
    """Slenderness of a beam, RB, no unit; no more than 50 is allowed.

    Effective length, width and depth in m. Source: NDS 2018, 3.3.3.6: √(le d / b²).
    """
    return math.sqrt(effective_m * depth_m) / width_m


def buckling_stress_pa(least_stiffness_pa: float, slenderness_ratio: float) -> float:
    """Bending stress at which a slender beam rolls over, FbE, Pa.

    Emin in Pa, slenderness without unit. Source: NDS 2018, 3.3.3.8: 1.20 Emin / RB².
    """
    return 1.2 * least_stiffness_pa / slenderness_ratio**2


def stability_factor(buckling_pa: float, bending_pa: float) -> float:
    """Beam stability factor, CL, no unit.

    buckling_pa   FbE, Pa
    bending_pa    Fb*, the bending stress with every factor but CL and Cfu, Pa

    Source: NDS 2018, eq. 3.3-6.
    """
    ratio = buckling_pa / bending_pa
    half = (1 + ratio) / 1.9
    return half - math.sqrt(half**2 - ratio / 0.95)


def bending_and_tension_ratio(
    tension_pa: float,
    tension_allowed_pa: float,
    bending_pa: float,
    bending_allowed_pa: float,
) -> float:
    """Share of its strength that a bent and pulled piece uses, no unit; 1 is all of it.

    Stresses and allowed stresses in Pa, the bending one without its stability factor.
    Source: NDS 2018, eq. 3.9-1: ft / Ft' + fb / Fb*.
    """
    return tension_pa / tension_allowed_pa + bending_pa / bending_allowed_pa
