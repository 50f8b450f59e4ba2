"""mesh-wrong: the openings of a net do not suit the hand, the fruit or the tendrils."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import SLING, is_pea, is_planned, matter, opening, word
from plantframe.advice.edits import add_block, rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.rules.needs_sling import SLUNG_KG
from plantframe.frozen import frozen
from plantframe.language.values import Measure
from plantframe.season.plantings import WorkedPlanting, as_range

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.language.reader import Fact
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

GRACE_M = 0.003
# A hand goes through 10 cm; a pea's tendrils still find a cord across 20 cm; a fruit wider than
# seven tenths of a square is held fast by it (all three common practice, no source).
HAND_M = 0.1
TENDRIL_M = 0.2
TIGHT_FRUIT = 0.7
# Where the mesh of a net or a panel is typed: fact word, slot.
TYPED = (("mesh", "length"), ("net", "mesh"), ("panels", "mesh"))


@frozen
class Facts:
    """The mesh, and what is wrong with it.

    fault   "hand", "fruit" or "tendril"
    """

    plant: str
    frame: str
    fault: str
    mesh_m: float
    wanted_m: tuple[float, float]
    fruit_m: tuple[float, float] | None


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """The mesh that the plan gives, against the hand, the fruit and the tendrils."""
    typed = typed_mesh(frame)
    if typed is None or not any(matter(frame, held) in {"net", "mesh"} for held in frame.holds):
        return
    fact, slot, mesh = typed
    for planting in frame.plantings:
        entry = planting.entry
        wanted = as_range(entry.mesh) if entry else None
        if entry is None or wanted is None:
            continue
        fruit = as_range(entry.fruit_across)
        fault = _fault(entry, mesh, wanted.low)
        if not fault or (fault == "fruit" and is_planned(season, frame, SLING)):
            continue
        yield Finding(
            level="note" if fault == "fruit" else "warn",
            where=fact.where,
            block=frame.frame.name,
            subject=planting.name,
            facts=Facts(
                planting.name,
                frame.frame.name,
                fault,
                mesh,
                (wanted.low, wanted.high),
                (fruit.low, fruit.high) if fruit else None,
            ),
            by=frame.wanted_by,
            candidates=partial(_ways_out, frame, planting, fault, (fact, slot)),
        )


def typed_mesh(frame: WorkedFrame) -> tuple[Fact, str, float] | None:
    """The line that gives the mesh, the slot it is in, and its width in m."""
    for fact_word, slot in TYPED:
        for fact in frame.frame.facts.get(fact_word, ()):
            value = fact.get(slot)
            if isinstance(value, Measure) and value.dimension == "length":
                return fact, slot, value.value
    return None


def _fault(entry: Plant, mesh_m: float, wanted_m: float) -> str:
    fruit = as_range(entry.fruit_across)
    if is_pea(entry):
        return "tendril" if mesh_m > TENDRIL_M + GRACE_M else ""
    picked = word(entry.picked)
    reached_for = picked == "by hand" or (picked == "cut" and fruit is not None)
    if reached_for and mesh_m < min(HAND_M, wanted_m) - GRACE_M:
        return "hand"
    weight = as_range(entry.fruit_weight)
    # a fruit so heavy is slung whatever the mesh, and needs-sling says so
    slung = weight is not None and weight.high > SLUNG_KG
    if fruit is not None and not slung and fruit.middle > TIGHT_FRUIT * mesh_m + GRACE_M:
        return "fruit"
    return ""


def _ways_out(
    frame: WorkedFrame, planting: WorkedPlanting, fault: str, typed: tuple[Fact, str]
) -> Iterable[Edit]:
    """Another mesh, or a sling for each fruit."""
    if fault == "fruit":
        name = planting.name
        line = f"task sling each {name} on {frame.frame.name}, when it is the size of a fist"
        yield add_block(frame.frame, line)
        return
    fact, slot = typed
    imperial = frame.garden.imperial
    sizes = (("6 in", 0.1524), ("4 in", 0.1016)) if imperial else (("15 cm", 0.15), ("10 cm", 0.1))
    wanted = as_range(planting.entry.mesh) if planting.entry else None
    for size, metres in reversed(sizes) if fault == "tendril" else sizes:
        # what the sentence calls usual, and nothing beside it
        if wanted is None or wanted.low - GRACE_M <= metres <= wanted.high + GRACE_M:
            yield rewrite(fact, {slot: size})


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    mesh, plant = shown.length(facts.mesh_m), opening(facts.plant)
    wanted = shown.lengths(*facts.wanted_m)
    if facts.fault == "tendril":
        says = f"{plant} on {facts.frame}: {mesh} mesh is too wide for tendrils; {wanted} is usual."
        ignored = "The tips miss the cords and the row slides down on itself."
    elif facts.fault == "hand":
        says = f"{plant} on {facts.frame}: {mesh} mesh, where {wanted} lets a hand through to pick."
        ignored = (
            "Fruit swells in the holes and has to be cut out."
            if facts.fruit_m
            else "What hangs on the far side is picked only by walking round, or not at all."
        )
    else:
        fruit = shown.lengths(*facts.fruit_m) if facts.fruit_m else ""
        says = f"{plant} on {facts.frame}: fruit {fruit} across, and squares of {mesh}."
        ignored = (
            "A young fruit that slips into a square swells tight in it. "
            "Turn it out while it is small, or hang it in a sling."
        )
    return Words(
        says=says,
        if_ignored=ignored,
        told=f"{plant} on {facts.frame}, {mesh} mesh.",
        assumed="",
        sum=(
            f"A hand wants {shown.length(HAND_M)}; a pea's tendrils reach across "
            f"{shown.length(TENDRIL_M)}; fruit wants a third more room than its width."
        ),
    )


RULE = Rule(
    name="mesh-wrong",
    summary="a net's mesh does not suit the hand, the fruit or the tendrils",
    looks_at="frame",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
)
