"""A figure with its doubt: low, middle and high, carried through a sum to the end."""

from __future__ import annotations

from typing import NamedTuple


class Range(NamedTuple):
    """Low, middle and high of one quantity, in one unit, in rising order.

    It is a plain tuple of three floats; a sum may unpack it.
    """

    low: float
    middle: float
    high: float

    def times(self, factor: float) -> Range:
        """Return every figure times `factor`, a number not below zero (the unit may change)."""
        return Range(self.low * factor, self.middle * factor, self.high * factor)

    def plus(self, other: Range) -> Range:
        """Return the sum, figure by figure: both at their low, both at their middle, both high."""
        return Range(self.low + other.low, self.middle + other.middle, self.high + other.high)


def weaker(one: Range, other: Range) -> Range:
    """Return the lesser, figure by figure: what holds when either link may give way first."""
    return Range(min(one.low, other.low), min(one.middle, other.middle), min(one.high, other.high))


def load_ratio(asked: Range, carried: Range) -> Range:
    """Asked over carried, no unit; the low end sets the least load against the most strength.

    Every figure of `carried` must be above zero.
    Source: interval arithmetic.
    """
    return Range(asked.low / carried.high, asked.middle / carried.middle, asked.high / carried.low)
