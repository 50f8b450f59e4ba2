"""plant-harm: a plant that poisons or brings up a rash, where there are small children or a dog."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening
from plantframe.advice.edits import add_task
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import is_spoken_of
from plantframe.advice.young import small_children
from plantframe.frozen import frozen
from plantframe.season.units import listed

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Harm
    from plantframe.language.edits import Edit
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

# Words of the gardener's own that show the matter is in hand.
IN_HAND = (
    r"\b(?:pods?|seed ?heads?|dead ?head\w*|berr(?:y|ies)|gloves?|fenced?|out of reach|"
    r"poison\w*|raw|cook(?:ed)?)\b"
)
WEAK = ("mildly", "some people", "may ", "can ")
MOST_NAMED = 3


@frozen
class Harmful:
    """A plant and what it does. `grave` where eating of it makes a child or a dog ill."""

    plant: str
    what: str
    kind: str
    grave: bool
    published: bool


@frozen
class Facts:
    """The harmful plants of one place, and who is about."""

    plants: tuple[Harmful, ...]
    who: str


def check(season: Season, _season: Season) -> Iterable[Finding]:
    """Once for each frame, bed and wall, the plants that can harm those who are about."""
    garden = season.plan.garden
    children, dog = small_children(garden), garden.dog
    if not children and not dog:
        return
    who = listed([one for one in (children, "a dog or a cat" if dog else "") if one])
    holders = dict.fromkeys(one.holder for one in season.plantings)
    for holder in holders:
        own = season.held_by(holder)
        found = [
            (planting, harmful)
            for planting in own
            if (harmful := _harmful(planting, children=bool(children), dog=dog)) is not None
        ]
        if not found or is_spoken_of(season, IN_HAND, holder):
            continue
        found.sort(key=lambda pair: (not pair[1].grave, pair[1].plant))
        first, worst = found[0]
        yield Finding(
            level="warn" if worst.grave else "note",
            where=first.planting.fact.where,
            block=holder,
            facts=Facts(tuple(dict.fromkeys(one for _, one in found)), who),
            candidates=partial(_ways_out, season, holder, worst),
            ways=("Another plant where small hands and noses come.",),
        )


def _harmful(planting: WorkedPlanting, *, children: bool, dog: bool) -> Harmful | None:
    """What it can do to those who are about, the gravest of it; None where nothing."""
    entry = planting.entry
    if entry is None:
        return None
    food = entry.grown_for == "food"
    found = [
        Harmful(
            planting.name,
            harm.what,
            harm.kind,
            harm.kind == "poisonous" and not food and not _weak(harm),
            harm.basis == "published",
        )
        for harm in entry.harm
        if _concerns(harm, children=children, dog=dog) and not (food and _apart(harm, dog=dog))
    ]
    return min(found, key=lambda one: (not one.grave, one.kind != "poisonous"), default=None)


def _concerns(harm: Harm, *, children: bool, dog: bool) -> bool:
    if harm.kind == "poisonous":
        return (children and bool({"children", "people"} & set(harm.who))) or (
            dog and "pets" in harm.who
        )
    return harm.kind == "irritant" and children and not _weak(harm)


def _apart(harm: Harm, *, dog: bool) -> bool:
    """What poisons is not what is picked: nobody wants telling of the leaves of a tomato."""
    picked = "raw" in harm.what or (dog and set(harm.who) == {"pets"})
    return harm.kind == "poisonous" and not picked


def _weak(harm: Harm) -> bool:
    return any(one in harm.what for one in WEAK)


def _ways_out(season: Season, holder: str, worst: Harmful) -> Iterable[Edit]:
    """A job that takes the harm away or keeps hands off it."""
    thing = season.plan.named(holder)
    if thing is None:
        return
    if worst.kind == "irritant":
        yield add_task(
            thing.block, f"wear gloves and long sleeves to cut the {worst.plant}, at {holder}"
        )
    elif not worst.grave:
        return
    elif any(one in worst.what for one in ("pod", "seed")):
        yield add_task(
            thing.block, f"take the pods off the {worst.plant} before they ripen, at {holder}"
        )
    else:
        yield add_task(thing.block, f"keep the {worst.plant} fenced off, at {holder}")


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    first = facts.plants[0]
    name, what = opening(first.plant), first.what.split(";")[0].strip()
    if first.grave:
        says = f"{name} is poisonous ({what}), and there {_are(facts.who)}."
    else:
        says = f"{name}: {what}, and there {_are(facts.who)}."
    others = [one.plant for one in facts.plants[1:]]
    if others:
        more = len(others) - MOST_NAMED
        shown = [*others[:MOST_NAMED], *([f"{more} more"] if more > 0 else [])]
        says = f"{says} So with {listed(shown)}."
    ignored = (
        "If any is eaten, ring a doctor or the poison line at once, with a piece of it in hand."
        if first.grave
        else "It is found out by whoever rubs an eye after weeding."
        if first.kind == "irritant"
        else "Small hands taste what they see picked."
    )
    return Words(
        says=says,
        if_ignored=ignored,
        told=f"{facts.who[:1].upper()}{facts.who[1:]}.",
        assumed="",
        sum=(
            f"{name} is on a printed list of harmful plants: `plantframe facts` names it."
            if first.published
            else f"{name} is commonly held to be harmful; no print is named for it."
        ),
    )


def _are(who: str) -> str:
    single = who.startswith("a ") and " and " not in who
    return f"is {who}" if single else f"are {who}"


RULE = Rule(
    name="plant-harm",
    summary="a poisonous or irritant plant grows where there are small children, a dog or a cat",
    looks_at="season",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
    answered="write what is done about it as a task: pods taken off, a fence, gloves",
)
