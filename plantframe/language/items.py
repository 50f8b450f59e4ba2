"""Looking at the items of a phrase one by one: what every slot type does."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.language.values import Measure, Number, Size, Span, Word

if TYPE_CHECKING:
    from plantframe.language.values import Phrase, Value

# What a slot type gives: the value and the item after it, or None where it does not fit.
Taken = tuple[object, int] | None
# The words at which a run of words ends.
Stops = frozenset[tuple[str, ...]]


def value_at(phrase: Phrase, at: int) -> Value | None:
    """The value of item `at`, or None past the end."""
    return phrase.items[at].value if 0 <= at < len(phrase.items) else None


def word_at(phrase: Phrase, at: int) -> str:
    """Item `at` as lower-case text without hanging punctuation, "" past the end."""
    words = phrase.words
    return words[at] if 0 <= at < len(words) else ""


def cut(phrase: Phrase, at: int, after: int) -> str:
    """The phrase as typed from item `at` up to the item before `after`."""
    return phrase.text[phrase.items[at].at : phrase.items[after - 1].end]


# A sign right before a figure, with nothing right before it, is a minus; any other is a dash.
_MINUS = frozenset({"-", "\u2013", "\u2212", "\u2010", "\u2011"})
# What may stand at a figure's heels: `2x4s`, `4off`, `3ply`.
_JOINED = frozenset({"s", "x", "of", "off", "no", "nr", "ply", "ga", "mil", "micron", "v"})


def minus_before(phrase: Phrase, at: int) -> bool:
    """Whether item `at` is a figure with a minus before it: `-2`, `-18 in`."""
    if not isinstance(value_at(phrase, at), Number | Measure | Size | Span) or at == 0:
        return False
    sign, figure = phrase.items[at - 1], phrase.items[at]
    if sign.end != figure.at or phrase.text[sign.at : sign.end] not in _MINUS:
        return False
    return sign.at == 0 or phrase.text[sign.at - 1].isspace()


def runs_on(phrase: Phrase, at: int) -> bool:
    """Whether item `at` is letters that a figure runs into: the `e9` of `1e9`."""
    value = value_at(phrase, at)
    if not isinstance(value, Word) or not isinstance(value_at(phrase, at - 1), Number | Measure):
        return False
    joined = phrase.items[at - 1].end == phrase.items[at].at
    return joined and value.text[:1].isalpha() and value.plain not in _JOINED
