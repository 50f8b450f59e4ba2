"""Bars that bowed, told when the same pairing comes again."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from plantframe.diary.bowed import bowed_again, bows_of
from tests.diary.diaries import BED, HEAD, NET, folder, season, seasons

if TYPE_CHECKING:
    from pathlib import Path

LOG = "log 2 August, Bean Net, picked 1.4 kg, bar 5 cm low\n"


def test_a_bar_that_hung_low_is_told_with_how_far() -> None:
    (bow,) = bows_of(season(HEAD + BED + NET + LOG))
    assert bow.plants == ("pole bean",)
    assert bow.kind == "net frame"
    assert bow.low_m == pytest.approx(0.05)


@pytest.mark.parametrize("words", ["low water", "bowed to the wind", "bar painted", "Low Bed dug"])
def test_other_lines_tell_of_no_bar(words: str) -> None:
    assert bows_of(season(f"{HEAD}{BED}{NET}log 2 August, {words}\n")) == ()


def test_once_is_nothing_to_hold_against_it() -> None:
    assert bowed_again([season(HEAD + BED + NET + LOG)]) == ()


def test_twice_under_one_plant_is_told_when_it_comes_again(tmp_path: Path) -> None:
    years = {
        f"year_{year}": (
            (f"read {year - 1} as last year\n" if year > 2025 else "")
            + HEAD.replace("2027", str(year))
            + BED
            + NET.replace("Bean Net", f"Net {year}")
            + (LOG.replace("Bean Net", f"Net {year}") if year < 2027 else "")
        )
        for year in (2025, 2026, 2027)
    }
    (again,) = bowed_again(seasons(folder(tmp_path, **years) / "2027.plan"))
    assert again.says == (
        "Net 2027: a bar of yours has bowed under pole bean twice (2025, 2026), and pole bean is "
        "on a net frame again."
    )


def test_another_plant_on_it_this_year_is_not_told(tmp_path: Path) -> None:
    last = HEAD.replace("2027", "2026") + BED + NET + LOG + LOG.replace("2 Aug", "9 Aug")
    this = "read 2026 as last year\n" + HEAD + BED + NET.replace("pole bean", "sweet pea")
    found = seasons(folder(tmp_path, year_2026=last, year_2027=this) / "2027.plan")
    assert bowed_again(found) == ()
