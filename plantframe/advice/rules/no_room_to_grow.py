"""no-room-to-grow: a plastic sheet is cut so long that it buckles in the sun."""

from __future__ import annotations

import math
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.lights import is_plastic
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

# What the maker's kind of sheet grows, for each metre and degree, and from frost to full sun
# (common practice, no source).
GROWS_M_PER_M_C = 0.000065
WARMS_C = 40.0
LEAST_SHARE = 0.0025  # of its length
LEFT_SHARE = 0.003
HAIR_M = 0.0001


@frozen
class Facts:
    """A sheet, how much it grows and the room it has, m."""

    frame: str
    sheet_m: float
    room_m: float

    @property
    def grows_m(self) -> float:
        """How much longer it is in the sun than in frost."""
        return self.sheet_m * GROWS_M_PER_M_C * WARMS_C


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The room left at the end of a plastic sheet, where the plan says how much."""
    fact = frame.frame.fact("lights")
    room, sheet = frame.figure("lights.play"), frame.figure("lights.long")
    if fact is None or room is None or not sheet or not is_plastic(frame):
        return
    if room >= sheet * LEAST_SHARE - HAIR_M:
        return
    yield Finding(
        level="warn",
        where=fact.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, sheet, room),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, sheet),
        ways=("Leave the room at the top end, and the stops loose enough for it to slide.",),
    )


def _ways_out(frame: WorkedFrame, sheet: float) -> Iterable[Edit]:
    """A sheet cut shorter."""
    fact = frame.frame.fact("lights")
    if fact is not None:
        yield rewrite(fact, {"play": f"{math.ceil(sheet * LEFT_SHARE * 1000 - 0.2)} mm"})


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    room, grows = _millimetres(facts.room_m), _millimetres(facts.grows_m)
    sheet = shown.length(facts.sheet_m)
    return Words(
        says=(
            f"{facts.frame}: a plastic sheet {sheet} long grows about {grows} between frost and "
            f"full sun, and has {room} to grow."
        ),
        if_ignored="Tight at both ends, it bows up out of its slot on the first hot day.",
        told=f"A plastic sheet in a light of {sheet}, {room} to grow.",
        assumed="That it warms by 40 °C (72 °F) from frost to full sun.",
        sum=f"0.065 mm a metre for each °C, over {sheet}: about {grows}.",
    )


def _millimetres(metres: float) -> str:
    return f"{metres * 1000:.0f} mm" if metres > HAIR_M else "nothing"


RULE = Rule(
    name="no-room-to-grow",
    summary="a plastic sheet has no room to grow longer in the sun",
    looks_at="frame",
    levels=("warn",),
    basis="sum",
    check=check,
    words=words,
)
