"""determinate-pruned: side shoots are taken out of a bush tomato, which fruits on them."""

from __future__ import annotations

import re
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import kin, opening, word
from plantframe.advice.edits import other_crop
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import is_for_plant, place_of
from plantframe.frozen import frozen
from plantframe.language.edits import Edit, LineChange

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.plan.things import Planting, Task
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

SHOOTS = re.compile(r"side[- ]?shoot|pinch out|sucker", re.IGNORECASE)
LED = "side-shoot"  # the care by which the tall kinds are known


@frozen
class Facts:
    """The plant, where it grows, and what the plan says is done to it."""

    plant: str
    place: str
    said: str
    tall: str


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """Leaders kept, or a task for side shoots, on a kind whose tall kin are grown that way."""
    entry = planting.entry
    if entry is None or word(entry.habit) != "bush":
        return
    tall = [one for one in kin(entry) if any(care.id == LED for care in one.care)]
    if not tall:
        return
    own = planting.planting
    tasks = [
        task
        for task in season.tasks_about(planting.holder)
        if SHOOTS.search(task.what) and _is_its(task, planting, entry, season)
    ]
    if own.leaders is None and not tasks:
        return
    typed = _leaders(own)
    yield Finding(
        level="warn",
        where=tasks[0].block.where if tasks else own.fact.where,
        block=planting.holder,
        subject=planting.name,
        facts=Facts(
            planting.name,
            place_of(season, planting),
            tasks[0].what if tasks else typed,
            tall[-1].name,
        ),
        by=own.out.day if own.out else None,
        candidates=partial(_ways_out, planting, tasks, typed, tall),
    )


def _leaders(own: Planting) -> str:
    """The leaders as typed: `one leader`."""
    found = re.search(r"[\w½]+ (leaders?|stems?)\b", own.fact.text)
    return found.group() if found and own.leaders is not None else ""


def _is_its(task: Task, planting: WorkedPlanting, entry: Plant, season: Season) -> bool:
    """The task names the plant, or the place and nothing tall grows in that place."""
    place = task.spot.thing if task.spot else ""
    there = place == planting.holder or planting.holder.lower() in task.what.lower()
    if there:
        return True
    others = [
        one.entry
        for one in season.plantings
        if one.entry is not None and any(care.id == LED for care in one.entry.care)
    ]
    return not others and is_for_plant(task, planting, (entry,))


def _ways_out(
    planting: WorkedPlanting, tasks: list[Task], leaders: str, tall: list[Plant]
) -> Iterable[Edit]:
    """No such task and no leaders; or the tall kind, if that is what it is."""
    changes = [
        LineChange(one.block.where.file, one.block.where.line, one.block.where.typed, None)
        for one in tasks
    ]
    where = planting.planting.fact.where
    if leaders:
        line = re.sub(rf",\s*{re.escape(leaders)}", "", where.typed, count=1)
        changes.append(LineChange(where.file, where.line, where.typed, line))
    yield Edit("no side-shooting: the line goes" if tasks else "no leaders", tuple(changes))
    for other in reversed(tall):
        yield other_crop(planting.planting, other.name)


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    return Words(
        says=(
            f"{opening(facts.plant)} {facts.place}: `{facts.said}` takes out the side shoots, "
            "and a bush kind fruits on just those."
        ),
        if_ignored="Most of the crop goes with them.",
        told=f"{opening(facts.plant)}, {facts.said}.",
        sum=f"Common practice. {opening(facts.tall)} is the kind that is led on one stem or two.",
    )


RULE = Rule(
    name="determinate-pruned",
    summary="side shoots are taken out of a bush tomato, which fruits on them",
    looks_at="planting",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
