"""Beds, borders, walls, hedges, trees, paths and the house."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.language.edits import lengthen
from plantframe.plan import words
from plantframe.plan.plantings import plantings_of
from plantframe.plan.things import Bed, Thing

if TYPE_CHECKING:
    from plantframe.language.reader import Block
    from plantframe.plan.site import Site
    from plantframe.plan.things import Spot

_SIDE_WALL = re.compile(r"(north|south|east|west)(?:ern)? wall", re.IGNORECASE)


def bed_of(site: Site, block: Block) -> Bed:
    """A bed or a border."""
    head, facts = block.head, block.facts
    length_m, width_m = words.sides_m(head.get("size"))
    runs, raised = block.fact("runs"), block.fact("raised")
    sun, sun_h = words.sun(block.fact("sun"), str(head.get("sun") or ""))
    return Bed(
        block.word,
        block.name,
        words.metres(head.get("long")) or length_m,
        words.metres(head.get("wide")) or width_m,
        str((runs.get("line") if runs else head.get("runs")) or ""),
        sun,
        sun_h,
        words.soil(block.fact("soil")),
        words.wind(block.fact("wind")),
        words.metres(raised.get("length") if raised else head.get("high")),
        site.had(facts),
        plantings_of(site, block),
        site.spots(block),
        site.set_asides(facts),
        block,
        site.marks(facts),
    )


def thing_of(site: Site, block: Block) -> Thing:
    """A wall, hedge, tree, path or the house."""
    head = block.head
    faces, high = block.fact("faces"), block.fact("high")
    eaves, painted = block.fact("eaves"), block.fact("painted")
    surface = block.fact("surface")
    made = [*head.all("surface"), *(surface.all("stuff") if surface else ())]
    sun, sun_h = words.sun(block.fact("sun"))
    direction = str((faces and faces.get("direction")) or head.get("facing") or "")
    spots = site.spots(block)
    if block.word == "wall" and not direction:
        _which_wall(site, block, spots)
    return Thing(
        block.word,
        block.name or block.word,
        words.metres(head.get("high")) or (words.metres(high.get("length")) if high else None),
        words.metres(head.get("wide")) or words.metres(head.get("across")),
        words.metres(head.get("long")),
        direction,
        ", ".join(str(one) for one in made),
        words.metres(eaves.get("length")) if eaves else None,
        words.metres(eaves.get("overhang")) if eaves else None,
        words.whole(painted.get("year")) if painted else None,
        sun,
        sun_h,
        plantings_of(site, block),
        spots,
        site.set_asides(block.facts),
        block,
        site.marks(block.facts),
    )


def _which_wall(site: Site, block: Block, spots: tuple[Spot, ...]) -> None:
    """A `West Wall` is on the west side, or faces west: two different walls."""
    match = _SIDE_WALL.fullmatch(block.name)
    if match is None or any(spot.part for spot in spots):
        return
    side = match[1].lower()
    edits = [
        lengthen(block.where, f", faces {side}"),
        lengthen(block.where, f", on the {side} side"),
    ]
    site.slips.say("which-wall", block.where, edits, name=block.name, side=side)
