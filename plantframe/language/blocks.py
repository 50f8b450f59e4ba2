"""What one file holds once read: blocks, their facts, what it brings in, and its slips."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.frozen import frozen, replace

if TYPE_CHECKING:
    from plantframe.language.mistakes import Mistake, Where
    from plantframe.language.shapes import Slot


@frozen
class Fact:
    """One fact as read: its word, the slots it filled, and the line it stands in.

    word      the declared word, whatever spelling was typed; "item" or "plant" for the free lines
              of a shed, a yard or a border
    slots     in the order typed
    where     file, line, column and the line as typed
    text      the fact without its remark
    remark    what stood in brackets
    whole     every phrase of it was understood
    """

    word: str
    slots: tuple[Slot, ...]
    where: Where
    text: str
    remark: str = ""
    whole: bool = True

    def slot(self, name: str) -> Slot | None:
        """The first slot of that name."""
        return next((slot for slot in self.slots if slot.name == name), None)

    def get(self, name: str) -> object | None:
        """The value of the first slot of that name, or None."""
        slot = self.slot(name)
        return None if slot is None else slot.value

    def all(self, name: str) -> tuple[object, ...]:
        """The values of every slot of that name, in order."""
        return tuple(slot.value for slot in self.slots if slot.name == name)

    def place(self, slot: Slot) -> Where:
        """Where one of its slots stands."""
        line = slot.where or self.where
        return replace(line, column=slot.column)


@frozen
class Block:
    """A head and the facts under it. `head` holds the slots of the head itself."""

    word: str
    name: str
    head: Fact
    facts: tuple[Fact, ...]

    @property
    def where(self) -> Where:
        """Where the head stands."""
        return self.head.where

    @property
    def last_line(self) -> int:
        """The last line of the block that was read as part of it."""
        lines = [fact.where.line for fact in self.facts if fact.where.file == self.where.file]
        more = [slot.where.line for slot in self.head.slots if slot.where is not None]
        return max([self.where.line, *lines, *more])

    def fact(self, word: str) -> Fact | None:
        """The first fact of that word."""
        return next((fact for fact in self.facts if fact.word == word), None)

    def all(self, word: str) -> tuple[Fact, ...]:
        """Every fact of that word."""
        return tuple(fact for fact in self.facts if fact.word == word)


@frozen
class Import:
    """A line `read NAME` or `read NAME as last year`."""

    name: str
    history: bool
    where: Where


@frozen
class Text:
    """One file read: its blocks, what it brings in, its slips, and its lines as typed.

    lost   facts that are kept but not used: under a head that could not be read, under a block
           they do not belong to, or said before with another value
    """

    file: str
    lines: tuple[str, ...]
    blocks: tuple[Block, ...]
    imports: tuple[Import, ...]
    mistakes: tuple[Mistake, ...]
    lost: tuple[Fact, ...] = ()
