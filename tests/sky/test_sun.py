"""The sun's place, the length of days: by hand, by symmetry and by direction."""

import math
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.sky import sun

latitudes = st.floats(-90, 90)
lived_in = st.floats(-65, 65)
days = st.dates(date(1990, 1, 1), date(2049, 12, 31))
hours = st.floats(0, 24)
MIDSUMMER, MIDWINTER, EQUINOX = date(2026, 6, 21), date(2026, 12, 21), date(2026, 3, 20)


def apart_deg(one: float, other: float) -> float:
    return abs((one - other + 180) % 360 - 180)


def test_noon_sun_stands_at_90_less_latitude_plus_declination() -> None:
    # by hand: 90 - 44 -+ 23.44
    assert sun.noon_altitude_deg(44, MIDWINTER) == pytest.approx(22.56, abs=0.02)
    assert sun.noon_altitude_deg(44, MIDSUMMER) == pytest.approx(69.44, abs=0.02)
    assert sun.noon_altitude_deg(-37, MIDSUMMER) == pytest.approx(29.56, abs=0.02)


def test_the_sun_is_overhead_at_noon_on_the_tropic_at_midsummer() -> None:
    assert sun.noon_altitude_deg(23.44, MIDSUMMER) == pytest.approx(90, abs=0.02)
    assert sun.noon_altitude_deg(-23.44, MIDWINTER) == pytest.approx(90, abs=0.02)


def test_at_the_equinox_the_sun_rises_due_east_and_the_day_is_twelve_hours() -> None:
    for latitude in (-55, -20, 0, 35, 60):
        rises = sun.sunrise_azimuth_deg(latitude, EQUINOX, sun.CENTRE_ON_HORIZON_DEG)
        assert rises == pytest.approx(90, abs=0.3)
        length = sun.day_length_hours(latitude, EQUINOX, sun.CENTRE_ON_HORIZON_DEG)
        assert length == pytest.approx(12, abs=0.05)


def test_midsummer_sun_rises_well_north_of_east() -> None:
    # by hand: cos(bearing) = sin 23.44 / cos 44 for the sun's centre on a level horizon
    expected = math.degrees(math.acos(math.sin(math.radians(23.44)) / math.cos(math.radians(44))))
    found = sun.sunrise_azimuth_deg(44, MIDSUMMER, sun.CENTRE_ON_HORIZON_DEG)
    assert found == pytest.approx(expected, abs=0.02)


def test_at_the_poles_the_sun_circles_at_the_height_of_its_declination() -> None:
    for hour in (0.0, 5.0, 12.0, 20.0):
        height = sun.altitude_deg(90, MIDSUMMER, hour)
        assert height == pytest.approx(sun.declination_deg(MIDSUMMER, hour), abs=1e-6)
    assert sun.day_length_hours(90, MIDSUMMER) == 24
    assert sun.day_length_hours(90, MIDWINTER) == 0
    assert sun.day_length_hours(-90, MIDWINTER) == 24
    assert sun.sunrise_azimuth_deg(90, MIDSUMMER) is None
    assert sun.sunrise_sun_time_hours(-90, MIDSUMMER) is None


def test_inside_the_polar_circle_the_sun_stays_up_at_midsummer_and_down_at_midwinter() -> None:
    assert sun.day_length_hours(70, MIDSUMMER) == 24
    assert sun.day_length_hours(70, MIDWINTER) == 0
    assert 0 < sun.day_length_hours(66, MIDWINTER) < 4


def test_in_the_tropics_the_noon_sun_changes_sides() -> None:
    assert sun.noon_azimuth_deg(10, MIDSUMMER) == 0
    assert sun.noon_azimuth_deg(10, MIDWINTER) == 180
    assert sun.noon_azimuth_deg(44, MIDSUMMER) == 180
    assert sun.noon_azimuth_deg(-37, MIDWINTER) == 0


def test_morning_sun_is_in_the_east_and_afternoon_sun_in_the_west() -> None:
    for latitude in (-50, -10, 10, 50):
        assert 0 < sun.azimuth_deg(latitude, EQUINOX, 9) < 180
        assert 180 < sun.azimuth_deg(latitude, EQUINOX, 15) < 360


def test_ten_hours_of_light_are_gone_for_a_quarter_of_the_year_at_44_north() -> None:
    season = sun.light_season(44, 10, 2026)
    assert season is not None
    assert not season.all_year
    # by hand: cos 75° = 0.2588 = (sin 0.8333° + sin 44° sin d) / (-cos 44° cos d) near d = -16.1°,
    # which the sun passes about 4 February and 6 November
    assert abs((season.first - date(2026, 2, 4)).days) <= 1
    assert abs((season.last - date(2026, 11, 6)).days) <= 1


def test_a_southern_season_of_light_runs_over_the_new_year() -> None:
    season = sun.light_season(-37, 10, 2026)
    assert season is not None
    assert season.first.year == 2026
    assert season.last.year == 2027
    assert season.first.month == 7
    assert season.last.month == 5


def test_the_tropics_have_ten_hours_all_year_and_nowhere_has_twenty_five() -> None:
    season = sun.light_season(10, 10, 2026)
    assert season is not None
    assert season.all_year
    assert sun.light_season(90, 25, 2026) is None


@given(lived_in, st.floats(9, 11), st.integers(1990, 2049))
def test_a_season_of_light_begins_and_ends_where_the_days_pass_the_mark(
    latitude: float, mark: float, year: int
) -> None:
    season = sun.light_season(latitude, mark, year)
    assert season is not None
    assert sun.day_length_hours(latitude, season.first) > mark
    assert sun.day_length_hours(latitude, season.last) > mark
    if not season.all_year:
        one = timedelta(days=1)
        assert sun.day_length_hours(latitude, season.first - one) <= mark
        assert sun.day_length_hours(latitude, season.last + one) <= mark


@given(latitudes, days, hours)
def test_noon_is_the_highest_of_the_day(latitude: float, day: date, hour: float) -> None:
    # a declination that changes through the day may lift another hour by a few hundredths
    noon = sun.noon_altitude_deg(latitude, day)
    assert sun.altitude_deg(latitude, day, hour) <= noon + 0.25


@given(latitudes, days, hours)
def test_the_sun_is_never_higher_than_overhead_and_its_bearing_is_on_the_compass(
    latitude: float, day: date, hour: float
) -> None:
    assert -90 <= sun.altitude_deg(latitude, day, hour) <= 90
    assert 0 <= sun.azimuth_deg(latitude, day, hour) <= 360
    assert math.hypot(*sun.towards_sun(latitude, day, hour)) == pytest.approx(1)


@given(lived_in, days)
def test_the_other_hemisphere_has_the_same_day_half_a_year_on(latitude: float, day: date) -> None:
    # within what the unequal halves of the year allow: about a degree and a half of declination
    half_a_year_on = day + timedelta(days=183)
    here = sun.day_length_hours(latitude, day, sun.CENTRE_ON_HORIZON_DEG)
    there = sun.day_length_hours(-latitude, half_a_year_on, sun.CENTRE_ON_HORIZON_DEG)
    assert there == pytest.approx(here, abs=1.2)
    assert sun.noon_altitude_deg(-latitude, half_a_year_on) == pytest.approx(
        sun.noon_altitude_deg(latitude, day), abs=2.2
    )


@given(latitudes, days)
def test_light_and_darkness_of_opposite_latitudes_fill_one_day(latitude: float, day: date) -> None:
    here = sun.day_length_hours(latitude, day, sun.CENTRE_ON_HORIZON_DEG)
    opposite = sun.day_length_hours(-latitude, day, sun.CENTRE_ON_HORIZON_DEG)
    assert here + opposite == pytest.approx(24)


@given(latitudes, days)
def test_a_lower_horizon_never_makes_a_shorter_day(latitude: float, day: date) -> None:
    bare = sun.day_length_hours(latitude, day, sun.CENTRE_ON_HORIZON_DEG)
    almanac = sun.day_length_hours(latitude, day, sun.SUNRISE_DEG)
    twilight = sun.day_length_hours(latitude, day, sun.CIVIL_TWILIGHT_DEG)
    assert 0 <= bare <= almanac <= twilight <= 24


@given(lived_in, days)
def test_the_sun_is_on_the_horizon_when_it_is_said_to_rise(latitude: float, day: date) -> None:
    rises = sun.sunrise_sun_time_hours(latitude, day)
    assert rises is not None
    bearing = sun.sunrise_azimuth_deg(latitude, day)
    assert bearing is not None
    # the declination moves by 0.2° at most between sunrise and the noon it was taken at
    assert sun.altitude_deg(latitude, day, rises) == pytest.approx(sun.SUNRISE_DEG, abs=0.25)
    assert apart_deg(sun.azimuth_deg(latitude, day, rises), bearing) < 0.6
    assert bearing < 180


@given(st.floats(10, 60), days)
def test_further_north_summer_days_are_longer_and_winter_days_shorter(
    latitude: float, day: date
) -> None:
    further = sun.day_length_hours(latitude + 3, day, sun.CENTRE_ON_HORIZON_DEG)
    here = sun.day_length_hours(latitude, day, sun.CENTRE_ON_HORIZON_DEG)
    if sun.declination_deg(day) > 0:
        assert further > here
    else:
        assert further <= here


@pytest.mark.parametrize("latitude", [90.1, -91, math.nan, math.inf])
def test_a_latitude_beyond_the_poles_is_refused(latitude: float) -> None:
    with pytest.raises(ValueError, match="latitude lies between"):
        sun.altitude_deg(latitude, MIDSUMMER, 12)
    with pytest.raises(ValueError, match="latitude lies between"):
        sun.day_length_hours(latitude, MIDSUMMER)
    with pytest.raises(ValueError, match="latitude lies between"):
        sun.noon_azimuth_deg(latitude, MIDSUMMER)
