"""strangler: a vine that crushes what it winds round, near a pipe, a gutter or thin rails."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.climbers import matter, opening
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import has_task, remarks_on
from plantframe.frozen import frozen
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

THIN_M = 0.075  # thinner than this a rail is crushed (common practice, no source)
PIPES = ("downpipe", "down pipe", "drainpipe", "drain pipe", "downspout", "gutter")
KEPT_OFF = r"\b(down ?pipe|drain ?pipe|downspout|gutter|unwind|off the)\b"


@frozen
class Facts:
    """The plant, where it grows, and what is in its way; `rail_m` where that is a rail."""

    plant: str
    holder: str
    near: str
    rail_m: float


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """A strangling plant where the plan speaks of a pipe or gutter, or on thin rails."""
    entry = planting.entry
    if entry is None or not _strangles(entry):
        return
    frame = season.frames.get(planting.holder)
    if frame is not None and frame.builders_work:
        return
    names = [planting.holder, *([frame.wall.name] if frame and frame.wall else [])]
    near, rail_m = _pipe(season, names), 0.0
    if not near and frame is not None:
        rail_m = _thin_rail_m(frame)
        near = "its rails" if rail_m else ""
    if not near or has_task(season, KEPT_OFF, *names):
        return
    yield Finding(
        level="warn",
        where=planting.planting.fact.where,
        block=planting.holder,
        subject=planting.name,
        facts=Facts(planting.name, planting.holder, near, rail_m),
        by=planting.in_ground.day if planting.in_ground else None,
        ways=(_way(Shown(season.plan.garden.imperial)),),
    )


def _strangles(entry: Plant) -> bool:
    return entry.strangles or any(one.kind == "strangles" for one in entry.harm)


def _pipe(season: Season, names: list[str]) -> str:
    """The pipe or gutter that a line on the wall or the frame speaks of."""
    for text in remarks_on(season, *names):
        found = next((pipe for pipe in PIPES if pipe in text.lower()), "")
        if found:
            return f"the {found}"
    return ""


def _thin_rail_m(frame: WorkedFrame) -> float:
    """The thinnest rail of a fence, 0 where all are stout."""
    rails = [
        held.thickness_m
        for held in frame.holds
        if held.hold.runs == "across" and matter(frame, held) == "wood"
    ]
    thin = min(rails, default=THIN_M)
    return thin if frame.frame.word == "fence" and thin < THIN_M - 1e-4 else 0.0


def _way(shown: Shown) -> str:
    aside = shown.length(0.9144 if shown.imperial else 1.0)
    return (
        f"Planted {aside} to the side, with its shoots led beside the wires and rails and never "
        "round them; a round every fortnight in summer to unwind what has strayed."
    )


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    near = f"{facts.near}, {shown.bench(facts.rail_m)} thick" if facts.rail_m else facts.near
    return Words(
        says=(
            f"{opening(facts.plant)} on {facts.holder}: its stems grow as thick as an arm and "
            f"crush what they are wound round, and {near} {_is(facts)} within their reach."
        ),
        if_ignored="In a few years the pipe or rail is flattened or pulled off its fixings.",
        told=f"{opening(facts.plant)} on {facts.holder}, {near}.",
        sum="Common practice.",
    )


def _is(facts: Facts) -> str:
    return "are" if facts.rail_m else "is"


RULE = Rule(
    name="strangler",
    summary="a vine that crushes what it winds round, within reach of a pipe, gutter or thin rail",
    looks_at="planting",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
