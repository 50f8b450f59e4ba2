"""Panes: thicker is stronger, longer loads tire glass, four edges beat two."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import glass

pressures = st.floats(10, 5000)
sides = st.floats(0.1, 2)
thicknesses = st.floats(0.002, 0.010)
hours = st.floats(1e-4, 1e6)


@given(hours, hours)
def test_glass_is_never_stronger_under_a_longer_load(one: float, other: float) -> None:
    short, long = sorted((one, other))
    assert glass.duration_factor(long) <= glass.duration_factor(short) <= 1


@given(pressures, sides, sides, thicknesses)
def test_four_edges_never_stress_a_pane_more_than_two(
    pressure: float, one: float, other: float, thickness: float
) -> None:
    short = min(one, other)
    on_four = glass.plate_stress_pa(pressure, one, other, thickness)
    assert on_four <= glass.strip_stress_pa(pressure, short, thickness) * (1 + 1e-12)
    assert on_four == glass.plate_stress_pa(pressure, other, one, thickness)
    bow = glass.plate_bow_m(pressure, one, other, thickness)
    assert bow <= glass.strip_bow_m(pressure, short, thickness) * (1 + 1e-12)


@given(pressures, sides, sides, thicknesses, st.floats(1.01, 3))
def test_a_thicker_pane_is_stressed_less_and_a_longer_one_no_less(
    pressure: float, short: float, longer: float, thickness: float, factor: float
) -> None:
    short, longer = sorted((short, longer))
    stress = glass.plate_stress_pa(pressure, short, longer, thickness)
    assert glass.plate_stress_pa(pressure, short, longer, thickness * factor) < stress
    assert glass.plate_stress_pa(pressure, short, longer * factor, thickness) >= stress
    assert glass.plate_bow_m(pressure, short, longer, thickness * factor) < glass.plate_bow_m(
        pressure, short, longer, thickness
    )


@given(thicknesses)
def test_patterned_glass_and_careless_edges_never_help(kmod: float) -> None:
    plain = glass.design_strength_pa(kmod)
    assert glass.design_strength_pa(kmod, surface_factor=glass.PATTERNED_FACTOR) < plain
    assert glass.design_strength_pa(kmod, edge_factor=0.8) < plain
    assert glass.design_strength_pa(kmod, material_factor=1.6) > plain


def test_the_glass_of_a_light_weighs_what_the_hand_says() -> None:
    # By hand: 0.61 by 1.24 m of 3 mm glass, 5.7 kg.
    assert glass.pane_mass_kg(0.61 * 1.24, 0.003) == pytest.approx(5.7, abs=0.05)


def test_between_two_printed_rows_the_factor_lies_half_way() -> None:
    # By hand: (0.2874 + 0.3762) / 2.
    assert glass.plate_stress_pa(1, 1, 1.1, 1) == pytest.approx(0.3318)


def test_a_strip_is_a_simple_beam_one_metre_wide() -> None:
    # By hand: q L² / 8 over t² / 6; 1000 Pa, 0.6 m, 4 mm: 45 N·m over 2.667e-6 m³.
    assert glass.strip_stress_pa(1000, 0.6, 0.004) == pytest.approx(16.875e6)


def test_a_pane_under_snow_is_stressed_and_bows_as_the_sum_by_hand_says() -> None:
    # By hand, 500 Pa on 0.4 by 0.6 m of 4 mm: sides as 1 to 1.5, half-way between the rows 1.4 and
    # 1.6, so that beta is 0.4851 and alpha 0.0838.
    # Stress: 0.4851 x 500 x (400 / 4)² = 2.4255 N/mm².
    assert glass.plate_stress_pa(500, 0.6, 0.4, 0.004) == pytest.approx(2.4255e6, rel=1e-6)
    # Bow: 0.0838 x 500 x 0.4⁴ / (70e9 x 64e-9) = 1.07264 / 4480 m, a quarter of a millimetre.
    assert glass.plate_bow_m(500, 0.6, 0.4, 0.004) == pytest.approx(0.239429e-3, rel=1e-5)


def test_a_strip_bows_as_a_simple_beam_one_metre_wide() -> None:
    # By hand: 5 q L⁴ / (384 E I) with I = t³ / 12; 1000 Pa, 0.6 m, 4 mm: I is 5.3333e-9 m⁴, and
    # 648 over 384 x 373.33 is 4.52 mm.
    assert glass.strip_bow_m(1000, 0.6, 0.004) == pytest.approx(4.5201e-3, rel=1e-4)
