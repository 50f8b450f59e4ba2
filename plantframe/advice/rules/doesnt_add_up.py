"""doesn't-add-up: the figures of a post, or of a frame and its parts, do not agree."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import add_fact, drop, rewrite, set_fact, uprights
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
# A height is often said roundly: so much of it may be out before anybody minds.
ROUNDLY = 0.1
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


@frozen
class Height:
    """How high a frame is said to be, and how high its parts make it, m."""

    frame: str
    uprights: str
    said_m: float
    made_m: float


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Length against depth and height, where the plan gives all three; the frame's own height."""
    yield from _sticks(frame)
    yield from _height(frame)


def _sticks(frame: WorkedFrame) -> Iterable[Finding]:
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


def _height(frame: WorkedFrame) -> Iterable[Finding]:
    """A height of the whole that nothing asks for, since the parts of this kind settle it."""
    said, made, kind = frame.said.get("high"), frame.height_m, frame.structure
    if not isinstance(said, float) or not made or kind is None or "high" in kind.facts:
        return
    if abs(said - made) <= ROUNDLY * made:
        return
    fact = next(iter(frame.frame.facts.get("high", ())), None)
    yield Finding(
        level="warn",
        where=fact.where if fact else frame.frame.block.where,
        block=frame.frame.name,
        subject="high",
        facts=Height(frame.frame.name, frame.uprights, said, made),
        by=frame.wanted_by,
        candidates=partial(_as_high, frame, fact, said, made),
    )


def _as_high(frame: WorkedFrame, high: Fact | None, said: float, made: float) -> Iterable[Edit]:
    """The parts that settle the height made to fit it, or the height taken out."""
    shown = Shown(frame.garden.imperial)
    facts = frame.structure.facts if frame.structure else {}
    if "headroom" in facts:
        line = f"headroom {shown.exact(said)}"
        yield set_fact(frame.frame, "headroom", line, line)
    length, line_of = frame.figure("posts.length"), uprights(frame.frame)
    if length is not None and length + said - made > 0:
        fitting = shown.exact(length + said - made)
        if line_of is None:
            yield add_fact(frame.frame, f"{frame.uprights} {fitting}")
        else:
            yield rewrite(line_of, {"length": fitting})
    if high is not None and high.where.line != frame.frame.block.where.line:
        yield drop(high, f"without the line: {shown.exact(made)} is right")


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


def words(facts: Facts | Height, shown: Shown) -> Words:
    """It in words."""
    return _of_a_height(facts, shown) if isinstance(facts, Height) else _of_a_post(facts, shown)


def _of_a_height(facts: Height, shown: Shown) -> Words:
    said, made = shown.length(facts.said_m), shown.length(facts.made_m)
    return Words(
        says=(
            f"{facts.frame}: {said} high is written, and what it is made of, as the plan gives it "
            f"or as is usual, makes it {made}. It is reckoned with {made}."
        ),
        if_ignored="What is bought and cut then makes another frame than the one in mind.",
        told=f"{said} high.",
        sum=f"Its {facts.uprights} and their depth make {made}.",
    )


def _of_a_post(facts: Facts, shown: Shown) -> Words:
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
    summary="a post's length is not its depth and its height together, or a frame's height is not "
    "what its parts make",
    looks_at="frame",
    levels=("stop", "warn"),
    basis="sum",
    check=check,
    words=words,
)
