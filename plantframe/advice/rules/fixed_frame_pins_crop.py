"""fixed-frame-pins-crop: a frame that cannot move carries one plant family year after year."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import meant, suited, word
from plantframe.advice.edits import other_crop
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.rules.same_family_too_soon import rest_years, shared_family
from plantframe.frozen import frozen
from plantframe.season.entries import entry_of
from plantframe.season.units import listed

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.plan.things import Grown
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

CROPS = 3  # of one family, one after another, this season's among them


@frozen
class Facts:
    """The frame, what it is to carry, its family, and what it carried before: plant and year."""

    frame: str
    plant: str
    family: str
    before: tuple[tuple[str, int], ...]


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """The crop of this season and the last two on a frame that stays."""
    if not frame.lasting:
        return
    for planting in frame.plantings:
        entries = meant(planting)
        family = shared_family(entries)
        if not family or rest_years(entries) is None:
            continue
        before = _before(frame, season)
        last = before[-(CROPS - 1) :]
        if len(last) < CROPS - 1 or any(_family(grown) != family for grown in last):
            continue
        yield Finding(
            level="note",
            where=planting.planting.fact.where,
            block=frame.frame.name,
            subject=planting.name,
            facts=Facts(
                frame.frame.name,
                planting.name,
                entries[0].family_name or family,
                tuple((grown.plant, grown.year) for grown in last),
            ),
            by=planting.in_ground.day if planting.in_ground else None,
            candidates=partial(_ways_out, frame, planting, family, last),
            ways=("The frame cannot move, so the crop must: another family for some years.",),
        )
        return


def _before(frame: WorkedFrame, season: Season) -> list[Grown]:
    """What grew on the frame in years before, or in its bed; one crop of each year."""
    names = {spot.thing for spot in frame.frame.spots} | {frame.frame.name}
    grown = [*frame.frame.had]
    for name in names:
        grown += season.history(name)
    first = season.plan.garden.seasons[0]
    # south of the equator a crop picked in the first year of the season belongs to the last one
    past = first + 1 if season.plan.garden.southern else first
    by_year = {one.year: one for one in grown if one.year < past}
    return [by_year[year] for year in sorted(by_year)]


def _family(grown: Grown) -> str:
    found = [entry_of(name) for name in grown.plants]
    return shared_family([one for one in found if one is not None])


def _ways_out(
    frame: WorkedFrame, planting: WorkedPlanting, family: str, last: list[Grown]
) -> Iterable[Edit]:
    """What the trade grows on such a frame, of a family that was not there of late."""
    gone = {family, *(_family(grown) for grown in last)}
    own = planting.entry
    for other in suited(frame):
        alike = own is None or other.grown_for == own.grown_for
        climbs = word(other.habit) in {"climber", "leaner"}
        if climbs and other.family not in gone and alike and rest_years([other]) is not None:
            yield other_crop(planting.planting, other.name)


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    before = listed([f"{plant} in {year}" for plant, year in facts.before])
    return Words(
        says=(
            f"{facts.frame} stays where it is, and had {before}; now it is to have {facts.plant}. "
            f"All are of the {facts.family}."
        ),
        if_ignored="What rots their roots builds up in that strip of soil, year by year.",
        told=f"{facts.frame} had {before}.",
        sum="Common practice: three crops of one family running are said.",
    )


RULE = Rule(
    name="fixed-frame-pins-crop",
    summary="a frame that cannot move carries one plant family year after year",
    looks_at="frame",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
