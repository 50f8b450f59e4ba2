"""air-gap: a lattice stands too close to the wall behind it for the wall to dry."""

from __future__ import annotations

import re
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite, set_fact
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

# Behind a climber, common practice without a source: masonry dries across 5 cm; the cladding of a
# house wants 7.5 cm at least and 15 cm to be easy.
MASONRY_M = 0.05
CLADDING_M = 0.0762
EASY_M = 0.1524
GRACE_M = 0.003
CLADDING = re.compile(r"shingle|timber|wood|board|siding|clad|plank|\blogs?\b|vinyl")
MASONRY = re.compile(r"brick|stone|masonry|block|concrete|flint|render|stucco|plaster")


@frozen
class Facts:
    """The air there is, and the least there should be."""

    frame: str
    wall: str
    surface: str
    gap_m: float
    least_m: float
    easy_m: float


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The gap that the plan gives, against what the wall is made of."""
    gap = frame.figure("gap")
    if gap is None or frame.wall is None or not (_said(frame, "gap") or _said(frame, "hooks")):
        return
    surface = frame.wall.surface.lower()
    clad = CLADDING.search(surface) is not None
    if not clad and MASONRY.search(surface) is None:
        return  # nobody has said what the wall is
    least, easy = (CLADDING_M, EASY_M) if clad else (MASONRY_M, MASONRY_M)
    if gap >= easy - GRACE_M:
        return
    fact = frame.frame.fact("gap") or frame.frame.fact("hooks")
    yield Finding(
        level="warn" if gap < least - GRACE_M else "note",
        where=fact.where if fact else frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, frame.wall.name, frame.wall.surface, gap, least, easy),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, clad=clad),
    )


def _said(frame: WorkedFrame, word: str) -> bool:
    return frame.frame.fact(word) is not None


def _ways_out(frame: WorkedFrame, *, clad: bool) -> Iterable[Edit]:
    """Longer hooks, deeper battens."""
    easy, least = ("6 in", "2 in") if frame.garden.imperial else ("15 cm", "5 cm")
    air = easy if clad else least
    gap, hooks = frame.frame.fact("gap"), frame.frame.fact("hooks")
    if gap is not None:
        yield set_fact(frame.frame, "gap", f"gap {air}")
    elif hooks is not None and hooks.slot("length") is not None:
        yield rewrite(hooks, {"length": air})


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    gap, easy = shown.bench(facts.gap_m), shown.bench(facts.easy_m)
    tight = facts.gap_m < facts.least_m
    says = f"{facts.frame}: {gap} of air before {facts.wall} ({facts.surface}); " + (
        f"{shown.bench(facts.least_m)} is the least there, {easy} lets it dry."
        if tight and facts.least_m < facts.easy_m
        else f"{easy} lets it dry."
    )
    return Words(
        says=says,
        if_ignored="Behind the leaves it stays damp, and rots or stains where nobody looks."
        if tight
        else "It does in a dry place; paint and a brush want more room.",
        told=f"{facts.frame}, {gap} off {facts.wall}.",
        assumed="",
        sum=f"{gap} against {easy}.",
    )


RULE = Rule(
    name="air-gap",
    summary="a lattice stands too close to the wall behind it for the wall to dry",
    looks_at="frame",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
)
