"""needs-sling: fruit heavy enough to tear itself off hangs without a sling."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.climbers import SLING, is_planned, opening, word
from plantframe.advice.edits import add_block
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.plantings import as_range

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

# From here on a fruit is slung (3 lb). Source: Colorado State University Extension, Jefferson
# County, Support for vines, 2015.
SLUNG_KG = 1.4


@frozen
class Facts:
    """How heavy a fruit gets."""

    plant: str
    frame: str
    low_kg: float
    high_kg: float


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """The weight of one fruit of what climbs here, where nobody has planned a sling."""
    if not frame.holds:
        return
    for planting in frame.plantings:
        entry = planting.entry
        weight = as_range(entry.fruit_weight) if entry else None
        if entry is None or weight is None or weight.high <= SLUNG_KG:
            continue
        if word(entry.habit) != "climber" or is_planned(season, frame, SLING):
            continue
        line = (
            f"task sling each {planting.name} on {frame.frame.name}, when it is the size of a fist"
        )
        yield Finding(
            level="note",
            where=planting.planting.fact.where,
            block=frame.frame.name,
            subject=planting.name,
            facts=Facts(planting.name, frame.frame.name, weight.low, weight.high),
            by=planting.harvest[0] if planting.harvest else None,
            candidates=(add_block(frame.frame, line),),
        )


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    low, high = shown.weight(facts.low_kg), shown.weight(facts.high_kg)
    says = (
        f"{opening(facts.plant)} on {facts.frame}: a fruit comes to {low.split()[0]} to {high}. "
        f"From {shown.weight(SLUNG_KG)} on it tears itself off."
    )
    return Words(
        says=says,
        if_ignored="Each wants a cloth tied to the frame, not the vine, from a fist in size.",
        told=f"{opening(facts.plant)} on {facts.frame}; nothing said of slings.",
        assumed="",
        sum=f"{high} against {shown.weight(SLUNG_KG)}.",
    )


RULE = Rule(
    name="needs-sling",
    summary="fruit heavy enough to tear itself off hangs without a sling",
    looks_at="frame",
    levels=("note",),
    basis="published",
    source="Colorado State University Extension, Jefferson County, Support for vines, 2015",
    check=check,
    words=words,
)
