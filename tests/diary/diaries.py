"""Small invented gardens with a log, and the way from their text to the seasons."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from plantframe.diary.years import seasons_of
from plantframe.language.files import read_input, read_plan

if TYPE_CHECKING:
    from pathlib import Path

    from plantframe.season.season import Season

TODAY = date(2027, 11, 1)
HEAD = """garden Hazel End, 2027
  place 51.9 N, 2.3 W
  frost last 6 May, first 12 October
"""
NET = """frame Bean Net, net frame, in Long Bed
  bays 2 of 2.4 m
  bar 2x2
  grow pole bean, 40 plants, sow 18 May
"""
BED = "bed Long Bed, 1.2 m x 7.5 m\n"


def season(text: str) -> Season:
    """The season of a text."""
    return seasons_of(read_input(text), TODAY)[0]


def seasons(file: Path) -> tuple[Season, ...]:
    """The seasons of a plan file."""
    return seasons_of(read_plan(file), TODAY)


def folder(place: Path, **texts: str) -> Path:
    """A folder of plans; names such as `year_2027` stand for 2027.plan."""
    for name, text in texts.items():
        (place / f"{name.removeprefix('year_').replace('_', '-')}.plan").write_text(text, "utf-8")
    return place
