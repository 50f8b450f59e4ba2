"""Lines that stand alone: wants, tasks, the log, notes, and what lies in the shed and the yard."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.language.phrases import phrase, read_phrase
from plantframe.language.slots import Section, When, take
from plantframe.language.values import Measure, Number, Size
from plantframe.plan import names as naming
from plantframe.plan import words
from plantframe.plan.dates import Dated, DateSlip, resolve
from plantframe.plan.things import Item, LogEntry, Note, Task, Want

if TYPE_CHECKING:
    from plantframe.language.reader import Block, Fact
    from plantframe.plan.site import Site

# A bare thickness among the lengths of one thing: `poles, 25 mm, 2.4 m`, `wire 2.5 mm, 50 m`.
_THIN_M = 0.16
_MUCH_LONGER = 8


def want_of(site: Site, block: Block) -> Want:
    """A plant that has no frame yet."""
    head = block.head
    slot = head.slot("plant")
    if slot is not None:
        slot = naming.one_plant(head, slot, site.slips)
    said = str(slot.value) if slot else ""
    entries: tuple[str, ...] = ()
    if slot is None:
        example = "want cucumber, 6 plants"
        site.slips.say("nothing-after", block.where, word="want", example=example)
    elif said.split()[0].lower() not in {"something", "anything"}:
        entries = naming.plant_of(head, slot, site.slips, quiet=False, ambiguous=False)
    spots = site.spots(block)
    return Want(
        said,
        entries,
        str(head.get("cultivar") or ""),
        words.whole(head.get("count")),
        words.metres(head.get("row")),
        spots[0] if spots else None,
        block,
    )


def task_of(site: Site, block: Block) -> Task:
    """A job of the gardener's own."""
    head = block.head
    hours = head.get("hours")
    spots = site.spots(block)
    return Task(
        block.name,
        site.dated(head, "by"),
        site.dated(head, "on"),
        site.dated(head, "done"),
        site.dated(head, "moved"),
        str(head.get("after") or ""),
        str(head.get("when") or ""),
        hours.value if isinstance(hours, Measure) else None,
        words.whole(head.get("hands")) or (2 if head.get("both") else 1),
        tuple(str(value) for value in head.all("person")),
        spots[0] if spots else None,
        block,
    )


def log_of(site: Site, block: Block) -> LogEntry:
    """A line of the log: the date first, then anything."""
    text = ", ".join(str(slot.value).strip() for slot in block.head.slots)
    day, said = _log_day(site, text, block)
    about = ""
    first = re.split(r"[,.:]", said, maxsplit=1)[0].strip()
    if first and (found := site.names.find(first)) is None:
        # `Squash Net bar bowed 2 in`: the name, and no comma after it
        pieces = first.split()
        heads = (" ".join(pieces[:count]) for count in range(len(pieces) - 1, 0, -1))
        named = (head for head in heads if naming.key_of(head) in site.names.by_key)
        first = next((head for head in named if said.startswith(head)), "")
        found = site.names.find(first) if first else None
    if first and found:
        about = found
        said = said[len(first) :].lstrip(" ,.:")
        site.before_it_was_built(found, day, block.head)
    measures = tuple(
        item.value
        for part in said.split(",")
        for item in read_phrase(part.strip())[0]
        if isinstance(item.value, Measure)
    )
    return LogEntry(day, about, said, measures, block)


def _log_day(site: Site, text: str, block: Block) -> tuple[Dated | None, str]:
    """The date a line of the log begins with, and the words after it."""
    first = phrase(text.split(",", maxsplit=1)[0], 1)
    taken = take("date", first, 0, frozenset()) if first.items else None
    if taken is None or not isinstance(taken[0], When):
        site.slips.say("no-log-date", block.where, text=text[:40])
        return None, text
    when, after = taken[0], taken[1]
    rest = text[first.items[after - 1].end :].lstrip(" ,.:;-–")
    try:
        return resolve(when, site.season), rest
    except DateSlip as slip:
        column = block.where.typed.find(slip.told["text"]) + 1
        site.date_slip(slip, naming.at(block.where, column))
        return None, rest


def note_of(site: Site, block: Block) -> Note:
    """A remark, on the whole garden or on one thing."""
    text = ", ".join(str(slot.value).strip() for slot in block.head.slots)
    for sign in (":", " - ", " – "):
        about, told, rest = text.partition(sign)
        if told and (found := site.names.find(about)):
            return Note(found, rest.strip(), block)
    return Note("", text, block)


def items_of(block: Block) -> tuple[Item, ...]:
    """The lines of a shed or a yard."""
    return tuple(_item(fact) for fact in block.facts if fact.word == "item")


def _item(fact: Fact) -> Item:
    section, size = fact.get("section"), fact.get("size")
    lengths = [value for value in fact.all("length") if isinstance(value, Measure)]
    lengths_m = [length.value for length in lengths]
    if isinstance(section, Section) and section.length_m is not None:
        lengths_m.append(section.length_m)
    if section is None and len(lengths) > 1:
        thin = min(lengths, key=lambda length: length.value)
        if thin.value <= _THIN_M and max(lengths_m) >= _MUCH_LONGER * thin.value:
            section = Section(thin.value, thin.value, None, nominal=False, text=thin.text)
            lengths_m.remove(thin.value)
    count, packs = fact.get("count"), fact.get("packs")
    number = count if isinstance(count, Number) else packs
    nail = fact.get("nail")
    return Item(
        " ".join(str(value) for value in fact.all("stuff")),
        number.value if isinstance(number, Number) else None,
        section if isinstance(section, Section) else None,
        size if isinstance(size, Size) else None,
        tuple(lengths_m),
        words.metres(fact.get("mesh")),
        getattr(nail, "penny", None),
        words.amount(fact.get("price")),
        fact,
    )
