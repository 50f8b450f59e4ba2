"""How near a sum must come to a printed number: half a unit of its last printed digit."""

from __future__ import annotations

from decimal import Decimal


def half_unit(number: str) -> float:
    """Half a unit of the last digit of a number as printed: "5.02" -> 0.005."""
    exponent = Decimal(number).as_tuple().exponent
    assert isinstance(exponent, int), f"{number} is not a finite number"
    return 0.5 * 10.0**exponent


def agrees(found: float, number: str, halves: float = 1) -> bool:
    """Tell whether a sum rounds to a number as it is printed.

    `halves` is more than one only where the source itself goes on with rounded figures; the test
    says where.
    """
    return abs(found - float(number)) <= halves * half_unit(number) * (1 + 1e-9)
