"""Day lengths of a whole year at Atlanta, and of chosen days on three continents' latitudes.

Sources: U.S. Naval Observatory, Astronomical Applications Department, Rise and Set for the Sun for
2007, Atlanta, Georgia (the page in the file beside this one, as carried in the tests of the ephem
astronomy package); the same department's times for 39° N and for Beijing in 2015, as asserted by
the tests of the pvlib package; I. Reda and A. Andreas, Solar Position Algorithm for Solar Radiation
Applications (National Renewable Energy Laboratory, TP-560-34302, 2003, revised 2008), times of
sunrise and sunset for 35° N and 35° S, as asserted there too. The printed pages of the last two
were not seen.

A day length here is sunset less sunrise. Times printed to the minute make it uncertain by one
minute; taking the sun's declination at Greenwich noon for the whole day adds up to one more.
"""

from datetime import date
from pathlib import Path

import pytest

from plantframe.sky.sun import day_length_hours

pytestmark = pytest.mark.published

ATLANTA_DEG = 33 + 46 / 60  # "N33 46" at the head of the page
PAGE = (Path(__file__).parent / "sunrise-atlanta-2007.txt").read_text(encoding="utf-8")


def minutes(printed: str) -> int:
    """Minutes of a clock time printed as hhmm."""
    return int(printed[:2]) * 60 + int(printed[2:])


def printed_year() -> dict[date, int]:
    """Minutes from rise to set of each day; a month's two times stand in eleven columns."""
    year = {}
    for line in PAGE.splitlines():
        if line[:2].isdigit():
            for month in range(12):
                times = line[4 + 11 * month : 13 + 11 * month].split()
                if times:
                    rise, sets = times
                    day = date(2007, month + 1, int(line[:2]))
                    year[day] = minutes(sets) - minutes(rise)
    return year


def test_the_page_holds_the_whole_year() -> None:
    assert len(printed_year()) == 365


def test_every_day_of_the_year_is_as_long_as_printed_within_two_minutes() -> None:
    for day, printed in printed_year().items():
        assert day_length_hours(ATLANTA_DEG, day) * 60 == pytest.approx(printed, abs=2), day


def test_the_year_has_no_lean_towards_longer_or_shorter_days() -> None:
    differences = [
        day_length_hours(ATLANTA_DEG, day) * 60 - printed for day, printed in printed_year().items()
    ]
    assert sum(differences) / len(differences) == pytest.approx(0, abs=0.2)


# latitude, date, sunrise, sunset as printed (hour, minute, second)
ELSEWHERE = [
    (39.0, date(2015, 1, 2), (7, 19, 0), (16, 49, 0)),
    (39.0, date(2015, 4, 2), (5, 43, 0), (18, 24, 0)),
    (39.0, date(2015, 8, 2), (5, 1, 0), (19, 10, 0)),
    (39.0, date(2015, 12, 2), (7, 1, 0), (16, 38, 0)),
    (39.917, date(2015, 1, 2), (7, 36, 0), (17, 0, 0)),
    (39.917, date(2015, 4, 2), (5, 58, 0), (18, 39, 0)),
    (39.917, date(2015, 8, 2), (5, 13, 0), (19, 28, 0)),
    (39.917, date(2015, 12, 2), (7, 17, 0), (16, 50, 0)),
    (35.0, date(1994, 1, 2), (7, 8, 12), (16, 59, 55)),
    (-35.0, date(1996, 7, 5), (7, 8, 15), (17, 1, 4)),
    (-35.0, date(2004, 12, 4), (4, 38, 57), (19, 2, 2)),
]


@pytest.mark.parametrize(("latitude", "day", "rise", "sets"), ELSEWHERE)
def test_days_north_and_south_are_as_long_as_printed_within_two_minutes(
    latitude: float, day: date, rise: tuple[int, int, int], sets: tuple[int, int, int]
) -> None:
    def hours(time: tuple[int, int, int]) -> float:
        return time[0] + time[1] / 60 + time[2] / 3600

    found = day_length_hours(latitude, day)
    assert found * 60 == pytest.approx((hours(sets) - hours(rise)) * 60, abs=2)
