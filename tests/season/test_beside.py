"""What stands beside what, read from either side."""

from __future__ import annotations

from datetime import date

from plantframe.answers.answers import answers_to
from plantframe.season.beside import apart_deg, beside

PLAN = """garden Barn End, 2027
  place 52 N, 1 W
hedge Holly Hedge, 3 m high, 5 m south of Seed Box
wall Barn Wall, 3 m high, faces west, brick
cover Seed Box, cold frame, 4 m west of Barn Wall
  lights 4
bed Far Bed, 1 m x 4 m
"""


def _around(name: str) -> dict[str, tuple[float, float | None]]:
    plan = answers_to(PLAN, date(2026, 11, 25)).plan
    return {one.thing.name: (one.bearing_deg, one.distance_m) for one in beside(plan, name)}


def test_a_hedge_south_of_the_box_is_seen_to_the_south() -> None:
    assert _around("Seed Box")["Holly Hedge"] == (180.0, 5.0)


def test_a_box_west_of_a_wall_has_the_wall_to_its_east() -> None:
    assert _around("Seed Box")["Barn Wall"] == (90.0, 4.0)


def test_the_wall_has_the_box_to_its_west() -> None:
    assert _around("Barn Wall") == {"Seed Box": (270.0, 4.0)}


def test_what_nobody_places_is_beside_nothing() -> None:
    assert _around("Far Bed") == {}
    assert _around("No Such Bed") == {}


def test_the_angle_between_two_bearings_goes_the_short_way_round() -> None:
    assert apart_deg(350.0, 20.0) == 30.0
    assert apart_deg(0.0, 180.0) == 180.0
