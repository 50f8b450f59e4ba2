"""Posts in the wind: an ordinary bean net by hand, and which way each answer goes."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import post, practice, section, wind
from plantframe.mechanics.ranges import load_ratio

sizes = st.floats(0.1, 10)
more = st.floats(1.001, 3)

STANDING_M = 78 * 0.0254  # 6 ft 6 in
BAY_M = 8 * 0.3048
THIN_STICK_NM = post.sawn_moment_nm(section.rectangle_modulus_m3(0.038, 0.038))


@pytest.mark.parametrize(
    ("place", "bays_held", "push_nm"),
    [("average", 0.5, 118), ("average", 1.0, 237), ("sheltered", 1.0, 116), ("windy", 0.5, 383)],
)
def test_a_net_of_beans_pushes_its_post_as_the_sum_by_hand_says(
    place: str, bays_held: float, push_nm: float
) -> None:
    # Estimate tuned to practice: pressure x 0.72 x area x 0.55 of the height.
    area_m2 = STANDING_M * BAY_M * bays_held
    found = post.leafy_push_nm(
        wind.garden_pressure_pa(place), area_m2, post.push_height_m(STANDING_M)
    )
    assert found.middle == pytest.approx(push_nm, rel=0.005)


def test_an_inner_post_of_a_bean_net_stands_about_but_not_surely() -> None:
    # Estimate tuned to practice: the ratio runs from about a half to about one and a half.
    push = post.leafy_push_nm(62.5, STANDING_M * BAY_M, post.push_height_m(STANDING_M))
    found = load_ratio(push, THIN_STICK_NM)
    assert found.low == pytest.approx(0.5, abs=0.05)
    assert found.middle == pytest.approx(0.82, abs=0.02)
    assert found.high == pytest.approx(1.5, abs=0.1)


@pytest.mark.parametrize(
    ("found_nm", "by_hand_nm"),
    [
        (post.sawn_moment_nm(section.rectangle_modulus_m3(0.025, 0.025)).middle, 83),
        (6 * post.round_moment_nm(section.round_modulus_m3(0.020)).middle, 220),
        (8 * post.round_moment_nm(section.round_modulus_m3(0.020)).middle, 295),
        (
            practice.YEARS_STRENGTH_FACTOR
            * post.round_moment_nm(section.round_modulus_m3(0.075)).middle,
            970,
        ),
    ],
)
def test_stakes_and_poles_give_way_where_the_sum_by_hand_says(
    found_nm: float, by_hand_nm: float
) -> None:
    assert found_nm == pytest.approx(by_hand_nm, rel=0.01)


@given(sizes, sizes, sizes, more)
def test_more_wind_leaf_or_height_never_pushes_less(
    pressure: float, area: float, height: float, factor: float
) -> None:
    push = post.wind_push_nm(pressure, 0.72, area, height)
    assert post.wind_push_nm(pressure * factor, 0.72, area, height) > push
    assert post.wind_push_nm(pressure, 0.72 * factor, area, height) > push
    assert post.wind_push_nm(pressure, 0.72, area * factor, height) > push
    assert post.wind_push_nm(pressure, 0.72, area, height * factor) > push
    assert post.wind_push_n(pressure, 0.72, area) * height == pytest.approx(push)


@given(sizes, sizes)
def test_the_push_acts_inside_the_leaves_above_their_middle(height: float, start: float) -> None:
    found = post.push_height_m(height, start)
    assert start + height / 2 < found < start + height


@given(sizes, more)
def test_a_thicker_post_never_gives_way_sooner(size: float, factor: float) -> None:
    thin = post.sawn_moment_nm(section.rectangle_modulus_m3(size, size))
    thick = post.sawn_moment_nm(section.rectangle_modulus_m3(size * factor, size * factor))
    assert all(a < b for a, b in zip(thin, thick, strict=True))
