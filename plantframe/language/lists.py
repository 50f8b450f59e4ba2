"""Phrases that hang together: heights in a list, and reasons that hold commas."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.frozen import replace
from plantframe.language.joining import in_unit
from plantframe.language.matching import match
from plantframe.language.phrases import phrase
from plantframe.language.shapes import without
from plantframe.language.values import Item, Measure, Number, Word

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.language.values import Phrase


def fits(shape: str, part: Phrase) -> bool:
    """Every word of the phrase is understood by the shape, and not by a slot that takes any."""
    got = match(shape, [part], strict=True)
    return bool(got.slots) and not got.leftovers


def reason_whole(shape: str, mine: list[Phrase], typed: str) -> list[Phrase]:
    """A reason with its commas: phrases after `because` that are nothing else belong to it."""
    start = next((at for at, part in enumerate(mine) if "because" in part.words), len(mine))
    stop = start
    others = without(shape, "rule", "job", "reason")
    for place in range(start + 1, len(mine)):
        if fits(others, mine[place]):
            break
        stop = place
    if stop == start:
        return mine
    first, last = mine[start], mine[stop]
    at = first.column - 1
    whole = phrase(typed[at : last.column - 1 + len(last.text)], first.column)
    left_out = first.items[0].at  # the fact's own word, where it stands in this phrase
    items = tuple(item for item in whole.items if item.at >= left_out)
    return [*mine[:start], replace(whole, items=items), *mine[stop + 1 :]]


def heights(mine: list[Phrase]) -> list[Phrase]:
    """`at 45, 90 and 150 cm`: what follows an `at` in a list is at that height too.

    Figures of the list take the unit that closes it.
    """
    start = next((at for at, part in enumerate(mine) if {"at", "@"} & {*part.words[:-1]}), None)
    if start is None:
        return mine
    stop = start + 1
    while stop < len(mine) and all(_in_a_list(item) for item in mine[stop].items):
        stop += 1
    first = mine[start]
    after_at = min(first.words.index(word) for word in ("at", "@") if word in first.words) + 1
    listed = [first.items[after_at:], *(part.items for part in mine[start + 1 : stop])]
    if not all(_in_a_list(item) for item in listed[0]):
        return mine
    like = next(
        (item.value for items in listed for item in items if isinstance(item.value, Measure)), None
    )
    at_each = [_at_each(items, like) for items in listed]
    at_each[0] = (*first.items[: after_at - 1], *at_each[0])
    return [
        replace(part, items=at_each[place - start]) if start <= place < stop else part
        for place, part in enumerate(mine)
    ]


def _in_a_list(item: Item) -> bool:
    value = item.value
    if isinstance(value, Measure):
        return value.dimension == "length"
    return isinstance(value, Number) or (isinstance(value, Word) and value.plain in {"and", "&"})


def _at_each(items: Sequence[Item], like: Measure | None) -> tuple[Item, ...]:
    """The lengths of a list, each with an `at` before it."""
    out: list[Item] = []
    for item in items:
        if isinstance(item.value, Word):
            continue
        value = item.value
        if isinstance(value, Number) and like is not None:
            length_m = in_unit(value.value, like.unit)
            value = Measure(length_m, like.dimension, like.unit, value.text)
        out += [Item(Word("at"), item.at, item.at), Item(value, item.at, item.end)]
    return tuple(out)
