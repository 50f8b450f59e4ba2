"""Graded European timber: which way each factor goes, and the ends of the tables."""

from __future__ import annotations

import itertools

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import timber_en

loads = ["permanent", "long", "medium", "short", "instantaneous"]


@pytest.mark.parametrize("service_class", [1, 2, 3])
def test_a_shorter_load_never_leaves_less_strength(service_class: int) -> None:
    factors = [timber_en.duration_factor(service_class, load) for load in loads]
    assert factors == sorted(factors)


@pytest.mark.parametrize("load", loads)
def test_out_of_doors_wood_is_never_stronger(load: str) -> None:
    assert timber_en.duration_factor(3, load) < timber_en.duration_factor(1, load)


@given(st.floats(0.01, 0.5), st.floats(1, 3))
def test_a_deeper_piece_never_has_a_larger_size_factor(depth: float, factor: float) -> None:
    found = timber_en.size_factor(depth)
    assert 1 <= timber_en.size_factor(depth * factor) <= found <= 1.3


def test_the_size_factor_has_a_cap_and_an_end() -> None:
    assert timber_en.size_factor(0.038) == 1.3
    assert timber_en.size_factor(0.150) == 1
    assert timber_en.size_factor(0.038, 750) == 1
    # By hand: (150 / 100)^0.2.
    assert timber_en.size_factor(0.100) == pytest.approx(1.0845, abs=5e-5)


@given(st.floats(0, 3), st.floats(0, 1))
def test_a_more_slender_beam_never_keeps_more(slenderness: float, added: float) -> None:
    found = timber_en.stability_factor(slenderness)
    # At 1.4 the two printed branches lie a hair apart.
    assert timber_en.stability_factor(slenderness + added) <= found + 1e-3
    assert 0 < found <= 1


@given(st.floats(0.02, 0.2), st.floats(0.05, 0.4), st.floats(0.5, 8), st.floats(1.01, 3))
def test_a_wider_beam_is_less_slender(
    width: float, depth: float, span: float, factor: float
) -> None:
    effective = timber_en.effective_length_m(span, depth)
    found = timber_en.slenderness_ratio(24e6, 7.4e9, width, depth, effective)
    assert timber_en.slenderness_ratio(24e6, 7.4e9, width * factor, depth, effective) < found


def test_better_classes_are_never_weaker() -> None:
    classes = [timber_en.CLASSES[name] for name in ("C14", "C16", "C18", "C24")]
    for one, other in itertools.pairwise(classes):
        assert one.bending_pa < other.bending_pa
        assert one.stiffness_pa < other.stiffness_pa
        assert one.least_stiffness_pa < other.least_stiffness_pa


def test_a_small_stick_gains_and_a_more_careful_sum_loses() -> None:
    plain = timber_en.design_strength_pa(24e6, 0.9)
    assert timber_en.design_strength_pa(24e6, 0.9, size_factor=1.3) == pytest.approx(1.3 * plain)
    assert timber_en.design_strength_pa(24e6, 0.9, material_factor=1.5) < plain


@pytest.mark.parametrize(("service_class", "load"), [(4, "short"), (1, "brief")])
def test_outside_the_table_there_is_no_factor(service_class: int, load: str) -> None:
    with pytest.raises(ValueError, match=r"service classes|lasts one of"):
        timber_en.duration_factor(service_class, load)


def test_a_class_is_named_for_its_strength_in_newtons_a_square_millimetre() -> None:
    # EN 338: C24 is 24 N/mm², its mean stiffness 11 and the least 7.4 kN/mm².
    c24 = timber_en.CLASSES["C24"]
    assert c24.bending_pa == pytest.approx(24e6)
    assert c24.stiffness_pa == pytest.approx(11e9)
    assert c24.least_stiffness_pa == pytest.approx(7.4e9)


def test_a_small_stick_gains_up_to_seven_hundred_kilograms_a_cubic_metre() -> None:
    # EN 1995-1-1, 3.2.
    assert timber_en.size_factor(0.038, 700) == 1.3
    assert timber_en.size_factor(0.038, 701) == 1


def test_the_slender_branch_ends_at_one_and_four_tenths() -> None:
    # By hand: 1.56 - 0.75 x 1.4 = 0.51; beyond, 1 / 2² is a quarter.
    assert timber_en.stability_factor(1.4) == pytest.approx(0.51, abs=1e-9)
    assert timber_en.stability_factor(2) == pytest.approx(0.25)


def test_each_branch_holds_up_to_its_end() -> None:
    # EN 1995-1-1, 3.2 and 6.3.3. By hand: (150/140)^0.2; 1.56 - 0.6; 1 / 1.5².
    assert timber_en.size_factor(0.140) == pytest.approx(1.01389, abs=1e-5)
    assert timber_en.stability_factor(0.75) == 1
    assert timber_en.stability_factor(0.8) == pytest.approx(0.96)
    assert timber_en.stability_factor(1.5) == pytest.approx(0.44444, abs=1e-5)
