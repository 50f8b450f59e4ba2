"""net-size: the net does not reach the top of its frame, or its end."""

from __future__ import annotations

import math
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.language.edits import Edit
from plantframe.language.values import Size
from plantframe.season.units import FOOT_M, Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

SHORT_M, A_LITTLE_M, HAIR_M = 0.25, 0.10, 0.005
NEAR_M = 0.05
DRAWS_IN = 0.05  # a net pulled taut is a twentieth to a tenth shorter (common practice, no source)


@frozen
class Facts:
    """The net and the frame it hangs on: heights and lengths in m. `long_m` None where unsaid."""

    frame: str
    high_m: float
    start_m: float
    long_m: float | None
    widths: float
    top_m: float
    row_m: float

    @property
    def low_by_m(self) -> float:
        """How far its top is below the frame's; 0 where that says nothing."""
        low = self.top_m - self.start_m - self.high_m
        if self.widths > 1 and self.top_m - self.start_m - self.widths * self.high_m <= A_LITTLE_M:
            return 0.0  # the size of one width, of several tied together
        return low if low > A_LITTLE_M + HAIR_M else 0.0

    @property
    def short_by_m(self) -> float:
        """How far it ends before the row does; 0 where that says nothing."""
        short = self.row_m - self.long_m if self.long_m is not None else 0.0
        return short if short > NEAR_M else 0.0

    @property
    def level(self) -> str:
        """silent, note or warn."""
        if self.short_by_m or self.low_by_m > SHORT_M + HAIR_M:
            return "warn"
        return "note" if self.low_by_m else "silent"

    @property
    def fits_turned(self) -> bool:
        """It fits with its length typed before its height."""
        if self.long_m is None:
            return False
        return self.long_m + self.start_m >= self.top_m - A_LITTLE_M and self.high_m >= self.row_m


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Where the net ends against where the frame does."""
    facts = _facts(frame)
    if facts is None or facts.level == "silent" or facts.fits_turned:
        return
    fact = frame.frame.fact("net")
    yield Finding(
        level=facts.level,
        where=fact.where if fact else frame.frame.block.where,
        block=frame.frame.name,
        facts=facts,
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, facts),
    )


def _facts(frame: WorkedFrame) -> Facts | None:
    """A net of a written size that hangs upright from a height of its own."""
    net = frame.structure.facts.get("net") if frame.structure else None
    if net is None or "start" not in net.slots or not frame.is_said("net.high"):
        return None
    high, top, row = frame.figure("net.high"), frame.figure("posts.up"), frame.row_m
    if high is None or top is None or row is None:
        return None
    return Facts(
        frame.frame.name,
        high,
        frame.figure("net.start") or 0.0,
        frame.figure("net.long") if frame.is_said("net.long") else None,
        frame.figure("net.widths") or 1.0,
        top,
        row,
    )


def _ways_out(frame: WorkedFrame, facts: Facts) -> Iterable[Edit]:
    """Two widths tied edge to edge, or a larger net."""
    fact = frame.frame.fact("net")
    if fact is None:
        return
    shown = Shown(frame.garden.imperial)
    low, short = facts.low_by_m, facts.short_by_m
    high = shown.typed(facts.top_m - facts.start_m)
    size = fact.get("size")
    if isinstance(size, Size) and len(size.sides) == 2:
        up = high if low else size.sides[0].text
        along = _along(facts.row_m, shown) if short else size.sides[1].text
        slots = {"size": f"{up} x {along}"}
    elif low and fact.slot("high") is not None:
        slots = {"high": high}
    else:
        return
    if low and fact.slot("widths") is None and facts.top_m - facts.start_m <= 2 * facts.high_m:
        tied = rewrite(fact, {**slots, "widths": "two widths tied"})
        yield Edit(f"{tied.says} (edge to edge, one mesh overlapped)", tied.changes)
    whole = rewrite(fact, slots)
    yield Edit(f"{whole.says} (a {'taller' if low else 'longer'} net)", whole.changes)


def _along(row_m: float, shown: Shown) -> str:
    """The row and what the net draws in, to the next foot or tenth of a metre."""
    step = FOOT_M if shown.imperial else 0.1
    return shown.typed(math.ceil(row_m * (1 + DRAWS_IN) / step - 0.05) * step)


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    parts = []
    if facts.low_by_m:
        start = f" from {shown.length(facts.start_m)} up" if facts.start_m > 0 else ""
        parts.append(
            f"a net {shown.typed(facts.high_m)} high{start} on a frame of "
            f"{shown.typed(facts.top_m)} ends {shown.length(facts.low_by_m)} below the top"
        )
    if facts.short_by_m and facts.long_m is not None:
        parts.append(
            f"a net {shown.typed(facts.long_m)} long on {shown.typed(facts.row_m)} of row ends "
            f"{shown.length(facts.short_by_m)} short"
        )
    return Words(
        says=f"{facts.frame}: {'; '.join(parts)}.",
        if_ignored=_left_so(facts),
        told=f"A net {shown.typed(facts.high_m)} high; the frame {shown.typed(facts.top_m)}.",
        assumed="Height is typed first, length second.",
        sum="A net draws in a twentieth to a tenth when it is pulled taut: common practice.",
    )


def _left_so(facts: Facts) -> str:
    if facts.level != "warn":
        return "The last shoots hang over; tuck them in, or tie the net a little lower."
    if facts.low_by_m:
        return "The vines reach the top of it and hang out over nothing."
    return "The end of the row has nothing to climb."


RULE = Rule(
    name="net-size",
    summary="the net ends well below the top of its frame, or before its end",
    looks_at="frame",
    levels=("note", "warn"),
    basis="sum",
    check=check,
    words=words,
)
