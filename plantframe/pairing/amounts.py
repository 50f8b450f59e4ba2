"""How many plants to a metre, and how many metres for so many people."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.mechanics.ranges import Range
from plantframe.season.plantings import as_range
from plantframe.season.units import FOOT_M, LB_KG, Shown, plural, two_figures

if TYPE_CHECKING:
    from plantframe.catalogue.entries import Plant
    from plantframe.plan.things import Garden

# What one person eats fresh of one crop while it lasts (common practice, no source).
EATEN_KG: Final = (3.0, 6.0)


def amounts(entry: Plant, garden: Garden | None, count: int | None = None) -> str:
    """Plants a metre, what a metre bears, and the metres a household wants; "" for nothing known.

    count   plants that are wanted already, told as metres of row
    """
    shown = Shown(garden.imperial if garden else False)
    per_m = as_range(entry.plants_per_metre)
    if per_m is None and (apart := as_range(entry.apart)) is not None and apart.low > 0:
        per_m = Range(1 / apart.high, 1 / apart.middle, 1 / apart.low)
    if per_m is None:
        return ""
    said = [f"{_span(per_m, shown)} plants {shown.a_metre} of row"]
    if count is not None:
        row = shown.lengths(count / per_m.high, count / per_m.low)
        said[0] += f", so {plural(count, 'plant')} want {row}"
    text = f"{said[0]}."
    household = garden.household if garden else None
    bears = as_range(entry.other.get("yield"))
    if household is None or bears is None or entry.grown_for != "food" or bears.middle <= 0:
        return text
    low, high = (one * household / bears.middle for one in EATEN_KG)
    plants = f"{low * per_m.middle:.0f} to {high * per_m.middle:.0f}"
    people = plural(household, "person", "people")
    return (
        f"{text} For {people} about {_row(low, high, shown)} of it, some {plants} plants, at "
        f"{_eaten(shown)} eaten fresh by each and {shown.hanging(bears)} picked."
    )


def _row(low_m: float, high_m: float, shown: Shown) -> str:
    """A length of row, as roughly as it is known: in whole feet, where it is told in feet."""
    if not shown.imperial:
        return shown.lengths(low_m, high_m)
    return shown.lengths(*(max(round(one / FOOT_M), 1) * FOOT_M for one in (low_m, high_m)))


def _eaten(shown: Shown) -> str:
    """`3 to 6 kg`, `7 to 13 lb`."""
    low, high = EATEN_KG
    if shown.imperial:
        return f"{low / LB_KG:.0f} to {high / LB_KG:.0f} lb"
    return f"{two_figures(low)} to {two_figures(high)} kg"


def _span(per_m: Range, shown: Shown) -> str:
    """`4 to 7`, by the metre or the foot."""
    low, high = (shown.per_metre(one).split(" ", maxsplit=1)[0] for one in (per_m.low, per_m.high))
    return low if low == high else f"{low} to {high}"
