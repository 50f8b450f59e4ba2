"""Lifting: every awkwardness takes something off, and none adds."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import lifting

reaches = st.floats(0.1, 0.8)
heights = st.floats(0, 2)
travels = st.floats(0, 2)
twists = st.floats(0, 180)


@given(reaches, heights, travels, twists)
def test_nobody_is_told_to_lift_more_than_the_best_lift(
    reach: float, height: float, travel: float, twist: float
) -> None:
    found = lifting.recommended_weight_kg(reach, height, travel, twist_deg=twist)
    assert 0 <= found <= lifting.LOAD_CONSTANT_KG * (1 + 1e-12)


@given(reaches, heights, travels, twists, st.floats(0, 0.5))
def test_reaching_or_twisting_further_never_helps(
    reach: float, height: float, travel: float, twist: float, further: float
) -> None:
    found = lifting.recommended_weight_kg(reach, height, travel, twist_deg=twist)
    for harder in (
        lifting.recommended_weight_kg(reach + further, height, travel, twist_deg=twist),
        lifting.recommended_weight_kg(reach, height, travel + further, twist_deg=twist),
        lifting.recommended_weight_kg(reach, height, travel, twist_deg=twist + 90 * further),
    ):
        assert harder <= found + 1e-9


@given(st.floats(0, 20), st.floats(0, 20))
def test_lifting_more_often_never_allows_more(one: float, other: float) -> None:
    seldom, often = sorted((one, other))
    assert lifting.frequency_factor(often) <= lifting.frequency_factor(seldom)


@pytest.mark.parametrize(
    ("reach_m", "height_m", "travel_m", "twist_deg"),
    [(0.64, 0.75, 0.25, 0), (0.25, 1.8, 0.25, 0), (0.25, 0.75, 1.8, 0), (0.25, 0.75, 0.25, 136)],
)
def test_beyond_its_bounds_the_equation_allows_nothing(
    reach_m: float, height_m: float, travel_m: float, twist_deg: float
) -> None:
    assert lifting.recommended_weight_kg(reach_m, height_m, travel_m, twist_deg=twist_deg) == 0


def test_where_nothing_may_be_lifted_any_load_is_too_much() -> None:
    assert lifting.lifting_ratio(1, 0) == math.inf
    assert lifting.lifting_ratio(23, 23) == 1


@pytest.mark.parametrize(
    ("load_kg", "each_kg", "people"),
    [(10, 23, 1), (23, 23, 1), (34, 23, 2), (55, 23, 3), (0, 23, 1)],
)
def test_a_heavy_box_wants_more_hands(load_kg: float, each_kg: float, people: int) -> None:
    assert lifting.hands_needed(load_kg, each_kg) == people


def test_a_grip_has_one_of_three_names() -> None:
    with pytest.raises(ValueError, match="good, fair or poor"):
        lifting.coupling_factor("slimy", 0.5)


def test_women_of_the_filter_are_never_asked_more_than_men() -> None:
    assert all(women < men for men, women in lifting.FILTER_KG.values())


def test_the_best_lift_of_all_is_the_load_constant() -> None:
    # NIOSH 1991: close, waist high, a hand's lift, straight, seldom, good grip: 23 kg.
    assert lifting.recommended_weight_kg(0.25, 0.75, 0.25) == pytest.approx(23)


def test_a_lift_that_allows_less_than_a_kilogram_still_has_its_ratio() -> None:
    # By hand: 0.4 over 0.8.
    assert lifting.lifting_ratio(0.4, 0.8) == pytest.approx(0.5)


def test_each_multiplier_holds_to_its_printed_end() -> None:
    # NIOSH 1991: 25/H to 63 cm; 1 - 0.003 |V - 75| to 175 cm; 0.82 + 4.5/D to 175 cm (the two
    # upper ends from memory). By hand at the ends: 25 / 63, 0.7, 0.82 + 4.5 / 175.
    assert lifting.horizontal_factor(0.63) == pytest.approx(0.39683, abs=1e-5)
    assert lifting.horizontal_factor(0.25) == lifting.horizontal_factor(0.2) == 1
    assert lifting.vertical_factor(1.75) == pytest.approx(0.7)
    assert lifting.distance_factor(1.75) == pytest.approx(0.84571, abs=1e-5)
    assert lifting.distance_factor(0.25) == lifting.distance_factor(0.1) == 1
    assert lifting.coupling_factor("fair", 0.75) == 1
    assert lifting.coupling_factor("fair", 0.74) == 0.95


@pytest.mark.parametrize(
    ("lifts_per_min", "factor"),
    [(0.1, 1), (0.5, 0.97), (1, 0.94), (2, 0.91), (3, 0.88), (4, 0.84), (5, 0.80), (6, 0.75)]
    + [(7, 0.70), (8, 0.60), (9, 0.52), (10, 0.45), (10.1, 0)],
)
def test_work_of_an_hour_is_lightened_as_the_table_is_remembered(
    lifts_per_min: float, factor: float
) -> None:
    # NIOSH 1991, frequency multiplier, an hour at most: 3 a minute printed, the rest from memory.
    assert lifting.frequency_factor(lifts_per_min) == factor
