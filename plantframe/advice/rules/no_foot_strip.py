"""no-foot-strip: the sides of a box that is to last stand on wet soil without strips under them."""

from __future__ import annotations

import re
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import replace_line
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

LASTS_YEARS = 5.0  # sides wanted for no longer need no strips (common practice, no source)
# What keeps the sides off the soil as strips do.
DRY_FOOT = re.compile(
    r"\b(bricks?|stones?|slabs?|paving|concrete|gravel|blocks?|tiles?)\b", re.IGNORECASE
)


@frozen
class Facts:
    """How much of the sides stands on soil, m, and how many screws strips want."""

    frame: str
    feet_m: float
    screws: int
    years: float


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """A box of which the plan says that it has no strips."""
    fact = frame.frame.fact("strips")
    feet = frame.figure("feet")
    if fact is None or fact.get("none") is None or not feet:
        return
    years = frame.frame.stays_years
    life = frame.structure.life if frame.structure else None
    if years is None:
        years = life.usual if life is not None and not life.is_word else 0.0
    if years <= LASTS_YEARS or _dry(frame):
        return
    pieces = frame.worked.pieces.get("strip screw") if frame.worked else None
    screws = pieces.count if pieces else 0
    yield Finding(
        level="note",
        where=fact.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, feet, screws, years),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame),
    )


def _dry(frame: WorkedFrame) -> bool:
    """Something the plan names keeps it off the soil."""
    block = frame.frame.block
    texts = [block.where.typed, *(f"{one.text} {one.remark}" for one in block.facts)]
    return any(DRY_FOOT.search(text) for text in texts)


def _ways_out(frame: WorkedFrame) -> Iterable[Edit]:
    """Strips of scrap."""
    fact = frame.frame.fact("strips")
    if fact is not None:
        stick = "2x2" if frame.garden.imperial else "38x38 mm"
        yield replace_line(fact, f"strips {stick}")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    return Words(
        says=(
            f"{facts.frame}: its sides stand on the soil. Foot strips rot instead of them: "
            f"{shown.length(facts.feet_m)} of scrap stick and {facts.screws} short screws every "
            "four or five years."
        ),
        if_ignored="The sides rot from below, and they are the dearest boards of the box.",
        told="No strips.",
        assumed=f"That the box is wanted for more than {LASTS_YEARS:.0f} years.",
        sum="Twice its length and twice its depth between the boards; common practice.",
    )


RULE = Rule(
    name="no-foot-strip",
    summary="the sides of a box that is to last stand on the soil without foot strips",
    looks_at="frame",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
