"""Planed sizes and section properties of softwood as the standards print them.

Sources: PS 20, American Softwood Lumber Standard, dry dressed sizes (NDS Supplement, Table 1A);
NDS Supplement, Table 1B, section properties, strong axis, and weights at 35 lb/ft³.
"""

from __future__ import annotations

import pytest

from plantframe.mechanics import section
from plantframe.mechanics.units import FT_M, IN_M, LB_KG
from tests.published.printed import agrees

pytestmark = pytest.mark.published

# PS 20, inches: nominal thickness and width, dressed thickness and width.
DRESSED = [
    (1, 3, 0.75, 2.5),
    (1, 4, 0.75, 3.5),
    (2, 2, 1.5, 1.5),
    (2, 4, 1.5, 3.5),
    (2, 6, 1.5, 5.5),
    (2, 8, 1.5, 7.25),
    (2, 10, 1.5, 9.25),
    (2, 12, 1.5, 11.25),
    (4, 4, 3.5, 3.5),
    (6, 6, 5.5, 5.5),
]

# NDS Supplement, Table 1B: nominal size; in², in³, in⁴; lb per ft.
PROPERTIES = [
    (2, 3, "3.75", "1.56", "1.95", "0.9"),
    (2, 4, "5.25", "3.06", "5.36", "1.3"),
    (2, 6, "8.25", "7.56", "20.8", "2.0"),
    (2, 8, "10.875", "13.1", "47.6", "2.6"),
    (2, 10, "13.875", "21.4", "98.9", "3.4"),
    (2, 12, "16.875", "31.6", "178", "4.1"),
    (4, 4, "12.25", "7.15", "12.5", "3.0"),
    (6, 6, "30.3", "27.7", "76.3", "7.4"),
]


@pytest.mark.parametrize(("thick", "wide", "thickness_in", "width_in"), DRESSED)
def test_a_stick_sold_by_nominal_size_measures_as_printed(
    thick: float, wide: float, thickness_in: float, width_in: float
) -> None:
    assert section.dressed_in(thick, wide) == (thickness_in, width_in)


@pytest.mark.parametrize(("thick", "wide", "area", "modulus", "inertia", "lb_per_ft"), PROPERTIES)
def test_a_planed_stick_has_the_printed_section(
    thick: float, wide: float, area: str, modulus: str, inertia: str, lb_per_ft: str
) -> None:
    width_m, depth_m = (side_in * IN_M for side_in in section.dressed_in(thick, wide))
    assert agrees(section.rectangle_area_m2(width_m, depth_m) / IN_M**2, area)
    assert agrees(section.rectangle_modulus_m3(width_m, depth_m) / IN_M**3, modulus)
    assert agrees(section.rectangle_inertia_m4(width_m, depth_m) / IN_M**4, inertia)
    density_kg_per_m3 = 35 * LB_KG / FT_M**3
    mass_kg = section.stick_mass_kg(width_m * depth_m, FT_M, density_kg_per_m3)
    assert agrees(mass_kg / LB_KG, lb_per_ft)


def test_a_two_by_four_laid_flat_has_the_printed_section() -> None:
    # NDS Supplement, Table 1B, 4 by 2 flat.
    depth_m, width_m = (side_in * IN_M for side_in in section.dressed_in(2, 4))
    assert agrees(section.rectangle_modulus_m3(width_m, depth_m) / IN_M**3, "1.31")
    assert agrees(section.rectangle_inertia_m4(width_m, depth_m) / IN_M**4, "0.98")


def test_a_four_by_six_has_the_printed_section() -> None:
    # NDS Supplement, Table 1B.
    width_m, depth_m = (side_in * IN_M for side_in in section.dressed_in(4, 6))
    assert agrees(section.rectangle_area_m2(width_m, depth_m) / IN_M**2, "19.25")
    assert agrees(section.rectangle_modulus_m3(width_m, depth_m) / IN_M**3, "17.6")
    assert agrees(section.rectangle_inertia_m4(width_m, depth_m) / IN_M**4, "48.5")
