"""wall-dry-foot: a climber is planted in the dry strip at the foot of a wall."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening, word
from plantframe.advice.edits import add_task, swap
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import is_spoken_of
from plantframe.advice.walls import wall_of
from plantframe.frozen import frozen
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.language.reader import Fact
    from plantframe.plan.things import Spot, Thing
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

LEAST_M = 0.30  # 30 to 45 cm out is usual (common practice, no source)
USUAL_M = (0.30, 0.45)
BEYOND_M = 0.15  # outside the drip of the eaves
SHELTER_M = 0.30  # eaves that keep the rain off the usual hole
GRACE_M = 0.01


@frozen
class Facts:
    """The plant, the wall, how far out it is planted and how far the eaves come out, m.

    out_m   None where only the eaves are known
    """

    plant: str
    wall: str
    out_m: float | None
    eaves_m: float | None


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """How far from the wall the hole is dug, as far as the plan says so."""
    entry = planting.entry
    if entry is None or word(entry.habit) not in {"climber", "leaner"}:
        return
    wall, out_m, fact, spot = _distance(planting, season)
    if wall is None:
        return
    eaves_m = wall.overhang_m
    near = out_m is not None and out_m < LEAST_M - GRACE_M
    under = eaves_m is not None and eaves_m >= SHELTER_M and (out_m is None or out_m < eaves_m)
    if not near and not under:
        return
    if is_spoken_of(season, r"\bwater", planting.holder, wall.name):
        return
    yield Finding(
        level="warn",
        where=planting.planting.fact.where,
        block=planting.holder,
        subject=planting.name,
        facts=Facts(planting.name, wall.name, out_m, eaves_m if under else None),
        by=planting.in_ground.day if planting.in_ground else None,
        candidates=partial(_ways_out, planting, season, wall, fact, spot),
        ways=(_way(Shown(season.plan.garden.imperial)),),
    )


def _distance(
    planting: WorkedPlanting, season: Season
) -> tuple[Thing | None, float | None, Fact | None, Spot | None]:
    """The wall, the distance from it, and the line and the place that give it."""
    things, own = season.plan.things, planting.planting.spot
    holder = season.plan.named(planting.holder)
    frame = season.frames.get(planting.holder)
    places = [(own, planting.planting.fact)] if own is not None else []
    if holder is not None and frame is None:
        places += [(spot, holder.block.head) for spot in holder.spots]
    for spot, fact in places:
        thing = things.get(spot.thing)
        if thing is not None and thing.word in {"wall", "house"} and spot.distance_m is not None:
            return thing, spot.distance_m, fact, spot
    return wall_of(planting, season), None, None, None


def _way(shown: Shown) -> str:
    return (
        f"The hole {shown.lengths(*USUAL_M)} out from the wall and clear of the eaves, the plant "
        "leaned in to it, and a can of water a week for the first two summers."
    )


def _ways_out(
    planting: WorkedPlanting, season: Season, wall: Thing, fact: Fact | None, spot: Spot | None
) -> Iterable[Edit]:
    """Farther out; or water."""
    shown = Shown(season.plan.garden.imperial)
    holder = season.plan.named(planting.holder)
    if fact is not None and spot is not None:
        out = max(USUAL_M[1], (wall.overhang_m or 0.0) + BEYOND_M)
        _, relation, rest = spot.said.partition(f" {spot.relation}")
        wide = f"{shown.typed(out)}{relation}{rest}"
        yield swap(fact, spot.said, wide, wide)
    if holder is not None:
        months = "November to March" if season.plan.garden.southern else "May to September"
        yield add_task(holder.block, f"water {planting.holder} weekly, {months}")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    hole = f"planted {shown.length(facts.out_m)} from {facts.wall}" if facts.out_m else ""
    eaves = f"eaves that come out {shown.length(facts.eaves_m)}" if facts.eaves_m else ""
    under = (
        f"{hole}, under {eaves}" if hole and eaves else hole or f"at {facts.wall}, under {eaves}"
    )
    return Words(
        says=(
            f"{opening(facts.plant)} {under}: the soil there stays dry, even in a wet summer. "
            f"{shown.lengths(*USUAL_M)} out, and clear of the eaves, is usual."
        ),
        if_ignored="It sits still for years, mildews, and dies in the first drought.",
        told=f"{opening(facts.plant)}, {under}.",
        sum=f"Said nearer than {shown.length(LEAST_M)}, and under eaves past the hole.",
    )


RULE = Rule(
    name="wall-dry-foot",
    summary="a climber is planted in the dry strip at the foot of a wall",
    looks_at="planting",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
