"""Figures as a gardener says them: feet and inches or metres, rounded as a tape is read.

Outdoors to 5 cm or an inch, at the bench to 5 mm or an eighth; weights and ratios to two figures.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from plantframe.frozen import frozen

if TYPE_CHECKING:
    from datetime import date

    from plantframe.mechanics.ranges import Range

INCH_M = 0.0254
MOST_INCHES = 60  # up to which a range that begins in inches ends in them
FOOT_M = 0.3048
LB_KG = 0.45359237
MONTHS = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
]
WEEKDAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_EIGHTHS = {0: "", 1: "⅛", 2: "¼", 3: "⅜", 4: "½", 5: "⅝", 6: "¾", 7: "⅞"}


def two_figures(value: float) -> str:
    """A figure to two significant figures: 17.4 -> 17, 0.734 -> 0.73, 128 -> 130."""
    if value == 0 or not math.isfinite(value):
        return "0"
    places = 1 - math.floor(math.log10(abs(value)))
    rounded = round(value, places)
    return (
        f"{rounded:.{max(places, 0)}f}".rstrip("0").rstrip(".") if places > 0 else f"{rounded:.0f}"
    )


def times(ratio: float) -> str:
    """How many times, in words: 2.03 -> "twice", 1.34 -> "1.3 times"."""
    if 1.9 <= ratio < 2.15:
        return "twice"
    return f"{two_figures(ratio)} times"


def day(value: date) -> str:
    """A day without its year: 18 May."""
    return f"{value.day} {MONTHS[value.month - 1]}"


def dated(planned: date) -> str:
    """A day with its weekday and year: Sat 15 May 2027."""
    return f"{WEEKDAYS[planned.weekday()]} {day(planned)} {planned.year}"


def minutes_words(minutes: tuple[float, float]) -> str:
    """How long: `10 min`, `15 to 25 min`, `2 to 2.5 h`."""
    low, high = (max(round(one), 1) for one in minutes)
    if high >= 90:
        hours = (round(low / 30) / 2, round(high / 30) / 2)
        return f"{hours[0]:g} h" if hours[0] == hours[1] else f"{hours[0]:g} to {hours[1]:g} h"
    return f"{low} min" if low == high else f"{low} to {high} min"


def every_words(days: tuple[int, int], until: date | None) -> str:
    """How often: `every 2 to 3 days until 10 October`."""
    low, high = days
    if low == high == 1:
        often = "every day"
    elif low == high == 7:
        often = "every week"
    elif low == high:
        often = f"every {low} days"
    else:
        often = f"every {low} to {high} days"
    return f"{often} until {day(until)}" if until is not None else often


def listed(words: list[str] | tuple[str, ...], last: str = "and") -> str:
    """`a, b and c`."""
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} {last} {words[-1]}"


def plural(count: float, one: str, several: str = "") -> str:
    """`1 post`, `3 posts`."""
    shown = two_figures(count) if count % 1 else f"{count:.0f}"
    return f"{shown} {one if count == 1 else several or one + 's'}"


@frozen
class Shown:
    """Writes figures in the units the plan is typed in."""

    imperial: bool = False

    def length(self, metres: float) -> str:
        """A length outdoors: `6 ft 6 in`, `18 in`, `1.95 m`, `45 cm`."""
        if self.imperial:
            inches = round(metres / INCH_M)
            if abs(inches) < 36:
                return f"{inches} in"
            feet, rest = divmod(inches, 12)
            return f"{feet} ft {rest} in" if rest else f"{feet} ft"
        centimetres = round(metres * 20) * 5
        if abs(centimetres) < 15:
            # too small for steps of 5 cm to say anything
            centimetres = round(metres * 100)
        if abs(centimetres) < 100:
            return f"{centimetres} cm"
        return f"{centimetres / 100:.2f}".rstrip("0").rstrip(".") + " m"

    def bench(self, metres: float) -> str:
        """A length at the bench: `1½ in`, `38 mm` is written to 5 mm from 5 cm up."""
        if self.imperial:
            eighths = round(metres / INCH_M * 8)
            whole, part = divmod(eighths, 8)
            inches = f"{whole if whole or not part else ''}{_EIGHTHS[part]} in"
            if whole >= 48:
                feet, rest = divmod(whole, 12)
                inches = f"{feet} ft" + (f" {rest}{_EIGHTHS[part]} in" if rest or part else "")
            return inches
        millimetres = metres * 1000
        rounded = round(millimetres / 5) * 5 if millimetres >= 50 else round(millimetres)
        return (
            f"{rounded} mm"
            if rounded < 1000
            else f"{rounded / 1000:.3f}".rstrip("0").rstrip(".") + " m"
        )

    def exact(self, metres: float) -> str:
        """A length as near as a tape shows it, for sums that have to add up."""
        if not self.imperial:
            text = f"{metres:.3f}".rstrip("0").rstrip(".")
            return (
                f"{text} m"
                if metres >= 1
                else f"{metres * 100:.1f}".rstrip("0").rstrip(".") + " cm"
            )
        from fractions import (
            Fraction,
        )  # brings the decimal figures with it, and few plans want them

        sixteenths = Fraction(round(metres / INCH_M * 16), 16)
        feet, inches = divmod(sixteenths, 12) if sixteenths >= 36 else (0, sixteenths)
        whole, part = divmod(inches, 1)
        fraction = "" if part == 0 else f"{part.numerator}/{part.denominator}"
        said = "-".join(piece for piece in (str(whole) if whole else "", fraction) if piece)
        if feet and said:
            return f"{feet} ft {said} in"
        return f"{feet} ft" if feet else f"{said or 0} in"

    def lengths(self, low: float, high: float) -> str:
        """A range of lengths: `2.4 to 3.5 m`, `35 to 47 in`."""
        first, last = self.length(low), self.length(high)
        if first == last:
            return first
        if self.imperial and " ft" not in first:
            inches = round(high / INCH_M)
            last = f"{inches} in" if inches < MOST_INCHES else last
        unit = last.split(" ", 1)[1]
        if first.endswith(f" {unit}") and " " not in unit:
            first = first.removesuffix(f" {unit}")
        return f"{first} to {last}"

    def hanging(self, weight: Range) -> str:
        """What hangs on a metre of row: `15 to 30 kg a metre`, `10 to 20 lb a foot`."""
        return f"{self.hanging_bare(weight)} {self.a_metre}"

    def hanging_bare(self, weight: Range) -> str:
        """The same without the unit's length: `15 to 30 kg`."""
        factor = FOOT_M / LB_KG if self.imperial else 1.0
        low, high = two_figures(weight.low * factor), two_figures(weight.high * factor)
        unit = "lb" if self.imperial else "kg"
        return f"{low} {unit}" if low == high else f"{low} to {high} {unit}"

    @property
    def a_metre(self) -> str:
        """`a metre` or `a foot`."""
        return "a foot" if self.imperial else "a metre"

    def weight(self, kilograms: float) -> str:
        """A weight: `23 kg`, `51 lb`."""
        if self.imperial:
            return f"{two_figures(kilograms / LB_KG)} lb"
        return f"{two_figures(kilograms)} kg"

    def area(self, square_metres: float) -> str:
        """An area: `2.4 m²`, `26 sq ft`."""
        if self.imperial:
            return f"{two_figures(square_metres / FOOT_M**2)} sq ft"
        return f"{two_figures(square_metres)} m²"

    def warmth(self, celsius: float) -> str:
        """A temperature: `16 °C`, `60 °F`."""
        if self.imperial:
            return f"{celsius * 1.8 + 32:.0f} °F"
        return f"{celsius:.0f} °C"

    def push(self, newtons: float) -> str:
        """A sideways push as a weight one feels: `about 12 kg`."""
        return f"about {self.weight(newtons / 9.81)}"

    def per_metre(self, count: float) -> str:
        """Plants per metre or foot: `5.5 a metre`."""
        value = count * FOOT_M if self.imperial else count
        return f"{two_figures(value)} {self.a_metre}"

    def typed(self, metres: float) -> str:
        """A length as it would be typed in a plan: `4 ft`, `1.2 m`, `18 in`, `45 cm`."""
        if self.imperial:
            inches = metres / INCH_M
            feet = round(inches) / 12
            if feet >= 1 and feet == int(feet):
                return f"{int(feet)} ft"
            return self.length(metres)
        if metres < 1:
            return f"{round(metres * 100)} cm"
        return f"{metres:.2f}".rstrip("0").rstrip(".") + " m"
