"""Frost dates by probability, one station, three temperatures, spring and autumn.

Source: University of Delaware, Research and Education Center, Georgetown: frost dates by
probability (from weather service data, 1970). Spring: chance of that temperature or lower AFTER
the date. Autumn: chance of it BEFORE the date. The freeze tables of the Minnesota Department of
Natural Resources (1991-2020) and of NOAA's National Centers for Environmental Information use the
same convention: a 90 % spring date is early, the 10 % date is the careful one.
"""

from datetime import date

import pytest

from plantframe.sky import frost

pytestmark = pytest.mark.published

CHANCES = (0.10, 0.33, 0.50, 0.67, 0.90)
# °F as printed; month and day at 10, 33, 50, 67 and 90 %
SPRING = {
    32: ((5, 10), (4, 30), (4, 25), (4, 20), (4, 10)),
    24: ((4, 9), (4, 1), (3, 27), (3, 22), (3, 14)),
    16: ((3, 13), (3, 3), (2, 25), (2, 19), (2, 9)),
}
AUTUMN = {
    32: ((10, 2), (10, 11), (10, 16), (10, 21), (10, 30)),
    24: ((11, 1), (11, 9), (11, 14), (11, 19), (11, 27)),
    16: ((11, 28), (12, 6), (12, 10), (12, 14), (12, 22)),
}
ONE_IN_TEN = 1.2816  # standard deviations; any printed normal table


def on(month_day: tuple[int, int]) -> date:
    return date(2026, *month_day)


def spread_of(row: tuple[tuple[int, int], ...]) -> float:
    return abs((on(row[0]) - on(row[-1])).days) / 2 / ONE_IN_TEN


@pytest.mark.parametrize(("chance", "printed"), list(zip(CHANCES, SPRING[32], strict=True)))
def test_each_spring_date_of_the_freezing_row_comes_out_to_the_day(
    chance: float, printed: tuple[int, int]
) -> None:
    assert frost.last_frost_at_chance(on(SPRING[32][2]), chance) == on(printed)


@pytest.mark.parametrize(("chance", "printed"), list(zip(CHANCES, AUTUMN[32], strict=True)))
def test_each_autumn_date_of_the_freezing_row_comes_out_to_the_day(
    chance: float, printed: tuple[int, int]
) -> None:
    assert frost.first_frost_at_chance(on(AUTUMN[32][2]), chance) == on(printed)


@pytest.mark.parametrize("row", [SPRING[24], SPRING[16]])
def test_the_harder_spring_frosts_follow_the_same_curve_within_a_day(
    row: tuple[tuple[int, int], ...],
) -> None:
    for chance, printed in zip(CHANCES, row, strict=True):
        found = frost.last_frost_at_chance(on(row[2]), chance, spread_of(row))
        assert found is not None
        assert abs((found - on(printed)).days) <= 1


@pytest.mark.parametrize("row", [AUTUMN[24], AUTUMN[16]])
def test_the_harder_autumn_frosts_follow_the_same_curve_within_a_day(
    row: tuple[tuple[int, int], ...],
) -> None:
    for chance, printed in zip(CHANCES, row, strict=True):
        found = frost.first_frost_at_chance(on(row[2]), chance, spread_of(row))
        assert found is not None
        assert abs((found - on(printed)).days) <= 1


@pytest.mark.parametrize(("chance", "printed"), list(zip(CHANCES, SPRING[32], strict=True)))
def test_the_chance_after_a_printed_spring_date_is_the_printed_chance(
    chance: float, printed: tuple[int, int]
) -> None:
    # a date is printed to the day, which is worth up to 3.4 % in the middle of the curve
    found = frost.spring_frost_chance(on(printed), on(SPRING[32][2]))
    assert found == pytest.approx(chance, abs=0.02)


@pytest.mark.parametrize(("chance", "printed"), list(zip(CHANCES, AUTUMN[32], strict=True)))
def test_the_chance_before_a_printed_autumn_date_is_the_printed_chance(
    chance: float, printed: tuple[int, int]
) -> None:
    found = frost.autumn_frost_chance(on(printed), on(AUTUMN[32][2]))
    assert found == pytest.approx(chance, abs=0.02)


def test_the_spreads_in_use_are_those_of_the_printed_rows() -> None:
    assert pytest.approx(spread_of(SPRING[32]), abs=0.005) == frost.SPRING_SPREAD_DAYS
    assert pytest.approx(spread_of(AUTUMN[32]), abs=0.005) == frost.AUTUMN_SPREAD_DAYS
    spreads = [spread_of(row) for row in (*SPRING.values(), *AUTUMN.values())]
    assert pytest.approx(min(spreads), abs=0.05) == frost.LEAST_SPREAD_DAYS
    assert pytest.approx(max(spreads), abs=0.05) == frost.MOST_SPREAD_DAYS
