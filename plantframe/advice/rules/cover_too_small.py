"""cover-too-small: the fabric of a tunnel does not reach the ground, or its rods are too short."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.mechanics.geometry import half_ellipse_m
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

# Over the arc of the hoops: with less the wind lifts the edges; with as much again they bury
# well. Rods want as much in the soil (all common practice, no source).
LEAST_M = 0.4
EASY_M = 0.6
LOWEST_M = 0.4  # under lower hoops nothing grows up
GRACE_M = 0.02


@frozen
class Facts:
    """The arc of the hoops and what is to go over it, or along it.

    what   what is too small: rod or cover
    """

    frame: str
    what: str
    has_m: float
    arc_m: float
    wants_m: float
    hoop_m: tuple[float, float]


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Width of the cover and length of the rods, where the plan gives them, against the arc."""
    wide, up, name = _hoop_wide_m(frame), frame.figure("hoops.up"), frame.frame.name
    if wide is None or up is None or frame.figure("cover_needed") is None:
        return
    if wide <= 0 or up <= 0:
        return
    arc = half_ellipse_m(wide, up)
    cover, rod = frame.figure("fabric.wide"), frame.figure("hoops.length")
    if cover is not None and frame.is_said("fabric.wide") and cover < arc + EASY_M - GRACE_M:
        level = "warn" if cover < arc + LEAST_M - GRACE_M else "note"
        facts = Facts(name, "cover", cover, arc, arc + EASY_M, (wide, up))
        yield _finding(frame, level, facts)
    if rod is not None and frame.is_said("hoops.length") and rod < arc + LEAST_M - GRACE_M:
        yield _finding(frame, "warn", Facts(name, "rod", rod, arc, arc + LEAST_M, (wide, up)))


def _hoop_wide_m(frame: WorkedFrame) -> float | None:
    """From foot to foot as the plan says, else the width of the bed; None where neither is."""
    if frame.is_said("hoops.wide") or frame.is_said("wide"):
        return frame.figure("hoops.wide")
    return frame.bed.width_m if frame.bed else None


def _finding(frame: WorkedFrame, level: str, facts: Facts) -> Finding:
    fact = frame.frame.fact("hoops" if facts.what == "rod" else "fabric")
    return Finding(
        level=level,
        where=fact.where if fact else frame.frame.block.where,
        block=frame.frame.name,
        subject=facts.what,
        facts=facts,
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, facts),
    )


def _ways_out(frame: WorkedFrame, facts: Facts) -> Iterable[Edit]:
    """A wider cover, longer rods, or lower hoops."""
    shown = Shown(frame.garden.imperial)
    step = 0.1524 if frame.garden.imperial else 0.1
    wanted = shown.typed(-(-(facts.wants_m - GRACE_M) // step) * step)
    hoops, fabric = frame.frame.fact("hoops"), frame.frame.fact("fabric")
    if facts.what == "rod":
        if hoops is not None:
            yield rewrite(hoops, {"length": wanted})
        return
    if fabric is not None and fabric.slot("wide") is not None:
        yield rewrite(fabric, {"wide": wanted})
    if hoops is not None and hoops.slot("up") is not None:
        for less in (step, 2 * step):
            if facts.hoop_m[1] - less < LOWEST_M:
                break
            yield rewrite(hoops, {"up": shown.typed(facts.hoop_m[1] - less)})


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    wide, up = (shown.length(one) for one in facts.hoop_m)
    has, arc, wants = (shown.length(one) for one in (facts.has_m, facts.arc_m, facts.wants_m))
    what = f"a {facts.what}"
    says = (
        f"{facts.frame}: over hoops {wide} wide and {up} high it is {arc} from ground to ground; "
        f"{what} wants {wants}, and has {has}."
    )
    tight = facts.has_m < facts.arc_m + LEAST_M - GRACE_M
    ignored = "With weights all along the edges it will do."
    if facts.what == "rod":
        ignored = "Too little of it is in the soil, and the first wind lays it down."
    elif tight:
        ignored = "The edges cannot be held down, and the first wind has it."
    return Words(
        says=says,
        if_ignored=ignored,
        told=f"{facts.frame}: {what} of {has}.",
        assumed=f"{shown.length(LEAST_M / 2)} in the soil at each end."
        if facts.what == "rod"
        else f"{shown.length(EASY_M / 2)} on the ground on either side.",
        sum=f"{arc} and {shown.length(facts.wants_m - facts.arc_m)} is {wants}.",
    )


RULE = Rule(
    name="cover-too-small",
    summary="a tunnel's cover does not reach the ground with enough to hold it",
    looks_at="frame",
    levels=("note", "warn"),
    basis="sum",
    check=check,
    words=words,
)
