"""Hoops, wigwams, folds and holes: sums by hand, and which way each answer goes."""

from __future__ import annotations

import itertools
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import geometry, section

lengths = st.floats(0.05, 5)


@pytest.mark.parametrize(
    ("width_m", "height_m", "arc_m", "rod_m", "cover_m"),
    [
        (1.2, 0.5, 1.73, 2.13, 2.33),
        (1.2, 0.6, 1.88, 2.28, 2.48),
        (0.9, 0.5, 1.49, 1.89, 2.09),
    ],
)
def test_hoops_and_covers_are_as_long_as_the_sum_by_hand_says(
    width_m: float, height_m: float, arc_m: float, rod_m: float, cover_m: float
) -> None:
    # By hand, with a foot of 20 cm and a skirt of 30 at each side; to the centimetre.
    assert geometry.half_ellipse_m(width_m, height_m) == pytest.approx(arc_m, abs=0.0055)
    assert geometry.hoop_rod_m(width_m, height_m) == pytest.approx(rod_m, abs=0.0055)
    assert geometry.hoop_cover_m(width_m, height_m) == pytest.approx(cover_m, abs=0.0055)


@given(lengths, lengths)
def test_a_hoop_agrees_with_short_chords_along_it(width: float, height: float) -> None:
    steps = 2000
    points = [
        (width / 2 * math.cos(math.pi * i / steps), height * math.sin(math.pi * i / steps))
        for i in range(steps + 1)
    ]
    chords = sum(math.dist(a, b) for a, b in itertools.pairwise(points))
    assert geometry.half_ellipse_m(width, height) == pytest.approx(chords, rel=1e-4)


@given(lengths)
def test_a_hoop_as_high_as_half_its_width_is_half_a_circle(width: float) -> None:
    assert geometry.half_ellipse_m(width, width / 2) == pytest.approx(math.pi * width / 2)


def test_a_wigwam_ties_where_the_sum_by_hand_says() -> None:
    # By hand: 2.4 m canes, 30 cm in the ground, tied 15 cm below the top, feet 50 cm out.
    pole_m = 2.4 - 0.30 - 0.15
    assert geometry.lean_height_m(pole_m, 0.5) == pytest.approx(1.88, abs=0.006)
    assert geometry.lean_deg(pole_m, 0.5) == pytest.approx(15, abs=0.5)


@given(lengths, st.floats(0, 0.9), st.floats(0.001, 0.09))
def test_a_wider_foot_ties_lower_and_leans_more(pole: float, share: float, more: float) -> None:
    narrow, wide = pole * share, pole * (share + more)
    assert geometry.lean_height_m(pole, wide) < geometry.lean_height_m(pole, narrow)
    assert geometry.lean_deg(pole, wide) > geometry.lean_deg(pole, narrow)


def test_a_foot_further_out_than_the_pole_is_long_is_refused() -> None:
    with pytest.raises(ValueError, match="further out"):
        geometry.lean_height_m(2, 2)


def test_a_cold_frame_falls_an_inch_in_a_foot() -> None:
    # By hand: 11¼ in to 7¼ in over 4 ft is about 4.8 degrees.
    assert geometry.fall_deg(4 * 0.0254, 4 * 0.3048) == pytest.approx(4.8, abs=0.05)
    half_way_m = geometry.taper_width_m(0.286, 0.184, 1.22, 0.61)
    assert half_way_m == pytest.approx(0.235)


@given(lengths, lengths, lengths)
def test_a_taper_meets_both_its_ends(wide: float, narrow: float, length: float) -> None:
    assert geometry.taper_width_m(wide, narrow, length, 0) == pytest.approx(wide)
    assert geometry.taper_width_m(wide, narrow, length, length) == pytest.approx(narrow)


@given(st.integers(1, 20), lengths, st.floats(0, 0.04))
def test_lapped_pieces_lead_back_to_their_row(pieces: int, piece: float, lap: float) -> None:
    row = geometry.lapped_row_m(pieces, piece, lap)
    assert geometry.lapped_piece_m(pieces, row, lap) == pytest.approx(piece)
    assert row <= pieces * piece


def test_three_lapped_rails_make_a_row_shorter_by_two_laps() -> None:
    assert geometry.lapped_row_m(3, 2.7, 0.3) == pytest.approx(7.5)
    assert geometry.lapped_row_m(1, 2.7, 0.3) == pytest.approx(2.7)


@pytest.mark.parametrize(("crown_cm", "upright_cm", "folded_cm"), [(-45, 101, 109), (30, 95, 42)])
def test_a_folding_lattice_moves_its_stems_as_the_sum_by_hand_says(
    crown_cm: float, upright_cm: float, folded_cm: float
) -> None:
    # By hand: hinge 30 cm up, first tie 60 cm above it.
    crown_m = crown_cm / 100
    upright, folded = (
        geometry.stem_upright_m(crown_m, 0.3, 0.6),
        geometry.stem_folded_m(crown_m, 0.3, 0.6),
    )
    assert upright * 100 == pytest.approx(upright_cm, abs=0.5)
    assert folded * 100 == pytest.approx(folded_cm, abs=0.5)
    assert geometry.fold_stretch_m(crown_m, 0.3, 0.6) == pytest.approx(folded - upright)


@given(st.floats(-2, 2), st.floats(0.01, 2), st.floats(0.01, 2))
def test_a_stem_is_stretched_only_behind_a_low_hinge(
    crown: float, hinge: float, tie: float
) -> None:
    stretch = geometry.fold_stretch_m(crown, hinge, tie)
    if -crown > hinge + 1e-6:
        assert stretch > 0
    elif -crown < hinge - 1e-6:
        assert stretch < 0
    else:
        assert stretch == pytest.approx(0, abs=1e-5)


def test_concrete_round_a_post_is_what_the_sum_by_hand_says() -> None:
    # By hand: an 89 mm post in a hole 250 mm across and 0.5 m deep: 20.6 litres, about 45 kg.
    volume_m3 = geometry.hole_fill_m3(0.25, 0.5, section.rectangle_area_m2(0.089, 0.089))
    assert volume_m3 * 1000 == pytest.approx(20.6, abs=0.05)
    assert geometry.concrete_mix_kg(volume_m3) == pytest.approx(45, abs=0.5)


def test_a_bed_is_square_when_its_diagonals_are_as_by_hand() -> None:
    assert geometry.diagonal_m(2.44, 1.22) == pytest.approx(2.73, abs=0.005)
    assert geometry.stay_m(3, 4) == pytest.approx(5)


def test_a_round_hoop_wants_a_foot_and_its_cover_a_skirt_at_each_side() -> None:
    # By hand: half a circle of 1 m is 3.1416 m; two feet of 20 cm, two skirts of 30 cm.
    assert geometry.hoop_rod_m(2, 1) == pytest.approx(math.pi + 0.4)
    assert geometry.hoop_cover_m(2, 1) == pytest.approx(math.pi + 0.6)
