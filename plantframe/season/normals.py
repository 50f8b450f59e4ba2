"""What the garden says of its weather, month by month."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.language.slots import When
from plantframe.language.values import Measure

if TYPE_CHECKING:
    from plantframe.plan.things import Garden


def normals_c(garden: Garden, word: str) -> dict[int, float]:
    """`normal high` or `normal low` by month, in degrees Celsius."""
    found: dict[int, float] = {}
    for fact in garden.facts.get(word, ()):
        month, warmth = fact.get("month"), fact.get("warmth")
        if isinstance(month, When) and month.day is not None and isinstance(warmth, Measure):
            found[month.day.month] = warmth.value
    return found
