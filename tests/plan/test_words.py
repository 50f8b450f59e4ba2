"""What single words of a plan stand for."""

from __future__ import annotations

import pytest

from plantframe.plan import words
from tests.language.reading import block, fact


@pytest.mark.parametrize(
    ("line", "kind", "hours"),
    [
        ("sun full", "full", (8.0, 10.0)),
        ("sun all day", "full", (8.0, 10.0)),
        ("sun half the day", "half", (4.0, 6.0)),
        ("sun part shade", "half", (4.0, 6.0)),
        ("sun none", "none", (0.0, 2.0)),
        ("sun shade", "none", (0.0, 2.0)),
        ("sun dappled", "dappled", (3.0, 4.0)),
        ("sun 5 h", "5 h", (5.0, 5.0)),
        ("sun 4 to 6 h", "4 to 6 h", (4.0, 6.0)),
    ],
)
def test_a_word_for_the_sun_stands_for_hours(
    line: str, kind: str, hours: tuple[float, float]
) -> None:
    # common practice, no source
    assert words.sun(fact(line, "bed")) == (kind, hours)


# The noun comes last in a texture class of the USDA Soil Survey Manual (2017), chapter 3.
@pytest.mark.parametrize(
    ("line", "soil"),
    [
        ("soil firm loam", "firm loam"),
        ("soil loam", "firm loam"),
        ("soil clay loam", "firm loam"),
        ("soil sandy loam", "firm loam"),
        ("soil sandy clay", "firm clay"),
        ("soil heavy clay", "firm clay"),
        ("soil wet clay", "wet clay"),
        ("soil stiff clay", "stiff clay"),
        ("soil clay, wet in winter", "wet clay"),
        ("soil sand", "loose sand"),
        ("soil loamy sand", "loose sand"),
        ("soil gravel", "loose sand"),
        ("soil chalk", "chalk"),
    ],
)
def test_the_last_noun_names_a_soil(line: str, soil: str) -> None:
    assert words.soil(fact(line, "garden")) == soil


def test_an_exposed_place_is_windy() -> None:
    assert words.wind(fact("wind exposed", "garden")) == "windy"
    assert words.wind(fact("wind from SW", "garden")) == ""
    assert words.wind(None) == ""


def test_the_longer_side_of_a_bed_is_its_length() -> None:
    size = block("bed Long Bed, 1.2 m x 7.5 m").head.get("size")
    assert words.sides_m(size) == (7.5, 1.2)
    assert words.sides_m(None) == (None, None)


def test_a_count_below_one_is_none() -> None:
    assert words.whole(fact("grow pea, half a plant").get("count")) is None
    assert words.whole(fact("grow pea, 12 plants").get("count")) == 12


def test_a_price_may_go_without_its_sign() -> None:
    assert words.amount(fact("2x4, 8 ft, at 4.20", "yard").get("price")) == 4.2
    assert words.amount(fact("2x4, 8 ft, £4.20 each", "yard").get("price")) == 4.2
    assert words.amount(None) is None
