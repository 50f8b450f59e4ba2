"""too-shallow-seasonal: a frame put up each year that the ground does not hold."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice import posts
from plantframe.advice.amounts import areas, how_much, place_words, wind_assumed
from plantframe.advice.edits import uprights
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.loads import LIKELY, TIGHT, Push, grade

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.mechanics.ranges import Range
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

# Least depth under a net or bar that stands higher than a metre (common practice, no source).
LEAST_M = 0.30
LOW_M = 1.0
# One change alone seldom does where both wood and ground are weak.
BOTH = "Thicker posts, and stays or more depth with them: one alone is not enough in every wind."
GRACE_M = 0.005  # 30 cm typed as 11¾ in is meant as 30 cm


@frozen
class Facts:
    """The depth, what stands above it, and the push where the sum rests on one."""

    frame: str
    posts: str
    down_m: float
    up_m: float
    soil: str
    place: str
    push: Push | None


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Wind at the ground over what the ground holds; and a floor under nets and bars."""
    down, up = frame.down_m, frame.figure("posts.up")
    if down is None or not posts.ground_is_asked(frame) or not frame.structure.stands.by:  # type: ignore[union-attr]
        return
    push = frame.push if frame.push is not None and frame.push.weak == "ground" else None
    level = grade(push.ratio.middle) if push is not None else "silent"
    if level != "warn" and _under_the_floor(frame, down, up):
        level, push = "warn", None
    if level == "silent":
        return
    fact = uprights(frame.frame)
    yield Finding(
        level=level,
        where=fact.where if fact else frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(
            frame.frame.name, frame.uprights, down, up or 0.0, frame.soil, frame.place, push
        ),
        ratio=push.ratio if push else None,
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, down, push),
        ways=(posts.UPWIND, BOTH) if level == "warn" and push is not None else (),
    )


def _under_the_floor(frame: WorkedFrame, down: float, up: float | None) -> bool:
    """Shallower than a net or a bar above a metre wants, whatever the sum says."""
    worked = frame.worked
    hung = worked is not None and worked.carries is not None and worked.carries.by != "none"
    return hung and up is not None and up > LOW_M and down < LEAST_M - GRACE_M


def _ways_out(frame: WorkedFrame, down: float, push: Push | None) -> Iterable[Edit]:
    """Longer posts set deeper, stays, or less height."""
    if push is None:
        yield from posts.deeper(frame, LEAST_M)
        return
    step = 0.1524 if frame.garden.imperial else 0.15
    yield from posts.deeper(frame, down + step, down + 2 * step)
    yield from posts.stayed(frame)
    yield from posts.lower(frame, TIGHT / push.ratio.middle)


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    depth = f"{shown.length(facts.down_m)} in the ground"
    if facts.push is None:
        says = (
            f"{facts.frame}: {facts.posts} {shown.typed(facts.up_m)} high stand {depth}; a net or "
            f"a bar that high wants {shown.length(LEAST_M)} at the least."
        )
        ignored = f"The {facts.posts} work loose and lean before the crop is in."
        return Words(
            says, ignored, f"{facts.posts} {depth}.", "", "The least depth is common practice."
        )
    push = facts.push
    ground = push.ground or push.wood
    each = push.area_m2 / push.asked.middle
    held = areas(each * ground.low, each * ground.high, shown)
    place = place_words(facts.place)
    post = facts.posts.removesuffix("s")
    stayed = ", with its stays," if push.stayed else ""
    says = (
        f"{facts.frame}: one {post} holds {shown.area(push.area_m2)} of leaves to the wind; in "
        f"{facts.soil} and {place} {shown.length(facts.down_m)} of depth{stayed} holds "
        f"about {held}. That is {how_much(push.ratio.middle, 'it holds')}."
    )
    return Words(
        says=says,
        if_ignored="A gale on wet ground may tilt it."
        if push.ratio.middle <= LIKELY
        else "The first summer gale in full leaf is likely to lay it over.",
        told=f"{facts.posts} {depth}, in {facts.soil}, in {place}.",
        assumed=f"{wind_assumed(shown)}; the loose top of the soil does not count.",
        sum=_sum(push, ground, shown),
    )


def _sum(push: Push, ground: Range, shown: Shown) -> str:
    pushed, held = (
        shown.weight(one / push.height_m / 9.81) for one in (push.asked.middle, ground.middle)
    )
    ratio = push.ratio
    return (
        f"The wind pushes like {pushed} at {shown.length(push.height_m)} up, and the ground gives "
        f"way at about {held}: {ratio.middle:.2g} (from {ratio.low:.2g} to {ratio.high:.2g}). "
        "Silent to 0.85, a note to 1.1."
    )


RULE = Rule(
    name="too-shallow-seasonal",
    summary="posts of a frame put up each year stand too shallow for the wind on its leaves",
    looks_at="frame",
    levels=("note", "warn"),
    basis="estimate",
    check=check,
    words=words,
)
