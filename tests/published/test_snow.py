"""Snow on roofs as the codes and worked sheets print it.

Sources: ASCE 7-16, chapter 7, roof snow; a calculation sheet to ASCE 7; EN 1991-1-3, 5.3, shape
coefficients and the examples printed with them.
"""

from __future__ import annotations

import pytest

from plantframe.mechanics import snow
from plantframe.mechanics.units import PCF_N_PER_M3, PSF_PA
from tests.published.printed import agrees

pytestmark = pytest.mark.published


def test_a_heated_house_in_a_suburb() -> None:
    # ASCE 7: pg 30 psf, category B, partly open, heated, II. Value as asserted by a public test
    # suite; handbook page not seen.
    pressure_pa = snow.flat_pressure_pa(
        30 * PSF_PA,
        snow.EXPOSURE_FACTORS["B"]["partly open"],
        snow.THERMAL_FACTORS["heated"],
        snow.IMPORTANCE_FACTORS["II"],
    )
    assert agrees(pressure_pa / PSF_PA, "21.0")


def test_an_unheated_shed_step_by_step() -> None:
    # Calculation sheet to ASCE 7: pg 20 psf, Ce 1.1, Ct 1.2, Is 0.8, slope 22.6 degrees.
    flat_pa = snow.flat_pressure_pa(20 * PSF_PA, 1.1, 1.2, 0.8)
    assert agrees(flat_pa / PSF_PA, "14.8")
    slope = snow.slope_factor(22.6, 1.2)
    assert agrees(slope, "1.0")
    sloped_pa = snow.sloped_pressure_pa(flat_pa, slope)
    assert agrees(snow.windward_pressure_pa(sloped_pa) / PSF_PA, "4.4")
    assert agrees(snow.snow_weight_n_per_m3(20 * PSF_PA) / PCF_N_PER_M3, "16.6")


@pytest.mark.parametrize(
    ("thermal", "slippery", "last_full_deg"),
    [
        (1.0, True, 5),
        (1.1, True, 10),
        (1.2, True, 15),
        (1.0, False, 30),
        (1.1, False, 37.5),
        (1.2, False, 45),
    ],
)
def test_snow_begins_to_slide_at_the_printed_slope(
    thermal: float, *, slippery: bool, last_full_deg: float
) -> None:
    # ASCE 7-16, 7.4: then in a straight line to none at 70 degrees.
    half_way_deg = (last_full_deg + 70) / 2
    assert snow.slope_factor(last_full_deg, thermal, slippery=slippery) == 1
    assert snow.slope_factor(half_way_deg, thermal, slippery=slippery) == pytest.approx(0.5)
    assert snow.slope_factor(70, thermal, slippery=slippery) == 0


@pytest.mark.parametrize(("ground", "roof"), [(0.85, "0.68"), (5.0, "4.0")])
def test_a_roof_of_low_slope_by_the_eurocode(ground: float, roof: str) -> None:
    # EN 1991-1-3: slope below 30 degrees, Ce = Ct = 1, kN/m².
    assert agrees(snow.roof_pressure_pa(ground * 1000, snow.shape_factor(20)) / 1000, roof)


@pytest.mark.parametrize(("slope_deg", "share"), [(0, 0.8), (30, 0.8), (45, 0.4), (60, 0), (75, 0)])
def test_shape_coefficients_are_as_printed(slope_deg: float, share: float) -> None:
    # EN 1991-1-3, Table 5.2: 0.8 (60 - 45) / 30 = 0.4.
    assert snow.shape_factor(slope_deg) == pytest.approx(share)


def test_a_valley_holds_at_most_the_printed_share() -> None:
    # EN 1991-1-3, Table 5.2: 0.8 + 0.8 a / 30, at most 1.6.
    assert snow.valley_factor(15) == pytest.approx(1.2)
    assert snow.valley_factor(30) == pytest.approx(1.6)
    assert snow.valley_factor(50) == pytest.approx(1.6)
