"""Degree-days of 366 days, as printed by a public calculator.

Source: University of California Statewide Integrated Pest Management Program, degree-day
calculator, station Ojai, 2016, single sine, horizontal cut-off, thresholds 12 and 33 °C. The output
was carried as test data by the TrenchR package (University of Washington, MIT licence), from where
the file beside this one was taken. Its last column, another method's, is not used here.
"""

import csv
from pathlib import Path

import pytest

from plantframe.sky.degree_days import single_sine_degree_days

pytestmark = pytest.mark.published

LOWER_C, UPPER_C = 12, 33
with (Path(__file__).parent / "degree-days-ojai-2016.csv").open(encoding="utf-8") as lines:
    DAYS = [
        (row["date"], float(row["tmin_c"]), float(row["tmax_c"]), float(row["dd_single_sine"]))
        for row in csv.DictReader(lines)
    ]

# The rows one would look up first: each way this year's days lie to the thresholds.
PRINTED = [
    (7.8, 19.4, 2.72),  # crosses the lower
    (8.3, 15.0, 0.9),
    (15.0, 23.9, 7.45),  # between
    (10.6, 34.4, 10.5),  # crosses both
    (10.6, 38.9, 11.71),
    (14.4, 39.4, 13.49),  # crosses the upper
    (15.0, 37.2, 13.31),
    (7, 14, 0.47),  # the package's own example, not a day of this year
]


def test_the_year_is_whole() -> None:
    assert len(DAYS) == 366
    assert DAYS[0][0] == "2016-01-01"
    assert DAYS[-1][0] == "2016-12-31"


@pytest.mark.parametrize(("day", "min_c", "max_c", "printed"), DAYS)
def test_each_day_comes_out_to_the_printed_hundredth(
    day: str, min_c: float, max_c: float, printed: float
) -> None:
    found = single_sine_degree_days(min_c, max_c, LOWER_C, UPPER_C)
    assert found == pytest.approx(printed, abs=0.0051), day


@pytest.mark.parametrize(("min_c", "max_c", "printed"), PRINTED)
def test_each_kind_of_day_comes_out_as_printed(min_c: float, max_c: float, printed: float) -> None:
    found = single_sine_degree_days(min_c, max_c, LOWER_C, UPPER_C)
    assert found == pytest.approx(printed, abs=0.0051)


def test_the_year_adds_up_to_the_printed_days() -> None:
    year = sum(single_sine_degree_days(low, high, LOWER_C, UPPER_C) for _, low, high, _ in DAYS)
    assert year == pytest.approx(sum(printed for *_, printed in DAYS), abs=0.2)
