"""no-tool-there: a tool the work cannot do without is not among the tools, or has no power."""

from __future__ import annotations

import re
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import swap
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.language.edits import Edit, LineChange
from plantframe.season.units import listed

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.plan.things import Garden, Task
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

# Tools for which nothing else about a house will do, and what counts as having them (common
# practice, no source). The others are in every shed or are easily made up for.
NEEDED = {
    "chisel": r"chisel",
    "masonry drill": r"masonry|hammer drill|sds|rotary",
    "wire strainer": r"strain|tension|ratchet|turnbuckle",
    "axe": r"axe|hatchet|adze|draw ?knife|side knife",
    "post driver": r"post driver|sledge|maul|mallet",
    "bolt cutters": r"cutters|hacksaw|grinder|nippers",
}
# Work with a cord to it, and what does the same without a socket.
POWERED = re.compile(
    r"\b(rip|ripping|router|circular saw|table saw|jig ?saw|planer)\b", re.IGNORECASE
)
CORDLESS = re.compile(
    r"\b(cordless|battery|hand ?saw|by hand|generator|petrol|yard)\b", re.IGNORECASE
)
EVERYWHERE = re.compile(r"\b(everywhere|anywhere|all over|generator|extension)\b", re.IGNORECASE)


@frozen
class Facts:
    """What lacks a tool or a socket.

    names   the frames, or the job
    power   where there is power, "" where it is a tool that lacks
    place   where the work is to be done
    """

    names: tuple[str, ...]
    tools: tuple[str, ...]
    power: str = ""
    place: str = ""


def check(season: Season, _season: Season) -> Iterable[Finding]:
    """The tools of the frames still to be built, and the sockets of the gardener's own jobs."""
    garden = season.plan.garden
    if garden.tools:
        yield from _lacks_tools(season)
    if garden.power and not EVERYWHERE.search(garden.power):
        for task in season.plan.tasks:
            yield from _lacks_socket(task, season)


def _lacks_tools(season: Season) -> Iterable[Finding]:
    """Once for the garden: a tools line is seldom a whole list, so it is no more than a note."""
    garden = season.plan.garden
    at_hand = " ".join((*garden.tools, *(item.what for item in season.plan.shed)))
    at_hand += " ".join(("", *(person.fact.text for person in garden.people)))
    frames: list[WorkedFrame] = []
    lacking: dict[str, None] = {}
    for frame in season.frames.values():
        own = [
            tool for tool in _needed(frame) if not re.search(NEEDED[tool], at_hand, re.IGNORECASE)
        ]
        if own:
            frames.append(frame)
            lacking |= dict.fromkeys(own)
    if not frames:
        return
    fact = garden.facts["tools"][0]
    dates = [frame.wanted_by for frame in frames if frame.wanted_by]
    yield Finding(
        level="note",
        where=fact.where,
        block=garden.name,
        facts=Facts(tuple(sorted(frame.frame.name for frame in frames)), tuple(lacking)),
        by=min(dates, default=None),
        candidates=(swap(fact, fact.text, f"{fact.text}, {', '.join(lacking)}"),),
        ways=("Borrow or hire it for the day.",),
    )


def _needed(frame: WorkedFrame) -> tuple[str, ...]:
    """The tools its building cannot do without, where the gardener builds it."""
    if frame.stands or frame.builders_work or frame.frame.fact("built by") is not None:
        return ()
    tools = dict.fromkeys(tool for working in frame.steps for tool in working.step.tools)
    return tuple(tool for tool in tools if tool in NEEDED)


def _lacks_socket(task: Task, season: Season) -> Iterable[Finding]:
    garden, text, place = season.plan.garden, task.block.head.text, task.spot
    if task.done is not None or place is None or not place.thing:
        return
    thing = season.plan.named(place.thing)
    if thing is None or thing.block.word == "house" or _has_socket(place.thing, garden):
        return
    if POWERED.search(text) is None or CORDLESS.search(text):
        return
    yield Finding(
        level="warn",
        where=task.block.where,
        block=task.block.name,
        facts=Facts((task.what,), (), garden.power, place.thing),
        by=task.by.day if task.by else None,
        candidates=partial(_ways_out, task),
        ways=("Ask the yard to do it: write `at the yard`.",),
    )


def _has_socket(name: str, garden: Garden) -> bool:
    return name.lower() in garden.power.lower()


def _ways_out(task: Task) -> Iterable[Edit]:
    """The same work at the house, or at the yard."""
    where = task.block.where
    for slot in task.block.head.slots:
        if slot.name == "spot":
            for place in ("at the house", "at the yard"):
                line = where.typed.replace(slot.text, place, 1)
                change = LineChange(where.file, where.line, where.typed, line)
                yield Edit(line.strip(), (change,))
            return


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    if facts.power:
        return Words(
            says=(
                f"“{facts.names[0]}”, at {facts.place}: it wants power, and the plan has power at "
                f"{facts.power}."
            ),
            if_ignored="You carry the wood back to the house, or run a cord over wet grass.",
            told=f"Power: {facts.power}.",
            sum=f"What the job is done with, against power at {facts.power}.",
        )
    tools = listed([f"{'an' if tool[:1] in 'aeiou' else 'a'} {tool}" for tool in facts.tools])
    want = "want" if len(facts.names) > 1 else "wants"
    return Words(
        says=f"{listed(facts.names)} {want} {tools} to build, and the tools line has none.",
        if_ignored="The work stops half way, on the only free day.",
        told="The tools in the house.",
        assumed="That the tools line names everything you have.",
        sum="The tools of its steps: common practice.",
    )


RULE = Rule(
    name="no-tool-there",
    summary="a tool that the work cannot do without is not there, or has no power where it is done",
    looks_at="season",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
)
