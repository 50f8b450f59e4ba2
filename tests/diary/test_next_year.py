"""Next year's plan: it reads back, what stands is in it, and the crops are blank."""

from __future__ import annotations

import shutil
from datetime import date
from typing import TYPE_CHECKING

import pytest
from hypothesis import given, settings

from plantframe.diary.next_year import next_plan
from plantframe.language.files import read_input, read_plan
from plantframe.plan.building import build
from plantframe.season.season import Season
from tests.diary.diaries import BED, HEAD, NET, TODAY, folder
from tests.jobs.random_gardens import gardens

if TYPE_CHECKING:
    from pathlib import Path

    from plantframe.diary.next_year import Carried
    from plantframe.plan.things import Plan

ROSES = """fence Rose Fence, mortised fence, along the lane
  bays 4 of 9 ft
  grow climbing rose 'Quarryman', 4 plants, plant out 20 March (bare roots)
  ready by 1 March
  done set the first post, 28 February
"""
BOX = """cover Seed Box, cold frame, west of Long Bed (by the water butt)
  size 8 ft 1 in x 4 ft, low side south
  lights 4
  (hinges oiled in spring)
  grow lettuce, 40 plants, sow 10 March under cover
  on 1 October to 15 April
  built 2021
"""


def carried(text: str, today: date = TODAY) -> tuple[Carried, Plan]:
    """Next year's plan of a text, and what it reads as."""
    reading = read_input(text)
    plan, _ = build(reading, today)
    following = next_plan(reading, Season(plan, today))
    again = read_input(following.text)
    found, mistakes = build(again, today)
    assert not again.mistakes, [slip.says for slip in again.mistakes]
    assert not mistakes, [slip.says for slip in mistakes]
    return following, found


def test_what_stands_is_carried_with_its_year_and_what_came_down_is_not() -> None:
    following, plan = carried(HEAD + BED + NET + ROSES + BOX)
    assert following.stands == ("Rose Fence", "Seed Box")
    assert following.down == ("Bean Net",)
    assert plan.garden.year == 2028
    assert plan.frames["Rose Fence"].built == 2027
    assert plan.frames["Seed Box"].built == 2021


def test_what_lives_on_is_there_again_and_crops_are_blank() -> None:
    _, plan = carried(HEAD + BED + NET + ROSES + BOX)
    assert [one.named for one in plan.plantings] == ["climbing rose 'Quarryman'"]
    assert plan.plantings[0].count == 4
    assert plan.plantings[0].out is None
    assert plan.frames["Rose Fence"].ready_by is None
    assert plan.frames["Rose Fence"].marks == ()


def test_remarks_and_own_words_go_along_as_typed() -> None:
    following, _ = carried(HEAD + BED + BOX)
    assert "cover Seed Box, cold frame, west of Long Bed (by the water butt)\n" in following.text
    assert "  (hinges oiled in spring)\n" in following.text
    assert "  on 1 October to 15 April\n" in following.text


def test_a_bed_knows_what_it_grew() -> None:
    _, plan = carried(HEAD + BED + "  had tall pea in 2025, climbing squash in 2026\n" + NET)
    told = [(grown.plant, grown.year) for grown in plan.beds["Long Bed"].had]
    assert told == [("tall pea", 2025), ("climbing squash", 2026), ("pole bean", 2027)]


def test_lessons_and_what_was_not_done_are_remarks() -> None:
    text = (
        HEAD + BED + NET + "note Bean Net: never again on a Sunday\ntask paint the gate, by 1 May\n"
    )
    following, plan = carried(text + "task rip 4 of 2x4, done 3 March\n")
    assert "(2027: Bean Net: never again on a Sunday.)" in following.text
    assert "(Not marked as done in 2027: paint the gate.)" in following.text
    assert "rip 4" not in following.text
    assert plan.tasks == ()
    assert plan.notes == ()


def test_lines_are_to_be_marked_anew_and_holidays_are_over() -> None:
    text = HEAD + "  lines marked 2 March\n  away 10 to 20 July\n  free Saturday 6 h\n" + BED
    _, plan = carried(text)
    assert plan.garden.lines_marked is None
    assert plan.garden.away == ()
    assert plan.garden.free_h == {"saturday": 6}


def test_a_southern_season_is_followed_by_the_next() -> None:
    _, plan = carried("garden Wattle Flat, 2026-27\n  place 37.8 S, 145 E\n" + BED)
    assert plan.garden.seasons == (2027, 2028)


def test_a_shed_written_in_the_plan_itself_goes_along() -> None:
    _, plan = carried(HEAD + "shed\n  6 posts 2x2, 8 ft\n  9 nails 20d (rusty)\n" + BED)
    assert len(plan.shed) == 2


def test_files_that_last_are_read_and_this_years_becomes_last_year(tmp_path: Path) -> None:
    place = folder(
        tmp_path,
        places=HEAD.replace(", 2027", "") + BED,
        log_2027="log 2 August, Bean Net, picked 1 kg\n",
        year_2027="read places\nread log-2027\ngarden Hazel End, 2027\n" + NET + ROSES,
    )
    reading = read_plan(place / "2027.plan")
    plan, _ = build(reading, TODAY)
    text = next_plan(reading, Season(plan, TODAY)).text
    assert text.splitlines()[:2] == ["read places", "read 2027 as last year"]
    (place / "2028.plan").write_text(text, "utf-8")
    again = read_plan(place / "2028.plan")
    found, mistakes = build(again, TODAY)
    assert not again.mistakes
    assert not mistakes
    assert [(one.plant, one.year) for one in found.history["Long Bed"]] == [("pole bean", 2027)]


@pytest.mark.parametrize(
    ("demo", "this", "after", "stands"),
    [
        ("quarry-row", "2027", "2028", ("Rose Fence", "Clematis Lattice", "Seed Box")),
        ("tussock-flat", "2026-27", "2027-28", ("Salad Box",)),
    ],
)
def test_the_demo_gardens_go_on_without_a_slip(
    root: Path, tmp_path: Path, demo: str, this: str, after: str, stands: tuple[str, ...]
) -> None:
    place = tmp_path / demo
    shutil.copytree(root / "plans" / demo, place)
    reading = read_plan(place / f"{this}.plan")
    plan, _ = build(reading, TODAY)
    following = next_plan(reading, Season(plan, TODAY))
    assert following.stands == stands
    (place / f"{after}.plan").write_text(following.text, "utf-8")
    again = read_plan(place / f"{after}.plan")
    _, mistakes = build(again, date(2028, 1, 10))
    new = f"{after}.plan"
    assert not [slip.says for slip in (*again.mistakes, *mistakes) if slip.where.file == new]


@settings(max_examples=60)
@given(text=gardens())
def test_next_years_plan_of_any_garden_adds_no_slip(text: str) -> None:
    """Random gardens: whatever stands in them, the plan after reads as well as the one before."""
    reading = read_input(text)
    plan, before = build(reading, TODAY)
    again = read_input(next_plan(reading, Season(plan, TODAY)).text)
    found, after = build(again, TODAY)
    known = {slip.name for slip in (*reading.mistakes, *before)}
    assert {slip.name for slip in (*again.mistakes, *after)} <= known
    assert all(frame.built is not None for frame in found.frames.values())


def test_years_follow_one_another(tmp_path: Path) -> None:
    """Three in a row, each read from the one before: the bed's history grows, nothing doubles."""
    text = HEAD + BED + ROSES
    for year in (2027, 2028, 2029):
        reading = read_input(text + NET)
        plan, _ = build(reading, date(year, 11, 1))
        text = next_plan(reading, Season(plan, date(year, 11, 1))).text
    assert text.count("climbing rose") == 1
    assert [line for line in text.splitlines() if "had" in line] == [
        "  had pole bean in 2027, 2028, 2029"
    ]
    assert "built 2027" in text
    assert tmp_path.exists()


def test_bars_that_bowed_go_along_as_a_remark_with_their_years() -> None:
    text = (
        "garden Hill, 2027\nframe Bean Net, net frame\n  grow pole bean\n"
        "log 2 August, Bean Net, bar 5 cm low\nlog 9 August, Bean Net, bar 5 cm low\n"
    )
    reading = read_input(text)
    plan, _ = build(reading, TODAY)
    told = next_plan(reading, Season(plan, TODAY)).text
    assert "(a bar bowed under pole bean on a net frame in 2027.)" in told


@pytest.mark.parametrize(
    "line",
    [
        "  done unscrew the foot strips, 20 March 2027\n",
        "task unscrew the foot strips, at Seed Box, done 20 March\n",
    ],
)
def test_strips_put_on_this_year_are_not_asked_for_again_next_year(line: str) -> None:
    box = "cover Seed Box, cold frame\n  size 8 ft x 4 ft\n  built 2018\n"
    reading = read_input(HEAD + box + line)
    plan, _ = build(reading, TODAY)
    text = next_plan(reading, Season(plan, TODAY)).text
    assert "  done unscrew the foot strips, 20 March 2027\n" in text
