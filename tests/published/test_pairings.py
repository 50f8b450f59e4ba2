"""What extension services, gardens, societies and handbooks print about plants and supports.

The statements and their sources stand in pairings.yaml beside this file.
"""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest
import yaml

from plantframe.catalogue.reading import structure
from plantframe.catalogue.sourced import Sourced
from plantframe.pairing.advisor import for_plant
from plantframe.pairing.climber import Climber
from plantframe.pairing.light import lighting
from plantframe.pairing.pair import Pair
from plantframe.pairing.supports import of_kind
from plantframe.season.entries import entry_of
from tests.pairing.gardens import season_of

if TYPE_CHECKING:
    from plantframe.pairing.matches import Matches, Pairing

pytestmark = pytest.mark.published

STATEMENTS: list[dict[str, Any]] = yaml.safe_load(
    (Path(__file__).parent / "pairings.yaml").read_text("utf-8")
)
GARDEN = """\
garden Print Row, 2027
wall Brick Wall
  surface brick
wall Shingle Wall
  surface shingles
wall Crumbling Wall
  surface crumbling brick
"""


def of(*expected: str) -> list[Any]:
    """The statements of which such a thing is expected, each under its own words."""
    return [
        pytest.param(one, id=f"{number}-{one['says'][:60]}")
        for number, one in enumerate(STATEMENTS)
        if one["expect"] in expected
    ]


def climber(plant: str) -> Climber:
    entry = entry_of(plant)
    assert entry is not None, plant
    return Climber(entry, entry.name)


@lru_cache(maxsize=200)
def matches(plant: str) -> Matches:
    return for_plant(season_of(GARDEN), plant)


def ranked(plant: str, on: str) -> Pairing | None:
    """The pairing of a plant with a kind of frame in an average place, or a wall as it is."""
    names = {on, on.title()} if on.endswith("wall") else {on}
    return next(
        (one for one in matches(plant).ranked if (one.frame or one.kind) in names),
        None,
    )


def text(pairing: Pairing) -> str:
    return "\n".join([*(reason.says for reason in pairing.reasons), *pairing.cautions])


@pytest.mark.parametrize("statement", of("ranked"))
def test_what_print_grows_on_it_is_ranked(statement: dict[str, Any]) -> None:
    missing = [
        (plant, on)
        for plant in statement["plants"]
        for on in statement["supports"]
        if ranked(plant, on) is None
    ]
    assert missing == []


@pytest.mark.parametrize("statement", of("ranked on one"))
def test_what_print_grows_on_one_of_them_is_ranked_on_one(statement: dict[str, Any]) -> None:
    for plant in statement["plants"]:
        assert any(ranked(plant, on) for on in statement["supports"]), plant


@pytest.mark.parametrize("statement", of("ruled out"))
def test_what_print_warns_off_is_ruled_out(statement: dict[str, Any]) -> None:
    offered = [
        (plant, on)
        for plant in statement["plants"]
        for on in statement["supports"]
        if ranked(plant, on) is not None
    ]
    assert offered == []


@pytest.mark.parametrize("statement", of("holds by"))
def test_a_plant_holds_on_as_print_says(statement: dict[str, Any]) -> None:
    for plant in statement["plants"]:
        assert climber(plant).holds_on == statement["way"], plant


@pytest.mark.parametrize("statement", of("height"))
def test_a_printed_height_meets_the_range_known_here(statement: dict[str, Any]) -> None:
    for plant in statement["plants"]:
        one = climber(plant)
        assert one.height_m is not None
        low, high = min(one.least_height_m, one.height_m[0]), one.most_height_m
        assert statement.get("low", 0) <= high, plant
        assert statement.get("high", 99) >= low, plant


def lit(plant: str, sun_h: float) -> str:
    """The verdict on light for a plant in a bed with so many hours of sun."""
    season = season_of(f"garden Print Row, 2027\nbed Plot, 1 m x 4 m\n  sun {sun_h:g} h\n")
    support = of_kind("pergola", season.plan.garden, season.plan.beds["Plot"])
    assert support is not None
    return lighting(Pair(climber(plant), support)).verdict


@pytest.mark.parametrize("statement", of("light enough", "too dark"))
def test_light_rules_out_what_print_wants_in_the_sun(statement: dict[str, Any]) -> None:
    for plant in statement["plants"]:
        verdict = lit(plant, statement["sun"])
        assert (verdict == "knocked out") is (statement["expect"] == "too dark"), plant


@pytest.mark.parametrize("statement", of("said"))
def test_what_print_asks_for_stands_with_the_pairing(statement: dict[str, Any]) -> None:
    for plant in statement["plants"]:
        for on in statement["supports"]:
            pairing = ranked(plant, on)
            assert pairing is not None, (plant, on)
            for words in statement["words"]:
                assert words in text(pairing), (plant, on, words)


@pytest.mark.parametrize("statement", of("said in wind"))
def test_what_print_warns_of_in_wind_is_said_there(statement: dict[str, Any]) -> None:
    season = season_of(GARDEN.replace("2027\n", "2027\n  wind exposed\n", 1))
    for plant in statement["plants"]:
        found = [
            one
            for one in for_plant(season, plant).ranked
            if (one.frame or one.kind) in statement["supports"]
        ]
        assert found, plant
        for words in statement["words"]:
            assert all(words in text(one) for one in found), (plant, words)


@pytest.mark.parametrize("statement", of("lighter"))
def test_the_slower_kind_is_the_lighter(statement: dict[str, Any]) -> None:
    light, heavy = (climber(plant).wet_kg_per_m for plant in statement["plants"])
    assert light is not None
    assert heavy is not None
    assert light.middle < heavy.middle


def meets(values: list[Sourced], statement: dict[str, Any]) -> bool:
    """Whether one of the figures told meets the printed range."""
    ranges = [(one.low or one.usual, one.high or one.usual) for one in values if not one.is_word]
    return any(low <= statement["high"] and high >= statement["low"] for low, high in ranges)


def told(value: Sourced | None) -> list[Sourced]:
    """A figure and those that are told beside it."""
    return [] if value is None else [value, *value.also]


def frame_figures(statement: dict[str, Any]) -> list[Sourced]:
    """The figures a kind of frame takes where the plan says nothing."""
    kind = structure(statement["kind"])
    assert kind is not None
    word, _, slot = statement["fact"].partition(".")
    return [
        one for way in kind.facts[word].slots[slot] if isinstance(way, Sourced) for one in told(way)
    ]


@pytest.mark.parametrize("statement", of("figure"))
def test_a_printed_figure_meets_the_one_known_here(statement: dict[str, Any]) -> None:
    for plant in statement["plants"]:
        entry = climber(plant).entry
        name = statement["fact"].replace(" ", "_")
        value = entry.other.get(statement["fact"]) or getattr(entry, name)
        assert meets(told(value), statement), plant


@pytest.mark.parametrize("statement", of("frame figure"))
def test_a_printed_figure_of_a_frame_meets_the_one_known_here(statement: dict[str, Any]) -> None:
    assert meets(frame_figures(statement), statement)


@pytest.mark.parametrize("statement", of("not known"))
def test_of_a_plant_that_is_not_known_that_is_said(statement: dict[str, Any]) -> None:
    for plant in statement["plants"]:
        found = matches(plant)
        assert (found.ranked, found.rejected) == ((), ())
        assert any("Nothing is known" in one for one in found.remarks)


@pytest.mark.parametrize("statement", of("not met"))
def test_what_fails_still_fails_for_the_reason_given(statement: dict[str, Any]) -> None:
    """Once it no longer fails it belongs among those that are met."""
    assert len(statement["why"]) > 30
    if "kind" in statement:
        assert not meets(frame_figures(statement), statement)
        return
    if "sun" in statement:
        assert all(lit(plant, statement["sun"]) == "knocked out" for plant in statement["plants"])
        return
    for plant in statement["plants"]:
        for on in statement["supports"]:
            pairing = ranked(plant, on)
            if "words" not in statement:
                assert pairing is None, (plant, on)
                continue
            assert pairing is not None, (plant, on)
            assert all(words not in text(pairing) for words in statement["words"])


def test_every_statement_names_its_source_and_is_checked() -> None:
    known = {
        "ranked",
        "ranked on one",
        "ruled out",
        "holds by",
        "height",
        "light enough",
        "too dark",
        "said",
        "said in wind",
        "lighter",
        "figure",
        "frame figure",
        "not known",
        "not met",
    }
    for one in STATEMENTS:
        assert one["source"], one["says"]
        assert one["expect"] in known, one["says"]
    assert len({one["says"] for one in STATEMENTS}) == 148
