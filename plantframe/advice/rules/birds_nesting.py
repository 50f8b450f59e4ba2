"""birds-nesting: a hedge or a dense climber is cut while birds nest in it."""

from __future__ import annotations

import re
from datetime import date
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening, word
from plantframe.advice.edits import swap
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import moved_to, task_day
from plantframe.advice.seasons import turned, within
from plantframe.frozen import frozen
from plantframe.season.regions import lies_in
from plantframe.season.units import MONTHS, day

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.plan.things import Garden, Task
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

NESTING = (3, 8)  # half a year later in the south
CUT = re.compile(
    r"\b(trim|clip|cut|prune|shear|lay|grub|take (down|out)|fell|saw)\w*\b", re.IGNORECASE
)
LOOKED = re.compile(r"\b(nests?|birds?)\b", re.IGNORECASE)
# Countries whose law guards a nest in use (from memory: the acts of 1918 and 1981, the
# directive of 2009 and what followed them; local law goes before this list).
LAW = ("European Union", "Great Britain", "United Kingdom", "United States", "Canada", "Ireland")


@frozen
class Facts:
    """What is cut, the task and its day, whether the law of the place guards nests."""

    thing: str
    task: str
    when: date
    law: bool
    months: tuple[int, int]


def check(season: Season, _season: Season) -> Iterable[Finding]:
    """Tasks that cut a hedge, or a climber thick enough to nest in, in the months of nesting."""
    garden = season.plan.garden
    first, last = (turned(one) if garden.southern else one for one in NESTING)
    for task in season.plan.tasks:
        when, text = task_day(task), task.block.head.text
        if when is None or task.done is not None or not within(when.month, first, last):
            continue
        if not CUT.search(task.what) or LOOKED.search(text):
            continue
        thing = _dense(task, season)
        if not thing:
            continue
        law = _guarded(garden)
        yield Finding(
            level="stop" if law else "warn",
            where=task.block.where,
            block=thing if season.plan.named(thing) else garden.name,
            subject=task.what,
            facts=Facts(thing, task.what, when, law, (first, last)),
            by=when,
            candidates=partial(_ways_out, task, when, last),
        )


def _dense(task: Task, season: Season) -> str:
    """The hedge or the evergreen and dense climber that the task is for, "" where it is neither."""
    text = task.block.head.text.lower()
    place = task.spot.thing if task.spot else ""
    hedges = [one.name for one in season.plan.things.values() if one.word == "hedge"]
    found = next((name for name in hedges if name.lower() in text or name == place), "")
    if found or re.search(r"\bhedges?\b", text):
        return found or "the hedge"
    for planting in season.plantings:
        entry = planting.entry
        if entry is None or word(entry.life) != "woody" or not _is_thick(entry):
            continue
        named = any(name.lower() in text for name in (planting.name, entry.name))
        if named:
            return planting.name
    return ""


def _is_thick(entry: Plant) -> bool:
    """Clings, or is grown for its leaf, or keeps it through the winter."""
    evergreen = "evergreen" in word(entry.other.get("leaf"))
    return word(entry.holds_on) == "clings" or entry.grown_for == "leaf cover" or evergreen


def _guarded(garden: Garden) -> bool:
    return bool(garden.region) and any(
        lies_in(garden.region, part) or part.lower() in garden.region.lower() for part in LAW
    )


def _ways_out(task: Task, when: date, last: int) -> Iterable[Edit]:
    """The month after; or a look first."""
    month = last % 12 + 1
    year = when.year if month > when.month else when.year + 1
    yield from moved_to(task, date(year, month, 10))
    yield swap(task.block.head, task.what, f"look for nests and {task.what}")


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    first, last = (MONTHS[month - 1] for month in facts.months)
    law = (
        "A nest in use is guarded by law there"
        if facts.law
        else "In many places a nest in use is guarded by law"
    )
    return Words(
        says=(
            f"{opening(facts.thing)}: `{facts.task}` on {day(facts.when)} falls in the months of "
            f"nesting, {first} to {last}. {law}."
        ),
        if_ignored="The brood is lost. Look first, and leave it alone where there is a nest.",
        told=f"`{facts.task}`, {day(facts.when)}.",
        assumed="That nobody has looked yet; local law goes before this.",
        sum=(
            f"{day(facts.when)} against {first} to {last}; said of hedges and of climbers that "
            "keep their leaves or grow thick."
        ),
    )


RULE = Rule(
    name="birds-nesting",
    summary="a hedge or dense climber is cut in the months of nesting",
    looks_at="season",
    levels=("warn", "stop"),
    basis="common practice",
    check=check,
    words=words,
    answered="move the work, or write a task that looks for nests first",
    answered_at="stop",
)
