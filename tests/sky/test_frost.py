"""Frost chances: the meaning of an average, direction, the southern half, no frost at all."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.sky import frost

LAST, FIRST = date(2026, 5, 18), date(2026, 9, 30)

days = st.dates(date(1990, 1, 1), date(2049, 12, 31))
spreads = st.floats(1, 25)
chances = st.floats(0.01, 0.99)


def test_on_the_average_date_it_is_one_year_in_two() -> None:
    assert frost.spring_frost_chance(LAST, LAST) == pytest.approx(0.5)
    assert frost.autumn_frost_chance(FIRST, FIRST) == pytest.approx(0.5)
    assert frost.last_frost_at_chance(LAST, 0.5) == LAST
    assert frost.first_frost_at_chance(FIRST, 0.5) == FIRST


def test_the_careful_date_is_fifteen_days_after_the_average() -> None:
    # by hand: 1.2816 × 11.70 = 15.0; 1.2816 × 10.92 = 14.0
    assert frost.one_in_ten_last_day(LAST) == date(2026, 6, 2)
    assert frost.one_in_ten_first_day(FIRST) == date(2026, 9, 16)


def test_a_week_before_the_average_nearly_three_springs_in_four_still_freeze() -> None:
    # by hand: 7 / 11.70 = 0.598 standard deviations; the normal table gives 0.725
    week_before = LAST - timedelta(days=7)
    assert frost.spring_frost_chance(week_before, LAST) == pytest.approx(0.725, abs=0.001)


def test_a_garden_without_frost_gets_no_date_and_no_chance() -> None:
    assert frost.one_in_ten_last_day(None) is None
    assert frost.one_in_ten_first_day(None) is None
    assert frost.spring_frost_chance(LAST, None) is None
    assert frost.autumn_frost_chance(FIRST, None) is None
    assert frost.frost_free_days(None, FIRST) is None
    assert frost.frost_free_days(LAST, None) is None


def test_the_frost_free_season_is_counted_over_the_new_year_in_the_south() -> None:
    # by hand: 18 May to 30 September; 20 September to 10 May of the next year
    assert frost.frost_free_days(LAST, FIRST) == 135
    assert frost.frost_free_days(date(2026, 9, 20), date(2026, 5, 10)) == 232
    assert frost.frost_free_days(date(2026, 9, 20), date(2027, 5, 10)) == 232


def test_an_average_of_another_year_means_the_spring_nearest_to_the_day() -> None:
    asked = date(2031, 5, 12)
    same_spring = frost.spring_frost_chance(asked, date(2031, 5, 18))
    assert frost.spring_frost_chance(asked, LAST) == same_spring


def test_a_first_frost_about_new_year_is_reckoned_across_it() -> None:
    average = date(2026, 1, 3)
    before = frost.autumn_frost_chance(date(2026, 12, 28), average)
    after = frost.autumn_frost_chance(date(2027, 1, 9), average)
    assert before is not None
    assert after is not None
    assert before < 0.5 < after
    assert before + after == pytest.approx(1)


def test_a_spread_of_nothing_takes_the_average_for_a_certainty() -> None:
    day = timedelta(days=1)
    assert frost.spring_frost_chance(LAST - day, LAST, 0) == 1
    assert frost.spring_frost_chance(LAST, LAST, 0) == 0.5
    assert frost.spring_frost_chance(LAST + day, LAST, 0) == 0
    assert frost.one_in_ten_last_day(LAST, 0) == LAST


def test_the_29th_of_february_returns_on_the_28th() -> None:
    leap = date(2028, 2, 29)
    assert frost.in_year(leap, 2027) == date(2027, 2, 28)
    assert frost.in_year(leap, 2032) == date(2032, 2, 29)
    assert frost.nearest(leap, date(2027, 3, 1)) == date(2027, 2, 28)
    assert frost.following(leap, date(2027, 2, 28)) == date(2028, 2, 29)


@given(days, days, spreads, st.integers(1, 60))
def test_the_chance_of_a_spring_frost_falls_with_every_later_date(
    average: date, near: date, spread: float, later: int
) -> None:
    day = frost.nearest(average, near) - timedelta(days=30)
    sooner = frost.spring_frost_chance(day, average, spread)
    after = frost.spring_frost_chance(day + timedelta(days=later), average, spread)
    assert sooner is not None
    assert after is not None
    assert 0 <= after <= sooner <= 1


@given(days, spreads, st.integers(-60, 60), st.integers(1, 30))
def test_the_chance_of_an_autumn_frost_grows_with_every_later_date(
    average: date, spread: float, offset: int, later: int
) -> None:
    day = average + timedelta(days=offset)
    sooner = frost.autumn_frost_chance(day, average, spread)
    after = frost.autumn_frost_chance(day + timedelta(days=later), average, spread)
    assert sooner is not None
    assert after is not None
    assert 0 <= sooner <= after <= 1


@given(days, chances, spreads)
def test_the_date_of_a_chance_has_that_chance(average: date, chance: float, spread: float) -> None:
    last = frost.last_frost_at_chance(average, chance, spread)
    assert last is not None
    half_day = 0.5 * 0.4 / spread + 1e-6  # a normal curve climbs at most 0.4 a standard deviation
    assert frost.spring_frost_chance(last, average, spread) == pytest.approx(chance, abs=half_day)
    first = frost.first_frost_at_chance(average, chance, spread)
    assert first is not None
    assert frost.autumn_frost_chance(first, average, spread) == pytest.approx(chance, abs=half_day)


@given(days, spreads, st.floats(0, 10))
def test_a_wider_spread_never_brings_the_careful_spring_date_forward(
    average: date, spread: float, wider: float
) -> None:
    narrow = frost.one_in_ten_last_day(average, spread)
    wide = frost.one_in_ten_last_day(average, spread + wider)
    assert narrow is not None
    assert wide is not None
    assert average <= narrow <= wide


@given(days, days)
def test_the_nearest_return_is_never_more_than_half_a_year_off(yearly: date, day: date) -> None:
    near = frost.nearest(yearly, day)
    assert abs((near - day).days) <= 183
    assert 0 < (frost.following(yearly, day) - day).days <= 366


@pytest.mark.parametrize("chance", [0, 1, -0.2, 1.5])
def test_a_chance_of_none_or_all_has_no_date(chance: float) -> None:
    with pytest.raises(ValueError, match="between 0 and 1"):
        frost.last_frost_at_chance(LAST, chance)


def test_a_spread_below_nothing_is_refused() -> None:
    with pytest.raises(ValueError, match="less than nothing"):
        frost.spring_frost_chance(LAST, LAST, -1)
    with pytest.raises(ValueError, match="less than nothing"):
        frost.one_in_ten_first_day(FIRST, -1)
