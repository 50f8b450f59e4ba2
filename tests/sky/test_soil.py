"""Soil warmth is an estimate: what is tested is its shape, its order and its range."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.sky import soil
from plantframe.sky.frost import frost_free_days, in_year

LAST, FIRST = date(2026, 5, 18), date(2026, 9, 30)

northern_last = st.dates(date(2026, 2, 20), date(2026, 6, 10))
northern_first = st.dates(date(2026, 8, 25), date(2026, 12, 10))
days = st.dates(date(2020, 1, 1), date(2032, 12, 31))


def warmth(last: date, first: date, day: date) -> soil.Warmth:
    found = soil.soil_warmth_c(last, first, day)
    assert found is not None
    return found


def test_on_the_frost_dates_it_is_what_it_is_said_to_be() -> None:
    for day in (LAST, FIRST):
        found = warmth(LAST, FIRST, day)
        assert (found.low_c, found.middle_c, found.high_c) == pytest.approx(
            soil.ON_FROST_DATE_C, abs=0.3
        )


def test_beans_at_16_degrees_wait_until_after_the_last_frost_but_not_until_july() -> None:
    # common practice, no source: the soil is ready for beans one to three weeks after it
    day = soil.first_warm_day(LAST, FIRST, 16, 2026)
    assert day is not None
    assert 7 <= (day - LAST).days <= 21


def test_peas_at_4_degrees_go_in_weeks_before_the_last_frost() -> None:
    # common practice, no source: four to eight weeks before it
    day = soil.first_warm_day(LAST, FIRST, 4.4, 2026)
    assert day is not None
    assert 4 <= (LAST - day).days / 7 <= 8


def test_midwinter_soil_is_about_freezing_and_never_below() -> None:
    found = warmth(LAST, FIRST, date(2026, 1, 20))
    assert found.low_c == found.middle_c == soil.COLDEST_C


def test_a_garden_without_frost_gets_no_estimate() -> None:
    assert soil.soil_warmth_c(None, FIRST, LAST) is None
    assert soil.soil_warmth_c(LAST, None, LAST) is None
    assert soil.first_warm_day(None, None, 10, 2026) is None


def test_a_warmth_the_soil_never_has_gets_no_date() -> None:
    assert soil.first_warm_day(LAST, FIRST, 45, 2026) is None


def test_a_southern_garden_warms_towards_its_own_summer() -> None:
    last, first = date(2026, 9, 20), date(2026, 5, 10)
    january = warmth(last, first, date(2027, 1, 15)).middle_c
    july = warmth(last, first, date(2026, 7, 15)).middle_c
    assert january > 15
    assert july < 10
    day = soil.first_warm_day(last, first, 16, 2026)
    assert day is not None
    assert date(2026, 9, 20) < day < date(2026, 12, 1)


@given(northern_last, northern_first, days)
def test_low_middle_and_high_stand_in_that_order(last: date, first: date, day: date) -> None:
    found = warmth(last, first, day)
    assert soil.COLDEST_C <= found.low_c <= found.middle_c <= found.high_c < 45


@given(northern_last, northern_first, st.integers(1, 150))
def test_the_middle_of_the_season_is_the_warmest(last: date, first: date, off: int) -> None:
    frost_free = frost_free_days(last, first)
    assert frost_free is not None
    peak = last + timedelta(days=frost_free // 2)
    top = warmth(last, first, peak).middle_c
    for day in (peak - timedelta(days=off), peak + timedelta(days=off)):
        assert warmth(last, first, day).middle_c <= top


@given(northern_last, northern_first, days)
def test_the_same_day_of_another_year_is_as_warm(last: date, first: date, day: date) -> None:
    this = warmth(last, first, day).middle_c
    other = warmth(in_year(last, 2019), in_year(first, 2041), in_year(day, 2024)).middle_c
    assert other == pytest.approx(this, abs=0.6)  # a day more or less in a leap year


@given(northern_last, northern_first, st.floats(2, 12), st.floats(0, 4))
def test_warmer_soil_is_never_reached_sooner(
    last: date, first: date, soil_c: float, warmer: float
) -> None:
    sooner = soil.first_warm_day(last, first, soil_c, 2026)
    later = soil.first_warm_day(last, first, soil_c + warmer, 2026)
    assert sooner is not None
    assert later is None or sooner <= later
