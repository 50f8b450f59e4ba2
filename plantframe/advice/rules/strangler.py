"""strangler: a vine that crushes what it winds round, near a pipe, gutter or railing."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import has_task, remarks_on
from plantframe.frozen import frozen
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

# What it crushes; the rails of a fence it outlives anyhow, and that is said of the fence.
CRUSHED = (
    "downpipe",
    "down pipe",
    "drainpipe",
    "drain pipe",
    "downspout",
    "gutter",
    "railing",
    "handrail",
)
KEPT_OFF = r"\b(down ?pipe|drain ?pipe|downspout|gutter|unwind|off the)\b"


@frozen
class Facts:
    """The plant, where it grows, and what is in its way."""

    plant: str
    holder: str
    near: str


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """A strangling plant where the plan speaks of a pipe, gutter or railing."""
    entry = planting.entry
    if entry is None or not _strangles(entry):
        return
    frame = season.frames.get(planting.holder)
    if frame is not None and frame.builders_work:
        return
    names = [planting.holder, *([frame.wall.name] if frame and frame.wall else [])]
    near = _pipe(season, names)
    if not near or has_task(season, KEPT_OFF, *names):
        return
    yield Finding(
        level="warn",
        where=planting.planting.fact.where,
        block=planting.holder,
        subject=planting.name,
        facts=Facts(planting.name, planting.holder, near),
        by=planting.in_ground.day if planting.in_ground else None,
        ways=(_way(Shown(season.plan.garden.imperial)),),
    )


def _strangles(entry: Plant) -> bool:
    return entry.strangles or any(one.kind == "strangles" for one in entry.harm)


def _pipe(season: Season, names: list[str]) -> str:
    """The pipe, gutter or railing that a line on the wall or the frame speaks of."""
    for text in remarks_on(season, *names):
        found = next((pipe for pipe in CRUSHED if pipe in text.lower()), "")
        if found:
            return f"the {found}"
    return ""


def _way(shown: Shown) -> str:
    aside = shown.length(0.9144 if shown.imperial else 1.0)
    return (
        f"Planted {aside} to the side, with its shoots led beside the wires and rails and never "
        "round them; a round every fortnight in summer to unwind what has strayed."
    )


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    return Words(
        says=(
            f"{opening(facts.plant)} on {facts.holder}: its stems grow as thick as an arm and "
            f"crush what they are wound round, and {facts.near} is within their reach."
        ),
        if_ignored="In a few years the pipe or rail is flattened or pulled off its fixings.",
        told=f"{opening(facts.plant)} on {facts.holder}, {facts.near}.",
        sum="Said of twiners that thicken year by year, near a pipe, gutter or rail.",
    )


RULE = Rule(
    name="strangler",
    summary="a vine that crushes what it winds round, within reach of a pipe, gutter or railing",
    looks_at="planting",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
