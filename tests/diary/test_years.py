"""Seasons a plan brings in as last year, each by itself."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.diary.picks import totals_of
from plantframe.diary.years import label
from tests.diary.diaries import BED, HEAD, NET, folder, season, seasons

if TYPE_CHECKING:
    from pathlib import Path


def three_years(place: Path) -> Path:
    years = {}
    for year in (2025, 2026, 2027):
        before = f"read {year - 1} as last year\n" if year > 2025 else ""
        head = f"read places\nread log-{year}\n{before}garden Hazel End, {year}\n"
        years[f"year_{year}"] = head + NET
        years[f"log_{year}"] = f"log 2 August, Bean Net, picked {year - 2020} kg\n"
    return folder(place, places=HEAD.replace(", 2027", "") + BED, **years)


def test_each_year_has_its_own_log_and_no_others(tmp_path: Path) -> None:
    found = seasons(three_years(tmp_path) / "2027.plan")
    assert [label(one) for one in found] == ["2027", "2026", "2025"]
    assert [(one.season, one.weight_kg) for one in totals_of(found)] == [
        ("2027", 7.0),
        ("2026", 6.0),
        ("2025", 5.0),
    ]


def test_last_years_beds_come_from_the_file_that_both_years_read(tmp_path: Path) -> None:
    found = seasons(three_years(tmp_path) / "2027.plan")
    assert all("Long Bed" in one.plan.beds for one in found)


def test_a_plan_without_history_is_one_season() -> None:
    assert label(season(HEAD)) == "2027"


def test_a_southern_season_has_two_years() -> None:
    assert label(season("garden Wattle Flat, 2026-27\n  place 37.8 S, 145 E\n")) == "2026-27"


def test_the_demo_gardens_know_the_year_before(root: Path) -> None:
    for plan, known in (("quarry-row/2027", ["2027", "2026"]), ("tussock-flat/2026-27", None)):
        found = [label(one) for one in seasons(root / "plans" / f"{plan}.plan")]
        assert found == (known or ["2026-27", "2025-26"])
