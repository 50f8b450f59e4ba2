"""Small texts read, for the tests of this room: one line, one block, one file."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.language.edits import apply
from plantframe.language.reader import Block, Fact, Text, read_text
from plantframe.language.values import Measure, Number, Size, Span

if TYPE_CHECKING:
    from plantframe.language.edits import Edit
    from plantframe.language.mistakes import Mistake
    from plantframe.language.slots import When

FILE = "garden.plan"
HEADS = {
    "variety": "variety Ida Bean",
    "garden": "garden Quarry Row, 2027",
    "frame": "frame Bean Net, net frame",
    "line": "line Berry Wires, cane wires",
    "cover": "cover Seed Box, cold frame",
    "fence": "fence Rose Fence, mortised fence",
    "bed": "bed Long Bed",
    "border": "border Lane Border",
    "wall": "wall Kitchen Wall",
    "house": "house",
    "path": "path Main Path",
    "hedge": "hedge Holly Hedge",
    "tree": "tree Old Pear",
    "shed": "shed",
    "yard": "yard",
}


def read(text: str) -> Text:
    """A text read as a file of its own."""
    return read_text(text, FILE)


def block(head: str) -> Block:
    """The one block that a head line opens."""
    (found,) = read(f"{head}\n").blocks
    return found


def fact(line: str, under: str = "frame") -> Fact:
    """The one fact of a detail line."""
    (found,) = facts(line, under)
    return found


def facts(line: str, under: str = "frame") -> tuple[Fact, ...]:
    """The facts of a detail line."""
    return read(f"{HEADS[under]}\n  {line}\n").blocks[0].facts


def slips(line: str, under: str = "frame") -> list[Mistake]:
    """The slips of a detail line, less those that only say how something was read."""
    return [slip for slip in all_slips(line, under) if slip.level != "note"]


def all_slips(line: str, under: str = "frame") -> list[Mistake]:
    """The slips of a detail line."""
    return list(read(f"{HEADS[under]}\n  {line}\n").mistakes)


def plain(value: object) -> object:
    """A value as a test writes it: metres, kilograms, counts; a date as it stands."""
    if isinstance(value, Number | Measure):
        return round(value.value, 4)
    if isinstance(value, Size):
        return tuple(round(side.value, 4) for side in value.sides)
    if isinstance(value, Span):
        return plain(value.low), plain(value.high)
    return value


def said(found: Fact) -> dict[str, object]:
    """The slots of a fact by name, plain; of several of one name, a list."""
    out: dict[str, object] = {}
    for slot in found.slots:
        value = plain(slot.value)
        if slot.name in out:
            before = out[slot.name]
            out[slot.name] = [*before, value] if isinstance(before, list) else [before, value]
        else:
            out[slot.name] = value
    return out


def day(when: When) -> tuple[int | None, int, int | None]:
    """Day, month and year of a date as typed."""
    assert when.day is not None
    return when.day.day, when.day.month, when.day.year


def edited(text: str, edit: Edit) -> str:
    """The text with an edit made."""
    return apply(edit, {FILE: text})[FILE]
