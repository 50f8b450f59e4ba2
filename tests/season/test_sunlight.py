"""A wall has the sun it says, else the sun the sky gives it."""

from __future__ import annotations

from datetime import date

import pytest

from plantframe.language.files import read_input
from plantframe.plan.building import build
from plantframe.season.season import Season
from plantframe.season.sunlight import wall_sun_h
from plantframe.sky.sun import day_length_hours

TODAY = date(2026, 11, 25)
DAYS = (date(2027, 5, 1), date(2027, 6, 21), date(2027, 9, 1))


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


def bed_sun(around: str, place: str = "52 N, 1 W", runs: str = "east-west") -> tuple[float, float]:
    text = f"garden Hill, 2027\n  place {place}\nbed Low Bed, 1.2 m x 5 m, runs {runs}\n{around}\n"
    plan, _ = build(read_input(text), TODAY)
    found = Season(plan, TODAY).beds["Low Bed"].sun_h
    assert found is not None
    return found


def test_a_hedge_on_the_suns_side_takes_the_middle_of_the_day() -> None:
    low, high = bed_sun("hedge Yew, 3 m high, 1 m south of Low Bed")
    _, far = bed_sun("hedge Yew, 3 m high, 12 m south of Low Bed")
    assert low < high < far
    assert low < 7.0


def test_a_hedge_on_the_far_side_takes_only_early_and_late_sun() -> None:
    north, _ = bed_sun("hedge Yew, 3 m high, 1 m north of Low Bed")
    south, _ = bed_sun("hedge Yew, 3 m high, 1 m south of Low Bed")
    assert north > south + 3


def test_south_of_the_equator_the_sunny_side_is_north() -> None:
    north, _ = bed_sun("hedge Yew, 3 m high, 1 m north of Low Bed", "38 S, 145 E")
    south, _ = bed_sun("hedge Yew, 3 m high, 1 m south of Low Bed", "38 S, 145 E")
    assert south > north + 1


def test_a_bed_has_no_more_sun_than_there_is_day() -> None:
    # The longest mean of the three days there can be: daylight of 1 May, 21 June and 1 September.
    longest = sum(day_length_hours(52, day) for day in DAYS) / 3
    assert bed_sun("hedge Box, 20 cm high, 5 m north of Low Bed")[1] <= longest


def test_a_short_hedge_takes_less_than_a_long_one() -> None:
    long, _ = bed_sun("hedge Yew, 3 m high, 1 m south of Low Bed")
    short, _ = bed_sun("hedge Yew, 3 m high, 2 m long, 1 m south of Low Bed")
    assert short > long


def test_a_high_hedge_at_its_foot_leaves_the_morning_or_the_evening() -> None:
    # By a hedge without end on the east side a spot at its foot has the afternoon: half the day.
    low, _ = bed_sun("hedge Yew, 30 m high, 0 m east of Low Bed", runs="north-south")
    half = sum(day_length_hours(52, day) for day in DAYS) / 6
    assert abs(low - half) < 0.5


def test_what_the_gardener_measured_outranks_the_sky() -> None:
    text = (
        "garden Hill, 2027\n  place 52 N, 1 W\nbed Low Bed, 1.2 m x 5 m\n  sun dappled\n"
        "hedge Yew, 3 m high, 1 m south of Low Bed\n"
    )
    plan, _ = build(read_input(text), TODAY)
    assert Season(plan, TODAY).beds["Low Bed"].sun_h == (3.0, 4.0)


def test_nobody_guesses_at_an_open_bed_or_a_hedge_of_no_height() -> None:
    for around in ("", "hedge Yew, 1 m south of Low Bed", "hedge Yew, 3 m high, south of Low Bed"):
        text = f"garden Hill, 2027\n  place 52 N, 1 W\nbed Low Bed, 1.2 m x 5 m\n{around}\n"
        plan, _ = build(read_input(text), TODAY)
        assert Season(plan, TODAY).beds["Low Bed"].sun_h is None


def test_a_frame_in_a_bed_under_a_hedge_has_the_beds_sun() -> None:
    text = (
        "garden Hill, 2027\n  place 52 N, 1 W\nbed Low Bed, 1.2 m x 5 m, runs east-west\n"
        "hedge Yew, 3 m high, 1 m south of Low Bed\nframe Net, net frame, in Low Bed\n"
    )
    plan, _ = build(read_input(text), TODAY)
    season = Season(plan, TODAY)
    assert season.frames["Net"].sun_h == season.beds["Low Bed"].sun_h
