"""frame-cooks: glass or film over plants, and nobody named to open it on a sunny morning."""

from __future__ import annotations

import re
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import add_fact
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Structure
    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

FILM = re.compile(r"\b(film|plastic|polythene|polyethylene|pvc)\b", re.IGNORECASE)
NET = re.compile(r"\b(net|netting|mesh|gauze|fabric|cloth)\b", re.IGNORECASE)


@frozen
class Facts:
    """The cover, and who lives there."""

    cover: str
    people: tuple[str, ...]


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Covers that want opening by day, with no line that says who does it."""
    structure = frame.structure
    if structure is None or not any(care.id == "vent" for care in structure.care):
        return
    if "vent opened by" in frame.frame.facts or _aired(frame, structure):
        return
    people = tuple(person.name for person in frame.garden.people if person.name)
    yield Finding(
        # a cloche is over one plant for a few weeks, and a finger's gap airs it
        level="warn" if {"lights", "fabric"} & structure.facts.keys() else "note",
        where=frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, people),
        by=frame.frame.on.day if frame.frame.on else frame.wanted_by,
        candidates=partial(_ways_out, frame, people),
        ways=(
            _airing(Shown(frame.garden.imperial)),
            "An arm that opens by itself, or fabric instead of glass or film.",
        ),
    )


def _airing(shown: Shown) -> str:
    return (
        f"Prop it {shown.length(0.05)} when it is {shown.warmth(8)} outside and sunny, and open it "
        f"wide at {shown.warmth(15)}."
    )


def _aired(frame: WorkedFrame, structure: Structure) -> bool:
    """Under fabric the air goes through: what has fabric shuts only where it is said to be film."""
    if "fabric" in structure.facts:
        return not any(FILM.search(line.text) for line in frame.frame.facts.get("fabric", ()))
    return any(NET.search(line.text) for line in frame.frame.facts.get("lights", ()))


def _ways_out(frame: WorkedFrame, people: tuple[str, ...]) -> Iterable[Edit]:
    """Each of the people by name."""
    for name in people[:2]:
        yield add_fact(frame.frame, f"vent opened by {name}")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    return Words(
        says=(
            f"{facts.cover}: shut on a bright morning of {shown.warmth(8)} it goes past "
            f"{shown.warmth(35)} by eleven, and the plan names nobody who opens it."
        ),
        if_ignored="Heat kills more under glass than cold does: the seedlings are dead by noon.",
        told="No line `vent opened by`.",
        sum="Said of glass and film that want opening by day; air goes through fabric and net.",
    )


RULE = Rule(
    name="frame-cooks",
    summary="glass or film over plants and nobody named to open it",
    looks_at="frame",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
)
