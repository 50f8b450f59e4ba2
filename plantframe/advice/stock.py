"""Pieces of wood that frames need, against the lengths in which the yard sells their section."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from plantframe.frozen import frozen
from plantframe.language.slots import Section
from plantframe.language.values import Measure, Number
from plantframe.season.said import actual_m
from plantframe.season.units import INCH_M, Shown

if TYPE_CHECKING:
    from collections.abc import Iterator

    from plantframe.language.reader import Fact
    from plantframe.plan.things import Garden, Plan
    from plantframe.season.frames import WorkedFrame

KERF_M = 0.003  # of an ordinary saw (common practice, no source)
ALIKE_M = 0.0015
HAIR_M = 0.0005
# What is driven into the ground: a saw cut more or less is nothing to it.
UPRIGHTS = frozenset({"posts", "poles", "stakes", "end posts"})
_SPELT = {"posts": ("posts", "poles", "stakes")}


@frozen
class Needed:
    """Pieces of one length and section that a frame needs, m.

    part   what they are: post, bar, piece
    fact   the line of the plan about them, None where their kind adds them of itself
    said   the plan itself gives their length
    """

    part: str
    word: str
    count: int
    length_m: float
    sides_m: tuple[float, float]
    fact: Fact | None
    said: bool


def needed(frame: WorkedFrame) -> Iterator[Needed]:
    """The sticks and boards a frame is built of: its kind's, and the gardener's own pieces."""
    for own in frame.frame.facts.get("piece", ()):
        section, length, count = own.get("section"), own.get("length"), own.get("count")
        if isinstance(section, Section) and isinstance(length, Measure):
            many = round(count.value) if isinstance(count, Number) else 1
            sides = _sides(section, frame.garden)
            yield Needed("piece", "piece", many, length.value, sides, own, said=True)
    for name, pieces in (frame.worked.pieces if frame.worked else {}).items():
        width, depth, length_m = pieces.width_m, pieces.depth_m, pieces.length_m
        if pieces.part.of != "wood" or pieces.round or not width or not depth or not length_m:
            continue
        word = pieces.part.section
        found = (frame.frame.fact(one) for one in _SPELT.get(word, (word,)))
        fact = next((one for one in found if one is not None), None)
        said = frame.is_said(f"{word}.length") and bool(fact and fact.slot("length"))
        sides = (min(width, depth), max(width, depth))
        yield Needed(name, word, pieces.count, length_m, sides, fact, said=said)


def lengths_sold(plan: Plan, sides_m: tuple[float, float]) -> tuple[float, ...]:
    """The lengths in which the plan's yard sells a section, shortest first."""
    found = {
        length
        for item in plan.yard
        if item.section is not None and _alike(_sides(item.section, plan.garden), sides_m)
        for length in item.lengths_m
    }
    return tuple(sorted(found))


def longest_in_store(plan: Plan, sides_m: tuple[float, float]) -> float:
    """The longest of a section in the shed, 0 where there is none."""
    found = [
        length
        for item in plan.shed
        if item.section is not None and _alike(_sides(item.section, plan.garden), sides_m)
        for length in item.lengths_m
    ]
    return max(found, default=0.0)


def kerf_m(garden: Garden) -> float:
    """What a saw cut takes away: the plan's figure, else the usual one."""
    return garden.kerf_m if garden.kerf_m is not None else KERF_M


def out_of(stock_m: float, piece_m: float, kerf: float) -> int:
    """How many pieces come out of a length, a cut between each and the next."""
    return int((stock_m + kerf + HAIR_M) / (piece_m + kerf)) if piece_m > 0 else 0


def lost_to_kerf(
    lengths: tuple[float, ...], piece_m: float, wanted: int, kerf: float
) -> tuple[float, int] | None:
    """A length that would give so many pieces but for the saw cuts, where no other gives them.

    wanted   how many there are to cut: a length that gives more than these gives enough
    """
    for stock in lengths:
        count = min(wanted, int((stock + HAIR_M) / piece_m)) if piece_m > 0 else 0
        if count < 2 or out_of(stock, piece_m, kerf) >= count:
            continue
        if not any(out_of(other, piece_m, kerf) >= count for other in lengths):
            return stock, count
    return None


def down_to(metres: float, shown: Shown) -> str:
    """A length to saw to: to an eighth of an inch or a millimetre, never longer."""
    if shown.imperial:
        return shown.bench(math.floor(metres / INCH_M * 8 + 1e-6) / 8 * INCH_M)
    return f"{math.floor(metres * 1000 + 1e-6)} mm"


def _sides(section: Section, garden: Garden) -> tuple[float, float]:
    width, depth, _round = actual_m(section, garden)
    return min(width, depth), max(width, depth)


def _alike(one: tuple[float, float], other: tuple[float, float]) -> bool:
    return all(abs(a - b) < ALIKE_M for a, b in zip(one, other, strict=True))
