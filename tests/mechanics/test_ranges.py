"""Low, middle and high through a sum."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics.ranges import Range, load_ratio, weaker

figures = st.lists(st.floats(0.01, 1e6), min_size=3, max_size=3).map(lambda f: Range(*sorted(f)))


def rises(found: Range) -> bool:
    return found.low <= found.middle <= found.high


@given(figures, figures, st.floats(0, 100))
def test_a_range_stays_in_order_through_every_sum(one: Range, other: Range, factor: float) -> None:
    assert rises(one.times(factor))
    assert rises(one.plus(other))
    assert rises(weaker(one, other))
    assert rises(load_ratio(one, other))


@given(figures, figures)
def test_the_weaker_link_is_weaker_than_either(one: Range, other: Range) -> None:
    found = weaker(one, other)
    assert all(f <= a and f <= b for f, a, b in zip(found, one, other, strict=True))


def test_the_worst_case_sets_most_load_against_least_strength() -> None:
    assert load_ratio(Range(2, 4, 6), Range(2, 4, 8)) == pytest.approx((0.25, 1, 3))


def test_a_range_unpacks_into_three_figures() -> None:
    low, middle, high = Range(1, 2, 3).plus(Range(10, 20, 30))
    assert (low, middle, high) == (11, 22, 33)
