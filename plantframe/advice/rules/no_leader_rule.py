"""no-leader-rule: a plant that makes ever more stems, and nothing said of how many are kept."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.climbers import is_planned, opening, word
from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

LEADING = r"\b(?:side[- ]?shoots?|leaders?|pinch\w*|prun\w+|train\w*)\b"


@frozen
class Facts:
    """The plant, how it is led, and how often that is seen to.

    pinched   its side shoots are stopped beyond a fruit; else they are taken out
    """

    plant: str
    frame: str
    pinched: bool
    minutes: float


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """Plants that the trade keeps to a leader or two, without a word of it in the plan."""
    if not frame.holds or _is_cage(frame):
        return
    for planting in frame.plantings:
        entry, own = planting.entry, planting.planting
        if entry is None or not _wants_leading(entry):
            continue
        if own.leaders is not None or own.pinched or own.trained:
            continue
        if is_planned(season, frame, LEADING):
            continue
        pinched = entry.training is not None and entry.training.kind == "pinch"
        slots = {"pinched": "pinched"} if pinched else {"leaders": "one leader"}
        yield Finding(
            level="note",
            where=own.fact.where,
            block=frame.frame.name,
            subject=planting.name,
            facts=Facts(planting.name, frame.frame.name, pinched, 5.0 * (planting.row_m or 1.0)),
            by=planting.in_ground.day if planting.in_ground else frame.wanted_by,
            candidates=(rewrite(own.fact, slots),),
        )


def _is_cage(frame: WorkedFrame) -> bool:
    """A cage, a ring or a crossed frame round each plant, made for what is not led."""
    structure = frame.structure
    return (
        structure is not None
        and structure.stands.held != "alone"
        and all(one.by == "none" for one in structure.carries)
    )


def _wants_leading(entry: Plant) -> bool:
    """Pinched by custom, or kept to leaders and tied to what it leans on."""
    if entry.training is None:
        return False
    if entry.training.kind == "pinch":
        return word(entry.habit) == "climber"
    return entry.training.kind == "leaders" and word(entry.holds_on) == "tied in"


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    plant = f"{opening(facts.plant)} on {facts.frame}"
    minutes = round(facts.minutes / 5) * 5 or 5
    if facts.pinched:
        says = (
            f"{plant}: every leaf joint makes another full vine, and nothing is said of pinching. "
            f"One main vine, each side shoot pinched beyond its fruit, takes about {minutes} "
            "minutes a week."
        )
    else:
        says = (
            f"{plant}: every leaf joint makes another stem, and nothing is said of how many are "
            f"kept. One or two, the side shoots taken out, take about {minutes} minutes a week."
        )
    return Words(
        says=says,
        if_ignored="By late summer it is a thicket twice as heavy, with fruit nobody finds.",
        told=f"{plant}; no number of leaders, no pinching.",
        assumed="Weight and spacing are reckoned as if it were led as the trade leads it.",
        sum="How the trade leads this plant; five minutes a metre and week.",
    )


RULE = Rule(
    name="no-leader-rule",
    summary="nothing said of how many stems are kept of a plant that makes ever more",
    looks_at="frame",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
