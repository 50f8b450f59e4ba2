"""Wind in the garden: pressures by hand, the scale at its edges, and which way it goes."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import wind


@pytest.mark.parametrize(
    ("place", "speed", "pressure"), [("sheltered", 7, 31), ("average", 10, 62), ("windy", 18, 202)]
)
def test_the_summer_gust_presses_as_the_sum_by_hand_says(
    place: str, speed: float, pressure: float
) -> None:
    # Estimates tuned to practice; half of 1.25 kg/m³ times the speed squared.
    assert wind.garden_gust_m_per_s(place) == pytest.approx(speed)
    assert wind.garden_pressure_pa(place) == pytest.approx(pressure, abs=0.51)


@pytest.mark.parametrize("place", ["sheltered", "average", "windy"])
def test_what_stays_for_years_meets_half_as_much_again(place: str) -> None:
    lasting = wind.garden_pressure_pa(place, stays_for_years=True)
    assert lasting == pytest.approx(1.5 * wind.garden_pressure_pa(place))


def test_another_word_for_a_place_is_answered_with_the_three() -> None:
    with pytest.raises(ValueError, match="'breezy': sheltered, average or windy"):
        wind.garden_pressure_pa("breezy")


@given(st.floats(0, 60), st.floats(0, 60))
def test_a_faster_wind_never_presses_less_nor_has_a_lower_force(one: float, other: float) -> None:
    slow, fast = sorted((one, other))
    assert wind.velocity_pressure_pa(slow) <= wind.velocity_pressure_pa(fast)
    assert wind.beaufort_force(slow) <= wind.beaufort_force(fast)


@given(st.floats(0.1, 30))
def test_twice_the_wind_presses_four_times(speed: float) -> None:
    assert wind.velocity_pressure_pa(2 * speed) == pytest.approx(
        4 * wind.velocity_pressure_pa(speed)
    )


@pytest.mark.parametrize("force", [-1, 13])
def test_the_scale_has_two_ends(force: int) -> None:
    with pytest.raises(ValueError, match="from 0 to 12"):
        wind.beaufort_speed_m_per_s(force)


def test_a_hurricane_begins_at_thirty_two_and_seven_tenths() -> None:
    # Beaufort scale of the WMO: force 12 from 32.7 m/s; there is no thirteenth.
    assert wind.beaufort_speed_m_per_s(12) == pytest.approx(32.7)
    with pytest.raises(ValueError, match="0 to 12"):
        wind.beaufort_speed_m_per_s(13)
