"""hole-near-end: a pin's hole is so near the end of its bar, or so wide, that the bar splits."""

from __future__ import annotations

import math
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.mechanics.fixings import NAILS
from plantframe.season.units import INCH_M, Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

# Common practice, no source: from the end four thicknesses of the nail; a hole a millimetre wider
# than the nail, and no wider than a third of the stick.
END_TIMES = 4.0
CLEAR_M = 0.001
MOST_SHARE = 1 / 3
HAIR_M = 0.001


@frozen
class Facts:
    """A hole, m: from the end (None where the plan does not say), the bar's width, the nail."""

    frame: str
    nail: str
    nail_m: float
    end_m: float | None
    bar_m: float

    @property
    def near(self) -> bool:
        """Too near the end."""
        return self.end_m is not None and self.end_m < self.nail_m * END_TIMES - HAIR_M

    @property
    def hole_m(self) -> float:
        """How wide the hole is for a loose pin."""
        return self.nail_m + CLEAR_M

    @property
    def wide(self) -> bool:
        """Too wide for the bar."""
        return self.hole_m > self.bar_m * MOST_SHARE + HAIR_M


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The hole for a pin, where the plan gives pin and bar."""
    fact = frame.frame.fact("pins")
    nail = NAILS.get(frame.word("pins.nail"))
    if fact is None or nail is None or frame.stands:
        return
    bar = frame.figure("bar_wide") if frame.is_said("bar.width") else None
    end = frame.figure("pins.end")
    facts = Facts(frame.frame.name, frame.word("pins.nail"), nail.diameter_m, end, bar or 1.0)
    if not facts.near and not facts.wide:
        return
    yield Finding(
        level="note",
        where=fact.where,
        block=frame.frame.name,
        facts=facts,
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, facts),
        ways=(
            "Bore before nailing, and blunt the nail: its point then crushes and does not wedge.",
        ),
    )


def _ways_out(frame: WorkedFrame, facts: Facts) -> Iterable[Edit]:
    """The hole further in, or a stouter bar."""
    fact, bar = frame.frame.fact("pins"), frame.frame.fact("bar")
    imperial = frame.garden.imperial
    if facts.near and not facts.wide and fact is not None:
        yield rewrite(fact, {"end": further_in(facts, Shown(imperial))})
    if facts.wide and not facts.near and bar is not None and bar.slot("section"):
        yield rewrite(bar, {"section": "2x2" if imperial else "38x38 mm"})


def further_in(facts: Facts, shown: Shown) -> str:
    """As far from the end as is usual: `¾ in`, `20 mm`."""
    least = facts.nail_m * END_TIMES
    if shown.imperial:
        return shown.bench(math.ceil(least / INCH_M * 8 - 0.2) / 8 * INCH_M)
    return f"{math.ceil(least * 200 - 0.1) * 5} mm"


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    parts = []
    imperial = f"{facts.nail_m / INCH_M:.3f} in"
    thick = imperial if shown.imperial else f"{facts.nail_m * 1000:.1f} mm"
    if facts.near and facts.end_m is not None:
        parts.append(
            f"the hole for a {facts.nail} pin is {shown.bench(facts.end_m)} from the end, and "
            f"{further_in(facts, shown)} is the least"
        )
    if facts.wide:
        parts.append(
            f"the hole for a {facts.nail} pin, about {facts.hole_m * 1000:.0f} mm, is more than a "
            f"third of a bar {shown.bench(facts.bar_m)} wide"
        )
    return Words(
        says=f"{facts.frame}: {', and '.join(parts)}.",
        if_ignored="The end splits the first time the row leans.",
        told=f"Pins {facts.nail}.",
        assumed="A hole a millimetre wider than the nail, so that the pin lifts out.",
        sum=f"Four thicknesses of a nail {thick} thick: common practice.",
    )


RULE = Rule(
    name="hole-near-end",
    summary="the hole for a pin is so near the end of its bar, or so wide, that the bar splits",
    looks_at="frame",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
