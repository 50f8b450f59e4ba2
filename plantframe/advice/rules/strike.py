"""strike: wooden posts are to be driven with steel."""

from __future__ import annotations

import re
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import swap
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.units import listed

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.language.reader import Fact
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

STEEL = re.compile(
    r"\b(sledge[- ]?hammer|sledge|steel hammer|lump hammer|club hammer)\b", re.IGNORECASE
)
SOFT = re.compile(
    r"\b(mallet|maul|beetle|post driver|rammer|scrap block|block on top)\b", re.IGNORECASE
)
DRIVES = re.compile(r"\b(drive|driven|driving|knock|tap)\b", re.IGNORECASE)
IRON = re.compile(r"\b(steel|iron|metal|rebar|tubes?|concrete)\b", re.IGNORECASE)


@frozen
class Facts:
    """The tool, and what it is to drive."""

    tool: str
    frames: tuple[str, ...]


def check(season: Season, _season: Season) -> Iterable[Finding]:
    """A steel hammer and no mallet among the tools, and wooden posts still to be driven."""
    garden = season.plan.garden
    lines = garden.facts.get("tools", ())
    found = [(fact, tool) for fact in lines if (tool := STEEL.search(fact.text))]
    if not found or any(SOFT.search(fact.text) for fact in lines):
        return
    frames = [frame for frame in season.frames.values() if _driven(frame)]
    if not frames:
        return
    fact, tool = found[0]
    dates = [frame.wanted_by for frame in frames if frame.wanted_by]
    yield Finding(
        level="note",
        where=fact.where,
        block=garden.name,
        facts=Facts(tool[1].lower(), tuple(frame.frame.name for frame in frames)),
        by=min(dates, default=None),
        candidates=partial(_ways_out, fact, tool[1]),
        ways=("A scrap block on top takes the blows; bore for the pin after driving.",),
    )


def _driven(frame: WorkedFrame) -> bool:
    """Its posts are of wood and are driven, by its own line or by its kind's steps."""
    if frame.stands or not frame.worked or not frame.down_m:
        return False
    facts = [
        fact for word in ("posts", "poles", "stakes") for fact in frame.frame.facts.get(word, ())
    ]
    if any(IRON.search(fact.text) or fact.get("set") for fact in facts):
        return False
    if IRON.search(frame.word("posts.wood")):
        return False
    if any(fact.get("foot") in {"driven", "pointed"} for fact in facts):
        return True
    return any(
        DRIVES.search(working.step.do) and any("mallet" in tool for tool in working.step.tools)
        for working in frame.steps
    )


def _ways_out(fact: Fact, tool: str) -> Iterable[Edit]:
    """A mallet instead, or beside it."""
    yield swap(fact, tool, "no-bounce mallet")
    yield swap(fact, tool, f"{tool}, no-bounce mallet")


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    names = listed(facts.frames) if len(facts.frames) < 4 else f"{len(facts.frames)} frames"
    return Words(
        says=(
            f"{names}: wooden posts to drive, and a {facts.tool} is the only thing among the tools "
            "to drive them with."
        ),
        if_ignored="Steel splits and mushrooms the tops, and the pin hole is gone.",
        told=f"Tools: {facts.tool}.",
        sum="Steel on the end of wood; a mallet of wood, rubber or plastic spares it.",
    )


RULE = Rule(
    name="strike",
    summary="wooden posts are to be driven and the tools have only steel to do it with",
    looks_at="season",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
