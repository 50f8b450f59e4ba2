"""Reading between the printed days to emergence, and not beyond them."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.sky.emergence import (
    DAYS_TO_EMERGENCE,
    NONE_CAME_UP,
    emergence_days,
    printed_range_c,
)

crops = st.sampled_from(sorted(DAYS_TO_EMERGENCE))
TOMATO, BEAN, PEA = (DAYS_TO_EMERGENCE[crop] for crop in ("tomato", "snap bean", "pea"))


def test_at_a_printed_temperature_the_printed_days_are_given() -> None:
    assert emergence_days(TOMATO, 10) == 43
    assert emergence_days(BEAN, 15) == 16


def test_halfway_between_two_temperatures_the_rate_is_halfway() -> None:
    # by hand: rates 1/43 and 1/14, mean 0.04734, so 21.1 days
    assert emergence_days(TOMATO, 12.5) == pytest.approx(21.12, abs=0.01)


def test_where_nothing_came_up_in_print_nothing_is_promised() -> None:
    assert emergence_days(BEAN, 10) == NONE_CAME_UP
    assert emergence_days(BEAN, 7.5) == NONE_CAME_UP


def test_between_some_and_none_print_does_not_say() -> None:
    assert emergence_days(BEAN, 12.5) is None


def test_beyond_the_temperatures_tested_print_does_not_say() -> None:
    assert emergence_days(PEA, 3) is None
    assert emergence_days(PEA, 31) is None
    assert emergence_days({}, 20) is None


def test_the_range_with_printed_days_is_told() -> None:
    assert printed_range_c(BEAN) == (15, 35)
    assert printed_range_c(PEA) == (5, 30)
    assert printed_range_c({0.0: NONE_CAME_UP}) is None


@given(crops, st.floats(-5, 45))
def test_every_answer_lies_between_its_printed_neighbours(crop: str, soil_c: float) -> None:
    row = DAYS_TO_EMERGENCE[crop]
    days = emergence_days(row, soil_c)
    bounds = printed_range_c(row)
    assert bounds is not None
    if days is not None and math.isfinite(days):
        cooler = row[max(c for c in row if c <= soil_c)]
        warmer = row[min(c for c in row if c >= soil_c)]
        assert bounds[0] <= soil_c <= bounds[1]
        assert min(cooler, warmer) - 1e-9 <= days <= max(cooler, warmer) + 1e-9


@given(st.floats(5, 29), st.floats(0, 1))
def test_warmer_soil_never_keeps_peas_waiting_longer(soil_c: float, warmer: float) -> None:
    cool, warm = emergence_days(PEA, soil_c), emergence_days(PEA, soil_c + warmer)
    assert cool is not None
    assert warm is not None
    assert warm <= cool + 1e-9
