"""A wall has the sun it says, else the sun the sky gives it."""

from __future__ import annotations

from datetime import date

import pytest

from plantframe.language.files import read_input
from plantframe.plan.building import build
from plantframe.season.season import Season
from plantframe.season.sunlight import wall_sun_h

TODAY = date(2026, 11, 25)


def sun(place: str, wall: str) -> tuple[float, float] | None:
    plan, _ = build(
        read_input(f"garden Fold End, 2027\n  place {place}\nwall Barn, {wall}\n"), TODAY
    )
    return wall_sun_h(plan.things["Barn"], plan.garden)


def test_a_wall_that_says_its_hours_is_believed() -> None:
    assert sun("52 N, 1 W", "faces north\n  sun 7 h") == (7.0, 7.0)


@pytest.mark.parametrize(("place", "pole"), [("52 N, 1 W", "north"), ("38 S, 145 E", "south")])
def test_a_wall_that_faces_the_pole_sees_the_sun_only_round_midsummer(
    place: str, pole: str
) -> None:
    low, high = sun(place, f"faces {pole}") or (9.0, 9.0)
    assert low == pytest.approx(0.0, abs=0.2)
    assert high < 5.0


@pytest.mark.parametrize(("place", "sunny"), [("52 N, 1 W", "south"), ("38 S, 145 E", "north")])
def test_a_wall_that_faces_the_noon_sun_has_sun_most_of_the_day(place: str, sunny: str) -> None:
    low, _ = sun(place, f"faces {sunny}") or (0.0, 0.0)
    assert low > 8.0


def test_a_wall_that_faces_east_has_the_morning() -> None:
    low, high = sun("45 N, 73 W", "faces east") or (0.0, 0.0)
    assert 5.5 < low <= high < 7.0


def test_a_wall_on_the_west_side_looks_east() -> None:
    assert sun("45 N, 73 W", "on the west side") == sun("45 N, 73 W", "faces east")


def test_nothing_is_said_of_a_wall_that_does_not_say_which_way_it_faces() -> None:
    assert sun("52 N, 1 W", "3 m high") is None


def test_a_frame_on_a_wall_has_the_walls_sun() -> None:
    text = (
        "garden Fold End, 2027\n  place 52 N, 1 W\nwall Barn, faces north\n"
        "frame Blue Lattice, lattice, on Barn\n  size 2 m x 2 m\n"
    )
    plan, _ = build(read_input(text), TODAY)
    hours = Season(plan, TODAY).frames["Blue Lattice"].sun_h
    assert hours is not None
    assert hours[1] < 5.0
