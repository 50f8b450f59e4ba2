"""Shapes: how a fact is written, compiled from the way its line is written.

A shape is a list of patterns between commas, in any order: `{count} of?, {section},
{length:down} down/deep`. Braces hold a slot, `{type}` or `{type:name}`; a bare word must stand
there (`down/deep` is either, `of?` may be left out); a pattern that ends in `*` may come again.
`{flat|on edge:lie}` takes one of the words given. Every slot knows its dimension, so a phrase
finds its pattern by what is in it and not by where it stands.
"""

from __future__ import annotations

import re
from functools import cache
from typing import TYPE_CHECKING

from plantframe.frozen import frozen
from plantframe.language import slots

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.language.mistakes import Where


# Other ways to write a word of a shape, wherever it stands: `6 off 2x2`, `5 ft tall`.
_ALSO = {
    "of": ("@", "off", "no", "nr", "no."),
    "high": ("tall",),
    "wide": ("in_width",),
    "long": ("in_length",),
}

_BARE = frozenset({"length", "lengths", "count"})

Choices = tuple[tuple[str, ...], ...]


@frozen
class Piece:
    """One place in a pattern: a slot (`type` given) or words that must stand there.

    choices   the words that may stand there; `word` the one to be offered
    tried     the same, the longest first
    """

    type: str = ""
    name: str = ""
    choices: Choices = ()
    optional: bool = False
    word: str = ""
    tried: Choices = ()


@frozen
class Pattern:
    """A run of pieces, and whether it may come more than once in a fact.

    ends   for each piece, the words at which a run of words standing there ends
    """

    pieces: tuple[Piece, ...]
    repeats: bool
    text: str
    ends: tuple[slots.Stops, ...] = ()

    @property
    def literals(self) -> int:
        """How many words must stand in it: the more, the surer the match."""
        return sum(1 for piece in self.pieces if not piece.type and not piece.optional)

    @property
    def needed(self) -> int:
        """How many of its pieces cannot be left out."""
        return sum(1 for piece in self.pieces if not piece.optional)

    @property
    def slots(self) -> tuple[str, ...]:
        """The names of its slots."""
        return tuple(piece.name for piece in self.pieces if piece.type)

    @property
    def must_fill(self) -> frozenset[str]:
        """The slots it cannot do without."""
        return frozenset(piece.name for piece in self.pieces if piece.type and not piece.optional)

    @property
    def greedy(self) -> bool:
        """Holds a slot that takes any run of words, so it is tried after the others."""
        return any(piece.type in slots.RUNS for piece in self.pieces)

    @property
    def is_bare(self) -> bool:
        """A measure or a count without a word that says what it is for."""
        return not self.literals and self.pieces[0].type in _BARE

    @property
    def takes_stuff(self) -> bool:
        """Takes words of any kind, such as the name of a wood."""
        return self.pieces[0].type == "stuff"

    @property
    def catches_all(self) -> bool:
        """Takes whatever stands there, so that it says nothing of what was meant."""
        return self.pieces[0].type in {"text", "name", "stuff", "words"}


@frozen
class Slot:
    """A slot filled: its value, and where in the line it stands (column from 1).

    where   the line, where a head goes on in a line of its own; None in the fact's own line
    """

    name: str
    value: object
    text: str
    column: int
    where: Where | None = None


@frozen
class Leftover:
    """Words of a phrase that no pattern took.

    missing_unit   what a figure without a unit measures: length, hours …, or ""
    missing_day    a date was waited for
    bad_figure     how a figure is typed that is none: below-nothing, run-together, or ""
    """

    text: str
    column: int
    missing_unit: str = ""
    missing_day: bool = False
    bad_figure: str = ""


@frozen
class Match:
    """What a fact's phrases gave: the slots in the order typed, and what was left over."""

    slots: tuple[Slot, ...]
    leftovers: tuple[Leftover, ...]


@cache
def patterns(shape: str) -> tuple[Pattern, ...]:
    """The patterns of a shape as written."""
    parts = [part.strip() for part in re.split(r",\s*(?![^{]*\})", shape)]
    plain_ones = [_pattern(part) for part in parts if part]
    return tuple(
        Pattern(
            one.pieces,
            one.repeats,
            one.text,
            tuple(_ends(one, place, plain_ones) for place in range(len(one.pieces))),
        )
        for one in plain_ones
    )


def _pattern(text: str) -> Pattern:
    pieces = tuple(_piece(token) for token in re.findall(r"\{[^}]*\}\??|\S+", text.rstrip("*")))
    free = [piece.type for piece in pieces] == ["text"]  # words may hold commas
    return Pattern(pieces, text.endswith("*") or free, text)


def _piece(token: str) -> Piece:
    optional = token.endswith("?")
    if token.startswith("{"):
        kind, _, name = token.rstrip("?")[1:-1].partition(":")
        if kind in slots.TYPES:
            return Piece(kind, name or kind, (), optional)
        # a word that is no type stands for itself: `{none:none}`
        choices = tuple(tuple(choice.split()) for choice in kind.split("|"))
        return Piece("choice", name or "kind", choices, optional, tried=_longest_first(choices))
    words = token.replace("?", "").split("/")
    words += [also for word, more in _ALSO.items() if word in words for also in more]
    choices = tuple(tuple(word.split("_")) for word in words)
    shown = words[0].replace("_", " ")
    return Piece("", "", choices, optional, shown, _longest_first(choices))


def _longest_first(choices: Choices) -> Choices:
    return tuple(sorted(choices, key=len, reverse=True))


def _ends(pattern: Pattern, place: int, every: Sequence[Pattern]) -> slots.Stops:
    """The words at which a run of words ends: what follows in its pattern, or opens another."""
    ends: set[tuple[str, ...]] = set()
    for piece in pattern.pieces[place + 1 :]:
        if not piece.type:
            ends.update(piece.choices)
            if not piece.optional:
                break
    for other in every:
        first = other.pieces[0]
        if other is not pattern and not first.type:
            ends.update(first.choices)
    return frozenset(ends)


@cache
def ordered(shape: str, strict: bool) -> tuple[Pattern, ...]:  # noqa: FBT001 - part of the key
    """Surest first: patterns with words before bare ones, runs of words last."""
    found = sorted(
        patterns(shape), key=lambda pattern: (pattern.greedy, -pattern.literals, -pattern.needed)
    )
    return tuple(pattern for pattern in found if not (strict and pattern.catches_all))


@cache
def openings(shape: str, strict: bool) -> tuple[frozenset[str] | None, ...]:  # noqa: FBT001 - as above
    """The words that each of the ordered patterns may open with; None where a slot opens it."""
    found: list[frozenset[str] | None] = []
    for pattern in ordered(shape, strict):
        first = pattern.pieces[0]
        literal = not first.optional and (not first.type or first.type == "choice")
        found.append(frozenset(choice[0] for choice in first.choices) if literal else None)
    return tuple(found)


@cache
def literal_words(shape: str) -> tuple[str, ...]:
    """The words of three letters and more that a shape itself holds, for near ones."""
    return tuple(
        dict.fromkeys(
            word
            for pattern in patterns(shape)
            for piece in pattern.pieces
            for choice in piece.choices
            for word in choice
            if len(word) > 2
        )
    )


@cache
def opening_words(shape: str) -> frozenset[str]:
    """The words that open a pattern of the shape."""
    return frozenset(
        choice[0]
        for pattern in patterns(shape)
        if not pattern.pieces[0].type
        for choice in pattern.pieces[0].choices
    )


@cache
def without(shape: str, *names: str) -> str:
    """The shape without the patterns that fill any of these slots."""
    return ", ".join(
        pattern.text for pattern in patterns(shape) if not set(pattern.slots) & set(names)
    )
