"""What wood there is: old sticks and poles in the shed, their faults, and what the yard sells."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.season.entries import material_of
from plantframe.timber.sections import Section, typed_section
from plantframe.timber.woods import wood_in

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from plantframe.language.slots import Section as Typed
    from plantframe.plan.things import Garden, Item, Plan
    from plantframe.timber.tape import Tape

_FLAWED: Final = re.compile(
    r"\b(split|splits|cracked?|bent|bowed|warped|twisted|shaken|crooked|chewed|notched)\b",
    re.IGNORECASE,
)
_USELESS: Final = re.compile(
    r"\b(rot|rotten|rotting|soft|punky|wormy|worm|broken|snapped)\b", re.IGNORECASE
)
_NUMBERS: Final = {
    "one": 1,
    "a": 1,
    "two": 2,
    "three": 3,
    "four": 4,
    "five": 5,
    "six": 6,
    "both": 2,
    "seven": 7,
    "eight": 8,
    "nine": 9,
    "ten": 10,
}
# What has a thickness and a length and is no wood.
# Sticks whose line goes on with where they are from: `3 posts 2x2, 8 ft, from the pea net of 2024`.
_STICK: Final = re.compile(
    r"\s*(old|good|straight|sound|spare)?\s*"
    r"(posts?|poles?|stakes?|bars?|rails?|sticks?|boards?|planks?|battens?|canes?|legs?)\b",
    re.IGNORECASE,
)
_NO_WOOD: Final = re.compile(
    r"\b(wires?|nets?|netting|mesh|ropes?|cord|twine|string|nails?|screws?|chain|hose|pipes?|rods?"
    r"|glass|panes?|cloth|film|fabric|staples?|hinges?|hooks?|bolts?)\b",
    re.IGNORECASE,
)
_POLE: Final = re.compile(r"\b(poles?|canes?|rods?|stakes?|bamboo)\b", re.IGNORECASE)


@frozen
class OldWood:
    """Old sticks or poles of one line of the shed.

    count     that are sound
    flawed    that are split or bent: for pieces that bear nothing
    useless   that are rotten or broken
    says      the line as typed, `remark` what stands beside it in brackets
    """

    section: Section
    wood: str
    length_m: float
    count: int
    flawed: int
    useless: int
    says: str
    remark: str

    @property
    def whole(self) -> int:
        """How many can be used for anything."""
        return self.count + self.flawed


@frozen
class Sold:
    """Boards of one section and length that can be bought. `price` of one, None where unknown."""

    section: Section
    wood: str
    length_m: float
    price: float | None


@frozen
class Wood:
    """The shed's wood, the yard's list, and lines of the shed that say too little to be counted."""

    shed: tuple[OldWood, ...]
    yard: tuple[Sold, ...]
    unclear: tuple[str, ...]


def wood_of(plan: Plan) -> Wood:
    """The wood of a plan's shed and yard."""
    shed: list[OldWood] = []
    unclear: list[str] = []
    for item in plan.shed:
        if not is_wood(item):
            continue
        if item.section is None or not item.lengths_m:
            unclear.append(item.fact.text)
        else:
            shed.append(_old(item, item.section, plan.garden))
    yard = [sold for item in plan.yard if is_wood(item) for sold in _sold(item, plan.garden)]
    return Wood(tuple(shed), tuple(yard), tuple(unclear))


def is_wood(item: Item) -> bool:
    """Whether a line of the shed or yard is wood."""
    stick = item.section is not None and _STICK.match(item.what)
    if not stick and _NO_WOOD.search(item.what):
        return False
    named = bool(wood_in(item.what)) or bool(_POLE.search(item.what))
    return item.section is not None or (named and bool(item.lengths_m))


def _section(typed: Typed, what: str, garden: Garden) -> Section:
    """The section of a line of wood; a bare thickness of a pole, cane or stake is round."""
    return typed_section(typed, garden, "poles" if _POLE.search(what) else "")


def _old(item: Item, typed: Typed, garden: Garden) -> OldWood:
    count = int(item.count) if item.count is not None else 1
    remark = item.fact.remark.strip().strip("()")
    words = f"{item.what} {remark}"
    useless = _how_many(_USELESS, item.what, remark, count)
    flawed = min(_how_many(_FLAWED, item.what, remark, count), count - useless)
    return OldWood(
        _section(typed, item.what, garden),
        wood_in(words),
        min(item.lengths_m),
        count - flawed - useless,
        flawed,
        useless,
        item.fact.text,
        remark,
    )


def _how_many(fault: re.Pattern[str], what: str, remark: str, count: int) -> int:
    """How many of a line have a fault: as many as the remark says, else all of them."""
    if fault.search(what):
        return count
    for clause in re.split(r"[,;.]| and ", remark):
        if fault.search(clause) and not re.search(
            r"\b(not|no|none|never)\b", clause, re.IGNORECASE
        ):
            for word in clause.lower().split():
                if word in _NUMBERS:
                    return min(_NUMBERS[word], count)
                if word.isdigit():
                    return min(int(word), count)
            return count
    return 0


def _sold(item: Item, garden: Garden) -> Iterator[Sold]:
    if item.section is None:
        return
    for length in item.lengths_m:
        yield Sold(
            _section(item.section, item.what, garden), wood_in(item.what), length, item.price
        )


def usual_lengths(tape: Tape) -> tuple[float, ...]:
    """The lengths yards mostly keep, in m, for a plan that has no list of its own.

    Source: the catalogue's entry, common practice.
    """
    entry = material_of("yard lengths")
    sizes = entry.sizes.values() if entry else ()
    unit = "ft" if tape.imperial else "m"
    return tuple(size["length"].usual for size in sizes if size["length"].unit == unit)


def with_lengths(wood: Wood, lengths_m: Iterable[float]) -> Wood:
    """The same wood where the yard keeps only these lengths; prices stand where it has both."""
    lengths = tuple(lengths_m)
    sections = dict.fromkeys((one.section, one.wood) for one in wood.yard)
    prices = {(one.section, one.wood, round(one.length_m, 3)): one.price for one in wood.yard}
    yard = tuple(
        Sold(section, name, length, prices.get((section, name, round(length, 3))))
        for section, name in sections
        for length in lengths
    )
    return Wood(wood.shed, yard, wood.unclear)
