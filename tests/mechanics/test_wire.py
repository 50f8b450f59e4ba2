"""Wires: droop by hand, ends that hold, and which way each answer goes."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import practice, wire
from plantframe.mechanics.units import GRAVITY_M_PER_S2

loads = st.floats(0.5, 300)
spans = st.floats(1, 12)
pulls = st.floats(50, 3000)
stiffnesses = st.floats(1e4, 5e6)
more = st.floats(1.01, 4)


@pytest.mark.parametrize(
    ("span_m", "pull_n", "droop_cm"),
    [(3, 300, 29), (3, 600, 15), (3, 1000, 9), (5, 300, 82), (5, 600, 41), (5, 1000, 25)],
)
def test_beans_on_a_wire_droop_as_the_sum_by_hand_says(
    span_m: float, pull_n: float, droop_cm: float
) -> None:
    # 8 kg a metre; worked by hand from w L² / 8 T, to the centimetre.
    droop_m = wire.sag_m(8 * GRAVITY_M_PER_S2, span_m, pull_n)
    assert droop_m * 100 == pytest.approx(droop_cm, abs=0.55)


def test_beans_on_a_hand_tight_wire_droop_a_tenth_of_three_metres() -> None:
    share = wire.sag_m(8 * GRAVITY_M_PER_S2, 3, practice.HAND_TIGHT_N) / 3
    assert share == pytest.approx(0.10, abs=0.005)
    assert share > practice.WIRE_SAG_WARN_SHARE


def test_a_stout_wire_between_braced_ends_tightens_under_tomatoes() -> None:
    # Estimate tuned to practice: 10 gauge over 20 ft under 10 kg a metre pulls about 3 kN and
    # droops about 15 cm, 2.5 % of its span.
    span_m = 20 * 0.3048
    stiffness_n = wire.wire_stiffness_n(wire.gauge_diameter_m(10))
    load = 10 * GRAVITY_M_PER_S2
    pull_n = wire.held_pull_n(load, span_m, practice.HAND_TIGHT_N, stiffness_n)
    droop_m = wire.held_sag_m(load, span_m, practice.HAND_TIGHT_N, stiffness_n)
    assert pull_n == pytest.approx(3000, rel=0.05)
    assert droop_m == pytest.approx(0.15, rel=0.05)
    assert droop_m / span_m < practice.WIRE_SAG_NOTE_SHARE


@given(loads, spans, pulls, more)
def test_more_load_or_span_droops_more_and_more_pull_less(
    load: float, span: float, pull: float, factor: float
) -> None:
    droop = wire.sag_m(load, span, pull)
    assert wire.sag_m(load * factor, span, pull) > droop
    assert wire.sag_m(load, span * factor, pull) > droop
    assert wire.sag_m(load, span, pull * factor) < droop
    assert wire.pull_for_sag_n(load, span, droop) == pytest.approx(pull)


@given(loads, spans, pulls, stiffnesses)
def test_a_held_wire_is_as_long_as_its_stretch_makes_it(
    load: float, span: float, first: float, stiffness: float
) -> None:
    pull = wire.held_pull_n(load, span, first, stiffness)
    droop = wire.held_sag_m(load, span, first, stiffness)
    assert pull > first
    longer = wire.wire_length_m(span, droop) - span
    assert longer == pytest.approx(span * (pull - first) / stiffness, rel=1e-6, abs=1e-12)


@given(loads, spans, pulls, stiffnesses, more)
def test_held_ends_never_make_a_wire_droop_more(
    load: float, span: float, first: float, stiffness: float, factor: float
) -> None:
    droop = wire.held_sag_m(load, span, first, stiffness)
    assert droop <= wire.sag_m(load, span, first)
    assert wire.held_sag_m(load, span, first * factor, stiffness) <= droop * (1 + 1e-9)
    assert wire.held_sag_m(load, span, first, stiffness * factor) <= droop * (1 + 1e-9)
    assert wire.held_sag_m(load * factor, span, first, stiffness) >= droop * (1 - 1e-9)


def test_a_slack_wire_still_finds_its_pull_and_a_bare_one_keeps_it() -> None:
    assert wire.held_pull_n(50, 3, 0, 1e6) == pytest.approx((1e6 * 150**2 / 24) ** (1 / 3))
    assert wire.held_pull_n(0, 3, 400, 1e6) == 400


@given(loads, spans, pulls)
def test_the_ends_feel_at_least_the_level_pull_and_half_the_load(
    load: float, span: float, pull: float
) -> None:
    end = wire.end_pull_n(load, span, pull)
    assert end >= pull
    assert end >= load * span / 2


@given(spans, st.floats(0, 0.125))
def test_the_length_agrees_with_the_parabola_summed_in_small_steps(
    span: float, share: float
) -> None:
    droop, steps = span * share, 400
    total, y0 = 0.0, 0.0
    for i in range(1, steps + 1):
        x = i / steps
        y = 4 * droop * x * (1 - x)
        total += math.hypot(span / steps, y - y0)
        y0 = y
    assert wire.wire_length_m(span, droop) == pytest.approx(total, rel=2e-3)


def test_a_higher_gauge_is_a_thinner_wire() -> None:
    gauges = sorted(wire.GAUGE_IN)
    diameters = [wire.gauge_diameter_m(gauge) for gauge in gauges]
    assert diameters == sorted(diameters, reverse=True)
    with pytest.raises(ValueError, match="give its thickness"):
        wire.gauge_diameter_m(3)


def test_a_wires_stiffness_is_its_area_times_that_of_steel() -> None:
    # By hand: 3 mm thick, 7.0686 mm², at 200 kN/mm²: 1413.7 kN.
    assert wire.wire_stiffness_n(0.003, 200e9) == pytest.approx(1413.7e3, rel=1e-4)


def test_the_ends_feel_pull_and_half_the_load_as_two_sides_of_a_triangle() -> None:
    # By hand, sides as 3, 4 and 5: 400 N level, half of 200 N/m over 3 m.
    assert wire.end_pull_n(200, 3, 400) == pytest.approx(500)
