"""ends-unbraced: strained wires pull the end posts of a row over."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite, set_fact
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.mechanics import practice
from plantframe.mechanics.ground import SOILS, ground_moment_nm
from plantframe.mechanics.post import wood_moment_nm
from plantframe.mechanics.ranges import Range, load_ratio
from plantframe.mechanics.section import rectangle_modulus_m3, round_modulus_m3
from plantframe.season.loads import LIKELY, grade

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

SPREAD = 0.3  # either way: nobody measures the pull of a strainer


@frozen
class Facts:
    """The pull of the wires on an end post.

    told   the plan says that the ends are not braced; else it says nothing
    """

    frame: str
    wires: int
    pull_n: float
    height_m: float
    ratio: Range
    told: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Pull times height against the weaker of the end post's wood and its ground."""
    worked = frame.worked
    if worked is None or worked.carries is None or worked.carries.by != "wire":
        return
    if frame.structure is None or frame.structure.stands.held != "alone" or _is_held(frame):
        return
    heights = _heights_m(frame)
    hold = _hold_nm(frame, sum(heights) / len(heights)) if heights else None
    if hold is None:
        return
    if not worked.carries.strained or not worked.figure(worked.carries.strained):
        return  # what a hand pulls tight goes slack before a post goes over
    moment = practice.STRAINED_N * sum(heights)
    asked = Range(moment * (1 - SPREAD), moment, moment * (1 + SPREAD))
    ratio = load_ratio(asked, hold)
    level = grade(ratio.middle)
    if level == "silent":
        return
    fact = frame.frame.fact("wires")
    told = frame.is_said("ends.how")
    if not told and not frame.is_said("wires.strain"):
        level = "note"  # both the pull and the want of a brace are only taken so
    yield Finding(
        level=level,
        where=fact.where if fact else frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(
            frame.frame.name,
            len(heights),
            practice.STRAINED_N * len(heights),
            sum(heights) / len(heights),
            ratio,
            told,
        ),
        ratio=ratio,
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame),
        ways=("A raking brace inside each end post, or an anchor in the ground beyond it.",),
    )


def _is_held(frame: WorkedFrame) -> bool:
    """Its ends are braced, anchored or stayed along the row, or tied by a rail along the tops."""
    worked = frame.worked
    carries = worked.carries if worked else None
    if worked is None or carries is None or (carries.ends and worked.figure(carries.ends)):
        return True
    facts = frame.frame.facts
    stays = frame.word("stays.which") if "stays" in facts else ""
    along = any(part in stays for part in ("line", "ends", "both"))
    return "top rail" in facts or "brace" in facts or along


def _heights_m(frame: WorkedFrame) -> list[float]:
    count = frame.figure("wires.count") or 0.0
    top, lowest = (
        frame.figure("top_wire") or frame.figure("wires.top"),
        frame.figure("wires.lowest"),
    )
    if count < 1 or top is None:
        return [] if top is None or not frame.said.keys() & {"wires", "wires.strain"} else [top]
    if count < 2 or lowest is None:
        return [top]
    step = (top - lowest) / (count - 1)
    return [lowest + place * step for place in range(round(count))]


def _hold_nm(frame: WorkedFrame, height_m: float) -> Range | None:
    """What an end post stands, N·m: the weaker of wood and ground."""
    width = frame.figure("end_posts.width") or frame.figure("posts.width")
    depth = frame.figure("end_posts.depth") or frame.figure("posts.depth")
    down = frame.figure("end_posts.down") or frame.figure("posts.down")
    worked = frame.worked
    if width is None or depth is None or not down or worked is None:
        return None
    values = worked.facts.values
    is_round = bool(values.get("end_posts.round", values.get("posts.round")))
    if is_round:
        wood = wood_moment_nm(round_modulus_m3(width), practice.ROUND_STRENGTH_PA)
    else:
        small, large = sorted((width, depth))
        wood = wood_moment_nm(rectangle_modulus_m3(large, small), practice.SAWN_STRENGTH_PA)
    if frame.lasting:
        wood = wood.times(practice.YEARS_STRENGTH_FACTOR)
    soil = frame.soil if frame.soil in SOILS else "firm loam"
    ground = ground_moment_nm(soil, width, down, height_m)
    if ground.middle <= 0:
        return None
    return ground if ground.middle < wood.middle else wood


def _ways_out(frame: WorkedFrame) -> Iterable[Edit]:
    """Braces; or wires pulled by hand only."""
    facts = frame.structure.facts if frame.structure else {}
    if "ends" in facts:
        yield set_fact(frame.frame, "ends", "ends braced")
    elif "stays" in facts:
        yield set_fact(frame.frame, "stays", "stays 2, in line")
    wires = frame.frame.fact("wires")
    if wires is not None and wires.slot("strain") is not None:
        yield rewrite(wires, {"strain": "hand tight"})


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    pull = shown.weight(facts.pull_n / 9.81)
    count = "one wire" if facts.wires == 1 else f"{facts.wires} wires"
    pulls = "pulls" if facts.wires == 1 else "pull"
    said = "are not braced" if facts.told else "are not said to be braced"
    times_said = "about as much as" if facts.ratio.middle <= LIKELY else "more than"
    says = (
        f"{facts.frame}: {count}, strained, {pulls} on each end post like {pull} at "
        f"{shown.length(facts.height_m)}, {times_said} it stands. Its ends {said}."
    )
    return Words(
        says=says,
        if_ignored="The ends lean in within a month and every wire goes slack."
        if facts.ratio.middle > LIKELY
        else "The ends lean in, a little each year.",
        told=f"{facts.frame}: {count}, strained.",
        assumed="1000 N for a strained wire, a third of it more or less.",
        sum=(
            f"Pull times height over what wood and ground stand: {facts.ratio.middle:.2g} "
            f"(from {facts.ratio.low:.2g} to {facts.ratio.high:.2g}). "
            "Silent to 0.85, a note to 1.1."
        ),
    )


RULE = Rule(
    name="ends-unbraced",
    summary="strained wires pull end posts over that nothing braces",
    looks_at="frame",
    levels=("note", "warn"),
    basis="estimate",
    check=check,
    words=words,
)
