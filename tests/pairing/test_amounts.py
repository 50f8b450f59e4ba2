"""How many plants to a metre, and how many metres feed a household."""

from __future__ import annotations

import re

import pytest

from plantframe.catalogue import reading as catalogue
from plantframe.frozen import replace
from plantframe.pairing.amounts import EATEN_KG, amounts
from plantframe.plan.things import Garden

METRIC, FEET = Garden(household=4), Garden(household=4, imperial=True)


def said(plant: str, garden: Garden | None, count: int | None = None) -> str:
    entry = catalogue.plant(plant)
    assert entry is not None
    return amounts(entry, garden, count)


def test_plants_are_counted_by_the_metre_or_the_foot() -> None:
    assert "plants a metre of row" in said("pole bean", METRIC)
    assert "plants a foot of row" in said("pole bean", FEET)


def test_a_household_of_four_wants_so_much_row_as_bears_what_it_eats() -> None:
    # Yield: Kansas State University, MF315, Vegetable garden planting guide: pole beans 150 lb to
    # 100 ft, which is 2.23 kg a metre.
    found = re.search(r"about ([\d.]+) to ([\d.]+) m of it", said("pole bean", METRIC))
    assert found is not None
    for metres, eaten in zip(found.groups(), EATEN_KG, strict=True):
        assert float(metres) == pytest.approx(4 * eaten / 2.23, rel=0.03)


def test_twice_the_people_want_twice_the_row() -> None:
    two, four = (
        re.findall(r"[\d.]+", said("tall tomato", replace(METRIC, household=people)))
        for people in (2, 4)
    )
    assert two != four


def test_plants_that_are_wanted_are_told_as_row() -> None:
    assert "6 plants want" in said("cucumber", METRIC, 6)


def test_who_types_feet_is_told_pounds_and_whole_feet() -> None:
    told = said("runner bean", FEET)
    assert "about 13 to 26 ft of it" in told
    assert "at 7 to 13 lb eaten fresh by each" in told
    assert " kg" not in told


def test_nobody_is_told_how_many_flowers_to_eat() -> None:
    assert "person" not in said("sweet pea", METRIC)
    assert "people" not in said("sweet pea", METRIC)


def test_without_a_household_it_is_plants_alone() -> None:
    assert "For " not in said("pole bean", Garden())
    assert said("pole bean", None)
