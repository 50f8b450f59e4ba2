"""Putting values together that belong together: sizes, spans, `6 ft 2`, `a foot and a half`."""

from __future__ import annotations

import re

from plantframe.language.figures import figure
from plantframe.language.values import (
    UNITS,
    Day,
    Doubt,
    Item,
    Measure,
    Number,
    Size,
    Slashed,
    Span,
    Value,
    Word,
)

_COMMA_AFTER_SIZE = re.compile(r"\d+\s?[xX×✕*]\s?\d+,\d")
_LINKS = frozenset({"to", "till", "through", "thru", "-", "–", "—"})
_PARTS = frozenset({"early", "mid", "late"})
_SEVERAL = {"dozen": 12.0, "couple": 2.0}


def joined(items: list[Item], text: str, doubts: list[Doubt]) -> list[Item]:
    """The items of a phrase with those that belong together made one.

    text     the phrase as typed
    doubts   what could be meant two ways; added to
    """
    out: list[Item] = []
    at = 0
    while at < len(items):
        for join in (_articled, _linked, _metre_and_cm, _feet_and_figure):
            found = join(items, at, text, doubts)
            if found is not None:
                item, at = found
                out.append(item)
                break
        else:
            out.append(items[at])
            at += 1
    if len(out) == len(items):
        return out
    return joined(out, text, doubts)  # `a foot to a metre`: what was joined may join again


def _plain(items: list[Item], at: int) -> str:
    value = items[at].value if at < len(items) else None
    return value.plain if isinstance(value, Word) else ""


def _articled(
    items: list[Item], at: int, text: str, _doubts: list[Doubt]
) -> tuple[Item, int] | None:
    """`a foot`, `an hour`, `half a metre`, `a foot and a half`, `a dozen`, `two dozen`."""
    first = items[at].value
    start, number = at, 1.0
    if isinstance(first, Number):
        number = first.value
        at += 1
        if (several := _SEVERAL.get(_plain(items, at))) is not None:
            return _counted(items, start, at + 1, number * several, text)
        if number != 0.5:
            return None
    if _plain(items, at) not in {"a", "an"}:
        return None
    word = _plain(items, at + 1)
    if (several := _SEVERAL.get(word)) is not None:
        return _counted(items, start, at + 2, number * several, text)
    unit = UNITS.get(word) if len(word) > 2 else None
    if unit is None or unit[0] in {"warmth", "gauge", "volume"}:
        return None
    after = at + 2
    if [_plain(items, after + step) for step in range(2)] == ["and", "a"]:
        half = items[after + 2].value if after + 2 < len(items) else None
        if isinstance(half, Number) and half.value == 0.5:
            number, after = number + 0.5, after + 3
    whole = text[items[start].at : items[after - 1].end]
    measure = Measure(number * unit[1], unit[0], unit[2], whole)
    return Item(measure, items[start].at, items[after - 1].end), after


def _counted(
    items: list[Item], start: int, after: int, number: float, text: str
) -> tuple[Item, int]:
    whole = text[items[start].at : items[after - 1].end]
    return Item(Number(number, whole), items[start].at, items[after - 1].end), after


def _linked(items: list[Item], at: int, text: str, _doubts: list[Doubt]) -> tuple[Item, int] | None:
    """`8 ft by 6 ft` into a size and `10 to 20 July` into a span."""
    if at + 2 >= len(items) or not isinstance(items[at + 1].value, Word):
        return None
    first, third = items[at], items[at + 2]
    link = items[at + 1].value.text.lower()
    whole = text[first.at : third.end]
    found: Value | None = None
    if link == "by":
        found = _by(first.value, third.value, whole)
    elif link in _LINKS:
        found = _span(first.value, third.value, whole)
    return None if found is None else (Item(found, first.at, third.end), at + 3)


def _metre_and_cm(
    items: list[Item], at: int, text: str, _doubts: list[Doubt]
) -> tuple[Item, int] | None:
    """`1 m 50 cm` is one length; so is `2 lb 4 oz` one weight and `1 h 30 min` one time."""
    if at + 1 >= len(items):
        return None
    large, small = items[at].value, items[at + 1].value
    if not isinstance(large, Measure) or not isinstance(small, Measure):
        return None
    if (large.unit, small.unit) not in {("m", "cm"), ("lb", "oz"), ("h", "min")}:
        return None
    whole = text[items[at].at : items[at + 1].end]
    both = Measure(large.value + small.value, large.dimension, large.unit, whole)
    return Item(both, items[at].at, items[at + 1].end), at + 2


def _feet_and_figure(
    items: list[Item], at: int, text: str, doubts: list[Doubt]
) -> tuple[Item, int] | None:
    """`6 ft 2`, `1 m 20`: inches or centimetres most likely, but nobody said so."""
    if at + 1 >= len(items):
        return None
    before, after = items[at].value, items[at + 1].value
    if not isinstance(before, Measure) or not isinstance(after, Number):
        return None
    feet = before.unit == "ft" and after.value < 12
    metres = before.unit == "m" and 10 <= after.value < 100
    nothing_follows = at + 2 == len(items) or isinstance(items[at + 2].value, Word)
    if not (feet or metres) or not after.text[0].isdigit() or not nothing_follows:
        return None
    whole = text[items[at].at : items[at + 1].end]
    doubts.append(Doubt("feet-and-what" if feet else "metres-and-what", items[at].at, whole))
    return Item(Word(whole), items[at].at, items[at + 1].end), at + 2


def size_of(sides: list[Value], text: str, at: int, doubts: list[Doubt]) -> Size | Word:
    """A size of its sides; a bare side takes the unit of the last one that has a unit."""
    sides = [_fraction(side) if isinstance(side, Slashed) else side for side in sides]
    plain = [side for side in sides if isinstance(side, Number | Measure)]
    if len(plain) < len(sides):
        return Word(text)
    if _COMMA_AFTER_SIZE.match(text):
        # `2x2,8 ft`: is the comma a decimal one, or was a space forgotten after it?
        doubts[:] = [doubt for doubt in doubts if doubt.slip != "decimal-comma"]
        doubts.append(Doubt("two-readings", at, text))
        return Word(text)
    last = next((side for side in reversed(plain) if isinstance(side, Measure)), None)
    if last is not None and not _trade_size_and_length(plain):
        plain = [
            side
            if isinstance(side, Measure)
            else Measure(in_unit(side.value, last.unit), last.dimension, last.unit, side.text)
            for side in plain
        ]
    return Size(tuple(plain), text)


def _fraction(side: Slashed) -> Value:
    """`1/4 x 1-1/2 in`: between the sides of a size there is no day of a month."""
    value = figure(side.text) if len(side.parts) == 2 else None
    return Word(side.text) if value is None else Number(value, side.text)


def _trade_size_and_length(sides: list[Number | Measure]) -> bool:
    """`2x4x8 ft`: a trade size in inches, and a length with its unit."""
    if len(sides) != 3 or not isinstance(sides[2], Measure):
        return False
    bare = all(isinstance(side, Number) and side.value <= 14 for side in sides[:2])
    return bare and sides[2].unit not in {"mm", "cm", "in"}


def in_unit(value: float, unit: str) -> float:
    """A bare figure in the base unit, read in a unit; after feet and inches it is feet."""
    return value * UNITS["ft" if unit == "ft in" else unit][1]


def _by(first: Value, third: Value, whole: str) -> Value | None:
    if isinstance(first, Number) and isinstance(third, Number | Measure):
        return size_of([first, third], whole, 0, [])
    if not isinstance(first, Measure) or not isinstance(third, Measure):
        return None
    both = first.dimension == third.dimension == "length"
    return Size((first, third), whole) if both else None


def _span(first: Value, third: Value, whole: str) -> Value | None:
    """A span of two values, where the two can make one."""
    match first, third:
        case Measure(), Measure() if first.dimension == third.dimension:
            return Span(first, third, whole)
        case Number(), Measure():
            value = in_unit(first.value, third.unit)
            return Span(Measure(value, third.dimension, third.unit, first.text), third, whole)
        case (Number(), Number()) | (Day(), Day()):
            return Span(first, third, whole)
        case ((Number() | Word()), Day()) if third.day is not None:
            day = _day_alone(first)
            if day is not None:
                return Span(Day(day, third.month, third.year, "", first.text), third, whole)
        case Day(), (Number() | Word()) if first.day is not None:
            day = _day_alone(third)
            if day is not None:
                return Span(first, Day(day, first.month, first.year, "", third.text), whole)
        case Word(), Day() if first.plain in _PARTS:  # `mid to late May`
            start = Day(None, third.month, third.year, first.plain, first.text)
            return Span(start, third, whole)
        case _:
            pass
    return None


def _day_alone(value: Value) -> int | None:
    """`10` or `10th` before or after a date: a day of the same month."""
    if isinstance(value, Number) and value.value == int(value.value) and 0 < value.value < 32:
        return int(value.value)
    if isinstance(value, Word) and (
        match := re.fullmatch(r"(\d{1,2})(?:st|nd|rd|th)", value.plain)
    ):
        return int(match[1])
    return None
