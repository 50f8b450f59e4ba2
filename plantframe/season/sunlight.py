"""Hours of direct sun where the plan gives none but the sky can tell."""

from __future__ import annotations

import math
from datetime import date
from functools import lru_cache
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.language.slots import COMPASS
from plantframe.season.beside import beside

if TYPE_CHECKING:
    from collections.abc import Iterator

    from plantframe.plan.things import Bed, Garden, Plan, Thing
    from plantframe.sky.shadow import Obstacle

HIGH: Final = frozenset({"hedge", "wall", "house", "tree"})
# A spring, a midsummer and a late summer day of the north; half a year later in the south.
GROWING: Final = ((5, 1), (6, 21), (9, 1))
USUAL_WIDE_M: Final = 1.2


def wall_sun_h(wall: Thing | None, garden: Garden) -> tuple[float, float] | None:
    """Hours on a wall from spring to autumn: what it says itself, else what the sky gives it.

    The lesser and the mean of two days, equinox and midsummer: a wall that faces the pole sees the
    sun only round midsummer, early and late. Nothing that stands before the wall is reckoned with.
    None where the wall does not say which way it faces, or the garden not where it is.
    """
    if wall is None or wall.sun_h is not None:
        return wall.sun_h if wall else None
    faces, latitude = faces_deg(wall), garden.latitude
    if faces is None or latitude is None or not garden.year:
        return None
    return _wall_sun_h(faces, latitude, garden.year)


@lru_cache(maxsize=256)
def _wall_sun_h(faces_deg: float, latitude_deg: float, year: int) -> tuple[float, float]:
    """The same by the sky alone: reckoned once for each way a wall of the garden faces."""
    from plantframe.sky.shadow import wall_sun_hours

    midsummer = date(year, 6, 21) if latitude_deg >= 0 else date(year, 12, 21)
    equinox, summer = (
        wall_sun_hours(latitude_deg, day, faces_deg) for day in (date(year, 3, 21), midsummer)
    )
    mean = (equinox + summer) / 2
    return min(equinox, mean), mean


def bed_sun_h(plan: Plan, bed: Bed) -> tuple[float, float] | None:
    """Hours on a bed in the months crops stand, less what hedges, walls and trees beside it take.

    The mean of a spring, a midsummer and a late summer day, on the darkest and on the lightest
    part of the bed. None where the plan puts nothing high beside it, or not how high and how far:
    an open bed is for the gardener to judge.
    """
    latitude, year = plan.garden.latitude, plan.garden.year
    around = tuple(_around(plan, bed))
    if bed.sun_h is not None or latitude is None or not year or not around:
        return bed.sun_h
    from plantframe.sky.shadow import ground_sun_hours

    days = [_in_half(month, day, year, latitude) for month, day in GROWING]
    hours = []
    for east_m, north_m in _parts(bed):
        obstacles = [one.seen_from(east_m, north_m) for one in around]
        found = [ground_sun_hours(latitude, day, obstacles) for day in days]
        hours.append(sum(found) / len(found))
    return min(hours), max(hours)


@frozen
class _Around:
    """Something high beside a bed, as it is seen from the middle of the bed."""

    high_m: float
    bearing_deg: float
    away_m: float
    half_m: float

    def seen_from(self, east_m: float, north_m: float) -> Obstacle:
        """The same from a spot of the bed, so far east and north of its middle."""
        from plantframe.sky.shadow import Obstacle

        bearing = math.radians(self.bearing_deg)
        towards = east_m * math.sin(bearing) + north_m * math.cos(bearing)
        aside = east_m * math.cos(bearing) - north_m * math.sin(bearing)
        away = max(self.away_m - towards, 0.0)
        return Obstacle(
            self.high_m, away, self.bearing_deg, self.half_m + aside, self.half_m - aside
        )


def _around(plan: Plan, bed: Bed) -> Iterator[_Around]:
    """The hedges, walls, trees and the house whose height and distance the plan tells."""
    for found in beside(plan, bed.name):
        thing = found.thing
        high = getattr(thing, "high_m", None)
        if getattr(thing, "word", "") not in HIGH or high is None or found.distance_m is None:
            continue
        across = getattr(thing, "wide_m", None) if thing.word == "tree" else None
        half = (across or getattr(thing, "long_m", None) or math.inf) / 2
        away = found.distance_m + _reach_m(bed, found.bearing_deg)
        yield _Around(high, found.bearing_deg, away, half)
    for spot in bed.spots:
        wall = plan.things.get(spot.thing)
        if wall is None or spot.relation in COMPASS or wall.word != "wall" or wall.high_m is None:
            continue
        faces = faces_deg(wall)
        if faces is not None:
            bearing = (faces + 180.0) % 360.0
            away = (spot.distance_m or 0.0) + _reach_m(bed, bearing)
            yield _Around(wall.high_m, bearing, away, (wall.long_m or math.inf) / 2)


def _sides(bed: Bed) -> tuple[float, float]:
    """How far a bed reaches from east to west and from north to south, m."""
    wide, long = bed.width_m or USUAL_WIDE_M, bed.length_m or bed.width_m or USUAL_WIDE_M
    return (long, wide) if bed.runs == "east-west" else (wide, long)


def _reach_m(bed: Bed, bearing_deg: float) -> float:
    """From the middle of a bed to its edge in a direction."""
    east, north = _sides(bed)
    bearing = math.radians(bearing_deg)
    return (abs(math.sin(bearing)) * east + abs(math.cos(bearing)) * north) / 2


def _parts(bed: Bed) -> tuple[tuple[float, float], ...]:
    """The middle of a bed and of its four thirds, m east and north of its middle."""
    east, north = (side / 3 for side in _sides(bed))
    return (0.0, 0.0), (east, 0.0), (-east, 0.0), (0.0, north), (0.0, -north)


def _in_half(month: int, day: int, year: int, latitude: float) -> date:
    """A day of the growing season in that half of the world."""
    return date(year, month if latitude >= 0 else (month + 5) % 12 + 1, day)


def faces_deg(wall: Thing) -> float | None:
    """Compass bearing a wall looks towards; one on the west side of a garden looks east."""
    if wall.faces in COMPASS:
        return COMPASS[wall.faces]
    sides = [spot.part.removesuffix(" side") for spot in wall.spots if spot.part.endswith(" side")]
    found = next((COMPASS[side] for side in sides if side in COMPASS), None)
    return None if found is None else (found + 180.0) % 360.0
