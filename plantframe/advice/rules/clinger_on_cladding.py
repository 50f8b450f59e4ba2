"""clinger-on-cladding: a plant that fixes itself to the wall, on boards, paint or open joints."""

from __future__ import annotations

import re
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import is_yearly, opening, suited, word
from plantframe.advice.edits import other_crop
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.walls import wall_of
from plantframe.frozen import frozen
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.plan.things import Thing
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

HURT = re.compile(
    r"\b(timber|wood|wooden|boards?|boarding|weatherboards?|clapboards?|cladding|siding|shingles?|"
    r"shakes?|vinyl|paint(ed)?|cracked|loose|crumbling|render|stucco)\b"
)
FREE_M = 0.6  # from the wall to a post of its own (common practice, no source)


@frozen
class Facts:
    """The plant, the wall, and what it is made of."""

    plant: str
    wall: str
    surface: str
    does: str


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """A plant that the catalogue knows to cling, on a wall that suffers from it."""
    entry, wall = planting.entry, wall_of(planting, season)
    if entry is None or wall is None:
        return
    harm = next((one for one in entry.harm if one.kind == "clings to cladding"), None)
    surface = _suffers(wall)
    if harm is None or not surface:
        return
    yield Finding(
        level="stop",
        where=planting.planting.fact.where,
        block=planting.holder,
        subject=planting.name,
        facts=Facts(planting.name, wall.name, surface, harm.what),
        by=planting.in_ground.day if planting.in_ground else None,
        candidates=partial(_ways_out, planting, season),
        ways=(_way(Shown(season.plan.garden.imperial)),),
    )


def _suffers(wall: Thing) -> str:
    """What of the wall suffers, in the gardener's words; "" for sound masonry or where unsaid."""
    if HURT.search(wall.surface.lower()):
        return wall.surface
    return "paint" if wall.painted is not None else ""


def _way(shown: Shown) -> str:
    return (
        f"A post of its own {shown.length(FREE_M)} or more off the wall; or, on battens, a climber "
        "that holds by tendrils or leaf stalks."
    )


def _ways_out(planting: WorkedPlanting, season: Season) -> Iterable[Edit]:
    """What the trade grows on this kind of frame and does not cling."""
    frame = season.frames.get(planting.holder)
    for other in suited(frame) if frame is not None else ():
        lasts = other.grown_for != "food" and not is_yearly(other)
        if lasts and word(other.holds_on) in {"tendrils", "leaf stalks"}:
            yield other_crop(planting.planting, other.name)


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    return Words(
        says=f"{opening(facts.plant)} on {facts.wall} ({facts.surface}): {facts.does}.",
        if_ignored="Every year there is more of it, and more of the wall comes off with it.",
        told=f"{opening(facts.plant)}, {facts.wall}, {facts.surface}.",
        assumed="On sound, unpainted masonry it does little harm.",
        sum="Said of plants that cling by themselves, on wood, paint and cracked masonry.",
    )


RULE = Rule(
    name="clinger-on-cladding",
    summary="a plant that fixes itself to walls, on boards, paint or cracked masonry",
    looks_at="planting",
    levels=("stop",),
    basis="common practice",
    check=check,
    words=words,
)
