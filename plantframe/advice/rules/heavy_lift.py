"""heavy-lift: one person is to carry more than one person should."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import set_fact
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.language.values import Number
from plantframe.mechanics.lifting import LOAD_CONSTANT_KG
from plantframe.mechanics.ranges import load_ratio
from plantframe.season.weights import box_kg

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.mechanics.ranges import Range
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown


@frozen
class Facts:
    """What it weighs and what the one who carries it lifts, kg.

    who   "" where nobody is named
    own   whether the limit is the person's own figure
    """

    cover: str
    weight: Range
    who: str
    lifts_kg: float
    own: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The weight of a box against what one person lifts, where one is to carry it."""
    if frame.stands:
        return
    alone = _alone(frame)
    weight = box_kg(frame)
    if alone is None or weight is None:
        return
    who, lifts, own = alone
    if weight.middle <= lifts:
        return
    fact = frame.frame.fact("carried by")
    yield Finding(
        level="warn",
        where=fact.where if fact else frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, weight, who, lifts, own),
        ratio=load_ratio(weight, type(weight)(lifts, lifts, lifts)),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame),
        ways=(
            "Two people, one at each end; or tip it over a long edge and walk it corner by corner.",
            "Two boxes of half the length weigh half as much each.",
            "Boards half as thick weigh half as much.",
        ),
    )


def _alone(frame: WorkedFrame) -> tuple[str, float, bool] | None:
    """Who carries it alone, what they lift, and whether that is their own figure."""
    people = frame.garden.people
    fact = frame.frame.fact("carried by")
    names = [str(name) for name in fact.all("person")] if fact else []
    count = fact.get("count") if fact else None
    if isinstance(count, Number) and count.value > 1:
        return None
    if not names and not isinstance(count, Number):
        if len(people) != 1:
            return None
        names = [people[0].name]
    if len(names) > 1:
        return None
    person = frame.garden.person(names[0]) if names else None
    if person is not None and person.lifts_kg:
        return person.name, person.lifts_kg, True
    return names[0] if names else "", LOAD_CONSTANT_KG, False


def _ways_out(frame: WorkedFrame) -> Iterable[Edit]:
    """Two to carry it, unless the plan knows of one person only."""
    if len(frame.garden.people) != 1:
        yield set_fact(frame.frame, "carried by", "carried by two")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    low, high = shown.weight(facts.weight.low), shown.weight(facts.weight.high)
    weighs = f"{low.split()[0]} to {high}"
    limit = shown.weight(facts.lifts_kg)
    who = facts.who or "one person"
    if facts.own:
        carries = f"{who}, who lifts {limit}, is to carry it alone"
    else:
        carries = f"{who} is to carry it alone; about {limit} is the most that is advised"
    return Words(
        says=f"{facts.cover}: about {weighs} dry, without its lights, and {carries}.",
        if_ignored="A back is strained in a moment and mends in months; wet wood weighs more.",
        told=f"{carries[:1].upper()}{carries[1:]}.",
        assumed="" if facts.own else f"{limit}, close to the body and with both hands.",
        sum=f"Its pieces of wood, dry: {weighs}. The limit is NIOSH 1991's load constant.",
    )


RULE = Rule(
    name="heavy-lift",
    summary="one person is to carry more than one person should",
    looks_at="frame",
    levels=("warn",),
    basis="published",
    check=check,
    words=words,
    source="NIOSH 1991, revised lifting equation: load constant 23 kg (51 lb)",
)
