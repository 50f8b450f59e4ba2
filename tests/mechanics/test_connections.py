"""What fixings hold: denser wood and thicker nails hold more, and the least way of giving rules."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import connections, fixings
from plantframe.mechanics.units import IN_M, LBF_N, PSI_PA

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


def by_the_general_equation(
    diameter: float, side: float, main: float, side_pa: float, main_pa: float, yield_pa: float
) -> dict[str, float]:
    """The yield modes by another road, in any consistent units, before any reduction.

    AWC Technical Report 12, General Dowel Equations, from memory: the load is the root of a
    quadratic, with the bearing of each piece along the nail and the nail's own moment.
    """
    side_q, main_q, moment = side_pa * diameter, main_pa * diameter, yield_pa * diameter**3 / 6

    def root(a: float, b: float, c: float) -> float:
        return (-b + math.sqrt(b * b - 4 * a * c)) / (2 * a)

    crushed = side_q * side**2 / 4, main_q * main**2 / 4
    return {
        "Im": main_q * main,
        "Is": side_q * side,
        "II": root(1 / (4 * side_q) + 1 / (4 * main_q), (side + main) / 2, -sum(crushed)),
        "IIIm": root(1 / (2 * side_q) + 1 / (4 * main_q), main / 2, -moment - crushed[1]),
        "IIIs": root(1 / (4 * side_q) + 1 / (2 * main_q), side / 2, -crushed[0] - moment),
        "IV": root(1 / (2 * side_q) + 1 / (2 * main_q), 0, -2 * moment),
    }


@pytest.mark.parametrize(
    ("size", "side_in", "main_in", "side_gravity", "main_gravity", "reduction"),
    [
        ("6d", 0.75, 1.25, 0.31, 0.67, 2.2),
        ("10d", 0.5, 1.0, 0.55, 0.36, 2.2),
        ("20d", 1.5, 2.5, 0.50, 0.42, 2.42),  # by hand: 10 x 0.192 + 0.5
        (0.177, 1.0, 1.5, 0.42, 0.42, 2.27),  # shank in inches, no common nail
    ],
)
def test_each_way_a_nail_may_give_agrees_with_the_general_equation(
    size: str | float,
    side_in: float,
    main_in: float,
    side_gravity: float,
    main_gravity: float,
    reduction: float,
) -> None:
    diameter = fixings.nail(size).diameter_m if isinstance(size, str) else size * IN_M
    given_ = (
        diameter,
        side_in * IN_M,
        main_in * IN_M,
        connections.bearing_strength_pa(side_gravity),
        connections.bearing_strength_pa(main_gravity),
        connections.nail_yield_pa(diameter),
    )
    wanted = {mode: load / reduction for mode, load in by_the_general_equation(*given_).items()}
    assert connections.lateral_modes_n(*given_) == pytest.approx(wanted, rel=1e-9)


@pytest.mark.parametrize(
    ("size", "pounds"), [("10d", 118), ("20d", 170), ("30d", 186), ("40d", 205), ("50d", 211)]
)
def test_thick_nails_hold_sideways_what_the_table_is_remembered_to_say(
    size: str, pounds: float
) -> None:
    # NDS, common nails, 1½ in side piece, G 0.50, from memory; its bearing strength is rounded to
    # 4650 psi.
    nail = fixings.nail(size)
    side = 1.5 * IN_M
    modes = connections.lateral_modes_n(
        nail.diameter_m,
        side,
        nail.length_m - side,
        4650 * PSI_PA,
        4650 * PSI_PA,
        connections.nail_yield_pa(nail.diameter_m),
    )
    assert min(modes.values()) / LBF_N == pytest.approx(pounds, abs=0.5)


def test_a_spike_a_hair_thicker_than_the_table_is_refused() -> None:
    assert connections.nail_yield_pa(0.273 * IN_M) == pytest.approx(70000 * PSI_PA)
    with pytest.raises(ValueError, match="thicker than"):
        connections.nail_yield_pa(0.274 * IN_M)


def test_woods_are_as_heavy_for_nails_as_the_table_is_remembered_to_say() -> None:
    # NDS 2018, Table 12.3.3A, from memory.
    gravity = connections.SPECIFIC_GRAVITIES
    assert gravity["douglas fir and larch"] == 0.50
    assert gravity["hem-fir"] == gravity["ponderosa pine"] == 0.43
    assert gravity["spruce, pine and fir"] == 0.42
    assert gravity["southern pine"] == 0.55
    assert gravity["red oak"] == 0.67
