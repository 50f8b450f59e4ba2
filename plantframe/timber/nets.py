"""Nets: the smallest in the shed that will do, the others by height and length."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.language.values import Measure
from plantframe.season.entries import material_of
from plantframe.season.units import Shown, plural
from plantframe.timber.counters import NETS, Line

if TYPE_CHECKING:
    from plantframe.plan.things import Item, Plan
    from plantframe.timber.needs import Goods

_SIDE_M: Final = 0.05  # a net that is so much smaller will stretch to it
_MESH: Final = 0.2  # and its mesh may differ by this share
_FINE_M: Final = 0.03
_INSTEAD: Final = "two narrower widths tied edge to edge, or strings from bar to ground"


@frozen
class Netting:
    """A net in the shed: what is left of it."""

    item: Item
    high_m: float
    long_m: float


def net_lines(wanted: list[Goods], plan: Plan) -> list[Line]:
    """Nets: the smallest in the shed that will do, the others bought by height."""
    nets = [net for item in plan.shed if (net := _netting(item)) is not None]
    shown = Shown(plan.garden.imperial)
    lines: dict[tuple[float, float], list[tuple[Goods, bool]]] = {}
    minds: dict[tuple[float, float], list[str]] = {}
    order = sorted(wanted, key=lambda one: (-(one.width_m or 0), -(one.length_m or 0), one.frame))
    for one in order:
        key = (round(one.width_m or 0.0, 3), round(one.mesh_m or 0.0, 3))
        for _ in range(one.count):
            at = _best_net(one, nets, strict=True)
            lines.setdefault(key, []).append((one, at is not None))
            told = minds.setdefault(key, [])
            if at is not None:
                net = nets[at]
                told.append(f"{one.frame}: in the shed, {net.item.fact.text}")
                nets[at] = Netting(net.item, net.high_m, net.long_m - (one.length_m or 0.0))
            else:
                near = _best_net(one, nets, strict=False)
                if near is not None:
                    text = nets[near].item.fact.text
                    told.append(
                        f"{one.frame}: the shed's {text} would do, if its mesh is wide enough"
                    )
    return [_net_line(group, minds[key], plan, shown) for key, group in lines.items()]


def _netting(item: Item) -> Netting | None:
    if not re.search(r"\bnet(s|ting)?\b", item.what, re.IGNORECASE) or item.size is None:
        return None
    if not all(isinstance(side, Measure) for side in item.size.sides[:2]):
        return None
    high, long = (side.value for side in item.size.sides[:2])
    return Netting(item, high, long)


def _best_net(one: Goods, nets: list[Netting], *, strict: bool) -> int | None:
    high, long = one.width_m or 0.0, one.length_m or 0.0
    able = []
    for at, net in enumerate(nets):
        mesh = net.item.mesh_m
        same = mesh is None or one.mesh_m is None or abs(mesh - one.mesh_m) <= _MESH * one.mesh_m
        if net.high_m >= high - _SIDE_M and net.long_m >= long - _SIDE_M and (same or not strict):
            able.append(at)
    return min(able, key=lambda at: (nets[at].high_m * nets[at].long_m, at), default=None)


def _net_line(group: list[tuple[Goods, bool]], told: list[str], plan: Plan, shown: Shown) -> Line:
    buy = [one for one, there in group if not there]
    first = (buy or [one for one, _ in group])[0]
    metres = sum(one.length_m or 0.0 for one in buy)
    mesh = f", mesh {_opening(first.mesh_m, shown)}" if first.mesh_m else ""
    high = shown.typed(first.width_m or 0.0)
    pieces = (
        f", in {plural(len(buy), 'piece')}: "
        + ", ".join(shown.typed(one.length_m or 0.0) for one in buy)
        if len(buy) > 1
        else ""
    )
    minds = [*told]
    entry = material_of("net")
    sold = entry.figures.get("widths sold") if entry else None
    tall = sold.high if sold is not None else None
    if buy and tall is not None and (first.width_m or 0.0) > tall + 0.02:
        half = shown.typed((first.width_m or 0.0) / 2)
        minds.append(f"often not sold so tall: two widths of {half} tied edge to edge")
    if buy:
        minds.append("a net pulled taut draws in by a twentieth to a tenth")
    total = metres or sum(one.length_m or 0.0 for one, _ in group)
    return Line(
        NETS,
        "net",
        f"net {high} x {shown.typed(total)}{mesh}{pieces}",
        1 if buy else 0,
        tuple(dict.fromkeys(f"{one.frame}, {one.part}" for one, _ in group)),
        length_m=total,
        width_m=first.width_m,
        wanted=len(group),
        from_shed=sum(1 for _, there in group if there),
        cost=_net_price(first, total, plan) if buy else None,
        instead=_INSTEAD,
        minds=tuple(dict.fromkeys(minds)),
    )


def _opening(metres: float, shown: Shown) -> str:
    """A mesh: small ones to the millimetre."""
    return f"{metres * 1000:.0f} mm" if metres < _FINE_M else shown.typed(metres)


def _net_price(one: Goods, metres: float, plan: Plan) -> float | None:
    """The gardener's price of that net, where the yard lists one of that height and length."""
    for item in plan.yard:
        net = _netting(item)
        if net is None or item.price is None:
            continue
        tall = abs(net.high_m - (one.width_m or 0.0)) <= _SIDE_M
        if tall and abs(net.long_m - metres) <= _SIDE_M:
            return item.price
    return None
