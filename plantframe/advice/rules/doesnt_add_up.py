"""doesn't-add-up: what is in the ground and what stands make more or less than the post."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.language.edits import Edit
from plantframe.language.values import Measure
from plantframe.season.units import INCH_M, Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.reader import Fact
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

STICKS = ("posts", "end posts", "poles", "stakes")
# A figure typed to the inch or to two centimetres may be that far out.
GRACE_M, GRACE_INCH_M = 0.0205, INCH_M + 0.0005
LOWER_THAN_ITS_END = ("to the wire", "to the top wire", "to the rail")


@frozen
class Facts:
    """The three figures as typed, m."""

    frame: str
    word: str
    length_m: float
    down_m: float
    up_m: float
    leaning: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Length against depth and height, where the plan gives all three."""
    for word in STICKS:
        for fact in frame.frame.facts.get(word, ()):
            found = _three(fact)
            if found is None or not fact.whole:
                continue
            length, down, up = found
            leaning = _leans(frame, fact)
            over = down + up - length
            if abs(over) <= _grace(fact) or (over < 0 and (leaning or _to_the_wire(fact))):
                continue
            yield Finding(
                level="stop",
                where=fact.where,
                block=frame.frame.name,
                subject=word,
                facts=Facts(frame.frame.name, word, length, down, up, leaning),
                by=frame.wanted_by,
                candidates=partial(_ways_out, frame, fact, length, down, up),
            )


def _three(fact: Fact) -> tuple[float, float, float] | None:
    values = [fact.get(name) for name in ("length", "down", "up")]
    if not all(isinstance(value, Measure) for value in values):
        return None
    length, down, up = (value.value for value in values if isinstance(value, Measure))
    return length, down, up


def _grace(fact: Fact) -> float:
    length = fact.get("length")
    feet = isinstance(length, Measure) and length.unit in {"ft", "in", "ft in"}
    return GRACE_INCH_M if feet else GRACE_M


def _leans(frame: WorkedFrame, fact: Fact) -> bool:
    """A slanting leg stands less high than it is long above the ground."""
    held = frame.structure.stands.held if frame.structure else ""
    return held == "braces itself" or fact.get("lean") is not None


def _to_the_wire(fact: Fact) -> bool:
    """The height is that of the top wire: idle post above it is nobody's slip."""
    return any(words in fact.text.lower() for words in LOWER_THAN_ITS_END)


def _ways_out(
    frame: WorkedFrame, fact: Fact, length: float, down: float, up: float
) -> Iterable[Edit]:
    """Each of the three figures made to fit the other two."""
    shown = Shown(frame.garden.imperial)
    if length > down:
        stand = "stand lower" if up > length - down else "stand higher"
        yield _worded(rewrite(fact, {"up": shown.exact(length - down)}), stand)
    if length > up:
        depth = "less deep" if down > length - up else "deeper"
        yield _worded(rewrite(fact, {"down": shown.exact(length - up)}), depth)
    ones = "longer ones" if down + up > length else "shorter ones"
    yield _worded(rewrite(fact, {"length": shown.exact(down + up)}), ones)


def _worded(edit: Edit, remark: str) -> Edit:
    return Edit(f"{edit.says} ({remark})", edit.changes)


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    left = facts.length_m - facts.down_m
    length, down, up = (shown.exact(one) for one in (facts.length_m, facts.down_m, facts.up_m))
    leaves = f"leave {shown.exact(left)}" if left > 0 else "leave nothing"
    most = " at the most" if facts.leaning and left > 0 else ""
    return Words(
        says=(
            f"{facts.frame}: {facts.word} {length} long with {down} in the ground {leaves} "
            f"standing{most}, not the {up} written."
        ),
        if_ignored="One of the three figures is a slip, and the cut list would follow it.",
        told=f"{facts.word} {length} long, {down} down, {up} up.",
        sum=f"{length} less {down} is {shown.exact(left) if left > 0 else 'nothing'}.",
    )


RULE = Rule(
    name="doesn't-add-up",
    summary="a post's length is not its depth and its height together",
    looks_at="frame",
    levels=("stop",),
    basis="sum",
    check=check,
    words=words,
)
