"""What grows where: counts, dates, who it belongs to, and what grew there before."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from plantframe.language.files import read_plan
from plantframe.plan.building import build
from tests.plan.building_plans import (
    GARDEN,
    SOUTH,
    TODAY,
    days,
    frame_of,
    names_of,
    plan_of,
    slips_of,
)

if TYPE_CHECKING:
    from pathlib import Path


def test_a_planting_has_its_plant_its_count_and_its_dates() -> None:
    (planting,) = frame_of(
        "  grow pole bean 'Millpond', 40 plants, 15 cm apart, sow 18 May, until September\n"
    ).plantings
    assert (planting.said, planting.plant, planting.cultivar) == (
        "pole bean",
        "pole bean",
        "Millpond",
    )
    assert (planting.count, planting.apart_m, planting.order) == (40, 0.15, 0)
    assert days(planting.sow) == ("2027-05-18", "2027-05-18", 0)
    assert days(planting.until) == ("2027-09-15", "2027-09-15", 14)
    assert planting.out is None
    assert planting.named == "pole bean 'Millpond'"


def test_how_a_plant_is_led_is_kept() -> None:
    (planting,) = frame_of(
        "  grow tall tomato, 12 plants, 2 leaders, pinched at the top, cut back yearly, tied in\n"
    ).plantings
    assert (planting.leaders, planting.pinched, planting.cut) == (2, "pinched at the top", True)
    assert planting.trained == "tied in"


def test_two_crops_of_one_frame_come_in_their_order() -> None:
    plantings = frame_of("  grow tall pea, sow mid March\n  grow pole bean, sow 1 July\n").plantings
    assert [(one.plant, one.order) for one in plantings] == [("tall pea", 0), ("pole bean", 1)]


@pytest.mark.parametrize(
    "lines",
    [
        "  grow pole bean, 12 plants\n  sow 1 June\n",
        "  sow 1 June\n  grow pole bean, 12 plants\n",
    ],
)
def test_a_sowing_of_its_own_line_belongs_to_the_one_crop_there_is(lines: str) -> None:
    (planting,) = frame_of(lines).plantings
    assert days(planting.sow)[0] == "2027-06-01"
    assert len(planting.facts) == 2


def test_of_two_crops_a_sowing_belongs_to_the_one_above_it() -> None:
    first, second = frame_of(
        "  grow tall pea\n  sow 15 March\n"
        "  grow pole bean\n  sow 1 July indoors\n  plant out 20 July\n"
    ).plantings
    assert days(first.sow)[0] == "2027-03-15"
    assert days(second.sow)[0] == "2027-07-01"
    assert days(second.out)[0] == "2027-07-20"
    assert second.raised == "indoors"


def test_a_sowing_of_nothing_is_asked_about() -> None:
    assert names_of(f"{GARDEN}frame Bean Net, net frame\n  sow 1 June\n") == ["no-plant"]


def test_a_sowing_a_year_off_is_asked_about_and_the_autumn_before_is_not() -> None:
    bean = f"{GARDEN}frame Bean Net, net frame\n  grow pole bean, sow"
    assert names_of(f"{bean} 18 May 2026\n") == ["a-year-off"]
    assert names_of(f"{bean} 18 October 2026\n") == []
    assert names_of(f"{bean} 18 May\n") == []


def test_a_sowing_weeks_from_a_frost_nobody_gave_is_said() -> None:
    text = "garden Quarry Row, 2027\nbed A\n  grow pea, sow 2 weeks before last frost\n"
    found = [slip for slip in slips_of(text) if slip.name == "impossible-date"]
    assert "add `frost last …, first …`" in found[0].says


def test_a_southern_sowing_falls_in_the_spring_of_the_first_year() -> None:
    plan = plan_of(f"{SOUTH}frame Net, net frame, in Top Bed\n  grow cucumber, sow early October\n")
    assert days(plan.frames["Net"].plantings[0].sow)[0] == "2026-10-05"


def test_males_and_females_make_the_count() -> None:
    (planting,) = frame_of("  grow kiwi, 7 female and 1 male\n").plantings
    assert (planting.count, planting.female, planting.male) == (8, 7, 1)


def test_a_border_names_its_plants_and_asks_about_none() -> None:
    plan = plan_of(
        f"{GARDEN}border Roses, along the drive\n  rose 'Gardener's Apricot'\n  gorse, 3\n"
    )
    rose, gorse = plan.beds["Roses"].plantings
    assert (rose.cultivar, gorse.plants, gorse.count) == ("Gardener's Apricot", (), 3)


@pytest.mark.parametrize(
    ("line", "years"),
    [
        ("had pea in 2025", [2025]),
        ("had pea in 2024, 2025", [2024, 2025]),
        ("had pea 2023-2025", [2023, 2024, 2025]),
        ("had pea last year", [2026]),
        ("had pea in 2025-26", [2025]),
        ("2025: pea", [2025]),
        ("2024, 2025: pea", [2024, 2025]),
    ],
)
def test_what_a_bed_had_and_when(line: str, years: list[int]) -> None:
    plan = plan_of(f"{GARDEN}bed Bed 3\n  {line}\n")
    assert [(one.plant, one.year) for one in plan.beds["Bed 3"].had] == [
        ("pea", year) for year in years
    ]


def test_a_bed_that_had_several_crops_had_each_in_its_year() -> None:
    plan = plan_of(f"{GARDEN}bed Bed 3\n  had pea in 2025, bean in 2026\n  had leek in 2024\n")
    had = [(one.plant, one.year) for one in plan.beds["Bed 3"].had]
    assert had == [("pea", 2025), ("bean", 2026), ("leek", 2024)]


def test_a_crop_without_its_year_is_asked_about() -> None:
    found = slips_of(f"{GARDEN}bed Bed 3\n  had beans, pea in 2025\n")
    assert [slip.name for slip in found] == ["no-year"]
    assert found[0].candidates[0].changes[0].new == "  had beans in 2026, pea in 2025"


def test_last_years_plan_tells_what_grew_in_which_bed(tmp_path: Path) -> None:
    (tmp_path / "2026.plan").write_text(
        "garden Quarry Row, 2026\n"
        "bed Long Bed\n  had leek in 2025\n  grow broad bean, 20 plants\n"
        "frame Bean Net, net frame, in Long Bed\n  grow pole bean\n",
        encoding="utf-8",
    )
    (tmp_path / "2027.plan").write_text("read 2026 as last year\n" + GARDEN, encoding="utf-8")
    plan, slips = build(read_plan(tmp_path / "2027.plan"), TODAY)
    assert not slips
    assert sorted((one.plant, one.year) for one in plan.history["Long Bed"]) == [
        ("broad bean", 2026),
        ("leek", 2025),
        ("pole bean", 2026),
    ]
    assert set(plan.frames) == set()


def test_the_wall_is_the_one_that_the_frame_is_fixed_to_though_there_are_two() -> None:
    text = (
        GARDEN
        + "wall House Wall, faces east, brick\nwall Shed Wall, faces west, brick\n"
        + "frame Blue Wires, wires on wall, on Shed Wall\n"
        + "  grow late clematis, 2 plants, 40 cm from the wall\n"
    )
    (planting,) = plan_of(text).frames["Blue Wires"].plantings
    assert planting.spot is not None
    assert planting.spot.thing == "Shed Wall"
    assert "no-such-place" not in names_of(text)
