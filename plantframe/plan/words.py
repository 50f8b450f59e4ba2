"""Small readings: what single facts mean in hours, soils, winds, figures."""

from __future__ import annotations

from types import MappingProxyType
from typing import TYPE_CHECKING

from plantframe.language.slots import Section
from plantframe.language.values import Measure, Money, Number, Size, Span
from plantframe.language.values import Season as TypedSeason

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from plantframe.language.reader import Block, Fact

# Hours of direct sun in summer that a gardener's word stands for (common practice, no source).
SUN = {
    "full": (8.0, 10.0),
    "half": (4.0, 6.0),
    "morning": (4.0, 6.0),
    "afternoon": (4.0, 6.0),
    "none": (0.0, 2.0),
    "dappled": (3.0, 4.0),
}
_SAME_SUN = {
    "all day": "full",
    "part": "half",
    "partial": "half",
    "evening": "afternoon",
    "shade": "none",
    "broken": "dappled",
    "no": "none",
}
# The noun of a soil -> the class sums know; an adjective before it may say more.
_SOILS = {
    "clay": "firm clay",
    "loam": "firm loam",
    "sand": "loose sand",
    "gravel": "loose sand",
}


def first(facts: Iterable[Fact], word: str) -> Fact | None:
    """The first fact of a word."""
    return next((fact for fact in facts if fact.word == word), None)


def metres(value: object) -> float | None:
    """A length's metres; of a span, the lesser."""
    if isinstance(value, Span):
        return metres(value.low)
    if isinstance(value, Measure) and value.dimension == "length":
        return value.value
    return None


def whole(value: object) -> int | None:
    """A count, None where there is none or less than one."""
    return int(value.value) if isinstance(value, Number) and value.value >= 1 else None


def amount(value: object) -> float | None:
    """A price, with or without its sign."""
    if isinstance(value, Number):
        return value.value
    return value.amount if isinstance(value, Money) else None


def sides_m(size: object) -> tuple[float | None, float | None]:
    """Length and width of a bed: the longer side is its length."""
    if not isinstance(size, Size):
        return None, None
    sides = sorted(side.value for side in size.sides)
    return sides[-1], sides[0]


def sun(fact: Fact | None, head: str = "") -> tuple[str, tuple[float, float] | None]:
    """The sun of a place in one word, and the hours it stands for.

    head   what the head says of it, as in `in full sun`; a fact outweighs it
    """
    if fact is None:
        kind = _SAME_SUN.get(head, head)
        return kind, SUN.get(kind)
    hours = fact.get("hours")
    if isinstance(hours, Measure):
        return hours.text, (hours.value, hours.value)
    if isinstance(hours, Span) and isinstance(hours.low, Measure):
        high = hours.high.value if isinstance(hours.high, Measure) else hours.low.value
        return hours.text, (hours.low.value, high)
    said = str(fact.get("kind") or "")
    kind = _SAME_SUN.get(said, said)
    return kind, SUN.get(kind)


def wind(fact: Fact | None) -> str:
    """sheltered, average, windy or "" where nothing is said."""
    said = str(fact.get("class") or "") if fact else ""
    return "windy" if said == "exposed" else said


def soil(fact: Fact | None) -> str:
    """The soil in the words of the classes sums know, as near as what was typed.

    The last noun names a soil, as in the texture classes of soil surveys: a clay loam is a loam,
    a sandy clay a clay.
    """
    if fact is None:
        return ""
    said = " ".join(map(str, (*fact.all("state"), *fact.all("stuff")))).lower()
    words = said.replace(",", " ").split()
    noun = next((word for word in reversed(words) if word in _SOILS), "")
    if noun == "clay":
        return next((f"{word} clay" for word in words if word in {"wet", "stiff"}), "firm clay")
    if noun:
        return _SOILS[noun]
    if {"sandy", "loose"} & set(words):
        return "loose sand"
    return "firm loam" if "firm" in words else said.strip()


def place(facts: Iterable[Fact]) -> tuple[float | None, float | None]:
    """Latitude and longitude; of two bare figures the first is the latitude (ISO 6709)."""
    found: dict[str, float] = {}
    fact = first(facts, "place")
    for value in fact.all("degrees") if fact else ():
        if isinstance(value, tuple):
            side, degrees = value
            side = side or ("longitude" if "latitude" in found else "latitude")
            found.setdefault(side, degrees)
    latitude = found.get("latitude")
    if latitude is not None and abs(latitude) > 90:
        latitude = None
    return latitude, found.get("longitude")


def free_h(facts: Iterable[Fact]) -> Mapping[str, float]:
    """Hours free on each day of the week; days in a row share the hours after them."""
    hours: dict[str, float] = {}
    for fact in facts:
        days: tuple[str, ...] = ()
        told = False
        for slot in fact.slots:
            if slot.name == "weekday" and isinstance(slot.value, tuple):
                days = slot.value if told else (*days, *slot.value)
                told = False
            elif slot.name == "hours":
                told = True
                value = slot.value.low if isinstance(slot.value, Span) else slot.value
                if isinstance(value, Measure):
                    hours.update({day: hours.get(day, 0.0) + value.value for day in days})
    return MappingProxyType(hours)


def ages(fact: Fact | None) -> tuple[float, ...] | None:
    """How old the children are; None where there are none."""
    if fact is None:
        return None
    return tuple(value.value for value in fact.all("age") if isinstance(value, Number))


def season_years(block: Block) -> tuple[int, int] | None:
    """The years in the head of a garden."""
    season, year = block.head.get("season"), block.head.get("year")
    for typed in (season, year):
        if isinstance(typed, TypedSeason):
            return typed.first, typed.second
    return (int(year.value), int(year.value)) if isinstance(year, Number) else None


def imperial(blocks: Iterable[Block]) -> bool:
    """Whether most lengths of the plan are in feet and inches."""
    feet = metric = 0
    for block in blocks:
        for fact in (block.head, *block.facts):
            for slot in fact.slots:
                for unit in _units(slot.value):
                    feet += unit in {"ft", "in", "ft in", "yd"}
                    metric += unit in {"mm", "cm", "m"}
    return feet > metric


def _units(value: object) -> list[str]:
    if isinstance(value, Measure) and value.dimension == "length":
        return [value.unit]
    if isinstance(value, Size):
        return [side.unit for side in value.sides if isinstance(side, Measure)]
    if isinstance(value, Section) and value.nominal:
        return ["in"]
    return []
