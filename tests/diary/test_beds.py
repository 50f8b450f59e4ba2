"""Beds by year, with families."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.diary.beds import beds_by_year, family_of, years_shown
from tests.diary.diaries import BED, HEAD, NET, folder, season, seasons

if TYPE_CHECKING:
    from pathlib import Path


def test_a_bed_has_what_it_had_and_what_it_has() -> None:
    text = HEAD + BED + "  had tall pea in 2025, climbing squash in 2026\n" + NET
    (bed,) = beds_by_year(season(text))
    told = [(year, [(c.plant, c.family) for c in crops]) for year, crops in bed.by_year]
    assert told == [
        (2025, [("tall pea", "pea family")]),
        (2026, [("climbing squash", "cucumber family")]),
        (2027, [("pole bean", "pea family")]),
    ]


def test_what_is_longer_ago_than_four_years_is_left_out() -> None:
    text = HEAD + BED + "  had tall pea in 2021, climbing squash in 2023\n"
    found = beds_by_year(season(text))
    assert years_shown(found, season(text)) == (2023, 2027)


def test_last_years_plan_tells_what_grew(tmp_path: Path) -> None:
    last = HEAD.replace("2027", "2026") + BED + NET
    this = "read 2026 as last year\n" + HEAD + BED
    found = seasons(folder(tmp_path, year_2026=last, year_2027=this) / "2027.plan")[0]
    (bed,) = beds_by_year(found)
    assert [crop.plant for crop in bed.crops(2026)] == ["pole bean"]


def test_what_stood_beside_a_bed_did_not_grow_in_it(tmp_path: Path) -> None:
    last = HEAD.replace("2027", "2026") + BED + NET.replace("in Long Bed", "west of Long Bed")
    this = "read 2026 as last year\n" + HEAD + BED
    found = seasons(folder(tmp_path, year_2026=last, year_2027=this) / "2027.plan")[0]
    assert beds_by_year(found)[0].by_year == ()


def test_plants_of_two_families_have_none_together() -> None:
    assert family_of(("pole bean", "tall pea")) == "pea family"
    assert family_of(("pole bean", "cucumber")) == ""
    assert family_of(()) == ""
