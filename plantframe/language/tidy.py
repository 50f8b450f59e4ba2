"""The tidier: spacing only. It never changes a word, a figure or a remark, and loses nothing."""

from __future__ import annotations

import re

from plantframe.language.reader import LINE_CAP


def tidy(text: str) -> str:
    """The text with even spacing.

    Two spaces before a fact, none before a head, one after a comma, none at line ends, one
    empty line at most between blocks, a line end at the end of the file. Lines between merge
    marks, and lines too long to read, stay as they are.
    """
    marked = False
    out: list[str] = []
    for line in text.removeprefix("\ufeff").split("\n"):
        line = line.removesuffix("\r")  # noqa: PLW2901 - the line without its ending is the line
        if line.startswith("<<<<<<<"):
            marked = True
        if marked or len(line) > LINE_CAP:
            out.append(line)
        else:
            fresh = _line(line)
            if fresh or (out and out[-1]):
                out.append(fresh)
        if line.startswith(">>>>>>>"):
            marked = False
    while out and not out[-1]:
        out.pop()
    return "\n".join(out) + "\n" if out else ""


# What is kept to the letter: words in double quotes (not inch signs) and remarks in brackets.
_KEPT = re.compile(r'(?<![\d½¼¾⅛⅜⅝⅞])["“][^"”]*["”]|\([^()]*(?:\([^()]*\)[^()]*)*\)?')


def _line(line: str) -> str:
    body = line.strip(" \t\u00a0\x0b\x0c")
    if not body:
        return ""
    indent = "  " if line[0] in " \t\u00a0" else ""
    out = ""
    at = 0
    for kept in _KEPT.finditer(body):
        out += _spaced(body[at : kept.start()]) + kept.group()
        at = kept.end()
    return indent + (out + _spaced(body[at:])).strip()


def _spaced(part: str) -> str:
    part = re.sub(r"[ \t\u00a0]+", lambda run: "\u00a0" if run.group() == "\u00a0" else " ", part)
    part = re.sub(r" +,", ",", part)
    # `2,4 m` and `2x2,8 ft` are left for the gardener to settle
    return re.sub(r",(?=[^\s\d])|(?<!\d),(?=\d)", ", ", part)
