"""Where the sun stands: printed declinations, seasons and one worked position.

Sources: U.S. Naval Observatory, Astronomical Applications Department: Apparent Geocentric Positions
of the Sun, 2007, and Earth's Seasons, 2000-2020, both as carried in the tests of the ephem
astronomy package. I. Reda and A. Andreas, Solar Position Algorithm for Solar Radiation Applications
(National Renewable Energy Laboratory, TP-560-34302, 2003, revised 2008), worked example for Golden,
Colorado, 17 October 2003, 12:30:30 mountain standard time; values as asserted by the tests of the
pvlib package, the report's page not seen.
"""

from datetime import date

import pytest

from plantframe.sky import shadow, sun

pytestmark = pytest.mark.published

# Date in 2007 (at 0 h, Greenwich), declination in degrees, minutes and seconds south.
DECLINATIONS_SOUTH = [
    ((9, 25), (0, 37, 7.31)),
    ((9, 26), (1, 0, 28.87)),
    ((9, 27), (1, 23, 50.31)),
    ((9, 28), (1, 47, 11.33)),
    ((9, 29), (2, 10, 31.63)),
    ((9, 30), (2, 33, 50.92)),
    ((10, 1), (2, 57, 8.86)),
    ((10, 2), (3, 20, 25.12)),
    ((10, 3), (3, 43, 39.35)),
    ((10, 4), (4, 6, 51.16)),
    ((10, 5), (4, 30, 0.20)),
    ((10, 6), (4, 53, 6.07)),
]

# Year: day, hour and minute (Greenwich) of the March equinox, June solstice, September
# equinox and December solstice.
SEASONS = {
    2000: ((20, 7, 35), (21, 1, 48), (22, 17, 27), (21, 13, 37)),
    2001: ((20, 13, 31), (21, 7, 38), (22, 23, 4), (21, 19, 21)),
    2002: ((20, 19, 16), (21, 13, 24), (23, 4, 55), (22, 1, 14)),
    2003: ((21, 1, 0), (21, 19, 10), (23, 10, 47), (22, 7, 4)),
    2004: ((20, 6, 49), (21, 0, 57), (22, 16, 30), (21, 12, 42)),
    2005: ((20, 12, 33), (21, 6, 46), (22, 22, 23), (21, 18, 35)),
    2006: ((20, 18, 26), (21, 12, 26), (23, 4, 3), (22, 0, 22)),
    2007: ((21, 0, 7), (21, 18, 6), (23, 9, 51), (22, 6, 8)),
    2008: ((20, 5, 48), (20, 23, 59), (22, 15, 44), (21, 12, 4)),
    2009: ((20, 11, 44), (21, 5, 45), (22, 21, 18), (21, 17, 47)),
    2010: ((20, 17, 32), (21, 11, 28), (23, 3, 9), (21, 23, 38)),
    2011: ((20, 23, 21), (21, 17, 16), (23, 9, 4), (22, 5, 30)),
    2012: ((20, 5, 14), (20, 23, 9), (22, 14, 49), (21, 11, 11)),
    2013: ((20, 11, 2), (21, 5, 4), (22, 20, 44), (21, 17, 11)),
    2014: ((20, 16, 57), (21, 10, 51), (23, 2, 29), (21, 23, 3)),
    2015: ((20, 22, 45), (21, 16, 38), (23, 8, 20), (22, 4, 48)),
    2016: ((20, 4, 30), (20, 22, 34), (22, 14, 21), (21, 10, 44)),
    2017: ((20, 10, 28), (21, 4, 24), (22, 20, 2), (21, 16, 28)),
    2018: ((20, 16, 15), (21, 10, 7), (23, 1, 54), (21, 22, 22)),
    2019: ((20, 21, 58), (21, 15, 54), (23, 7, 50), (22, 4, 19)),
    2020: ((20, 3, 49), (20, 21, 43), (22, 13, 30), (21, 10, 2)),
}


@pytest.mark.parametrize(("month_day", "printed"), DECLINATIONS_SOUTH)
def test_the_declination_is_as_printed_to_a_hundredth_of_a_degree(
    month_day: tuple[int, int], printed: tuple[int, int, float]
) -> None:
    degrees, minutes, seconds = printed
    expected = -(degrees + minutes / 60 + seconds / 3600)
    assert sun.declination_deg(date(2007, *month_day), 0.0) == pytest.approx(expected, abs=0.01)


@pytest.mark.parametrize("year", SEASONS)
def test_the_sun_crosses_the_equator_and_turns_when_printed(year: int) -> None:
    for month, (day, hour, minute) in zip((3, 6, 9, 12), SEASONS[year], strict=True):
        found = sun.declination_deg(date(year, month, day), hour + minute / 60)
        expected = {3: 0.0, 6: 23.44, 9: 0.0, 12: -23.44}[month]
        assert found == pytest.approx(expected, abs=0.01)


# The worked example. Hour angle and declination are the printed ones of the place, its height above
# the horizon without the bending of light is e0; azimuth is counted from north.
GOLDEN_DEG, GOLDEN_DAY = 39.742476, date(2003, 10, 17)
HOUR_ANGLE_DEG, DECLINATION_DEG = 11.10627, -9.316179
HEIGHT_DEG, AZIMUTH_DEG = 39.872046, 194.340241
SUN_TIME_HOURS = 12 + HOUR_ANGLE_DEG / 15
# The sum knows the date, not that this garden's noon is seven hours after Greenwich's: the sun
# moves 0.37° a day in October, 0.11° in those seven hours.
LONGITUDE_UNKNOWN_DEG = 0.12


def test_the_worked_position_comes_out_but_for_the_longitude() -> None:
    found = sun.declination_deg(GOLDEN_DAY, SUN_TIME_HOURS)
    assert found == pytest.approx(DECLINATION_DEG, abs=LONGITUDE_UNKNOWN_DEG)
    height = sun.altitude_deg(GOLDEN_DEG, GOLDEN_DAY, SUN_TIME_HOURS)
    assert height == pytest.approx(HEIGHT_DEG, abs=LONGITUDE_UNKNOWN_DEG)
    azimuth = sun.azimuth_deg(GOLDEN_DEG, GOLDEN_DAY, SUN_TIME_HOURS)
    assert azimuth == pytest.approx(AZIMUTH_DEG, abs=LONGITUDE_UNKNOWN_DEG)


def test_its_shadow_points_by_the_printed_angle_east_of_north() -> None:
    # the report's angle of the sun westward from south, 14.340241°, is the shadow's eastward from
    # north
    found = shadow.shadow_bearing_deg(GOLDEN_DEG, GOLDEN_DAY, SUN_TIME_HOURS)
    assert found == pytest.approx(14.340241, abs=LONGITUDE_UNKNOWN_DEG)
