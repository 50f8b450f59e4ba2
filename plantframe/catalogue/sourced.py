"""A figure or a word that knows where it is from."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from plantframe.catalogue.units import unit_named
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Mapping

    from plantframe.catalogue.units import Unit

BASES: Final = ("published", "common practice", "estimate", "sum", "yours")
KEYS: Final = frozenset(
    {"low", "middle", "high", "value", "unit", "basis", "source", "printed", "doubt", "also"}
)
# What may stand beside a value without being a part of it is the business of the entry.


@frozen
class Sourced:
    """One value with its range and its origin.

    low, middle, high   in the base unit (m, kg, kg/m, days, years, C ...), see units.py;
                        None where the value is a word or the range has one side only
    unit                the unit it was written in
    base                the unit that low, middle and high are in
    value               the word, where the value is a word ("yes" and "no" for a flag)
    basis               published, common practice, estimate, sum, or yours
    source              key of a file in sources/, where published
    printed             what the page printed, so that a conversion can be checked
    doubt               what speaks against it
    also                what other sources say instead
    """

    low: float | None = None
    middle: float | None = None
    high: float | None = None
    unit: str = ""
    base: str = ""
    value: str = ""
    basis: str = "estimate"
    source: str | None = None
    printed: str = ""
    doubt: str = ""
    also: tuple[Sourced, ...] = ()

    @property
    def is_word(self) -> bool:
        """Whether the value is a word and no figure."""
        return bool(self.value)

    @property
    def usual(self) -> float:
        """The middle, or the one side there is; not a number where it is a word."""
        for figure in (self.middle, self.low, self.high):
            if figure is not None:
                return figure
        return float("nan")


def sourced(raw: Mapping[str, object], basis: str = "") -> Sourced:
    """Make a value from a mapping as written in an entry.

    raw     keys low, middle, high or value; unit, basis, source, printed, doubt, also
    basis   taken where the mapping names none
    Raises ValueError with a plain sentence for what cannot be read.
    """
    strange = [key for key in raw if key not in KEYS]
    if strange:
        raise ValueError(f"{strange[0]!r} is no part of a figure")
    unit_text = str(raw.get("unit", ""))
    unit = unit_named(unit_text)
    if unit is None:
        raise ValueError(f"{unit_text!r} is no unit that is known here")
    word, figures = _figures(raw, unit)
    also = raw.get("also", ())
    if not isinstance(also, list | tuple):
        raise ValueError("'also' wants a list of figures")  # noqa: TRY004 - the reader catches one kind
    basis = str(raw.get("basis", basis))
    if basis not in BASES:
        raise ValueError(f"the basis is one of {', '.join(BASES)}, not {basis!r}")
    source = raw.get("source")
    if basis == "published" and not source:
        raise ValueError("a published figure names its source")
    return Sourced(
        *figures,
        unit=unit_text,
        base=unit.base,
        value=word,
        basis=basis,
        source=str(source) if source else None,
        printed=str(raw.get("printed", "")),
        doubt=str(raw.get("doubt", "")),
        also=tuple(sourced({"unit": unit_text, **one}, basis) for one in also),
    )


def _figures(
    raw: Mapping[str, object], unit: Unit
) -> tuple[str, tuple[float | None, float | None, float | None]]:
    """The word, or the low, middle and high in the base unit."""
    value = raw.get("value")
    if isinstance(value, bool):
        return ("yes" if value else "no"), (None, None, None)
    if isinstance(value, str):
        if not value:
            raise ValueError("an empty word says nothing")
        return value, (None, None, None)
    if value is not None:
        raw = {"low": value, "middle": value, "high": value}
    read = [_number(raw[key], key) if key in raw else None for key in ("low", "middle", "high")]
    low, middle, high = (None if x is None else x * unit.factor + unit.offset for x in read)
    if low is None and middle is None and high is None:
        raise ValueError("it wants a value, or a low and a high")
    if middle is None and low is not None and high is not None:
        middle = (low + high) / 2
    order = [x for x in (low, middle, high) if x is not None]
    if order != sorted(order):
        raise ValueError("low, middle and high are out of order")
    return "", (low, middle, high)


def _number(given: object, key: str) -> float:
    if isinstance(given, bool) or not isinstance(given, int | float):
        raise ValueError(f"{key} wants a figure, not {given!r}")  # noqa: TRY004 - as above
    return float(given)


_PLAIN = re.compile(
    r"(?:about |up to |at most |at least |to )?"
    r"(?P<low>\d+(?:\.\d+)?)(?:\s*(?:to|-|–)\s*(?P<high>\d+(?:\.\d+)?))?"
    r"\s*(?P<unit>[a-zA-Z°][a-zA-Z0-9/²³ ]*)?"
)


def printed_disagrees(value: Sourced) -> str:
    """What is wrong with a printed figure, or nothing.

    Only a plain figure or range with a unit can be compared ("10 to 15 ft"); a
    conversion may be rounded by one in thirty, as print itself does. Ranges given only
    in part are compared in that part.
    """
    read = _PLAIN.fullmatch(value.printed.strip())
    if not value.printed or value.is_word or not read:
        return ""
    unit = unit_named((read["unit"] or value.unit).strip())
    if unit is None or unit.base.split(" from ")[0] != value.base.split(" from ")[0]:
        return ""
    figures = [float(read["low"]), float(read["high"] or read["low"])]
    low, high = (figure * unit.factor + unit.offset for figure in figures)
    for name, ours, theirs in (("low", value.low, low), ("high", value.high, high)):
        if ours is not None and abs(ours - theirs) > max(abs(theirs) / 30, 1e-9):
            return f"printed {value.printed!r} is {theirs:.4g} {value.base}, {name} is {ours:.4g}"
    return ""
