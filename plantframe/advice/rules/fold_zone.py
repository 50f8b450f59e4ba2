"""fold-zone: something stands where a hinged lattice comes down when it folds."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.language.mistakes import Where

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from plantframe.plan.things import Bed, Frame, Spot, Thing
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

SOLID = frozenset({"hedge", "tree"})
GRACE_M = 0.02


@frozen
class Facts:
    """What stands how far off, and how far the lattice comes down.

    high_m   how high it is, None for a frame or a hedge, which is always too high
    """

    frame: str
    what: str
    away_m: float
    high_m: float | None
    reach_m: float
    hinge_m: float


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """What grows or stands in front, nearer than the lattice is high."""
    reach = frame.worked.clear_front_m if frame.worked else 0.0
    hinge = frame.figure("hinges.up")
    if reach <= 0 or hinge is None or frame.wall is None:
        return
    if frame.word("hinges.at") in {"top", "head"}:
        return  # it lifts up, and nothing below is in its way
    for what, away, high, where in _in_front(frame, season):
        if away >= reach - GRACE_M or (high is not None and high <= hinge + GRACE_M):
            continue
        yield Finding(
            level="stop",
            where=where,
            block=frame.frame.name,
            subject=what,
            facts=Facts(frame.frame.name, what, away, high, reach, hinge),
            by=frame.wanted_by,
            ways=(
                f"Move {what} out of its way, or keep to plants lower than the hinge there.",
                "With the hinge at the top it lifts instead, and wants a prop and two people.",
            ),
        )


Standing = tuple[str, float, float | None, Where]


def _in_front(frame: WorkedFrame, season: Season) -> Iterator[Standing]:
    """What stands before the lattice's wall: its name, how far off, how high, and its line."""
    plan = season.plan
    for planting in season.plantings:
        bed = plan.beds.get(planting.holder)
        away = _away_m(bed, frame) if bed is not None else None
        if away is not None and not _is_own(planting, frame):
            high = planting.entry.height if planting.entry else None
            if high is not None:
                where = planting.planting.fact.where
                yield f"the {planting.name} in {planting.holder}", away, high.usual, where
    things: list[Frame | Thing] = [
        one for one in plan.frames.values() if one.word != "cover" and one is not frame.frame
    ]
    things += [one for one in plan.things.values() if one.word in SOLID]
    for thing in things:
        away = _away_m(thing, frame)
        if away is not None:
            yield thing.name, away, None, thing.block.where


def _is_own(planting: WorkedPlanting, frame: WorkedFrame) -> bool:
    """It is the lattice's own vine, named in the bed where its roots are."""
    own = {one.planting.plant for one in frame.plantings}
    return planting.planting.plant in own


def _away_m(thing: Bed | Frame | Thing, frame: WorkedFrame) -> float | None:
    """How far before the wall or the lattice a thing begins, None where it is elsewhere."""
    wall = frame.wall
    for spot in thing.spots:
        of_wall = wall is not None and spot.thing == wall.name and spot.relation == wall.faces
        of_frame = spot.thing == frame.frame.name and _is_front(spot, frame)
        if of_wall or of_frame:
            return spot.distance_m or 0.0
    return None


def _is_front(spot: Spot, frame: WorkedFrame) -> bool:
    return frame.wall is not None and spot.relation in {frame.wall.faces, "from"}


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    away = f"{shown.length(facts.away_m)} off" if facts.away_m > 0 else "at the foot of the wall"
    high = f", {shown.length(facts.high_m)} high," if facts.high_m is not None else ""
    says = (
        f"{facts.frame} folds outward over {shown.length(facts.reach_m)} of ground: "
        f"{facts.what}{high} stands {away}."
    )
    return Words(
        says=says,
        if_ignored="It is crushed the first time, or the lattice stops half way on somebody.",
        told=f"{opening(facts.what)}, {away}.",
        assumed=f"What is lower than the hinge ({shown.length(facts.hinge_m)}) is not touched.",
        sum=f"{shown.length(facts.away_m)} against {shown.length(facts.reach_m)}.",
    )


RULE = Rule(
    name="fold-zone",
    summary="something stands where a hinged lattice comes down when it folds",
    looks_at="frame",
    levels=("stop",),
    basis="sum",
    check=check,
    words=words,
)
