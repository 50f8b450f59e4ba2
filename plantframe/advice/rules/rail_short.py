"""rail-short: rails that reach from post to post have nothing left to enter or to lie on."""

from __future__ import annotations

import math
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.units import INCH_M, Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

# What both ends of a rail want beyond the middles of the posts (common practice, no source).
LEAST_M, USUAL_M = 0.10, 0.15
HAIR_M = 0.005
# A kind whose rails enter its posts or lie across them has one of these facts.
ENTERS, LIES = "mortises", "pairs"


@frozen
class Facts:
    """A rail and the distance from post to post, m; whether its ends enter the posts."""

    frame: str
    rail_m: float
    bay_m: float
    enters: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The length of a rail against its bay, where the plan gives both."""
    structure, fact = frame.structure, frame.frame.fact("rails")
    rail, bay = frame.figure("rails.length"), frame.figure("bays.length")
    if structure is None or fact is None or frame.stands or not rail or not bay:
        return
    if not (frame.is_said("rails.length") and frame.is_said("bays.length")):
        return
    enters = ENTERS in structure.facts
    if not enters and LIES not in structure.facts:
        return
    if rail >= bay + LEAST_M - HAIR_M:
        return
    yield Finding(
        level="stop",
        where=fact.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, rail, bay, enters),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, rail, bay),
        ways=("Rails that overlap side by side want poles in pairs, and need no mortise.",)
        if enters
        else (),
    )


def _ways_out(frame: WorkedFrame, rail: float, bay: float) -> Iterable[Edit]:
    """Posts closer together, or longer rails."""
    shown = Shown(frame.garden.imperial)
    bays, rails = frame.frame.fact("bays"), frame.frame.fact("rails")
    closer = _rounded(rail - USUAL_M, shown, up=False)
    if bays is not None and bays.slot("length") is not None and closer > 0:
        yield rewrite(bays, {"length": shown.typed(closer)})
    if rails is not None and rails.slot("length") is not None:
        longer = _rounded(bay + USUAL_M, shown, up=True)
        yield rewrite(rails, {"length": shown.typed(longer)})


def _rounded(metres: float, shown: Shown, *, up: bool) -> float:
    """To half a foot, or to 5 cm, up or down."""
    step = 6 * INCH_M if shown.imperial else 0.05
    steps = metres / step
    return (math.ceil(steps - 1e-6) if up else math.floor(steps + 1e-6)) * step


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    both = "enter the mortises" if facts.enters else "lie on the poles"
    left = facts.rail_m - facts.bay_m
    rail, bay = shown.exact(facts.rail_m), shown.exact(facts.bay_m)
    over = f"only {shown.exact(left)}" if left > HAIR_M else "nothing"
    wanted = shown.lengths(LEAST_M, USUAL_M)
    return Words(
        says=(
            f"{facts.frame}: rails of {rail} on posts {bay} apart leave {over} to {both}; the two "
            f"ends together want {wanted}."
        ),
        if_ignored="The rails do not hold, or do not reach at all.",
        told=f"Rails of {rail}, posts {bay} apart.",
        assumed="That posts are measured from middle to middle.",
        sum=f"{rail} less {bay}.",
    )


RULE = Rule(
    name="rail-short",
    summary="rails are too short to enter the posts or lie across them at both ends",
    looks_at="frame",
    levels=("stop",),
    basis="sum",
    check=check,
    words=words,
)
