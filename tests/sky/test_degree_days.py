"""Degree-days: by hand, against the area under the wave itself, and in direction."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.sky.degree_days import days_to_reach, single_sine_degree_days

temperatures = st.floats(-30, 50)
swings = st.floats(0, 30)


def area_by_strips(min_c: float, max_c: float, lower_c: float, upper_c: float) -> float:
    """The same day in 20 000 thin strips: a second method."""
    mean_c, swing_c = (min_c + max_c) / 2, (max_c - min_c) / 2
    strips = 20_000
    return (
        sum(
            min(
                max(mean_c + swing_c * math.sin(math.tau * (n + 0.5) / strips) - lower_c, 0),
                upper_c - lower_c,
            )
            for n in range(strips)
        )
        / strips
    )


def test_a_day_of_5_to_20_degrees_worked_by_hand() -> None:
    # m = 12.5, a = 7.5, asin(-0.6) = -0.6435; (4.5 × 2.2143 + 7.5 × 0.8) / pi = 5.082
    assert single_sine_degree_days(5, 20, 8, 30) == pytest.approx(5.082, abs=0.001)


def test_all_six_ways_a_day_can_lie_to_its_thresholds() -> None:
    assert single_sine_degree_days(1, 9, 10, 30) == 0  # wholly below
    assert single_sine_degree_days(31, 40, 10, 30) == 20  # wholly above: no more than between
    assert single_sine_degree_days(14, 24, 10, 30) == 9  # between: the plain mean less the base
    for min_c, max_c in ((4, 24), (12, 36), (2, 34)):  # crosses lower, upper, both
        found = single_sine_degree_days(min_c, max_c, 10, 30)
        assert found == pytest.approx(area_by_strips(min_c, max_c, 10, 30), abs=0.001)


def test_a_day_without_change_counts_its_own_height() -> None:
    assert single_sine_degree_days(18, 18, 10, 30) == 8
    assert single_sine_degree_days(10, 10, 10, 30) == 0


def test_without_an_upper_threshold_heat_goes_on_counting() -> None:
    assert single_sine_degree_days(30, 40, 10) == 25


@given(temperatures, swings, temperatures, swings)
def test_a_day_never_counts_less_than_nothing_or_more_than_between_the_thresholds(
    min_c: float, swing: float, lower: float, band: float
) -> None:
    found = single_sine_degree_days(min_c, min_c + swing, lower, lower + band)
    assert -1e-9 <= found <= band + 1e-9


@given(temperatures, swings, temperatures, swings, st.floats(0, 10))
def test_a_warmer_day_never_counts_less(
    min_c: float, swing: float, lower: float, band: float, warmer: float
) -> None:
    cool = single_sine_degree_days(min_c, min_c + swing, lower, lower + band)
    warm = single_sine_degree_days(min_c + warmer, min_c + swing + warmer, lower, lower + band)
    assert warm >= cool - 1e-9


def test_days_to_a_sum_are_counted_to_the_day_that_reaches_it() -> None:
    days = [(14.0, 24.0)] * 10  # nine a day above 10
    assert days_to_reach(27, days, 10) == 3
    assert days_to_reach(28, days, 10) == 4
    assert days_to_reach(0, days, 10) == 0
    assert days_to_reach(91, days, 10) is None


def test_crossed_figures_are_refused() -> None:
    with pytest.raises(ValueError, match="above the highest"):
        single_sine_degree_days(20, 10, 5, 30)
    with pytest.raises(ValueError, match="above the upper"):
        single_sine_degree_days(10, 20, 30, 5)
