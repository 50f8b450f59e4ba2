"""Strength of graded timber by the Eurocode: classes, time and damp, size, design strength.

EN 338:2003 and EN 1995-1-1. For what stays for years; national annexes have the last word.
"""

from __future__ import annotations

import math
from dataclasses import dataclass


@dataclass(frozen=True)
class StrengthClass:
    """Characteristic values of a class: N/mm² as printed, kN/mm² stiffness, kg/m³ density.

    Bending, tension and pressure along the grain, shear; mean stiffness and its 5 % value;
    characteristic density and mean.
    """

    bending_mpa: float
    tension_mpa: float
    along_mpa: float
    shear_mpa: float
    stiffness_kn_per_mm2: float
    least_stiffness_kn_per_mm2: float
    density_kg_per_m3: float
    mean_density_kg_per_m3: float

    @property
    def bending_pa(self) -> float:
        """Characteristic bending strength, Pa."""
        return self.bending_mpa * 1e6

    @property
    def stiffness_pa(self) -> float:
        """Mean modulus of elasticity, Pa."""
        return self.stiffness_kn_per_mm2 * 1e9

    @property
    def least_stiffness_pa(self) -> float:
        """Modulus of elasticity that 95 % exceed, Pa."""
        return self.least_stiffness_kn_per_mm2 * 1e9


# EN 338:2003.
CLASSES = {
    "C14": StrengthClass(14, 8, 16, 1.7, 7.0, 4.7, 290, 350),
    "C16": StrengthClass(16, 10, 17, 1.8, 8.0, 5.4, 310, 370),
    "C18": StrengthClass(18, 11, 18, 2.0, 9.0, 6.0, 320, 380),
    "C24": StrengthClass(24, 14, 21, 2.5, 11.0, 7.4, 350, 420),
    "D30": StrengthClass(30, 18, 23, 3.0, 10.0, 8.0, 530, 640),
}

# EN 1995-1-1, Table 3.1, solid timber and glued laminated timber, by length of load.
_DRY = {"permanent": 0.6, "long": 0.7, "medium": 0.8, "short": 0.9, "instantaneous": 1.1}
_WET = {"permanent": 0.5, "long": 0.55, "medium": 0.65, "short": 0.7, "instantaneous": 0.9}
DURATION_FACTORS = {1: _DRY, 2: _DRY, 3: _WET}  # service class 3 is out of doors

# EN 1995-1-1, 2.4.1, recommended partial factors.
MATERIAL_FACTORS = {"solid": 1.3, "glued laminated": 1.25}


def duration_factor(service_class: int, load: str) -> float:
    """Strength with time under load and damp, kmod, no unit.

    service_class   1 indoors, 2 under a roof, 3 out of doors
    load            "permanent", "long", "medium", "short" or "instantaneous"

    Raises ValueError for another class or another word. Source: EN 1995-1-1, Table 3.1.
    """
    if service_class not in DURATION_FACTORS:
        raise ValueError(f"service classes are 1, 2 and 3, not {service_class}")
    factors = DURATION_FACTORS[service_class]
    if load not in factors:
        raise ValueError(f"a load lasts one of {', '.join(factors)}, not {load!r}")
    return factors[load]


def size_factor(depth_m: float, density_kg_per_m3: float = 350.0) -> float:
    """Small solid pieces are a little stronger: kh, no unit.

    Depth in bending (or width in tension) in m, characteristic density in kg/m³.
    Source: EN 1995-1-1, 3.2, eq. 3.1: (150/h)^0.2, at most 1.3, below 150 mm and to 700 kg/m³.
    """
    if depth_m >= 0.150 or density_kg_per_m3 > 700:
        return 1.0
    return float(min((0.150 / depth_m) ** 0.2, 1.3))


def design_strength_pa(
    characteristic_pa: float,
    duration_factor: float,
    *,
    size_factor: float = 1.0,
    material_factor: float = MATERIAL_FACTORS["solid"],
) -> float:
    """Design strength, Pa.

    characteristic_pa   characteristic strength, Pa
    duration_factor     kmod, no unit
    size_factor         kh, no unit
    material_factor     γM, no unit

    Source: EN 1995-1-1, 2.4.1, eq. 2.14: Xd = kmod Xk / γM, with kh of 3.2.
    """
    return duration_factor * size_factor * characteristic_pa / material_factor


def effective_length_m(span_m: float, depth_m: float) -> float:
    """Effective length of a simple beam loaded evenly on its upper edge, m.

    Span and depth in m. Source: EN 1995-1-1, 6.3.3, Table 6.1: 0.9 L, and 2 h more.
    """
    return 0.9 * span_m + 2 * depth_m


def slenderness_ratio(
    strength_pa: float,
    least_stiffness_pa: float,
    width_m: float,
    depth_m: float,
    effective_m: float,
) -> float:
    """Relative slenderness of a softwood beam in bending, no unit.

    Characteristic bending strength and 5 % stiffness in Pa; width, depth, effective length in m.
    Source: EN 1995-1-1, 6.3.3, eq. 6.30 and 6.32, σm,crit = 0.78 b² E0.05 / (h lef).
    """
    critical_pa = 0.78 * width_m**2 * least_stiffness_pa / (depth_m * effective_m)
    return math.sqrt(strength_pa / critical_pa)


def stability_factor(slenderness_ratio: float) -> float:
    """Bending strength left to a slender beam, kcrit, no unit.

    Relative slenderness without unit. Source: EN 1995-1-1, 6.3.3, eq. 6.34: 1 to 0.75, then
    1.56 - 0.75 λ to 1.4, then 1 / λ² (the outer branches from memory).
    """
    if slenderness_ratio <= 0.75:
        return 1.0
    if slenderness_ratio <= 1.4:
        return 1.56 - 0.75 * slenderness_ratio
    return 1 / slenderness_ratio**2
