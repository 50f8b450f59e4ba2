"""sail-too-big: the leaves hold more wind than the wood of the posts stands."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice import posts
from plantframe.advice.amounts import areas, how_much, place_words, wind_assumed
from plantframe.advice.edits import uprights
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.mechanics.ranges import Range, load_ratio
from plantframe.season.loads import LIKELY, TIGHT, Push, grade

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown


@frozen
class Facts:
    """The push on the leaves and the posts that take it.

    post     what the kind calls one of them, with its thickness as typed or in m
    shared   how many share the push, 1 where each takes its own
    sail     what the wind blows on: leaves, or a net with nothing on it
    """

    frame: str
    posts: str
    typed: str
    width_m: float
    shared: int
    sail: str
    place: str
    push: Push
    ratio: Range


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Wind at the ground over what the wood stands, where the wood gives way first."""
    push = frame.push
    if push is None or not push.asked.middle or _carries_its_own_wind(frame):
        return
    if push.weak == "ground" and posts.ground_is_asked(frame):
        return
    ratio = load_ratio(push.asked, push.wood)
    level = grade(ratio.middle)
    if level == "silent":
        return
    fact = uprights(frame.frame)
    width = frame.figure("posts.width")
    yield Finding(
        level=level,
        where=fact.where if fact else frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(
            frame.frame.name,
            frame.uprights,
            _section(frame),
            width or 0.0,
            _sharing(frame),
            "net" if frame.structure and frame.structure.stands.push else "leaves",
            frame.place,
            push,
            ratio,
        ),
        ratio=ratio,
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, ratio.middle),
        ways=(posts.UPWIND,),
    )


def _carries_its_own_wind(frame: WorkedFrame) -> bool:
    """One cane or stake to a flower: the stem takes most of its wind itself."""
    worked = frame.worked
    alone = worked is not None and (worked.carries is None or worked.carries.by == "none")
    return (
        alone
        and posts.ground_is_asked(frame)
        and all(one.entry is not None and one.entry.grown_for != "food" for one in frame.plantings)
    )


def _sharing(frame: WorkedFrame) -> int:
    return max(1, round(frame.worked.standing.shares)) if frame.worked else 1


def _section(frame: WorkedFrame) -> str:
    fact = uprights(frame.frame)
    slot = fact.slot("section") if fact else None
    return slot.text if slot else ""


def _ways_out(frame: WorkedFrame, ratio: float) -> Iterable[Edit]:
    """Stays first, then thicker wood, then less height, then wood that is thicker still."""
    if frame.structure is not None and frame.structure.stands.held == "alone":
        yield from posts.stayed(frame)
    thicker = list(posts.thicker(frame, ratio / TIGHT))
    yield from thicker[:1]
    yield from posts.lower(frame, TIGHT / ratio)
    yield from thicker[1:]


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    push = facts.push
    stick = facts.typed or shown.bench(facts.width_m)
    each = push.area_m2 / push.asked.middle
    trusted = areas(each * push.wood.low, each * push.wood.high, shown)
    place = place_words(facts.place)
    leaves = f"{shown.area(push.area_m2)} of {facts.sail}"
    if facts.shared > 1:
        says = (
            f"{facts.frame}: its {facts.posts} hold {leaves} to the wind between them; in {place} "
            f"{facts.posts} of {stick} this high stand about {trusted}."
        )
    else:
        post = facts.posts.removesuffix("s")
        stayed = "with its stays" if push.stayed else "without stays"
        says = (
            f"{facts.frame}: one {post} holds {leaves} to the wind; in {place} a {stick} {post} "
            f"this high, {stayed}, stands about {trusted}."
        )
    says += f" That is {how_much(facts.ratio.middle, 'the wood stands')}."
    gale = "summer gale in full leaf" if facts.sail == "leaves" else "gale"
    push_n, wood_n = push.asked.middle / push.height_m, push.wood.middle / push.height_m
    return Words(
        says=says,
        if_ignored=f"A {gale.removeprefix('summer ')} may crack it."
        if facts.ratio.middle <= LIKELY
        else f"The first {gale} is likely to snap it at the ground.",
        told=f"{facts.frame}, {facts.place}; {facts.posts} of {stick}.",
        assumed=f"{wind_assumed(shown)}; ordinary wet wood with knots.{_for_years(push)}",
        sum=(
            f"The wind pushes like {shown.push(push_n).removeprefix('about ')} at "
            f"{shown.length(push.height_m)} up, and the wood gives way at about "
            f"{shown.push(wood_n).removeprefix('about ')}: "
            f"{facts.ratio.middle:.2g} (from {facts.ratio.low:.2g} to {facts.ratio.high:.2g}). "
            "Silent to 0.85, a note to 1.1."
        ),
    )


def _for_years(push: Push) -> str:
    if not push.lasting:
        return ""
    return " Since it stays for years, half as much wind again and half the strength."


RULE = Rule(
    name="sail-too-big",
    summary="the wind on the leaves is more than the wood of the posts stands",
    looks_at="frame",
    levels=("note", "warn"),
    basis="estimate",
    check=check,
    words=words,
)
