"""too-heavy: more hangs here than the bar, panel or net carries."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import other_crop, set_fact, together
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.mechanics.ranges import Range
from plantframe.season.loads import LIKELY, TIMES, Load, grade
from plantframe.season.units import Shown, times

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season


OTHERWISE = "A lighter plant here, or a stouter frame for this one: `plantframe pair` lists both."


@frozen
class Facts:
    """What hangs, on what, and how the two compare."""

    plant: str
    part: str
    load: Load
    listed: bool
    bay_m: float  # from post to post, as a gardener names the bar


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Middle of the wet weight over middle of what the part carries."""
    load, heaviest = frame.load, frame.heaviest
    if load is None or heaviest is None:
        return
    ratio = load.ratio
    level = grade(ratio.middle)
    if level == "silent":
        return
    listed = level == "warn" and _listed(frame)
    fact = frame.frame.fact(load.part) or heaviest.planting.fact
    yield Finding(
        level="note" if listed else level,
        where=fact.where,
        block=frame.frame.name,
        subject=load.part,
        facts=Facts(
            heaviest.name, load.part, load, listed, frame.figure("bays.length") or load.span_m
        ),
        ratio=ratio,
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, load),
        ways=() if _has_edits(frame, load) else (OTHERWISE,),
    )


def _has_edits(frame: WorkedFrame, load: Load) -> bool:
    """Lines of the plan may cure it: a bar's bays, or another crop of the year."""
    return load.part == "bar" or _is_food(frame)


def _listed(frame: WorkedFrame) -> bool:
    """The trade grows just this on just such a bay or face: said, not warned of."""
    plant = frame.heaviest.planting.plant if frame.heaviest else None
    structure, load = frame.structure, frame.load
    if structure is None or plant is None or load is None:
        return False
    suited = next((one for one in structure.suits if one.plant == plant), None)
    if suited is None:
        return False
    if load.stick is None:
        return suited.bay is None  # a face with no bar to it: there is one size of it
    bay = frame.figure("bays.length")
    if suited.bay is None or bay is None or "bar.width" in frame.said:
        return False
    return bay <= (suited.bay.high or 0) + 0.02


def _ways_out(frame: WorkedFrame, load: Load) -> Iterable[Edit]:
    """A post in the middle of each bay, a stouter bar, a lighter crop."""
    shown = Shown(frame.garden.imperial)
    bays, length = frame.figure("bays.count"), frame.figure("bays.length")
    if load.part == "bar" and bays and length:
        for parts in (2, 3):
            half = length / parts
            if half >= 0.75:
                line = f"bays {bays * parts:.0f} of {shown.typed(half)}"
                says = "a post in the middle of each bay" if parts == 2 else "two posts more a bay"
                yield set_fact(frame.frame, "bays", line, f"{line} ({says})")
        # on edge, with a pin long enough to hold below it
        stout, pins = ("2x4", "40d") if frame.garden.imperial else ("45x70 mm", "125 mm")
        bar = f"bar {stout}, on edge"
        yield together(
            f"{bar}, with pins {pins}",
            set_fact(frame.frame, "bar", bar),
            set_fact(frame.frame, "pins", f"pins {pins}"),
        )
    for lighter in ("cucumber", "pole bean", "tall pea"):
        heaviest = frame.heaviest
        if heaviest is not None and heaviest.planting.plant != lighter and _is_food(frame):
            yield other_crop(heaviest.planting, lighter)


def _is_food(frame: WorkedFrame) -> bool:
    entry = frame.heaviest.entry if frame.heaviest else None
    return (
        entry is not None
        and entry.grown_for == "food"
        and entry.life is not None
        and (entry.life.value == "annual")
    )


def how_much(ratio: Range) -> str:
    """The comparison in words."""
    if ratio.middle <= LIKELY:
        return "about as much as it carries: tight"
    if ratio.middle <= TIMES:
        return "likely too heavy"
    return (
        f"about {times(ratio.middle)} too much" if ratio.middle >= 2.15 else "about twice too much"
    )


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    load = facts.load
    asked, carried = (Range(*[one.middle] * 3) for one in (load.asked, load.carried))
    span = f"the {shown.length(facts.bay_m)} {facts.part}" if load.span_m else f"the {facts.part}"
    says = (
        f"{facts.plant.capitalize()}, wet: {shown.hanging(load.asked)} on {span}, which carries "
        f"{shown.hanging_bare(load.carried)}. That is {how_much(load.ratio)}."
    )
    between = f", pin to pin {shown.length(load.span_m)}" if load.span_m else ""
    ignored = "It bows by late summer and the net drags." if load.stick else "It sags and tears."
    return Words(
        says=says,
        if_ignored="In a wet year, or with more fruit than usual, it bows."
        if facts.listed or load.ratio.middle <= LIKELY
        else ignored,
        told=f"{facts.plant} on {span}{between}.",
        assumed=(
            "The whole row after rain, at its heaviest; ordinary softwood with knots, bent at 7 to "
            "10 MPa, bowing no more than a sixtieth of its span."
        ),
        sum=(
            f"{shown.hanging(asked)} over {shown.hanging_bare(carried)} is "
            f"{load.ratio.middle:.2g} (from {load.ratio.low:.2g} to {load.ratio.high:.2g}). "
            "Silent to 0.85, a note to 1.1."
        ),
    )


RULE = Rule(
    name="too-heavy",
    summary="more hangs on a bar, net or panel than it carries",
    looks_at="frame",
    levels=("note", "warn"),
    basis="estimate",
    check=check,
    words=words,
)
