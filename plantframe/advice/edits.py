"""Small edits that rules offer: a fact changed, added or taken out."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.language.edits import Edit, LineChange

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from plantframe.language.reader import Block, Fact
    from plantframe.plan.things import Frame, Planting

UPRIGHTS = ("posts", "poles", "stakes")


def set_fact(frame: Frame, word: str, line: str, says: str = "") -> Edit:
    """The frame's fact of that word becomes this line, or is added where there is none."""
    fact = frame.fact(word)
    where = frame.block.where
    if fact is not None and fact.where.line != where.line:
        return replace_line(fact, line, says)
    change = LineChange(where.file, frame.block.where.line, None, f"  {line}")
    return Edit(says or line, (change,))


def replace_line(fact: Fact, line: str, says: str = "") -> Edit:
    """A fact's line becomes another; its remark and its indent stay."""
    where = fact.where
    indent = where.typed[: len(where.typed) - len(where.typed.lstrip())]
    remark = f" {fact.remark}" if fact.remark else ""
    change = LineChange(where.file, where.line, where.typed, f"{indent}{line}{remark}")
    return Edit(says or line, (change,))


def swap(fact: Fact, old: str, new: str, says: str = "") -> Edit:
    """In a fact's line some words become others."""
    where = fact.where
    line = where.typed.replace(old, new, 1)
    return Edit(says or f"{line.strip()}", (LineChange(where.file, where.line, where.typed, line),))


def rewrite(fact: Fact, slots: Mapping[str, str], says: str = "") -> Edit:
    """In a fact's line the slots named are typed anew; those it has not are added at its end."""
    where = fact.where
    known = {slot.name: slot for slot in fact.slots}
    lines = {where.line: where.typed}
    typed = {where.line: where.typed}
    for slot in sorted(known.values(), key=lambda one: one.column, reverse=True):
        if slot.name in slots:
            place, start = fact.place(slot), slot.column - 1
            typed[place.line] = place.typed
            line = lines.get(place.line, place.typed)
            lines[place.line] = line[:start] + slots[slot.name] + line[start + len(slot.text) :]
    more = [text for name, text in slots.items() if name not in known]
    if more:
        line = lines[where.line]
        body, gap, remark = line.partition(" (") if fact.remark else (line, "", "")
        lines[where.line] = f"{', '.join([body.rstrip(), *more])}{gap}{remark}"
    changes = tuple(
        LineChange(where.file, number, typed[number], line)
        for number, line in lines.items()
        if line != typed[number] or len(lines) == 1
    )
    said = lines[changes[0].line] if changes else where.typed
    return Edit(says or said.strip(), changes)


def uprights(frame: Frame) -> Fact | None:
    """The line about what stands in the ground, by whichever of its words it is typed."""
    return next((fact for word in UPRIGHTS if (fact := frame.fact(word)) is not None), None)


def add_fact(frame: Frame, line: str, says: str = "") -> Edit:
    """A fact is added at the end of the frame's block."""
    block = frame.block
    change = LineChange(block.where.file, block.last_line, None, f"  {line}")
    return Edit(says or line, (change,))


def drop(fact: Fact, says: str) -> Edit:
    """A fact's line is taken out."""
    where = fact.where
    return Edit(says, (LineChange(where.file, where.line, where.typed, None),))


def together(says: str, *edits: Edit) -> Edit:
    """Several edits as one."""
    return Edit(says, tuple(change for edit in edits for change in edit.changes))


def other_crop(planting: Planting, plant: str, says: str = "") -> Edit:
    """The planting names another plant; a cultivar name goes, since it belongs to the first."""
    fact = planting.fact
    where = fact.where
    line = where.typed.replace(planting.said, plant, 1)
    if planting.cultivar:
        line = re.sub(rf"\s*[\"'‘“]{re.escape(planting.cultivar)}[\"'’”]", "", line, count=1)
    return Edit(says or f"grow {plant}", (LineChange(where.file, where.line, where.typed, line),))


def slot_text(fact: Fact, name: str) -> str:
    """A slot as typed, "" where it is not there."""
    slot = fact.slot(name)
    return slot.text if slot else ""


def add_block(frame: Frame, line: str, says: str = "") -> Edit:
    """A block of one line is added after the frame's."""
    block = frame.block
    change = LineChange(block.where.file, block.last_line, None, line)
    return Edit(says or line, (change,))


def other_kind(frame: Frame, kind: str, *without: str) -> Edit | None:
    """The frame becomes another kind, and facts of these words that it then has no use for go."""
    slot = frame.block.head.slot("kind")
    if slot is None:
        return None
    where = frame.block.head.place(slot)
    start = slot.column - 1
    line = where.typed[:start] + kind + where.typed[start + len(slot.text) :]
    head = Edit(line.strip(), (LineChange(where.file, where.line, where.typed, line),))
    gone = [fact for word in without for fact in frame.facts.get(word, ())]
    lines = {fact.where.line: fact for fact in gone if fact.where.line != where.line}
    return together(line.strip(), head, *(drop(fact, "") for fact in lines.values()))


def other_place(frame: Frame, old: str, new: str) -> Iterator[Edit]:
    """The frame stands in another bed; the rest of its place stays as typed."""
    for slot in frame.block.head.slots:
        where, place = frame.block.head.place(slot), slot.text.find(old)
        if slot.name == "spot" and place >= 0 and old != new:
            start = slot.column - 1 + place
            line = where.typed[:start] + new + where.typed[start + len(old) :]
            change = LineChange(where.file, where.line, where.typed, line)
            yield Edit(f"in {new}", (change,))
            return


def other_block(fact: Fact, block: Block, says: str) -> Edit:
    """A fact's line goes from its own block to the end of another."""
    where, there = fact.where, block.where
    gone = LineChange(where.file, where.line, where.typed, None)
    come = LineChange(there.file, block.last_line, None, where.typed)
    return Edit(says, (gone, come))


def add_task(block: Block, what: str, says: str = "") -> Edit:
    """A job of the gardener's own is added after a block."""
    line = f"task {what}"
    change = LineChange(block.where.file, block.last_line, None, line)
    return Edit(says or line, (change,))
