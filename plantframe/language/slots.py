"""The types a slot can have, each recognised by its dimension."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.catalogue.names import named
from plantframe.frozen import frozen
from plantframe.language import spots, when
from plantframe.language.items import Stops, Taken, cut, minus_before, runs_on, value_at, word_at
from plantframe.language.spots import COMPASS, Spot
from plantframe.language.values import (
    Cultivar,
    Day,
    Measure,
    Money,
    Nail,
    Number,
    Phrase,
    Quoted,
    Season,
    Size,
    Span,
    Word,
)
from plantframe.language.when import When

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

__all__ = ["COMPASS", "MEASURES", "RUNS", "TYPES", "Section", "Spot", "Stops", "When", "take"]

# Types that take any words; they are tried after those that know what they want.
RUNS = frozenset({"words", "plant", "kind", "job", "rule", "person", "name", "stuff", "text"})
# Types that are a figure with a unit, so that a bare figure may have been meant for one.
MEASURES = frozenset({"length", "weight", "hours", "years", "warmth", "pull"})
# A stick thicker than this is a tree; a thickness is no thicker, a length no shorter.
_THICKEST_M = 0.16
# Words no run of words begins with: they link it to what stands before.
_LINKING = frozenset({"and", "or", "of", "each", "-", "–", "+", "&", "x", ""})
# Standard gravity, for a pull given as a weight (ISO 80000-4; exact).
_GRAVITY_M_PER_S2 = 9.80665


@frozen
class Section:
    """A cross-section as typed. Metres; `nominal` is set where it was `2x4` without a unit.

    `round` is None where only one thickness was given and the fact's own habit decides.
    """

    width_m: float
    depth_m: float
    round: bool | None
    nominal: bool
    text: str
    length_m: float | None = None  # `2x4x8`: the third figure, in feet


def take(kind: str, phrase: Phrase, at: int, stops: Stops) -> Taken:
    """The value of that type from item `at` on and the item after it, or None."""
    return _TAKERS[kind](phrase, at, stops)


def _one(kind: type, dimension: str = "") -> Callable[[Phrase, int, Stops], Taken]:
    def taker(phrase: Phrase, at: int, _stops: Stops) -> Taken:
        value = value_at(phrase, at)
        if isinstance(value, kind) and (
            not dimension or getattr(value, "dimension", "") == dimension
        ):
            return value, at + 1
        return None

    return taker


def _count(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    value = value_at(phrase, at)
    if isinstance(value, Number):
        whole = value.value * 2 % 1 == 0
        return (value, at + 1) if whole and not 1900 <= value.value <= 2100 else None
    following = value_at(phrase, at + 1)
    if isinstance(value, Word) and value.plain == "×" and isinstance(following, Number):
        return following, at + 2
    if isinstance(value, Word) and value.plain == "dozen":
        return Number(12.0, value.text), at + 1
    return None


def _range(*dimensions: str) -> Callable[[Phrase, int, Stops], Taken]:
    """A measure of one of these dimensions, or a span of them: `2 m`, `2 to 3 m`."""

    def taker(phrase: Phrase, at: int, _stops: Stops) -> Taken:
        value = value_at(phrase, at)
        first = value.low if isinstance(value, Span) else value
        if isinstance(first, Measure) and first.dimension in dimensions:
            return value, at + 1
        return None

    return taker


def _pull(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    """A pull in newtons, or in pounds or kilograms as a strainer shows it."""
    value = value_at(phrase, at)
    if isinstance(value, Measure) and value.dimension == "pull":
        return value, at + 1
    if isinstance(value, Measure) and value.dimension == "weight":
        return Measure(value.value * _GRAVITY_M_PER_S2, "pull", value.unit, value.text), at + 1
    return None


def _section(phrase: Phrase, at: int, stops: Stops) -> Taken:
    """Two sides, or a thickness with or without its shape: `2x4`, `45x95 mm`, `20 mm`."""
    got = _cut(phrase, at, stops)
    value = value_at(phrase, at)
    if got is not None or not isinstance(value, Measure):
        return got
    if value.dimension == "length" and value.value <= _THICKEST_M:
        return _thickness(value, rounded=None), at + 1
    return None


def _cut(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    """Two sides, or a thickness with its shape beside it: `2x4`, `100 mm round`."""
    value = value_at(phrase, at)
    if isinstance(value, Size):
        return _sides(value, at)
    if not isinstance(value, Measure) or value.dimension != "length" or value.value > 0.3:
        return None
    shape, after = word_at(phrase, at + 1), at + 2
    if shape in {"thick", "across"} and word_at(phrase, at + 2) in {"round", "square"}:
        shape, after = word_at(phrase, at + 2), at + 3
    rounded: bool | None
    if shape in {"round", "diameter", "dia", "across"}:
        rounded = True
    elif shape in {"square", "thick"}:
        rounded = False if shape == "square" else None
    else:
        return None
    return _thickness(value, rounded=rounded), after


def _thickness(value: Measure, *, rounded: bool | None) -> Section:
    return Section(value.value, value.value, round=rounded, nominal=False, text=value.text)


def _sides(size: Size, at: int) -> Taken:
    """A section of two sides, or of three of which the last is a length."""
    first, second, *more = size.sides
    third = more[0] if more else None
    signs = {sign.strip() == sign for sign in re.findall(r"\s*[xX×✕*]\s*", size.text)}
    if len(more) > 1 or (size.bare and len(signs) > 1):
        return None  # `4 x 2x4` is asked about
    if isinstance(first, Number):  # `45x95` is millimetres, said with a unit
        if max(first.value, second.value) > 14 or isinstance(second, Measure):
            return None
        length_m = third.value * (0.3048 if isinstance(third, Number) else 1.0) if third else None
        section = Section(
            first.value * 0.0254,
            second.value * 0.0254,
            round=False,
            nominal=True,
            text=size.text,
            length_m=length_m,
        )
        return section, at + 1
    thick, length_m = max(first.value, second.value), third.value if third else None
    if thick > 0.4 or (length_m is not None and length_m < 3 * thick):
        return None
    section = Section(
        first.value, second.value, round=False, nominal=False, text=size.text, length_m=length_m
    )
    return section, at + 1


def _size(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    value = value_at(phrase, at)
    if isinstance(value, Size) and not value.bare and len(value.sides) == 2:
        return value, at + 1
    return None


def _run(phrase: Phrase, at: int, stops: Stops) -> Taken:
    """Words up to one that opens something else; figures end it, number words do not."""
    after = at
    while after < len(phrase.items) and not _ends_run(phrase, after, at, stops):
        after += 1
    return None if after == at else (cut(phrase, at, after).rstrip(" :;"), after)


def _kind(phrase: Phrase, at: int, stops: Stops) -> Taken:
    """A run of words, longer where a name of the trade holds a word of place: `net on posts`."""
    got = _run(phrase, at, stops)
    if got is not None:
        for after in range(len(phrase.items), got[1], -1):
            said = cut(phrase, at, after)
            if named("structure", said):
                return said, after
    return got


def names_a_kind(phrase: Phrase) -> bool:
    """Whether a phrase is the name of a kind, with or without a place after it."""
    got = _kind(phrase, 0, frozenset())
    if got is None or not named("structure", str(got[0])):
        return False
    return got[1] == len(phrase.items) or spots.spot(phrase, got[1], frozenset()) is not None


def _ends_run(phrase: Phrase, here: int, start: int, stops: Stops) -> bool:
    value = value_at(phrase, here)
    first = here == start
    if isinstance(value, Word):
        if value.text[0].isdigit() or value.plain in {"×", "@"}:
            return True  # a figure that could not be read, or a sign that counts
        if runs_on(phrase, here) or minus_before(phrase, here + 1):
            return True  # part of a figure that is none
        if first and value.plain in _LINKING:
            return True  # a word that only links
    else:
        spelled = isinstance(value, Number) and value.text.isalpha()
        month = isinstance(value, Day) and value.day is None and value.year is None
        if not (spelled or month):
            return True
    if first:
        return False
    opens = any(
        all(word_at(phrase, here + step) == word for step, word in enumerate(stop))
        for stop in stops
    )
    return opens or spots.spot(phrase, here, frozenset()) is not None


def _rest(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    """All that is left of the phrase, as typed."""
    at = _past_signs(phrase, at)
    if at >= len(phrase.items):
        return None
    return cut(phrase, at, len(phrase.items)), len(phrase.items)


def _job(phrase: Phrase, at: int, stops: Stops) -> Taken:
    """The words of a step, up to `to` with a date, `by`, `because` or the phrase's end."""
    at = _past_signs(phrase, at)
    after = at
    while after < len(phrase.items):
        word = word_at(phrase, after)
        if after > at and word in {"because", "until"}:
            break
        if after > at and word in {"to", "by", "on"} and when.date(phrase, after + 1, stops):
            break
        if after > at and isinstance(phrase.items[after].value, Day):
            break
        after += 1
    return None if after == at else (cut(phrase, at, after), after)


def _past_signs(phrase: Phrase, at: int) -> int:
    """The next item that is more than a colon or a stop."""
    while isinstance(value_at(phrase, at), Word) and not word_at(phrase, at):
        at += 1
    return at


def _reason(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    value = value_at(phrase, at)
    if isinstance(value, Quoted):
        return value.words, at + 1
    return _rest(phrase, at, _stops)


def _cultivar(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    value = value_at(phrase, at)
    if isinstance(value, Cultivar):
        return value.name, at + 1
    if isinstance(value, Quoted):
        return value.words, at + 1
    return None


def _person(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    """A person: words that begin with a capital letter (people may be called May or June)."""
    after = at
    while after < len(phrase.items):
        value = phrase.items[after].value
        month = isinstance(value, Day) and value.day is None and value.year is None
        named = isinstance(value, Word) or month
        if not named or not value.text[:1].isupper():
            break
        after += 1
    return None if after == at else (cut(phrase, at, after), after)


_TAKERS: Mapping[str, Callable[[Phrase, int, Stops], Taken]] = {
    "count": _count,
    "number": _one(Number),
    "year": when.year,
    "length": _one(Measure, "length"),
    "lengths": _range("length"),
    "section": _section,
    "cut": _cut,
    "size": _size,
    "date": when.date,
    "dates": when.dates,
    "hours": when.hours,
    "weekday": when.weekday,
    "direction": spots.direction,
    "facing": spots.facing,
    "line": spots.line,
    "degrees": spots.degrees,
    "spot": spots.spot,
    "place": spots.place,
    "weight": _one(Measure, "weight"),
    "weights": _range("weight"),
    "years": _one(Measure, "years"),
    "whiles": _range("time", "years"),
    "time": _one(Measure, "time"),
    "warmth": _one(Measure, "warmth"),
    "pull": _pull,
    "gauge": _one(Measure, "gauge"),
    "speed": _one(Measure, "speed"),
    "volume": _one(Measure, "volume"),
    "nail": _one(Nail),
    "money": _one(Money),
    "season": _one(Season),
    "cultivar": _cultivar,
    "reason": _reason,
    "words": _run,
    "plant": _run,
    "kind": _kind,
    "stuff": _run,
    "name": _run,
    "text": _rest,
    "rule": _run,
    "job": _job,
    "person": _person,
}
TYPES = frozenset(_TAKERS)
