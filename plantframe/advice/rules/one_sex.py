"""one-sex: a kind with male and female plants, and none of the other sex to set its fruit."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import meant, opening, word
from plantframe.advice.edits import rewrite, swap
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import place_of
from plantframe.frozen import frozen
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

NEAR_M, NEAR_FT_M = 10.0, 9.144  # as far as bees carry it for sure (common practice, no source)


@frozen
class Facts:
    """The plant, where it grows, how many females, and how many males are usual to them."""

    plant: str
    place: str
    count: int
    usual: str


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """Only females, or a single plant, with no male of the kind in the garden."""
    own, entries = planting.planting, meant(planting)
    usual = word(entries[0].other.get("male plants")) if entries else ""
    if not usual or own.male or not all("male plants" in entry.other for entry in entries):
        return
    # a single plant that names no cultivar may be of either sex; a named one may set by itself
    alone = own.count == 1 and not own.cultivar and entries[0].grown_for == "food"
    if not own.female and not alone:
        return
    kin = {entry.name for entry in entries}
    if any(kin & set(one.planting.plants) and _fathers(one) for one in season.plantings):
        return
    yield Finding(
        level="warn",
        where=own.fact.where,
        block=planting.holder,
        subject=planting.name,
        facts=Facts(planting.name, place_of(season, planting), own.female or 0, usual),
        by=planting.in_ground.day if planting.in_ground else None,
        candidates=partial(_ways_out, planting),
        ways=(_way(Shown(season.plan.garden.imperial)),),
    )


def _fathers(planting: WorkedPlanting) -> bool:
    """It has males."""
    return bool(planting.planting.male)


def _way(shown: Shown) -> str:
    near = shown.length(NEAR_FT_M if shown.imperial else NEAR_M)
    return f"A male within {near}, or a kind that sets fruit by itself."


def _ways_out(planting: WorkedPlanting) -> Iterable[Edit]:
    """A male to them."""
    own = planting.planting
    if own.female:
        males = max(1, round(own.female / 8))
        yield rewrite(own.fact, {"male": f"{males} male"})
        return
    typed = own.fact.text
    for unit in ("plant", "vine", "root", "of them", "off"):
        if f"1 {unit}" in typed:
            yield swap(own.fact, f"1 {unit}", "1 female, 1 male")
            return


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    who = "a single plant" if not facts.count else "only females" if facts.count > 1 else "a female"
    return Words(
        says=(
            f"{opening(facts.plant)} {facts.place}: {who}, and no male in the garden. Usual is "
            f"{facts.usual}."
        ),
        if_ignored="It grows and flowers, and sets no fruit.",
        told=f"{opening(facts.plant)}, {who}.",
        assumed="That no neighbour has a male close by.",
        sum="Said of kinds whose plants are male or female, where the plan has no male.",
    )


RULE = Rule(
    name="one-sex",
    summary="only females, or one plant, of a kind that has males and females",
    looks_at="planting",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
