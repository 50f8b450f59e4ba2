"""What was assumed, and what could not be checked, said once at the end."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.language.slots import Section
from plantframe.mechanics.ground import SOILS
from plantframe.season.entries import broken_entry
from plantframe.season.loads import Push

if TYPE_CHECKING:
    from plantframe.answers.answers import Answers
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.units import Shown

DEFAULT_REACH_M = 2.0
SMALL_M = 0.05  # from here down a figure is written to the millimetre
# Of all that an entry assumes, what a load or a fit rests on.
TELLING = {
    "posts.down": "in the ground",
    "posts.length": "long",
    "bays.length": "from post to post",
    "net.mesh": "mesh",
}


def assumed(answers: Answers) -> list[str]:
    """What the plan does not say and was taken for granted, in the order of its weight."""
    plan, season, shown = answers.plan, answers.season, answers.shown
    garden = plan.garden
    out: list[str] = []
    pushes = [frame.push for frame in season.frames.values() if frame.push is not None]
    if pushes and not garden.wind:
        out.append("an average place for wind")
    dug = any(isinstance(push, Push) and push.ground is not None for push in pushes)
    known = garden.soil or all(frame.bed and frame.bed.soil for frame in _loaded(answers))
    if dug and not known:
        out.append("firm loam")
    if season.frames and not any(person.reach_m for person in garden.people):
        out.append(f"hand reach {shown.length(DEFAULT_REACH_M)}")
    if _nominal(answers) and not garden.timber:
        out.append(
            "trade sizes as dressed: a 2x2 is 1½ in square"
            if garden.imperial
            else "trade sizes as dressed: a 2x2 is 38 mm square"
        )
    out += [line for frame in season.frames.values() for line in _of_frame(frame, shown)]
    return out


def _loaded(answers: Answers) -> list[WorkedFrame]:
    return [frame for frame in answers.season.frames.values() if frame.push is not None]


def _nominal(answers: Answers) -> bool:
    return any(
        isinstance(slot.value, Section) and slot.value.nominal
        for block in answers.reading.blocks
        for fact in block.facts
        for slot in fact.slots
    )


def _of_frame(frame: WorkedFrame, shown: Shown) -> list[str]:
    if not frame.plantings:
        return []
    out = []
    for name, said in TELLING.items():
        value = frame.assumed.get(name)
        if value is not None and not value.is_word:
            word = name.split(".", maxsplit=1)[0]
            if not _there(frame, word):
                continue
            structure = frame.structure
            fact = structure.facts.get(word) if structure else None
            called = fact.called if fact else word
            small = value.usual < SMALL_M
            what = shown.bench(value.usual) if small else shown.length(value.usual)
            tail = f"{called} {what} {said}" if said != "mesh" else f"mesh {what}"
            out.append(f"{frame.frame.name}: {tail}")
    return out


def _there(frame: WorkedFrame, word: str) -> bool:
    """Whether what is assumed of a word is used: poles of a tent of panels are not."""
    if frame.worked is None or frame.structure is None:
        return False
    if word == "bays":
        return (frame.figure("bays.count") or 0) > 0
    parts = {name for name, part in frame.structure.parts.items() if part.section == word}
    return not parts or bool(parts & set(frame.worked.pieces))


def not_checked(answers: Answers) -> list[str]:
    """What could not be looked at, and why."""
    plan, season = answers.plan, answers.season
    out: list[str] = []
    for frame in season.frames.values():
        name = frame.frame.name
        if frame.frame.own_design:
            out.append(f"loads of {name} (your own design)")
        elif frame.structure is None:
            broken = broken_entry("structure", frame.frame.kind)
            why = f"its entry cannot be read: {broken}" if broken else "its kind is not known"
            out.append(f"{name} ({why})")
        elif frame.problem:
            out.append(f"{name} ({frame.problem})")
    soils = {frame.soil for frame in _loaded(answers)} - set(SOILS)
    out += [f"how well “{soil}” holds a post" for soil in sorted(soils)]
    out += [line for line in map(_unknown, season.plantings) if line]
    dark = sorted(
        {
            frame.frame.name
            for frame in season.frames.values()
            if frame.plantings and frame.sun_h is None
        }
    )
    if dark:
        out.append(f"sun on {', '.join(dark)}")
    if plan.garden.lines_marked is None and season.frames:
        out.append("what is buried where posts go in")
    return list(dict.fromkeys(out))


def _unknown(planting: WorkedPlanting) -> str:
    """Why nothing is known of a plant, where it is so."""
    place, own = f"{planting.name} in {planting.holder}", planting.planting
    if broken := broken_entry("plant", own.plant):
        return f"{place} (its entry cannot be read: {broken})"
    if planting.entry is not None:
        return ""
    return f"{place} ({'which kind is not said' if own.plants else 'not in the catalogue'})"
