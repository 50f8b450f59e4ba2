"""Frames that are moved: what a bed bore is the bed's, what a frame bore is the frame's."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

import pytest

from plantframe.advice.engine import run
from plantframe.diary.next_year import next_plan
from plantframe.language.files import read_input, read_plan
from plantframe.plan.building import build
from plantframe.season.season import Season

if TYPE_CHECKING:
    from pathlib import Path

TODAY = date(2027, 3, 1)
HEAD = """\
garden Quarry Row, 2027
  place 52.1 N, 1.4 W
  frost last 6 May, first 12 October
bed Long Bed, 4 ft x 24 ft
bed Low Bed, 4 ft x 24 ft
"""
NET = "frame Bean Net, net frame, in Long Bed\n"


def season(text: str) -> Season:
    reading = read_input(HEAD + text)
    plan, slips = build(reading, TODAY)
    assert not [one.says for one in (*reading.mistakes, *slips)]
    return Season(plan, TODAY)


def had(text: str) -> dict[str, list[int]]:
    """The years of each bed."""
    found = season(text)
    return {bed: [one.year for one in found.history(bed)] for bed in found.beds}


def test_what_a_frame_bore_is_not_charged_to_the_bed_it_stands_in_now() -> None:
    found = season(f"{NET}  had pea in 2026\n")
    assert found.history("Long Bed") == ()
    assert [one.year for one in found.plan.frames["Bean Net"].had] == [2026]


@pytest.mark.parametrize(
    ("said", "long", "low"),
    [
        ("moved from Low Bed", [], [2024, 2025, 2026]),
        ("moved from Low Bed in 2027", [], [2024, 2025, 2026]),
        ("moved from Low Bed on 3 March", [], [2024, 2025, 2026]),
        ("moved from Low Bed in 2026", [2026], [2024, 2025]),
        ("Moved from Low Bed in 2025", [2025, 2026], [2024]),
        ("stood in Low Bed in 2026", [], [2026]),
        ("stood in Low Bed in 2024, 2025", [], [2024, 2025]),
        ("stood in Low Bed 2024 to 2025", [], [2024, 2025]),
        ("stood in Low Bed", [], [2024, 2025, 2026]),
    ],
)
def test_a_crop_is_the_beds_that_the_frame_stood_in_then(
    said: str, long: list[int], low: list[int]
) -> None:
    beds = had(f"{NET}  {said}\n  had pea in 2024, 2025, 2026\n")
    assert beds == {"Long Bed": long, "Low Bed": low}


def test_peas_follow_peas_where_the_frame_was_and_not_where_it_is() -> None:
    moved = f"{NET}  moved from Low Bed\n  had pea in 2026\n  grow tall pea, sow 18 April\n"
    second = "frame Low Net, net frame, in Low Bed\n  grow tall pea, sow 18 April\n"
    found = run(season(moved + second))
    spoke = [one.finding.block for one in found.found if one.rule.name == "same-family-too-soon"]
    assert spoke == ["Low Net"]


def test_last_years_plan_charges_the_bed_each_frame_stood_in_then(tmp_path: Path) -> None:
    last = HEAD.replace("2027", "2026") + NET.replace("Long Bed", "Low Bed") + "  grow tall pea\n"
    (tmp_path / "2026.plan").write_text(last, encoding="utf-8")
    this = tmp_path / "2027.plan"
    this.write_text(f"read 2026 as last year\n{HEAD}{NET}  moved from Low Bed\n", encoding="utf-8")
    plan, _ = build(read_plan(this), TODAY)
    found = Season(plan, TODAY)
    assert found.history("Long Bed") == ()
    assert [(one.plant, one.year) for one in found.history("Low Bed")] == [("tall pea", 2026)]


def test_a_bed_that_is_gone_is_no_slip_and_a_bed_misspelt_is() -> None:
    for gone in ("Old Orchard", "Lane Bed"):
        assert season(f"{NET}  moved from {gone}\n").plan.frames["Bean Net"].stood == ()
    reading = read_input(f"{HEAD}{NET}  moved from Low Bde\n")
    _, slips = build(reading, TODAY)
    assert [one.name for one in slips] == ["no-such-place"]
    assert slips[0].candidates[0].changes[0].new == "  moved from Low Bed"


def test_next_year_the_frame_keeps_what_it_bore_and_the_move_has_its_year() -> None:
    text = f"{HEAD}{NET}  moved from Low Bed\n  had pea in 2026\n  built 2024\n"
    reading = read_input(text)
    plan, _ = build(reading, TODAY)
    carried = next_plan(reading, Season(plan, TODAY)).text
    again, slips = build(read_input(carried), TODAY)
    assert not [one.says for one in slips]
    assert "  moved from Low Bed in 2027" in carried
    assert [one.year for one in again.frames["Bean Net"].had] == [2026]
    assert [one.year for one in again.beds["Low Bed"].had] == [2026]
    assert again.beds["Long Bed"].had == ()
