"""Droop of wires, and what growers strain them to, as printed.

Sources: worked rows printed beside the parabolic sag formula of overhead lines; UF/IFAS Extension
AE017, high-tensile fence; Georgia Extension, muscadine trellis.
"""

from __future__ import annotations

import pytest

from plantframe.mechanics import practice, wire
from plantframe.mechanics.units import LBF_N
from tests.published.printed import agrees

pytestmark = pytest.mark.published


@pytest.mark.parametrize(
    ("load", "span", "pull", "sag"),
    [
        (1, 500, 10000, "3.125"),  # kg/m, m, kg
        (1.5, 80, 2800, "0.4286"),  # N/m, m, N
        (0.0007, 100, 30, "0.03"),  # lb/ft, ft, lb
    ],
)
def test_a_wire_droops_as_the_row_prints(load: float, span: float, pull: float, sag: str) -> None:
    # The formula holds in any consistent units.
    assert agrees(wire.sag_m(load, span, pull), sag)


@pytest.mark.parametrize("pull_lb", [200, 250])
def test_a_strained_wire_is_taken_as_growers_strain_it(pull_lb: float) -> None:
    # UF/IFAS AE017: strained to 200 to 250 lb; Georgia Extension: 250 lb.
    assert pytest.approx(pull_lb * LBF_N, rel=0.15) == practice.STRAINED_N
