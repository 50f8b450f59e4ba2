"""The sun once more, by pvlib: a general library of solar sums (NREL's algorithm, to 0.0003°)."""

import math
from datetime import date, timedelta

import pandas as pd  # type: ignore[import-untyped]
import pytest
from pvlib import solarposition  # type: ignore[import-untyped]

from plantframe.sky import shadow, sun

LATITUDES = (-54.8, -37.0, -10.0, 0.0, 23.4, 35.0, 44.0, 52.1, 65.0, 78.0)
DAYS = [date(2026, 1, 1) + timedelta(days=23 * n) for n in range(16)]


def positions(latitude: float, day: date, longitude: float = 0.0) -> pd.DataFrame:
    """The sun each hour of a day at Greenwich, with the hour by the sun beside it."""
    times = pd.date_range(day.isoformat(), periods=24, freq="h", tz="UTC")
    table = solarposition.get_solarposition(times, latitude, longitude, method="nrel_numpy")
    table["sun_time"] = [
        (hour + eot / 60 + longitude / 15) for hour, eot in enumerate(table["equation_of_time"])
    ]
    return table


@pytest.mark.parametrize("latitude", LATITUDES)
def test_height_and_bearing_of_the_sun_agree_at_every_hour(latitude: float) -> None:
    for day in DAYS:
        for row in positions(latitude, day).itertuples():
            height = sun.altitude_deg(latitude, day, row.sun_time)
            assert height == pytest.approx(row.elevation, abs=0.03)
            if -80 < row.elevation < 80:  # near overhead a bearing means little
                bearing = sun.azimuth_deg(latitude, day, row.sun_time)
                assert abs((bearing - row.azimuth + 180) % 360 - 180) < 0.15


@pytest.mark.parametrize("longitude", [-120.0, 150.0])
def test_a_garden_far_from_greenwich_is_off_by_no_more_than_a_quarter_degree(
    longitude: float,
) -> None:
    for day in DAYS:
        for row in positions(44.0, day, longitude).itertuples():
            if 0 <= row.sun_time <= 24:
                height = sun.altitude_deg(44.0, day, row.sun_time)
                assert height == pytest.approx(row.elevation, abs=0.25)


@pytest.mark.parametrize("latitude", [one for one in LATITUDES if abs(one) < 60])
def test_the_length_of_the_day_agrees_within_a_minute_and_a_half(latitude: float) -> None:
    times = pd.DatetimeIndex([pd.Timestamp(day, tz="UTC") for day in DAYS])
    table = solarposition.sun_rise_set_transit_spa(times, latitude, 0.0)
    lengths = (table["sunset"] - table["sunrise"]).dt.total_seconds() / 60
    for day, printed in zip(DAYS, lengths, strict=True):
        assert sun.day_length_hours(latitude, day) * 60 == pytest.approx(printed, abs=1.5)


def test_the_shadow_is_the_tangent_of_its_zenith_angle() -> None:
    for day in DAYS:
        for row in positions(44.0, day).itertuples():
            if row.elevation > 5:
                found = shadow.shadow_ratio(44.0, day, row.sun_time)
                expected = math.tan(math.radians(row.zenith))
                assert found == pytest.approx(expected, rel=0.01)
