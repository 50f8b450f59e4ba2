"""Shapes: how a fact is written, compiled from the way its line is written, and matched.

A shape is a list of patterns between commas, in any order: `{count} of?, {section},
{length:down} down/deep`. Braces hold a slot, `{type}` or `{type:name}`; a bare word must stand
there (`down/deep` is either, `of?` may be left out); a pattern that ends in `*` may come again.
`{flat|on edge:lie}` takes one of the words given. Every slot knows its dimension, so a phrase
finds its pattern by what is in it and not by where it stands.
"""

from __future__ import annotations

import re
from functools import lru_cache
from typing import TYPE_CHECKING

from plantframe.frozen import frozen
from plantframe.language import slots
from plantframe.language.values import Measure, Number, Phrase, Word, plain

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.language.values import Item

# Words that carry no fact of their own between two that do.
SMALL = frozenset(
    "a an the of and with each about some at all in only is are it its for to them one".split()
) | {"@", "-", "–", "—", "+", "&", "=", ":", ";", "."}


@frozen
class Piece:
    """One place in a pattern: a slot (`type` given) or words that must stand there."""

    type: str = ""
    name: str = ""
    choices: tuple[tuple[str, ...], ...] = ()
    optional: bool = False


@frozen
class Pattern:
    """A run of pieces, and whether it may come more than once in a fact."""

    pieces: tuple[Piece, ...]
    repeats: bool
    text: str

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
    def greedy(self) -> bool:
        """Holds a slot that takes any run of words, so it is tried after the others."""
        return any(piece.type in slots.RUNS for piece in self.pieces)

    @property
    def catches_all(self) -> bool:
        """Takes whatever stands there, so that it says nothing of what was meant."""
        return self.pieces[0].type in {"text", "name", "stuff", "words"}


@frozen
class Slot:
    """A slot filled: its value, and where in the line it stands (column from 1)."""

    name: str
    value: object
    text: str
    column: int


@frozen
class Leftover:
    """Words of a phrase that no pattern took. `missing_unit` names the slot a figure was meant for."""

    text: str
    column: int
    missing_unit: str = ""


@frozen
class Match:
    """What a fact's phrases gave: the slots in the order typed, and what was left over."""

    slots: tuple[Slot, ...]
    leftovers: tuple[Leftover, ...]


TWO = 2  # a measure and its word


@lru_cache(maxsize=None)
def patterns(shape: str) -> tuple[Pattern, ...]:
    """Compile a shape."""
    out = []
    for part in re.split(r",\s*(?![^{]*\})", shape):
        text = part.strip()
        if not text:
            continue
        repeats = text.endswith("*")
        pieces = []
        for token in re.findall(r"\{[^}]*\}\??|\S+", text.rstrip("*")):
            if token.startswith("{"):
                optional = token.endswith("?")
                inner = token.rstrip("?")[1:-1]
                kind, _, name = inner.partition(":")
                if "|" in kind or kind not in slots.TYPES:
                    # a word that is no type stands for itself: `{none:none}`
                    choices = tuple(tuple(choice.split()) for choice in kind.split("|"))
                    pieces.append(Piece("choice", name or "kind", choices, optional))
                else:
                    pieces.append(Piece(kind, name or kind, (), optional))
            else:
                optional = token.endswith("?")
                words = token.replace("?", "").split("/")
                if "of" in words:
                    words.append("@")  # `4 @ 8 ft`
                choices = tuple(tuple(word.split("_")) for word in words)
                pieces.append(Piece("", "", choices, optional))
        out.append(Pattern(tuple(pieces), repeats, text))
    return tuple(out)


@lru_cache(maxsize=None)
def _ordered(shape: str) -> tuple[Pattern, ...]:
    """Surest first: patterns with words before bare ones, runs of words last."""
    return tuple(
        sorted(
            patterns(shape),
            key=lambda pattern: (pattern.greedy, -pattern.literals, -pattern.needed),
        )
    )


def match(shape: str, phrases: Sequence[Phrase], *, strict: bool = False) -> Match:
    """Fit a fact's phrases to its shape, each phrase from left to right.

    strict   leave out the patterns that take any words at all
    """
    found: list[Slot] = []
    left: list[Leftover] = []
    used: set[Pattern] = set()
    ordered = _ordered(shape)
    if strict:
        ordered = tuple(pattern for pattern in ordered if not pattern.catches_all)
    for phrase in phrases:
        at = 0
        unread: list[Item] = []
        while at < len(phrase.items):
            bare = _bare_measure(ordered, used, phrase, at)
            if bare is not None:
                # `18 down`: a depth without its unit is asked about, and never taken for a count
                _flush(unread, phrase, ordered, used, left)
                name, after = bare
                text = phrase.text[phrase.items[at].at : phrase.items[after - 1].end]
                left.append(Leftover(text, phrase.column + phrase.items[at].at, name))
                at = after
                continue
            taken = _best(ordered, used, phrase, at)
            if taken is not None:
                pattern, new, after = taken
                _flush(unread, phrase, ordered, used, left)
                found += new
                if not pattern.repeats:
                    used.add(pattern)
                at = after
                continue
            unread.append(phrase.items[at])
            at += 1
        _flush(unread, phrase, ordered, used, left)
    return Match(tuple(found), tuple(left))


def _bare_measure(
    ordered: tuple[Pattern, ...], used: set[Pattern], phrase: Phrase, at: int
) -> tuple[str, int] | None:
    """The length slot that a figure without a unit stands in by its word, and the item after."""
    first = phrase.items[at].value
    for pattern in ordered:
        if pattern in used or len(pattern.pieces) != TWO:
            continue
        one, other = pattern.pieces
        if one.type == "length" and not other.type and not other.optional:
            if isinstance(first, Number):
                after = _words(phrase.items, at + 1, other.choices)
                if after is not None:
                    return one.name, after
        elif other.type == "length" and not one.type and not one.optional:
            after = _words(phrase.items, at, one.choices)
            if after is not None and after < len(phrase.items):
                alone = after + 1 == len(phrase.items)
                if alone and isinstance(phrase.items[after].value, Number):
                    return other.name, after + 1
    return None


def _best(
    ordered: tuple[Pattern, ...], used: set[Pattern], phrase: Phrase, at: int
) -> tuple[Pattern, list[Slot], int] | None:
    for pattern in ordered:
        if pattern in used:
            continue
        got = _fit(pattern, phrase, at, ordered)
        if got is not None:
            return pattern, got[0], got[1]
    return None


def _fit(
    pattern: Pattern, phrase: Phrase, at: int, ordered: tuple[Pattern, ...]
) -> tuple[list[Slot], int] | None:
    """The pattern's slots from item `at` on, and the item after; None where it does not fit."""
    filled: list[Slot] = []
    start = at
    items = phrase.items
    for place, piece in enumerate(pattern.pieces):
        if not piece.type:
            after = _words(items, at, piece.choices)
            if after is None:
                if piece.optional:
                    continue
                return None
            at = after
            continue
        if at >= len(items):
            if piece.optional:
                continue
            return None
        if piece.type == "choice":
            after = _words(items, at, piece.choices)
            if after is None:
                if piece.optional:
                    continue
                return None
            value: object = " ".join(plain(item.value) for item in items[at:after])
            filled.append(_slot(piece.name, value, phrase, at, after))
            at = after
            continue
        stops = _stops(pattern, place, ordered)
        if piece.type in slots.RUNS and place + 1 < len(pattern.pieces):
            ended = _run_then(pattern, place, phrase, at, stops, ordered)
            if ended is None:
                return None
            run, more, after = ended
            filled.append(run)
            filled += more
            return filled, after
        got = slots.take(piece.type, phrase, at, stops)
        if got is None:
            if piece.optional:
                continue
            return None
        value, after = got
        filled.append(_slot(piece.name, value, phrase, at, after))
        at = after
    if at == start:
        return None
    return filled, at


def _run_then(
    pattern: Pattern,
    place: int,
    phrase: Phrase,
    at: int,
    stops: frozenset[tuple[str, ...]],
    ordered: tuple[Pattern, ...],
) -> tuple[Slot, list[Slot], int] | None:
    """A run of words and the rest of its pattern: the longest run that lets the rest fit."""
    got = slots.take(pattern.pieces[place].type, phrase, at, stops)
    if got is None:
        return None
    rest = Pattern(pattern.pieces[place + 1 :], repeats=False, text=pattern.text)
    for after in range(got[1], at, -1):
        fitted = _fit(rest, phrase, after, ordered)
        if fitted is None and rest.needed == 0:
            fitted = [], after
        if fitted is not None:
            text = phrase.text[phrase.items[at].at : phrase.items[after - 1].end]
            value = got[0] if after == got[1] else text
            run = _slot(pattern.pieces[place].name, value, phrase, at, after)
            return run, fitted[0], fitted[1]
    return None


def _slot(name: str, value: object, phrase: Phrase, at: int, after: int) -> Slot:
    first, last = phrase.items[at], phrase.items[after - 1]
    return Slot(name, value, phrase.text[first.at : last.end], phrase.column + first.at)


def _stops(
    pattern: Pattern, place: int, ordered: tuple[Pattern, ...]
) -> frozenset[tuple[str, ...]]:
    """The words at which a run of words ends: what follows in this pattern, or opens another."""
    stops: set[tuple[str, ...]] = set()
    for piece in pattern.pieces[place + 1 :]:
        if not piece.type:
            stops.update(piece.choices)
            if not piece.optional:
                break
    for other in ordered:
        first = other.pieces[0]
        if other is not pattern and not first.type and not first.optional:
            stops.update(first.choices)
    return frozenset(stops)


def _words(items: Sequence[Item], at: int, choices: tuple[tuple[str, ...], ...]) -> int | None:
    """The item after one of the choices, if it stands at `at`."""
    for choice in sorted(choices, key=len, reverse=True):
        if at + len(choice) <= len(items) and all(
            plain(items[at + step].value) == word for step, word in enumerate(choice)
        ):
            return at + len(choice)
    return None


def _flush(
    unread: list[Item],
    phrase: Phrase,
    ordered: tuple[Pattern, ...],
    used: set[Pattern],
    left: list[Leftover],
) -> None:
    """What could not be matched: nothing where it is small words, else one leftover."""
    if not unread:
        return
    doubted = any(
        unread[0].at <= at < unread[-1].end for _, at, _ in phrase.doubts
    )  # already asked about
    weighty = [
        item
        for item in unread
        if not (isinstance(item.value, Word) and item.value.plain in SMALL | {""})
    ]
    if weighty and not doubted:
        text = phrase.text[weighty[0].at : weighty[-1].end]
        column = phrase.column + weighty[0].at
        left.append(Leftover(text, column, _unit_wanted(weighty, phrase, ordered, used)))
    unread.clear()


def _unit_wanted(
    weighty: list[Item], phrase: Phrase, ordered: tuple[Pattern, ...], used: set[Pattern]
) -> str:
    """The length slot a bare figure was most likely meant for, or nothing."""
    number = next((item for item in weighty if isinstance(item.value, Number)), None)
    if number is None or isinstance(number.value, Measure):
        return ""
    near = {plain(item.value) for item in phrase.items}
    bare = ""
    for pattern in ordered:
        if pattern in used:
            continue
        for place, piece in enumerate(pattern.pieces):
            if piece.type not in slots.MEASURES:
                continue
            words = {
                " ".join(choice)
                for other in (*pattern.pieces[:place], *pattern.pieces[place + 1 :])
                if not other.type
                for choice in other.choices
            }
            if words & near:
                return piece.name
            if not pattern.literals and piece.type == "length":
                bare = bare or piece.name
    return bare
