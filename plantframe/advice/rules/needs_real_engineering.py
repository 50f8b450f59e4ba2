"""needs-real-engineering: what a builder or an engineer sizes, and this program does not."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

HIGH_M = 2.4  # what stands over people's heads and is taller is not put together by guess
# Covering that weighs next to nothing: a roof of it is not a roof to be sized.
LIGHT = re.compile(
    r"\b(net|netting|mesh|cloth|fabric|film|wire|wires|string|strings)\b", re.IGNORECASE
)
HOUSE = re.compile(r"\b(house|wall|ledger|eaves|gutter|porch|garage)\b", re.IGNORECASE)
BUILDER = re.compile(r"\b(builder|builders|engineer|contractor|carpenter|joiner)\b", re.IGNORECASE)
QUESTIONS = (
    "What does it weigh with vine, rain and snow on it, and who works that out?",
    "What size does a span table give for its beams?",
    "What is it fixed to, and does that hold; what does it do to drainage and cladding?",
    "How deep are the footings, below what frost, on what soil?",
    "What does the local code ask for, and is a permit wanted?",
)


@frozen
class Facts:
    """What it is that is left to a builder, and whether one is named or it stands."""

    frame: str
    kind: str
    cause: str
    high_m: float | None
    settled: str


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Kinds that are a builder's work, beams and roofs on a house, and high things overhead."""
    cause = _cause(frame)
    if not cause:
        return
    settled = "stands" if frame.stands else "builder" if _has_a_builder(frame) else ""
    structure = frame.structure
    yield Finding(
        level="note" if settled else "stop",
        where=frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(
            frame.frame.name,
            structure.name if structure else "",
            cause,
            frame.figure("posts.up"),
            settled,
        ),
        by=frame.wanted_by,
        ways=structure.questions if structure and structure.questions else QUESTIONS,
    )


def _cause(frame: WorkedFrame) -> str:
    if frame.builders_work:
        return "kind"
    if _on_the_house(frame):
        return "house"
    known = frame.structure is not None and "headroom" in frame.structure.facts
    up = frame.figure("posts.up")
    if known and up is not None and up > HIGH_M + 0.02:
        return "high"
    return ""


def _on_the_house(frame: WorkedFrame) -> bool:
    """Beams or a roof that go from a house or a wall: not a lattice, and not wires on one."""
    for word in ("beams", "roof"):
        for fact in frame.frame.facts.get(word, ()):
            if LIGHT.search(fact.text):
                continue
            if HOUSE.search(fact.text) or frame.wall is not None:
                return True
    return False


def _has_a_builder(frame: WorkedFrame) -> bool:
    fact = frame.frame.fact("built by")
    return fact is not None and BUILDER.search(fact.text) is not None


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    if facts.cause == "house":
        what = "a beam or a roof fixed to the house"
    elif facts.cause == "high":
        what = f"{shown.typed(facts.high_m or 0.0)} high over people's heads"
    else:
        what = f"a {facts.kind}, with beams over people's heads"
    says = f"{facts.frame}: {what}. Its sizes are for a span table, the local code and a builder."
    if facts.settled == "builder":
        says = f"{facts.frame}: {what}; the builder named sizes it. Nothing of it is reckoned here."
    elif facts.settled == "stands":
        says = f"{facts.frame}: {what}. How it is built is not looked at here."
    return Words(
        says=says,
        if_ignored="What the builder is not asked is guessed at."
        if facts.settled
        else "A vine doubles its weight for years, and what comes down comes down on somebody.",
        told=f"{facts.frame}: {what}.",
        sum="No sum is done for it here; these are the questions to ask.",
    )


RULE = Rule(
    name="needs-real-engineering",
    summary="a pergola, a beam or roof on the house, or something high overhead",
    looks_at="frame",
    levels=("note", "stop"),
    basis="common practice",
    check=check,
    words=words,
    answered="say who sizes it, such as `built by a builder`",
)
