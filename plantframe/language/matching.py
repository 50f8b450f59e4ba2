"""Matching: the phrases of a fact fitted to its shape, and what is left over."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.language import slots
from plantframe.language.items import Taken, cut, minus_before, runs_on, word_at
from plantframe.language.near import one_slip
from plantframe.language.phrases import read_phrase
from plantframe.language.shapes import (
    Leftover,
    Match,
    Pattern,
    Piece,
    Slot,
    literal_words,
    openings,
    ordered,
)
from plantframe.language.values import Measure, Number, Phrase, Size, Span, Word, plain

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.language.values import Item

# Words that carry no fact of their own between two that do.
SMALL = (
    {"a", "an", "the", "of", "and", "or", "with", "each", "about", "some", "at", "all", "in"}
    | {"only", "is", "are", "it", "its", "for", "to", "them", "one", "very", "quite", "rather"}
    | {"@", "-", "–", "—", "+", "&", "=", ":", ";", ".", "x", "×", ""}
)

_LINKS = frozenset({"and", "or", "&", "+"})
_ABOVE, _BELOW = frozenset({"up"}), frozenset({"buried", "down"})
_SAME_M = 0.006  # lengths that differ by less are one length, rounded
_MEASURE_AND_WORD = 2  # pieces of a pattern such as `{length:down} down`


def match(shape: str, phrases: Sequence[Phrase], *, strict: bool = False) -> Match:
    """Fit a fact's phrases to its shape, each phrase from left to right.

    strict   leave out the patterns that take any words at all
    """
    key = (shape, strict, *(_as_typed(phrase) for phrase in phrases))
    found = _matched.get(key)
    if found is None:
        matching = _Matching(ordered(shape, strict), openings(shape, strict), literal_words(shape))
        for phrase in phrases:
            matching.read(phrase)
        left = [one for one in matching.left if not _is_their_sum(one, matching.found)]
        found = Match(tuple(matching.found), tuple(left))
        if len(_matched) >= MOST_KEPT:
            _matched.clear()
        _matched[key] = found
    return found


# What was matched before, by the shape and the phrases as typed: rows are alike, and while offers
# are tried nearly every line is read again as it was.
_matched: dict[tuple[object, ...], Match] = {}
MOST_KEPT = 20_000


def _as_typed(phrase: Phrase) -> tuple[object, ...]:
    """What tells one phrase from another: its text, its place, and which of its items are left."""
    return phrase.text, phrase.column, *(item.at for item in phrase.items)


class _Matching:
    """The state of fitting one fact: which patterns are used, which slots are filled."""

    def __init__(
        self,
        ordered: tuple[Pattern, ...],
        openings: tuple[frozenset[str] | None, ...],
        words: tuple[str, ...],
    ) -> None:
        self.ordered = ordered
        self.openings = openings
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
            taken = self.best(phrase, at)
            if bad := self.bad_figure(phrase, at, taken, unread):
                self.leave(unread, phrase)
                self.left.append(bad[0])
                bare, at = None, bad[1]
            elif left := self.half_said(phrase, at, taken):
                self.leave(unread, phrase)
                self.left.append(left[0])
                bare, at = None, left[1]
            elif taken is None:
                item = phrase.items[at]
                if bare is not None and isinstance(item.value, Word) and _weighs(item):
                    # `18 in donw`: what the measure is for was said, only not understood
                    unread.append(self.give_back(bare, phrase))
                unread.append(item)
                bare, at = None, at + 1
            else:
                self.leave(unread, phrase)
                number, new, after = taken
                self.fill(number, new)
                bare = (number, at) if self.ordered[number].is_bare and after == at + 1 else None
                at = after
        self.leave(unread, phrase)

    def fill(self, number: int, new: list[Slot]) -> None:
        """Keep the slots that a pattern took."""
        self.found += new
        if not self.ordered[number].repeats:
            self.used.add(number)
            self.filled.update(slot.name for slot in new)

    def bad_figure(
        self,
        phrase: Phrase,
        at: int,
        taken: tuple[int, list[Slot], int] | None,
        unread: list[Item],
    ) -> tuple[Leftover, int] | None:
        """A figure with a minus before it, or with letters at its heels: `-2`, `1e9`.

        Gives what is left over and the item after it. A pattern that knows what to do with the
        sign or with the letters has taken them along.
        """
        item = phrase.items[at]
        if not isinstance(item.value, Number | Measure | Size | Span):
            return None
        if minus_before(phrase, at) and unread and unread[-1] is phrase.items[at - 1]:
            column = phrase.column + unread.pop().at
            left = Leftover(cut(phrase, at - 1, at + 1), column, bad_figure="below-nothing")
            return left, taken[2] if taken else at + 1
        after = at + 1
        word = word_at(phrase, after)
        if not runs_on(phrase, after) or word in self.words or self.best(phrase, after):
            return None
        column = phrase.column + item.at
        left = Leftover(cut(phrase, at, after + 1), column, bad_figure="run-together")
        return left, after + 1

    def half_said(
        self, phrase: Phrase, at: int, taken: tuple[int, list[Slot], int] | None
    ) -> tuple[Leftover, int] | None:
        """A figure whose word says what it measures but not in what, or a word without its date.

        Gives what is left over and the item after it.
        """
        sure = taken is not None and self.ordered[taken[0]].literals
        if not sure and (unitless := self.unitless(phrase, at)) is not None:
            name, after = unitless
            column = phrase.column + phrase.items[at].at
            return Leftover(cut(phrase, at, after), column, name), after
        if taken is None and (said := self.undated(phrase, at)) is not None:
            end = len(phrase.items)
            column = phrase.column + phrase.items[said].at
            return Leftover(cut(phrase, said, end), column, missing_day=True), end
        return None

    def unitless(self, phrase: Phrase, at: int) -> tuple[str, int] | None:
        """The length that a figure without a unit stands for by its word, and the item after.

        `18 down` is a depth without its unit, and never a count.
        """
        if not any(isinstance(item.value, Number) for item in phrase.items[at:]):
            return None
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
                return "length", after
        return None

    def undated(self, phrase: Phrase, at: int) -> int | None:
        """The item after a word that waits for a date (`sow in spring`), where none came."""
        for number, pattern in enumerate(self.ordered):
            one = pattern.pieces[0]
            then = next((piece for piece in pattern.pieces[1:] if not piece.optional), one)
            waits = then.type in {"date", "dates"}
            if number in self.used or not waits or not one.word or one.optional:
                continue
            word = _take(one, frozenset(), phrase, at)
            if word is not None and word[1] < len(phrase.items):
                return word[1]
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
        word = word_at(phrase, at)
        for number, pattern in enumerate(self.ordered):
            opening = self.openings[number]
            if opening is not None and word not in opening:
                continue
            if number in self.used or (not pattern.repeats and pattern.must_fill & self.filled):
                continue
            got = _fit(pattern, 0, phrase, at)
            if got is None or got[1] == at:
                continue
            if pattern.catches_all and (self.links(phrase, at) or self.counts(phrase, at)):
                continue
            if pattern.takes_stuff and self.looks_like_a_slip(phrase, at, got[1]):
                continue
            return number, got[0], got[1]
        return None

    def links(self, phrase: Phrase, at: int) -> bool:
        """Whether a word here only links to something known after it: `children 3 and 6`.

        Or to one more of what may be several: `built by Nell and Odo`.
        """
        if word_at(phrase, at) not in _LINKS:
            return False
        return any(
            _fit(pattern, 0, phrase, at + 1) is not None
            for number, pattern in enumerate(self.ordered)
            if number not in self.used
            and (not pattern.greedy or (pattern.repeats and not pattern.catches_all))
        )

    def counts(self, phrase: Phrase, at: int) -> bool:
        """Whether a figure stands here that the fact has a use for, though not as it is typed."""
        figure = isinstance(phrase.items[at].value, Number | Measure | Size)
        return figure and not all(pattern.greedy for pattern in self.ordered)

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
        """What a bare figure most likely measures: length, hours …, or nothing."""
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
                    return piece.type
                alone = pattern.needed == 1 and not pattern.literals
                if alone and (not bare or piece.type == "length"):
                    bare = piece.type
        return bare


def _is_their_sum(left: Leftover, found: Sequence[Slot]) -> bool:
    """Whether what is left says once more how long two parts are together.

    `net 3 ft 6 in, 3 ft up and 6 in buried`: what is above the ground and what is below it.
    """
    items = read_phrase(left.text)[0]
    whole = items[0].value if len(items) == 1 else None
    if not isinstance(whole, Measure) or whole.dimension != "length":
        return False
    parts = [(slot.name, slot.value.value) for slot in found if isinstance(slot.value, Measure)]
    above = [length for name, length in parts if name in _ABOVE]
    below = [length for name, length in parts if name in _BELOW]
    return any(abs(up + down - whole.value) < _SAME_M for up in above for down in below)


def _slip_of(word: str, known: str) -> bool:
    """A letter away, where the letter is no ending (`sand` is no slip of `sandy`)."""
    if len(word) < 4 or not one_slip(word, known):
        return False
    longer = max(word, known, key=len)
    return longer[:-1] not in {word, known} or longer[-1] not in "sy"


def _weighs(item: Item) -> bool:
    return not (isinstance(item.value, Word) and item.value.plain in SMALL)


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
    for choice in piece.tried:
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
