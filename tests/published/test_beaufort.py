"""The Beaufort scale as printed: ten-minute means at 10 m, in m/s and in miles an hour.

Source: Beaufort wind scale, World Meteorological Organization.
"""

from __future__ import annotations

import pytest

from plantframe.mechanics import practice, wind
from plantframe.mechanics.units import MPH_M_PER_S

pytestmark = pytest.mark.published

# Force; m/s from, to; mph from, to (the ends of 0 and 12 are open).
SCALE = [
    (0, 0.0, 0.2, None, None),
    (1, 0.3, 1.5, 1, 3),
    (2, 1.6, 3.3, 4, 7),
    (3, 3.4, 5.4, 8, 12),
    (4, 5.5, 7.9, 13, 18),
    (5, 8.0, 10.7, 19, 24),
    (6, 10.8, 13.8, 25, 31),
    (7, 13.9, 17.1, 32, 38),
    (8, 17.2, 20.7, 39, 46),
    (9, 20.8, 24.4, 47, 54),
    (10, 24.5, 28.4, 55, 63),
    (11, 28.5, 32.6, 64, 72),
]


@pytest.mark.parametrize(("force", "low", "high", "low_mph", "high_mph"), SCALE)
def test_a_speed_has_the_printed_force(
    force: int, low: float, high: float, low_mph: float | None, high_mph: float | None
) -> None:
    assert wind.beaufort_force(low) == force
    assert wind.beaufort_force(high) == force
    assert wind.beaufort_speed_m_per_s(force) == low
    if low_mph is not None and high_mph is not None:
        # Whole miles: half a mile inside the printed ends.
        assert wind.beaufort_force((low_mph + 0.5) * MPH_M_PER_S) == force
        assert wind.beaufort_force((high_mph - 0.5) * MPH_M_PER_S) == force


def test_a_hurricane_begins_at_the_printed_speed() -> None:
    assert wind.beaufort_force(32.7) == 12
    assert wind.beaufort_force(32.6) == 11
    assert wind.beaufort_force(90) == 12


def test_the_summer_gust_is_a_gale_on_the_scale() -> None:
    assert wind.beaufort_force(practice.MAST_GUST_M_PER_S) == 8
