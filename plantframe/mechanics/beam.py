"""The simple beam: a stick that rests on two ends, and a post fixed at one.

Small bows, one material, one section along the length. Loads and lengths not below zero;
second moment, stiffness and span above zero.
"""

from __future__ import annotations

import math


def bending_moment_nm(load_n_per_m: float, span_m: float) -> float:
    """Largest bending moment of an even load on two simple supports, N·m, at mid-span.

    load_n_per_m   even load, N per m of span
    span_m         between the supports (pin to pin), m

    Source: M = w L² / 8, beam table of any engineering handbook.
    """
    return load_n_per_m * span_m**2 / 8


def deflection_m(load_n_per_m: float, span_m: float, inertia_m4: float, e_pa: float) -> float:
    """Bow at mid-span of an even load on two simple supports, m.

    load_n_per_m   even load, N/m
    span_m         between the supports, m
    inertia_m4     second moment of area, m⁴
    e_pa           modulus of elasticity, Pa

    Assumes: no creep and no shear bow. Source: d = 5 w L⁴ / (384 E I), as `bending_moment_nm`.
    """
    return 5 * load_n_per_m * span_m**4 / (384 * e_pa * inertia_m4)


def point_moment_nm(force_n: float, span_m: float) -> float:
    """Largest bending moment of one load at mid-span, simple supports, N·m.

    Force in N, span in m. Source: M = P L / 4, beam table of any engineering handbook.
    """
    return force_n * span_m / 4


def point_deflection_m(force_n: float, span_m: float, inertia_m4: float, e_pa: float) -> float:
    """Bow under one load at mid-span, simple supports, m.

    Force in N, span in m, second moment in m⁴, modulus of elasticity in Pa.
    Source: d = P L³ / (48 E I), beam table of any engineering handbook.
    """
    return force_n * span_m**3 / (48 * e_pa * inertia_m4)


def cantilever_moment_nm(force_n: float, height_m: float) -> float:
    """Moment at the fixed end of a push at some height, N·m. Source: M = P h."""
    return force_n * height_m


def cantilever_deflection_m(
    force_n: float, height_m: float, inertia_m4: float, e_pa: float
) -> float:
    """Lean of the point that is pushed, m, for a post held fast at its foot.

    Force in N, height of the push in m, second moment in m⁴, modulus of elasticity in Pa.
    Assumes: the ground does not give; a garden post leans more. Source: d = P h³ / (3 E I).
    """
    return force_n * height_m**3 / (3 * e_pa * inertia_m4)


def bending_stress_pa(moment_nm: float, modulus_m3: float) -> float:
    """Stress at the outer fibre, Pa, of a moment in N·m on a section modulus in m³.

    Source: f = M / S, the definition of the section modulus; NDS 2018, 3.3.2.
    """
    return moment_nm / modulus_m3


def shear_stress_pa(shear_n: float, area_m2: float) -> float:
    """Largest shear stress in a rectangular stick, Pa.

    shear_n   shear force, N (half the load of a simple beam)
    area_m2   area of the section, m²

    Source: fv = 3 V / (2 b d), NDS 2018, 3.4.2.
    """
    return 1.5 * shear_n / area_m2


def uniform_load_for_stress_n_per_m(span_m: float, modulus_m3: float, stress_pa: float) -> float:
    """Even load at which a simple beam reaches a bending stress, N/m.

    span_m       between the supports, m
    modulus_m3   section modulus, m³
    stress_pa    bending stress, Pa

    Source: w = 8 f S / L², `bending_moment_nm` turned round.
    """
    return 8 * stress_pa * modulus_m3 / span_m**2


def uniform_load_for_bow_n_per_m(
    span_m: float, inertia_m4: float, e_pa: float, bow_ratio: float
) -> float:
    """Even load at which a simple beam bows by a share of its span, N/m.

    span_m       between the supports, m
    inertia_m4   second moment of area, m⁴
    e_pa         modulus of elasticity, Pa
    bow_ratio    bow over span, such as 1/60

    Source: w = 384 E I r / (5 L³), `deflection_m` turned round.
    """
    return 384 * e_pa * inertia_m4 * bow_ratio / (5 * span_m**3)


def span_for_stress_m(load_n_per_m: float, modulus_m3: float, stress_pa: float) -> float:
    """Longest simple span that keeps an even load within a bending stress, m.

    Load in N/m above zero, section modulus in m³, stress in Pa.
    Source: L = √(8 f S / w), `bending_moment_nm` turned round.
    """
    return math.sqrt(8 * stress_pa * modulus_m3 / load_n_per_m)


def span_for_bow_m(load_n_per_m: float, inertia_m4: float, e_pa: float, bow_ratio: float) -> float:
    """Longest simple span that keeps the bow of an even load within a share of the span, m.

    Load in N/m above zero, second moment in m⁴, modulus of elasticity in Pa, bow over span.
    Source: L³ = 384 E I r / (5 w), `deflection_m` turned round.
    """
    return math.cbrt(384 * e_pa * inertia_m4 * bow_ratio / (5 * load_n_per_m))


def span_for_shear_m(load_n_per_m: float, area_m2: float, stress_pa: float) -> float:
    """Longest simple span that keeps an even load within a shear stress, m.

    Load in N/m above zero, area in m², stress in Pa; the load next to a support is counted too.
    Source: w L / 2 = 2 fv A / 3, NDS 2018, 3.4.2, turned round.
    """
    return 4 * stress_pa * area_m2 / (3 * load_n_per_m)


def span_for_bearing_m(load_n_per_m: float, bearing_m2: float, stress_pa: float) -> float:
    """Longest simple span whose ends do not crush the grain they rest on, m.

    load_n_per_m   even load, N/m, above zero
    bearing_m2     area each end rests on, m²
    stress_pa      allowed stress across the grain, Pa

    Source: w L / 2 = fc A, NDS 2018, 3.10.2, turned round.
    """
    return 2 * stress_pa * bearing_m2 / load_n_per_m
