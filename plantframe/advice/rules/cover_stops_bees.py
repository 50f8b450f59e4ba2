"""cover-stops-bees: a cover stays on past the first flowers of what bees must reach."""

from __future__ import annotations

from datetime import date, timedelta
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening, word
from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import is_spoken_of
from plantframe.frozen import frozen
from plantframe.season.units import day

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.language.mistakes import Where
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

# From flower to the first picking, and the longest from seed or from planting to the first flower
# (common practice, no source).
TO_PICKING = timedelta(days=14)
FROM_SEED = timedelta(days=50)
FROM_PLANT = timedelta(days=30)
LIFTED = r"\b(roll(ed)? up|lift(ed)?|open(ed)?|off (by|in) the (day|morning)|by hand|uncover)\b"


@frozen
class Facts:
    """The cover, what is under it, when that first flowers and how long the cover is on."""

    cover: str
    plant: str
    flower: date
    off: date


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """The last day of a cover that keeps insects out, against the first flower under it."""
    on = frame.frame.on
    if on is None or frame.structure is None:
        return
    if not any(care.id == "uncover" for care in frame.structure.care):
        return  # lights are opened by day, and bees come in
    if is_spoken_of(season, LIFTED, frame.frame.name):
        return
    under = {frame.frame.name, *(spot.thing for spot in frame.frame.spots if spot.thing)}
    beds = {name for name in under if name in season.plan.beds}
    for planting in season.plantings:
        if planting.holder not in under and season.bed_name(planting) not in beds:
            continue
        flower = _first_flower(planting)
        if flower is None or on.last <= flower or on.day > flower:
            continue
        yield Finding(
            level="warn",
            where=_line(frame),
            block=frame.frame.name,
            subject=planting.name,
            facts=Facts(frame.frame.name, planting.name, flower, on.last),
            by=flower,
            candidates=partial(_ways_out, frame, on.day, flower),
            ways=("Rolled up from eight to eleven on each dry morning once it flowers.",),
        )


def _line(frame: WorkedFrame) -> Where:
    """The line with the dates."""
    fact = frame.frame.fact("on")
    return fact.where if fact is not None else frame.frame.block.where


def _first_flower(planting: WorkedPlanting) -> date | None:
    """About when it first flowers, for what sets nothing without bees."""
    entry, harvest, own = planting.entry, planting.harvest, planting.planting
    if entry is None or harvest is None or word(entry.other.get("needs bees")) != "yes":
        return None
    days = [harvest[0] - TO_PICKING]
    if own.out is not None:
        days.append(own.out.day + FROM_PLANT)
    elif own.sow is not None:
        days.append(own.sow.day + FROM_SEED)
    return min(days)


def _ways_out(frame: WorkedFrame, first: date, flower: date) -> Iterable[Edit]:
    """Off when it flowers."""
    fact = frame.frame.fact("on")
    if fact is not None and first < flower:
        yield rewrite(fact, {"dates": f"{day(first)} to {day(flower)}"})


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    return Words(
        says=(
            f"{facts.cover}: the first flower of {facts.plant} is due about {day(facts.flower)}, "
            f"and the cover is on until {day(facts.off)}. No bee gets in."
        ),
        if_ignored="The flowers drop, and there is no fruit.",
        told=f"On until {day(facts.off)}.",
        assumed=f"{opening(facts.plant)} flowers two weeks or more before the first picking.",
        sum=f"{day(facts.flower)} against {day(facts.off)}; said of crops that bees must visit.",
    )


RULE = Rule(
    name="cover-stops-bees",
    summary="a cover stays on past the first flowers of what bees must reach",
    looks_at="frame",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
