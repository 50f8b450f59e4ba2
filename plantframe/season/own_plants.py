"""A plant of the gardener's own: the catalogue's entry it is like, with their figures in it."""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING

from plantframe.catalogue import reading as catalogue
from plantframe.catalogue.entries import Harm
from plantframe.catalogue.names import named, singular_forms, tidy
from plantframe.catalogue.sourced import Sourced
from plantframe.frozen import replace

if TYPE_CHECKING:
    from plantframe.catalogue.entries import Plant
    from plantframe.plan.things import Own, Plan, Variety, VarietyName

YOURS = "yours"
# The catalogue's word -> the field of an entry, and the unit it is in.
_FIELDS = {
    "height": ("height", "m"),
    "wet weight": ("wet_weight", "kg/m"),
    "grip": ("grip", "m"),
    "apart": ("apart", "m"),
    "sun": ("sun", "h"),
    "soil": ("soil", "C"),
    "fruit weight": ("fruit_weight", "kg"),
    "sow": ("sow", "days from last frost"),
    "sow indoors": ("sow_indoors", "days from last frost"),
    "plant out": ("plant_out", "days from last frost"),
}
YEAR_DAYS = 365.0


def own_entry(name: VarietyName) -> Plant | None:
    """The entry of a plant of the gardener's own; None where what it is like is not there.

    Raises CatalogueError where the entry it is like cannot be read.
    """
    return _made(name.variety)


def names_in(plan: Plan | None, text: str) -> tuple[str, ...]:
    """The plants a word can mean in a plan: its gardener's own before the catalogue's."""
    if plan is None or not plan.own:
        return named("plant", text)
    for form in singular_forms(tidy(text)):
        if form in plan.own:
            return (plan.own[form],)
    return tuple(plan.own.get(tidy(name), name) for name in named("plant", text))


@lru_cache(maxsize=256)
def _made(variety: Variety) -> Plant | None:
    base = catalogue.plant(variety.like)
    if base is None:
        return None
    where = variety.where
    entry = replace(base, yours=f"{where.file}, line {where.line}")
    if variety.name != base.name:
        entry = replace(entry, name=variety.name, like=base.name, also=variety.also)
    for own in variety.figures:
        entry = _with(entry, own)
    return entry


def _with(entry: Plant, own: Own) -> Plant:
    """An entry with one figure or word of the gardener's in it."""
    word = own.word
    if word in _FIELDS:
        field, unit = _FIELDS[word]
        changed = replace(entry, **{field: _sourced(own, unit)})
        if word == "apart" and own.low > 0:
            low, high = 1 / own.high, 1 / own.low
            per_m = _sourced(replace(own, low=low, high=high), "per m")
            changed = replace(changed, plants_per_metre=per_m)
        # leaders kept to a plant change what the catalogue says, not what somebody has weighed
        return replace(changed, weight_by_leaders={}) if word == "wet weight" else changed
    if word == "harvest":
        return replace(entry, harvest=_sourced(own, f"days from {own.says}"))
    if word == "yield":
        return replace(entry, other={**entry.other, "yield": _sourced(own, "kg/m")})
    if word == "stays":
        years = replace(own, low=own.low / YEAR_DAYS, high=own.high / YEAR_DAYS)
        return replace(entry, stays=_sourced(years, "years"))
    if word in {"hardy", "tender"}:
        return replace(entry, tender=Sourced(value=word, basis=YOURS))
    if word == "poisonous":
        harm = Harm("poisonous", own.says, ("people",), basis=YOURS)
        return replace(entry, harm=(*entry.harm, harm))
    if word == "train" and entry.training is not None:
        return replace(entry, training=replace(entry.training, how=own.says, basis=YOURS))
    return entry


def _sourced(own: Own, unit: str) -> Sourced:
    """A figure of the gardener's: in the base unit already, so written in it."""
    low, high = min(own.low, own.high), max(own.low, own.high)
    written = "cm" if unit == "m" and high < 1 else unit
    return Sourced(low, (low + high) / 2, high, written, unit, basis=YOURS)
