"""When a plant is sown, picked and pruned hangs on the garden and not on the month's name."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from plantframe.answers.answers import answers_to
from plantframe.catalogue import reading as catalogue
from plantframe.season.windows import (
    begins,
    first_picking,
    harvest_days,
    is_over,
    short_days,
    usual,
    windows,
)

TODAY = date(2027, 1, 15)
NORTH = "place 52.1 N, 1.4 W\n  frost last 6 May, first 12 October"
SOUTH = "place 37 S, 145 E\n  frost last 5 October, first 10 May"
TROPIC = "place 12.4 S, 130.8 E\n  frost none"
DRY_COAST = (
    "place 38 N, 0.5 W\n  frost last 20 February, first 5 December\n"
    "  normal high June 30 C\n  normal high July 35 C"
)


def told(plant: str, place: str, year: str = "2027") -> dict[str, str]:
    garden = answers_to(f"garden Hill, {year}\n  {place}\n", TODAY).plan.garden
    entry = catalogue.plant(plant)
    assert entry is not None
    return {span.what: span.says for span in windows(entry, garden)}


def test_average_frosts_are_told_with_the_one_in_ten() -> None:
    # Spread: University of Delaware, frost dates by probability (weather service data, 1970):
    # 25 April on average and 10 May in one spring of ten, fifteen days later.
    assert told("runner bean", NORTH)["last frost"] == (
        "6 May on average; one spring in ten after 21 May, estimate"
    )


def test_a_bean_is_sown_after_the_last_frost_and_picked_before_the_first() -> None:
    found = told("runner bean", NORTH)
    assert found["sow"].startswith("6 May to 3 June")
    assert found["first picking"].startswith("15 July")
    assert found["last sowing"].startswith("20 July: 70 days to pick")


def test_south_of_the_equator_all_of_it_is_half_a_year_on() -> None:
    found = told("runner bean", SOUTH, "2027-28")
    assert found["sow"].startswith("5 October")
    assert found["first picking"].startswith("14 December")


def test_between_the_tropics_there_is_no_frost_and_no_early_spring() -> None:
    found = told("wisteria", TROPIC)
    assert found["frost"] == "none here, as on all low ground between the tropics"
    assert "winter prune" not in found
    assert told("luffa", TROPIC)["first picking"].endswith("whenever that is")


def test_pruning_is_told_with_its_days_here() -> None:
    assert told("wisteria", NORTH)["winter prune"].startswith("late winter here: 31 January to ")
    assert told("wisteria", SOUTH, "2027-28")["winter prune"].startswith(
        "late winter here: 25 July to "
    )


def test_the_last_sowing_for_a_cold_frame_hangs_on_ten_hours_of_light() -> None:
    found = told("winter lettuce", NORTH)["last sowing for it"]
    assert found.startswith("26 August: 60 days before days fall under ten hours, 25 October")


@pytest.mark.parametrize(
    ("latitude", "falls", "returns"),
    [
        # Common practice among growers of winter salads: at 44 degrees the days are shorter than
        # ten hours from early November to early February.
        ("44 N", date(2027, 11, 7), date(2028, 2, 4)),
        ("44 S", date(2028, 5, 8), date(2028, 8, 5)),
    ],
)
def test_days_of_ten_hours_end_and_begin(latitude: str, falls: date, returns: date) -> None:
    year = "2027-28" if latitude.endswith("S") else "2027"
    garden = answers_to(f"garden Hill, {year}\n  place {latitude}, 1 W\n", TODAY).plan.garden
    found = short_days(garden)
    assert found is not None
    assert found[0] is not None
    assert found[1] is not None
    assert abs(found[0] - falls) <= timedelta(days=6)
    assert abs(found[1] - returns) <= timedelta(days=6)


def test_near_the_equator_days_are_never_so_short() -> None:
    assert "sow at any time" in told("winter lettuce", TROPIC)["light"]


def test_heat_makes_a_gap_where_the_plan_tells_its_months() -> None:
    assert told("tall tomato", DRY_COAST)["too hot"].startswith("July: above 32 °C")
    assert "too hot" not in told("tall tomato", NORTH)


def test_nothing_is_reckoned_where_the_plan_says_nothing_of_the_place() -> None:
    assert told("runner bean", "household 2") == {}


def test_what_frost_kills_is_over_with_it_and_a_pea_before() -> None:
    garden = answers_to(f"garden Hill, 2027\n  {NORTH}\n", TODAY).plan.garden
    bean, pea, rose = (catalogue.plant(name) for name in ("pole bean", "tall pea", "climbing rose"))
    assert bean is not None
    assert pea is not None
    assert rose is not None
    assert is_over(bean, garden) == date(2027, 10, 12)
    over = is_over(pea, garden)
    assert over is not None
    assert over < date(2027, 9, 1)
    assert first_picking(rose, garden) is None
    assert harvest_days(rose) is None
    assert begins(pea, garden) == usual(pea.sow, garden)


def test_between_the_tropics_there_is_no_frost_unless_the_plan_says_so() -> None:
    # Common practice, no source: low ground there has none, high ground may have some.
    place = "place 6.9 N, 79.9 E"
    low = told("pole bean", place)
    assert "no cold one between the tropics" in low["seasons"]
    assert low["first picking"] == "50 to 60 days from sowing, whenever that is"
    assert "last frost" in told("pole bean", f"{place}\n  frost last 10 March, first 20 October")
    assert "frost" not in told("pole bean", "place 45 N, 3 E")


def test_sweet_corn_is_picked_when_the_warmth_has_gathered() -> None:
    # Sum and thresholds: Oregon State University Extension, Scheduling vegetables with degree-day
    # models, 2016: 1539 Fahrenheit degree-days (855 in Celsius) above 50 F and below 86 F.
    # Days of 10 to 30 C lie between the thresholds and bring 10 each: 86 days.
    frost = "place 44 N, 123 W\n  frost last 1 May, first 10 October"
    months = ("May", "June", "July", "August")
    normals = "".join(f"\n  normal high {m} 30 C\n  normal low {m} 10 C" for m in months)
    found = told("sweet corn", frost + normals)["picking by warmth"]
    assert found.startswith("26 July (855 degree-days above 10 °C")
    assert "picking by warmth" not in told("sweet corn", frost)
