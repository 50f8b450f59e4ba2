"""Days from sowing to emergence at nine soil temperatures, typed column by column.

Source: Knott's Handbook for Vegetable Growers, 4th edition (Wiley, 1997), after a University of
California Agricultural Extension leaflet of 1954; seen as reprinted in Teaching Organic Farming
and Gardening (University of California, Santa Cruz), unit 1.3, appendices 4 and 5.
A second copy: Oregon State University Extension, Soil temperature conditions for vegetable seed
germination (2013, reviewed 2024), which differs in the ten places named below; its aubergine row
stands one column too far to the left and is not used.
"""

import math

import pytest

from plantframe.sky.emergence import DAYS_TO_EMERGENCE, emergence_days

pytestmark = pytest.mark.published

NG = math.inf  # printed "NG": no germination
NT = None  # printed as a dash: not tested

CROPS = (
    "asparagus", "lima bean", "snap bean", "beet", "cabbage", "carrot",
    "cauliflower", "celery", "sweet corn", "cucumber", "aubergine", "lettuce",
    "muskmelon", "okra", "onion", "parsley", "parsnip", "pea",
    "pepper", "radish", "spinach", "tomato", "turnip", "watermelon",
)  # fmt: skip

# One printed column each: temperature in °F, then the crops in the order above.
COLUMNS: dict[int, tuple[float | None, ...]] = {
    32: (NG, NT, NG, NT, NT, NG,  NT, NG, NG, NG, NT, 49,
         NT, NG, 136, NT, 172, NT,  NG, NG, 63, NG, NG, NT),
    41: (NG, NT, NG, 42, NT, 51,  NT, 41, NG, NG, NT, 15,
         NT, NG, 31, NT, 57, 36,  NG, 29, 23, NG, NG, NG),
    50: (53, NG, NG, 17, 15, 17,  20, 16, 22, NG, NT, 7,
         NT, NG, 13, 29, 27, 14,  NG, 11, 12, 43, 5, NT),
    59: (24, 31, 16, 10, 9, 10,  10, 12, 12, 13, NT, 4,
         NT, 27, 7, 17, 19, 9,  25, 6, 7, 14, 3, NT),
    68: (15, 18, 11, 6, 6, 7,  6, 7, 7, 6, 13, 3,
         8, 17, 5, 14, 14, 8,  13, 4, 6, 8, 2, 12),
    77: (10, 7, 8, 5, 5, 6,  5, NG, 4, 4, 8, 2,
         4, 13, 4, 13, 15, 6,  8, 4, 5, 6, 1, 5),
    86: (12, 7, 6, 5, 4, 6,  5, NG, 4, 3, 5, 3,
         3, 7, 4, 12, 32, 6,  8, 3, 6, 6, 1, 4),
    95: (20, NG, 6, 5, NT, 9,  NT, NG, 3, 3, NT, NG,
         NT, 6, 13, NT, NG, NT,  9, NT, NG, 9, 1, 3),
    104: (28, NT, NG, NT, NT, NG,  NT, NT, NG, NT, NT, NG,
          NT, 7, NG, NT, NG, NT,  NG, NT, NG, NG, 3, NT),
}  # fmt: skip

# Crop, °C, days in the first copy, days in the second.
COPIES_DIFFER = [
    ("asparagus", 30, 12, 11),
    ("asparagus", 35, 20, 19),
    ("beet", 30, 5, 4),
    ("beet", 35, 5, 4),
    ("cabbage", 25, 5, 4),
    ("cabbage", 30, 4, 3),
    ("carrot", 35, 9, 8),
    ("cauliflower", 10, 20, 19),
    ("cauliflower", 30, 5, 4),
    ("lettuce", 30, 3, 2),
]


def celsius(fahrenheit: int) -> float:
    return (fahrenheit - 32) * 5 / 9


@pytest.mark.parametrize("fahrenheit", COLUMNS)
def test_each_printed_column_is_given_back(fahrenheit: int) -> None:
    for crop, printed in zip(CROPS, COLUMNS[fahrenheit], strict=True):
        row = DAYS_TO_EMERGENCE[crop]
        if printed is NT:
            assert celsius(fahrenheit) not in row, crop
        else:
            assert emergence_days(row, celsius(fahrenheit)) == printed, crop


def test_no_crop_is_there_that_was_not_printed() -> None:
    assert set(DAYS_TO_EMERGENCE) == set(CROPS)


@pytest.mark.parametrize(("crop", "soil_c", "first", "second"), COPIES_DIFFER)
def test_where_two_copies_differ_the_first_is_kept_and_a_day_is_all_it_is(
    crop: str, soil_c: float, first: int, second: int
) -> None:
    assert emergence_days(DAYS_TO_EMERGENCE[crop], soil_c) == first
    assert abs(first - second) == 1
