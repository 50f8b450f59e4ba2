"""not-a-climber: a bush kind on a tall frame, or a name that leaves open which kind it is."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import (
    is_listed,
    is_yearly,
    kin,
    opening,
    suited,
    tied_by_custom,
    word,
)
from plantframe.advice.edits import other_crop, rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.entries import entry_of
from plantframe.season.units import Shown, listed

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

TALL_M = 1.2  # a frame from here up is put up for something that climbs
CLIMBS = frozenset({"climber", "leaner"})
SHORTER = 1.25  # a kind so many times the frame's height, or less, is at home on a low one
NAMED = 4  # more kinds than this are counted and not listed


@frozen
class Facts:
    """What is asked.

    bush       the entry stands as a bush; else the name means several
    climb      what it can be that climbs, the likeliest first
    others     what it can be that does not
    woody      they stay for years, and are cut at different times
    """

    plant: str
    frame: str
    height_m: float
    bush: bool
    climb: tuple[str, ...]
    others: tuple[str, ...]
    woody: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Bush kinds with a climbing sister, and names with several meanings."""
    height = frame.height_m
    if height is None or not frame.holds:
        return
    for planting in frame.plantings:
        bush = planting.entry is not None
        if planting.entry is None:
            kinds = _open(frame, planting, height)
        else:
            kinds = _climbing_sisters(frame, planting.entry, height)
        if not kinds:
            continue
        climb = tuple(one.name for one in kinds if word(one.habit) in CLIMBS)
        others = tuple(one.name for one in kinds if word(one.habit) not in CLIMBS)
        woody = not all(is_yearly(one) for one in kinds)
        facts = Facts(planting.name, frame.frame.name, height, bush, climb, others, woody)
        yield Finding(
            level="ask",
            where=planting.planting.fact.where,
            block=frame.frame.name,
            subject=planting.name,
            facts=facts,
            by=frame.wanted_by,
            candidates=partial(_answers, planting, climb or others, bush=bush),
        )


def _open(frame: WorkedFrame, planting: WorkedPlanting, height: float) -> tuple[Plant, ...]:
    """The kinds a name can mean, unless just one of them suits so low a frame."""
    found = [entry_of(name) for name in planting.planting.plants]
    kinds = [one for one in found if one is not None]
    if len(kinds) < 2:
        return ()
    short = [one for one in kinds if one.height and one.height.usual <= SHORTER * height]
    if height < TALL_M and short:
        return ()
    at_home = [one.name for one in suited(frame)]
    return tuple(sorted(kinds, key=lambda one: _likely(one, at_home)))


def _likely(entry: Plant, at_home: list[str]) -> tuple[int, bool, str]:
    place = at_home.index(entry.name) if entry.name in at_home else len(at_home)
    return place, word(entry.habit) not in CLIMBS, entry.name.lower()


def _climbing_sisters(frame: WorkedFrame, entry: Plant, height: float) -> tuple[Plant, ...]:
    """Kinds that climb and go by the same looser name as this one, which does not."""
    if word(entry.habit) in CLIMBS or height < TALL_M:
        return ()
    if is_listed(frame, entry) or tied_by_custom(frame) or word(entry.habit) == "upright":
        return ()
    at_home = [one.name for one in suited(frame)]
    sisters = [one for one in kin(entry) if word(one.habit) in CLIMBS]
    return tuple(sorted(sisters, key=lambda one: _likely(one, at_home)))


def _answers(planting: WorkedPlanting, names: tuple[str, ...], *, bush: bool) -> Iterable[Edit]:
    for name in names:
        if bush:
            yield other_crop(planting.planting, name)
        else:
            yield rewrite(planting.planting.fact, {"plant": name})


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    plant, high = opening(facts.plant), shown.length(facts.height_m)
    climb, others = _either(facts.climb), _either(facts.others)
    here = f"{plant} on {facts.frame}, {high} high"
    if facts.bush:
        says = f"{here}: it grows as a bush and will not climb that. Is {climb} meant?"
        ignored = "The frame stands bare, and the plants sprawl at its foot."
        known = f"{plant} grows as a bush; {listed(list(facts.climb))} of the same name climb."
    else:
        says = f"{here}: is it {climb or others}?"
        if climb and others:
            says = f"{here}: is it {climb}, which go up it, or {others}, which do not?"
            if len(facts.climb) == 1:
                says = says.replace(", which go up it,", ", which goes up it,")
            if len(facts.others) == 1:
                says = says.replace(", which do not?", ", which does not?")
        ignored = "Until it is said, neither height nor weight is worked out."
        if facts.woody:
            ignored = "They differ in height, weight and pruning; until it is said, none is known."
        known = f"The name can mean {_either((*facts.climb, *facts.others))}."
    return Words(
        says=says,
        if_ignored=ignored,
        told=f"{plant} on {facts.frame}.",
        assumed="",
        sum=known,
    )


def _either(names: tuple[str, ...]) -> str:
    some = list(names)
    if len(names) > NAMED:
        some = [*names[: NAMED - 1], f"one of {len(names) - NAMED + 1} others"]
    return listed(some, "or")


RULE = Rule(
    name="not-a-climber",
    summary="a bush kind on a tall frame, or a name that leaves open which kind it is",
    looks_at="frame",
    levels=("ask",),
    basis="common practice",
    check=check,
    words=words,
)
