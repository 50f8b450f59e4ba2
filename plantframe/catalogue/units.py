"""The units entries are written in, and what each is in the unit used inside."""

from __future__ import annotations

from typing import NamedTuple


class Unit(NamedTuple):
    """One unit: the quantity it measures, its base unit, and how to get there.

    A figure in the base unit is figure * factor + offset.
    """

    quantity: str
    base: str
    factor: float
    offset: float = 0.0


FOOT_M, INCH_M, POUND_KG = 0.3048, 0.0254, 0.45359237  # exact by definition
MONTH_DAYS = 30.44  # a twelfth of a mean year

UNITS: dict[str, Unit] = {
    "m": Unit("length", "m", 1.0),
    "cm": Unit("length", "m", 0.01),
    "mm": Unit("length", "m", 0.001),
    "ft": Unit("length", "m", FOOT_M),
    "in": Unit("length", "m", INCH_M),
    "m2": Unit("area", "m2", 1.0),
    "ft2": Unit("area", "m2", FOOT_M**2),
    "l": Unit("volume", "l", 1.0),
    "kg": Unit("mass", "kg", 1.0),
    "g": Unit("mass", "kg", 0.001),
    "lb": Unit("mass", "kg", POUND_KG),
    "kg/m": Unit("mass a metre", "kg/m", 1.0),
    "lb/ft": Unit("mass a metre", "kg/m", POUND_KG / FOOT_M),
    "lb/100 ft": Unit("mass a metre", "kg/m", POUND_KG / FOOT_M / 100),
    "kg/m2": Unit("mass an area", "kg/m2", 1.0),
    "lb/ft2": Unit("mass an area", "kg/m2", POUND_KG / FOOT_M**2),
    "kg/m3": Unit("density", "kg/m3", 1.0),
    "N": Unit("force", "N", 1.0),
    "Pa": Unit("pressure", "Pa", 1.0),
    "kPa": Unit("pressure", "Pa", 1e3),
    "MPa": Unit("pressure", "Pa", 1e6),
    "GPa": Unit("pressure", "Pa", 1e9),
    "min": Unit("minutes", "min", 1.0),
    "min/m": Unit("minutes a metre", "min/m", 1.0),
    "h": Unit("hours", "h", 1.0),
    "days": Unit("days", "days", 1.0),
    "weeks": Unit("days", "days", 7.0),
    "months": Unit("days", "days", MONTH_DAYS),
    "years": Unit("years", "years", 1.0),
    "C": Unit("warmth", "C", 1.0),
    "F": Unit("warmth", "C", 5 / 9, -160 / 9),
    "degrees": Unit("angle", "degrees", 1.0),
    "per m": Unit("number a metre", "per m", 1.0),
    "per ft": Unit("number a metre", "per m", 1 / FOOT_M),
    "per m2": Unit("number an area", "per m2", 1.0),
    "%": Unit("share", "", 0.01),
    "": Unit("number", "", 1.0),
}

_SINGULAR = {"day": "days", "week": "weeks", "month": "months", "year": "years"}
_SAME = {"kg/m²": "kg/m2", "m²": "m2", "kg/m³": "kg/m3", "°C": "C", "°F": "F", "minutes": "min"}
_ANCHORS = ("last frost", "first frost", "sowing", "planting", "flowering", "planting out")


def unit_named(text: str) -> Unit | None:
    """The unit written so, or None.

    Takes "week" for "weeks", and a day counted from an event: "weeks from last frost"
    is days before (less than nothing) or after it.
    """
    text = " ".join(text.split())
    text = _SAME.get(text, text)
    if " from " in text:
        text, _, event = text.partition(" from ")
        unit = UNITS.get(_SINGULAR.get(text, text))
        if event not in _ANCHORS or unit is None or unit.quantity != "days":
            return None
        return Unit(f"days from {event}", f"days from {event}", unit.factor)
    return UNITS.get(_SINGULAR.get(text, text))
