"""Wires under an even load: droop, pull, and the two found together when the ends hold.

A shallow parabola. It lies within about 3 % of the true curve while the droop is less than an
eighth of the span (as printed beside the formula in handbooks on overhead lines).
"""

from __future__ import annotations

import math

from plantframe.mechanics import practice
from plantframe.mechanics.units import IN_M

# Steel wire gauge (ASTM A510), inches: from memory, an estimate to be checked with a caliper.
GAUGE_IN = {
    8: 0.162,
    9: 0.1483,
    10: 0.135,
    11: 0.1205,
    12: 0.1055,
    12.5: 0.099,
    13: 0.0915,
    14: 0.080,
    16: 0.0625,
}


def gauge_diameter_m(gauge: float) -> float:
    """Diameter of steel wire by its gauge number, m. Raises ValueError for a gauge not listed.

    Source: steel wire gauge, from memory.
    """
    if gauge not in GAUGE_IN:
        raise ValueError(f"no wire of {gauge:g} gauge is known: give its thickness")
    return GAUGE_IN[gauge] * IN_M


def wire_stiffness_n(diameter_m: float, e_pa: float = practice.STEEL_STIFFNESS_PA) -> float:
    """Pull that would stretch a wire to twice its length, E times A, N.

    Diameter in m, modulus of elasticity in Pa (steel if not given). For a solid wire; a stranded
    cable stretches more. Source: definition of E.
    """
    return e_pa * math.pi * diameter_m**2 / 4


def sag_m(load_n_per_m: float, span_m: float, pull_n: float) -> float:
    """Droop at mid-span of a wire pulled with a known force, m.

    load_n_per_m   even load, N per m of span
    span_m         between the ends, m
    pull_n         level pull in the loaded wire, N, above zero

    Source: s = w L² / (8 H), the parabola of handbooks on overhead lines.
    """
    return load_n_per_m * span_m**2 / (8 * pull_n)


def pull_for_sag_n(load_n_per_m: float, span_m: float, sag_m: float) -> float:
    """Level pull that holds a loaded wire to a droop, N.

    Load in N/m, span in m, droop at mid-span in m, above zero.
    Source: H = w L² / (8 s), the parabola turned round.
    """
    return load_n_per_m * span_m**2 / (8 * sag_m)


def end_pull_n(load_n_per_m: float, span_m: float, pull_n: float) -> float:
    """Pull along the wire at its ends, N: the level pull with half the load.

    Load in N/m, span in m, level pull in N. Source: T = √(H² + (w L / 2)²), statics.
    """
    return math.hypot(pull_n, load_n_per_m * span_m / 2)


def wire_length_m(span_m: float, sag_m: float) -> float:
    """Length of a drooping wire between its ends, m. Span above zero and droop in m.

    Source: L + 8 s² / (3 L), first term of the parabola's length (from memory).
    """
    return span_m + 8 * sag_m**2 / (3 * span_m)


def held_pull_n(
    load_n_per_m: float, span_m: float, first_pull_n: float, stiffness_n: float
) -> float:
    """Level pull of a loaded wire between ends that do not give, N: it tightens as it droops.

    load_n_per_m   even load hung on the wire, N per m
    span_m         between the ends, m
    first_pull_n   pull before the load came, N, not below zero
    stiffness_n    E times A of the wire, N (`wire_stiffness_n`)

    Assumes: ends that hold (braced or anchored), a springy wire, a shallow droop. Where an end
    post leans, the pull is less and the droop more.
    Source: stretch of the wire set equal to the lengthening of its parabola,
    (H - H₀) / EA = w² L² / (24 H²); a cubic in H with one positive root.
    """
    k = stiffness_n * (load_n_per_m * span_m) ** 2 / 24
    if k == 0:
        return first_pull_n
    pull = first_pull_n + math.cbrt(k)  # above the root: Newton comes down onto it
    for _ in range(60):
        step = (pull**3 - first_pull_n * pull**2 - k) / (3 * pull**2 - 2 * first_pull_n * pull)
        pull -= step
        if step <= 1e-12 * pull:
            break
    return pull


def held_sag_m(
    load_n_per_m: float, span_m: float, first_pull_n: float, stiffness_n: float
) -> float:
    """Droop of a loaded wire between ends that do not give, m. Arguments as `held_pull_n`.

    Some load or some first pull must be above zero. Source: `held_pull_n`, then `sag_m`.
    """
    pull_n = held_pull_n(load_n_per_m, span_m, first_pull_n, stiffness_n)
    return sag_m(load_n_per_m, span_m, pull_n)
