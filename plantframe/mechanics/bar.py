"""What a top bar carries, and how far it bows: the crop hangs evenly along it.

Pins are hinges: the span runs from pin to pin, and no bar helps its neighbour.
"""

from __future__ import annotations

from plantframe.mechanics import beam, practice
from plantframe.mechanics.ranges import Range
from plantframe.mechanics.units import GRAVITY_M_PER_S2


def bar_capacity_kg_per_m(span_m: float, modulus_m3: float, inertia_m4: float) -> Range:
    """What hangs on a bar of ordinary softwood before it is overloaded, kg per m of row.

    span_m       pin to pin, m, above zero
    modulus_m3   section modulus the way the bar lies, m³
    inertia_m4   second moment of area the way the bar lies, m⁴

    Low and high are each the lesser of two loads: bending at 7 (10) MPa, and a bow of a sixtieth
    of the span at 8 GPa, before creep. The middle is their mean.
    Source: simple beam under an even load; the limits are estimates tuned to practice.
    """
    bow = beam.uniform_load_for_bow_n_per_m(
        span_m, inertia_m4, practice.BAR_STIFFNESS_PA, practice.BAR_BOW_SHARE
    )
    low, high = (
        min(bow, beam.uniform_load_for_stress_n_per_m(span_m, modulus_m3, stress_pa))
        / GRAVITY_M_PER_S2
        for stress_pa in (practice.BAR_STRESS_LOW_PA, practice.BAR_STRESS_HIGH_PA)
    )
    return Range(low, (low + high) / 2, high)


def bar_bow_m(load_kg_per_m: float, span_m: float, inertia_m4: float) -> float:
    """Bow at mid-span after some weeks under the crop, m.

    load_kg_per_m   what hangs on the bar, kg per m
    span_m          pin to pin, m
    inertia_m4      second moment of area the way the bar lies, m⁴

    Counts creep, half as much again. It is for speaking of the bow, not for judging the bar.
    Source: simple beam under an even load; stiffness and creep are estimates tuned to practice.
    """
    return practice.CREEP_FACTOR * beam.deflection_m(
        load_kg_per_m * GRAVITY_M_PER_S2, span_m, inertia_m4, practice.BAR_STIFFNESS_PA
    )
