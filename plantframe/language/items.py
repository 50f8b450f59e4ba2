"""Looking at the items of a phrase one by one: what every slot type does."""

from __future__ import annotations

from typing import TYPE_CHECKING

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
