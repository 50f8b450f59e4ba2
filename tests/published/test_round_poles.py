"""Estimates for round poles and ordinary softwood beside tested ones.

Sources: bending tests of small-diameter round timber, Annals of Forest Science, means of dry poles
of alder, ash, birch and sycamore; EN 338:2003, class C16.
"""

from __future__ import annotations

import pytest

from plantframe.mechanics import practice, timber_en

pytestmark = pytest.mark.published

# Mean bending strength and stiffness, N/mm².
TESTED = {
    "alder": (56.8, 6738),
    "ash": (63.0, 9799),
    "birch": (48.5, 7797),
    "sycamore": (48.5, 7339),
    "all": (54.5, 7949),
}


def test_a_wet_pole_is_not_taken_to_be_stronger_than_dry_ones_were() -> None:
    means = [strength for strength, _ in TESTED.values()]
    assert practice.ROUND_STRENGTH_PA.middle / 1e6 < min(means)
    assert practice.ROUND_STRENGTH_PA.high / 1e6 < TESTED["alder"][0]


def test_a_bar_is_taken_to_be_about_as_stiff_as_poles_and_low_grade_softwood() -> None:
    assert pytest.approx(TESTED["all"][1] * 1e6, rel=0.01) == practice.BAR_STIFFNESS_PA
    assert timber_en.CLASSES["C16"].stiffness_pa == practice.BAR_STIFFNESS_PA
