"""thorns: a thorny plant stands close to a path or a door."""

from __future__ import annotations

import re
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening
from plantframe.advice.edits import add_task
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import has_task
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from plantframe.language.edits import Edit
    from plantframe.plan.things import Spot
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

CLEAR_M = 0.60  # between thorns and a sleeve (common practice, no source)
HAIR_M = 0.01
DOOR = re.compile(r"\b(?:the )?((?:[\w-]+ )?(?:door|gate|path|steps|drive))\b", re.IGNORECASE)
BESIDE = frozenset({"beside", "by", "near", "along", "at"})
THORNLESS = re.compile(r"\bthornless|smooth\b", re.IGNORECASE)
TYING = r"\b(?:tie|tying|cut|trim|clip)\w*"


@frozen
class Facts:
    """The plant, what it is close to, and how close, m; None where the plan says beside it."""

    plant: str
    by: str
    apart_m: float | None


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """How far a thorny plant stands from a path, a door or a gate that the plan names."""
    entry = planting.entry
    own = planting.planting
    if entry is None or not any(harm.kind == "thorny" for harm in entry.harm):
        return
    if THORNLESS.search(own.fact.text) or THORNLESS.search(own.fact.remark):
        return
    close = next(_close_to(planting, season), None)
    if close is None or has_task(season, TYING, planting.holder):
        return
    by, apart = close
    yield Finding(
        level="note",
        where=own.fact.where,
        block=planting.holder,
        subject=planting.name,
        facts=Facts(planting.name, by, apart),
        candidates=partial(_ways_out, planting, season),
        ways=("Set it an arm's length back, or grow a kind without thorns.",),
    )


def _close_to(planting: WorkedPlanting, season: Season) -> Iterator[tuple[str, float | None]]:
    """What it stands closer to than is wise, and how close."""
    spots: list[Spot] = [planting.planting.spot] if planting.planting.spot else []
    frame = season.frames.get(planting.holder)
    bed = season.plan.beds.get(planting.holder)
    spots += frame.frame.spots if frame else bed.spots if bed else ()
    for spot in spots:
        thing = season.plan.things.get(spot.thing)
        if thing is not None and thing.word == "path":
            by = thing.name
        elif found := DOOR.search(spot.said):
            by = f"the {found[1]}"
        else:
            continue
        # what lies over a path is an arch, and its headroom is another matter
        if spot.distance_m is not None and spot.distance_m <= CLEAR_M - HAIR_M:
            yield by, spot.distance_m
        elif spot.distance_m is None and spot.relation in BESIDE and frame is not None:
            yield by, None


def _ways_out(planting: WorkedPlanting, season: Season) -> Iterable[Edit]:
    """Tied in when the new canes are long."""
    thing = season.plan.named(planting.holder)
    if thing is not None:
        month = "December" if planting.garden.southern else "June"
        yield add_task(
            thing.block,
            f"tie in the new canes of the {planting.name}, at {planting.holder}, by mid {month}",
        )


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    how = f"{shown.length(facts.apart_m)} from" if facts.apart_m is not None else "beside"
    return Words(
        says=f"{opening(facts.plant)}: thorny canes {how} {facts.by}.",
        if_ignored="By midsummer they hang out at the height of sleeves and faces.",
        told=f"{opening(facts.plant)} {how} {facts.by}.",
        sum=f"{shown.length(CLEAR_M)} of clear ground: common practice.",
    )


RULE = Rule(
    name="thorns",
    summary="a thorny plant stands close to a path, a door or a gate",
    looks_at="planting",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
