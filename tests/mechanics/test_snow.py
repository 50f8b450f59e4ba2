"""Snow: steeper holds less, more falls more, and the two codes side by side."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import snow
from plantframe.mechanics.units import PCF_N_PER_M3, PSF_PA

slopes = st.floats(0, 90)
thermal = st.sampled_from(sorted(snow.THERMAL_FACTORS.values()))


@given(slopes, slopes, thermal, st.booleans())
def test_a_steeper_roof_never_holds_more_snow(
    one: float, other: float, thermal_factor: float, slippery: bool
) -> None:
    flat, steep = sorted((one, other))
    assert snow.slope_factor(steep, thermal_factor, slippery=slippery) <= snow.slope_factor(
        flat, thermal_factor, slippery=slippery
    )
    assert snow.shape_factor(steep) <= snow.shape_factor(flat)
    assert 0 <= snow.shape_factor(steep) <= 0.8


@given(slopes, thermal)
def test_glass_never_holds_more_snow_than_shingles(slope: float, thermal_factor: float) -> None:
    assert snow.slope_factor(slope, thermal_factor, slippery=True) <= snow.slope_factor(
        slope, thermal_factor
    )


@given(slopes, slopes)
def test_a_valley_never_holds_less_for_steeper_sides(one: float, other: float) -> None:
    flat, steep = sorted((one, other))
    assert snow.valley_factor(flat) <= snow.valley_factor(steep) <= 1.6
    assert snow.valley_factor(flat) >= snow.shape_factor(flat)


@given(st.floats(0, 1e4), st.floats(1, 3))
def test_more_snow_on_the_ground_is_more_on_the_roof(ground_pa: float, factor: float) -> None:
    for load in (
        snow.flat_pressure_pa,
        snow.least_flat_pressure_pa,
        snow.snow_weight_n_per_m3,
    ):
        assert load(ground_pa) <= load(ground_pa * factor)


def test_lying_snow_is_counted_no_heavier_than_the_standard_caps_it() -> None:
    assert snow.snow_weight_n_per_m3(400 * PSF_PA) == pytest.approx(30 * PCF_N_PER_M3)


def test_the_least_load_of_a_low_roof_stops_at_twenty() -> None:
    assert snow.least_flat_pressure_pa(15 * PSF_PA) == pytest.approx(15 * PSF_PA)
    assert snow.least_flat_pressure_pa(50 * PSF_PA, 1.2) == pytest.approx(24 * PSF_PA)


def test_a_cold_frame_holds_all_its_snow_to_fifteen_degrees() -> None:
    cold = snow.THERMAL_FACTORS["unheated"]
    assert snow.slope_factor(4.8, cold, slippery=True) == 1
    assert snow.slope_factor(15, cold, slippery=True) == 1
    assert snow.slope_factor(20, cold, slippery=True) < 1


def test_wind_leaves_less_than_a_third_on_its_own_side() -> None:
    assert snow.windward_pressure_pa(snow.sloped_pressure_pa(1000, 0.8)) == pytest.approx(240)


def test_a_windswept_roof_holds_less_than_a_sheltered_one() -> None:
    open_, sheltered = (snow.roof_pressure_pa(1000, 0.8, exposure) for exposure in (0.8, 1.2))
    assert open_ == pytest.approx(640)
    assert sheltered == pytest.approx(960)


def test_seven_tenths_of_the_snow_lies_on_a_plain_flat_roof() -> None:
    # ASCE 7-16, 7.3: every factor 1.
    assert snow.flat_pressure_pa(1000) == pytest.approx(700)
    # EN 1991-1-3, 5.2: every factor but the shape's 1.
    assert snow.roof_pressure_pa(1000, 0.8) == pytest.approx(800)


@pytest.mark.parametrize(
    ("slope_deg", "thermal_factor", "slippery", "share"),
    [
        (50, 1.0, False, 0.5),  # by hand: 20 of the 40 degrees from 30 to 70
        (53.75, 1.1, False, 0.5),  # 16.25 of 32.5
        (57.5, 1.2, False, 0.5),  # 12.5 of 25
        (37.5, 1.0, True, 0.5),  # 32.5 of 65
        (40, 1.1, True, 0.5),  # 30 of 60
        (42.5, 1.2, True, 0.5),  # 27.5 of 55
    ],
)
def test_half_way_down_its_line_a_slope_holds_half(
    slope_deg: float, thermal_factor: float, slippery: bool, share: float
) -> None:
    # ASCE 7-16, 7.4.
    found = snow.slope_factor(slope_deg, thermal_factor, slippery=slippery)
    assert found == pytest.approx(share)


def test_by_the_eurocode_snow_begins_to_slide_at_thirty_degrees() -> None:
    # EN 1991-1-3, Table 5.2: by hand 0.8 x 29 / 30 and 0.8 x 15 / 30.
    assert snow.shape_factor(30) == 0.8
    assert snow.shape_factor(31) == pytest.approx(0.77333, abs=1e-5)
    assert snow.shape_factor(45) == pytest.approx(0.4)
    # By hand: 0.8 x 0.9 of a kilopascal.
    assert snow.roof_pressure_pa(1000, 0.8, thermal_factor=0.9) == pytest.approx(720)


def test_wind_and_trees_change_the_snow_of_a_roof_as_the_standard_is_remembered() -> None:
    # ASCE 7-16, Table 7.3-1, exposure factors, from memory: open, partly open, sheltered.
    rows = {name: tuple(row.values()) for name, row in snow.EXPOSURE_FACTORS.items()}
    assert rows == {"B": (0.9, 1.0, 1.2), "C": (0.9, 1.0, 1.1), "D": (0.8, 0.9, 1.0)}
    assert snow.THERMAL_FACTORS["just above freezing"] == 1.1
