"""glass: ordinary panes at the height of a child's knee, or large ones for one pair of hands."""

from __future__ import annotations

import re
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite, slot_text
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.lights import has_lights, is_ordinary_glass
from plantframe.advice.young import played_near, small_children
from plantframe.frozen import frozen
from plantframe.language.values import Number
from plantframe.mechanics.glass import pane_mass_kg

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.language.reader import Fact
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

LARGE_M2 = 0.5  # a pane that one pair of hands should not carry (common practice, no source)
SASH_M = 0.85  # lights as wide as this are glazed with several small panes
KNEE_M = 0.75
COVERED = re.compile(r"\b(fenced|covered|guard(ed)?|mesh over|boarded)\b", re.IGNORECASE)


@frozen
class Facts:
    """The panes, m2 and kg, and who is near.

    near   who or what is near: "children of 3 and 6", "the ball lawn"; "" where it is the lifting
    said   the plan says itself that it is glass
    """

    frame: str
    count: int
    pane_m2: float
    pane_kg: float
    near: str
    said: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Glass low down where children play; else large panes that one person is to handle."""
    fact = frame.frame.fact("lights")
    if not has_lights(frame) or not is_ordinary_glass(frame.word("lights.glazing")):
        return
    said = frame.is_said("lights.glazing")
    count, pane = frame.figure("lights.count"), _pane_m2(frame)
    if not count or pane <= 0:
        return
    near = _near(frame)
    alone = said and not frame.stands and _handled_alone(frame) and _one_pane(frame)
    if not near and not (alone and pane > LARGE_M2):
        return
    weighs = pane_mass_kg(pane, frame.figure("lights.thick") or 0.003)
    yield Finding(
        level="warn" if near and said else "note",
        where=fact.where if fact else frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, round(count), pane, weighs, near, said),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame),
        ways=("Gloves and two people for each pane; panes stand on edge, never flat.",),
    )


def _near(frame: WorkedFrame) -> str:
    """Who or what plays there, where nothing covers the glass."""
    if (frame.height_m or 0.0) > KNEE_M or _covered(frame):
        return ""
    return played_near(frame.frame) or small_children(frame.garden)


def _covered(frame: WorkedFrame) -> bool:
    return any(COVERED.search(f"{one.text} {one.remark}") for one in frame.frame.block.facts)


def _pane_m2(frame: WorkedFrame) -> float:
    return (frame.figure("pane_wide") or frame.figure("lights.wide") or 0.0) * (
        frame.figure("pane_long") or frame.figure("lights.long") or 0.0
    )


def _one_pane(frame: WorkedFrame) -> bool:
    return (frame.figure("lights.wide") or 0.0) < SASH_M


def _handled_alone(frame: WorkedFrame) -> bool:
    """The plan says that one person carries it, or knows of one person only."""
    fact = frame.frame.fact("carried by")
    if fact is None:
        return len(frame.garden.people) == 1
    count = fact.get("count")
    return count.value == 1 if isinstance(count, Number) else len(fact.all("person")) == 1


def _ways_out(frame: WorkedFrame) -> Iterable[Edit]:
    """Plastic sheet, or glass that does not break into blades."""
    fact = frame.frame.fact("lights")
    if fact is None:
        return
    if slot_text(fact, "thick"):  # the sheet is thicker than the pane, and so is its slot
        yield rewrite(fact, {"glazing": "toughened glass"})
        yield rewrite(fact, {"thick": "10 mm", "glazing": "twin-wall", **_slot(fact)})
    else:
        yield rewrite(fact, {"glazing": "twin-wall"})
        yield rewrite(fact, {"glazing": "toughened glass"})


def _slot(fact: Fact) -> dict[str, str]:
    return {"slot": "11 mm"} if fact.slot("slot") else {}


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    panes = f"{facts.count} panes" if facts.count > 1 else "a pane"
    size = f"{shown.area(facts.pane_m2)} and about {shown.weight(facts.pane_kg)}"
    each = f"{size} each" if facts.count > 1 else size
    if facts.near:
        says = f"{facts.frame}: {panes} of ordinary glass below the knee, and {facts.near}."
        ignored = "A ball or a stumble goes through; old glass breaks into blades."
    else:
        says = f"{facts.frame}: {panes} of {each}, for one pair of hands."
        ignored = "A large pane twists in the wind or the hands, and cuts as it breaks."
    return Words(
        says=says,
        if_ignored=ignored,
        told=f"{panes}, {each}.",
        assumed="" if facts.said else "Glass, since the plan does not say.",
        sum="Pane by pane, 2.5 kg a square metre for each millimetre of thickness.",
    )


RULE = Rule(
    name="glass",
    summary="ordinary glass below the knee where children play, or large panes for one person",
    looks_at="frame",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
)
