"""What the garden says of its weather, month by month."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.seasons import within
from plantframe.language.slots import When
from plantframe.season.normals import normals_c

if TYPE_CHECKING:
    from plantframe.plan.things import Garden

__all__ = ["cold_winters", "is_in", "normals_c", "spans"]

FROZEN_M = 0.30


def spans(garden: Garden, word: str) -> tuple[tuple[int, int], ...]:
    """First and last month of each span of `storms` or `rains`."""
    found = []
    for fact in garden.facts.get(word, ()):
        for when in fact.all("dates"):
            if isinstance(when, When) and when.day is not None:
                last = when.last or when.day
                found.append((when.day.month, last.month))
    return tuple(found)


def is_in(month: int, months: tuple[tuple[int, int], ...]) -> bool:
    """Whether a month lies within one of these spans."""
    return any(within(month, first, last) for first, last in months)


def cold_winters(garden: Garden, below_c: float) -> bool:
    """The plan says that it freezes hard: a coldest month so cold, or ground frozen a foot deep."""
    lows = normals_c(garden, "normal low")
    if lows:
        return min(lows.values()) <= below_c
    return garden.frost_depth_m is not None and garden.frost_depth_m >= FROZEN_M
