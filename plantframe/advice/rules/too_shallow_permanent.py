"""too-shallow-permanent: posts that stay for years stand too shallow for frost and rot."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice import posts
from plantframe.advice.edits import uprights
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

# Depths of common practice, no source; printed rules run from 12 in to a third of the post.
ALONE_M = 0.60
SHARE = 0.25  # of the depth and what stands above it that carries a wire, a rail or leaves
HELD_M = 0.40  # held elsewhere as well: at the head, by a brace, in concrete, in pairs
FEW_YEARS, FEW_YEARS_M = 5, 0.45
STEEL_M = 0.45
TALL_M, TALL_SHARE, TALL_TIED_M = 3.5, 0.1, 0.90
QUARTER, OF_ITS_KIND = "a quarter of it, above and below", "what its kind is given"
SOME_YEARS = "wanted for some years only"
STIFF_SOILS = frozenset({"firm clay", "stiff clay"})
GRACE_M = 0.01  # 24 in against 60 cm, or against a quarter of 8 ft
NEARLY = 0.10  # short by no more than this share: worth a word, no more
IN_HAND = 0.5  # the wind takes no more than half of what wood and ground hold


@frozen
class Facts:
    """The depth, the depth wanted, and why; m."""

    frame: str
    posts: str
    down_m: float
    wanted_m: float
    because: str
    level: str


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The depth that the plan gives against the depth the trade gives such a post."""
    structure = frame.structure
    if structure is None or not frame.reckoned_lasting or frame.builders_work:
        return
    stands = structure.stands
    portable = stands.held == "braces itself" and stands.loads == "light"
    if not stands.by or stands.held in {"wall", "ground"} or portable:
        return
    for word, key in (("posts", "posts"), ("end posts", "end_posts")):
        down = frame.figure(f"{key}.down")
        fact = uprights(frame.frame) if word == "posts" else frame.frame.fact(word)
        if down is None or fact is None or f"{key}.down" in frame.assumed:
            continue
        wanted, because = _wanted(frame, key, down)
        level = _level(frame, down, wanted, because)
        if level == "silent":
            continue
        yield Finding(
            level=level,
            where=fact.where,
            block=frame.frame.name,
            subject=word,
            facts=Facts(
                frame.frame.name,
                frame.uprights if word == "posts" else word,
                down,
                wanted,
                because,
                level,
            ),
            by=frame.wanted_by,
            candidates=partial(_ways_out, frame, wanted) if word == "posts" else (),
            ways=(
                ()
                if word == "posts"
                else (f"End posts {Shown(frame.garden.imperial).length(wanted)} down, or braced.",)
            ),
        )
        return


def _wanted(frame: WorkedFrame, key: str, down: float) -> tuple[float, str]:
    """The depth that the trade gives it, and why."""
    structure = frame.structure
    held = structure.stands.held if structure else ""
    ends_held = frame.word("ends.how") in {"braced", "anchored", "stayed"}
    if held in {"elsewhere", "braces itself"}:
        return HELD_M, "held at the head, or in company, as well"
    an_end = key == "end_posts" or frame.figure("bays.count") == 1
    if frame.word(f"{key}.set") == "concrete" or (an_end and ends_held):
        return HELD_M, "braced or in concrete"
    if frame.frame.stays_years is not None and frame.frame.stays_years <= FEW_YEARS:
        return FEW_YEARS_M, SOME_YEARS
    if "steel" in frame.word(f"{key}.wood"):
        return STEEL_M, "steel stays as it is driven"
    up = frame.figure(f"{key}.up") or 0.0
    if up + down > TALL_M:
        if frame.frame.facts.keys() & {"cable", "tie", "top rail"} and ends_held:
            return TALL_TIED_M, "tall, but tied along the tops and anchored"
        return TALL_SHARE * (
            up + down
        ) + ALONE_M, "a tall pole alone: a tenth of it and 60 cm (2 ft)"
    least = structure.stands.least_down if structure else None
    own = least.usual if least else 0.0
    quarter = SHARE * (down + _top(frame, up))
    if quarter > max(ALONE_M, own) + GRACE_M:
        return quarter, QUARTER
    return max(
        ALONE_M, own
    ), OF_ITS_KIND if own > ALONE_M + GRACE_M else "what posts that stay for years are given"


def _top(frame: WorkedFrame, up: float) -> float:
    """The height of the top wire, rail or leaf: idle post above that does not count."""
    leafy = frame.worked.standing.leafy_to_m if frame.worked else up
    tops = [frame.figure("top_wire"), frame.figure("top_rail"), leafy]
    return min((top for top in tops if top is not None), default=up)


def _level(frame: WorkedFrame, down: float, wanted: float, because: str) -> str:
    """silent, note or warn."""
    if down >= wanted - GRACE_M:
        return "silent"
    if down >= wanted * (1 - NEARLY) - GRACE_M / 2 or frame.stands:
        return "note"  # and what stands already has shown what it does
    short_of_the_quarter = because == QUARTER and down >= ALONE_M - GRACE_M
    held_by_clay = frame.soil in STIFF_SOILS and down >= FEW_YEARS_M - GRACE_M
    push = frame.push_in(frame.place)
    in_hand = push is not None and push.ratio.middle <= IN_HAND
    lenient = short_of_the_quarter or (held_by_clay and because != OF_ITS_KIND)
    return "note" if in_hand and lenient else "warn"


def _ways_out(frame: WorkedFrame, wanted: float) -> Iterable[Edit]:
    """Longer posts, or the same posts deeper where nothing hangs on their height."""
    shown = Shown(frame.garden.imperial)
    step = 0.0762 if shown.imperial else 0.05
    depth = -(-(wanted - GRACE_M) // step) * step
    yield from posts.deeper(frame, depth)
    up = frame.figure("posts.up")
    wired = frame.structure is not None and "wires" in frame.structure.facts
    if up is not None and not wired:
        yield from posts.sunk(frame, depth, least_up_m=0.8 * up)


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    wanted, down = shown.length(facts.wanted_m), shown.length(facts.down_m)
    years = "some years" if facts.because == SOME_YEARS else "years"
    note = facts.level == "note"
    says = (
        f"{facts.frame}: {facts.posts} that stay for {years} want about {wanted} in the ground; "
        f"these stand {down} deep. Practice differs; printed rules run from {shown.length(0.3)} to "
        "a third of the post."
    )
    return Words(
        says=says,
        if_ignored="Expect to ram some firm again each spring."
        if note
        else "Frost lifts them and rot thins them, and within a few winters they lean.",
        told=f"{facts.posts} {down} down.",
        sum=f"{wanted}: {facts.because}. Common practice.",
    )


RULE = Rule(
    name="too-shallow-permanent",
    summary="posts that stay for years are less deep than the trade sets them",
    looks_at="frame",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
)
