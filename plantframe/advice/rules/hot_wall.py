"""hot-wall: a plant that likes its roots cool stands against sunny masonry."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening, word
from plantframe.advice.edits import add_task
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import is_spoken_of
from plantframe.advice.walls import wall_of
from plantframe.frozen import frozen
from plantframe.season.beside import apart_deg
from plantframe.season.plantings import as_range
from plantframe.season.sunlight import faces_deg

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

MASONRY = ("brick", "stone", "concrete", "block", "masonry", "render", "stucco", "adobe")
SUNNY_DEG = 50.0  # from the side of the noon sun
MILD_DEG = 55.0  # farther from the equator no wall grows so hot
PART_SUN_H = 5.0
HOT_C = 40.0  # of leaves against such a wall in the afternoon (common practice, no source)
COOLED = r"\b(shade|shaded|mulch|stones?|tiles?|slates?|cool)\b"


@frozen
class Facts:
    """The plant and the wall."""

    plant: str
    wall: str
    feet: bool


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """Something hardy that is content with half a day's sun, on a sunny wall that holds heat."""
    entry, wall = planting.entry, wall_of(planting, season)
    latitude = season.plan.garden.latitude
    if entry is None or wall is None or latitude is None or abs(latitude) > MILD_DEG:
        return
    faces = faces_deg(wall)
    sunny = 180.0 if latitude > 0 else 0.0
    if faces is None or apart_deg(faces, sunny) > SUNNY_DEG or not _likes_it_cool(entry):
        return
    if not any(stuff in wall.surface.lower() for stuff in MASONRY):
        return
    if is_spoken_of(season, COOLED, planting.holder) or _has_low_company(planting, season):
        return
    lasts = word(entry.life) in {"woody", "perennial"}
    yield Finding(
        level="note",
        where=planting.planting.fact.where,
        block=planting.holder,
        subject=planting.name,
        facts=Facts(planting.name, wall.name, lasts),
        by=planting.in_ground.day if planting.in_ground else None,
        candidates=partial(_ways_out, planting, season) if lasts else (),
        ways=("A wall that has the sun in the morning only.",),
    )


def _likes_it_cool(entry: Plant) -> bool:
    """Clematis, peas, salads: hardy, content with part of the sun, and soft of leaf."""
    sun = as_range(entry.sun)
    if sun is None or sun.low > PART_SUN_H or word(entry.tender) != "hardy":
        return False
    yearly_climber = word(entry.holds_on) == "tendrils" and word(entry.stem) == "soft"
    return (
        word(entry.holds_on) == "leaf stalks"
        or yearly_climber
        or (word(entry.habit) == "low" and entry.grown_for == "food")
    )


def _has_low_company(planting: WorkedPlanting, season: Season) -> bool:
    """Something low grows at its feet and shades the ground."""
    own = planting.entry
    if own is not None and word(own.habit) == "low":
        return False
    return any(
        one.entry is not None and word(one.entry.habit) in {"low", "upright", "bush"}
        for one in season.held_by(planting.holder)
    )


def _ways_out(planting: WorkedPlanting, season: Season) -> Iterable[Edit]:
    """Its roots kept in the shade."""
    holder = season.plan.named(planting.holder)
    if holder is not None:
        what = f"lay flat stones over the roots of the {planting.name} on {planting.holder}"
        yield add_task(holder.block, what)


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    ignored = "It wilts by noon in a hot summer, and flowers for a short while."
    return Words(
        says=(
            f"{opening(facts.plant)} on {facts.wall}: sunny masonry gives its heat back all "
            f"afternoon, and among the leaves it can pass {shown.warmth(HOT_C)} in high summer."
        ),
        if_ignored=ignored if facts.feet else "It runs to seed or dries up early.",
        told=f"{opening(facts.plant)} on {facts.wall}, which faces the noon sun.",
        sum=(
            "Said of walls of brick, stone and the like that face the noon sun, and of plants "
            "that are content with half a day of it."
        ),
    )


RULE = Rule(
    name="hot-wall",
    summary="a plant that likes its roots cool stands against sunny masonry",
    looks_at="planting",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
