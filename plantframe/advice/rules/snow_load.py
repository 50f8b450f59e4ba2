"""snow-load: a net roof, a film tunnel or panes of glass are up in the months of snow."""

from __future__ import annotations

from datetime import date, timedelta
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.amounts import how_much
from plantframe.advice.climate import cold_winters
from plantframe.advice.edits import add_task, rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import is_spoken_of
from plantframe.advice.panes import LYING_M, pane_m, snow_ratio
from plantframe.frozen import frozen
from plantframe.season.loads import grade
from plantframe.season.units import day, two_figures

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.language.reader import Fact
    from plantframe.mechanics.ranges import Range
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

SNOWY_C = -2.0  # of the usual nights of the coldest month: snow lies there
AFTER_FROST = timedelta(days=30)  # from the first frost to the first snow that lies
DEEP_M = 0.15
WET_KG_PER_M3 = (150.0, 300.0)  # of fresh wet snow (common practice, no source)
SEEN_TO = r"\b(snow|roof off|nets? off|take (off )?the (net|roof|film)|knock)"
THICKER_M = (0.004, 0.005, 0.006)
SNOW_CARE = frozenset({"roof off", "snow"})


@frozen
class Facts:
    """What stays up, its area in m2, and the weight of snow on it, kg."""

    cover: str
    net: bool
    area_m2: float
    snow_kg: tuple[float, float]
    by: date


@frozen
class Glass:
    """The thickness of the panes, m, and the stress in them under snow over what they stand."""

    cover: str
    thick_m: float
    ratio: Range


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """What its kind's care wants off or swept in snow, where the plan says winters are hard."""
    structure, worked, garden = frame.structure, frame.worked, frame.garden
    if structure is None or worked is None or not cold_winters(garden, SNOWY_C):
        return
    if not _up_in_winter(frame) or is_spoken_of(season, SEEN_TO, frame.frame.name):
        return
    yield from _glass(frame)
    care = {one.id for one in structure.care} & SNOW_CARE
    if not care:
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


def _glass(frame: WorkedFrame) -> Iterable[Finding]:
    """Each light's one pane under wet snow that lies."""
    pane, fact = pane_m(frame), frame.frame.fact("lights")
    if pane is None or fact is None:
        return
    ratio = snow_ratio(pane, *WET_KG_PER_M3)
    level = grade(ratio.middle)
    if level == "silent":
        return
    by = _before_snow(frame)
    yield Finding(
        level=level,
        where=fact.where,
        block=frame.frame.name,
        subject="glass",
        facts=Glass(frame.frame.name, pane[2], ratio),
        ratio=ratio,
        by=by,
        candidates=partial(_stouter, frame, fact, pane),
        ways=("A soft broom after every fall, and nobody leans on the lights.",),
    )


def _stouter(frame: WorkedFrame, fact: Fact, pane: tuple[float, float, float]) -> Iterable[Edit]:
    """The snow off as it falls; the thinnest glass of the trade that stands it."""
    yield add_task(frame.frame.block, f"sweep the snow off {frame.frame.name} as it falls")
    for thick_m in THICKER_M:
        if thick_m > pane[2] and grade(_middle((*pane[:2], thick_m))) == "silent":
            yield rewrite(fact, {"thick": f"{thick_m * 1000:.0f} mm"})
            return


def _middle(pane: tuple[float, float, float]) -> float:
    return snow_ratio(pane, *WET_KG_PER_M3).middle


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


def words(facts: Facts | Glass, shown: Shown) -> Words:
    """It in words."""
    wet = "9 to 19 lb a cubic foot" if shown.imperial else "150 to 300 kg a cubic metre"
    if isinstance(facts, Glass):
        return _glass_words(facts, wet, shown)
    low, high = (shown.weight(one) for one in facts.snow_kg)
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


def _glass_words(facts: Glass, wet: str, shown: Shown) -> Words:
    deep, thick = shown.length(LYING_M), f"{facts.thick_m * 1000:.2g} mm"
    ratio = facts.ratio
    return Words(
        says=(
            f"{facts.cover}: panes of {thick} glass under {deep} of wet snow that lies for a week: "
            f"{how_much(ratio.middle, 'glass stands')}."
        ),
        if_ignored="Panes crack one night, and splinters lie in the bed until they are found.",
        told=f"{facts.cover}: lights of {thick} glass, up over winter.",
        assumed=f"Wet snow of {wet}, {deep} deep, left for a week; panes held on all four edges.",
        sum=(
            "Stress over what glass stands for so long: "
            f"{two_figures(ratio.middle)} (from {two_figures(ratio.low)} to "
            f"{two_figures(ratio.high)}). EN 1991-1-3 for snow on a roof, EN 16612 for glass under "
            "a load that stays."
        ),
    )


RULE = Rule(
    name="snow-load",
    summary="a net roof, a film tunnel or thin panes are up in the months of snow",
    looks_at="frame",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
)
