"""prune-clashes-with-fold: a frame is to be folded or painted while its plant is in bud or leaf."""

from __future__ import annotations

import re
from datetime import date
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import is_yearly, opening, word
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import moved_to, task_day
from plantframe.advice.seasons import before, months_of, turned, within
from plantframe.frozen import frozen
from plantframe.season.units import MONTHS, day

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.plan.things import Task
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

FOLD = re.compile(r"\b(fold|paint|repaint|stain|coat|unhook|let down|lower)\w*", re.IGNORECASE)
BUD_MONTHS = 2  # before it flowers
LATE_CUT = (2, 3)  # what flowers on new wood is cut then, and folds straight after
RESTING = (11, 4)  # its stems may be cut at any time of these


@frozen
class Facts:
    """The frame and its plant; the task and its day; the months in which it may be cut."""

    frame: str
    plant: str
    task: str
    when: date
    cut: int
    new_wood: bool


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """Days of folding a hinged frame against the months in which its plant can be cut."""
    if frame.structure is None or "hinges" not in frame.structure.facts or not frame.plantings:
        return
    if frame.frame.word != "frame" or frame.structure.stands.held == "ground":
        return
    southern = frame.garden.southern
    for task in season.tasks_about(frame.frame.name):
        when = task_day(task)
        if when is None or not FOLD.search(task.what) or not _names_it(task, frame):
            continue
        for planting in frame.plantings:
            if planting.entry is None or is_yearly(planting.entry):
                continue
            clash = _clashes(planting.entry, when.month, southern=southern)
            if clash is None:
                continue
            yield Finding(
                level="warn",
                where=task.block.where,
                block=frame.frame.name,
                subject=planting.name,
                facts=Facts(
                    frame.frame.name,
                    planting.name,
                    task.what,
                    when,
                    clash,
                    word(planting.entry.flowers_on) == "new wood",
                ),
                by=when,
                candidates=partial(_ways_out, task, when, clash),
            )
            break


def _names_it(task: Task, frame: WorkedFrame) -> bool:
    """The task is for this frame and no other."""
    place = task.spot.thing if task.spot else ""
    return place == frame.frame.name or frame.frame.name.lower() in task.block.head.text.lower()


def _clashes(entry: Plant, month: int, *, southern: bool) -> int | None:
    """The month in which to do it instead, None where the day does no harm."""
    flowers = months_of(word(entry.other.get("flowers in")), southern=southern)
    if word(entry.flowers_on) == "new wood":
        first, last = (turned(one) if southern else one for one in RESTING)
        if within(month, first, last):
            return None
        return turned(LATE_CUT[1]) if southern else LATE_CUT[1]
    if flowers is None or not within(month, before(flowers[0], BUD_MONTHS), flowers[1]):
        return None
    return flowers[1] % 12 + 1


def _ways_out(task: Task, when: date, month: int) -> Iterable[Edit]:
    """The same task straight after the cut."""
    yield from moved_to(task, date(when.year, month, 15))


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    month = MONTHS[facts.cut - 1]
    how = "has grown into it again" if facts.new_wood else "is in bud or in flower"
    after = "straight after its hard cut" if facts.new_wood else "when its flowers are over"
    return Words(
        says=(
            f"{facts.frame}: `{facts.task}` falls on {day(facts.when)}, when {facts.plant} {how} "
            f"and cannot be cut. {month}, {after}, suits both."
        ),
        if_ignored="The stems snap as it folds, and the flowers of that year go with them.",
        told=f"`{facts.task}`, {day(facts.when)}.",
        sum=f"Common practice. {opening(facts.plant)} is cut in {month}.",
    )


RULE = Rule(
    name="prune-clashes-with-fold",
    summary="a frame is to be folded or painted while its plant is in bud or leaf",
    looks_at="frame",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
