"""children-climb: rungs on a frame that is held by loose pins, where there are small children."""

from __future__ import annotations

from functools import partial
from itertools import pairwise
from typing import TYPE_CHECKING

from plantframe.advice.edits import drop
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.young import small_children
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

STEP_M = 0.60  # a child's highest step (common practice, no source)
LEAST_UP_M = 0.9  # lower than this nobody falls far
HAIR_M = 0.01


@frozen
class Facts:
    """The rungs' distance, how high the frame is, m, and who may climb it."""

    frame: str
    step_m: float
    high_m: float
    who: str


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Rails close enough for steps, on a frame whose kind is held by pins or that has them."""
    who = small_children(frame.garden)
    rails = frame.frame.fact("rails")
    high = frame.height_m or frame.figure("posts.up")
    if not who or rails is None or not high or high < LEAST_UP_M or not _pinned(frame):
        return
    step = _step_m(frame, high)
    if step is None or step > STEP_M + HAIR_M:
        return
    yield Finding(
        level="warn",
        where=rails.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, step, high, who),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame),
        ways=("Tell them what it is, or fence it while it stands.",),
    )


def _pinned(frame: WorkedFrame) -> bool:
    """It is held by loose pins: the plan names them, or its kind warns of climbing."""
    if frame.frame.fact("pins") is not None:
        return True
    dangers = frame.structure.dangers if frame.structure else ()
    return any(danger.kind == "children" for danger in dangers)


def _step_m(frame: WorkedFrame, high: float) -> float | None:
    """The least distance from one rail up to the next, None for a single one."""
    heights = frame.said.get("rails.heights")
    if isinstance(heights, tuple) and len(heights) > 1:
        return min(float(upper) - float(lower) for lower, upper in pairwise(sorted(heights)))
    apart, count = frame.said.get("rails.apart"), frame.said.get("rails.count")
    if isinstance(apart, float):
        return apart
    if isinstance(count, float) and count > 1:
        return high / count
    return None


def _ways_out(frame: WorkedFrame) -> Iterable[Edit]:
    """The net without rungs."""
    rails = frame.frame.fact("rails")
    if rails is not None:
        yield drop(rails, f"no {rails.text.strip()} (a net instead of rungs)")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    return Words(
        says=(
            f"{facts.frame}: rails every {shown.length(facts.step_m)} up to "
            f"{shown.length(facts.high_m)} look like a ladder, and there are {facts.who}. Loose "
            "pins hold plants and no child."
        ).replace("there are a child", "there is a child"),
        if_ignored="It folds under the first one that climbs it.",
        told=f"Rails every {shown.length(facts.step_m)}.",
        sum=f"{shown.length(STEP_M)} is a child's highest step: common practice.",
    )


RULE = Rule(
    name="children-climb",
    summary="rails like rungs on a frame held by loose pins, where there are small children",
    looks_at="frame",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
