"""The types a slot can have, each recognised by its dimension."""

from __future__ import annotations

from collections.abc import Callable

from plantframe.frozen import frozen
from plantframe.language.values import (
    Bearing,
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
    Slashed,
    Span,
    Value,
    Word,
    plain,
)

COMPASS = {
    "north": 0.0,
    "north-east": 45.0,
    "east": 90.0,
    "south-east": 135.0,
    "south": 180.0,
    "south-west": 225.0,
    "west": 270.0,
    "north-west": 315.0,
}
_SHORT_COMPASS = {
    "n": "north",
    "ne": "north-east",
    "e": "east",
    "se": "south-east",
    "s": "south",
    "sw": "south-west",
    "w": "west",
    "nw": "north-west",
    "northeast": "north-east",
    "southeast": "south-east",
    "southwest": "south-west",
    "northwest": "north-west",
}
WEEKDAYS = {
    "monday": ("monday",),
    "tuesday": ("tuesday",),
    "wednesday": ("wednesday",),
    "thursday": ("thursday",),
    "friday": ("friday",),
    "saturday": ("saturday",),
    "sunday": ("sunday",),
    "weekday": ("monday", "tuesday", "wednesday", "thursday", "friday"),
    "weekend": ("saturday", "sunday"),
    "evening": ("monday", "tuesday", "wednesday", "thursday", "friday"),
    "day": (
        "monday",
        "tuesday",
        "wednesday",
        "thursday",
        "friday",
        "saturday",
        "sunday",
    ),
}
FEASTS = (
    "new year",
    "candlemas",
    "lady day",
    "good friday",
    "easter",
    "may day",
    "whitsun",
    "midsummer",
    "michaelmas",
    "halloween",
    "all saints",
    "martinmas",
    "christmas",
    "boxing day",
)
FROSTS = ("last frost", "first frost", "the last frost", "the first frost")
# Words that open a place.
_PLACE_WORDS = frozenset(
    "in on at against along over under beside near by behind between across round".split()
)
RUNS = frozenset({"words", "plant", "kind", "job", "rule", "person", "name", "stuff", "text"})
MEASURES = frozenset({"length", "weight", "hours", "years", "warmth", "pull"})


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


@frozen
class When:
    """A date as typed: a day, a span of days, or so many days from a frost or a feast."""

    day: Day | None = None
    last: Day | None = None
    from_days: float = 0.0
    anchor: str = ""  # "last frost", "first frost" or a feast
    slashed: bool = False
    text: str = ""


@frozen
class Spot:
    """Where a thing is, as typed.

    relation   in, on, north, south …, from, over, at …; "" where only an end or a part is named
    name       what it is measured from: the name of a bed, a wall, the shed
    distance_m edge to edge, None where none was given
    part       north end, middle, east side …
    along_m    from and to along it
    """

    relation: str = ""
    name: str = ""
    distance_m: float | None = None
    part: str = ""
    along_m: tuple[float, float] | None = None
    text: str = ""


Taken = tuple[object, int] | None
Stops = frozenset[tuple[str, ...]]


def take(kind: str, phrase: Phrase, at: int, stops: Stops) -> Taken:
    """The value of that type from item `at` on and the item after it, or None."""
    return _TAKERS[kind](phrase, at, stops)


def _value(phrase: Phrase, at: int) -> Value | None:
    return phrase.items[at].value if 0 <= at < len(phrase.items) else None


def _word(phrase: Phrase, at: int) -> str:
    value = _value(phrase, at)
    return plain(value) if value is not None else ""


def _one(kind: type, dimension: str = "") -> Callable[[Phrase, int, Stops], Taken]:
    def taker(phrase: Phrase, at: int, _stops: Stops) -> Taken:
        value = _value(phrase, at)
        if isinstance(value, kind) and (
            not dimension or getattr(value, "dimension", "") == dimension
        ):
            return value, at + 1
        return None

    return taker


def _count(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    value = _value(phrase, at)
    whole = isinstance(value, Number) and value.value * 2 % 1 == 0
    if isinstance(value, Number) and whole and not 1900 <= value.value <= 2100:
        return value, at + 1
    if (
        isinstance(value, Word)
        and value.plain == "×"
        and isinstance(_value(phrase, at + 1), Number)
    ):
        return _value(phrase, at + 1), at + 2
    if isinstance(value, Word) and value.plain == "dozen":
        return Number(12.0, value.text), at + 1
    return None


def _number(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    value = _value(phrase, at)
    return (value, at + 1) if isinstance(value, Number) else None


def _year(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    value = _value(phrase, at)
    if isinstance(value, Season):
        return value, at + 1
    if isinstance(value, Number) and 1900 <= value.value <= 2100 and value.value % 1 == 0:
        return value, at + 1
    if _word(phrase, at) == "last" and _word(phrase, at + 1) == "year":
        return Word("last year"), at + 2
    return None


def _length(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    value = _value(phrase, at)
    if isinstance(value, Measure) and value.dimension == "length":
        return value, at + 1
    return None


def _lengths(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    """A length or a span of lengths."""
    value = _value(phrase, at)
    if isinstance(value, Span) and isinstance(value.low, Measure):
        return (value, at + 1) if value.low.dimension == "length" else None
    return _length(phrase, at, _stops)


def _section(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    value = _value(phrase, at)
    if isinstance(value, Size):
        return _sides(value, phrase, at)
    small = isinstance(value, Measure) and value.dimension == "length" and value.value <= 0.3
    if not isinstance(value, Measure) or not small:
        return None
    shape = _word(phrase, at + 1)
    after = at + 2
    if shape in {"thick", "across"} and _word(phrase, at + 2) in {"round", "square"}:
        shape, after = _word(phrase, at + 2), at + 3
    if shape in {"round", "diameter", "dia", "thick", "across"}:
        return Section(value.value, value.value, shape != "thick" or None, False, value.text), after
    if shape == "square":
        return Section(value.value, value.value, False, False, value.text), after
    if len(phrase.items) == 1 and value.value <= 0.16:
        return Section(value.value, value.value, None, False, value.text), at + 1
    return None


def _sides(size: Size, phrase: Phrase, at: int) -> Taken:
    figures = [side.value for side in size.sides]
    if size.bare:
        if len(figures) == 2 and max(figures) <= 14:
            inches = [figure * 0.0254 for figure in figures]
            return Section(inches[0], inches[1], False, True, size.text), at + 1
        if len(figures) == 3 and " x " not in size.text:
            inches = [figure * 0.0254 for figure in figures[:2]]
            length_m = figures[2] * 0.3048
            return Section(inches[0], inches[1], False, True, size.text, length_m), at + 1
        if len(figures) == 2 and max(figures) > 14:
            # `45x95` in a metric yard: millimetres are said, but never without a unit
            return None
        return None
    if len(figures) == 2 and max(figures) <= 0.4:
        return Section(figures[0], figures[1], False, False, size.text), at + 1
    return None


def _size(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    value = _value(phrase, at)
    if isinstance(value, Size) and not value.bare and len(value.sides) == 2:
        return value, at + 1
    return None


def _date(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    value = _value(phrase, at)
    start = at
    if isinstance(value, Word) and value.plain in {"on", "in", "from", "around", "about", "end"}:
        # `sow in April`; but `in Long Bed` is a place
        got = _date(phrase, at + 1, _stops)
        return got if got is not None and value.plain != "end" else None
    if isinstance(value, Day):
        if value.day is None and not value.part and _word(phrase, at + 1) in {"week", "weekend"}:
            return None
        return When(day=value, text=value.text), at + 1
    if isinstance(value, Span) and isinstance(value.low, Day) and isinstance(value.high, Day):
        return When(day=value.low, last=value.high, text=value.text), at + 1
    if isinstance(value, Slashed) and len(value.parts) in {2, 3}:
        return When(slashed=True, text=value.text), at + 1
    days = 0.0
    if isinstance(value, Measure) and value.dimension == "time":
        side = _word(phrase, at + 1)
        if side not in {"after", "before", "from"}:
            return None
        days = -value.value if side == "before" else value.value
        at += 2
    elif isinstance(value, Word) and value.plain in {"before", "after"}:
        at += 1
    anchor, after = _anchor(phrase, at)
    if not anchor:
        return None
    text = phrase.text[phrase.items[start].at : phrase.items[after - 1].end]
    return When(from_days=days, anchor=anchor, text=text), after


def _anchor(phrase: Phrase, at: int) -> tuple[str, int]:
    for name in sorted((*FROSTS, *FEASTS), key=len, reverse=True):
        words = name.split()
        if all(
            _word(phrase, at + step).removesuffix("'s") == word for step, word in enumerate(words)
        ):
            after = at + len(words)
            if _word(phrase, after) == "day" and "frost" not in name:
                after += 1
            return name.removeprefix("the "), after
    return "", at


def _dates(phrase: Phrase, at: int, stops: Stops) -> Taken:
    """A date or a span of dates; `1 October to 15 April` and `June to September` alike."""
    return _date(phrase, at, stops)


def _hours(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    value = _value(phrase, at)
    if isinstance(value, Measure) and value.dimension == "work":
        return value, at + 1
    if isinstance(value, Number) and _word(phrase, at + 1) in {"a", "an"}:
        if _word(phrase, at + 2) == "day":
            return Measure(4.0, "work", "h", "half a day"), at + 3
        if _word(phrase, at + 2) == "hour":
            return Measure(value.value, "work", "h", "half an hour"), at + 3
    if isinstance(value, Measure) and value.unit == "days":
        return Measure(value.value * 8, "work", "h", value.text), at + 1
    return None


def _weekday(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    word = _word(phrase, at)
    name = word.removesuffix("s")
    for day, covered in WEEKDAYS.items():
        if name == day or (len(name) >= 3 and day.startswith(name) and name != "wee"):
            after = at + 1
            if _word(phrase, after) in {"evenings", "evening", "mornings", "afternoons"}:
                after += 1
            return covered, after
    if word == "every" and _word(phrase, at + 1).startswith(("day", "evening")):
        return WEEKDAYS["day"], at + 2
    return None


def compass(words: tuple[str, ...]) -> tuple[str, int]:
    """A direction at the start of these words, and how many it took: `south west`, `SW`."""
    if not words:
        return "", 0
    first = _SHORT_COMPASS.get(words[0], words[0])
    second = _SHORT_COMPASS.get(words[1], words[1]) if len(words) > 1 else ""
    if first in {"north", "south"} and second in {"east", "west"} and len(words[0]) > 1:
        return f"{first}-{second}", 2
    return (first, 1) if first in COMPASS else ("", 0)


def _direction(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    words = tuple(_word(phrase, at + step) for step in range(2))
    if words[0] == "the":
        got = _direction(phrase, at + 1, _stops)
        return got
    name, used = compass(words)
    return (name, at + used) if used else None


def _line(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    """Which way a row runs: `north-south`, `east to west`, `N-S`."""
    text = _word(phrase, at)
    after = at + 1
    if "-" not in text:
        link = _word(phrase, at + 1)
        if link not in {"to", "-", "–", "and"}:
            return None
        text, after = f"{text}-{_word(phrase, at + 2)}", at + 3
    first, _, second = text.partition("-")
    ends = (_SHORT_COMPASS.get(first, first), _SHORT_COMPASS.get(second, second))
    if ends in {("north", "south"), ("south", "north")}:
        return "north-south", after
    if ends in {("east", "west"), ("west", "east")}:
        return "east-west", after
    return None


def _degrees(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    value = _value(phrase, at)
    if isinstance(value, Number | Bearing | Measure):
        figure = value.degrees if isinstance(value, Bearing) else value.value
        side = _word(phrase, at + 1)
        if isinstance(value, Measure):
            # `52.1 N` reads as a pull of so many newtons until somebody asks for a place
            side = value.unit.lower()
            at -= 1
        if side in {"n", "s", "north", "south"} and abs(figure) <= 90:
            return ("latitude", figure if side[0] == "n" else -figure), at + 2
        if side in {"e", "w", "east", "west"} and abs(figure) <= 180:
            return ("longitude", figure if side[0] == "e" else -figure), at + 2
    return None


def _spot(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    """A place: `in Long Bed`, `0.5 m north of Larch Bed`, `from 1 m to 4 m along`, `north end`."""
    start = at
    value = _value(phrase, at)
    distance: float | None = None
    if isinstance(value, Measure) and value.dimension == "length":
        distance = value.value
        at += 1
        if _word(phrase, at) in {"from", "off"}:
            return _named("from", phrase, start, at + 1, distance)
    word = _word(phrase, at)
    if word == "from" and distance is None:
        span = _value(phrase, at + 1)
        if isinstance(span, Span) and isinstance(span.low, Measure):
            high = span.high
            if isinstance(high, Measure) and high.dimension == "length":
                after = at + 2 + (_word(phrase, at + 2) == "along")
                text = _text(phrase, start, after)
                return Spot(along_m=(span.low.value, high.value), text=text), after
        return None
    if word in {"middle", "centre", "center"} and distance is None:
        return Spot(part="middle", text=_text(phrase, start, at + 1)), at + 1
    step = at + (word == "at") + (word in {"the", "on"} and _word(phrase, at + 1) == "the")
    words = tuple(_word(phrase, step + ahead) for ahead in range(3))
    if words[0] in {"the", "on"}:
        step += 1
        words = tuple(_word(phrase, step + ahead) for ahead in range(3))
    side, used = compass(words)
    if used:
        then = words[used] if used < 3 else ""
        if then in {"end", "side", "edge", "corner"} and distance is None:
            after = step + used + 1
            if _word(phrase, after) == "of":
                return _named("in", phrase, start, after + 1, None, f"{side} {then}")
            return Spot(part=f"{side} {then}", text=_text(phrase, start, after)), after
        if then == "of":
            return _named(side, phrase, start, step + used + 1, distance)
    if distance is None and word in _PLACE_WORDS and isinstance(_value(phrase, at), Word):
        return _named(word, phrase, start, at + 1, None)
    return None


def _named(
    relation: str, phrase: Phrase, start: int, at: int, distance: float | None, part: str = ""
) -> Taken:
    """A place that names something: the name is what is left of the phrase."""
    if at >= len(phrase.items):
        return None
    after = len(phrase.items)
    name = _text(phrase, at, after)
    if isinstance(_value(phrase, at), Measure | Day | Span | Money):
        return None
    text = _text(phrase, start, after)
    return Spot(relation, name, distance, part, None, text), after


def _text(phrase: Phrase, at: int, after: int) -> str:
    return phrase.text[phrase.items[at].at : phrase.items[after - 1].end]


def _run(phrase: Phrase, at: int, stops: Stops) -> Taken:
    """Words up to one that opens something else; figures end it, number words do not."""
    after = at
    while after < len(phrase.items):
        value = phrase.items[after].value
        spelled = isinstance(value, Number) and value.text.isalpha()
        if isinstance(value, Word) and (value.text[0].isdigit() or _linking(value, after == at)):
            break  # a figure that could not be read, or a word that only links
        month = isinstance(value, Day) and value.day is None and value.year is None
        if not (isinstance(value, Word) or spelled or month):
            break
        if after > at and any(
            tuple(_word(phrase, after + step) for step in range(len(stop))) == stop
            for stop in stops
        ):
            break
        if after > at and _spot(phrase, after, frozenset()) is not None:
            break
        after += 1
    if after == at:
        return None
    return _text(phrase, at, after), after


def _linking(word: Word, first: bool) -> bool:  # noqa: FBT001 - "does it come first" is the question
    return first and word.plain in {"and", "or", "of", "-", "–", "+", "&", ""}


def _rest(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    """All that is left of the phrase, as typed."""
    if at >= len(phrase.items):
        return None
    return _text(phrase, at, len(phrase.items)), len(phrase.items)


def _job(phrase: Phrase, at: int, stops: Stops) -> Taken:
    """The words of a step, up to `to` with a date, `by`, `because` or the phrase's end."""
    after = at
    while after < len(phrase.items):
        word = _word(phrase, after)
        if after > at and word in {"because", "until"}:
            break
        if after > at and word in {"to", "by", "on"}:
            if _date(phrase, after + 1, stops) is not None:
                break
        if after > at and isinstance(phrase.items[after].value, Day):
            break
        after += 1
    if after == at:
        return None
    return _text(phrase, at, after), after


def _reason(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    value = _value(phrase, at)
    if isinstance(value, Quoted):
        return value.words, at + 1
    return _rest(phrase, at, _stops)


def _cultivar(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    value = _value(phrase, at)
    if isinstance(value, Cultivar):
        return value.name, at + 1
    if isinstance(value, Quoted):
        return value.words, at + 1
    return None


def _capital(phrase: Phrase, at: int, stops: Stops) -> Taken:
    """A person: a run of words that begins with a capital letter (people may be called May)."""
    value = _value(phrase, at)
    if value is None or not value.text[:1].isupper():
        return None
    if isinstance(value, Day) and value.day is not None:
        return None
    return _run(phrase, at, stops)


_TAKERS: dict[str, Callable[[Phrase, int, Stops], Taken]] = {
    "count": _count,
    "number": _number,
    "year": _year,
    "length": _length,
    "lengths": _lengths,
    "section": _section,
    "size": _size,
    "date": _date,
    "dates": _dates,
    "hours": _hours,
    "weekday": _weekday,
    "direction": _direction,
    "line": _line,
    "degrees": _degrees,
    "spot": _spot,
    "weight": _one(Measure, "weight"),
    "years": _one(Measure, "years"),
    "time": _one(Measure, "time"),
    "warmth": _one(Measure, "warmth"),
    "pull": _one(Measure, "pull"),
    "gauge": _one(Measure, "gauge"),
    "speed": _one(Measure, "speed"),
    "nail": _one(Nail),
    "money": _one(Money),
    "season": _one(Season),
    "cultivar": _cultivar,
    "reason": _reason,
    "words": _run,
    "plant": _run,
    "kind": _run,
    "stuff": _run,
    "name": _rest,
    "text": _rest,
    "rule": _run,
    "job": _job,
    "person": _capital,
}
TYPES = frozenset(_TAKERS)
