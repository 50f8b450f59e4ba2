"""The seasons a plan knows of: its own, and those it brings in as last year."""

from __future__ import annotations

from pathlib import PurePath
from typing import TYPE_CHECKING

from plantframe.frozen import replace
from plantframe.plan.building import build
from plantframe.plan.words import season_years
from plantframe.season.season import Season

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import date

    from plantframe.language.blocks import Text
    from plantframe.language.files import Reading

SUFFIX = ".plan"


def seasons_of(reading: Reading, today: date) -> tuple[Season, ...]:
    """Each season by itself, this one first, then back through the years."""
    plan, _ = build(reading, today)
    return (Season(plan, today), *earlier_seasons(reading, plan.garden.year, today))


def earlier_seasons(reading: Reading, year: int, today: date) -> tuple[Season, ...]:
    """The seasons brought in as last year, the latest first.

    year   the plan's own, so that a file that names the same season is not taken for another
    """
    found: dict[int, Season] = {}
    for text in reading.history:
        if _year_of(text) is None:
            continue
        own = _with_what_it_reads(text, reading)
        past = replace(reading, name=PurePath(text.file).stem, main=text.file, texts=own)
        plan, _ = build(replace(past, history=(), mistakes=()), today)
        if plan.garden.year != year:
            found.setdefault(plan.garden.year, Season(plan, today))
    return tuple(found[one] for one in sorted(found, reverse=True))


def _year_of(text: Text) -> tuple[int, int] | None:
    heads = [block for block in text.blocks if block.word == "garden"]
    return next((found for one in heads if (found := season_years(one))), None)


def _with_what_it_reads(text: Text, reading: Reading) -> tuple[Text, ...]:
    """A file of a season with the files it brings in for the same season."""
    by_name = {one.file: one for one in (*reading.history, *reading.texts)}
    found = [text]
    for one in found:
        for wanted in one.imports:
            other = None if wanted.history else _named(wanted.name, one, by_name)
            same = other is not None and (_year_of(other) in {None, _year_of(text)})
            if other is not None and same and other not in found:
                found.append(other)
    return tuple(found)


def _named(name: str, beside: Text, by_name: dict[str, Text]) -> Text | None:
    file = name if name.endswith(SUFFIX) else name + SUFFIX
    return by_name.get(str(PurePath(beside.file).parent / file)) or by_name.get(file)


def label(season: Season) -> str:
    """The season as a gardener writes it: 2027, or 2026-27 in the south."""
    return label_of(season.plan.garden.seasons)


def label_of(years: Sequence[int]) -> str:
    """The same, of its two calendar years."""
    first, second = years
    return str(first) if first == second else f"{first}-{second % 100:02d}"
