"""What the gardener's own lines say of a thing: its remarks, the notes on it, the tasks for it."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.season.units import day

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import date

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.plan.things import Task
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season


def remarks_on(season: Season, *names: str) -> Iterator[str]:
    """Every line and remark under things of these names, and the notes on them."""
    plan = season.plan
    for name in names:
        thing = plan.named(name)
        if thing is None:
            continue
        for fact in (thing.block.head, *thing.block.facts):
            yield f"{fact.text} {fact.remark}"
    yield from (note.words for note in plan.notes if note.about in names)


def has_task(season: Season, pattern: str, *names: str) -> bool:
    """A task for these things speaks of this work."""
    return any(
        re.search(pattern, task.block.head.text.lower()) for task in season.tasks_about(*names)
    )


def is_spoken_of(season: Season, pattern: str, *names: str) -> bool:
    """A task, a note or a remark on these things speaks of it."""
    return has_task(season, pattern, *names) or any(
        re.search(pattern, text.lower()) for text in remarks_on(season, *names)
    )


def is_for_plant(task: Task, planting: WorkedPlanting, entries: tuple[Plant, ...]) -> bool:
    """The task names the plant, by any of its names."""
    text = task.block.head.text.lower()
    own = planting.planting
    names = {own.said, own.cultivar} | {
        name for entry in entries for name in (entry.name, *entry.also, *entry.part_of)
    }
    return any(name and _root(name) in text for name in names)


def _root(name: str) -> str:
    """Without the ending of the plural: `pole beans` and `pole bean` are one."""
    small = name.lower()
    return small.removesuffix("s") if len(small) > 4 else small


def task_day(task: Task) -> date | None:
    """When it is to be done."""
    dated = task.moved or task.on or task.by
    return dated.day if dated else None


def moved_to(task: Task, when: date) -> Iterator[Edit]:
    """The same task on another day."""
    head = task.block.head
    for slot in head.slots:
        if slot.name in {"on", "by"}:
            yield rewrite(head, {slot.name: day(when)})
            return


def place_of(season: Season, planting: WorkedPlanting) -> str:
    """`in Long Bed`, `on Bean Net`."""
    return f"{'in' if planting.holder in season.plan.beds else 'on'} {planting.holder}"
