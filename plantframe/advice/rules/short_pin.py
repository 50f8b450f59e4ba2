"""short-pin: too little of the pin is left to hold in the post."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import set_fact, swap
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.mechanics.fixings import NAILS, bite_m
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

LEAST_M = 0.038  # bite of a loose pin, 1½ in (common practice, no source)
HAIR_M = 0.0005
LONGER = ("30d", "40d", "50d", "60d")
LONGER_MM = (125, 150, 180, 200)  # as sold by the millimetre (common practice, no source)


@frozen
class Facts:
    """A pin, what it goes through, and what is left of it: m.

    pin   its size by name where the plan gives it so, "usual" where the plan is silent
    """

    frame: str
    pin: str
    length_m: float
    through_m: float
    bars: int


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The pin's length less the bars it goes through."""
    through = frame.figure("under_pin")
    length, name = _pin(frame)
    if not through or not length or not frame.figure("pins.count"):
        return
    if bite_m(length, through) >= LEAST_M - HAIR_M:
        return
    tall = frame.figure("bar_tall") or through
    facts = Facts(frame.frame.name, name, length, through, round(through / tall))
    fact = frame.frame.fact("pins") or frame.frame.fact("bar")
    yield Finding(
        level="warn",
        where=fact.where if fact else frame.frame.block.where,
        block=frame.frame.name,
        facts=facts,
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, facts),
    )


def _pin(frame: WorkedFrame) -> tuple[float | None, str]:
    """The length of the pin, as typed or by its size, and its name."""
    typed = frame.said.get("pins")
    if isinstance(typed, float):
        return typed, ""
    size = frame.word("pins.nail")
    nail = NAILS.get(size)
    if nail is None:
        return None, ""
    return nail.length_m, size if frame.is_said("pins.nail") else "usual"


def _ways_out(frame: WorkedFrame, facts: Facts) -> Iterable[Edit]:
    """Bars halved together, or a longer pin."""
    bar, shown = frame.frame.fact("bar"), Shown(frame.garden.imperial)
    if facts.bars > 1 and bar is not None and (joint := bar.slot("joint")) is not None:
        yield swap(bar, joint.text, "halved")
    least = facts.through_m + LEAST_M - HAIR_M
    if shown.imperial:
        size = next((size for size in LONGER if NAILS[size].length_m >= least), None)
        if size is not None:
            line = f"pins {size}"
            yield set_fact(
                frame.frame, "pins", line, f"{line} ({shown.bench(NAILS[size].length_m)})"
            )
        return
    length = next((length for length in LONGER_MM if length / 1000 >= least), None)
    if length is not None:
        yield set_fact(frame.frame, "pins", f"pins {length} mm")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    bite = bite_m(facts.length_m, facts.through_m)
    bars = "two bars, one on the other, take" if facts.bars > 1 else "the bar takes"
    pin = f"a {shown.bench(facts.length_m)} pin"
    if facts.pin == "usual":
        pin = f"the usual {shown.bench(facts.length_m)} pin"
    elif facts.pin:
        pin += f" ({facts.pin})"
    left = f"leaves {shown.bench(bite)}" if bite > HAIR_M else "leaves nothing"
    return Words(
        says=(
            f"{facts.frame}: {bars} {shown.bench(facts.through_m)} of {pin}, which {left} in the "
            f"post; {shown.bench(LEAST_M)} is the least."
        ),
        if_ignored="It works loose as the row moves in the wind, and the bar drops.",
        told=f"{facts.frame}: {pin} through {shown.bench(facts.through_m)}.",
        sum=(
            f"{shown.bench(facts.length_m)} less {shown.bench(facts.through_m)} is "
            f"{shown.bench(bite)}. The least is common practice."
        ),
    )


RULE = Rule(
    name="short-pin",
    summary="less than 38 mm (1½ in) of a pin is left to hold in the post",
    looks_at="frame",
    levels=("warn",),
    basis="sum",
    check=check,
    words=words,
    source="nail lengths: ASTM F1667",
)
