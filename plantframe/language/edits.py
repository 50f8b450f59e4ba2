"""Edits: changes to lines of a plan's files. The only form in which help is ever offered."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from plantframe.language.mistakes import Where


@frozen
class LineChange:
    """One line replaced, inserted or deleted.

    file   the file as the plan names it
    line   its number, from 1, in the text before any change of the same edit; 0 is before line 1
    old    the line as it stands; None inserts after `line`
    new    the line to be; None deletes it
    """

    file: str
    line: int
    old: str | None
    new: str | None


@frozen
class Edit:
    """Line changes that belong together, and the words that say what they do."""

    says: str
    changes: tuple[LineChange, ...]


class EditClash(ValueError):  # noqa: N818 - two versions of a line that clash
    """The text is no longer what the edit was written for."""


def rewrite(where: Where, old: str, new: str, says: str = "") -> Edit:
    """An edit of one line: the words `old`, from the place named on, become `new`."""
    place = where.typed.find(old, max(0, where.column - 1))
    if place < 0:
        place = where.typed.find(old)
    line = where.typed if place < 0 else where.typed[:place] + new + where.typed[place + len(old) :]
    return Edit(says or f"write `{new}`", (LineChange(where.file, where.line, where.typed, line),))


def useful(edits: Iterable[Edit]) -> tuple[Edit, ...]:
    """The edits that change something: words that a remark parts cannot be rewritten."""
    return tuple(edit for edit in edits if any(change.old != change.new for change in edit.changes))


def lengthen(where: Where, more: str, says: str = "") -> Edit:
    """An edit that adds words at the end of a line, before its remark."""
    body = where.typed.rstrip()
    remark = body.find("(") if body.endswith(")") else -1
    line = body + more if remark < 1 else f"{body[:remark].rstrip()}{more} {body[remark:]}"
    change = LineChange(where.file, where.line, where.typed, line)
    return Edit(says or f"add `{more.strip(', ')}`", (change,))


def a_line_each(where: Where, left: str, more: str) -> Edit:
    """An edit that parts two things in a line: it keeps `left`, and `more` is a line after it."""
    kept = LineChange(where.file, where.line, where.typed, left)
    return Edit("a line for each", (kept, LineChange(where.file, where.line, None, more)))


def delete(where: Where, says: str) -> Edit:
    """An edit that takes a line out."""
    return Edit(says, (LineChange(where.file, where.line, where.typed, None),))


def apply(edit: Edit, texts: Mapping[str, str]) -> dict[str, str]:
    """The texts with the edit made.

    texts   file name -> text
    Raises EditClash where a line is not the one the edit names.
    """
    out = dict(texts)
    for file in {change.file for change in edit.changes}:
        if file not in out:
            msg = f"{file} is not one of the plan's files."
            raise EditClash(msg)
        mark = "\ufeff" * out[file].startswith("\ufeff")
        lines = out[file].removeprefix(mark).split("\n")
        ending = "\r" if lines[0].endswith("\r") else ""
        changes = [change for change in edit.changes if change.file == file]
        # from the last line up, so that numbers before a change stay what they were;
        # of several insertions after one line the first named comes out first
        order = sorted(enumerate(changes), key=lambda pair: (pair[1].line, pair[0]), reverse=True)
        for _, change in order:
            _make(change, lines, ending)
        out[file] = mark + "\n".join(lines)
    return out


def _make(change: LineChange, lines: list[str], ending: str) -> None:
    if change.old is None:
        if not 0 <= change.line <= len(lines):
            msg = f"{change.file} has no line {change.line}."
            raise EditClash(msg)
        if change.new is not None:
            lines.insert(change.line, change.new + ending)
        return
    if not 1 <= change.line <= len(lines) or lines[change.line - 1].rstrip("\r") != change.old:
        msg = f"line {change.line} of {change.file} is no longer “{change.old}”."
        raise EditClash(msg)
    if change.new is None:
        del lines[change.line - 1]
    else:
        lines[change.line - 1] = change.new + ending
