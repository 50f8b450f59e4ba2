"""eaves-window-gutter: a vine on a wall grows up into the gutter and under the tiles."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import is_yearly, opening, word
from plantframe.advice.edits import add_task, other_crop, set_fact
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.heights import lengths_m
from plantframe.advice.mentions import has_task
from plantframe.frozen import frozen
from plantframe.language.values import Size
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.plan.things import Thing
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

CLEAR_M = 0.30  # below the gutter (common practice, no source)
HAIR_M = 0.01
AT_WALL_M = 0.60  # a frame further off does not lead a vine to the eaves
AT_WALL = frozenset({"on", "at", "against", "along"})
# A job that keeps it down.
TRIMS = r"\b(?:trim|cut|clip|prun|shorten|stop)\w*"
LOWER = ("late clematis", "large-flowered clematis")


@frozen
class Facts:
    """A plant or its frame, the wall, and heights in m.

    grows   it is the plant's own growth that gets there, and not the frame
    """

    plant: str
    wall: str
    top_m: float
    eaves_m: float
    grows: bool


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """How high the vine comes, against the eaves that the plan gives the wall."""
    entry = planting.entry
    frame = season.frames.get(planting.holder)
    wall = _wall(planting, season)
    if entry is None or wall is None or not wall.eaves_m or planting.planting.pinched:
        return
    if word(entry.habit) not in {"climber", "leaner"}:
        return
    top, grows = _top_m(planting, entry, frame)
    if top is None or top <= wall.eaves_m - CLEAR_M + HAIR_M:
        return
    if has_task(season, TRIMS, planting.holder, wall.name):
        return
    yield Finding(
        level="warn",
        where=planting.planting.fact.where,
        block=planting.holder,
        subject=planting.name,
        facts=Facts(planting.name, wall.name, top, wall.eaves_m, grows),
        by=frame.wanted_by if frame else None,
        candidates=partial(_ways_out, planting, frame, wall),
    )


def _wall(planting: WorkedPlanting, season: Season) -> Thing | None:
    """The wall it grows on, or that its frame stands close to."""
    frame = season.frames.get(planting.holder)
    if frame is None:
        thing = season.plan.things.get(planting.holder)
        return thing if thing is not None and thing.word in {"wall", "house"} else None
    wall = frame.wall
    if wall is None:
        return None
    close = any(
        spot.thing == wall.name
        and (
            spot.relation in AT_WALL
            or (spot.distance_m is not None and spot.distance_m < AT_WALL_M)
        )
        for spot in frame.frame.spots
    )
    return wall if close else None


def _top_m(
    planting: WorkedPlanting, entry: Plant, frame: WorkedFrame | None
) -> tuple[float | None, bool]:
    """How high it comes, m, and whether it grows there of itself.

    What is cut back each year, tied in or sown anew keeps to its frame; the rest goes on by itself,
    to the least that it is known to reach.
    """
    support = frame.height_m if frame else None
    kept = (
        planting.planting.cut
        or word(entry.holds_on) == "tied in"
        or (word(entry.cut_back) == "yearly" and not entry.strangles and not _clings(entry))
        or is_yearly(entry)
        or word(entry.life) == "herbaceous"
    )
    if kept:
        return support, False
    least = lengths_m(entry)[0]
    return (least, True) if least is not None else (support, False)


def _clings(entry: Plant) -> bool:
    return word(entry.holds_on) == "clings"


def _ways_out(planting: WorkedPlanting, frame: WorkedFrame | None, wall: Thing) -> Iterable[Edit]:
    """A job that keeps it down, a lower frame, a lower kind."""
    what = f"cut the {planting.name} back below the gutter, at {planting.holder}"
    yield add_task(frame.frame.block if frame else wall.block, what)
    if frame is not None and wall.eaves_m and not _grows_on(planting, frame):
        yield from _lower(frame, wall.eaves_m - CLEAR_M)
    for other in LOWER:
        if planting.planting.plant != other:
            yield other_crop(planting.planting, other)


def _grows_on(planting: WorkedPlanting, frame: WorkedFrame) -> bool:
    return planting.entry is not None and _top_m(planting, planting.entry, frame)[1]


def _lower(frame: WorkedFrame, top: float) -> Iterable[Edit]:
    """The same frame with its top so high."""
    fact = frame.frame.fact("size")
    size = fact.get("size") if fact else None
    high, height = frame.figure("size.high"), frame.height_m
    if not isinstance(size, Size) or len(size.sides) != 2 or high is None or height is None:
        return
    shown = Shown(frame.garden.imperial)
    step = 0.1524 if shown.imperial else 0.1
    lower = int((high - (height - top)) / step + 1e-6) * step
    if lower > 1.0:
        line = f"size {shown.typed(lower)} x {size.sides[1].text}"
        yield set_fact(frame.frame, "size", line)


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    top, eaves = shown.length(facts.top_m), shown.length(facts.eaves_m)
    stop = shown.length(CLEAR_M)
    plant = opening(facts.plant)
    if facts.grows:
        says = (
            f"{plant} on {facts.wall}: it grows to {top} and more by itself, and the gutter is at "
            f"{eaves}. It wants to stop {stop} below."
        )
    else:
        says = (
            f"{plant} on {facts.wall}: the top of its frame is at {top} and the gutter at {eaves}; "
            f"{stop} below it is high enough."
        )
    return Words(
        says=says,
        if_ignored="Shoots choke the gutter and lift the tiles, and are cut from a long ladder.",
        told=f"Eaves of {facts.wall} at {eaves}.",
        assumed="The least height it is known to reach." if facts.grows else "",
        sum=f"{eaves} less {stop}: common practice.",
    )


RULE = Rule(
    name="eaves-window-gutter",
    summary="a vine on a wall comes up to the gutter, and nobody cuts it back",
    looks_at="planting",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
