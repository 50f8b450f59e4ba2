"""Sections: more wood is stiffer, on edge beats flat, and heavy timbers are asked about."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import section

sides = st.floats(0.005, 0.5)


@given(sides, sides)
def test_a_stick_on_edge_is_never_weaker_than_laid_flat(one: float, other: float) -> None:
    narrow, wide = sorted((one, other))
    on_edge, flat = (
        section.rectangle_modulus_m3(narrow, wide),
        section.rectangle_modulus_m3(wide, narrow),
    )
    assert on_edge >= flat * (1 - 1e-12)
    assert section.rectangle_inertia_m4(narrow, wide) >= section.rectangle_inertia_m4(
        wide, narrow
    ) * (1 - 1e-12)


@given(sides, sides)
def test_modulus_times_half_the_depth_is_the_second_moment(width: float, depth: float) -> None:
    by_modulus = section.rectangle_modulus_m3(width, depth) * depth / 2
    assert by_modulus == pytest.approx(section.rectangle_inertia_m4(width, depth))
    by_modulus = section.round_modulus_m3(depth) * depth / 2
    assert by_modulus == pytest.approx(section.round_inertia_m4(depth))


@given(sides)
def test_a_round_pole_is_weaker_than_the_square_it_comes_from(side: float) -> None:
    assert section.round_area_m2(side) < section.rectangle_area_m2(side, side)
    assert section.round_modulus_m3(side) < section.rectangle_modulus_m3(side, side)
    assert section.round_inertia_m4(side) < section.rectangle_inertia_m4(side, side)


@given(sides, st.floats(0, 0.99))
def test_a_tube_is_a_rod_less_its_hole(outside: float, share: float) -> None:
    hole = outside * share
    inertia = section.round_inertia_m4(outside) - section.round_inertia_m4(hole)
    assert section.tube_inertia_m4(outside, hole) == pytest.approx(inertia)
    modulus = section.tube_modulus_m3(outside, hole)
    assert modulus * outside / 2 == pytest.approx(inertia)


def test_second_moment_agrees_with_adding_up_thin_slices() -> None:
    # An independent sum: slices of a 50 mm round pole, each its area times its distance squared.
    diameter_m, slices = 0.05, 20000
    step = diameter_m / slices
    total = 0.0
    for i in range(slices):
        y = -diameter_m / 2 + (i + 0.5) * step
        total += 2 * math.sqrt((diameter_m / 2) ** 2 - y * y) * step * y * y
    assert section.round_inertia_m4(diameter_m) == pytest.approx(total, rel=1e-5)


@pytest.mark.parametrize(
    ("nominal", "millimetres"),
    [
        ((1, 2), (19, 38)),
        ((1, 4), (19, 89)),
        ((2, 2), (38, 38)),
        ((2, 4), (38, 89)),
        ((2, 6), (38, 140)),
        ((2, 8), (38, 184)),
        ((2, 10), (38, 235)),
        ((2, 12), (38, 286)),
        ((4, 4), (89, 89)),
        ((6, 6), (140, 140)),
    ],
)
def test_planed_sizes_in_whole_millimetres(
    nominal: tuple[int, int], millimetres: tuple[int, int]
) -> None:
    # As softwood is labelled in metric; common practice, no source.
    assert section.dressed_mm(*nominal) == millimetres


@pytest.mark.parametrize("nominal", [(8, 8), (6, 8), (0.5, 2), (2, 20)])
def test_a_size_outside_the_table_is_asked_for(nominal: tuple[float, float]) -> None:
    with pytest.raises(ValueError, match="measured size"):
        section.dressed_mm(*nominal)


def test_a_metre_of_dry_two_by_two_weighs_what_the_hand_says() -> None:
    # Common practice, no source: 430 to 560 kg/m³ makes 0.6 to 0.8 kg a metre.
    area_m2 = section.rectangle_area_m2(0.038, 0.038)
    assert section.stick_mass_kg(area_m2, 1, 430) == pytest.approx(0.6, abs=0.05)
    assert section.stick_mass_kg(area_m2, 1, 560) == pytest.approx(0.8, abs=0.05)


def test_a_round_pole_has_the_area_of_its_circle() -> None:
    # By hand: pi x 5² square centimetres.
    assert section.round_area_m2(0.1) == pytest.approx(78.54e-4, rel=1e-4)


def test_boards_are_planed_to_size_up_to_sixteen_inches() -> None:
    # PS 20: three quarters of an inch off sides over six; nothing known beyond sixteen.
    assert section.dressed_in(2, 16) == (1.5, 15.25)
    assert section.dressed_in(4, 16) == (3.5, 15.25)
    assert section.dressed_in(2, 7) == (1.5, 6.25)
    for thick, wide in ((2, 17), (5, 6), (4.5, 8)):
        with pytest.raises(ValueError, match="measured size"):
            section.dressed_in(thick, wide)
