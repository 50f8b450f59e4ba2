"""The page of the language: how a plan is written, then every block and fact as declared.

`python -m plantframe.language.page` writes grammar/README.md anew.
"""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING

from plantframe.language.declarations import language
from plantframe.language.phrases import grammar_file
from plantframe.language.prose import PROSE
from plantframe.language.shapes import patterns
from plantframe.language.vocabulary import ITEM

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

    from plantframe.language.declarations import BlockWord, FactWord
    from plantframe.language.shapes import Pattern, Piece

# What stands in a slot, in a gardener's words.
SLOTS = {
    "count": "how many",
    "number": "a figure",
    "year": "a year",
    "season": "a season (2026-27)",
    "length": "a length",
    "lengths": "a length, or from one to another",
    "section": "a thickness (2x4, 45x95 mm, 75 mm round)",
    "cut": "a thickness (2x4, 45x95 mm, 75 mm round)",
    "size": "a size (6 ft x 16 ft)",
    "date": "a date",
    "dates": "a date, or from one to another",
    "hours": "hours",
    "weekday": "a day of the week",
    "direction": "a compass direction",
    "facing": "south facing",
    "line": "north-south or east-west",
    "degrees": "degrees",
    "spot": "a place",
    "place": "a place",
    "weight": "a weight",
    "weights": "a weight, or from one to another",
    "years": "so many years",
    "whiles": "so many days, weeks, months or years, or from one to another",
    "warmth": "a temperature",
    "pull": "a pull (300 N, 70 lb)",
    "gauge": "a gauge",
    "speed": "a speed",
    "volume": "a volume (40 l)",
    "nail": "a nail size (20d)",
    "money": "a price",
    "cultivar": "a cultivar in quotes",
    "reason": "why",
    "plant": "a plant",
    "kind": "a kind",
    "stuff": "what it is, or of what",
    "name": "a name",
    "words": "words",
    "text": "anything in your own words",
    "rule": "a warning's name",
    "job": "a job, in the words of its step",
    "person": "a name",
}


def page() -> str:
    """The whole page, as Markdown."""
    return "\n".join(_page()) + "\n"


def _page() -> Iterator[str]:
    yield from PROSE.strip("\n").split("\n")
    yield ""
    yield "## Every block"
    yield ""
    yield "What may begin a line in column one. In italics what you fill in; a stroke is an *or*."
    for block in language().blocks:
        yield from _block(block)
    topic = ""
    for fact in language().facts:
        if fact.topic != topic:
            topic = fact.topic
            yield ""
            yield f"## {topic}"
        yield from _fact(fact)


def _block(block: BlockWord) -> Iterator[str]:
    yield ""
    yield f"### {block.word}"
    yield ""
    yield block.help
    yield ""
    name = "*name*, " if block.named else ""
    comma = "" if block.named else ", "
    yield f"- written: **{block.word}**{comma or ' '}{name}then any of: {written(block.shape)}"
    if block.also:
        yield f"- also: {', '.join(block.also)}"
    if block.details == "items":
        yield f"- a line under it: any of {written(ITEM)}"
    if block.details == "plants":
        yield "- a line under it may name a plant, and go on as after `grow`"
    yield from _example(block.example)


def _fact(fact: FactWord) -> Iterator[str]:
    yield ""
    yield f"### {fact.word}"
    yield ""
    yield fact.help
    yield ""
    yield f"- written: **{fact.word}**, then any of: {written(fact.shape)}"
    if fact.also:
        yield f"- also: {', '.join(fact.also)}"
    yield f"- under: {', '.join(fact.blocks)}"
    if fact.repeats:
        yield "- may come several times in one block"
    yield from _example(fact.example)


def _example(example: str) -> Iterator[str]:
    yield ""
    yield "```"
    yield from example.split("\n")
    yield "```"


def written(shape: str) -> str:
    """A shape in plain words: what is filled in is in italics."""
    return "; ".join(dict.fromkeys(_pattern(pattern) for pattern in patterns(shape)))


def _pattern(pattern: Pattern) -> str:
    words = " ".join(_piece(piece) for piece in pattern.pieces)
    several = pattern.repeats and pattern.pieces[0].type != "text"
    return f"{words} (several)" if several else words


def _piece(piece: Piece) -> str:
    if piece.type == "choice":
        shown = " / ".join(" ".join(choice) for choice in piece.choices)
    elif piece.type:
        shown = f"*{SLOTS[piece.type]}*"
    else:
        typed = [" ".join(choice) for choice in piece.choices if choice != ("@",)]
        shown = " / ".join(dict.fromkeys([piece.word, *typed]))
    return f"({shown})" if piece.optional else shown


def page_file() -> Path:
    """Where the page stands."""
    return grammar_file().with_name("README.md")


def main() -> int:
    """Write the page."""
    page_file().write_text(page(), encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
