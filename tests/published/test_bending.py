"""Bending and bow of simple beams as worked examples print them.

Sources: the worked numbers beside the beam formulas of a public engineering handbook (steel beam,
I = 285 in⁴, y = 6.25 in, E = 29 000 000 psi); a deflection benchmark to EN 1995-1-1 for a beam of
class C24, 75 by 225 mm.
"""

from __future__ import annotations

import pytest

from plantframe.mechanics import beam, section
from plantframe.mechanics.units import IN_M, LBF_N, PSI_PA
from tests.published.printed import agrees

pytestmark = pytest.mark.published

SPAN_M = 100 * IN_M
INERTIA_M4 = 285 * IN_M**4
MODULUS_M3 = 285 / 6.25 * IN_M**3


def test_an_even_load_stresses_and_bows_the_beam_as_printed() -> None:
    load_n_per_m = 100 * LBF_N / IN_M
    stress_pa = beam.bending_stress_pa(beam.bending_moment_nm(load_n_per_m, SPAN_M), MODULUS_M3)
    assert agrees(stress_pa / PSI_PA, "2741")
    bow_m = beam.deflection_m(load_n_per_m, SPAN_M, INERTIA_M4, 29e6 * PSI_PA)
    assert agrees(bow_m / IN_M, "0.016")


def test_one_load_in_the_middle_stresses_the_beam_as_printed() -> None:
    stress_pa = beam.bending_stress_pa(beam.point_moment_nm(10000 * LBF_N, SPAN_M), MODULUS_M3)
    assert agrees(stress_pa / PSI_PA, "5482")


def test_a_timber_beam_bows_as_the_benchmark_prints() -> None:
    inertia_m4 = section.rectangle_inertia_m4(0.075, 0.225)
    assert agrees(inertia_m4 * 1e8, "7119")
    assert agrees(beam.deflection_m(2400, 4.8, inertia_m4, 11e9) * 1000, "21.18")
