"""Where the sun stands, how long a day is, and when the year is light enough to grow by.

Latitude is in degrees, north positive, south negative. Time is by the sun: 12 is the moment the
sun is highest, whatever the clock says. Bearings are compass bearings: north 0, east 90, south
180, west 270. Heights of the sun are geometric, without the bending of light near the horizon;
where a rule of an almanac includes that bending, the horizon it uses is named below.
"""

import math
from dataclasses import dataclass
from datetime import date, timedelta
from typing import TypeAlias

# Height of the sun's centre at the moments people mean by the start and end of a day.
# Source: U.S. Naval Observatory, Astronomical Applications Department, definitions of rise, set
# and twilight: 34' for the bending of light and 16' for half the sun's face; 6° for civil twilight.
# The figures are from memory; a year of that department's printed times bears out the first two.
CENTRE_ON_HORIZON_DEG = 0.0
SUNRISE_DEG = -50 / 60
CIVIL_TWILIGHT_DEG = -6.0

# Shares of a step one long towards the sun: east, north, up.
Direction: TypeAlias = tuple[float, float, float]

_J2000_NOON = date(2000, 1, 1).toordinal()


@dataclass(frozen=True)
class LightSeason:
    """The stretch of the year whose days are longer than some length.

    first, last   its first and last day; south of the equator it runs over the new year
    all_year      no day of the year falls short (first and last are then a year apart)
    """

    first: date
    last: date
    all_year: bool


def declination_deg(day: date, sun_time_hours: float = 12.0) -> float:
    """Latitude over which the sun stands overhead, north positive.

    day              the date
    sun_time_hours   hour of that day by the sun, 0 to 24

    The hour is taken as Greenwich's, because a garden's latitude alone does not give its
    longitude; half the world away that costs 0.2° in March and September, less otherwise.

    Source: J. J. Michalsky, The Astronomical Almanac's algorithm for approximate solar position
    (1950-2050), Solar Energy 40(3), 1988: good to 0.01° in those years.
    """
    days = day.toordinal() - _J2000_NOON + (sun_time_hours - 12.0) / 24.0
    mean_longitude = math.radians(280.460 + 0.9856474 * days)
    anomaly = math.radians(357.528 + 0.9856003 * days)
    longitude = mean_longitude + math.radians(
        1.915 * math.sin(anomaly) + 0.020 * math.sin(2 * anomaly)
    )
    obliquity = math.radians(23.439 - 0.0000004 * days)
    return math.degrees(math.asin(math.sin(obliquity) * math.sin(longitude)))


def altitude_deg(latitude_deg: float, day: date, sun_time_hours: float) -> float:
    """Height of the sun's centre above the horizon, below it negative.

    latitude_deg     -90 to 90, north positive
    day              the date
    sun_time_hours   hour by the sun, 0 to 24

    Raises ValueError for a latitude beyond the poles.
    Source: spherical trigonometry (the altitude equation of any handbook of solar energy).
    """
    _, _, up = _towards_sun(latitude_deg, declination_deg(day, sun_time_hours), sun_time_hours)
    return math.degrees(math.asin(up))


def azimuth_deg(latitude_deg: float, day: date, sun_time_hours: float) -> float:
    """Compass bearing of the sun, 0 to 360.

    Arguments as for `altitude_deg`. At a pole every direction is the same; the bearing then
    counts from the meridian whose noon it is. A sun straight overhead has no bearing of its own.

    Raises ValueError for a latitude beyond the poles.
    Source: spherical trigonometry.
    """
    east, north, _ = _towards_sun(
        latitude_deg, declination_deg(day, sun_time_hours), sun_time_hours
    )
    return math.degrees(math.atan2(east, north)) % 360.0


def noon_altitude_deg(latitude_deg: float, day: date) -> float:
    """Height of the sun at noon by the sun, the highest of the day.

    Source: as `altitude_deg`.
    """
    return altitude_deg(latitude_deg, day, 12.0)


def noon_azimuth_deg(latitude_deg: float, day: date) -> float:
    """Bearing of the noon sun: 180 where it stands in the south, 0 where in the north.

    Between the tropics it changes sides twice a year, so the date matters there.
    Source: geometry, latitude against declination.
    """
    return 180.0 if _checked(latitude_deg) >= declination_deg(day) else 0.0


def day_length_hours(latitude_deg: float, day: date, horizon_deg: float = SUNRISE_DEG) -> float:
    """Time the sun spends above a horizon, 0 (it never rises) to 24 (it never sets).

    latitude_deg   -90 to 90, north positive
    day            the date
    horizon_deg    height of the sun's centre that counts as rising: SUNRISE_DEG as almanacs
                   print it, CENTRE_ON_HORIZON_DEG for bare geometry, CIVIL_TWILIGHT_DEG for
                   light enough to work by

    The noon declination serves for the whole day: within two minutes of printed tables at middle
    latitudes, several more near the polar circles in the weeks when the day changes fastest.

    Raises ValueError for a latitude beyond the poles.
    Source: the sunrise equation (spherical trigonometry).
    """
    latitude = math.radians(_checked(latitude_deg))
    declination = math.radians(declination_deg(day))
    always = math.sin(latitude) * math.sin(declination)
    swing = math.cos(latitude) * math.cos(declination)
    wanted = math.sin(math.radians(horizon_deg)) - always
    if wanted >= swing:
        return 0.0
    if wanted <= -swing:
        return 24.0
    return math.degrees(math.acos(wanted / swing)) * 2.0 / 15.0


def sunrise_sun_time_hours(
    latitude_deg: float, day: date, horizon_deg: float = SUNRISE_DEG
) -> float | None:
    """Hour by the sun at which it rises; it sets as long after noon as it rose before.

    Arguments as for `day_length_hours`. None on a day when it does not rise or does not set.
    Source: as `day_length_hours`.
    """
    length = day_length_hours(latitude_deg, day, horizon_deg)
    if length in {0.0, 24.0}:
        return None
    return 12.0 - length / 2.0


def sunrise_azimuth_deg(
    latitude_deg: float, day: date, horizon_deg: float = SUNRISE_DEG
) -> float | None:
    """Compass bearing of the rising sun; it sets at 360 less that.

    Arguments as for `day_length_hours`. None on a day when it does not rise or does not set.
    Source: as `day_length_hours`.
    """
    rises = sunrise_sun_time_hours(latitude_deg, day, horizon_deg)
    if rises is None:
        return None
    east, north, _ = _towards_sun(latitude_deg, declination_deg(day), rises)
    return math.degrees(math.atan2(east, north)) % 360.0


def light_season(
    latitude_deg: float, hours: float, year: int, horizon_deg: float = SUNRISE_DEG
) -> LightSeason | None:
    """First and last day of the season whose days are longer than so many hours.

    latitude_deg   -90 to 90, north positive
    hours          length of day to be passed; ten hours is the usual mark for winter salads
                   under cover (common practice, no source)
    year           the year in which the season begins: a southern one begins in the second
                   half of that year and ends in the next
    horizon_deg    as for `day_length_hours`

    None where no day of the year is that long. Source: as `day_length_hours`.
    """
    shortest = date(year - 1, 12, 21) if latitude_deg >= 0 else date(year, 6, 21)
    days = [shortest + timedelta(days=n) for n in range(366)]
    light = [day for day in days if day_length_hours(latitude_deg, day, horizon_deg) > hours]
    if not light:
        return None
    return LightSeason(light[0], light[-1], all_year=len(light) == len(days))


def towards_sun(latitude_deg: float, day: date, sun_time_hours: float) -> Direction:
    """Direction of the sun as a unit vector: east, north, up.

    Arguments as for `altitude_deg`. The sun is above the horizon where the third is positive.
    Source: spherical trigonometry.
    """
    return _towards_sun(latitude_deg, declination_deg(day, sun_time_hours), sun_time_hours)


def _towards_sun(latitude_deg: float, declination: float, sun_time_hours: float) -> Direction:
    latitude = math.radians(_checked(latitude_deg))
    over = math.radians(declination)
    turned = math.radians(15.0 * (sun_time_hours - 12.0))
    east = -math.cos(over) * math.sin(turned)
    north = math.sin(over) * math.cos(latitude) - math.cos(over) * math.sin(latitude) * math.cos(
        turned
    )
    up = math.sin(over) * math.sin(latitude) + math.cos(over) * math.cos(latitude) * math.cos(
        turned
    )
    return east, north, max(-1.0, min(1.0, up))


def _checked(latitude_deg: float) -> float:
    if not -90.0 <= latitude_deg <= 90.0:
        raise ValueError(f"a latitude lies between 90 south and 90 north, not at {latitude_deg:g}")
    return latitude_deg
