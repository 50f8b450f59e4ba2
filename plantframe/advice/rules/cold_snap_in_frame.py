"""cold-snap-in-frame: colder nights than one pane of glass keeps out of a cold frame."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climate import is_in, normals_c
from plantframe.advice.climbers import opening
from plantframe.advice.edits import add_task
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import is_spoken_of
from plantframe.frozen import frozen
from plantframe.season.plantings import as_range
from plantframe.season.units import MONTHS, listed

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

COLD_C = -7.0
HELD_OFF_C = (3.0, 5.0)  # by one pane, on a clear night (common practice, no source)
MATS = r"\b(mats?|blankets?|straw|second (layer|light)|double|quilt|sacking|carpet|bubble|inner)\b"


@frozen
class Facts:
    """The frame, the month and its usual lowest, C, and what does not come through that."""

    cover: str
    month: int
    low_c: float
    plants: tuple[str, ...]


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """The coldest month that the lights are on, against what grows under them."""
    if frame.structure is None or "lights" not in frame.structure.facts or not frame.plantings:
        return
    if frame.word("lights.glazing") not in {"", "glass"}:
        return  # two walls of plastic keep out rather more
    on = frame.frame.on
    lows = {
        month: low
        for month, low in normals_c(frame.garden, "normal low").items()
        if on is None or is_in(month, ((on.day.month, on.last.month),))
    }
    if not lows or min(lows.values()) >= COLD_C:
        return
    month = min(lows, key=lambda one: lows[one])
    inside = lows[month] + sum(HELD_OFF_C) / 2
    frozen_out = tuple(
        dict.fromkeys(
            one.name
            for one in frame.plantings
            if one.entry is not None and _dies(as_range(one.entry.other.get("survives")), inside)
        )
    )
    if not frozen_out or is_spoken_of(season, MATS, frame.frame.name):
        return
    yield Finding(
        level="note",
        where=frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, month, lows[month], frozen_out),
        candidates=partial(_ways_out, frame),
        ways=("Corn salad, claytonia and kale come through what stops lettuce.",),
    )


def _dies(survives: object, inside_c: float) -> bool:
    """Colder inside than it comes through; what nobody has printed is taken to suffer."""
    low = getattr(survives, "low", None)
    return low is None or inside_c < low


def _ways_out(frame: WorkedFrame) -> Iterable[Edit]:
    """A mat over the lights on hard nights."""
    yield add_task(frame.frame.block, f"lay mats over {frame.frame.name} on hard nights")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    low = shown.warmth(facts.low_c)
    degrees = "5 to 9 °F" if shown.imperial else "3 to 5 °C"
    return Words(
        says=(
            f"{facts.cover}: nights of {low} are usual in {MONTHS[facts.month - 1]}, and one pane "
            f"of glass keeps off about {degrees}."
        ),
        if_ignored=f"{opening(listed(facts.plants))} may freeze through and not come back.",
        told=f"Normal low {MONTHS[facts.month - 1]} {low}; glass lights.",
        assumed="A clear, still night; lights that fit well.",
        sum=f"{low}, and {degrees} kept off, against the cold that each plant comes through.",
    )


RULE = Rule(
    name="cold-snap-in-frame",
    summary="colder nights than one pane of glass keeps out of a cold frame",
    looks_at="frame",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
