"""Two lines of one fact: they add up, contradict each other, or are end posts and the rest."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.frozen import replace
from plantframe.language.slots import Section
from plantframe.language.values import Measure, Number

if TYPE_CHECKING:
    from plantframe.language.blocks import Fact


def contradict(before: Fact, fact: Fact) -> bool:
    """Whether one slot of two facts of the same word holds two values.

    `feet 4 ft apart` and `feet pegged` add up; `bar 2x2` and `bar 2x4` do not.
    """
    if not before.slots or not fact.slots:
        return False
    names = {slot.name for slot in before.slots} & {slot.name for slot in fact.slots}
    return any(_figures(before, name) != _figures(fact, name) for name in names)


def end_posts(one: Fact, other: Fact) -> tuple[Fact, Fact] | None:
    """Two lines of posts, each with its count: the pair, the stouter pair of two, is the ends."""
    counts = [fact.get("count") for fact in (one, other)]
    if one.word != "posts" or not all(isinstance(count, Number) for count in counts):
        return None
    pairs = [isinstance(count, Number) and count.value == 2 for count in counts]
    if not any(pairs):
        return None
    first = _thickness_m(one) >= _thickness_m(other) if all(pairs) else pairs[0]
    if first:
        return replace(one, word="end posts"), other
    return one, replace(other, word="end posts")


def _thickness_m(fact: Fact) -> float:
    section = fact.get("section")
    return section.width_m * section.depth_m if isinstance(section, Section) else 0.0


def _figures(fact: Fact, name: str) -> list[object]:
    """The values of a slot without the way they were typed: `8 ft` is `96 in`."""
    return [_plain(value) for value in fact.all(name)]


def _plain(value: object) -> object:
    if isinstance(value, Number | Measure):
        return round(value.value, 6)
    return " ".join(value.split()) if isinstance(value, str) else value
