"""Text on paper: what cannot be printed is taken out, what has a meaning to a page is spelt out.

Names and remarks come from plans as somebody typed them; every one of them goes through here.
"""

from __future__ import annotations

import html
import re
import unicodedata
from typing import Final

# Joiners without which some scripts cannot be written.
JOINERS: Final = frozenset("\u200c\u200d")
UNPRINTABLE: Final = frozenset({"Cc", "Cf", "Cs", "Co", "Cn"})

# Widths of letters in shares of their size, in a broad sans serif (measured, DejaVu Sans);
# narrower faces leave room over.
WIDTHS_EM: Final = {
    0.3: "ijl'IJ|",
    0.35: " .,:;/f·’‘-",
    0.4: "t()[]!r",
    0.53: 'sz?“”"–°',
    0.6: "cLkFvxyPaoTYeé",
    0.64: "bdghnpquES0123456789",
    0.72: "KAVBRXZCU",
    0.8: "HNDGOQw&▲×",
    1.0: "mMW½¼¾⅛⅜⅝⅞—…■",
}
WIDTH_OF: Final = {letter: width for width, letters in WIDTHS_EM.items() for letter in letters}
USUAL_EM, CAPITAL_EM, WIDEST_EM = 0.64, 0.75, 1.05
# `2.4 m`, `38 × 38 mm`, `6 ft 6 in`: read as one.
_TOGETHER: Final = re.compile(
    r"\d[^\s,;]*(?: [×x] \d[^\s,;]*)*(?: (?:mm|cm|m|ft|in|kg|lb)\b(?: \d[^\s,;]* in\b)?)\S*|\S+"
)
BOLD: Final = 1.14  # how much wider bold letters are


def plain(text: object) -> str:
    """Text in one line, without what no printer has a letter for: control and direction marks."""
    kept = (
        letter if unicodedata.category(letter) not in UNPRINTABLE or letter in JOINERS else " "
        for letter in str(text)
    )
    return " ".join("".join(kept).split())


def escaped(text: object) -> str:
    """Text as it stands in a page or a drawing, whatever signs are in it."""
    return html.escape(plain(text), quote=True)


def sentence(text: str) -> str:
    """With a capital at the start, and no stop at the end."""
    text = plain(text).rstrip(".")
    return f"{text[:1].upper()}{text[1:]}"


def width_em(text: str) -> float:
    """Width of a line as a multiple of the size of its letters; rather more than less."""
    return sum(_letter_em(letter) for letter in text)


def _letter_em(letter: str) -> float:
    if letter in WIDTH_OF:
        return WIDTH_OF[letter]
    if ord(letter) > 0x2E80:  # scripts whose signs are as broad as they are high
        return WIDEST_EM
    return CAPITAL_EM if letter.isupper() else USUAL_EM


def folded(text: str, room_em: float) -> list[str]:
    """A text in lines of at most so many letter heights; a word too long for one is cut.

    A figure stays with its unit, and the sides of a section with each other.
    """
    lines: list[str] = []
    line = ""
    for word in _words(text, room_em):
        longer = f"{line} {word}" if line else word
        if width_em(longer) <= room_em:
            line = longer
            continue
        if line:
            lines.append(line)
        line = word
        while width_em(line) > room_em and len(line) > 1:
            take = _fitting(line, room_em)
            lines.append(line[:take])
            line = line[take:]
    return [*lines, line] if line or not lines else lines


def _words(text: str, room_em: float) -> list[str]:
    """The words of a text; a figure and its unit are one where they fit in a line."""
    out: list[str] = []
    for word in _TOGETHER.findall(text):
        out += [word] if width_em(word) <= room_em else word.split()
    return out


def _fitting(word: str, room_em: float) -> int:
    """How many letters of a word fit; at least one."""
    used = 0.0
    for place, letter in enumerate(word):
        used += _letter_em(letter)
        if used > room_em:
            return max(place, 1)
    return len(word)
