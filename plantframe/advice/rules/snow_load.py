"""snow-load: a net roof or a film tunnel stays up into the months of snow."""

from __future__ import annotations

from datetime import date, timedelta
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climate import cold_winters
from plantframe.advice.edits import add_task
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import is_spoken_of
from plantframe.frozen import frozen
from plantframe.season.units import day

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

SNOWY_C = -2.0  # of the usual nights of the coldest month: snow lies there
AFTER_FROST = timedelta(days=30)  # from the first frost to the first snow that lies
DEEP_M = 0.15
WET_KG_PER_M3 = (150.0, 300.0)  # of fresh wet snow (common practice, no source)
SEEN_TO = r"\b(snow|roof off|nets? off|take (off )?the (net|roof|film)|knock)"
SNOW_CARE = frozenset({"roof off", "snow"})


@frozen
class Facts:
    """What stays up, its area in m2, and the weight of snow on it, kg."""

    cover: str
    net: bool
    area_m2: float
    snow_kg: tuple[float, float]
    by: date


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """What its kind's care wants off or swept in snow, where the plan says winters are hard."""
    structure, worked, garden = frame.structure, frame.worked, frame.garden
    if structure is None or worked is None or not cold_winters(garden, SNOWY_C):
        return
    care = {one.id for one in structure.care} & SNOW_CARE
    if not care or not _up_in_winter(frame):
        return
    if is_spoken_of(season, SEEN_TO, frame.frame.name):
        return
    along, across = worked.ground_m
    area = along * across
    if area <= 0:
        return
    by = _before_snow(frame)
    low, high = (area * DEEP_M * one for one in WET_KG_PER_M3)
    yield Finding(
        level="warn",
        where=frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, "roof off" in care, area, (low, high), by),
        by=by,
        candidates=partial(_ways_out, frame, by, net="roof off" in care),
        ways=("A ridge under it, so that snow slides off.",),
    )


def _up_in_winter(frame: WorkedFrame) -> bool:
    """It stays for years, or the plan has it on over midwinter."""
    own = frame.frame
    if own.take_down is not None:
        return False
    if own.on is not None:
        middle = date(own.on.day.year, 7 if frame.garden.southern else 1, 5)
        later = middle.replace(year=middle.year + 1)
        return own.on.day <= middle <= own.on.last or own.on.day <= later <= own.on.last
    return frame.lasting


def _before_snow(frame: WorkedFrame) -> date:
    """A month after the average first frost, else the tenth of the last month of autumn."""
    garden = frame.garden
    if garden.frost_first is not None:
        return garden.frost_first.day + AFTER_FROST
    return date(garden.year or 2000, 5 if garden.southern else 11, 10)


def _ways_out(frame: WorkedFrame, by: date, *, net: bool) -> Iterable[Edit]:
    """The roof off before it; or the snow off as it falls."""
    name = frame.frame.name
    if net:
        yield add_task(frame.frame.block, f"take the net roof off {name}, by {day(by)}")
    yield add_task(frame.frame.block, f"knock snow off {name} as it falls")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    low, high = (shown.weight(one) for one in facts.snow_kg)
    wet = "9 to 19 lb a cubic foot" if shown.imperial else "150 to 300 kg a cubic metre"
    what = "its net roof" if facts.net else "its cover"
    return Words(
        says=(
            f"{facts.cover}: {what} is up in the months of snow. {shown.length(DEEP_M)} of wet "
            f"snow on {shown.area(facts.area_m2)} weighs {low.split()[0]} to {high}."
        ),
        if_ignored="Wet snow clings even to net; posts bend, hoops flatten and the cover tears.",
        told=f"{facts.cover} stays up over winter.",
        assumed=f"Fresh wet snow of {wet}.",
        sum=f"{shown.area(facts.area_m2)} times {shown.length(DEEP_M)} times {wet}.",
    )


RULE = Rule(
    name="snow-load",
    summary="a net roof or film tunnel stays up into the months of snow",
    looks_at="frame",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
