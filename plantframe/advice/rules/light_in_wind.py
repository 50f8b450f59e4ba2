"""light-in-wind: lights lie loose where the wind is strong enough to lift them."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.lights import has_lights, is_plastic
from plantframe.frozen import frozen
from plantframe.mechanics.glass import pane_mass_kg
from plantframe.mechanics.units import GRAVITY_M_PER_S2
from plantframe.mechanics.wind import velocity_pressure_pa

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

GUST_M_PER_S = 15.0  # low down in a windy place, several times a winter: an estimate
WOOD_KG_PER_M3 = 480.0  # dry softwood (common practice, no source)
SHEET_KG_PER_M2 = 1.7  # twin-wall, 10 mm (common practice, no source)
HELD = frozenset({"strapped", "hooked down", "tied down", "weighted"})
HOLD_FACTS = ("hooks", "hinges", "tie", "pegs", "stays")


@frozen
class Facts:
    """A light's weight, and what a gust lifts with, kg."""

    frame: str
    weighs_kg: float
    lifted_kg: float


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The weight of a light against the lift of a gust, in a windy place."""
    fact = frame.frame.fact("lights")
    if fact is None or not has_lights(frame) or frame.place != "windy" or _held(frame):
        return
    weighs, area = _light_kg(frame), _light_m2(frame)
    lifted = velocity_pressure_pa(GUST_M_PER_S) * area / GRAVITY_M_PER_S2
    if not weighs or lifted <= weighs:
        return
    yield Finding(
        level="note",
        where=fact.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, weighs, lifted),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame),
        ways=("A strap or a hook to each light; a brick does for a night.",),
    )


def _held(frame: WorkedFrame) -> bool:
    """The plan says what holds the lights down."""
    return frame.word("lights.held") in HELD or any(
        frame.frame.fact(word) is not None for word in HOLD_FACTS
    )


def _light_m2(frame: WorkedFrame) -> float:
    return (frame.figure("lights.wide") or 0.0) * (frame.figure("lights.long") or 0.0)


def _light_kg(frame: WorkedFrame) -> float:
    """Weight of one light, its sticks and its sheet; 0 where it cannot be told."""
    worked, count = frame.worked, frame.figure("lights.count")
    if worked is None or not count:
        return 0.0
    sticks = sum(
        pieces.count * (pieces.width_m or 0.0) * (pieces.depth_m or 0.0) * (pieces.length_m or 0.0)
        for name, pieces in worked.pieces.items()
        if name.startswith("light")
    )
    area, thick = _light_m2(frame), frame.figure("lights.thick") or 0.0
    sheet = area * SHEET_KG_PER_M2 if is_plastic(frame) else pane_mass_kg(area, thick)
    return sticks * WOOD_KG_PER_M3 / count + sheet


def _ways_out(frame: WorkedFrame) -> Iterable[Edit]:
    """A strap to each."""
    fact = frame.frame.fact("lights")
    if fact is not None:
        yield rewrite(fact, {"held": "strapped"})


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    gust = "35 miles" if shown.imperial else "55 km"
    lifts = f"{shown.weight(facts.lifted_kg)}"
    return Words(
        says=(
            f"{facts.frame}: a light weighs about {shown.weight(facts.weighs_kg)}, and a gust of "
            f"{gust} an hour can lift at it with about {lifts}. Nothing holds the lights down."
        ),
        if_ignored="They blow off on the night the crop needs them, and break on what they hit.",
        told="Lights that lie loose, in a windy place.",
        assumed="That the whole pressure of the gust gets under the light.",
        sum=f"{lifts} of lift over {shown.weight(facts.weighs_kg)} of light.",
    )


RULE = Rule(
    name="light-in-wind",
    summary="nothing holds the lights down where the wind can lift them",
    looks_at="frame",
    levels=("note",),
    basis="estimate",
    check=check,
    words=words,
)
