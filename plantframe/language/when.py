"""Dates as typed: a day, part of a month, a span, weeks from a frost, a feast."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.frozen import frozen, replace
from plantframe.language.items import Stops, Taken, cut, value_at, word_at
from plantframe.language.values import Day, Measure, Number, Season, Slashed, Span, Word

if TYPE_CHECKING:
    from plantframe.language.values import Phrase

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
    "memorial day",
    "victoria day",
    "labor day",
    "labour weekend",
    "cup day",
)
_OTHER_NAMES = {
    "xmas": "christmas",
    "hallowe'en": "halloween",
    "all hallows": "all saints",
    "whit sunday": "whitsun",
    "easter sunday": "easter",
    "st john's": "midsummer",
    "st martin's": "martinmas",
    "labor day weekend": "labor day",
    "memorial day weekend": "memorial day",
    "victoria day weekend": "victoria day",
}
FROSTS = ("last frost", "first frost")
# How a feast or a frost may be written -> what it is; the longest is tried first.
_ANCHORS = sorted(
    [*((name, name) for name in (*FEASTS, *FROSTS)), *_OTHER_NAMES.items()],
    key=lambda pair: -len(pair[0]),
)
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
    "day": ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"),
}
_SHORT_DAYS = {name[:3] for name in WEEKDAYS if name.endswith("day") and len(name) > 3}
_LINKS = frozenset({"on", "in", "from", "around", "about", "the", "by"})
# Which week of a month, or which half: so many go before it.
_PLACES = {"first": 0, "second": 1, "third": 2, "fourth": 3}
_PLACES |= {"1st": 0, "2nd": 1, "3rd": 2, "4th": 3}


@frozen
class When:
    """A date as typed: a day, a span of days, or so many days from a frost or a feast."""

    day: Day | None = None
    last: Day | None = None
    from_days: float = 0.0
    anchor: str = ""  # "last frost", "first frost" or a feast
    slashed: bool = False
    text: str = ""


def date(phrase: Phrase, at: int, stops: Stops) -> Taken:
    """A date: `18 May`, `on Saturday 18 May`, `mid May`, `2 weeks after last frost`, `Easter`."""
    value = value_at(phrase, at)
    word = word_at(phrase, at)
    if isinstance(value, Word) and (word in _LINKS or _is_weekday(word)):
        # `sow in April`; but `in Long Bed` is a place
        return date(phrase, at + 1, stops)
    if isinstance(value, Day):
        whole_month = value.day is None and not value.part
        if whole_month and word_at(phrase, at + 1) in {"week", "weekend"}:
            return None
        return When(day=value, text=value.text), at + 1
    if isinstance(value, Span) and isinstance(value.low, Day) and isinstance(value.high, Day):
        return When(day=value.low, last=value.high, text=value.text), at + 1
    if isinstance(value, Slashed) and len(value.parts) in {2, 3}:
        return When(slashed=True, text=value.text), at + 1
    return _week_of_month(phrase, at) or _from_anchor(phrase, at)


def dates(phrase: Phrase, at: int, stops: Stops) -> Taken:
    """A date or a span of dates; `until` may link the two: `1 October until 15 April`."""
    first = date(phrase, at, stops)
    if first is None or word_at(phrase, first[1]) not in {"until", "till", "to"}:
        return first
    second = date(phrase, first[1] + 1, stops)
    start, stop = first[0], second[0] if second is not None else None
    if second is None or not isinstance(start, When) or not isinstance(stop, When):
        return first
    if start.day is None or start.last is not None or stop.day is None:
        return first
    both = replace(start, last=stop.last or stop.day, text=cut(phrase, at, second[1]))
    return both, second[1]


def _is_weekday(word: str) -> bool:
    return word in _SHORT_DAYS or (word in WEEKDAYS and word.endswith("day") and len(word) > 3)


def _week_of_month(phrase: Phrase, at: int) -> Taken:
    """`first week of June`, `last two weeks in April`, `second half of May`."""
    place, part, after = word_at(phrase, at), word_at(phrase, at + 1), at + 2
    number = value_at(phrase, at + 1)
    if isinstance(number, Measure) and number.unit == "weeks":
        days = round(number.value)
    elif part in {"week", "weekend"}:
        days = 7
    elif part == "half":
        days = 15
    else:
        return None
    after += word_at(phrase, after) in {"of", "in"}
    month = value_at(phrase, after)
    if not isinstance(month, Day) or month.day is not None or month.part or days > 28:
        return None
    text = cut(phrase, at, after + 1)
    if place == "last" or (place, days) == ("second", 15):
        start = replace(month, day=None, part=f"last {days} days")
        return When(day=start, last=replace(month, part="end"), text=text), after + 1
    if place not in _PLACES:
        return None
    first = 1 + _PLACES[place] * days
    if first + days - 1 > 28 and days != 15:
        return None
    last = first + days - 1
    return When(day=replace(month, day=first), last=replace(month, day=last), text=text), after + 1


def _from_anchor(phrase: Phrase, at: int) -> Taken:
    """`before Christmas`, `last frost`, `2 weeks after last frost`."""
    start, days = at, 0.0
    value = value_at(phrase, at)
    if isinstance(value, Measure) and value.dimension == "time":
        side = word_at(phrase, at + 1)
        if side not in {"after", "before", "from", "past"}:
            return None
        days = -value.value if side == "before" else value.value
        at += 2
    elif isinstance(value, Word) and value.plain in {"before", "after"}:
        at += 1
        day = value_at(phrase, at)
        if isinstance(day, Day) and day.day is not None:  # `before 1 May`
            return When(day=day, text=cut(phrase, start, at + 1)), at + 1
    anchor, after = _anchor(phrase, at)
    if not anchor:
        return None
    return When(from_days=days, anchor=anchor, text=cut(phrase, start, after)), after


def _anchor(phrase: Phrase, at: int) -> tuple[str, int]:
    at += word_at(phrase, at) in {"the", "average"}
    at += word_at(phrase, at) == "average"
    for written, name in _ANCHORS:
        words = written.split()
        here = [word_at(phrase, at + step).replace("’", "'") for step in range(len(words))]
        if here == words or [one.removesuffix("'s") for one in here] == words:
            after = at + len(words)
            if "frost" in name:
                return name, after + (word_at(phrase, after) in {"date", "day"})
            if word_at(phrase, after) in {"day", "eve"} and not name.endswith("day"):
                after += 1
            return name, after
    return "", at


def weekday(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    """The days a word stands for: `Sat`, `Wednesdays`, `weekday evenings`, `every day`."""
    word = word_at(phrase, at)
    if word == "every" and word_at(phrase, at + 1).startswith(("day", "evening")):
        return WEEKDAYS["day"], at + 2
    first, dash, second = word.partition("-")
    days = _days_named(first)
    if dash:
        return (_run_of_days(first, second), at + 1) if _run_of_days(first, second) else None
    if not days:
        return None
    after = at + 1
    linked = word_at(phrase, after) in {"to", "-", "–"}
    if linked and (run := _run_of_days(first, word_at(phrase, after + 1))):
        return run, after + 2
    if word_at(phrase, after).removesuffix("s") in {"evening", "morning", "afternoon"}:
        after += 1
    return days, after


def _days_named(word: str) -> tuple[str, ...]:
    name = word.removesuffix("s")
    for day, covered in WEEKDAYS.items():
        short = len(name) >= 3 and day.startswith(name) and name != "wee"
        if name == day or (short and len(covered) == 1):
            return covered
    return ()


def _run_of_days(first: str, last: str) -> tuple[str, ...]:
    """`Mon-Fri`, `Saturday to Sunday`."""
    start, stop = _days_named(first), _days_named(last)
    week = WEEKDAYS["day"]
    if len(start) != 1 or len(stop) != 1:
        return ()
    at, end = week.index(start[0]), week.index(stop[0])
    return week[at : end + 1] if at <= end else (*week[at:], *week[: end + 1])


def hours(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    """Hours of work or sun: `6 h`, `half a day`, `all day`, `4 to 6 h`. A day is eight hours."""
    value = value_at(phrase, at)
    if isinstance(value, Span) and getattr(value.low, "dimension", "") == "work":
        return value, at + 1
    if isinstance(value, Measure) and value.dimension == "work":
        return value, at + 1
    if isinstance(value, Measure) and value.unit == "days":
        return Measure(value.value * 8, "work", "h", value.text), at + 1
    if word_at(phrase, at) == "all" and word_at(phrase, at + 1) == "day":
        return Measure(8.0, "work", "h", cut(phrase, at, at + 2)), at + 2
    return None


def year(phrase: Phrase, at: int, _stops: Stops) -> Taken:
    """A year, a season, several years (`2023 to 2025`) or `last year`."""
    value = value_at(phrase, at)
    if isinstance(value, Number) and _is_year(value):
        return value, at + 1
    if isinstance(value, Span) and _is_year(value.low) and _is_year(value.high):
        return value, at + 1
    if isinstance(value, Season):
        return value, at + 1
    if word_at(phrase, at) == "last" and word_at(phrase, at + 1) == "year":
        return Word("last year"), at + 2
    return None


def _is_year(value: object) -> bool:
    return isinstance(value, Number) and 1900 <= value.value <= 2100 and value.value % 1 == 0
