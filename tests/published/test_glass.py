"""Glass as printed: strength with time, design strengths, plate factors, weights.

Sources: EN 16612, annealed glass, table of kmod and design strengths; EN 572-1, characteristic
strength 45 N/mm²; Roark's Formulas for Stress and Strain, 7th ed., Table 11.4 case 1a; weight
tables of flat glass.
"""

from __future__ import annotations

import pytest

from plantframe.mechanics import glass
from tests.published.printed import agrees

pytestmark = pytest.mark.published

DAY_H = 24
YEAR_H = 8760

KMOD = [
    (5 / 3600, "1.0"),
    (30 / 3600, "0.89"),
    (5 / 60, "0.77"),
    (10 / 60, "0.74"),
    (0.5, "0.69"),
    (5, "0.60"),
    (7 * DAY_H, "0.48"),
    (YEAR_H / 12, "0.44"),
    (YEAR_H / 4, "0.41"),
    (50 * YEAR_H, "0.29"),
]


@pytest.mark.parametrize(("hours", "kmod"), KMOD)
def test_glass_tires_under_a_load_as_printed(hours: float, kmod: str) -> None:
    # EN 16612, table of kmod.
    assert agrees(glass.duration_factor(hours), kmod)


@pytest.mark.parametrize(
    ("kmod", "strength"), [(0.44, "11.0"), (0.41, "10.25"), (0.29, "7.25"), (0.74, "18.5")]
)
def test_design_strength_is_as_printed(kmod: float, strength: str) -> None:
    # EN 16612: snow of a month, of three, own weight, wind; N/mm², γ 1.8.
    assert agrees(glass.design_strength_pa(kmod) / 1e6, strength)


@pytest.mark.parametrize(
    ("side_ratio", "beta", "alpha"),
    [
        (1.0, 0.2874, 0.0444),
        (1.2, 0.3762, 0.0616),
        (1.4, 0.4530, 0.0770),
        (1.6, 0.5172, 0.0906),
        (1.8, 0.5688, 0.1017),
        (2.0, 0.6102, 0.1110),
        (3.0, 0.7134, 0.1335),
        (4.0, 0.7410, 0.1400),
        (5.0, 0.7476, 0.1417),
        (1000.0, 0.7500, 0.1421),  # printed as endless
    ],
)
def test_plate_factors_are_as_printed(side_ratio: float, beta: float, alpha: float) -> None:
    # Roark, 7th ed., Table 11.4 case 1a; a pane one unit wide and thick under one unit of load.
    assert glass.plate_stress_pa(1, 1, side_ratio, 1) == pytest.approx(beta)
    bow_m = glass.plate_bow_m(1, 1, side_ratio, 1)
    assert bow_m * glass.STIFFNESS_PA == pytest.approx(alpha)


@pytest.mark.parametrize(("thickness_mm", "kg"), [(2, 5), (3, 7.5), (4, 10), (6, 15)])
def test_a_square_metre_weighs_as_printed(thickness_mm: float, kg: float) -> None:
    # Weight tables of flat glass.
    assert glass.pane_mass_kg(1, thickness_mm / 1000) == pytest.approx(kg)
