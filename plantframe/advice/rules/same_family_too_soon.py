"""same-family-too-soon: a bed carries the same plant family again before it has rested from it."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import is_yearly, meant, opening, suited
from plantframe.advice.edits import other_block, other_crop, other_place
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.entries import entry_of
from plantframe.season.plantings import WorkedPlanting, as_range
from plantframe.season.units import Shown, listed, plural

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.plan.things import Bed, Grown
    from plantframe.season.season import Season

USUAL_YEARS = 3  # where an entry of the catalogue gives none (common practice, no source)
MOST_BEDS = 3


@frozen
class Facts:
    """What grows, what grew, and how long is usual between.

    years    how long it is that the family was last there
    usual    the years from one crop of the family to the next, as the trade keeps them
    """

    plant: str
    place: str
    bed: str
    family: str
    before: tuple[tuple[str, int], ...]
    years: int
    usual: tuple[int, int, int]


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """What the bed grew in the years that count, against the family of what it is to grow."""
    bed, entries = season.bed_name(planting), meant(planting)
    family, usual = shared_family(entries), rest_years(entries)
    if not bed or not family or usual is None:
        return
    before = within(season, bed, family, usual[1])
    if not before or _said_already(planting, family, season):
        return
    years = min(_years_since(season, grown) for grown in before)
    yield Finding(
        level="warn",
        where=planting.planting.fact.where,
        block=planting.holder,
        subject=entries[0].family,
        facts=Facts(
            planting.name,
            f"in {planting.holder}" if planting.holder == bed else f"on {planting.holder}",
            bed,
            entries[0].family_name or family,
            tuple((grown.plant, grown.year) for grown in before),
            years,
            usual,
        ),
        by=planting.in_ground.day if planting.in_ground else None,
        candidates=partial(_ways_out, planting, entries, bed, season),
        ways=("Another bed this year, or something of another family here.",),
    )


def shared_family(entries: Sequence[Plant]) -> str:
    """The family all of them are of, "" where they differ or nothing is known."""
    families = {entry.family for entry in entries}
    return families.pop() if len(families) == 1 else ""


def rest_years(entries: Sequence[Plant]) -> tuple[int, int, int] | None:
    """Years from crop to crop, least, usual, most; None for what stays, or is not moved about."""
    rotations = [as_range(entry.rotation) for entry in entries]
    known = [one for one in rotations if one is not None]
    if known:
        longest = max(known, key=lambda one: one.middle)
        return round(longest.low), round(longest.middle), round(longest.high)
    if all(is_yearly(entry) and entry.grown_for == "food" for entry in entries):
        return USUAL_YEARS, USUAL_YEARS, USUAL_YEARS
    return None


def within(season: Season, bed: str, family: str, years: int) -> list[Grown]:
    """What a bed grew of a family in fewer years than these before this season."""
    return [
        grown
        for grown in season.history(bed)
        if 0 < _years_since(season, grown) < years and _family_of(grown) == family
    ]


def _family_of(grown: Grown) -> str:
    found = [entry_of(name) for name in grown.plants]
    return shared_family([one for one in found if one is not None])


def _years_since(season: Season, grown: Grown) -> int:
    garden = season.plan.garden
    years = garden.seasons[0] - grown.year
    # south of the equator a season is two calendar years: what was picked in the first of them
    # belongs to the season before
    return 1 if garden.southern and years == 0 else years


def _said_already(planting: WorkedPlanting, family: str, season: Season) -> bool:
    """An earlier planting of the same frame or bed is of this family too: one message for both."""
    return any(
        other.planting.order < planting.planting.order and shared_family(meant(other)) == family
        for other in season.held_by(planting.holder)
    )


def _ways_out(
    planting: WorkedPlanting, entries: Sequence[Plant], bed: str, season: Season
) -> Iterable[Edit]:
    """A bed that is free of the family, those without a frame first; another crop."""
    frame = season.frames.get(planting.holder)
    family, usual = entries[0].family, rest_years(entries)
    if frame is None or not frame.stands:
        taken = {one.bed.name for one in season.frames.values() if one.bed is not None}
        free = [
            other
            for other in season.plan.beds.values()
            if other.name != bed
            and other.word == "bed"
            and _has_room(other, planting)
            and not within(season, other.name, family, usual[1] if usual else USUAL_YEARS)
        ]
        for other in sorted(free, key=lambda one: one.name in taken)[:MOST_BEDS]:
            if frame is not None:
                yield from other_place(frame.frame, bed, other.name)
            else:
                fact = planting.planting.fact
                yield other_block(fact, other.block, f"{planting.name} in {other.name}")
    if frame is not None:
        for other_plant in suited(frame):
            alike = other_plant.grown_for == entries[0].grown_for and is_yearly(other_plant)
            if other_plant.family != family and alike:
                yield other_crop(planting.planting, other_plant.name)


def _has_room(bed: Bed, planting: WorkedPlanting) -> bool:
    row = planting.row_m
    return row is None or bed.length_m is None or bed.length_m >= row - 0.05


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    grown: dict[str, list[str]] = {}
    for plant, year in facts.before:
        grown.setdefault(plant, []).append(str(year))
    before = listed([f"{plant} in {listed(years)}" for plant, years in grown.items()])
    bed = "it" if facts.place.endswith(f"in {facts.bed}") else facts.bed
    low, middle, high = facts.usual
    some = f", some {low} and some {high}" if low < middle < high else ""
    says = (
        f"{opening(facts.plant)} {facts.place}: {bed} had {before}, the same {facts.family}. "
        f"Most wait {middle} years{some}."
    )
    return Words(
        says=says,
        if_ignored="What ails that family's roots lives on in the soil and builds up each time.",
        told=f"{opening(facts.plant)} {facts.place}; {facts.bed} had {before}.",
        assumed="The whole of the bed, since the plan does not say which part grew what.",
        sum=f"{plural(facts.years, 'year')} since, against {middle}.",
    )


RULE = Rule(
    name="same-family-too-soon",
    summary="a bed carries the same plant family again within three years or so",
    looks_at="planting",
    levels=("warn",),
    basis="published",
    source="West Virginia University Extension, Crop rotation in the garden: two to three years",
    check=check,
    words=words,
)
