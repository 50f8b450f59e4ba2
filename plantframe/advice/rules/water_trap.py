"""water-trap: rain is dammed on a light, by a bar across its low end or ridges that lie across."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

OPEN = "open at the low end"


@frozen
class Facts:
    """What dams the rain: a bar, as the plan words it, and ridges that lie across."""

    frame: str
    bar: str
    ridges: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """How the low end of the lights is made, and which way a ridged sheet lies."""
    fact = frame.frame.fact("lights")
    end, ridges = frame.word("lights.end"), frame.word("lights.ridges")
    bar = end if end and end != OPEN else ""
    across = ridges in {"ridges across", "ridges crosswise"}
    if fact is None or not (bar or across):
        return
    yield Finding(
        level="warn",
        where=fact.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, bar, across),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, bar=bool(bar), across=across),
        ways=("Two small stops hold the sheet; between them the rain runs off.",) if bar else (),
    )


def _ways_out(frame: WorkedFrame, *, bar: bool, across: bool) -> Iterable[Edit]:
    """The low end left open, the ridges laid down the slope."""
    fact = frame.frame.fact("lights")
    if fact is None:
        return
    slots = {"end": OPEN} if bar else {}
    if across:
        slots["ridges"] = "ridges down"
    yield rewrite(fact, slots)


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    across = "the ridges of the sheet lie across the slope"
    if facts.bar:
        low = "along the low end" if "low end" in facts.bar else "round all four sides"
        says = f"{facts.frame}: a raised bar {low} of the lights dams the rain"
        says += f", and {across}." if facts.ridges else "."
        ignored = "The joint at the low end stays wet, and rots first."
    else:
        says = f"{facts.frame}: {across}; the rain stands in them and does not run off."
        ignored = "Dirt and green slime gather in them and the sheet lets in less light."
    return Words(
        says=says,
        if_ignored=ignored,
        told=", ".join(one for one in (facts.bar, across if facts.ridges else "") if one) + ".",
        sum="The low end open but for two stops, ridges down the slope: common practice.",
    )


RULE = Rule(
    name="water-trap",
    summary="a bar across the low end of a light, or ridges across the slope, dams the rain",
    looks_at="frame",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
