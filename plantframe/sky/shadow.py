"""Where shade falls and how long the sun reaches a spot, a wall, a bed beside a row.

Ground is level and things that cast shade are solid: a net in leaf lets some light through, so its
shade is at most what is said here. Times are by the sun, bearings by the compass (see `sun`).
"""

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import date

from plantframe.sky.sun import CENTRE_ON_HORIZON_DEG, day_length_hours, towards_sun

# A day's sun is looked at this many times, evenly, from rise to set: 4 minutes apart at midsummer
# in middle latitudes, at most 6 where it never sets.
_LOOKS = 240


@dataclass(frozen=True)
class Obstacle:
    """A straight, level-topped thing that stands in the sun's way: wall, hedge, row, fence.

    height_m      of its top above the spot that is looked at
    distance_m    from the spot to its face, square to the face; 0 is at its very foot
    bearing_deg   compass bearing from the spot to the face, square to the face
    left_m        how far it runs to the left of that square line, seen from the spot
    right_m       how far to the right; a thing that lies all to one side has one of them negative
    """

    height_m: float
    distance_m: float
    bearing_deg: float
    left_m: float = math.inf
    right_m: float = math.inf

    def __post_init__(self) -> None:
        if not self.distance_m >= 0.0:
            raise ValueError(f"a distance is not less than nothing: {self.distance_m:g} m")
        if not self.left_m + self.right_m >= 0.0:
            raise ValueError("a thing cannot end before it begins")


@dataclass(frozen=True)
class RowBeside:
    """A straight row or frame that runs the length of a bed, and the strip of bed beside it.

    height_m       of the row
    side_deg       compass bearing from the row to the bed, square to the row
    gap_m          clear ground from the row's foot to the near edge of the strip
    strip_m        width of the strip, square to the row
    """

    height_m: float
    side_deg: float
    gap_m: float
    strip_m: float

    def __post_init__(self) -> None:
        if not self.strip_m > 0.0:
            raise ValueError(f"a strip of bed has some width, not {self.strip_m:g} m")


def shadow_ratio(latitude_deg: float, day: date, sun_time_hours: float) -> float:
    """Length of a shadow on level ground as a multiple of the height that throws it.

    latitude_deg     -90 to 90, north positive
    day              the date
    sun_time_hours   hour by the sun, 0 to 24

    Infinite when the sun is on or below the horizon. Times the height of a hedge it is also the
    distance at which a cold frame begins to get that sun.

    Raises ValueError for a latitude beyond the poles.
    Source: geometry, cotangent of the sun's height.
    """
    east, north, up = towards_sun(latitude_deg, day, sun_time_hours)
    return math.hypot(east, north) / up if up > 0.0 else math.inf


def shadow_bearing_deg(latitude_deg: float, day: date, sun_time_hours: float) -> float | None:
    """Compass bearing in which shadows point, 0 to 360; None when the sun is not up.

    Arguments as for `shadow_ratio`. Source: geometry, the bearing opposite the sun's.
    """
    east, north, up = towards_sun(latitude_deg, day, sun_time_hours)
    return math.degrees(math.atan2(-east, -north)) % 360.0 if up > 0.0 else None


def is_shaded(obstacle: Obstacle, latitude_deg: float, day: date, sun_time_hours: float) -> bool:
    """Whether an obstacle keeps the sun's centre from a spot; a sun that is down shades all.

    Time and place as for `shadow_ratio`. Source: geometry.
    """
    east, north, up = towards_sun(latitude_deg, day, sun_time_hours)
    return up <= 0.0 or _hides(obstacle, east, north, up)


def ground_sun_hours(latitude_deg: float, day: date, obstacles: Iterable[Obstacle] = ()) -> float:
    """Hours of direct sun a spot of level ground could get under a clear sky.

    latitude_deg   -90 to 90, north positive
    day            the date
    obstacles      what stands round the spot; at the foot of a hedge, one at distance 0

    Raises ValueError for a latitude beyond the poles.
    Source: geometry, looked at every few minutes; good to about six.
    """
    around = tuple(obstacles)
    return _sun_hours(
        latitude_deg,
        day,
        lambda east, north, up: not any(_hides(one, east, north, up) for one in around),
    )


def wall_sun_hours(
    latitude_deg: float, day: date, faces_deg: float, obstacles: Iterable[Obstacle] = ()
) -> float:
    """Hours of direct sun on an upright wall under a clear sky.

    latitude_deg   -90 to 90, north positive
    day            the date
    faces_deg      compass bearing the wall looks towards: 270 for one that faces west, which
                   stands on the east side of whatever it looks over
    obstacles      what stands before the wall; their heights count from the spot on the wall

    Raises ValueError for a latitude beyond the poles.
    Source: geometry, looked at every few minutes; good to about six.
    """
    facing_east = math.sin(math.radians(faces_deg))
    facing_north = math.cos(math.radians(faces_deg))
    before = tuple(obstacles)
    return _sun_hours(
        latitude_deg,
        day,
        lambda east, north, up: (
            east * facing_east + north * facing_north > 0.0
            and not any(_hides(one, east, north, up) for one in before)
        ),
    )


def row_shade_width_m(
    height_m: float, side_deg: float, latitude_deg: float, day: date, sun_time_hours: float
) -> float:
    """Width of the strip of ground in a long row's shade, on one side of it.

    height_m    of the row
    side_deg    compass bearing from the row to the side asked about, square to the row
    latitude_deg, day, sun_time_hours   as for `shadow_ratio`

    0 when the shade falls on the other side, infinite when the sun is not up.
    Source: geometry of a long row; a short one shades no wider.
    """
    east, north, up = towards_sun(latitude_deg, day, sun_time_hours)
    if up <= 0.0:
        return math.inf
    side = math.radians(side_deg)
    away = -(east * math.sin(side) + north * math.cos(side))
    return height_m * max(0.0, away) / up


def shaded_share(row: RowBeside, latitude_deg: float, day: date, sun_time_hours: float) -> float:
    """Share, 0 to 1, of the strip beside a row that lies in the row's shade.

    Time and place as for `shadow_ratio`; 1 when the sun is not up. Source: geometry.
    """
    width = row_shade_width_m(row.height_m, row.side_deg, latitude_deg, day, sun_time_hours)
    return max(0.0, min(1.0, (width - row.gap_m) / row.strip_m))


def strip_shaded_hours(
    row: RowBeside,
    latitude_deg: float,
    day: date,
    more_than_share: float = 1 / 3,
    from_hours: float = 9.0,
    to_hours: float = 15.0,
) -> float:
    """Hours, between two hours of sun time, for which a row shades more than a share of a strip.

    row                    the row and the strip of bed beside it
    latitude_deg, day      as for `shadow_ratio`
    more_than_share        0 to 1
    from_hours, to_hours   the part of the day that counts; the middle six hours of it unless said

    Source: geometry, to a few minutes. The hours that count are common practice, no source.
    """
    step = (to_hours - from_hours) / _LOOKS
    return step * sum(
        shaded_share(row, latitude_deg, day, from_hours + (look + 0.5) * step) > more_than_share
        for look in range(_LOOKS)
    )


def _sun_hours(
    latitude_deg: float, day: date, reaches: Callable[[float, float, float], bool]
) -> float:
    """Hours between sunrise and sunset at which the sun, so far east, north and up, reaches."""
    length = day_length_hours(latitude_deg, day, CENTRE_ON_HORIZON_DEG)
    step = length / _LOOKS
    begins = 12.0 - length / 2.0
    return step * sum(
        reaches(*towards_sun(latitude_deg, day, begins + (look + 0.5) * step))
        for look in range(_LOOKS)
    )


def _hides(obstacle: Obstacle, east: float, north: float, up: float) -> bool:
    """Whether the obstacle stands between the spot and a sun in that direction."""
    bearing = math.radians(obstacle.bearing_deg)
    towards = east * math.sin(bearing) + north * math.cos(bearing)
    if towards <= 0.0:
        return False
    rightward = east * math.cos(bearing) - north * math.sin(bearing)
    # How far along the ray, in units of the vector, until it meets the plane of the face.
    reach = obstacle.distance_m / towards
    return (
        up * reach < obstacle.height_m and -obstacle.left_m <= rightward * reach <= obstacle.right_m
    )
