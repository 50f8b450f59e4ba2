"""shared-virus: flowers that carry the tomato's mosaic virus stand close to tomatoes or peppers."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import is_yearly, opening, word
from plantframe.advice.edits import add_task, other_block
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import has_task, place_of
from plantframe.frozen import frozen
from plantframe.season.beside import beside
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

FAMILY = "Solanaceae"
NEAR_M = 3.0  # hands and sleeves go so far from plant to plant (common practice, no source)
WASHED = r"\bwash\b.*\b(hands?|knife|knives|secateurs)\b"


@frozen
class Facts:
    """The flower and its place; the crop and its place; the distance, m, None for the same bed."""

    flower: str
    place: str
    crop: str
    other_place: str
    apart_m: float | None


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """Each flower of the tomato's family beside each crop of it that is handled."""
    if planting.entry is None or not _is_flower(planting.entry):
        return
    for crop in season.plantings:
        if crop.entry is None or not _is_crop(crop.entry):
            continue
        near, apart_m = _near(planting, crop, season)
        holder = season.plan.named(planting.holder)
        if not near or has_task(season, WASHED, planting.holder, crop.holder):
            continue
        yield Finding(
            level="warn",
            where=planting.planting.fact.where,
            block=planting.holder,
            subject=planting.name,
            facts=Facts(
                planting.name,
                place_of(season, planting),
                crop.name,
                place_of(season, crop),
                apart_m,
            ),
            by=planting.in_ground.day if planting.in_ground else None,
            candidates=partial(_ways_out, planting, season) if holder is not None else (),
            ways=(
                _way(Shown(season.plan.garden.imperial)),
                "A kind of tomato or pepper bred to withstand the mosaic.",
            ),
        )
        return


def _is_flower(entry: Plant) -> bool:
    """Ornamental tobacco, petunia: of the family, soft, and grown for its flower."""
    return entry.family == FAMILY and entry.grown_for == "flower" and is_yearly(entry)


def _is_crop(entry: Plant) -> bool:
    """Tomato, pepper: of the family and handled for weeks; potatoes are dug once."""
    return entry.family == FAMILY and entry.grown_for == "food" and word(entry.picked) != "dug"


def _near(
    flower: WorkedPlanting, crop: WorkedPlanting, season: Season
) -> tuple[bool, float | None]:
    """Whether they stand within reach, and how far apart where the plan gives that."""
    own = {flower.holder, season.bed_name(flower)} - {""}
    other = {crop.holder, season.bed_name(crop)} - {""}
    if own & other:
        return True, None
    for name in own:
        for found in beside(season.plan, name):
            if found.thing.name in other and found.distance_m is not None:
                return found.distance_m < NEAR_M, found.distance_m
    return False, None


def _near_said(shown: Shown) -> str:
    return "10 ft" if shown.imperial else shown.length(NEAR_M)


def _way(shown: Shown) -> str:
    return f"The flowers {_near_said(shown)} and more away, and seen to after the crop."


def _ways_out(planting: WorkedPlanting, season: Season) -> Iterable[Edit]:
    """Another bed or border with none of the crop near it; washed hands."""
    plan = season.plan
    for bed in plan.beds.values():
        there = season.growing_in(bed.name)
        if bed.name != planting.holder and not any(
            one.entry is not None and _is_crop(one.entry) for one in there
        ):
            says = f"{planting.name} in {bed.name}"
            yield other_block(planting.planting.fact, bed.block, says)
    holder = plan.named(planting.holder)
    if holder is not None:
        yield add_task(holder.block, f"wash hands and knife after the {planting.name}")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    where = f"{shown.length(facts.apart_m)} from" if facts.apart_m else "beside"
    return Words(
        says=(
            f"{opening(facts.flower)} {facts.place} is {where} {facts.crop} {facts.other_place}: "
            "both take the same mosaic virus, and hands carry it from one to the other."
        ),
        if_ignored="Mottled leaves and small, streaked fruit; there is no cure for it.",
        told=f"{opening(facts.flower)} {facts.place}, {facts.crop} {facts.other_place}.",
        sum=f"Common practice: said within {_near_said(shown)}.",
    )


RULE = Rule(
    name="shared-virus",
    summary="ornamental tobacco or petunia close to tomatoes or peppers, whose virus it carries",
    looks_at="planting",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
