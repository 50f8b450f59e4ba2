"""How much is too much, in words: one way of saying it for every rule that compares two figures."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.season.loads import LIKELY, TIMES
from plantframe.season.units import times

if TYPE_CHECKING:
    from plantframe.season.units import Shown


def how_much(ratio: float, tight: str) -> str:
    """A comparison that is no longer silent; `tight` says what it is about as much as."""
    if ratio <= LIKELY:
        return f"about as much as {tight}: tight"
    if ratio <= TIMES:
        return "likely too much"
    return f"about {times(ratio)} too much"


def areas(low: float, high: float, shown: Shown) -> str:
    """A range of areas: `1.5 to 2.4 m²`."""
    first, last = shown.area(low), shown.area(high)
    return first if first == last else f"{first.split()[0]} to {last}"


def place_words(place: str) -> str:
    """`an average place`, `a windy place`."""
    return f"{'an' if place[:1] in 'aeiou' else 'a'} {place} place"


def wind_assumed(shown: Shown) -> str:
    """What is taken of the wind, in a sentence begun and not ended."""
    gust = "45 miles" if shown.imperial else "70 km"
    return (
        f"A summer gust of {gust} an hour in the open, less behind walls and hedges; leaves that "
        "let part of it through"
    )
