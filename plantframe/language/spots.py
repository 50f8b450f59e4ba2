"""Places and directions as typed: `in Long Bed, north end`, `0.5 m north of Larch Bed`, `SW`."""

from __future__ import annotations

from plantframe.frozen import frozen
from plantframe.language.items import Stops, Taken, cut, value_at, word_at
from plantframe.language.values import (
    Bearing,
    Day,
    Measure,
    Money,
    Number,
    Phrase,
    Size,
    Span,
    Word,
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
_SHORT = {
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
    "northern": "north",
    "eastern": "east",
    "southern": "south",
    "western": "west",
}
# Words that open a place.
_OPENING = {
    "in",
    "on",
    "at",
    "against",
    "along",
    "over",
    "under",
    "beside",
    "near",
    "by",
    "behind",
} | {"between", "across", "round"}
_ENDS = frozenset({"end", "side", "edge", "corner", "half"})
_MIDDLES = frozenset({"middle", "centre", "center"})
# `in spring` is a time, if a vague one.
_TIMES = frozenset({"spring", "summer", "autumn", "fall", "winter", "time"})
# `in full sun` is no place either, nor is `in half shade`.
_LIGHT = frozenset({"sun", "shade"})


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


def compass(words: tuple[str, ...]) -> tuple[str, int]:
    """A direction at the start of these words, and how many it took: `south west`, `SW`."""
    if not words:
        return "", 0
    first = _SHORT.get(words[0], words[0])
    second = _SHORT.get(words[1], words[1]) if len(words) > 1 else ""
    if first in {"north", "south"} and second in {"east", "west"} and len(words[0]) > 1:
        return f"{first}-{second}", 2
    return (first, 1) if first in COMPASS else ("", 0)


def direction(phrase: Phrase, at: int, stops: Stops) -> Taken:
    """A compass direction: `north`, `the south west`, `SW`."""
    if word_at(phrase, at) == "the":
        return direction(phrase, at + 1, stops)
    name, used = compass((word_at(phrase, at), word_at(phrase, at + 1)))
    return (name, at + used) if used else None


def facing(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    """The direction something faces: `south facing`, `south-west-facing`."""
    joined = word_at(phrase, at)
    if joined.endswith("-facing"):
        name, used = compass((joined.removesuffix("-facing"),))
        return (name, at + 1) if used else None
    name, used = compass((joined, word_at(phrase, at + 1)))
    if used and word_at(phrase, at + used) == "facing":
        return name, at + used + 1
    second = word_at(phrase, at + 1).removesuffix("-facing")  # `south west-facing`
    if second != word_at(phrase, at + 1):
        name, used = compass((joined, second))
        return (name, at + 2) if used == 2 else None
    return None


def line(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    """Which way a row runs: `north-south`, `north south`, `east to west`, `N-S`, `NS`."""
    text = word_at(phrase, at)
    if text in {"ns", "sn", "ew", "we"}:
        text = f"{text[0]}-{text[1]}"
    after = at + 1
    if "-" not in text and "/" not in text:
        joint = word_at(phrase, at + 1) in {"to", "-", "–", "and"}
        text, after = f"{text}-{word_at(phrase, at + joint + 1)}", at + joint + 2
    first, _, second = text.replace("/", "-").partition("-")
    ends = {_SHORT.get(first, first), _SHORT.get(second, second)}
    if ends == {"north", "south"}:
        return "north-south", after
    if ends == {"east", "west"}:
        return "east-west", after
    return None


def degrees(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    """Degrees of latitude or longitude.

    A figure with its side (`52.1 N`, `N 52.1`, `52°06′ N`) is ("latitude", degrees); without
    one, as maps give them, it is ("", degrees), south and west below zero, latitude first (the
    order of ISO 6709).
    """
    start = at
    before = word_at(phrase, at)
    sign = -1.0 if before in {"-", "–"} else 1.0
    if before in {"-", "–"} or (before in _SHORT and len(before) == 1):
        at += 1
    else:
        before = ""
    value = value_at(phrase, at)
    if not isinstance(value, Number | Bearing | Measure):
        return None
    figure = value.degrees if isinstance(value, Bearing) else value.value
    side, after = word_at(phrase, at + 1), at + 2
    if isinstance(value, Measure):
        if value.unit not in {"N", "C"} or value.text[-1].lower() != "n":
            return None  # `52.1 N` reads as a pull of so many newtons until a place is asked for
        side, after = "north", at + 1
    elif start != at and before in _SHORT:
        side, after = before, at + 1
    side = _SHORT.get(side, side)
    if side in {"north", "south"} and abs(figure) <= 90:
        return ("latitude", figure if side == "north" else -figure), after
    if side in {"east", "west"} and abs(figure) <= 180:
        return ("longitude", figure if side == "east" else -figure), after
    if isinstance(value, Number | Bearing) and abs(figure) <= 180 and at + 1 == len(phrase.items):
        return ("", sign * figure), at + 1
    return None


def spot(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    """A place: `in Long Bed`, `0.5 m north of Larch Bed`, `from 1 m to 4 m along`, `north end`."""
    start = at
    distance_m: float | None = None
    value = value_at(phrase, at)
    if isinstance(value, Measure) and value.dimension == "length":
        distance_m = value.value
        at += 1
        if word_at(phrase, at) in {"from", "off"}:
            return _named("from", phrase, start, at + 1, distance_m)
    if distance_m is None and word_at(phrase, at) == "from":
        return _along(phrase, at)
    at += word_at(phrase, at) in {"at", "on", "in", "to"}
    at += word_at(phrase, at) == "the"
    part = _part(phrase, start, at, distance_m)
    if part is not None:
        return part
    opening = word_at(phrase, start)
    if opening == "next" and word_at(phrase, start + 1) == "to":
        return _named("beside", phrase, start, start + 2, None)
    if distance_m is None and opening in _OPENING and isinstance(value, Word):
        return _named(opening, phrase, start, start + 1, None)
    return None


def place(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    """All that is left of the phrase, as the name of a place: `for the east wall`."""
    return _named("for", phrase, at, at, None)


def _part(phrase: Phrase, start: int, at: int, distance_m: float | None) -> Taken:
    """`middle`, `north end`, `the south side of Long Bed`, `2 m north of Larch Bed`."""
    words = tuple(word_at(phrase, at + ahead) for ahead in range(3))
    side, used = compass(words)
    then = words[used] if used < 3 else ""
    if side and then == "of":
        return _named(side, phrase, start, at + used + 1, distance_m)
    if words[0] in _MIDDLES:
        part, after = "middle", at + 1
    elif side and then in _ENDS:
        part, after = f"{side} {then}", at + used + 1
    else:
        return None
    if distance_m is not None:
        return None
    if word_at(phrase, after) == "of":
        return _named("in", phrase, start, after + 1, None, part)
    if start < at and after < len(phrase.items):
        return None  # `in Middle Bed`, `in North End Bed`: a name
    return Spot(part=part, text=cut(phrase, start, after)), after


def _along(phrase: Phrase, at: int) -> Taken:
    """`from 1 m to 4 m along`."""
    span = value_at(phrase, at + 1)
    if not isinstance(span, Span) or not isinstance(span.low, Measure):
        return None
    high = span.high
    if not isinstance(high, Measure) or high.dimension != "length":
        return None
    after = at + 2 + (word_at(phrase, at + 2) == "along")
    return Spot(along_m=(span.low.value, high.value), text=cut(phrase, at, after)), after


def _end_of_name(phrase: Phrase, at: int) -> int:
    """Where a name that begins at an item ends: at a size, since none is part of a name."""
    for place in range(at + 1, len(phrase.items)):
        value = value_at(phrase, place)
        if isinstance(value, Size) or (isinstance(value, Measure) and value.dimension == "length"):
            return place
    return len(phrase.items)


def _named(
    relation: str, phrase: Phrase, start: int, at: int, distance_m: float | None, part: str = ""
) -> Taken:
    """A place that names something: the name is what is left of the phrase."""
    if at >= len(phrase.items):
        return None
    if isinstance(value_at(phrase, at), Measure | Day | Span | Money):
        return None
    if word_at(phrase, at) in _TIMES or word_at(phrase, at + 1) in _TIMES:
        return None
    if phrase.words[-1] in _LIGHT:
        return None
    after = end = _end_of_name(phrase, at)
    text = cut(phrase, start, after)
    side, used = compass(phrase.words[after - 2 : after - 1])
    if used and phrase.words[after - 1] in _ENDS and at < after - 2 and not part:
        part, end = f"{side} {phrase.words[after - 1]}", after - 2  # `in Long Bed north end`
    return Spot(relation, cut(phrase, at, end), distance_m, part, None, text), after
