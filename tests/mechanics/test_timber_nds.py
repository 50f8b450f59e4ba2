"""Graded American timber: which way each factor goes, and the ends of the tables."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import timber_nds
from plantframe.mechanics.units import PSI_PA

stresses = st.floats(1e6, 3e7)


@given(stresses, stresses)
def test_a_slender_beam_keeps_at_most_its_whole_strength(buckling: float, bending: float) -> None:
    assert 0 < timber_nds.stability_factor(buckling, bending) <= 1


@given(stresses, stresses, st.floats(1.01, 5))
def test_a_stouter_beam_keeps_more_of_it(buckling: float, bending: float, factor: float) -> None:
    found = timber_nds.stability_factor(buckling, bending)
    assert timber_nds.stability_factor(buckling * factor, bending) > found


@given(st.floats(0.2, 8), st.floats(0.05, 0.4), st.floats(0.02, 0.2), st.floats(1.01, 3))
def test_a_deeper_or_longer_beam_is_more_slender(
    length: float, depth: float, width: float, factor: float
) -> None:
    found = timber_nds.slenderness_ratio(length, width, depth)
    assert timber_nds.slenderness_ratio(length * factor, width, depth) > found
    assert timber_nds.slenderness_ratio(length, width, depth * factor) > found
    assert timber_nds.slenderness_ratio(length, width * factor, depth) < found
    assert timber_nds.buckling_stress_pa(1e9, found * factor) < timber_nds.buckling_stress_pa(
        1e9, found
    )


@given(st.floats(0.05, 10), st.floats(0.05, 0.4))
def test_the_effective_length_is_never_less_than_the_length(length: float, depth: float) -> None:
    assert timber_nds.effective_length_m(length, depth) > length


def test_the_effective_length_hardly_jumps_where_its_rule_changes() -> None:
    below = timber_nds.effective_length_m(6.999999 * 0.2, 0.2)
    above = timber_nds.effective_length_m(7.000001 * 0.2, 0.2)
    assert above == pytest.approx(below, rel=0.01)


@given(st.integers(2, 16), st.integers(2, 16))
def test_a_deeper_board_never_has_a_larger_size_factor(one: int, other: int) -> None:
    shallow, deep = sorted((one, other))
    for thick in (2, 3, 4):
        assert timber_nds.size_factor(thick, deep) <= timber_nds.size_factor(thick, shallow)
        assert timber_nds.flat_use_factor(thick, deep) >= timber_nds.flat_use_factor(thick, shallow)


@pytest.mark.parametrize("thick", [1, 6])
def test_boards_and_heavy_timbers_have_other_tables(thick: float) -> None:
    with pytest.raises(ValueError, match="2 to 4 in"):
        timber_nds.size_factor(thick, 6)
    with pytest.raises(ValueError, match="2 to 4 in"):
        timber_nds.flat_use_factor(thick, 6)


def test_grades_come_in_pascals_too() -> None:
    # By hand: 900 psi is 6.205 MPa; 1.6 million psi is 11.03 GPa.
    grade = timber_nds.NUMBER_TWO["douglas fir and larch"]
    assert grade.bending_pa == pytest.approx(6.205e6, rel=1e-3)
    assert grade.tension_pa == pytest.approx(575 * PSI_PA)
    assert grade.stiffness_pa == pytest.approx(11.03e9, rel=1e-3)
    assert grade.least_stiffness_pa == pytest.approx(4.0e9, rel=1e-3)


def test_a_piece_used_half_by_each_is_used_up() -> None:
    assert timber_nds.bending_and_tension_ratio(1, 2, 3, 6) == pytest.approx(1)
    assert timber_nds.adjusted_bending_pa(10e6, 1.6, 1.5, 0.85) == pytest.approx(20.4e6)


def test_the_effective_length_changes_its_rule_at_seven_depths() -> None:
    # By hand, 0.2 m deep: 2.06 x 1.38; then 1.63 x 1.4 + 0.6 and 1.63 x 1.5 + 0.6.
    assert timber_nds.effective_length_m(1.38, 0.2) == pytest.approx(2.8428)
    assert timber_nds.effective_length_m(7 * 0.2, 0.2) == pytest.approx(2.882)
    assert timber_nds.effective_length_m(1.5, 0.2) == pytest.approx(3.045)


@pytest.mark.parametrize(
    ("thick_in", "wide_in", "factor"),
    [(2, 4, 1.5), (2, 5, 1.4), (2, 6, 1.3), (2, 8, 1.2), (2, 10, 1.1), (2, 12, 1.0), (2, 14, 0.9)]
    + [(4, 4, 1.5), (4, 6, 1.3), (4, 8, 1.3), (4, 10, 1.2), (4, 12, 1.1), (4, 14, 1.0)],
)
def test_wide_pieces_lose_as_the_table_is_remembered_to_say(
    thick_in: float, wide_in: float, factor: float
) -> None:
    # NDS Supplement 2018, Table 4A, size factors for bending, from memory.
    assert timber_nds.size_factor(thick_in, wide_in) == factor
