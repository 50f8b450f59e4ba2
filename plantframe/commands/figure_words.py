"""A figure of the catalogue in words, and what it rests on."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.catalogue import reading as catalogue
from plantframe.catalogue.mistakes import CatalogueError
from plantframe.catalogue.units import unit_named

if TYPE_CHECKING:
    from plantframe.catalogue.sourced import Sourced


def figure(value: Sourced) -> str:
    """A sourced value as it is written: `2.4 to 3.5 m`, `twines`."""
    if value.is_word:
        return value.value
    if " from " in value.unit:
        return _counted_from(value)
    unit = unit_named(value.unit)
    factor, offset = (unit.factor, unit.offset) if unit else (1.0, 0.0)
    if _months(value):
        factor /= 12

    def typed(number: float) -> str:
        return f"{(number - offset) / factor:.{2 if _months(value) else 3}g}"

    low = typed(value.low) if value.low is not None else ""
    high = typed(value.high) if value.high is not None else ""
    words = {"per m": "a metre", "kg/m": "kg a metre", "kg/m2": "kg/m²", "C": "°C"}
    unit_text = "months" if _months(value) else words.get(value.unit, value.unit)
    if low and high and low != high:
        middle = typed(value.middle) if value.middle is not None else ""
        mean = typed((value.low + value.high) / 2) if value.low is not None and value.high else ""
        core = f"{low} to {high}" + (f", mostly {middle}" if middle not in {"", mean} else "")
    elif low and high:
        core = low
    elif low:
        core = f"{low} or more"
    else:
        core = f"up to {high}"
    return f"{core} {unit_text}".strip()


def _months(value: Sourced) -> bool:
    """A stay of less than a year is told in months."""
    return value.unit == "years" and value.high is not None and value.high < 1


def _counted_from(value: Sourced) -> str:
    """Time counted from a day: `2 to 4 weeks before last frost`, `60 to 70 days after sowing`."""
    unit, _, event = value.unit.partition(" from ")
    known = unit_named(value.unit)
    factor = known.factor if known else 1.0
    ends = [one / factor for one in (value.low, value.high) if one is not None]
    low, high = min(ends), max(ends)
    if low < 0 < high:
        return f"{-low:.3g} {unit} before to {high:.3g} {unit} after {event}"
    if low == high == 0:
        return f"at {event}"
    side = "before" if low < 0 else "after"
    near, far = sorted((abs(low), abs(high)))
    span = f"{near:.3g}" if near == far else f"{near:.3g} to {far:.3g}"
    one = unit.removesuffix("s") if near == far == 1 else unit
    return f"{span} {one} {side} {event}"


class Cited:
    """The sources that a page names: each by a number where it is named, in full at its foot."""

    def __init__(self) -> None:
        """Begin a page."""
        self._numbers: dict[str, int] = {}

    def mark(self, key: str) -> str:
        """A source's number on this page, in square brackets."""
        return f"[{self._numbers.setdefault(key, len(self._numbers) + 1)}]"

    def listed(self) -> list[tuple[str, str]]:
        """Every source named so far: its mark, and who published what."""
        return [(f"[{number}]", _named(key)) for key, number in self._numbers.items()]


def _named(key: str) -> str:
    try:
        source = catalogue.source(key)
    except CatalogueError:
        source = None  # the list of sources says what is wrong with it
    return f"{source.publisher}, {source.title}" if source is not None else key


def origin(value: Sourced, cited: Cited) -> str:
    """Where it is from, in a phrase."""
    said = "your figure" if value.basis == "yours" else value.basis
    if value.source:
        said += f" {cited.mark(value.source)}"
    if value.printed:
        said += f" (printed: {value.printed})"
    if value.doubt:
        said += f"; {value.doubt}"
    return said
