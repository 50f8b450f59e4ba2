"""overhead-line: a long pole is raised near a line overhead, or nobody has said where lines run."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.language.slots import Spot

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

# Nothing long is raised nearer to a line than this. A pole no longer than a hoe is no matter; from
# four metres on it is asked where lines run (common practice, no source; the owner of the line has
# its own distances, and they go before these).
CLEAR_M = 6.0
LONG_M = 3.0
ASKED_M = 4.0
# Relations that put a line right above.
ABOVE = frozenset({"over", "above", "in", "on", "at", "along", "across", ""})


@frozen
class Facts:
    """The pole, and how near a line is; None where nobody has said."""

    frame: str
    pole: str
    length_m: float
    away_m: float | None


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The longest pole to be raised against the lines that the garden gives."""
    length = frame.figure("posts.length")
    if length is None or length <= LONG_M or frame.stands:
        return
    pole = frame.uprights.removesuffix("s")
    lines = frame.garden.overhead
    away = min(
        (near for near in (_away_m(fact, frame) for fact in lines) if near is not None),
        default=None,
    )
    if away is not None and away < CLEAR_M:
        yield _finding(frame, "stop", Facts(frame.frame.name, pole, length, away))
    elif not lines and length > ASKED_M:
        yield _finding(frame, "ask", Facts(frame.frame.name, pole, length, None))


UNDER = (
    "Choose a place well clear of it: what can fall that way counts as under it.",
    "Whoever owns the line says how near one may work, and switches it off if need be.",
)
ASKED = "Look up, then write `overhead line 8 m north of …` or `overhead line none` in the garden."


def _finding(frame: WorkedFrame, level: str, facts: Facts) -> Finding:
    return Finding(
        level=level,
        where=frame.frame.block.where,
        block=frame.frame.name,
        facts=facts,
        by=frame.wanted_by,
        ways=UNDER if level == "stop" else (ASKED,),
    )


def _away_m(fact: object, frame: WorkedFrame) -> float | None:
    """How far a line runs from this frame or its bed, None where it says nothing of them."""
    names = {frame.frame.name.lower()} | ({frame.bed.name.lower()} if frame.bed else set())
    spots = [slot.value for slot in getattr(fact, "slots", ()) if isinstance(slot.value, Spot)]
    for spot in spots:
        if spot.name.lower() not in names:
            continue
        if spot.distance_m is not None:
            return spot.distance_m
        return 0.0 if spot.relation in ABOVE else None
    return None


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    length = shown.length(facts.length_m)
    if facts.away_m is None:
        says = (
            f"{facts.frame}: a {facts.pole} of {length} is raised, and the plan says nothing of "
            "lines overhead. Are there any?"
        )
        ignored = "A pole that touches a line while it is walked up kills whoever holds it."
    else:
        near = f"{shown.length(facts.away_m)} from" if facts.away_m > 0 else "under"
        says = f"{facts.frame}: a {facts.pole} of {length} is raised {near} a line overhead."
        ignored = (
            "It need not touch: near enough, the line jumps over and kills whoever holds the pole."
        )
    return Words(
        says=says,
        if_ignored=ignored,
        told=f"{facts.frame}, {facts.pole} of {length}.",
        assumed="",
        sum=f"Nothing longer than {shown.length(LONG_M)} within {shown.length(CLEAR_M)} of a line.",
    )


RULE = Rule(
    name="overhead-line",
    summary="a long pole is raised near a line overhead, or nobody has said where lines run",
    looks_at="frame",
    levels=("stop", "ask"),
    basis="common practice",
    check=check,
    words=words,
    answered="say where the line runs, or `overhead line none`.",
)
