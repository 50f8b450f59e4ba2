"""root-runner: a plant whose roots run stands in or beside a bed that is dug each year."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import is_yearly, opening
from plantframe.advice.edits import add_task
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import is_spoken_of
from plantframe.frozen import frozen
from plantframe.season.beside import beside
from plantframe.season.plantings import as_range
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

NEAR_M = 1.0
BARRIER_M = (0.45, 0.60)
KEPT_IN = r"\b(barrier|tub|pot|spade|chop|runners?|suckers?|buried (sheet|board|slate))"


@frozen
class Facts:
    """The plant and where, how far its roots run in a year, m, and what is in their way."""

    plant: str
    holder: str
    run_m: tuple[float, float]
    bed: str
    crop: str


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """A yearly crop in the same bed, or in a bed less than a metre off."""
    run = as_range(planting.entry.other.get("root run")) if planting.entry else None
    if planting.entry is None or run is None:
        return
    bed = season.bed_name(planting)
    found = _in_the_way(planting, bed, season)
    if found is None or is_spoken_of(season, KEPT_IN, planting.holder, bed):
        return
    there, crop = found
    yield Finding(
        level="note",
        where=planting.planting.fact.where,
        block=planting.holder,
        subject=planting.name,
        facts=Facts(planting.name, planting.holder, (run.low, run.high), there, crop),
        by=planting.in_ground.day if planting.in_ground else None,
        candidates=partial(_ways_out, planting, season),
        ways=(_way(Shown(season.plan.garden.imperial)),),
    )


def _in_the_way(planting: WorkedPlanting, bed: str, season: Season) -> tuple[str, str] | None:
    """The bed that is dug each year, and what is sown in it."""
    if not bed:
        return None
    beds = [bed]
    beds += [
        found.thing.name
        for found in beside(season.plan, bed)
        if found.distance_m is not None and found.distance_m < NEAR_M
    ]
    for name in beds:
        for other in season.growing_in(name):
            entry = other.entry
            if other is planting or entry is None:
                continue
            if is_yearly(entry) and entry.grown_for == "food":
                return name, other.name
    return None


def _way(shown: Shown) -> str:
    return f"A barrier sunk {shown.lengths(*BARRIER_M)} deep round it, a tub, or another place."


def _ways_out(planting: WorkedPlanting, season: Season) -> Iterable[Edit]:
    """A round with the spade once a year."""
    holder = season.plan.named(planting.holder)
    if holder is not None:
        month = "September" if season.plan.garden.southern else "March"
        what = f"chop round the {planting.name} on {planting.holder} with a spade, by 31 {month}"
        yield add_task(holder.block, what.replace("31 September", "30 September"))


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    low, high = facts.run_m
    run = shown.lengths(low, high) if low != high else f"about {shown.length(low)}"
    return Words(
        says=(
            f"{opening(facts.plant)} on {facts.holder}: its roots run {run} a year, towards "
            f"{facts.crop} in {facts.bed}."
        ),
        if_ignored=f"It comes up all over {facts.bed} by the second summer.",
        told=f"{opening(facts.plant)} on {facts.holder}; {facts.crop} in {facts.bed}.",
        sum=f"{opening(run)} a year, and less than {shown.length(NEAR_M)} to a yearly crop.",
    )


RULE = Rule(
    name="root-runner",
    summary="a plant whose roots run stands in or beside a bed that is dug each year",
    looks_at="planting",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
