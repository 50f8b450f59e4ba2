"""frame-faces-away: the low side of a cold frame looks away from the sun."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.language.slots import COMPASS

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.reader import Fact
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

# The sun's own path ends here; nearer the equator it goes by on either side of a garden.
TROPIC_DEG = 23.4
MOST_DEG = 45.0


@frozen
class Facts:
    """Where the low side looks, and where the sun is."""

    frame: str
    faces: str
    sun: str
    latitude_deg: float


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The low side against the side of the noon sun."""
    latitude = frame.garden.latitude
    typed = _low_side(frame)
    if latitude is None or abs(latitude) <= TROPIC_DEG or typed is None:
        return
    fact, slot, faces = typed
    sun = "south" if latitude > 0 else "north"
    off = abs((COMPASS[faces] - COMPASS[sun] + 180.0) % 360.0 - 180.0)
    if off <= MOST_DEG:
        return
    yield Finding(
        level="stop",
        where=fact.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, faces, sun, latitude),
        by=frame.wanted_by,
        candidates=(rewrite(fact, {slot: sun}),),
    )


def _low_side(frame: WorkedFrame) -> tuple[Fact, str, str] | None:
    """The line that says it, the slot it is in, and the side it names."""
    for fact_word, slot in (("low side", "direction"), ("size", "low")):
        for fact in frame.frame.facts.get(fact_word, ()):
            faces = fact.get(slot)
            if isinstance(faces, str) and faces in COMPASS:
                return fact, slot, faces
    return None


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    degrees = f"{abs(facts.latitude_deg):.0f}° {'north' if facts.latitude_deg > 0 else 'south'}"
    says = (
        f"{facts.frame}: its low side faces {facts.faces}. At {degrees} the sun stands in the "
        f"{facts.sun}, and the low side wants to face there."
    )
    return Words(
        says=says,
        if_ignored="The high back shades what it should warm, all winter long.",
        told=f"{facts.frame}, low side {facts.faces}.",
        assumed="",
        sum=f"{facts.faces} is more than an eighth of a turn off {facts.sun}.",
    )


RULE = Rule(
    name="frame-faces-away",
    summary="the low side of a cold frame does not face the sun",
    looks_at="frame",
    levels=("stop",),
    basis="sum",
    check=check,
    words=words,
)
