"""What an entry of the catalogue says in words, told in the units the plan is typed in.

Entries are written in metres, kilograms and degrees Celsius. A gardener who types feet is told
`4 in` and `40 °F`, rounded as coarsely as the sentence itself was. Where the entry gives both,
as in `15 to 20 cm (6 to 8 in)`, each gardener is told the one.
"""

from __future__ import annotations

import re
from functools import lru_cache
from typing import TYPE_CHECKING, Final, TypeVar, cast

from plantframe.frozen import replace
from plantframe.season.units import FOOT_M, INCH_M, LB_KG, two_figures

if TYPE_CHECKING:
    from collections.abc import Callable

    from plantframe.catalogue.entries import Plant, Structure

    Entry = TypeVar("Entry", Plant, Structure)

# The fields of entries that are sentences or parts of one; the others are sums and names.
SENTENCES: Final = frozenset(
    {
        *("says", "do", "alone", "not_yet", "because", "for_", "how", "what"),
        *("storage", "clear_because", "with_", "fails"),
    }
)
# The fields that hold further entries with sentences in them.
PARTS: Final = frozenset(
    {
        *("suits", "steps", "late", "planting", "down", "care", "dangers", "limits"),
        *("training", "harm", "wait"),
    }
)
_FIGURE: Final = r"\d+(?:\.\d+)?"
_MEASURE: Final = re.compile(
    rf"(?P<first>{_FIGURE})(?:(?P<between> to | and | or | by |-)(?P<last>{_FIGURE}))? "
    r"(?P<unit>mm|cm|m|kg|°?C)\b(?P<given> \([^()]*\d (?:in|ft|lb|°?F)\))?"
)
_METRES: Final = {"mm": 0.001, "cm": 0.01, "m": 1.0}
_QUARTERS: Final = {0.25: "¼", 0.5: "½", 0.75: "¾", 0.0: ""}
# To what a length of so many inches is rounded.
_STEPS: Final = ((1.5, 0.25), (8, 0.5), (35, 1), (55, 3), (118, 6))


def told(entry: Entry, *, imperial: bool) -> Entry:
    """The entry with its sentences in feet, pounds and Fahrenheit, or in metric units."""
    key = (id(entry), imperial)
    kept = _TOLD.get(key)
    # the entry itself is kept as well, so that no other can come to have its number
    if kept is None or kept[0] is not entry:
        kept = _TOLD[key] = (entry, _through(entry, imperial=imperial))
    return cast("Entry", kept[1])


_TOLD: dict[tuple[int, bool], tuple[object, object]] = {}


def _through(value: object, *, imperial: bool) -> object:
    """The same value with every sentence in it told."""
    if isinstance(value, str):
        return value  # the name of a step or a caution
    changes: dict[str, object] = {}
    for name, old in vars(value).items():
        tell: Callable[..., object]
        if name in SENTENCES:
            tell = sentence
        elif name in PARTS and old is not None:
            tell = _through
        else:
            continue
        new: object
        if isinstance(old, tuple):
            new = tuple(tell(one, imperial=imperial) for one in old)
        else:
            new = tell(old, imperial=imperial)
        if new != old:
            changes[name] = new
    return replace(value, **changes) if changes else value


@lru_cache(maxsize=2048)
def sentence(text: str, *, imperial: bool) -> str:
    """A sentence of the catalogue in the gardener's units: `none nearer the top than 4 in`."""
    if not any(letter.isdigit() for letter in text):
        return text
    return _MEASURE.sub(_feet if imperial else _metres, text)


def _metres(found: re.Match[str]) -> str:
    unit = "°C" if found["unit"] == "C" else found["unit"]
    last = f"{found['between']}{found['last']}" if found["last"] else ""
    return f"{found['first']}{last} {unit}"


def _feet(found: re.Match[str]) -> str:
    if found["given"]:
        return found["given"].strip(" ()")
    figures = [float(found[name]) for name in ("first", "last") if found[name]]
    said = [_said(figure, found["unit"]) for figure in figures]
    first, unit = said[0].rsplit(" ", 1)
    if len(said) > 1 and said[1].endswith(f" {unit}") and " " not in first:
        said[0] = first
    return (found["between"] or "").join(said)


def _said(figure: float, unit: str) -> str:
    if unit.endswith("C"):
        return f"{figure * 1.8 + 32:.0f} °F"
    if unit == "kg":
        return f"{two_figures(figure / LB_KG)} lb"
    inches = figure * _METRES[unit] / INCH_M
    if inches >= _STEPS[-1][0]:
        return f"{round(inches * INCH_M / FOOT_M)} ft"
    step = next(step for most, step in _STEPS if inches < most)
    rounded = max(round(inches / step) * step, step)
    feet, rest = divmod(rounded, 12) if rounded >= 36 else (0, rounded)
    whole = f"{int(rest) or ''}{_QUARTERS[rest % 1]} in" if rest else ""
    return " ".join(part for part in (f"{feet:.0f} ft" if feet else "", whole) if part)
