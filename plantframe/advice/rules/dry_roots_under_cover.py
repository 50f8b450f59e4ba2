"""dry-roots-under-cover: no rain reaches what grows under lights or film, and nobody waters it."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import add_task
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import is_spoken_of
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

CAN_L_PER_M2 = (5.0, 10.0)  # every week to ten days in spring (common practice, no source)
L_PER_GALLON_US = 3.785
FT2_PER_M2 = 10.764


@frozen
class Facts:
    """The cover, and whether it is lights or film that keep the rain off."""

    cover: str
    what: str


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """The first cover of the plan that keeps the rain off something, with no word of water."""
    what = _keeps_rain_off(frame)
    if not what or not frame.plantings or is_spoken_of(season, r"\bwater", frame.frame.name):
        return
    first = next(
        one
        for one in season.frames.values()
        if _keeps_rain_off(one)
        and one.plantings
        and not is_spoken_of(season, r"\bwater", one.frame.name)
    )
    if first is not frame:
        return  # said once, of the first
    yield Finding(
        level="note",
        where=frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, what),
        by=frame.frame.on.day if frame.frame.on else None,
        candidates=partial(_ways_out, frame),
        ways=("The cover off on mild, wet days.",),
    )


def _keeps_rain_off(frame: WorkedFrame) -> str:
    """Lights or film; rain goes through fabric and net."""
    structure = frame.structure
    if structure is None or frame.frame.word != "cover":
        return ""
    if "lights" in structure.facts:
        return "the lights"
    lines = frame.frame.facts.get("fabric", ())
    film = any("film" in line.text.lower() or "plastic" in line.text.lower() for line in lines)
    return "the film" if film and structure.stands.held == "ground" else ""


def _ways_out(frame: WorkedFrame) -> Iterable[Edit]:
    """A can of water every week."""
    yield add_task(frame.frame.block, f"water {frame.frame.name} every week or so")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    low, high = CAN_L_PER_M2
    can = f"{low:.0f} to {high:.0f} litres a square metre"
    if shown.imperial:
        low, high = (one / L_PER_GALLON_US / FT2_PER_M2 * 10 for one in CAN_L_PER_M2)
        can = f"{low:.0f} to {high:.0f} gallons to 10 sq ft"
    return Words(
        says=(
            f"{facts.cover}: no rain reaches what grows under {facts.what}. In spring it wants "
            f"about {can} every week to ten days, and none in hard frost."
        ),
        if_ignored="Seedlings stop growing and bolt before anybody sees that the soil is dry.",
        told="No task or note speaks of water.",
        sum="Said of the first cover in the plan that something grows under, unwatered.",
    )


RULE = Rule(
    name="dry-roots-under-cover",
    summary="no rain reaches what grows under lights or film, and nothing is said of water",
    looks_at="frame",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
