"""What is known of a frame: what the plan says, and what its kind takes the rest to be."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from plantframe.catalogue.expressions import Value, evaluate, names_in
from plantframe.catalogue.mistakes import ExpressionError
from plantframe.catalogue.sourced import Sourced
from plantframe.catalogue.tape import chosen
from plantframe.catalogue.words import SAME_FACT
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Mapping

    from plantframe.catalogue.entries import Fact, Slot, Structure

SAID: Final = "said"
_WHOLE: Final = frozenset({"length", "height", "apart", "up"})  # a fact that is one length


@frozen
class Settled:
    """The facts of one frame.

    values   "posts.length" -> figure in m, kg ..., word, or yes/no
    origins  the same names -> "said" (the plan), a sum as text, or the value assumed
    """

    values: Mapping[str, Value]
    origins: Mapping[str, str | Sourced]

    def assumed(self) -> dict[str, Sourced]:
        """What the plan did not say and no sum gave."""
        return {name: how for name, how in self.origins.items() if isinstance(how, Sourced)}


def settle(
    structure: Structure,
    said: Mapping[str, object],
    *,
    leave_out: bool = False,
    measure: str = "",
) -> Settled:
    """Settle every fact of a structure.

    said   what the plan says, by "word.slot" or, for a fact that is one value, "word"; in m
           and so on. A section is given as word.width, word.depth and word.round, or as
           word.section in words ("38x43 mm", "20 mm round"); a list of heights, or the two
           sides of word.size, as a tuple; several words ("chained", "pegged") as a tuple.
           A word may be another word for the same fact (poles for posts).
    leave_out   leave out a fact whose sum cannot be taken, instead of raising ExpressionError
    measure     tape.FEET or tape.METRES where what is assumed is chosen for it, else ""
    Sums are tried first, from what is known already; then one value is assumed, in the order
    of the entry, and sums are tried again. So two of length, depth and height give the third.
    Where only the length of a row is said, the usual bay gives how many bays there are, and the
    row then gives how long each is: 5 m are three bays of 1.67 m, not of 2.4 m.
    """
    settled = _settled(structure, said, {}, leave_out=leave_out, measure=measure)
    fitted = _bays_that_fit(structure, settled)
    if fitted is None:
        return settled
    return _settled(structure, said, fitted, leave_out=leave_out, measure=measure)


_BAY: Final = "bays.length"
_FITS: Final = "long / bays.count"


def _bays_that_fit(structure: Structure, settled: Settled) -> dict[str, float] | None:
    """The length of bay that fills the row said, where that length was only assumed."""
    bays = structure.facts.get("bays")
    ways = bays.slots.get("length", ()) if bays else ()
    counted = settled.origins.get("bays.count")
    if _FITS not in ways or not isinstance(counted, str) or "long" not in _names_in(counted):
        return None
    if not _is_free(_BAY, settled.origins):
        return None
    try:
        fitted = evaluate(_FITS, settled.values)
    except ExpressionError:
        return None
    return {_BAY: float(fitted)} if not isinstance(fitted, str) else None


def _names_in(way: str) -> frozenset[str]:
    """The names a sum asks for; none where it is no sum but the word for what the plan says."""
    return frozenset() if way == SAID else names_in(way)


def _is_free(key: str, origins: Mapping[str, str | Sourced]) -> bool:
    """Whether a figure is assumed, or a sum of nothing but what is assumed."""
    how = origins.get(key)
    if isinstance(how, Sourced):
        return True
    if how is None or how == SAID:
        return False
    names = names_in(how)
    return bool(names) and all(_is_free(name, origins) for name in names)


def _settled(
    structure: Structure,
    said: Mapping[str, object],
    fitted: Mapping[str, float],
    *,
    leave_out: bool,
    measure: str,
) -> Settled:
    values: dict[str, Value] = {}
    origins: dict[str, str | Sourced] = {}
    facts = {key_of(word): fact for word, fact in structure.facts.items()}
    for name, value in said.items():
        key = _same(name)
        fact = facts.get(key.partition(".")[0])
        for one, figure in _as_said(key, value, fact):
            if one in values and one != key:
                continue  # a count that was typed outweighs the number of heights typed
            values[one], origins[one] = figure, SAID
        values[f"said.{key.partition('.')[0]}"] = True
    for name, length in fitted.items():
        values[name], origins[name] = length, _FITS
    slots = dict(_slots(structure))
    while slots:
        done = _one_sum(slots, values, origins, leave_out=leave_out) or _one_assumed(
            slots, values, origins, measure
        )
        if done is None:
            break
    return Settled(values, origins)


def _as_said(key: str, value: object, fact: Fact | None) -> list[tuple[str, Value]]:
    """One thing the plan says, under the names that sums ask for."""
    word, _, slot = key.partition(".")
    if slot == "size" and not (fact and fact.sides) and isinstance(value, list | tuple):
        return []  # the size of something this kind has none of, such as a net: no sum asks for it
    if slot in {"size", ""} and fact and fact.sides and isinstance(value, list | tuple):
        pairs = zip(fact.sides, value, strict=False)
        return [pair for side, one in pairs for pair in _spread(key_of(word, side), one)]
    if slot in _WHOLE and fact and set(fact.slots) == {""}:
        key = word
    figure = isinstance(value, int | float) and not isinstance(value, bool)
    if not slot and fact and "length" in fact.slots and figure:
        key = key_of(word, "length")  # mesh 15 cm: the length of its openings
    return _spread(key, value)


def _slots(structure: Structure) -> list[tuple[str, Slot]]:
    return [
        (key_of(fact.word, slot), tried)
        for fact in structure.facts.values()
        for slot, tried in fact.slots.items()
    ]


def key_of(word: str, slot: str = "") -> str:
    """The name a sum knows a slot by: "tie height" is tie_height, its slot at tie_height.at."""
    key = word.replace(" ", "_")
    return f"{key}.{slot.replace(' ', '_')}" if slot else key


def _same(name: str) -> str:
    word, dot, slot = name.partition(".")
    return key_of(SAME_FACT.get(word.replace("_", " "), word)) + dot + slot.replace(" ", "_")


def _one_sum(
    slots: dict[str, Slot],
    values: dict[str, Value],
    origins: dict[str, str | Sourced],
    *,
    leave_out: bool,
) -> str | None:
    """Settle every slot that is said or that a sum gives; the last one's name, or None."""
    done = None
    for key, tried in list(slots.items()):
        if _is_known(key, values):
            del slots[key]
            done = key
            continue
        for way in tried:
            if isinstance(way, str) and _can(way, values):
                try:
                    found = evaluate(way, values)
                except ExpressionError:
                    if not leave_out:
                        raise
                else:
                    for name, value in _spread(key, found):
                        values[name], origins[name] = value, way
                del slots[key]
                done = key
                break
    return done


def _can(text: str, values: Mapping[str, Value]) -> bool:
    return all(name in values or name.startswith("said.") for name in names_in(text))


def _one_assumed(
    slots: dict[str, Slot],
    values: dict[str, Value],
    origins: dict[str, str | Sourced],
    measure: str,
) -> str | None:
    """Assume the first slot that has a value of its own; its name, or None."""
    for key, tried in slots.items():
        for one in tried:
            if isinstance(one, Sourced):
                way = chosen(one, measure)
                for name, value in _spread(key, _plain(way)):
                    if name not in values:
                        values[name], origins[name] = value, way
                del slots[key]
                return key
    return None


def _is_known(key: str, values: Mapping[str, Value]) -> bool:
    word, _, slot = key.partition(".")
    if slot == "section":
        return f"{word}.width" in values and f"{word}.depth" in values
    if slot == "heights":
        return f"{word}.top" in values
    return key in values


def _plain(value: Sourced) -> Value:
    if not value.is_word:
        return value.usual
    return value.value == "yes" if value.value in {"yes", "no"} else value.value


def _spread(key: str, value: object) -> list[tuple[str, Value]]:
    """One fact as the names sums ask for: a section is three, a list of heights two more."""
    word, _, slot = key.partition(".")
    if slot == "section" and isinstance(value, str):
        width, depth, is_round = section_m(value)
        return [(f"{word}.width", width), (f"{word}.depth", depth), (f"{word}.round", is_round)]
    if slot == "heights" and isinstance(value, list | tuple):
        heights = sorted(float(one) for one in value)
        if not heights:
            return []
        count = float(len(heights))
        return [
            (f"{word}.top", heights[-1]),
            (f"{word}.lowest", heights[0]),
            (f"{word}.count", count),
        ]
    if isinstance(value, list | tuple) and all(isinstance(one, str) for one in value):
        return [(key, " ".join(value)), *((key_of(word, one), True) for one in value)]
    if isinstance(value, bool | str):
        return [(key, value)]
    if isinstance(value, int | float):
        return [(key, float(value))]
    raise ExpressionError(f"{key} is neither a figure nor a word")


_SECTION = re.compile(
    r"(?P<a>\d+(?:\.\d+)?)\s*(?:[x×]\s*(?P<b>\d+(?:\.\d+)?)\s*)?mm(?P<round>\s+round)?"
)


def section_m(text: str) -> tuple[float, float, bool]:
    """Width, depth in m, and whether it is round, of "38x43 mm" or "75 mm round"."""
    read = _SECTION.fullmatch(text.strip())
    if read is None:
        raise ExpressionError(f"{text!r} is no section such as 38x43 mm or 75 mm round")
    a, b = float(read["a"]), float(read["b"] or read["a"])
    return a / 1000, b / 1000, bool(read["round"])
