"""Shade: a table worked by hand, school geometry, and the direction of every answer."""

import math
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.sky import shadow, sun
from plantframe.sky.shadow import Obstacle, RowBeside

MIDSUMMER, MIDWINTER, EQUINOX = date(2026, 6, 21), date(2026, 12, 21), date(2026, 3, 20)
SOUTH, WEST, NORTH, EAST = 180.0, 270.0, 0.0, 90.0

latitudes = st.floats(-65, 65)
days = st.dates(date(1990, 1, 1), date(2049, 12, 31))
daytime = st.floats(9, 15)
bearings = st.floats(0, 360)
heights = st.floats(0.1, 20)
distances = st.floats(0, 50)

# Shadow length as a multiple of height, worked by hand from 1 / tan(height of the sun): noon, and
# nine or fifteen hours by the sun. Two decimals of rounded inputs, hence the hundredth allowed.
WORKED_BY_HAND = [
    (35, date(2026, 4, 20), 0.43, 1.07),
    (35, date(2026, 6, 21), 0.20, 0.86),
    (35, date(2026, 9, 1), 0.51, 1.15),
    (35, date(2026, 10, 1), 0.79, 1.54),
    (35, date(2026, 12, 21), 1.63, None),
    (44, date(2026, 4, 20), 0.63, 1.21),
    (44, date(2026, 6, 21), 0.37, 0.90),
    (44, date(2026, 9, 1), 0.72, 1.33),
    (44, date(2026, 10, 1), 1.09, 1.89),
    (44, date(2026, 12, 21), 2.41, None),
    (52, date(2026, 4, 20), 0.85, 1.38),
    (52, date(2026, 6, 21), 0.54, 0.98),
    (52, date(2026, 9, 1), 0.96, 1.55),
    (52, date(2026, 10, 1), 1.45, 2.37),
    (52, date(2026, 12, 21), 3.85, None),
    (-37, date(2026, 3, 21), 0.76, 1.48),
    (-37, date(2026, 12, 21), 0.24, 0.86),
    (-37, date(2026, 6, 21), 1.76, None),
]


@pytest.mark.parametrize(("latitude", "day", "noon", "nine"), WORKED_BY_HAND)
def test_shadows_are_as_long_as_the_table_worked_by_hand(
    latitude: float, day: date, noon: float, nine: float | None
) -> None:
    assert shadow.shadow_ratio(latitude, day, 12) == pytest.approx(noon, abs=0.01)
    if nine is not None:
        assert shadow.shadow_ratio(latitude, day, 9) == pytest.approx(nine, abs=0.01)
        assert shadow.shadow_ratio(latitude, day, 15) == pytest.approx(nine, abs=0.01)


def test_a_bean_frame_of_two_metres_shades_as_far_as_geometry_says() -> None:
    # by hand at 44 north on 1 September: 2 × 0.72 at noon, 2 × 1.33 at nine
    day = date(2026, 9, 1)
    assert 2 * shadow.shadow_ratio(44, day, 12) == pytest.approx(1.44, abs=0.02)
    assert 2 * shadow.shadow_ratio(44, day, 9) == pytest.approx(2.66, abs=0.02)


def test_noon_shadows_point_north_in_the_north_and_south_in_the_south() -> None:
    north = shadow.shadow_bearing_deg(44, EQUINOX, 12)
    south = shadow.shadow_bearing_deg(-37, EQUINOX, 12)
    assert north is not None
    assert south is not None
    assert min(north, 360 - north) < 1e-6
    assert south == pytest.approx(180)


def test_morning_shadows_point_west() -> None:
    for latitude in (-37, 0, 44):
        morning = shadow.shadow_bearing_deg(latitude, EQUINOX, 8)
        assert morning is not None
        assert 180 < morning < 360


def test_a_sun_that_is_down_throws_no_shadow_and_lights_nothing() -> None:
    assert shadow.shadow_ratio(44, MIDWINTER, 2) == math.inf
    assert shadow.shadow_bearing_deg(44, MIDWINTER, 2) is None
    assert shadow.is_shaded(Obstacle(0.1, 50, NORTH), 44, MIDWINTER, 2)
    assert shadow.row_shade_width_m(2, NORTH, 44, MIDWINTER, 2) == math.inf
    assert shadow.ground_sun_hours(75, MIDWINTER) == 0
    assert shadow.wall_sun_hours(75, MIDWINTER, SOUTH) == 0


def test_a_hedge_to_the_south_takes_the_winter_sun_unless_it_is_far_enough_off() -> None:
    # by hand: noon sun 22.6° at 44 north, so a 3 m hedge reaches 7.2 m
    assert shadow.is_shaded(Obstacle(3, 5, SOUTH), 44, MIDWINTER, 12)
    assert not shadow.is_shaded(Obstacle(3, 7.3, SOUTH), 44, MIDWINTER, 12)
    assert shadow.ground_sun_hours(44, MIDWINTER, [Obstacle(3, 5, SOUTH)]) == 0
    assert shadow.ground_sun_hours(44, MIDWINTER, [Obstacle(3, 7.3, SOUTH)]) > 0


def test_a_hedge_to_the_north_takes_nothing_in_winter() -> None:
    open_ground = shadow.ground_sun_hours(44, MIDWINTER)
    assert shadow.ground_sun_hours(44, MIDWINTER, [Obstacle(3, 0.5, NORTH)]) == open_ground
    # ... and in the far south it is the hedge to the north that does
    assert shadow.ground_sun_hours(-44, MIDSUMMER, [Obstacle(3, 0.5, NORTH)]) == 0


def test_a_short_wall_shades_only_while_the_sun_is_behind_it() -> None:
    # a wall 4 m long, 2 m off: from the spot it fills the compass from 135 to 225
    wall = Obstacle(50, 2, SOUTH, left_m=2, right_m=2)
    hidden = [h for h in range(6, 19) if shadow.is_shaded(wall, 44, EQUINOX, h + 0.001)]
    bearings_hidden = [sun.azimuth_deg(44, EQUINOX, h) for h in hidden if 7 <= h <= 17]
    assert hidden
    assert all(134 <= bearing <= 226 for bearing in bearings_hidden)
    assert 12 in hidden
    assert 8 not in hidden
    assert 16 not in hidden


def test_a_wall_that_lies_off_to_the_left_shades_the_morning_only() -> None:
    # facing south, left is east
    wall = Obstacle(50, 2, SOUTH, left_m=30, right_m=-0.5)
    assert shadow.is_shaded(wall, 44, EQUINOX, 9)
    assert not shadow.is_shaded(wall, 44, EQUINOX, 15)


def test_walls_at_the_equinox_get_twelve_six_six_and_no_hours() -> None:
    # by hand: the sun goes from due east to due west by the south
    assert shadow.wall_sun_hours(44, EQUINOX, SOUTH) == pytest.approx(12, abs=0.1)
    assert shadow.wall_sun_hours(44, EQUINOX, EAST) == pytest.approx(6, abs=0.1)
    assert shadow.wall_sun_hours(44, EQUINOX, WEST) == pytest.approx(6, abs=0.1)
    assert shadow.wall_sun_hours(44, EQUINOX, NORTH) == pytest.approx(0, abs=0.2)


def test_in_the_south_the_warm_wall_faces_north() -> None:
    assert shadow.wall_sun_hours(-37, EQUINOX, NORTH) == pytest.approx(12, abs=0.1)
    assert shadow.wall_sun_hours(-37, MIDSUMMER, SOUTH) == 0


def test_a_midsummer_wall_that_faces_south_loses_the_early_and_late_sun() -> None:
    # by hand: due east where cos(hour angle) = tan 23.44 / tan 44, which is 63.3°, 4.22 h from noon
    assert shadow.wall_sun_hours(44, MIDSUMMER, SOUTH) == pytest.approx(8.44, abs=0.1)


def test_the_foot_of_a_hedge_gets_the_sun_its_face_gets() -> None:
    for faces in (NORTH, 45.0, EAST, SOUTH, 250.0):
        foot = Obstacle(2, 0, (faces + 180) % 360)
        on_ground = shadow.ground_sun_hours(44, MIDSUMMER, [foot])
        on_face = shadow.wall_sun_hours(44, MIDSUMMER, faces)
        assert on_ground == pytest.approx(on_face, abs=0.1)


def test_a_fence_before_a_wall_takes_the_low_sun_from_its_foot() -> None:
    fence = Obstacle(1.8, 3, SOUTH)
    assert shadow.wall_sun_hours(52, MIDWINTER, SOUTH, [fence]) == 0
    assert shadow.wall_sun_hours(52, MIDSUMMER, SOUTH, [fence]) == pytest.approx(
        shadow.wall_sun_hours(52, MIDSUMMER, SOUTH), abs=0.7
    )


def test_an_east_west_row_shades_its_north_side_by_the_noon_shadow() -> None:
    width = shadow.row_shade_width_m(2, NORTH, 44, date(2026, 9, 1), 12)
    assert width == pytest.approx(1.44, abs=0.02)
    assert shadow.row_shade_width_m(2, SOUTH, 44, date(2026, 9, 1), 12) == 0


def test_a_north_south_row_shades_west_in_the_morning_and_east_after_noon() -> None:
    day = date(2026, 9, 1)
    assert shadow.row_shade_width_m(2, WEST, 44, day, 9) > 1
    assert shadow.row_shade_width_m(2, EAST, 44, day, 9) == 0
    assert shadow.row_shade_width_m(2, EAST, 44, day, 15) > 1
    assert shadow.row_shade_width_m(2, WEST, 44, day, 12) == pytest.approx(0, abs=1e-3)


def test_shade_across_a_bed_is_counted_from_its_near_edge() -> None:
    # by hand at noon, 44 north, 1 September: 1.44 m of shade, 0.44 m gap, so 1 m of a 2 m strip
    row = RowBeside(height_m=2, side_deg=NORTH, gap_m=0.44, strip_m=2)
    assert shadow.shaded_share(row, 44, date(2026, 9, 1), 12) == pytest.approx(0.5, abs=0.01)


def test_a_tall_row_on_the_sunny_side_shades_a_bed_all_the_middle_of_the_day() -> None:
    sunny_side = RowBeside(height_m=2.4, side_deg=NORTH, gap_m=0.3, strip_m=1.2)
    cold_side = RowBeside(height_m=2.4, side_deg=SOUTH, gap_m=0.3, strip_m=1.2)
    day = date(2026, 9, 1)
    assert shadow.strip_shaded_hours(sunny_side, 44, day) == pytest.approx(6)
    assert shadow.strip_shaded_hours(cold_side, 44, day) == 0


def test_a_row_that_runs_north_and_south_shares_its_shade_out() -> None:
    day = date(2026, 6, 21)
    east = shadow.strip_shaded_hours(RowBeside(2, EAST, 0.3, 1.2), 44, day)
    west = shadow.strip_shaded_hours(RowBeside(2, WEST, 0.3, 1.2), 44, day)
    assert east == pytest.approx(west, abs=0.1)
    assert 0 < east < 3


@given(latitudes, days, daytime)
def test_shadow_and_sun_lie_on_opposite_bearings(latitude: float, day: date, hour: float) -> None:
    points = shadow.shadow_bearing_deg(latitude, day, hour)
    if points is None:
        assert sun.altitude_deg(latitude, day, hour) <= 1e-9
    else:
        turn = (points - sun.azimuth_deg(latitude, day, hour)) % 360
        assert turn == pytest.approx(180)


@given(latitudes, days, daytime, bearings, heights, distances, st.floats(0, 5))
def test_a_taller_thing_never_shades_less(
    latitude: float,
    day: date,
    hour: float,
    bearing: float,
    height: float,
    distance: float,
    taller: float,
) -> None:
    if shadow.is_shaded(Obstacle(height, distance, bearing), latitude, day, hour):
        assert shadow.is_shaded(Obstacle(height + taller, distance, bearing), latitude, day, hour)


@given(latitudes, days, daytime, bearings, heights, distances, st.floats(0, 5))
def test_a_long_thing_further_off_never_shades_more(
    latitude: float,
    day: date,
    hour: float,
    bearing: float,
    height: float,
    distance: float,
    further: float,
) -> None:
    if shadow.is_shaded(Obstacle(height, distance + further, bearing), latitude, day, hour):
        assert shadow.is_shaded(Obstacle(height, distance, bearing), latitude, day, hour)


@given(latitudes, days, daytime, bearings, heights, st.floats(0.01, 50))
def test_a_spot_is_in_shade_just_when_it_lies_within_the_strip_a_long_row_shades(
    latitude: float, day: date, hour: float, side: float, height: float, distance: float
) -> None:
    width = shadow.row_shade_width_m(height, side, latitude, day, hour)
    if abs(width - distance) > 1e-6:
        row = Obstacle(height, distance, (side + 180) % 360)
        assert shadow.is_shaded(row, latitude, day, hour) == (width > distance)


@given(latitudes, days, bearings)
def test_opposite_walls_share_the_day_between_them(
    latitude: float, day: date, faces: float
) -> None:
    both = shadow.wall_sun_hours(latitude, day, faces) + shadow.wall_sun_hours(
        latitude, day, faces + 180
    )
    assert both == pytest.approx(shadow.ground_sun_hours(latitude, day), abs=0.15)


@given(latitudes, days)
def test_open_ground_gets_the_whole_day(latitude: float, day: date) -> None:
    length = sun.day_length_hours(latitude, day, sun.CENTRE_ON_HORIZON_DEG)
    assert shadow.ground_sun_hours(latitude, day) == pytest.approx(length)


@given(st.floats(25, 60), st.sampled_from((1, -1)), days, bearings)
def test_walls_that_face_as_far_east_and_west_of_north_get_the_same_sun(
    latitude: float, hemisphere: int, day: date, faces: float
) -> None:
    # outside the tropics; there the sun may graze along a wall for hours
    one = shadow.wall_sun_hours(hemisphere * latitude, day, faces)
    other = shadow.wall_sun_hours(hemisphere * latitude, day, 360 - faces)
    assert one == pytest.approx(other, abs=0.2)


@given(st.floats(25, 60), days, bearings)
def test_the_mirrored_garden_has_the_mirrored_wall_half_a_year_on(
    latitude: float, day: date, faces: float
) -> None:
    mirrored = shadow.wall_sun_hours(-latitude, day + timedelta(days=183), 180 - faces)
    assert mirrored == pytest.approx(shadow.wall_sun_hours(latitude, day, faces), abs=1)


@given(latitudes, days, heights, bearings, st.floats(0, 3), st.floats(0.2, 5))
def test_a_strip_is_never_shaded_longer_than_the_hours_that_count(
    latitude: float, day: date, height: float, side: float, gap: float, strip: float
) -> None:
    hours = shadow.strip_shaded_hours(RowBeside(height, side, gap, strip), latitude, day)
    assert 0 <= hours <= 6 + 1e-9


def test_things_that_cannot_stand_are_refused() -> None:
    with pytest.raises(ValueError, match="distance"):
        Obstacle(2, -1, SOUTH)
    with pytest.raises(ValueError, match="end before it begins"):
        Obstacle(2, 1, SOUTH, left_m=-3, right_m=1)
    with pytest.raises(ValueError, match="some width"):
        RowBeside(2, NORTH, 0.3, 0)
