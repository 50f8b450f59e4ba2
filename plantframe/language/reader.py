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

from plantframe.frozen import frozen, replace
from plantframe.language import phrases as phrase_reading
from plantframe.language import vocabulary
from plantframe.language.declarations import (
    BlockWord,
    FactWord,
    block_words,
    fact_words,
    find_block,
    find_fact,
)
from plantframe.language.edits import Edit, LineChange
from plantframe.language.mistakes import Mistake, Where
from plantframe.language.shapes import Slot, match, patterns
from plantframe.language.values import Measure, Number, Phrase, Word, plain

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from lark import Token, Tree

LINE_CAP = 2_000
FILE_CAP = 4_000_000


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
        return max([self.where.line, *lines])

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
    """One file read: its blocks, what it brings in, its slips, and its lines as typed."""

    file: str
    lines: tuple[str, ...]
    blocks: tuple[Block, ...]
    imports: tuple[Import, ...]
    mistakes: tuple[Mistake, ...]
    lost: tuple[Fact, ...] = ()  # facts under a head that could not be read: kept, not used


@dataclass(slots=True)
class _Open:
    """The block being read."""

    declared: BlockWord | None
    head: Fact
    name: str
    facts: list[Fact]


def read_text(text: str, file: str) -> Text:
    """Read one file's text.

    text   what the file holds
    file   its name, as messages shall give it
    """
    mistakes: list[Mistake] = []
    lines = tuple(line.rstrip("\r") for line in text.removeprefix("\ufeff").split("\n"))
    if len(text) > FILE_CAP:
        told = {"file": file, "size": f"{len(text):,} characters", "cap": f"{FILE_CAP:,}"}
        return Text(file, lines, (), (), (Mistake("file-too-large", Where(file, 1), told),))
    readable = _readable(lines, file, mistakes)
    reading = _Reading(file, lines, mistakes)
    for kind, number, parts in _split(readable):
        reading.line(kind, number, parts)
    reading.close()
    return Text(
        file,
        lines,
        tuple(reading.blocks),
        tuple(reading.imports),
        tuple(sorted(mistakes, key=lambda slip: (slip.where.line, slip.where.column, slip.name))),
        tuple(reading.lost),
    )


def _readable(lines: tuple[str, ...], file: str, mistakes: list[Mistake]) -> list[str]:
    """The lines with those nobody could read blanked, each said."""
    out = list(lines)
    for place, line in enumerate(lines):
        where = Where(file, place + 1, 1, line[:80])
        if len(line) > LINE_CAP:
            told = {"length": f"{len(line):,}", "cap": f"{LINE_CAP:,}"}
            mistakes.append(Mistake("line-too-long", where, told))
            out[place] = ""
        elif "\ufffd" in line:
            byte = str(line.index("\ufffd") + 1)
            mistakes.append(Mistake("bad-byte", Where(file, place + 1, 1, line), {"byte": byte}))
            out[place] = ""
    _unmerged(lines, out, file, mistakes)
    return out


def _unmerged(lines: tuple[str, ...], out: list[str], file: str, mistakes: list[Mistake]) -> None:
    """Blank what stands between merge marks, and say which lines."""
    start: int | None = None
    for place, line in enumerate(lines):
        if line.startswith("<<<<<<<") and start is None:
            start = place
        elif line.startswith(">>>>>>>") and start is not None:
            told = {"first": str(start + 1), "last": str(place + 1)}
            where = Where(file, start + 1, 1, lines[start])
            mistakes.append(Mistake("merge-marks", where, told))
            out[start : place + 1] = [""] * (place + 1 - start)
            start = None
    if start is not None:
        # an opening mark alone costs its line, not the rest of the file
        told = {"first": str(start + 1), "last": str(start + 1)}
        mistakes.append(Mistake("merge-marks", Where(file, start + 1, 1, lines[start]), told))
        out[start] = ""


def _split(lines: Sequence[str]) -> Iterable[tuple[str, int, list[tuple[str, int, str]]]]:
    """Heads and details: (kind, line number, [(phrase or bracket, column, its text)])."""
    source = "\n" + "\n".join(lines) + "\n"
    tree = phrase_reading.parser("start").parse(source)
    for child in tree.children:
        node: Tree[Token] = child  # type: ignore[assignment]
        if getattr(node, "data", "") not in {"head", "detail"}:
            continue
        parts = []
        number = 0
        for token in node.children:
            # one line end was put before the text, so lark's count is one too high
            number = (token.line or 1) - 1  # type: ignore[union-attr]
            parts.append((token.type, token.column or 1, str(token)))  # type: ignore[union-attr]
        if parts:
            yield str(node.data), number, parts


class _Reading:
    """The state of reading one file, line after line."""

    def __init__(self, file: str, lines: tuple[str, ...], mistakes: list[Mistake]) -> None:
        self.file = file
        self.lines = lines
        self.mistakes = mistakes
        self.blocks: list[Block] = []
        self.imports: list[Import] = []
        self.lost: list[Fact] = []
        self.open: _Open | None = None
        self.stray: list[Fact] | None = None  # details under a head that could not be read
        self.stray_head: tuple[Where, dict[str, str]] | None = None

    # -- lines --------------------------------------------------------------------------
    def line(self, kind: str, number: int, parts: list[tuple[str, int, str]]) -> None:
        typed = self.lines[number - 1]
        found = _phrases(parts)
        remark = " ".join(text.strip() for token, _, text in parts if token == "BRACKET")
        where = Where(self.file, number, found[0].column if found else 1, typed)
        if not found:
            return
        if kind == "detail":
            self.detail(found, where, remark)
        else:
            self.head(found, where, remark)

    def slip(self, slip: str, where: Where, edits: tuple[Edit, ...] = (), /, **told: str) -> None:
        self.mistakes.append(Mistake(slip, where, told, edits))

    def head(self, found: list[Phrase], where: Where, remark: str) -> None:
        first = found[0].words[0] if found[0].items else ""
        if first == "read":
            self.read(found, where)
            return
        declared = find_block(first)
        if declared is None:
            self.not_a_head(found, where, first)
            return
        self.close()
        name, rest = _name(declared, found)
        if declared.named and not name:
            told = {"word": declared.word, "example": declared.example.split("\n")[0]}
            self.slip("no-name", where, **told)
            self.stray, self.stray_head = [], None
            return
        slots, facts, whole = self.head_slots(declared, rest, where)
        text = where.typed.split("(")[0].strip()
        head = Fact(declared.word, slots, where, text, remark, whole)
        self.open = _Open(declared, head, name, facts)

    def head_slots(
        self, declared: BlockWord, rest: list[Phrase], where: Where
    ) -> tuple[tuple[Slot, ...], list[Fact], bool]:
        """The slots of a head, and the facts that stand in it (`built 2024`, `runs …`)."""
        if declared.word in {"log", "note"}:
            slots = tuple(Slot("text", part.text.strip(), part.text, part.column) for part in rest)
            return slots, [], True
        own: list[Phrase] = []
        facts: list[Fact] = []
        for part in rest:
            fact, count = find_fact(part.words, declared.word)
            owned = fact is not None and declared.word in fact.blocks and declared.word != "task"
            # `in Long Bed` and `5 m high` belong to the head; `built 2024` is a fact of its own, and
            # so is `faces east`, which the head would only take for any words at all
            own_words = match(declared.shape, [part], strict=True).slots
            if owned and fact is not None and not own_words:
                facts += self.fact(fact, count, [part], where, "")
            elif owned and fact is not None and match(declared.shape, [part]).leftovers:
                facts += self.fact(fact, count, [part], where, "")
            else:
                own.append(part)
        for part in own:
            self.doubts(part, where)
        got = match(declared.shape, own)
        for left in got.leftovers:
            self.leftover(left.text, left.column, left.missing_unit, where, declared.word)
        return got.slots, facts, not got.leftovers

    def not_a_head(self, found: list[Phrase], where: Where, first: str) -> None:
        """A line in column one that opens no block."""
        fact, count = find_fact(found[0].words, self.open.head.word if self.open else "frame")
        if fact is not None and (count > 1 or len(first) > 3 or self.open is not None):
            indented = "  " + where.typed.lstrip()
            edit = Edit("indent it", (LineChange(self.file, where.line, where.typed, indented),))
            fits = self.open is not None and self.open.head.word in fact.blocks
            self.slip("not-indented", where, (edit,) if fits else (), word=fact.word)
            return
        near = _near(first, block_words(), close=True)
        if near or _looks_like_a_head(found):
            self.close()
            self.stray = []
            self.stray_head = (where, {"word": first, "near": ", ".join(near)})
            edits = tuple(
                Edit(
                    f"write `{word}`",
                    (
                        LineChange(
                            self.file,
                            where.line,
                            where.typed,
                            where.typed.replace(found[0].items[0].value.text, word, 1),
                        ),
                    ),
                )
                for word in near
            )
            self.mistakes.append(Mistake("unknown-block", where, dict(self.stray_head[1]), edits))
            return
        self.slip("unknown-block", where, word=found[0].text[:40].strip(), near="")

    def read(self, found: list[Phrase], where: Where) -> None:
        text = where.typed.split("(")[0].strip()[4:].strip().rstrip(",")
        history = re.search(r"\s+as\s+last\s+year$", text)
        name = text[: history.start()] if history else text
        if not name:
            self.slip("nothing-after", where, word="read", example="read places")
            return
        self.imports.append(Import(name.strip(), history is not None, where))

    def detail(self, found: list[Phrase], where: Where, remark: str) -> None:
        if self.open is None:
            if self.stray is None:
                text = where.typed.strip()
                self.slip("no-block", where, text=text[:60])
                self.lost += self.facts_of(None, found, where, remark, quiet=True)
            else:
                got = self.facts_of(None, found, where, remark, quiet=True)
                self.stray += got
                self.lost += got
            return
        facts = self.facts_of(self.open.declared, found, where, remark)
        for fact in facts:
            self.keep(fact)

    def keep(self, fact: Fact) -> None:
        """Add a fact to the open block, unless it contradicts one already there."""
        assert self.open is not None
        declared = self.open.declared
        word, _ = find_fact(tuple(fact.word.split()), declared.word if declared else "")
        free = fact.word in {"item", "plant"} or (word is not None and word.repeats)
        before = next((old for old in self.open.facts if old.word == fact.word), None)
        if before is not None and not free:
            if _same_values(before, fact):
                return
            told = {
                "name": self.open.name or self.open.head.word,
                "word": fact.word,
                "first": str(before.where.line),
                "second": str(fact.where.line),
            }
            edits = tuple(
                Edit(
                    f"keep line {other.where.line}",
                    (LineChange(self.file, gone.where.line, gone.where.typed, None),),
                )
                for other, gone in ((before, fact), (fact, before))
                if before.where.line != fact.where.line
                and gone.where.line != self.open.head.where.line
            )
            self.mistakes.append(Mistake("same-fact-twice", fact.where, told, edits))
            return
        self.open.facts.append(fact)

    # -- facts --------------------------------------------------------------------------
    def facts_of(
        self,
        declared: BlockWord | None,
        found: list[Phrase],
        where: Where,
        remark: str,
        *,
        quiet: bool = False,
    ) -> list[Fact]:
        """The facts of one detail line. `quiet`: its block is unread, so nothing is said."""
        block = declared.word if declared else ""
        fact, count = find_fact(found[0].words, block)
        always = fact is not None and fact.word == "ok" and block in fact.blocks
        if declared is not None and declared.details == "items" and not always:
            if fact is None or block not in fact.blocks:
                return [self.free("item", vocabulary.ITEM, found, where, remark)]
        if fact is None or (block and block not in fact.blocks):
            fronted = _count_first(found, block)
            if fronted is not None:
                fact, count, found = fronted
        if declared is not None and declared.details == "plants":
            if fact is None or block not in fact.blocks:
                return [self.free("plant", vocabulary.GROW, found, where, remark)]
        held = len(self.mistakes)
        if fact is None:
            self.unknown(found, where, block)
            facts = []
        elif block and block not in fact.blocks:
            places = ", ".join(f"`{word}`" for word in fact.blocks[:4])
            self.slip("elsewhere", where, word=fact.word, blocks=places, block=block)
            facts = []
        else:
            facts = self.fact(fact, count, found, where, remark)
        if quiet:
            del self.mistakes[held:]
        return facts

    def free(self, word: str, shape: str, found: list[Phrase], where: Where, remark: str) -> Fact:
        """A free line of a shed, a yard or a border."""
        for part in found:
            self.doubts(part, where)
        got = match(shape, found)
        if word == "plant":
            for left in got.leftovers:
                self.leftover(left.text, left.column, left.missing_unit, where, "border")
        text = ", ".join(part.text.strip().rstrip(",") for part in found)
        return Fact(word, got.slots, where, text, remark, not got.leftovers)

    def fact(
        self, declared: FactWord, count: int, found: list[Phrase], where: Where, remark: str
    ) -> list[Fact]:
        """A fact, and any further fact that a later phrase of the same line opens."""
        first = found[0]
        rest = replace(first, items=first.items[count:])
        block = self.open.declared.word if self.open and self.open.declared else declared.blocks[0]
        mine: list[Phrase] = [rest] if rest.items else []
        more: list[Fact] = []
        for place, part in enumerate(found[1:], start=1):
            other, taken = find_fact(part.words, block)
            opens = other is not None and block in other.blocks and other.word != declared.word
            if opens and other is not None and not _fits(declared.shape, part):
                more = self.fact(other, taken, found[place:], where, "")
                break
            mine.append(part)
        for part in mine:
            self.doubts(part, where)
        got = match(declared.shape, mine)
        if not mine and _must_say(declared):
            told = {"word": declared.word, "example": declared.example.split("\n")[0]}
            self.slip("nothing-after", where, **told)
            return more
        doubted = any(slip != "decimal-comma" for part in mine for slip, _, _ in part.doubts)
        whole = not got.leftovers and not doubted
        for left in got.leftovers:
            if _empty(declared):
                continue
            if not self.which_length(left.text, left.column, declared, got.slots, where):
                self.leftover(left.text, left.column, left.missing_unit, where, block)
        self.sizes(declared.word, got.slots, where)
        text = ", ".join(part.text.strip().rstrip(",").strip() for part in [first, *mine[1:]])
        return [Fact(declared.word, got.slots, where, text, remark, whole), *more]

    # -- what is said ---------------------------------------------------------------------
    def unknown(self, found: list[Phrase], where: Where, block: str) -> None:
        text = found[0].text.strip().rstrip(",")
        word = found[0].words[0] if found[0].items else ""
        near = _near(word, fact_words(block) if block else (), close=False)
        typed = found[0].items[0].value.text if found[0].items else ""
        edits = tuple(
            Edit(
                f"write `{other}`",
                (
                    LineChange(
                        self.file,
                        where.line,
                        where.typed,
                        where.typed.replace(typed, other, 1),
                    ),
                ),
            )
            for other in near[:2]
            if typed
        )
        self.slip("unknown-word", where, edits, text=text[:60], near=", ".join(near))

    def leftover(self, text: str, column: int, missing: str, where: Where, block: str) -> None:
        place = replace(where, column=column)
        if missing:
            self.no_unit(text, place)
            return
        if re.fullmatch(r"\d+\s*x\s+\d+(?:\.\d+)?x\d+", text):
            count, _, size = text.partition(" x ")
            told = {
                "text": text,
                "readings": f"{count} of {size}, or a stick of three sizes",
                "write": f"{count} of {size}",
            }
            new = where.typed.replace(text, f"{count} of {size}", 1)
            edit = Edit(
                f"{count} of {size}", (LineChange(self.file, where.line, where.typed, new),)
            )
            self.slip("count-or-size", place, (edit,), **told)
            return
        if match_ := re.fullmatch(r"(\d+) in ([A-Z].*)", text):
            told = {"text": text, "figure": match_[1], "name": match_[2]}
            self.slip("inches-or-in", place, **told)
            return
        word = text.split()[0].lower()
        near = _near(word, fact_words(block), close=True)
        self.slip("unknown-word", place, text=text[:60], near=", ".join(near))

    def which_length(
        self, text: str, column: int, declared: FactWord, filled: tuple[Slot, ...], where: Where
    ) -> bool:
        """Ask what a length without a word is for, where the fact has words for lengths."""
        items = phrase_reading.phrase(text, column).items
        if len(items) != 1 or not isinstance(items[0].value, Measure):
            return False
        names = {slot.name for slot in filled}
        words = [
            piece.choices[0][0]
            for pattern in patterns(declared.shape)
            if pattern.slots
            and pattern.slots[0] not in names
            and pattern.pieces[0].type == "length"
            for piece in pattern.pieces[1:2]
            if not piece.type and not piece.optional and len(piece.choices[0]) == 1
        ]
        if not words:
            return False
        words = words[:3]
        choices = ", ".join(f"`{text} {word}`" for word in words[:-1])
        choices = f"{choices} or `{text} {words[-1]}`" if choices else f"`{text} {words[0]}`"
        edits = tuple(self.change(where, text, f"{text} {word}") for word in words)
        place = replace(where, column=column)
        self.slip("which-length", place, edits, text=text, choices=choices)
        return True

    def no_unit(self, text: str, where: Where) -> None:
        figure = re.search(r"\d+(?:[.,]\d+)?(?:[ -]\d/\d|[½¼¾])?", text)
        number = figure.group() if figure else text
        imperial, metric = self.units_here(where.line)
        value = phrase_reading.figure(number) or 0.0
        if imperial and not metric:
            units, likely = "in or ft", "inches" if value > 8 else "feet"
            said = f"The other lengths here are in feet and inches, so {likely} is likely."
            choices = [("in", "inches"), ("ft", "feet")]
        elif metric and not imperial:
            likely = "mm" if value >= 400 else "cm" if value > 8 else "m"
            units = "mm, cm or m"
            said = f"The other lengths here are metric, so {likely} is likely."
            choices = [(likely, likely)]
        else:
            units, said, choices = "in or cm", "", [("in", "inches"), ("cm", "cm")]
        edits = tuple(
            Edit(
                f"{number} {unit}",
                (
                    LineChange(
                        self.file,
                        where.line,
                        where.typed,
                        re.sub(
                            rf"(?<![\d.]){re.escape(number)}(?![\d.])",
                            f"{number} {unit}",
                            where.typed,
                            count=1,
                        ),
                    ),
                ),
            )
            for unit, _ in choices
        )
        self.slip("no-unit", where, edits, figure=number, units=units, likely=said)

    def units_here(self, line: int) -> tuple[bool, bool]:
        """Are the other lengths of this block imperial, metric?"""
        text = self.lines[line - 1]
        back = line - 1
        while back > 0 and self.lines[back - 1][:1] in {" ", "\t", "\u00a0"}:
            back -= 1
            text += "\n" + self.lines[back]
        if back > 0:
            text += "\n" + self.lines[back - 1]
        imperial = bool(re.search(r"\d\s?(?:ft|feet|foot|in\b|inch|['\"′″])", text))
        metric = bool(re.search(r"\d\s?(?:mm|cm|m)\b", text))
        if not imperial and not metric:
            whole = "\n".join(self.lines)
            imperial = bool(re.search(r"\d\s?(?:ft|feet)\b", whole))
            metric = bool(re.search(r"\d\s?(?:mm|cm|m)\b", whole))
        return imperial, metric

    def doubts(self, part: Phrase, where: Where) -> None:
        for slip, at, text in part.doubts:
            place = replace(where, column=part.column + at)
            if slip == "decimal-comma":
                if not any(old.name == slip for old in self.mistakes):
                    self.slip(slip, place, text=text, read=text.replace(",", "."))
            elif slip == "two-readings":
                readings, edits = self.readings(text, where)
                self.slip(slip, place, edits, text=text, readings=readings)
            elif slip == "feet-and-what":
                feet, _, rest = text.rpartition(" ")
                readings = f"{feet} {rest} in, or {feet} and {rest} of something"
                edit = self.change(where, text, f"{text} in")
                self.slip("two-readings", place, (edit,), text=text, readings=readings)

    def readings(self, text: str, where: Where) -> tuple[str, tuple[Edit, ...]]:
        if "x" in text:
            apart = text.replace(",", ", ", 1)
            point = text.replace(",", ".", 1)
            return f"`{apart}` or `{point}`", (self.change(where, text, apart),)
        number, _, unit = text.partition(" ")
        whole = re.sub(r"[.,](?=\d{3})", "", number)
        point = number.replace(",", ".").rstrip("0").rstrip(".")
        pair = [f"{whole} {unit}".strip(), f"{point} {unit}".strip()]
        if unit == "m":
            pair = [f"{point} m", f"{whole} m"]
        edits = tuple(self.change(where, text, other) for other in pair)
        return f"`{pair[0]}` or `{pair[1]}`", edits

    def change(self, where: Where, old: str, new: str) -> Edit:
        line = where.typed.replace(old, new, 1)
        return Edit(f"write `{new}`", (LineChange(self.file, where.line, where.typed, line),))

    def sizes(self, word: str, slots: tuple[Slot, ...], where: Where) -> None:
        """Ask about lengths no garden has."""
        for slot in slots:
            value = slot.value
            if getattr(value, "length_m", None):
                told = {"text": slot.text, "read": _third(slot.text)}
                if not any(old.name == "third-is-length" for old in self.mistakes):
                    self.slip("third-is-length", replace(where, column=slot.column), **told)
            if not isinstance(value, Measure) or value.dimension != "length":
                continue
            name = word if slot.name == "length" and word in _USUAL else slot.name
            low, high, usual = _USUAL.get(name, (0.0, 200.0, "less than 200 m"))
            if not low <= value.value <= high:
                told = {"what": name, "text": slot.text, "usual": usual}
                self.slip("unlikely-size", replace(where, column=slot.column), **told)

    def close(self) -> None:
        """End the block being read."""
        if self.open is not None:
            head = self.open.head
            self.blocks.append(Block(head.word, self.open.name, head, tuple(self.open.facts)))
        self.open = None
        if self.stray and self.stray_head is not None:
            # say how many lines wait under the head that could not be read
            where, told = self.stray_head
            lines = len({fact.where.line for fact in self.stray})
            said = f"{lines} lines" if lines > 1 else "line"
            for place, slip in enumerate(self.mistakes):
                if slip.name == "unknown-block" and slip.where == where:
                    self.mistakes[place] = replace(slip, told={**told, "lines": said})
        self.stray, self.stray_head = None, None


# Lengths outside these are asked about, not refused: (least, most, what is usual).
_USUAL = {
    "length": (0.03, 15.0, "10 cm to 8 m (4 in to 26 ft)"),
    "down": (0.02, 3.0, "15 cm to 1.2 m (6 in to 4 ft)"),
    "up": (0.05, 8.0, "30 cm to 4 m (1 to 13 ft)"),
    "mesh": (0.001, 0.5, "5 mm to 20 cm"),
    "apart": (0.01, 12.0, "2 cm to 4 m"),
    "reach": (1.2, 3.0, "1.6 to 2.4 m"),
    # facts that are one length, and a small one
    "gap": (0.005, 1.0, "5 to 20 cm"),
    "hooks": (0.01, 1.0, "10 to 20 cm"),
    "kerf": (0.0005, 0.02, "1 to 8 mm"),
    "overhang": (0.0, 2.0, "5 to 20 cm"),
    "pins": (0.03, 0.4, "10 to 15 cm"),
    "screws": (0.01, 0.4, "3 to 15 cm"),
}


def _third(text: str) -> str:
    sides = text.split("x")
    return f"{sides[0]}x{sides[1]}, {sides[2]} ft long"


def _empty(declared: FactWord) -> bool:
    return "{text}" in declared.shape


def _must_say(declared: FactWord) -> bool:
    """A fact that says nothing by its word alone (`dog` and `own design` do)."""
    return declared.word in {"grow", "had", "bays", "posts", "ready by", "take down", "person"}


def _fits(shape: str, part: Phrase) -> bool:
    """Every word of the phrase is understood by the shape, and not by a slot that takes any."""
    got = match(shape, [part], strict=True)
    return bool(got.slots) and not got.leftovers


def _same_values(one: Fact, other: Fact) -> bool:
    return [(slot.name, slot.value) for slot in one.slots] == [
        (slot.name, slot.value) for slot in other.slots
    ] and one.text == other.text


def _count_first(found: list[Phrase], block: str) -> tuple[FactWord, int, list[Phrase]] | None:
    """`6 poles, 8 ft`: a figure in front of a fact word."""
    first = found[0]
    if len(first.items) < 2 or not isinstance(first.items[0].value, Number):
        return None
    fact, count = find_fact(first.words[1:], block)
    if fact is None or (block and block not in fact.blocks):
        return None
    items = (*first.items[1 : 1 + count], first.items[0], *first.items[1 + count :])
    return fact, count, [replace(first, items=items), *found[1:]]


def _looks_like_a_head(found: list[Phrase]) -> bool:
    """A word and then a name with a capital, and more after a comma: `fram Bean Net, net frame`."""
    items = found[0].items
    return (
        len(found) > 1
        and len(items) > 1
        and isinstance(items[0].value, Word)
        and items[0].value.text.isalpha()
        and items[1].value.text[:1].isupper()
    )


def _phrases(parts: list[tuple[str, int, str]]) -> list[Phrase]:
    """The phrases of a line; a remark between two of them is left out."""
    out = []
    for kind, column, text in parts:
        if kind != "PHRASE":
            continue
        body = text.removesuffix(",") if text != "," else ""
        lead = len(body) - len(body.lstrip())
        stripped = body.strip()
        if stripped:
            out.append(phrase_reading.phrase(stripped, column + lead))
    return out


def _name(declared: BlockWord, found: list[Phrase]) -> tuple[str, list[Phrase]]:
    """The block's name and the phrases after it."""
    first = found[0]
    start = first.items[0].end
    rest_text = first.text[start:].strip()
    rest = replace(first, items=first.items[1:])
    if declared.word in {"log", "note"}:
        column = first.column + first.text.find(rest_text, start) if rest_text else first.column
        opened = [Phrase(rest_text, column, first.items[1:])] if rest_text else []
        return "", [*opened, *found[1:]]
    if declared.named:
        return rest_text.rstrip(":").strip(), found[1:]
    if declared.word in {"shed", "yard", "house"}:
        # these may go without a name; a place is no name
        got = match(declared.shape, [rest]) if rest.items else None
        if got is not None and got.slots and not got.leftovers:
            return "", [rest, *found[1:]]
        return rest_text, found[1:]
    return "", [*([rest] if rest.items else []), *found[1:]]


@lru_cache(maxsize=4096)
def _near_cached(word: str, words: tuple[str, ...], cutoff: float) -> tuple[str, ...]:
    import difflib

    return tuple(difflib.get_close_matches(word, words, n=4, cutoff=cutoff))


def nearest(name: str, among: Iterable[str]) -> tuple[str, ...]:
    """At most four of the names that are near this one, whatever their capitals."""
    by_lower = {other.lower(): other for other in among}
    found = _near_cached(name.lower(), tuple(by_lower), 0.6)
    return tuple(by_lower[other] for other in found)


def _near(word: str, words: Iterable[str], *, close: bool) -> tuple[str, ...]:
    """At most four of the words that are near this one."""
    if len(word) < 2 or plain(Word(word)) != word.lower():
        return ()
    return _near_cached(word, tuple(words), 0.75 if close else 0.6)
