"""mortise-too-big: a mortise leaves a post with thin cheeks, or opens near its top."""

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

# Common practice, no source: a third to a half of the post, and wood enough above.
MOST_SHARE, AIM_SHARE = 0.5, 0.4
LEAST_ABOVE_M = 0.10
HAIR_M = 0.002


@frozen
class Facts:
    """The mortise and its post, m; `above_m` None where the plan does not say."""

    frame: str
    wide_m: float
    post_m: float
    above_m: float | None

    @property
    def too_wide(self) -> bool:
        """More than half of the post is cut away."""
        return self.wide_m > self.post_m * MOST_SHARE + HAIR_M

    @property
    def too_near(self) -> bool:
        """Too little wood is left above it."""
        return self.above_m is not None and self.above_m < LEAST_ABOVE_M - HAIR_M

    @property
    def cheek_m(self) -> float:
        """What is left on either side."""
        return max(0.0, (self.post_m - self.wide_m) / 2)


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The mortises that the plan gives, against its posts."""
    fact = frame.frame.fact("mortises")
    wide = frame.figure("mortises.wide")
    sides = (frame.figure("posts.width"), frame.figure("posts.depth"))
    if fact is None or frame.stands or wide is None or None in sides:
        return
    above = frame.figure("mortises.below") if frame.is_said("mortises.below") else None
    facts = Facts(frame.frame.name, wide, min(side for side in sides if side is not None), above)
    if not (facts.too_wide and frame.is_said("mortises.wide")) and not facts.too_near:
        return
    yield Finding(
        level="warn",
        where=fact.where,
        block=frame.frame.name,
        facts=facts,
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, facts),
    )


def _ways_out(frame: WorkedFrame, facts: Facts) -> Iterable[Edit]:
    """A narrower mortise, lower down; else a thicker post."""
    fact, posts = frame.frame.fact("mortises"), frame.frame.fact("posts")
    shown = Shown(frame.garden.imperial)
    slots = {}
    if facts.too_near:
        slots["below"] = "4 in" if shown.imperial else "10 cm"
    if facts.too_wide:
        slots["wide"] = _bench(facts.post_m * AIM_SHARE, shown)
    if fact is not None:
        yield rewrite(fact, slots)
    if facts.too_wide and not facts.too_near and posts is not None and posts.slot("section"):
        across = _bench(facts.wide_m / AIM_SHARE, shown)
        section = posts.slot("section")
        shape = "round" if section is not None and "round" in section.text else "square"
        yield rewrite(posts, {"section": f"{across} {shape}"})


def _bench(metres: float, shown: Shown) -> str:
    """To half an inch or half a centimetre."""
    if shown.imperial:
        return shown.bench(math.floor(metres / INCH_M * 2 + 0.5) / 2 * INCH_M)
    return f"{math.floor(metres * 200 + 0.5) / 2:.1f} cm".replace(".0 ", " ")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    parts, ignored = [], []
    if facts.too_wide:
        parts.append(
            f"a mortise {_bench(facts.wide_m, shown)} wide in a post {shown.bench(facts.post_m)} "
            f"across leaves cheeks of {shown.bench(facts.cheek_m)}"
        )
        ignored.append("the post breaks there when somebody leans on the rail")
    if facts.too_near and facts.above_m is not None:
        start = "it begins" if parts else "the mortises begin"
        parts.append(
            f"{start} {_bench(facts.above_m, shown)} below the top, where "
            f"{_bench(LEAST_ABOVE_M, shown)} is the least"
        )
        ignored.append("the top splits out")
    says = f"{facts.frame}: {', and '.join(parts)}."
    left = " and ".join(ignored)
    return Words(
        says=says,
        if_ignored=f"{left[:1].upper()}{left[1:]}.",
        told=f"{says.partition(': ')[2]}",
        sum="A third of the post is usual, and half the most: common practice.",
    )


RULE = Rule(
    name="mortise-too-big",
    summary="a mortise is wider than half its post, or begins near the top",
    looks_at="frame",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
