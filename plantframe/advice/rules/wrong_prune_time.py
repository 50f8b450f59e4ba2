"""wrong-prune-time: a cut is planned for when it takes the wood that is about to flower."""

from __future__ import annotations

import re
from datetime import date
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import meant, opening, word
from plantframe.advice.edits import other_crop
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import is_for_plant, moved_to, task_day
from plantframe.advice.seasons import before, months_of, within
from plantframe.frozen import frozen
from plantframe.season.entries import entry_of
from plantframe.season.units import MONTHS, day

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.plan.things import Task
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

CUT = re.compile(r"\b(prun(e|ing)|cut(ting)?|shear(ing)?|clip(ping)?)\b", re.IGNORECASE)
# Work that leaves the young wood alone.
GENTLE = re.compile(
    r"\b(old|older|dead|fruited|spent|suckers?|tips?|flowers?|bunch|cuttings?|dead-?head\w*|tidy|"
    r"thin|lightly|grass|hedge|posts?|poles?|canes? to length)\b",
    re.IGNORECASE,
)
REST_MONTHS = 7  # before it flowers: from then on this wood carries next season's flowers
OWN_CUT = re.compile(r"\b(prun|cut)", re.IGNORECASE)


@frozen
class Facts:
    """The plant and where; the task and its day; the months it does so, and when it is cut."""

    plant: str
    holder: str
    task: str
    when: date
    flowers: tuple[int, int]
    cut: int
    does: str


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """Tasks that cut what flowers or fruits on last year's wood, before it has done so."""
    entries = meant(planting)
    if not entries or any(word(entry.flowers_on) != "old wood" for entry in entries):
        return
    southern = season.plan.garden.southern
    entry = entries[0]
    flowers = _bears(entry, southern=southern)
    if flowers is None:
        return
    first, last = flowers
    does = "bear" if entry.grown_for == "food" else "flower"
    for task in season.tasks_about(planting.holder):
        when, what = task_day(task), task.block.head.text
        if when is None or not CUT.search(what) or GENTLE.search(what):
            continue
        if not _is_its(task, planting, entries, season):
            continue
        if not within(when.month, before(first, REST_MONTHS), before(first, 0)):
            continue
        if _own_season(entry, when.month, southern=southern):
            continue
        yield Finding(
            level="warn",
            where=task.block.where,
            block=planting.holder,
            subject=planting.name,
            facts=Facts(
                planting.name, planting.holder, task.what, when, flowers, last % 12 + 1, does
            ),
            by=when,
            candidates=partial(_ways_out, task, planting, when, last),
            ways=("Only dead and crossing shoots now; the rest once the flowers are over.",),
        )


def _bears(entry: Plant, *, southern: bool) -> tuple[int, int] | None:
    """The months in which it flowers, or for fruit those in which it is ready."""
    said = word(entry.other.get("flowers in")) or word(entry.other.get("ready in"))
    return months_of(said, southern=southern)


def _own_season(entry: Plant, month: int, *, southern: bool) -> bool:
    """The plant's own care has a cut at about that time: wisteria is shortened in winter too."""
    for care in entry.care:
        months = months_of(word(care.from_), southern=southern) if care.from_ else None
        if months is None or not OWN_CUT.search(f"{care.id} {care.do}"):
            continue
        if within(month, before(months[0], 2), months[1] % 12 + 1):
            return True
    return False


def _is_its(
    task: Task, planting: WorkedPlanting, entries: tuple[Plant, ...], season: Season
) -> bool:
    """The task names the plant, or the place where nothing else grows."""
    if is_for_plant(task, planting, entries):
        return True
    place = task.spot.thing if task.spot else ""
    there = planting.holder.lower() in task.block.head.text.lower() or place == planting.holder
    company = season.held_by(planting.holder)
    return there and len(company) == 1


def _ways_out(task: Task, planting: WorkedPlanting, when: date, last: int) -> Iterable[Edit]:
    """The same cut once it has flowered; or its kin that flowers on the wood of the year."""
    month = last % 12 + 1
    year = when.year if month > when.month else when.year + 1
    yield from moved_to(task, date(year, month, 10))
    for group in (entry.part_of for entry in meant(planting)):
        for name in _kin(group):
            other = entry_of(name)
            if other is not None and word(other.flowers_on) == "new wood":
                yield other_crop(planting.planting, other.name)


def _kin(groups: tuple[str, ...]) -> tuple[str, ...]:
    from plantframe.catalogue.names import index, tidy

    known = index()["group"].get("plant", {})
    return tuple(name for group in groups for name in known.get(tidy(group), ()))


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    first, last = (MONTHS[month - 1] for month in facts.flowers)
    bears = first if first == last else f"{first} to {last}"
    return Words(
        says=(
            f"{opening(facts.plant)} on {facts.holder}: `{facts.task}` on {day(facts.when)} takes "
            f"last year's shoots, which {facts.does} in {bears}. It is cut after that, in "
            f"{MONTHS[facts.cut - 1]}."
        ),
        if_ignored="A season without flowers or fruit.",
        told=f"`{facts.task}`, {day(facts.when)}.",
        assumed="A hard cut of all its shoots.",
        sum="Common practice: what flowers on old wood is cut when it has flowered.",
    )


RULE = Rule(
    name="wrong-prune-time",
    summary="a cut takes the wood that is about to flower",
    looks_at="planting",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
