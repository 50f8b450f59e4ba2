"""Wind by the American standard: higher is windier, more open less pushed."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import wind_asce
from plantframe.mechanics.units import FT_M

categories = st.sampled_from(sorted(wind_asce.EXPOSURES))


@given(categories, st.floats(0, 100), st.floats(1, 3))
def test_it_never_blows_less_higher_up(category: str, height: float, factor: float) -> None:
    exposure = wind_asce.EXPOSURES[category]
    low = wind_asce.exposure_factor_at(exposure, height)
    assert wind_asce.exposure_factor_at(exposure, height * factor) >= low


@given(st.floats(0, 100))
def test_more_open_country_is_windier(height: float) -> None:
    found = [wind_asce.exposure_factor_at(wind_asce.EXPOSURES[c], height) for c in "BCD"]
    assert found == sorted(found)


@given(st.floats(0, 4000), st.floats(1, 2000))
def test_thinner_air_presses_less(above_sea: float, higher: float) -> None:
    low, high = (
        wind_asce.velocity_pressure_pa(
            40, 0.85, elevation_factor=wind_asce.elevation_factor_at(above_sea_m)
        )
        for above_sea_m in (above_sea, above_sea + higher)
    )
    assert high < low <= wind_asce.velocity_pressure_pa(40, 0.85)


@given(st.floats(0.7, 1), st.floats(0.7, 1))
def test_more_holes_take_more_off_a_wall(one: float, other: float) -> None:
    open_, full = sorted((one, other))
    assert wind_asce.openings_factor(open_) <= wind_asce.openings_factor(full) <= 1


def test_a_wall_without_holes_takes_the_whole_push() -> None:
    assert wind_asce.openings_factor(1) == 1


@given(st.floats(1, 2000), st.floats(0.1, 10), st.floats(1.01, 3))
def test_a_bigger_frame_is_pushed_more(pressure: float, area: float, factor: float) -> None:
    small = wind_asce.frame_force_n(pressure, area, 1.6)
    assert wind_asce.frame_force_n(pressure, area * factor, 1.6) > small


@pytest.mark.parametrize(("solidity", "member"), [(0, "flat"), (0.8, "flat"), (0.5, "square")])
def test_outside_the_table_there_is_no_coefficient(solidity: float, member: str) -> None:
    with pytest.raises(ValueError, match=r"open|members"):
        wind_asce.lattice_coefficient(solidity, member)


@pytest.mark.parametrize(
    ("above_sea_ft", "share"),
    [(1000, 0.96), (2000, 0.93), (3000, 0.90), (4000, 0.865), (5000, 0.83), (6000, 0.80)],
)
def test_the_air_thins_as_the_table_is_remembered_to_say(above_sea_ft: float, share: float) -> None:
    # ASCE 7-16, ground elevation factor, from memory.
    found = wind_asce.elevation_factor_at(above_sea_ft * FT_M)
    assert found == pytest.approx(share, abs=0.0051)


def test_a_quarter_of_holes_takes_an_eighth_off_a_wall() -> None:
    # By hand: 1 - 0.25^1.5 = 0.875.
    assert wind_asce.openings_factor(0.75) == pytest.approx(0.875)


def test_on_a_crest_the_wind_presses_by_the_hills_factor_more() -> None:
    # By hand: 0.613 x 0.85 x 1.44 x 0.85 x 40² = 1020.4 Pa.
    found = wind_asce.velocity_pressure_pa(40, 0.85, topography_factor=1.44)
    assert found == pytest.approx(1020.4, abs=0.05)


def test_the_table_of_lattices_ends_at_seven_tenths() -> None:
    assert wind_asce.lattice_coefficient(0.7) == 1.6
    with pytest.raises(ValueError, match="open"):
        wind_asce.lattice_coefficient(0.71)
