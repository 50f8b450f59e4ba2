"""From the text of one file to blocks and facts, with every slip said and the rest read.

Lines are split by the grammar's first start, phrases by its second; the declarations then say
what a phrase means. Names (of beds, plants, kinds) are resolved later, in the plan, so that a
damaged line never changes how another reads.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

from plantframe.frozen import replace
from plantframe.language import vocabulary
from plantframe.language.blocks import Block, Fact, Import, Text
from plantframe.language.declarations import BlockWord, FactWord, find_block, find_fact
from plantframe.language.edits import Edit, LineChange, delete, rewrite
from plantframe.language.heads import (
    LINES_ALONE,
    head_parts,
    is_a_head,
    looks_like_a_head,
    name_of,
)
from plantframe.language.lines import FILE_CAP, LINE_CAP, PART_CAP, readable, split, typed_lines
from plantframe.language.lists import fits, heights, reason_whole
from plantframe.language.matching import match
from plantframe.language.mistakes import Mistake, Where
from plantframe.language.near import nearest
from plantframe.language.openings import figure_first, opening
from plantframe.language.shapes import Match, Slot, opening_words
from plantframe.language.slips import ONCE, Slips, units_in
from plantframe.language.twice import contradict, end_posts

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from plantframe.language.lines import Line
    from plantframe.language.openings import Opening
    from plantframe.language.values import Phrase

__all__ = ["FILE_CAP", "LINE_CAP", "Block", "Fact", "Import", "Text", "nearest", "read_text"]


_FIRST_WORD = re.compile(r"[^\W\d_]+(?![\w'’-])")


def read_text(text: str, file: str) -> Text:
    """Read one file's text.

    text   what the file holds
    file   its name, as messages shall give it
    """
    lines = typed_lines(text)
    if len(text) > FILE_CAP:
        told = {"file": file, "size": f"{len(text):,} characters", "cap": f"{FILE_CAP:,}"}
        return Text(file, lines, (), (), (Mistake("file-too-large", Where(file, 1), told),))
    fit, unreadable = readable(lines, file)
    units = units_in(text)
    parts = [
        _read_part(tuple(fit[first:last]), lines[first:last], first, file, units)
        for first, last in _parts(fit)
    ]
    mistakes = [*unreadable, *_once(slip for part in parts for slip in part.mistakes)]
    mistakes.sort(key=lambda slip: (slip.where.line, slip.where.column, slip.name))
    return Text(
        file,
        lines,
        tuple(block for part in parts for block in part.blocks),
        tuple(wanted for part in parts for wanted in part.imports),
        tuple(mistakes),
        tuple(fact for part in parts for fact in part.lost),
    )


def _parts(lines: Sequence[str]) -> Iterator[tuple[int, int]]:
    """Where the file may be parted: before each line that opens a block."""
    first = 0
    for place, line in enumerate(lines):
        word = _FIRST_WORD.match(line)
        if word and place > first and find_block(word[0].lower()) is not None:
            yield first, place
            first = place
    yield first, len(lines)


@lru_cache(maxsize=4096)
def _read_part(
    fit: tuple[str, ...], typed: tuple[str, ...], first: int, file: str, units: tuple[bool, bool]
) -> Text:
    """Read some blocks.

    What is read of one block hangs on no other, so a plan of which one line was changed is read
    again at the cost of one block, and an offer is tried in a moment.
    """
    reading = _Reading(file, typed, first, units)
    for line in split(fit):
        reading.line(line)
    reading.close()
    return Text(
        file,
        typed,
        tuple(reading.blocks),
        tuple(reading.imports),
        tuple(reading.slips.found),
        tuple(reading.lost),
    )


def _once(slips: Iterable[Mistake]) -> Iterator[Mistake]:
    """The slips, those said once for the whole file without their repeats."""
    said: set[str] = set()
    for slip in slips:
        if slip.name not in said:
            yield slip
        if slip.name in ONCE:
            said.add(slip.name)


@dataclass(slots=True)
class _Open:
    """The block being read.

    declared, head   None where the head means nothing, so that its facts are only kept
    slip             which of the slips was said of such a head
    """

    declared: BlockWord | None
    head: Fact | None
    name: str
    facts: list[Fact]
    slip: int = -1

    @property
    def word(self) -> str:
        return self.declared.word if self.declared else ""


class _Reading:
    """The state of reading a part of a file, line after line; `first` lines stand before it."""

    def __init__(
        self, file: str, lines: tuple[str, ...], first: int, units: tuple[bool, bool]
    ) -> None:
        self.file = file
        self.lines = lines
        self.first = first
        self.slips = Slips(file, lines, first, units)
        self.blocks: list[Block] = []
        self.imports: list[Import] = []
        self.lost: list[Fact] = []
        self.open: _Open | None = None

    def line(self, line: Line) -> None:
        """Read one line into the block it opens or belongs to."""
        typed = self.lines[line.number - 1]
        where = Where(self.file, self.first + line.number, line.phrases[0].column, typed)
        if line.beyond and line.phrases[0].words[0] not in {"log", "note"}:
            self.slips.say("line-too-long", where, length=line.beyond, cap=str(PART_CAP))
        elif line.head:
            self.head(line.phrases, where, line.remark)
        else:
            self.detail(line.phrases, where, line.remark)

    # -- heads ----------------------------------------------------------------------------
    def head(self, found: tuple[Phrase, ...], where: Where, remark: str) -> None:
        """A line in column one."""
        first = found[0].words[0]
        if first == "read":
            self.read(where)
            return
        declared = find_block(first)
        if declared is None:
            self.not_a_head(found, where)
            return
        self.close()
        name, rest = name_of(declared, found)
        if declared.named and not name:
            example = declared.example.split("\n")[0]
            self.slips.say("no-name", where, word=declared.word, example=example)
            self.unread()
            return
        text = where.typed.split("(")[0].strip()
        head = Fact(declared.word, (), where, text, remark)
        self.open = _Open(declared, head, name, [])
        if declared.word in {"log", "note"}:
            slots = tuple(Slot("text", part.text, part.text, part.column) for part in rest)
            self.open.head = replace(head, slots=slots)
            return
        own, facts = head_parts(declared, rest)
        for part in own:
            self.slips.doubts(part, where)
        got = match(declared.shape, own)
        self.slips.leftovers(
            got.leftovers, None, got.slots, where, block=declared.word, shape=declared.shape
        )
        self.open.head = replace(head, slots=got.slots, whole=not got.leftovers)
        self.facts_of_a_head(self.open, facts, where)

    def facts_of_a_head(
        self, block: _Open, facts: Iterable[tuple[FactWord, int, Phrase]], where: Where
    ) -> None:
        """Read what stands in a head and would have a line of its own: `built 2024`."""
        for fact, count, part in facts:
            for read in self.fact(fact, count, [part], where, ""):
                self.keep(block, read)

    def head_goes_on(self, block: _Open, found: tuple[Phrase, ...], where: Where) -> bool:
        """Read a line that opens no fact and says what the head might have: `in Long Bed`."""
        declared, head = block.declared, block.head
        if declared is None or head is None or declared.details != "facts":
            return False
        opened = opening(found, declared.word)
        if opened is not None and opened.here:
            return False
        own, facts = head_parts(declared, found)
        got = match(declared.shape, own, strict=True)
        filled = {slot.name for slot in head.slots} - {"spot"}
        if not got.slots or got.leftovers or any(slot.name in filled for slot in got.slots):
            return False
        for part in own:
            self.slips.doubts(part, where)
        more = tuple(replace(slot, where=where) for slot in got.slots)
        block.head = replace(head, slots=(*head.slots, *more))
        self.facts_of_a_head(block, facts, where)
        return True

    def not_a_head(self, found: tuple[Phrase, ...], where: Where) -> None:
        """A line in column one that opens no block: a fact out of place, or a slip of a word."""
        if self.slips.not_a_remark(where):
            return
        block = self.open.word if self.open else "frame"
        fact, count = find_fact(found[0].words, block)
        first = found[0].items[0].value.text
        if fact is not None and (count > 1 or len(first) > 3 or self.open is not None):
            indented = "  " + where.typed.lstrip()
            edit = Edit("indent it", (LineChange(self.file, where.line, where.typed, indented),))
            fits = self.open is not None and block in fact.blocks
            self.slips.say("not-indented", where, (edit,) if fits else (), word=fact.word)
            self.lost += self.quietly(None, found, where, "")
            return
        if self.slips.unknown_block(found, where) or looks_like_a_head(found):
            self.unread()

    def unread(self) -> None:
        """Open a block whose head means nothing; the slip said last tells of it."""
        slip = len(self.slips.found) - 1
        self.close()
        self.open = _Open(None, None, "", [], slip)

    def read(self, where: Where) -> None:
        """`read NAME`, `read NAME as last year`."""
        text = where.typed.split("(")[0].strip()[len("read") :].strip().rstrip(",")
        history = re.search(r",?\s+as\s+last\s+year$", text)
        name = (text[: history.start()] if history else text).strip().strip("\"'“”")
        if not name:
            self.slips.say("nothing-after", where, word="read", example="read places")
            return
        self.imports.append(Import(name, history is not None, where))

    # -- details --------------------------------------------------------------------------
    def detail(self, found: tuple[Phrase, ...], where: Where, remark: str) -> None:
        """A line that is indented."""
        if self.slips.not_a_remark(where):
            return
        if self.indented_head(found, where, remark):
            return
        if self.open is None:
            self.slips.say("no-block", where, text=where.typed.strip()[:60])
        if self.open is None or self.open.declared is None:
            lost = self.quietly(None, found, where, remark)
            self.lost += lost
            if self.open is not None:
                self.open.facts += lost
            return
        if self.head_goes_on(self.open, found, where):
            return
        for fact in self.facts(self.open.declared, found, where, remark):
            self.keep(self.open, fact)

    def indented_head(self, found: tuple[Phrase, ...], where: Where, remark: str) -> bool:
        """Read a line that opens a block though it is indented, and say so."""
        if not is_a_head(found, self.open.declared if self.open else None):
            return False
        word = found[0].items[0].value.text.lower()
        edit = rewrite(where, where.typed, where.typed.lstrip(), "put it at the margin")
        self.slips.say("indented-head", replace(where, column=1), (edit,), word=word)
        declared = find_block(word)
        alone = declared is not None and declared.word in LINES_ALONE
        around = self.open if alone else None
        if around is not None:
            self.open = None
        self.head(found, where, remark)
        if around is not None:
            # what follows goes on with the block in the midst of which it stands
            self.close()
            self.open = around
        return True

    def keep(self, block: _Open, fact: Fact) -> None:
        """Add a fact to a block, unless it contradicts one already there."""
        word, _ = find_fact(tuple(fact.word.split()), block.word)
        if fact.word not in {"item", "plant"} and not (word is not None and word.repeats):
            for place, before in enumerate(block.facts):
                if before.word != fact.word or not contradict(before, fact):
                    continue
                parted = end_posts(before, fact)
                if parted is None:
                    self.twice(block, before, fact)
                    self.lost.append(fact)
                    return
                block.facts[place], fact = parted
                self.ends_taken(*parted)
        block.facts.append(fact)

    def ends_taken(self, *posts: Fact) -> None:
        """Say which of two lines of posts is read as the end posts."""
        for fact in posts:
            if fact.word == "end posts":
                word = fact.where.typed.split()[0]
                edit = rewrite(fact.where, word, "end posts")
                self.slips.say("which-are-ends", fact.where, (edit,), text=fact.text)

    def twice(self, block: _Open, before: Fact, fact: Fact) -> None:
        """The same fact with two values: say both lines."""
        first, second = before.where, fact.where
        told = {
            "name": block.name or f"the {block.word}",
            "word": fact.word,
            "first": str(first.line),
            "second": str(second.line),
        }
        head = block.head.where.line if block.head else 0
        edits = [
            delete(gone, f"keep line {kept.line}")
            for kept, gone in ((first, second), (second, first))
            if first.line != second.line and gone.line != head
        ]
        self.slips.say("same-fact-twice", second, edits, **told)

    def quietly(
        self, declared: BlockWord | None, found: Sequence[Phrase], where: Where, remark: str
    ) -> list[Fact]:
        """The facts of a line that is only kept, so that nothing is said of it."""
        said = len(self.slips.found)
        facts = self.facts(declared, found, where, remark)
        del self.slips.found[said:]
        return facts

    def facts(
        self, declared: BlockWord | None, found: Sequence[Phrase], where: Where, remark: str
    ) -> list[Fact]:
        """The facts of one detail line: most often one."""
        block = declared.word if declared else ""
        opened = opening(found, block)
        if opened is not None and opened.here:
            return self.fact(opened.fact, opened.count, opened.phrases, where, remark)
        if declared is not None and declared.details == "items":
            return [self.free("item", vocabulary.ITEM, found, where, remark)]
        if declared is not None and declared.details == "plants":
            return [self.free("plant", vocabulary.GROW, found, where, remark)]
        if opened is None:
            self.slips.unknown_fact(found, where, block)
            return []
        places = ", ".join(f"`{word}`" for word in opened.fact.blocks[:4])
        self.slips.say("elsewhere", where, word=opened.fact.word, blocks=places, block=block)
        self.lost += self.quietly(None, found, where, remark)
        return []

    def free(
        self, word: str, shape: str, found: Sequence[Phrase], where: Where, remark: str
    ) -> Fact:
        """A free line of a shed, a yard or a border."""
        for part in found:
            self.slips.doubts(part, where)
        got = match(shape, found)
        # of what lies in a shed any words may be said, but no figure below nothing
        left = [
            one for one in got.leftovers if word == "plant" or one.bad_figure == "below-nothing"
        ]
        block = "border" if word == "plant" else "shed"
        self.slips.leftovers(left, None, got.slots, where, block=block, shape=shape)
        text = ", ".join(part.text for part in found)
        return Fact(word, got.slots, where, text, remark, _whole(got, found))

    def fact(
        self, declared: FactWord, count: int, found: Sequence[Phrase], where: Where, remark: str
    ) -> list[Fact]:
        """A fact, and any further fact that a later phrase of the same line opens."""
        block = self.open.word if self.open and self.open.declared else declared.blocks[0]
        mine, more = _parted(declared, count, found, block)
        further = self.fact(more[0], more[1], more[2], where, "") if more else []
        if "{reason}" in declared.shape:
            mine = reason_whole(declared.shape, mine, where.typed)
        if ":heights}*" in declared.shape:
            mine = heights(mine)
        for part in mine:
            self.slips.doubts(part, where)
        if not mine and declared.must_say:
            example = declared.example.split("\n")[0]
            self.slips.say("nothing-after", where, word=declared.word, example=example)
            return further
        got = match(declared.shape, mine)
        self.slips.leftovers(
            got.leftovers, declared, got.slots, where, block=block, shape=declared.shape
        )
        if mine and "{text}" in declared.shape:
            place = replace(where, column=mine[0].column + mine[0].items[0].at)
            text = mine[0].text[mine[0].items[0].at :]
            self.slips.no_day(text, declared.shape, got.slots, place)
        self.slips.sizes(got.slots, declared, where)
        others = [part.text for part in mine if part.column != found[0].column]
        text = ", ".join([found[0].text, *others])
        return [Fact(declared.word, got.slots, where, text, remark, _whole(got, mine)), *further]

    def close(self) -> None:
        """End the block being read."""
        now, self.open = self.open, None
        if now is None:
            return
        if now.head is not None:
            self.blocks.append(Block(now.head.word, now.name, now.head, tuple(now.facts)))
            return
        # say how many lines wait under the head that could not be read
        lines = len({fact.where.line for fact in now.facts})
        if lines:
            slip = self.slips.found[now.slip]
            said = f"{lines} lines" if lines > 1 else "line"
            self.slips.found[now.slip] = replace(slip, told={**slip.told, "lines": said})


def _whole(got: Match, phrases: Sequence[Phrase]) -> bool:
    """Whether every word of the phrases was understood, and every figure read one way."""
    doubted = any(doubt.slip != "decimal-comma" for part in phrases for doubt in part.doubts)
    return not got.leftovers and not doubted


def _all_of(opened: Opening) -> bool:
    """Whether a phrase that opens a fact is all of that fact."""
    first = opened.phrases[0]
    tail = replace(first, items=first.items[opened.count :])
    return not match(opened.fact.shape, [tail]).leftovers


def _parted(
    declared: FactWord, count: int, found: Sequence[Phrase], block: str
) -> tuple[list[Phrase], tuple[FactWord, int, Sequence[Phrase]] | None]:
    """The phrases of a fact, without its word, and where the next fact of the line begins."""
    rest = replace(found[0], items=found[0].items[count:])
    mine = [rest] if rest.items else []
    for place, part in enumerate(found[1:], start=1):
        other, taken = find_fact(part.words, block)
        opens = other is not None and block in other.blocks and other.word != declared.word
        own = part.words[0] in opening_words(declared.shape) or fits(declared.shape, part)
        if opens and other is not None and not own:
            return mine, (other, taken, found[place:])
        behind = None if own or opens else figure_first((part,), block)
        if behind is not None and behind.fact.word != declared.word and _all_of(behind):
            return mine, (behind.fact, behind.count, (*behind.phrases, *found[place + 1 :]))
        mine.append(part)
    return mine, None
