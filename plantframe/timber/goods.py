"""Goods from the other counters: what is wanted, less the shed, with spares."""

from __future__ import annotations

import math
import re
from typing import TYPE_CHECKING, Final

from plantframe.catalogue.wares import sized, ware
from plantframe.frozen import replace
from plantframe.season.entries import material_of
from plantframe.season.units import FOOT_M, INCH_M, Shown, two_figures
from plantframe.timber.counters import CORD, FIXINGS, GROUND, METAL, NETS, SHEET, WIRE, Line
from plantframe.timber.nets import net_lines
from plantframe.timber.spares import share, spares

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.plan.things import Item, Plan
    from plantframe.timber.needs import Goods

COUNTER_OF: Final = {
    "nail": FIXINGS,
    "screw": FIXINGS,
    "bolt": FIXINGS,
    "staple": FIXINGS,
    "fitting": FIXINGS,
    "strainer": FIXINGS,
    "peg": GROUND,
    "concrete": GROUND,
    "fill": GROUND,
    "tub": GROUND,
    "net": NETS,
    "mesh": SHEET,
    "cloth": SHEET,
    "pane": SHEET,
    "strip": SHEET,
    "wire": WIRE,
    "twine": CORD,
    "rope": CORD,
    "chain": CORD,
    "steel": METAL,
    "cane": METAL,
    "wood": METAL,
    "brush": METAL,
}
_SPARED: Final = frozenset({"nail", "screw", "staple"})
_BY_LENGTH: Final = frozenset({"wire", "twine", "rope", "chain"})
_INSTEAD: Final = {
    "nail": "the next longer nail that does not come through",
    "screw": "the next longer screw that does not come through, or bored nails",
    "pane": "for glass, twin-wall sheet, with the slot sawn as wide as the sheet and 1 mm more",
    "twine": "any rough twine that rots: jute, sisal or hemp",
    "rope": "doubled twine for one season",
    "wire": "the next thicker wire",
    "staple": "the next longer staple",
    "strainer": "for a strainer, a twitch of doubled wire and a stick",
    "concrete": "rammed stone and soil in thin layers",
}
_SIZE: Final = re.compile(r"(\d+(?:\.\d+)?)\s*(mm|cm|in)\b")
ROLL_M: Final = 6.0  # no stiff panel is longer; what is comes off a roll
_UNIT_M: Final = {"mm": 0.001, "cm": 0.01, "in": 0.0254}


def goods_lines(wanted: Iterable[Goods], plan: Plan) -> tuple[Line, ...]:
    """The lines of all counters but wood, poles and seed."""
    goods = list(wanted)
    lines: list[Line] = []
    lines += net_lines([one for one in goods if one.of == "net"], plan)
    groups: dict[tuple[str, ...], list[Goods]] = {}
    for one in goods:
        if one.of != "net":
            groups.setdefault(_key(one), []).append(one)
    for group in groups.values():
        if group[0].of in _BY_LENGTH:
            lines.append(_length_line(group, plan))
        elif _is_loose(group[0]):
            lines.append(_loose_line(group, plan))
        else:
            lines.append(_count_line(group, plan))
    return tuple(lines)


def _key(one: Goods) -> tuple[str, ...]:
    if one.of in _BY_LENGTH:
        return one.of, one.made, one.size
    sides = tuple(f"{side or 0:.3f}" for side in (one.length_m, one.width_m, one.thick_m))
    return one.of, one.size, *(() if one.of in {"nail", "screw", "bolt"} else sides)


def _whose(group: Iterable[Goods]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(f"{one.frame}, {one.part}" for one in group))


# ---- by number ------------------------------------------------------------------------------
def _count_line(group: list[Goods], plan: Plan) -> Line:
    first = group[0]
    count = sum(one.count for one in group)
    spare = spares(count, "nails and screws") if first.of in _SPARED else 0
    have, minds = _in_shed(first, plan)
    from_shed = min(have, count + spare)
    buy = count + spare - from_shed
    what, says = _named(first, plan)
    price = _price(first, plan)
    return Line(
        COUNTER_OF.get(first.of, FIXINGS),
        what,
        says,
        buy,
        _whose(group),
        length_m=first.length_m,
        width_m=first.width_m,
        wanted=count + spare,
        from_shed=from_shed,
        spare=min(spare, buy),
        cost=None if price is None else price * buy,
        instead=_instead(first),
        minds=minds,
    )


def _instead(one: Goods) -> str:
    """What else will do for a thing that is counted."""
    if one.of == "mesh":
        long = (one.length_m or 0.0) > ROLL_M
        kind = "length" if long else "panel"
        return f"for a {kind}, two smaller ones, overlapped by one opening and wired together"
    if one.of == "peg":
        wooden = "peg" in one.size or not re.search("[a-z]{4}", one.size)
        return "pointed offcuts of that length" if wooden and "wire" not in one.size else ""
    return _INSTEAD.get(one.of, "")


# ---- by volume ------------------------------------------------------------------------------
def _is_loose(one: Goods) -> bool:
    """Manure and soil: what fills a box of three known sides, and comes by the load or the bag."""
    known = bool(one.width_m and one.length_m and one.thick_m)
    return one.of == "fill" and known and not re.search(r"\bbales?\b", one.size)


def _loose_line(group: list[Goods], plan: Plan) -> Line:
    first = group[0]
    sides = [(one.width_m or 0.0) * (one.length_m or 0.0) * (one.thick_m or 0.0) for one in group]
    volume = sum(one.count * side for one, side in zip(group, sides, strict=True))
    what = first.size or first.part
    says = f"{what}, about {_volume(volume, Shown(plan.garden.imperial))}"
    return Line(GROUND, what, says, 1, _whose(group), wanted=1, loose=True)


def _volume(cubic_m: float, shown: Shown) -> str:
    """How much of what is loose: by the bag or, where it is much, by the load."""
    if shown.imperial:
        feet = cubic_m / FOOT_M**3
        yards = feet / 27
        return f"{two_figures(feet)} cubic ft" if yards < 1 else f"{two_figures(yards)} cubic yards"
    return f"{two_figures(cubic_m * 1000)} litres" if cubic_m < 1 else f"{two_figures(cubic_m)} m³"


def _named(wanted: Goods, plan: Plan) -> tuple[str, str]:
    """What it is called, and with its size."""
    shown = Shown(plan.garden.imperial)
    one = replace(wanted, size=sized(wanted.size, imperial=shown.imperial))
    if one.of == "nail":
        return _nail(one.size, shown)
    what = _ware(one)
    if one.of == "screw":
        return what, what
    sides = []
    if one.width_m and one.length_m:
        side = _outdoor if _is_cloth(one) else _side
        sides = [f"{side(one.width_m, shown)} x {side(one.length_m, shown)}"]
    elif one.length_m and one.of != "peg":
        sides = [f"{_side(one.length_m, shown)} long"]
    if one.thick_m and one.of == "pane":
        sides.append(f"{one.thick_m * 1000:.0f} mm thick")
    if one.of in {"tub", "bolt"} or (one.of == "peg" and _SIZE.search(one.size)):
        sides = []
    return what, ", ".join([what, *sides])


def _ware(one: Goods) -> str:
    """What several of it are called."""
    if one.of == "mesh" and not one.size:
        return "mesh off the roll" if (one.length_m or 0.0) > ROLL_M else "mesh panels"
    return ware(one.part, one.of, one.size)


def _side(metres: float, shown: Shown) -> str:
    """A side of a pane or sheet: to the millimetre, or a sixteenth."""
    if shown.imperial:
        return shown.exact(metres)
    return f"{metres * 1000:.0f} mm" if metres < 1 else shown.exact(metres)


def _is_cloth(one: Goods) -> bool:
    """Whether it is cut off a roll with shears."""
    return one.of == "cloth" or (one.of == "mesh" and (one.length_m or 0.0) > ROLL_M)


def _outdoor(metres: float, shown: Shown) -> str:
    """A side of cloth or mesh off a roll: up to the next inch, or the next 5 cm."""
    step = INCH_M if shown.imperial else 0.05
    return shown.length(math.ceil(metres / step - 1e-3) * step)


def _nail(size: str, shown: Shown) -> tuple[str, str]:
    entry = material_of("nails")
    figures = entry.sizes.get(size) if entry else None
    if figures is None:
        penny = re.match(r"\d+d\b", size)
        return "nails", f"nails {size}" if penny else ware("nail", "nail", size)
    long = figures["length"].usual
    both = shown.bench(long) if shown.imperial else f"{long * 1000:.0f} mm"
    return f"nails {size}", f"nails {size} ({both} long)"


def _in_shed(one: Goods, plan: Plan) -> tuple[int, tuple[str, ...]]:
    """How many of it the shed has, and what is not sure about them."""
    have, minds = 0, []
    for item in plan.shed:
        if not _same(one, item):
            continue
        if item.count is not None and not _is_box(item):
            have += int(item.count)
        else:
            boxes = item.count if item.count is not None else 1.0
            have += int(boxes * _box_holds())
            minds.append(f"in the shed: {item.fact.text}; count them")
    return have, tuple(minds)


def _is_box(item: Item) -> bool:
    return bool(re.search(r"\b(box|boxes|bag|bags|pack|tin|jar)\b", item.fact.text, re.IGNORECASE))


def _box_holds() -> float:
    entry = material_of("wood screws")
    figure = entry.figures.get("box holds") if entry else None
    return figure.low if figure is not None and figure.low is not None else 100.0


def _same(one: Goods, item: Item) -> bool:
    """Whether a line of the shed or yard is that thing."""
    words = item.what.lower()
    if one.of == "nail":
        return item.nail is not None and one.size == f"{item.nail}d"
    if one.of == "screw":
        sizes = [float(number) * _UNIT_M[unit] for number, unit in _SIZE.findall(one.size)]
        return "screw" in words and any(
            abs(size - length) <= 0.004 for size in sizes for length in item.lengths_m
        )
    if one.of == "pane":
        return _same_pane(one, item)
    if one.of in {"fitting", "strainer", "bolt", "staple"}:
        names = [word.rstrip("s") for word in re.findall(r"[a-z]+", one.size.lower())]
        kinds = ("hinge", "hook", "latch", "eye", "cap", "clip", "staple", "bolt", "pulley")
        return any(kind in words and kind in names for kind in kinds)
    return False


def _same_pane(one: Goods, item: Item) -> bool:
    if not re.search(r"\b(pane|panes|glass|twin|light|lights)\b", item.what, re.IGNORECASE):
        return False
    if item.size is None or one.width_m is None or one.length_m is None:
        return False
    sides = sorted(side.value for side in item.size.sides[:2])
    return all(
        abs(side - wanted) <= 0.003
        for side, wanted in zip(sides, sorted((one.width_m, one.length_m)), strict=True)
    )


def _price(one: Goods, plan: Plan) -> float | None:
    return next(
        (item.price for item in plan.yard if item.price is not None and _same(one, item)), None
    )


# ---- by length ------------------------------------------------------------------------------
def _length_line(group: list[Goods], plan: Plan) -> Line:
    first = group[0]
    shown = Shown(plan.garden.imperial)
    metres = sum(one.count * (one.length_m or 0.0) for one in group)
    with_spare = metres * (1 + share("twine and wire"))
    have, minds = _length_in_shed(first, plan)
    rest = max(with_spare - have, 0.0)
    what = first.size or {"twine": "twine", "rope": "cord"}.get(first.of, first.of)
    if first.made:
        what = f"{first.made} {what}".strip()
    rounded = _whole(rest or with_spare, shown)
    says = f"{what}, {shown.length(rounded)}"
    return Line(
        COUNTER_OF[first.of],
        what,
        says,
        1 if rest > 0 else 0,
        _whose(group),
        length_m=rounded,
        wanted=1,
        from_shed=0 if rest > 0 else 1,
        instead=_INSTEAD.get(first.of, ""),
        minds=minds,
    )


def _whole(metres: float, shown: Shown) -> float:
    """A length rounded up to whole metres or feet."""
    step = FOOT_M if shown.imperial else 1.0
    return math.ceil(metres / step - 1e-9) * step


_LONG_WORDS: Final = {
    "wire": r"\bwires?\b",
    "twine": r"\b(twine|string|jute|sisal|hemp)\b",
    "rope": r"\b(rope|cord|line)\b",
    "chain": r"\bchain\b",
}


def _length_in_shed(one: Goods, plan: Plan) -> tuple[float, tuple[str, ...]]:
    """How many metres of it the shed has at least, and what is not sure about them."""
    metres, minds = 0.0, []
    for item in plan.shed:
        if not re.search(_LONG_WORDS[one.of], item.what, re.IGNORECASE):
            continue
        number = item.count if item.count is not None else 1.0
        if item.lengths_m:
            metres += number * max(item.lengths_m)
        elif one.of in {"twine", "wire"}:
            metres += number * _roll_holds(one.of)
            minds.append(f"in the shed: {item.fact.text}; measure what is on them")
    return metres, tuple(minds)


def _roll_holds(of: str) -> float:
    """What a ball or coil holds at least."""
    name, key = ("twine", "ball holds") if of == "twine" else ("galvanised wire", "coil holds")
    entry = material_of(name)
    figure = entry.figures.get(key) if entry else None
    return figure.low if figure is not None and figure.low is not None else 0.0
