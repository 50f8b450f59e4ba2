"""preservative-by-food: tar or arsenic by what is eaten, or any preservative in a box round it."""

from __future__ import annotations

import re
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening
from plantframe.advice.edits import drop, replace_line, swap
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.language.reader import Fact
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

# Facts that say what the wood is, or what is on it.
OF_WOOD = frozenset(
    {"finish", "wood", "painted", "posts", "end posts", "poles", "stakes", "bar", "rails", "piece"}
    | {"top rail", "back", "front", "sides", "beams", "brace", "strips", "panels", "size", "feet"}
)
# By food these are wrong anywhere: tar oils and arsenic come out of old wood for good.
POISON = re.compile(
    r"\b(creosoted?|carbolineum|(?<!pine )(?<!stockholm )tar(?:red)?|bitumen|"
    r"cca|arsenic(?:al)?|chromated|pentachlorophenol)\b"
)
# Old sleepers are tarred through; new ones, sold by the same name, may be clean.
SLEEPERS = re.compile(
    r"\b(?:old|used|reclaimed|second[- ]hand|railway|railroad)\b[\w -]*\b(?:sleepers?|ties)\b"
)
CLEAN = re.compile(r"\b(?:new|untreated)\b")
# In a box that is filled with soil and food, so is anything that keeps rot off by poison.
PRESERVED = re.compile(
    r"\b(preservatives?|wood preserver|copper naphthenate|(?:pressure[- ]|(?<!heat[- ]))treated)\b"
)
# What is pressed from plants or bees, and lime, is no poison.
MILD = re.compile(r"\b(linseed|tung|hemp|walnut oil|plant|vegetable|beeswax|lime)")


@frozen
class Facts:
    """The words that name it, and what it is near.

    box    it closes round the soil; else it stands by what is eaten
    food   what is eaten, "" where a box names nothing yet
    """

    frame: str
    said: str
    box: bool
    food: str


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """Wood and finishes of a frame, by what is eaten on it or in its bed."""
    box = is_box(frame)
    food = _food(frame, season)
    if not food and not box:
        return
    for fact in frame.frame.block.facts:
        if fact.word not in OF_WOOD:
            continue
        said = named(f"{fact.text} {fact.remark}", box=box)
        if said:
            yield Finding(
                level="stop",
                where=fact.where,
                block=frame.frame.name,
                subject=fact.word,
                facts=Facts(frame.frame.name, said, box, food),
                by=frame.wanted_by,
                candidates=partial(_ways_out, frame, fact, said),
                ways=(
                    "Bare cedar, larch or oak; stone; strips under a box that rot in its place.",
                ),
            )
            return


def named(text: str, *, box: bool) -> str:
    """The words of a poison in a text, "" where it names none."""
    lower = text.lower()
    found = POISON.search(lower)
    if found is None and not CLEAN.search(lower):
        found = SLEEPERS.search(lower)
    if found is None and box and not MILD.search(lower):
        found = PRESERVED.search(lower)
    return found.group(0).strip() if found else ""


def is_box(frame: WorkedFrame) -> bool:
    """It closes round soil: a cover with sides of wood."""
    return (
        frame.frame.word == "cover"
        and frame.structure is not None
        and {"back", "front"} <= set(frame.structure.facts)
    )


def _food(frame: WorkedFrame, season: Season) -> str:
    """Something eaten on the frame, in its bed, or on another frame of that bed."""
    bed = frame.bed.name if frame.bed else None
    near = [*frame.plantings]
    if bed is not None:
        near += season.growing_in(bed)
    return next(
        (one.name for one in near if one.entry is not None and one.entry.grown_for == "food"), ""
    )


def _ways_out(frame: WorkedFrame, fact: Fact, said: str) -> Iterable[Edit]:
    """Bare wood instead; oil from plants on feet in the open; nothing on a box."""
    if fact.word in {"finish", "painted"}:
        if not is_box(frame):
            yield swap(fact, fact.where.typed.strip(), "finish linseed oil")
        yield drop(fact, f"no {fact.text.strip()}")
        return
    if fact.word == "wood":
        yield replace_line(fact, "wood cedar")
        return
    start = fact.where.typed.lower().find(said)
    if start >= 0:
        yield swap(fact, fact.where.typed[start : start + len(said)], "cedar")


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    if facts.food:
        near = f"round {facts.food}" if facts.box else f"by {facts.food}"
    else:
        near = "in a box for what is eaten"
    says = f"{facts.frame}: {facts.said} {near}. It has no place near food."
    return Words(
        says=says,
        if_ignored=(
            "It gets into the soil and onto the hands that pick. Offcuts are not burnt either: "
            "the smoke and the ash are poisonous."
        ),
        told=f"{opening(facts.frame)}: {facts.said}.",
        assumed="",
        sum="Tar oils, arsenic and the like. Oil of plants on post feet in the open is no matter.",
    )


RULE = Rule(
    name="preservative-by-food",
    summary="wood with tar, arsenic or another poison by what is eaten",
    looks_at="frame",
    levels=("stop",),
    basis="common practice",
    check=check,
    words=words,
    answered="name another wood or finish.",
)
