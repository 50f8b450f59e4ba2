"""Wind by the Eurocode: higher is windier, rougher is calmer, tables met and not left."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.mechanics import wind_en

categories = st.sampled_from(sorted(wind_en.TERRAINS))


@given(categories, st.floats(0.1, 100), st.floats(1, 3))
def test_it_never_blows_less_higher_up(category: str, height: float, factor: float) -> None:
    terrain = wind_en.TERRAINS[category]
    low = wind_en.peak_pressure_pa(25, terrain, height)
    assert wind_en.peak_pressure_pa(25, terrain, height * factor) >= low * (1 - 1e-12)


@given(st.floats(0.5, 100))
def test_rougher_country_never_makes_more_wind(height: float) -> None:
    found = [
        wind_en.peak_pressure_pa(25, wind_en.TERRAINS[category], height)
        for category in ("I", "II", "III", "IV")
    ]
    assert found == sorted(found, reverse=True)


@given(st.floats(1.1, 500), st.floats(1.001, 5))
def test_a_rarer_wind_is_a_stronger_one(years: float, factor: float) -> None:
    rarer = wind_en.probability_factor(years * factor)
    assert rarer > wind_en.probability_factor(years)


def test_the_fifty_year_wind_is_the_basic_one() -> None:
    assert wind_en.probability_factor(50) == pytest.approx(1)


@given(st.sampled_from("ABCD"), st.floats(0.5, 30), st.floats(0.8, 1))
def test_a_wall_with_holes_is_never_pushed_harder(zone: str, ratio: float, solidity: float) -> None:
    found = wind_en.wall_coefficient(zone, ratio, solidity)
    assert 1.2 - 1e-12 <= found <= wind_en.wall_coefficient(zone, ratio) + 1e-12


@given(st.sampled_from("ABCD"), st.floats(0.5, 30), st.floats(1, 3))
def test_a_longer_wall_is_never_pushed_less(zone: str, ratio: float, factor: float) -> None:
    found = wind_en.wall_coefficient(zone, ratio * factor)
    assert found >= wind_en.wall_coefficient(zone, ratio) - 1e-12


@given(st.sampled_from("ABCD"))
def test_corners_never_make_it_worse(zone: str) -> None:
    with_returns = wind_en.WALL_WITH_RETURNS["ABCD".index(zone)]
    assert with_returns <= max(wind_en.wall_coefficient(zone, r) for r in (3, 5, 10))


@pytest.mark.parametrize(("zone", "solidity"), [("E", 1.0), ("AB", 1.0), ("A", 0.5), ("A", 1.1)])
def test_outside_the_table_there_is_no_coefficient(zone: str, solidity: float) -> None:
    with pytest.raises(ValueError, match=r"zones|table"):
        wind_en.wall_coefficient(zone, 5, solidity)


def test_between_the_printed_walls_the_coefficient_lies_half_way() -> None:
    # By hand: 4 lies between 3 (2.3) and 5 (2.9); one tenth open, half-way to 1.2.
    assert wind_en.wall_coefficient("A", 4) == pytest.approx(2.6)
    assert wind_en.wall_coefficient("A", 4, 0.9) == pytest.approx(1.9)
    with pytest.raises(ValueError, match="table"):
        wind_en.wall_coefficient("A", 4, 0.79)


def test_a_very_long_wall_is_taken_as_ten_times_its_height() -> None:
    # EN 1991-1-4, Table 7.9: the last row; and half-way between 5 and 10 by hand.
    assert wind_en.wall_coefficient("A", 30) == pytest.approx(3.4)
    assert wind_en.wall_coefficient("B", 7.5) == pytest.approx(1.95)


def test_a_lattice_without_end_factor_takes_the_whole_push() -> None:
    assert wind_en.lattice_force_n(500, 2, 1.6) == pytest.approx(1600)
