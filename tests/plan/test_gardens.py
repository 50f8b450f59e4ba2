"""The garden: its season, place, people, hours, and the rest it says of itself."""

from __future__ import annotations

import pytest

from tests.plan.building_plans import GARDEN, SOUTH, TODAY, built, days, names_of, plan_of, slips_of


def test_a_garden_says_where_it_is_and_when_it_freezes() -> None:
    garden = plan_of(GARDEN).garden
    assert (garden.name, garden.year, garden.seasons) == ("Quarry Row", 2027, (2027, 2027))
    assert (garden.latitude, garden.longitude) == (52.1, -1.4)
    assert days(garden.frost_last) == ("2027-05-06", "2027-05-06", 0)
    assert days(garden.frost_first) == ("2027-10-12", "2027-10-12", 0)
    assert not garden.southern


def test_a_southern_garden_has_two_years() -> None:
    garden = plan_of(SOUTH).garden
    assert (garden.year, garden.seasons, garden.southern) == (2027, (2026, 2027), True)
    assert days(garden.frost_last)[0] == "2026-09-25"
    assert days(garden.frost_first)[0] == "2027-05-20"


def test_one_year_of_a_southern_garden_is_the_one_it_is_picked_in() -> None:
    garden = plan_of(SOUTH.replace("2026-27", "2027")).garden
    assert garden.seasons == (2026, 2027)


@pytest.mark.parametrize(
    "lines",
    [
        "  frost last 6 May, first 12 October\n",
        "  last frost 6 May\n  first frost 12 October\n",
        "  last frost 6 May, first 12 October\n",
        "  frost first 12 October, last 6 May\n",
    ],
)
def test_frosts_may_be_said_in_one_line_or_two(lines: str) -> None:
    garden = plan_of(f"garden Quarry Row, 2027\n{lines}").garden
    assert days(garden.frost_last)[0] == "2027-05-06"
    assert days(garden.frost_first)[0] == "2027-10-12"


def test_a_garden_may_have_no_frost() -> None:
    garden = plan_of("garden Palm Row, 2027\n  frost none\n").garden
    assert garden.frost_none
    assert garden.frost_last is None


def test_a_place_from_a_map_is_latitude_first() -> None:
    garden = plan_of("garden Quarry Row, 2027\n  place -37.8, 145\n").garden
    assert (garden.latitude, garden.longitude, garden.southern) == (-37.8, 145.0, True)


def test_people_have_their_reach_and_what_they_lift() -> None:
    garden = plan_of(
        f"{GARDEN}garden Quarry Row\n  person Maud, reach 1.95 m, lifts 15 kg\n  person May\n"
    ).garden
    maud, may = garden.people
    assert (maud.name, maud.reach_m, maud.lifts_kg) == ("Maud", 1.95, 15.0)
    assert (may.name, may.reach_m, may.lifts_kg) == ("May", None, None)
    assert garden.person("maud") is maud
    assert garden.person("Wim") is None


def test_heads_of_one_garden_in_several_files_count_together() -> None:
    garden = plan_of("garden Quarry Row\n  soil clay\ngarden Quarry Row, 2028\n  dog\n").garden
    assert (garden.year, garden.soil, garden.dog) == (2028, "firm clay", True)


def test_free_hours_are_by_the_day_of_the_week() -> None:
    garden = plan_of(
        "garden Quarry Row, 2027\n"
        "  free Sat & Sun 3 h, Wednesday 2 h\n"
        "  free weekday evenings 1 h\n"
    ).garden
    weekdays = {"monday": 1, "tuesday": 1, "wednesday": 3, "thursday": 1, "friday": 1}
    assert garden.free_h == weekdays | {"saturday": 3, "sunday": 3}


def test_a_free_day_without_hours_is_asked_about() -> None:
    (slip,) = slips_of("garden Quarry Row, 2027\n  free Saturdays\n")
    assert slip.name == "nothing-after"
    assert "free Saturdays what?" in slip.says


def test_when_nobody_is_there() -> None:
    garden = plan_of(
        "garden Quarry Row, 2027\n  away 10 to 20 July\n  away 24 Dec to 6 Jan, Wim\n"
    ).garden
    assert [(one.first.isoformat(), one.last.isoformat(), one.who) for one in garden.away] == [
        ("2027-07-10", "2027-07-20", ""),
        ("2027-12-24", "2028-01-06", "Wim"),
    ]


def test_the_rest_that_a_garden_may_say() -> None:
    garden = plan_of(
        "garden Quarry Row, 2027\n"
        "  place 52 N, 1 W\n"
        "  wind exposed, from SW\n"
        "  soil heavy clay\n"
        "  household 4\n"
        "  children 3 and 6\n"
        "  cat\n"
        "  region Vermont, north\n"
        "  frost depth 90 cm\n"
        "  lines marked 2 March\n"
        "  no lines overhead\n"
        "  timber nominal\n"
        "  kerf 3 mm\n"
        "  tools driver, hand saw\n"
        "  power house only\n"
        "  rains June to September\n"
        "  normal high July 36 C\n"
    ).garden
    assert (garden.wind, garden.wind_from, garden.soil) == ("windy", "south-west", "firm clay")
    assert (garden.household, garden.children, garden.dog) == (4, (3.0, 6.0), True)
    assert (garden.region, garden.frost_depth_m) == ("Vermont, north", 0.9)
    assert days(garden.lines_marked)[0] == "2027-03-02"
    assert len(garden.overhead) == 1
    assert (garden.timber, garden.kerf_m) == ("nominal", 0.003)
    assert (garden.tools, garden.power) == (("driver", "hand saw"), "house only")
    assert set(garden.facts) >= {"rains", "normal high"}


def test_a_garden_that_says_nothing_has_nothing_said_of_it() -> None:
    garden = plan_of("garden Quarry Row, 2027\n").garden
    assert (garden.latitude, garden.children, garden.household, garden.kerf_m) == (None,) * 4
    assert (garden.wind, garden.soil, garden.dog, garden.people) == ("", "", False, ())


def test_a_plan_without_a_garden_is_for_this_year_and_says_so() -> None:
    plan, slips = built("bed Long Bed\n")
    assert plan.garden.year == TODAY.year
    assert [slip.name for slip in slips] == ["no-garden"]


def test_where_it_is_is_asked_only_where_an_answer_hangs_on_it() -> None:
    assert names_of("garden Quarry Row, 2027\nbed Long Bed\n") == []
    (slip,) = slips_of("garden Quarry Row, 2027\ncover Seed Box, cold frame\n")
    assert slip.name == "no-place"
    assert "which way the lights should face" in slip.says


@pytest.mark.parametrize(
    ("lines", "imperial"),
    [("bed A, 4 ft x 8 ft\n", True), ("bed A, 1.2 m x 2.4 m\n", False), ("bed A\n", False)],
)
def test_a_plan_is_imperial_where_most_of_its_lengths_are(lines: str, imperial: bool) -> None:
    assert plan_of(f"garden Quarry Row, 2027\n{lines}").garden.imperial is imperial
