"""Shapes: how a fact is written, compiled from the way its line is written, and matched.

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
from plantframe.language.items import Taken, cut, word_at
from plantframe.language.near import one_slip
from plantframe.language.values import Number, Phrase, Word, plain

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.language.values import Item

# Words that carry no fact of their own between two that do.
SMALL = frozenset(
    [
        "a",
        "an",
        "the",
        "of",
        "and",
        "with",
        "each",
        "about",
        "some",
        "at",
        "all",
        "in",
        "only",
        "is",
        "are",
        "it",
        "its",
        "for",
        "to",
        "them",
        "one",
    ]
) | {"@", "-", "–", "—", "+", "&", "=", ":", ";", "."}

# Other ways to write `of` after a count.
_OF = ("@", "off", "no", "nr", "no.")

_MEASURE_AND_WORD = 2  # pieces of a pattern such as `{length:down} down`

Choices = tuple[tuple[str, ...], ...]


@frozen
class Piece:
    """One place in a pattern: a slot (`type` given) or words that must stand there.

    choices   the words that may stand there, the longest first; `word` the one to be offered
    """

    type: str = ""
    name: str = ""
    choices: Choices = ()
    optional: bool = False
    word: str = ""


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
        """A measure without a word that says what it is for."""
        return not self.literals and self.pieces[0].type in {"length", "lengths"}

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
    """A slot filled: its value, and where in the line it stands (column from 1)."""

    name: str
    value: object
    text: str
    column: int


@frozen
class Leftover:
    """Words of a phrase that no pattern took.

    missing_unit   the slot a figure without a unit was meant for, or ""
    """

    text: str
    column: int
    missing_unit: str = ""


@frozen
class Match:
    """What a fact's phrases gave: the slots in the order typed, and what was left over."""

    slots: tuple[Slot, ...]
    leftovers: tuple[Leftover, ...]


# ---- compiling ------------------------------------------------------------------------------
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
    return Pattern(pieces, text.endswith("*"), text)


def _piece(token: str) -> Piece:
    optional = token.endswith("?")
    if token.startswith("{"):
        kind, _, name = token.rstrip("?")[1:-1].partition(":")
        if kind in slots.TYPES:
            return Piece(kind, name or kind, (), optional)
        # a word that is no type stands for itself: `{none:none}`
        choices = tuple(tuple(choice.split()) for choice in kind.split("|"))
        return Piece("choice", name or "kind", _longest_first(choices), optional)
    words = token.replace("?", "").split("/")
    if "of" in words:
        words += _OF
    choices = tuple(tuple(word.split("_")) for word in words)
    return Piece("", "", _longest_first(choices), optional, words[0].replace("_", " "))


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
        if other is not pattern and not first.type and not first.optional:
            ends.update(first.choices)
    return frozenset(ends)


@cache
def _ordered(shape: str, strict: bool) -> tuple[Pattern, ...]:  # noqa: FBT001 - part of the key
    """Surest first: patterns with words before bare ones, runs of words last."""
    found = sorted(
        patterns(shape), key=lambda pattern: (pattern.greedy, -pattern.literals, -pattern.needed)
    )
    return tuple(pattern for pattern in found if not (strict and pattern.catches_all))


# ---- matching -------------------------------------------------------------------------------
def match(shape: str, phrases: Sequence[Phrase], *, strict: bool = False) -> Match:
    """Fit a fact's phrases to its shape, each phrase from left to right.

    strict   leave out the patterns that take any words at all
    """
    matching = _Matching(_ordered(shape, strict), literal_words(shape))
    for phrase in phrases:
        matching.read(phrase)
    return Match(tuple(matching.found), tuple(matching.left))


class _Matching:
    """The state of fitting one fact: which patterns are used, which slots are filled."""

    def __init__(self, ordered: tuple[Pattern, ...], words: tuple[str, ...]) -> None:
        self.ordered = ordered
        self.words = words
        self.used: set[int] = set()
        self.filled: set[str] = set()
        self.found: list[Slot] = []
        self.left: list[Leftover] = []

    def read(self, phrase: Phrase) -> None:
        """Take what fits from one phrase; the rest is left over."""
        at = 0
        unread: list[Item] = []
        bare: tuple[int, int] | None = None  # the pattern and the item of a measure just taken
        while at < len(phrase.items):
            unitless = self.unitless(phrase, at)
            if unitless is not None:
                self.leave(unread, phrase)
                bare = None
                name, after = unitless
                column = phrase.column + phrase.items[at].at
                self.left.append(Leftover(cut(phrase, at, after), column, name))
                at = after
                continue
            taken = self.best(phrase, at)
            if taken is None:
                item = phrase.items[at]
                if bare is not None and isinstance(item.value, Word) and _weighs(item):
                    # `18 in donw`: what the measure is for was said, only not understood
                    unread.append(self.give_back(bare, phrase))
                bare = None
                unread.append(item)
                at += 1
                continue
            self.leave(unread, phrase)
            number, new, after = taken
            pattern = self.ordered[number]
            self.found += new
            if not pattern.repeats:
                self.used.add(number)
                self.filled.update(slot.name for slot in new)
            bare = (number, at) if pattern.is_bare and after == at + 1 else None
            at = after
        self.leave(unread, phrase)

    def unitless(self, phrase: Phrase, at: int) -> tuple[str, int] | None:
        """The length that a figure without a unit stands for by its word, and the item after.

        `18 down` is a depth without its unit, and never a count.
        """
        for number, pattern in enumerate(self.ordered):
            if number in self.used or len(pattern.pieces) != _MEASURE_AND_WORD:
                continue
            one, other = pattern.pieces
            if one.type == "length" and not other.type and not other.optional:
                figure, words = at, _take(other, frozenset(), phrase, at + 1)
                after = words[1] if words else 0
            elif other.type == "length" and not one.type and not one.optional:
                words = _take(one, frozenset(), phrase, at)
                figure = words[1] if words else len(phrase.items)
                after = figure + 1 if figure + 1 == len(phrase.items) else 0
            else:
                continue
            if after and isinstance(phrase.items[figure].value, Number):
                return one.name or other.name, after
        return None

    def give_back(self, bare: tuple[int, int], phrase: Phrase) -> Item:
        """Undo the last measure taken, and hand its item back."""
        number, at = bare
        slot = self.found.pop()
        self.used.discard(number)
        if not any(other.name == slot.name for other in self.found):
            self.filled.discard(slot.name)
        return phrase.items[at]

    def best(self, phrase: Phrase, at: int) -> tuple[int, list[Slot], int] | None:
        """The surest pattern that fits here: its number, its slots, the item after."""
        for number, pattern in enumerate(self.ordered):
            if number in self.used or (not pattern.repeats and pattern.must_fill & self.filled):
                continue
            got = _fit(pattern, 0, phrase, at)
            if got is None or got[1] == at:
                continue
            if pattern.takes_stuff and self.looks_like_a_slip(phrase, at, got[1]):
                continue
            return number, got[0], got[1]
        return None

    def looks_like_a_slip(self, phrase: Phrase, at: int, after: int) -> bool:
        """Whether one of these words is a letter away from a word the fact knows (`donw`)."""
        typed = [word_at(phrase, place) for place in range(at, after)]
        return any(_slip_of(word, known) for word in typed for known in self.words)

    def leave(self, unread: list[Item], phrase: Phrase) -> None:
        """Keep what could not be matched, unless it is small words or asked about already."""
        doubted = unread and any(
            unread[0].at <= doubt.at < unread[-1].end for doubt in phrase.doubts
        )
        weighty = [item for item in unread if _weighs(item)]
        unread.clear()
        if not weighty or doubted:
            return
        text = phrase.text[weighty[0].at : weighty[-1].end]
        column = phrase.column + weighty[0].at
        self.left.append(Leftover(text, column, self.unit_wanted(weighty, phrase)))

    def unit_wanted(self, weighty: list[Item], phrase: Phrase) -> str:
        """The measure a bare figure was most likely meant for, or nothing."""
        if not any(isinstance(item.value, Number) for item in weighty):
            return ""
        near = {plain(item.value) for item in phrase.items}
        bare = ""
        for number, pattern in enumerate(self.ordered):
            if number in self.used:
                continue
            for place, piece in enumerate(pattern.pieces):
                if piece.type not in slots.MEASURES:
                    continue
                others = (*pattern.pieces[:place], *pattern.pieces[place + 1 :])
                words = {" ".join(choice) for one in others for choice in one.choices}
                if words & near:
                    return piece.name
                if not pattern.literals and piece.type == "length":
                    bare = bare or piece.name
        return bare


def _slip_of(word: str, known: str) -> bool:
    """A letter away, where the letter is no ending (`sand` is no slip of `sandy`)."""
    if len(word) < 4 or not one_slip(word, known):
        return False
    longer = max(word, known, key=len)
    return longer[:-1] not in {word, known} or longer[-1] not in "sy"


def _weighs(item: Item) -> bool:
    return not (isinstance(item.value, Word) and item.value.plain in SMALL | {""})


def _fit(pattern: Pattern, place: int, phrase: Phrase, at: int) -> tuple[list[Slot], int] | None:
    """Fit a pattern's pieces from `place` on to a phrase's items from `at` on.

    Gives their slots and the item after; None where they do not fit.
    """
    filled: list[Slot] = []
    for number in range(place, len(pattern.pieces)):
        piece = pattern.pieces[number]
        if piece.type in slots.RUNS and number + 1 < len(pattern.pieces):
            rest = _run_then(pattern, number, phrase, at)
            return None if rest is None else ([*filled, *rest[0]], rest[1])
        got = _take(piece, pattern.ends[number], phrase, at)
        if got is None:
            if piece.optional:
                continue
            return None
        value, after = got
        if piece.type:
            filled.append(_slot(piece.name, value, phrase, at, after))
        at = after
    return filled, at


def _take(piece: Piece, ends: slots.Stops, phrase: Phrase, at: int) -> Taken:
    """What one piece takes from item `at` on."""
    if at >= len(phrase.items):
        return None
    if piece.type and piece.type != "choice":
        return slots.take(piece.type, phrase, at, ends)
    for choice in piece.choices:
        if all(word_at(phrase, at + step) == word for step, word in enumerate(choice)):
            return " ".join(choice), at + len(choice)
    return None


def _run_then(
    pattern: Pattern, place: int, phrase: Phrase, at: int
) -> tuple[list[Slot], int] | None:
    """A run of words and the rest of its pattern: the longest run that lets the rest fit."""
    piece = pattern.pieces[place]
    got = (
        slots.take(piece.type, phrase, at, pattern.ends[place]) if at < len(phrase.items) else None
    )
    if got is None:
        return _fit(pattern, place + 1, phrase, at) if piece.optional else None
    for after in range(got[1], at, -1):
        rest = _fit(pattern, place + 1, phrase, after)
        if rest is not None:
            value = got[0] if after == got[1] else cut(phrase, at, after)
            return [_slot(piece.name, value, phrase, at, after), *rest[0]], rest[1]
    return None


def _slot(name: str, value: object, phrase: Phrase, at: int, after: int) -> Slot:
    return Slot(name, value, cut(phrase, at, after), phrase.column + phrase.items[at].at)


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
def without(shape: str, *names: str) -> str:
    """The shape without the patterns that fill any of these slots."""
    return ", ".join(
        pattern.text for pattern in patterns(shape) if not set(pattern.slots) & set(names)
    )
