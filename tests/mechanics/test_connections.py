"""What fixings hold: denser wood and thicker nails hold more, and the least way of giving rules."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import connections, fixings

gravities = st.floats(0.3, 0.75)
diameters = st.floats(0.002, 0.006)
lengths = st.floats(0.01, 0.12)
more = st.floats(1.01, 1.8)


@given(gravities, diameters, more)
def test_denser_wood_and_a_thicker_shank_hold_more(
    gravity: float, diameter: float, factor: float
) -> None:
    for holds in (
        connections.nail_withdrawal_n_per_m,
        connections.screw_withdrawal_n_per_m,
        connections.lag_withdrawal_n_per_m,
    ):
        assert holds(gravity * factor, diameter) > holds(gravity, diameter)
        assert holds(gravity, diameter * factor) > holds(gravity, diameter)


@given(gravities, diameters)
def test_a_screw_holds_more_than_a_nail_of_its_thickness(gravity: float, diameter: float) -> None:
    screw = connections.screw_withdrawal_n_per_m(gravity, diameter)
    assert screw > connections.nail_withdrawal_n_per_m(gravity, diameter)


@given(gravities, diameters, lengths)
def test_a_nail_in_a_test_comes_out_well_above_what_it_is_trusted_with(
    gravity: float, diameter: float, bite: float
) -> None:
    trusted = connections.nail_withdrawal_n_per_m(gravity, diameter) * bite
    breaks = connections.nail_breaking_pull_n(gravity, diameter, bite)
    # About a fifth is used: USDA Wood Handbook.
    assert trusted / breaks == pytest.approx(1 / 5, rel=0.15)


def test_a_lag_screw_holds_as_the_sum_by_hand_says() -> None:
    # By hand: 1800 x 0.5^1.5 x 0.25^0.75 = 225.0 lb per in; 1 lb per in is 175.127 N per m.
    found = connections.lag_withdrawal_n_per_m(0.5, 0.25 * 0.0254)
    assert found == pytest.approx(225.0 * 175.127, rel=1e-4)


@given(st.sampled_from(sorted(fixings.NAILS)), lengths, lengths, gravities, gravities)
def test_the_least_way_of_giving_rules(
    size: str, side: float, main: float, one: float, other: float
) -> None:
    diameter = fixings.nail(size).diameter_m
    modes = connections.lateral_modes_n(
        diameter,
        side,
        main,
        connections.bearing_strength_pa(one),
        connections.bearing_strength_pa(other),
        connections.nail_yield_pa(diameter),
    )
    found = connections.lateral_n(diameter, side, main, one, other)
    assert found == min(modes.values())
    assert all(load > 0 for load in modes.values())


@given(st.sampled_from(["8d", "16d", "20d"]), lengths, lengths, gravities, more)
def test_deeper_bite_and_denser_wood_never_hold_less(
    size: str, side: float, main: float, gravity: float, factor: float
) -> None:
    diameter = fixings.nail(size).diameter_m
    found = connections.lateral_n(diameter, side, main, gravity, gravity) * (1 - 1e-9)
    assert connections.lateral_n(diameter, side, main * factor, gravity, gravity) >= found
    denser = gravity * factor
    assert connections.lateral_n(diameter, side, main, denser, denser) >= found


def test_a_nail_too_thick_for_the_table_is_refused() -> None:
    with pytest.raises(ValueError, match="thicker than"):
        connections.nail_yield_pa(0.008)
