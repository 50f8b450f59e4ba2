"""The constants of practice hang together; each is an estimate, and these are its promises."""

from __future__ import annotations

import pytest

from plantframe.mechanics import practice, section
from plantframe.mechanics.ranges import Range


def test_every_range_rises() -> None:
    ranges = [value for value in vars(practice).values() if isinstance(value, Range)]
    assert ranges
    assert all(r.low < r.middle < r.high for r in ranges)


def test_the_more_open_a_place_the_more_wind() -> None:
    factors = [practice.SHELTER_FACTORS[p] for p in ("sheltered", "average", "windy")]
    assert factors == sorted(factors)


def test_a_38_mm_stick_gives_way_where_growers_find_it_does() -> None:
    # Common practice, no source: a 38 mm post breaks at 230 to 350 N·m at the ground.
    modulus_m3 = section.rectangle_modulus_m3(0.038, 0.038)
    low, middle, high = practice.SAWN_STRENGTH_PA.times(modulus_m3)
    assert low == pytest.approx(230, rel=0.02)
    assert middle == pytest.approx(290, rel=0.02)
    assert high == pytest.approx(350, rel=0.02)


def test_what_stays_for_years_is_asked_more_and_trusted_less() -> None:
    assert practice.YEARS_PRESSURE_FACTOR > 1 > practice.YEARS_STRENGTH_FACTOR
