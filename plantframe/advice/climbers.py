"""A plant on a frame as the rules ask of it: how it holds, whether it is tied, what would do."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.catalogue.names import named
from plantframe.season.entries import entry_of

if TYPE_CHECKING:
    from collections.abc import Iterator

    from plantframe.catalogue.entries import Plant
    from plantframe.catalogue.sourced import Sourced
    from plantframe.catalogue.workings import Held
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

TYING = r"\b(?:tie|ties|tied|tying)\b"
SLING = r"\bslings?\b"
STICKS = frozenset({"wood", "cane", "steel"})


def word(value: Sourced | None) -> str:
    """The word of a value, "" where it is a figure or not known."""
    return value.value if value is not None else ""


def opening(text: str) -> str:
    """The text with a capital to open a sentence; the rest of it as typed."""
    return text[:1].upper() + text[1:]


def meant(planting: WorkedPlanting) -> tuple[Plant, ...]:
    """Every plant a planting's name can mean; one where it is clear."""
    found = [entry_of(name) for name in planting.planting.plants]
    return tuple(one for one in found if one is not None)


def is_pea(entry: Plant) -> bool:
    """Of the pea family, and holds on by tendrils."""
    return entry.family == "Fabaceae" and word(entry.holds_on) == "tendrils"


def is_yearly(entry: Plant) -> bool:
    """Sown or planted anew each year."""
    return "annual" in word(entry.life)


def is_tied_as_grown(entry: Plant) -> bool:
    """A grape and its like: tendrils or no, it is pruned and tied in wherever it is grown."""
    led = entry.training.kind if entry.training else ""
    return word(entry.life) == "woody" and word(entry.holds_on) == "tendrils" and led == "tie in"


def matter(frame: WorkedFrame, held: Held) -> str:
    """What a thing to hold on to is made of: net, twine, wood."""
    pieces = frame.worked.pieces if frame.worked else {}
    part = held.hold.part
    if part in pieces:
        return pieces[part].part.of
    return {"string": "twine"}.get(part, part)  # hung on it, beyond the parts of its kind


def bare_sticks(frame: WorkedFrame) -> bool:
    """Nothing to hold on to but upright sticks."""
    return bool(frame.holds) and all(
        held.hold.runs == "up" and matter(frame, held) in STICKS for held in frame.holds
    )


def tied_by_custom(frame: WorkedFrame) -> bool:
    """A kind in which every plant is tied to a stick of its own."""
    structure = frame.structure
    return (
        structure is not None
        and structure.stands.held == "alone"
        and all(carries.by == "none" for carries in structure.carries)
        and bare_sticks(frame)
    )


def is_tied(season: Season, frame: WorkedFrame, planting: WorkedPlanting) -> bool:
    """The plan says that this plant is tied or led, or how many leaders are kept of it."""
    own = planting.planting
    if own.trained or own.leaders is not None:
        return True
    fact = frame.frame.fact("tie")
    if fact is not None and fact.get("height") is None:
        return True  # `tie at 1.9 m` is where poles meet; `tie with soft twine` is for plants
    return is_planned(season, frame, TYING)


def is_planned(season: Season, frame: WorkedFrame, pattern: str) -> bool:
    """A task, a note or a remark of the plan speaks of this work on this frame."""
    name = frame.frame.name
    said = [f"{fact.text} {fact.remark}" for fact in frame.frame.block.facts if fact.word != "tie"]
    said += [note.words for note in season.plan.notes if note.about == name]
    bed = frame.bed.name if frame.bed else name
    said += [task.what for task in season.tasks_about(name, bed)]
    return any(re.search(pattern, text.lower()) for text in said)


def kin(entry: Plant) -> Iterator[Plant]:
    """The other plants that share one of its looser names: the bush bean's kin is the pole bean."""
    seen = {entry.name}
    for group in (*entry.part_of, entry.name):
        for name in _meant_by(group):
            other = None if name in seen else entry_of(name)
            seen.add(name)
            if other is not None:
                yield other


def _meant_by(group: str) -> tuple[str, ...]:
    from plantframe.catalogue.names import index, tidy

    return tuple(index()["group"].get("plant", {}).get(tidy(group), ()))


def suited(frame: WorkedFrame) -> Iterator[Plant]:
    """The plants that the trade grows on this kind, as its entry lists them."""
    for one in frame.structure.suits if frame.structure else ():
        found = named("plant", one.plant)
        entry = entry_of(found[0]) if len(found) == 1 else None
        if entry is not None:
            yield entry


def is_listed(frame: WorkedFrame, entry: Plant) -> bool:
    """Whether the kind's own entry lists this plant."""
    return frame.structure is not None and any(
        one.plant == entry.known_as for one in frame.structure.suits
    )
