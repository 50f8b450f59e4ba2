"""Depth by the building code: the equation put back into itself, and which way it goes."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import embedment

pulls = st.floats(10, 20000)
heights = st.floats(0, 8)
widths = st.floats(0.05, 1)
soils = st.floats(5e3, 2e5)
more = st.floats(1.001, 4)


@given(pulls, heights, widths, soils, more)
def test_more_pull_never_needs_less_depth(
    pull: float, height: float, width: float, soil: float, factor: float
) -> None:
    depth = embedment.depth_unrestrained_m(pull, height, width, soil)
    assert embedment.depth_unrestrained_m(pull * factor, height, width, soil) >= depth
    assert embedment.depth_unrestrained_m(pull, height * factor, width, soil) >= depth * (1 - 1e-12)
    assert embedment.depth_unrestrained_m(pull, height, width * factor, soil) <= depth
    assert embedment.depth_unrestrained_m(pull, height, width, soil * factor) <= depth


@given(pulls, heights, widths, soils)
def test_the_depth_satisfies_the_equation_it_is_on_both_sides_of(
    pull: float, height: float, width: float, soil: float
) -> None:
    depth = embedment.depth_unrestrained_m(pull, height, width, soil)
    pressure = soil * min(depth, embedment.DEEPEST_COUNTED_M) / 3
    assert embedment.depth_for_pressure_m(pull, height, width, pressure) == pytest.approx(depth)


@given(pulls, st.floats(0.1, 8), widths, soils)
def test_paving_round_the_foot_never_calls_for_more_depth(
    pull: float, height: float, width: float, soil: float
) -> None:
    held = embedment.depth_restrained_m(pull * height, width, soil)
    assert held < embedment.depth_unrestrained_m(pull, height, width, soil)


@given(st.floats(1, 1e5), widths, soils, more)
def test_more_moment_never_needs_less_depth_in_paving(
    moment: float, width: float, soil: float, factor: float
) -> None:
    depth = embedment.depth_restrained_m(moment, width, soil)
    assert embedment.depth_restrained_m(moment * factor, width, soil) > depth


@given(widths, soils)
def test_the_depth_does_not_jump_at_twelve_feet(width: float, soil: float) -> None:
    at = embedment.DEEPEST_COUNTED_M
    moment = at**3 * soil * width / 4.25
    just_over = embedment.depth_restrained_m(moment * (1 + 1e-9), width, soil)
    assert just_over == pytest.approx(at, rel=1e-6)


def test_no_pull_needs_no_depth() -> None:
    assert embedment.depth_unrestrained_m(0, 2, 0.1, 2e4) == 0
    assert embedment.depth_restrained_m(0, 0.1, 2e4) == 0


def test_presumed_soils_come_in_pascals_too() -> None:
    # By hand: 150 psf is 7.18 kPa; over 0.3048 m, 23.6 kPa a metre. 2000 psf is 95.8 kPa.
    sand = embedment.PRESUMED_SOILS["sand"]
    assert sand.lateral_pa_per_m == pytest.approx(23.6e3, abs=50)
    assert sand.bearing_pa == pytest.approx(95.8e3, abs=50)
