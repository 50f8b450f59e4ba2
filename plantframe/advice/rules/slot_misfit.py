"""slot-misfit: the slot in a light is too tight or too wide for its sheet."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

# Room a sheet wants in its slot: the least, what is usual, the most (common practice, no source).
LEAST_M, USUAL_M, MOST_M = 0.0005, 0.001, 0.003
HAIR_M = 0.0001


@frozen
class Facts:
    """A slot and the sheet that is to go in, m."""

    frame: str
    slot_m: float
    sheet_m: float

    @property
    def play_m(self) -> float:
        """Room between them, less than nothing where the sheet is the thicker."""
        return self.slot_m - self.sheet_m


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The slot against the sheet, where the plan gives both."""
    fact = frame.frame.fact("lights")
    slot, sheet = frame.figure("lights.slot"), frame.figure("lights.thick")
    if fact is None or not slot or not sheet or not frame.is_said("lights.thick"):
        return
    facts = Facts(frame.frame.name, slot, sheet)
    if LEAST_M - HAIR_M <= facts.play_m <= MOST_M + HAIR_M:
        return
    yield Finding(
        level="warn",
        where=fact.where,
        block=frame.frame.name,
        facts=facts,
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, sheet),
        ways=("A slot wider than the blade is cut in several runs, with the fence moved over.",),
    )


def _ways_out(frame: WorkedFrame, sheet: float) -> Iterable[Edit]:
    """A slot made to the sheet: sheets and saw cuts are sold and set in millimetres everywhere."""
    fact = frame.frame.fact("lights")
    if fact is not None:
        yield rewrite(fact, {"slot": f"{(sheet + USUAL_M) * 1000:.0f} mm"})


def millimetres(metres: float) -> str:
    """A thickness as sheets are sold: `10 mm`, `4.5 mm`."""
    return f"{metres * 1000:.1f}".removesuffix(".0") + " mm"


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    slot, sheet = millimetres(facts.slot_m), millimetres(facts.sheet_m)
    usual = millimetres(facts.sheet_m + USUAL_M)
    if facts.play_m < 0:
        says = f"{facts.frame}: a {sheet} sheet does not go into a {slot} slot; {usual} is usual."
        ignored = "You find it out with the lights half made."
    elif facts.play_m < LEAST_M:
        says = f"{facts.frame}: a {sheet} sheet just fills a {slot} slot; {usual} is usual."
        ignored = "Damp wood swells and grips it, and a pane cracks or a sheet bows."
    else:
        says = f"{facts.frame}: a {sheet} sheet lies loose in a {slot} slot; {usual} is usual."
        ignored = "It rattles in the wind, and rain runs in behind it."
    return Words(
        says=says,
        if_ignored=ignored,
        told=f"A {sheet} sheet and a {slot} slot.",
        sum=f"Half a millimetre to {millimetres(MOST_M)} of room: common practice.",
    )


RULE = Rule(
    name="slot-misfit",
    summary="the slot in a light is too tight or too wide for its sheet",
    looks_at="frame",
    levels=("warn",),
    basis="sum",
    check=check,
    words=words,
)
