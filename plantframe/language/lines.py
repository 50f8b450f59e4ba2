"""The lines of a file: those nobody can read set apart, the others split into phrases."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.frozen import frozen
from plantframe.language.mistakes import Mistake, Where
from plantframe.language.phrases import parser, phrase

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from lark import Token, Tree

    from plantframe.language.values import Phrase

LINE_CAP = 2_000
FILE_CAP = 1_000_000
PART_CAP = 150  # parts between commas in a line, and words in one part

# `May 18` before a comma and `2027` after it are one date.
_MONTH_DAY = re.compile(
    r"(?i)\b(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\.?\s+\d{1,2}(?:st|nd|rd|th)?$"
)
_YEAR_FIRST = re.compile(r"\s*(?:19|20)\d\d(?![\d/-])")


@frozen
class Line:
    """A head or a detail: its number, its phrases, and its remarks without their brackets."""

    head: bool
    number: int
    phrases: tuple[Phrase, ...]
    remark: str

    @property
    def beyond(self) -> str:
        """What of it is more than anybody types on purpose, "" where nothing is."""
        words = max(len(part.items) for part in self.phrases)
        if len(self.phrases) > PART_CAP:
            return f"{len(self.phrases):,} parts"
        return f"{words:,} words without a comma" if words > PART_CAP else ""


def typed_lines(text: str) -> tuple[str, ...]:
    """The lines as typed, without their endings. Only a line feed ends a line."""
    return tuple(line.rstrip("\r") for line in text.removeprefix("\ufeff").split("\n"))


def readable(lines: Sequence[str], file: str) -> tuple[list[str], list[Mistake]]:
    """The lines with those nobody can read blanked, and a mistake for each."""
    out, mistakes = list(lines), []
    for number, line in enumerate(lines, start=1):
        if len(line) > LINE_CAP:
            told = {"length": f"{len(line):,} characters", "cap": f"{LINE_CAP:,}"}
            mistakes.append(Mistake("line-too-long", Where(file, number, 1, line[:80]), told))
            out[number - 1] = ""
        elif "\ufffd" in line:
            column = line.index("\ufffd") + 1
            told = {"place": str(column)}
            mistakes.append(Mistake("bad-byte", Where(file, number, column, line), told))
            out[number - 1] = ""
    mistakes += _unmerged(lines, out, file)
    return out, mistakes


def _unmerged(lines: Sequence[str], out: list[str], file: str) -> list[Mistake]:
    """Blank what stands between merge marks, and say which lines."""
    mistakes = []

    def say(first: int, last: int) -> None:
        told = {"first": str(first + 1), "last": str(last + 1)}
        where = Where(file, first + 1, 1, lines[first])
        mistakes.append(Mistake("merge-marks", where, told))
        out[first : last + 1] = [""] * (last + 1 - first)

    start: int | None = None
    for place, line in enumerate(lines):
        if line.startswith("<<<<<<<"):
            if start is not None:
                say(start, start)  # never closed: it costs its own line, not the rest of the file
            start = place
        elif line.startswith(">>>>>>>"):
            say(place if start is None else start, place)
            start = None
    if start is not None:
        say(start, start)
    for place, line in enumerate(out):
        if re.fullmatch(r"[=|]{7}(?:\s.*)?", line):
            say(place, place)
    return mistakes


def split(lines: Sequence[str]) -> Iterator[Line]:
    """The heads and details among readable lines; remarks and empty lines are passed over."""
    tree = parser("start").parse("\n" + "\n".join(lines) + "\n")
    for child in tree.children:
        node: Tree[Token] = child  # type: ignore[assignment]
        if node.data == "remark":
            continue
        tokens: list[Token] = node.children  # type: ignore[assignment]
        # one line end was put before the text, so the count is one too high
        number = (tokens[0].line or 1) - 1
        phrases = tuple(phrase(text, column) for text, column in _joined(tokens))
        remark = " ".join(
            str(token).strip(" \t\u00a0,") for token in tokens if token.type == "BRACKET"
        )
        if phrases:
            yield Line(node.data == "head", number, phrases, remark)


def _joined(tokens: Sequence[Token]) -> list[tuple[str, int]]:
    """The phrases with their columns; what a remark or the comma of a date parted is joined.

    A remark between two words of a phrase becomes as many spaces, so that columns stay.
    """
    out: list[tuple[str, int]] = []
    goes_on = False
    for token in tokens:
        text, column = str(token), token.column or 1
        if token.type == "BRACKET":
            if goes_on and not text.endswith(","):
                before, at = out[-1]
                out[-1] = before + " " * len(text), at
            else:
                goes_on = False
            continue
        body = text.removesuffix(",")
        dated = out and _MONTH_DAY.search(out[-1][0].rstrip()) and _YEAR_FIRST.match(body)
        if goes_on and out:
            out[-1] = out[-1][0] + body, out[-1][1]
        elif dated and not goes_on and _gap(out[-1], column):
            before, at = out[-1]
            out[-1] = before + " " * (column - at - len(before)) + body, at
        else:
            out.append((body, column))
        goes_on = not text.endswith(",")
    return [
        (text.strip(), column + len(text) - len(text.lstrip()))
        for text, column in out
        if text.strip()
    ]


def _gap(before: tuple[str, int], column: int) -> bool:
    """Whether the next phrase stands right behind the comma of the one before."""
    text, at = before
    return column == at + len(text) + 1
