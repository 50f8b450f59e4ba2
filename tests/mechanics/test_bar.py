"""Top bars: what ordinary ones carry in practice, and which way each answer goes."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import bar, section

SQUARE = (0.038, 0.038)
RIPPED = (0.038, 0.043)  # half a 2 by 4, on edge
FLAT = (0.089, 0.038)
ON_EDGE = (0.038, 0.089)

spans = st.floats(0.5, 5)
sides = st.floats(0.02, 0.1)


def capacity(span_m: float, width_m: float, depth_m: float) -> tuple[float, float, float]:
    return bar.bar_capacity_kg_per_m(
        span_m,
        section.rectangle_modulus_m3(width_m, depth_m),
        section.rectangle_inertia_m4(width_m, depth_m),
    )


# Estimates tuned to practice, worked by hand from 7 to 10 MPa, a bow of a sixtieth and 8 GPa:
# span, then low and high, kg a metre, to two figures.
BY_HAND = [
    (SQUARE, 1.5, 23, 33),
    (SQUARE, 1.8, 16, 23),
    (SQUARE, 2.4, 9, 13),
    (SQUARE, 3.6, 4, 4),
    (RIPPED, 1.5, 30, 42),
    (RIPPED, 2.4, 11.5, 16.5),
    (RIPPED, 3.0, 7.4, 9.7),
    (FLAT, 2.4, 21, 30),
    (FLAT, 3.0, 13.6, 15.7),
    (ON_EDGE, 2.4, 50, 71),
    (ON_EDGE, 3.6, 22, 32),
]


@pytest.mark.parametrize(("stick", "span_m", "low", "high"), BY_HAND)
def test_a_bar_carries_what_the_sum_by_hand_says(
    stick: tuple[float, float], span_m: float, low: float, high: float
) -> None:
    found = capacity(span_m, *stick)
    assert found[0] == pytest.approx(low, rel=0.04)
    assert found[2] == pytest.approx(high, rel=0.04)


def test_a_round_pole_carries_what_the_sum_by_hand_says() -> None:
    low, _, high = bar.bar_capacity_kg_per_m(
        2.4, section.round_modulus_m3(0.05), section.round_inertia_m4(0.05)
    )
    assert (low, high) == pytest.approx((12.2, 17.4), rel=0.02)


def test_an_eight_foot_bay_of_thin_bar_carries_about_eleven_kilos_a_metre() -> None:
    # Estimate tuned to practice. 8 ft less a post: 2.40 m from pin to pin.
    low, middle, high = capacity(2.40, *SQUARE)
    assert middle == pytest.approx(11, abs=0.1)
    assert low == pytest.approx(8.9, rel=0.03)
    assert high == pytest.approx(12.5, rel=0.04)
    assert capacity(2.40, *RIPPED)[1] == pytest.approx(14, abs=0.2)


def test_at_ten_feet_the_bow_governs_the_upper_end() -> None:
    assert capacity(3.01, *SQUARE)[1] == pytest.approx(6.2, abs=0.05)


def test_tall_peas_bow_a_ten_foot_bar_by_two_inches() -> None:
    # Estimate tuned to practice: 4.5 kg a metre, weeks on end, 5.1 cm.
    inertia_m4 = section.rectangle_inertia_m4(*SQUARE)
    assert bar.bar_bow_m(4.5, 3.01, inertia_m4) == pytest.approx(0.051, abs=0.0005)


@given(spans, sides, sides, st.floats(1.01, 2))
def test_a_longer_bar_carries_less_and_a_thicker_one_more(
    span: float, width: float, depth: float, factor: float
) -> None:
    low, middle, high = capacity(span, width, depth)
    assert low <= middle <= high
    assert all(
        a < b
        for a, b in zip(capacity(span * factor, width, depth), (low, middle, high), strict=True)
    )
    assert all(
        a > b
        for a, b in zip(capacity(span, width, depth * factor), (low, middle, high), strict=True)
    )
    assert all(
        a > b
        for a, b in zip(capacity(span, width * factor, depth), (low, middle, high), strict=True)
    )


@given(spans, sides, st.floats(0.1, 100), st.floats(1.01, 3))
def test_more_crop_never_bows_a_bar_less(
    span: float, side: float, load: float, factor: float
) -> None:
    inertia = section.rectangle_inertia_m4(side, side)
    assert bar.bar_bow_m(load * factor, span, inertia) > bar.bar_bow_m(load, span, inertia)
    assert bar.bar_bow_m(0, span, inertia) == 0
