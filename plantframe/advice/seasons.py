"""Seasons in a catalogue's words as months of the year, north or south of the equator."""

from __future__ import annotations

import re

_FIRST = {"spring": 3, "summer": 6, "autumn": 9, "winter": 12}
_PART = {"early": 0, "mid": 1, "late": 2}
_NAMED = re.compile(
    r"(?:(early|mid|late)\s*)?(?:(?:and|to)\s+(early|mid|late)\s*)?(spring|summer|autumn|winter)"
)
FROST_MONTH = 10  # `summer to frost`
HALF_YEAR = 6


def months_of(text: str, *, southern: bool = False) -> tuple[int, int] | None:
    """First and last month that words such as `early and midsummer` name; None for no season.

    Source: the seasons of the weather services, three calendar months each from March on.
    """
    months: list[int] = []
    for early, late, season in _NAMED.findall(text.lower()):
        parts = [part for part in (early, late) if part] or list(_PART)
        months += [(_FIRST[season] + _PART[part] - 1) % 12 + 1 for part in parts]
    if not months:
        return None
    if "to frost" in text:
        months.append(FROST_MONTH)
    # a winter begins in December
    first, last = (end(months, key=lambda month: month % 12) for end in (min, max))
    return (turned(first), turned(last)) if southern else (first, last)


def turned(month: int) -> int:
    """The month of the same season on the other side of the equator."""
    return (month + HALF_YEAR - 1) % 12 + 1


def within(month: int, first: int, last: int) -> bool:
    """Whether a month lies within a span of months, which may run over the new year."""
    return (month - first) % 12 <= (last - first) % 12


def before(month: int, count: int) -> int:
    """The month so many months earlier."""
    return (month - count - 1) % 12 + 1
