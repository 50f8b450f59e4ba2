"""out-of-reach: what is picked hangs higher than whoever picks it reaches."""

from __future__ import annotations

import math
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening, word
from plantframe.advice.edits import add_fact
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.heights import lengths_m, standing, step_m
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.plan.things import Garden
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

# How high a grown person picks who has not said, about 1.2 times their height; and how far beyond
# that a branch is still pulled down, or stood on tiptoe for (common practice, no source).
USUAL_REACH_M = 2.0
TIPTOE_M = 0.15
PULLED_M = 0.3
GRACE_M = 0.01


@frozen
class Facts:
    """How high the top hangs, and who reaches how far.

    who   "" where nobody in particular picks
    """

    plant: str
    frame: str
    top_m: float
    who: str
    reach_m: float
    said: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The highest of what is picked, on the frame as high as it and the plant go."""
    if frame.height_m is None or not frame.holds or frame.builders_work or _comes_down(frame):
        return
    tops = [
        (min(frame.height_m, lengths_m(one.entry)[1] or frame.height_m), one)
        for one in frame.plantings
        if one.entry is not None and _is_picked(one.entry)
    ]
    if not tops:
        return
    top, planting = max(tops, key=lambda pair: pair[0])
    who, reach = picker(frame)
    height = reach if reach is not None else USUAL_REACH_M
    if top <= height + TIPTOE_M + GRACE_M:
        return
    far = top > height + PULLED_M + GRACE_M
    yield Finding(
        level="warn" if far else "note",
        where=planting.planting.fact.where,
        block=frame.frame.name,
        facts=Facts(planting.name, frame.frame.name, top, who, height, reach is not None),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, top, height),
        ways=("Steps on a board, somebody to hold them, and no leaning out.",),
    )


def _is_picked(entry: Plant) -> bool:
    return entry.grown_for == "food" and word(entry.picked) in {"by hand", "cut"}


def _comes_down(frame: WorkedFrame) -> bool:
    """What hangs on it is lowered for picking."""
    return frame.structure is not None and any(
        "lower" in step.do for step in (*frame.structure.steps, *frame.structure.down)
    )


def picker(frame: WorkedFrame) -> tuple[str, float | None]:
    """Who picks here, and how high they reach; without a name, whoever reaches highest."""
    fact = frame.frame.fact("picked by")
    name = fact.get("person") if fact else None
    garden: Garden = frame.garden
    if isinstance(name, str):
        person = garden.person(name)
        return name, person.reach_m if person else None
    if not garden.people or any(one.reach_m is None for one in garden.people):
        known = [one.reach_m for one in garden.people if one.reach_m is not None]
        tall = max(known, default=0.0)
        return "", tall if tall > USUAL_REACH_M else None
    tallest = max(garden.people, key=lambda one: one.reach_m or 0.0)
    return tallest.name, tallest.reach_m


def _ways_out(frame: WorkedFrame, top_m: float, reach_m: float) -> Iterable[Edit]:
    """Lower posts; or somebody taller to pick."""
    step = step_m(frame)
    over = (frame.height_m or top_m) - reach_m
    up = frame.figure("posts.up")
    if up is not None:
        yield from standing(frame, math.floor((up - over) / step + 1e-6) * step)
    for person in frame.garden.people:
        if person.reach_m is not None and top_m <= person.reach_m + TIPTOE_M:
            yield add_fact(frame.frame, f"picked by {person.name}")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    top, reach = shown.length(facts.top_m), shown.length(facts.reach_m)
    reaches = f"{facts.who} reaches {reach}" if facts.who and facts.said else f"most reach {reach}"
    if facts.said and not facts.who:
        reaches = f"the tallest here reaches {reach}"
    says = f"{opening(facts.plant)} on {facts.frame}: the top hangs at {top}, and {reaches}."
    far = facts.top_m > facts.reach_m + PULLED_M
    return Words(
        says=says,
        if_ignored="That is a pair of steps every other day, on dug soil."
        if far
        else "The topmost are picked on tiptoe, or missed.",
        told=f"{opening(facts.plant)} on {facts.frame}, {top} high.",
        assumed="" if facts.said else f"A reach of {reach}, since nobody has said.",
        sum=(
            f"{top} against {reach}; {shown.length(TIPTOE_M)} more is tiptoe, "
            f"{shown.length(PULLED_M)} more is pulled down."
        ),
    )


RULE = Rule(
    name="out-of-reach",
    summary="what is picked hangs higher than whoever picks it reaches",
    looks_at="frame",
    levels=("note", "warn"),
    basis="sum",
    check=check,
    words=words,
)
