"""Poles and canes: bought, or cut in the wood while it is bare, with a hand for a gauge."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.season.entries import material_of
from plantframe.season.units import Shown, plural
from plantframe.timber.counters import CANES, TIMBER, Line
from plantframe.timber.spares import spares
from plantframe.timber.woods import CANE, TREATED, will_do

if TYPE_CHECKING:
    from plantframe.plan.things import Garden
    from plantframe.timber.needs import Needs, Pole
    from plantframe.timber.stock import OldWood, Sold, Wood

_SPARES: Final = "poles and canes"
_STUB_M: Final = 0.6  # shorter pieces come from the tops of longer poles
_THIN: Final = 0.75  # an old pole may be so much thinner or thicker than the one wanted
_THICK: Final = 1.4


@frozen
class Cut:
    """Poles to cut in the wood.

    hand   what they are as thick as: `a wrist`
    count  with the spares, less what the shed has
    stubs  short pieces that come from the tops of other poles
    brush  twiggy branches, counted and not measured
    """

    says: str
    hand: str
    thick_m: float
    length_m: float
    wood: str
    count: int
    spare: int
    from_shed: int
    for_: tuple[str, ...]
    stubs: bool = False
    brush: bool = False


@frozen
class Poles:
    """Poles to buy, poles to cut, and what the shed's poles are best used for."""

    lines: tuple[Line, ...]
    cut: tuple[Cut, ...]
    used: tuple[tuple[OldWood, int, str], ...]
    unused: tuple[tuple[OldWood, int], ...]


def poles_of(needs: Needs, wood: Wood, garden: Garden) -> Poles:
    """Sort the poles of a plan: longest first, the shortest old pole that will do for each."""
    left = {at: old.whole for at, old in enumerate(wood.shed) if old.section.round}
    sound = {at: old.count for at, old in enumerate(wood.shed) if old.section.round}
    used: list[tuple[OldWood, int, str]] = []
    lines: list[Line] = []
    cut: list[Cut] = []
    groups: dict[tuple[float, float, str, bool, bool], list[Pole]] = {}
    for pole in sorted(needs.poles, key=lambda one: (-one.length_m, one.frame)):
        key = (
            round(pole.thick_m, 3),
            round(pole.length_m, 3),
            pole.wood,
            pole.wood_said,
            pole.brush,
        )
        groups.setdefault(key, []).append(pole)
    for group in groups.values():
        from_shed = 0
        for pole in group:
            if not pole.brush:
                got = _from_shed(pole, wood, left, sound)
                used += [(wood.shed[at], count, _whose(pole)) for at, count in got]
                from_shed += sum(count for _, count in got)
        count = sum(pole.count for pole in group)
        spare = spares(count, _SPARES) if not group[0].brush and from_shed < count else 0
        buy = max(count + spare - from_shed, 0)
        if _is_bought(group[0], wood):
            lines.append(_line(group, wood, garden, buy, spare, from_shed))
        elif buy or from_shed:
            cut.append(_cut(group, garden, buy, spare, from_shed))
    rest = tuple((wood.shed[at], number) for at, number in left.items() if number > 0)
    return Poles(tuple(lines), tuple(cut), tuple(used), rest)


def _from_shed(
    pole: Pole, wood: Wood, left: dict[int, int], sound: dict[int, int]
) -> list[tuple[int, int]]:
    """Old poles for it: which lines of the shed, and how many of each."""
    able = [
        at
        for at in left
        if wood.shed[at].length_m >= pole.length_m - 0.01
        and pole.thick_m * _THIN <= wood.shed[at].section.wide_mm / 1000 <= pole.thick_m * _THICK
        and (not pole.wood_said or will_do(wood.shed[at].wood, pole.wood))
    ]
    able.sort(key=lambda at: wood.shed[at].length_m)
    out = []
    missing = pole.count
    for at in able:
        number = min(sound[at], left[at], missing)
        if number > 0:
            left[at] -= number
            sound[at] -= number
            missing -= number
            out.append((at, number))
    return out


def _whose(pole: Pole) -> str:
    return f"{pole.frame}, {pole.part}"


def _is_bought(pole: Pole, wood: Wood) -> bool:
    return not pole.brush and (pole.wood in {CANE, TREATED} or _sold(pole, wood) is not None)


def _sold(pole: Pole, wood: Wood) -> Sold | None:
    """The yard's own poles of that thickness, the shortest that will do."""
    able = [
        sold
        for sold in wood.yard
        if sold.section.round
        and sold.length_m >= pole.length_m - 0.01
        and abs(sold.section.wide_mm / 1000 - pole.thick_m) <= 0.1 * pole.thick_m
        and (not pole.wood_said or will_do(sold.wood, pole.wood))
    ]
    return min(able, key=lambda sold: (sold.length_m, sold.price or 0.0), default=None)


def _line(
    group: list[Pole], wood: Wood, garden: Garden, buy: int, spare: int, from_shed: int
) -> Line:
    pole = group[0]
    shown = Shown(garden.imperial)
    sold = _sold(pole, wood)
    length = sold.length_m if sold else pole.length_m
    cane = pole.wood == CANE
    what = "canes" if cane else f"{pole.wood if pole.wood_said else 'round'} poles"
    thick = shown.bench(pole.thick_m)
    minds: tuple[str, ...] = ()
    if length > pole.length_m + 0.05:
        minds = (f"saw them to {shown.typed(pole.length_m)}",)
    return Line(
        CANES if cane or sold is None else TIMBER,
        what,
        f"{what}, {thick} across, {shown.typed(length)}",
        buy,
        tuple(dict.fromkeys(_whose(one) for one in group)),
        length_m=length,
        wanted=sum(one.count for one in group) + spare,
        from_shed=from_shed,
        spare=min(spare, buy),
        cost=buy * sold.price if sold and sold.price is not None else None,
        instead="straight hazel or ash rods of that length and thickness" if cane else "",
        minds=minds,
    )


def _cut(group: list[Pole], garden: Garden, count: int, spare: int, from_shed: int) -> Cut:
    pole = group[0]
    shown = Shown(garden.imperial)
    stubs = not pole.brush and 0 < pole.length_m < _STUB_M
    thick = f"{hand(pole.thick_m)} ({shown.bench(pole.thick_m)})" if pole.thick_m else ""
    long = shown.typed(pole.length_m) if pole.length_m else ""
    if pole.brush:
        says = f"{plural(count, 'twiggy branch', 'twiggy branches')}, {long} long".rstrip(", ")
    elif stubs:
        says = f"{plural(count, 'short piece')}, {shown.bench(pole.length_m)}, as thick as {thick}"
    else:
        says = f"{plural(count, 'pole')}, {long} long, as thick as {thick}"
    return Cut(
        says,
        hand(pole.thick_m) if pole.thick_m else "",
        pole.thick_m,
        pole.length_m,
        pole.wood,
        count,
        min(spare, count),
        from_shed,
        tuple(dict.fromkeys(_whose(one) for one in group)),
        stubs,
        pole.brush,
    )


def hand(thick_m: float) -> str:
    """What on a hand is as thick: `a thumb`, `a wrist`.

    Source: the catalogue's entry, common practice; hands differ.
    """
    entry = material_of("thickness by hand")
    named = ""
    for name, figures in (entry.sizes if entry else {}).items():
        across = figures["across"]
        named = name
        if across.high is not None and thick_m < across.high:
            break
    return named
