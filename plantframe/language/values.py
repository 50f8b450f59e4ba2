"""What a phrase is made of once read: numbers, measures, sizes, days, names and plain words."""

from __future__ import annotations

from functools import cached_property

from plantframe.frozen import frozen

# Unit as typed (lower case, without a full stop) -> (dimension, factor to the base unit, the way
# the unit is written back). Base units: m, kg, N, hours of work and days of waiting: the last two
# are kept apart, since a gardener's hour is work and a gardener's week is waiting.
# The yard, foot, inch, pound and ounce are those of the international agreement of 1959, as in
# NIST Special Publication 811, appendix B.8.
UNITS: dict[str, tuple[str, float, str]] = {}


def _unit(dimension: str, factor: float, shown: str, *spellings: str) -> None:
    for spelling in (shown, *spellings):
        UNITS[spelling] = (dimension, factor, shown)


_unit("length", 0.001, "mm", "millimetre", "millimetres", "millimeter", "millimeters")
_unit("length", 0.01, "cm", "centimetre", "centimetres", "centimeter", "centimeters")
_unit("length", 1.0, "m", "metre", "metres", "meter", "meters")
_unit("length", 1000.0, "km")
_unit("length", 0.0254, "in", "inch", "inches", '"', "″", "”", "''", "’’", "′′")
_unit("length", 0.3048, "ft", "feet", "foot", "'", "′", "’")
_unit("length", 0.9144, "yd", "yds", "yard", "yards")
_unit("weight", 0.001, "g", "gram", "grams")
_unit("weight", 1.0, "kg", "kgs", "kilo", "kilos", "kilogram", "kilograms")
_unit("weight", 0.45359237, "lb", "lbs", "pound", "pounds")
_unit("weight", 0.028349523125, "oz", "ounce", "ounces")
_unit("work", 1 / 60, "min", "mins", "minute", "minutes")
_unit("work", 1.0, "h", "hr", "hrs", "hour", "hours")
_unit("time", 1.0, "days", "day")
_unit("time", 7.0, "weeks", "week", "wk", "wks")
_unit("time", 14.0, "fortnights", "fortnight")
_unit("time", 30.4, "months", "month")
_unit("years", 1.0, "years", "year", "yr", "yrs")
_unit("warmth", 1.0, "C", "c", "°c", "° c", "degrees")
_unit("pull", 1.0, "N", "n")
_unit("volume", 1.0, "l", "litre", "litres", "liter", "liters")
_unit("speed", 1 / 3.6, "km/h")
_unit("speed", 0.44704, "mph")
_unit("speed", 1.0, "m/s")
_unit("area", 1.0, "m²", "m2")
_unit("gauge", 1.0, "gauge", "swg", "awg")


@frozen
class Number:
    """A bare figure: `5`, `two`, `½`."""

    value: float
    text: str


@frozen
class Measure:
    """A figure with its unit. `value` is in the base unit of its dimension (m, kg, h, days …)."""

    value: float
    dimension: str
    unit: str
    text: str


@frozen
class Size:
    """Two or three sides: `2x4`, `45x95 mm`, `6 ft 6 in x 16 ft`."""

    sides: tuple[Number | Measure, ...]
    text: str

    @property
    def bare(self) -> bool:
        """No side has a unit, as in the trade's `2x4`."""
        return all(isinstance(side, Number) for side in self.sides)


@frozen
class Day:
    """A date as typed: the year may be missing, and so may the day (`mid May`, `June`)."""

    day: int | None
    month: int
    year: int | None
    part: str  # "", "early", "mid", "late", "start", "end"
    text: str


@frozen
class Span:
    """`10 to 20 July`, `1 m to 4 m`, `15–30 kg`."""

    low: Value
    high: Value
    text: str


@frozen
class Cultivar:
    """A cultivar name in single quotes, as the naming code writes it (ICNCP)."""

    name: str
    text: str


@frozen
class Quoted:
    """Words in double quotes."""

    words: str
    text: str


@frozen
class Nail:
    """A nail by its penny size: `20d`."""

    penny: int
    text: str


@frozen
class Money:
    """A price."""

    amount: float
    text: str


@frozen
class Bearing:
    """Degrees and minutes of latitude or longitude."""

    degrees: float
    text: str


@frozen
class Season:
    """A growing season across new year: `2026-27`."""

    first: int
    second: int
    text: str


@frozen
class Slashed:
    """`3/11/2026`: whose order of day and month nobody can know."""

    parts: tuple[int, ...]
    text: str


@frozen
class Word:
    """Any other word or sign."""

    text: str

    @property
    def plain(self) -> str:
        """Lower case, without the punctuation that hangs on it."""
        return self.text.lower().strip(".:;!?")


Value = (
    Number
    | Measure
    | Size
    | Day
    | Span
    | Cultivar
    | Quoted
    | Nail
    | Money
    | Bearing
    | Season
    | Slashed
    | Word
)


@frozen
class Item:
    """One value of a phrase and where it stands: `at` counts characters from the phrase's start."""

    value: Value
    at: int
    end: int


@frozen
class Doubt:
    """A figure that can be meant two ways: which kind of slip, where it stands, and as typed."""

    slip: str
    at: int
    text: str


@frozen
class Phrase:
    """What stands between two commas. `column` counts from 1."""

    text: str
    column: int
    items: tuple[Item, ...]
    doubts: tuple[Doubt, ...] = ()

    @cached_property
    def words(self) -> tuple[str, ...]:
        """Every item as plain lower-case text."""
        return tuple(plain(item.value) for item in self.items)


def plain(value: Value) -> str:
    """A value as lower-case text without hanging punctuation."""
    return value.plain if isinstance(value, Word) else value.text.lower()
