"""What is left over, and which leftovers are of most use: one long one beats three short ones."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.timber.quiet import INFINITE, feasible, kind, quiet
from plantframe.timber.sawing import Pattern, Plan, Sawing, Stock, whole_plan

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

OLD: Final = 0.98  # what a rest of old wood is worth, where one of new wood is worth 1
SHORT_SHARE: Final = 8  # a rest shorter than an eighth of the longest board is kindling


def usefulness(sawing: Sawing, stock: Stock, left: int) -> float:
    """How useful a rest is: as the square of its length, nothing where it is short.

    Old wood counts a little less: it is the old stick that had better be used up whole.
    """
    longest = max(one.length for one in sawing.stocks)
    if left * SHORT_SHARE < longest:
        return 0.0
    return left * left * (1.0 if stock.available is None else OLD)


def useful(sawing: Sawing, plan: Plan) -> float:
    """The usefulness of all that a plan leaves: rests, and old boards it does not touch."""
    total = 0.0
    for stick in plan.sticks:
        stock = sawing.stocks[stick.stock]
        total += usefulness(sawing, stock, sawing.left(stock, stick.counts))
    untouched: dict[str, tuple[int, float]] = {}
    for at, stock in enumerate(sawing.stocks):
        if stock.available is not None:
            key = stock.pool or f"stock {at}"
            rest, _ = untouched.get(key, (stock.available, 0.0))
            untouched[key] = (rest - plan.boards[at], usefulness(sawing, stock, stock.length))
    return total + sum(count * worth for count, worth in untouched.values())


def trimmed(sawing: Sawing, plan: Plan) -> Plan:
    """The plan without pieces beyond what is wanted, taken off where the longest rest stays."""
    sticks = [list(stick.counts) for stick in plan.sticks]
    stocks = [stick.stock for stick in plan.sticks]
    for place, one in enumerate(sawing.wanted):
        over = sum(counts[place] for counts in sticks) - one.count
        for _ in range(max(over, 0)):
            have = [at for at, counts in enumerate(sticks) if counts[place]]
            # a stick that then holds nothing is a board saved; else the longest rest
            best = max(
                have,
                key=lambda at: (
                    sum(sticks[at]) == 1,
                    sawing.stocks[stocks[at]].cost if sum(sticks[at]) == 1 else 0,
                    sawing.left(sawing.stocks[stocks[at]], sticks[at]),
                    -at,
                ),
            )
            sticks[best][place] -= 1
    return whole_plan(
        sawing,
        [Pattern(stock, tuple(counts)) for stock, counts in zip(stocks, sticks, strict=True)],
    )


MOST_VARIANTS: Final = 400
NODES: Final = 20


def kept(sawing: Sawing, plan: Plan, ways: Iterable[Pattern]) -> Plan | None:
    """A plan of the same cost and no more boards that leaves more of use; None where none is found.

    ways   the ways to cut a stick that are tried, and each of them with pieces left off
    """
    found = _chosen(sawing, plan, _variants(plan, ways))
    if found is None or useful(sawing, found) <= useful(sawing, plan):
        return None
    if found.cost(sawing) > plan.cost(sawing) or found.board_count > plan.board_count:
        return None
    return found


def _variants(plan: Plan, ways: Iterable[Pattern]) -> list[Pattern]:
    """The plan's own ways and others, and what each is where up to two pieces are not taken."""
    out = {stick: None for stick in plan.sticks if any(stick.counts)}
    layer = list(out)
    for _ in range(2):
        layer = [one for way in layer for one in _fewer(way)]
        out.update(dict.fromkeys(layer))
    others = sorted(dict.fromkeys(ways), key=lambda way: (way.stock, way.counts))
    for way in others:
        if len(out) >= MOST_VARIANTS:
            break
        out.update(dict.fromkeys((way, *_fewer(way))))
    return list(out)


def _fewer(way: Pattern) -> Iterator[Pattern]:
    if sum(way.counts) > 1:
        for place, count in enumerate(way.counts):
            if count:
                less = (*way.counts[:place], count - 1, *way.counts[place + 1 :])
                yield Pattern(way.stock, less)


def _chosen(sawing: Sawing, plan: Plan, ways: list[Pattern]) -> Plan | None:
    """The most useful choice of those ways, by HiGHS."""
    solver = quiet(mip_rel_gap=1e-6, mip_max_nodes=NODES)
    scale = max(stock.length for stock in sawing.stocks) ** 2
    rows: list[int] = []

    def row(low: float, high: float) -> int:
        solver.addRow(low, high, 0, [], [])
        rows.append(len(rows))
        return rows[-1]

    pieces = [row(one.count, one.count) for one in sawing.wanted]
    sticks = [row(0, 0) for _ in sawing.stocks]
    cost = row(-INFINITE, plan.cost(sawing) + 0.5)
    boards = row(-INFINITE, plan.board_count + 0.5)
    pools: dict[str, int] = {}
    for at, stock in enumerate(sawing.stocks):
        key = stock.pool or f"stock {at}"
        if stock.available is not None and key not in pools:
            pools[key] = row(-INFINITE, stock.available)
    columns: list[Pattern | None] = []

    def column(worth: float, entries: dict[int, float], way: Pattern | None) -> None:
        entries = {at: value for at, value in entries.items() if value}
        index, value = list(entries), list(entries.values())
        solver.addCol(-worth / scale, 0.0, INFINITE, len(index), index, value)
        solver.changeColIntegrality(len(columns), kind(whole=True))
        columns.append(way)

    for at, stock in enumerate(sawing.stocks):
        entries = {sticks[at]: float(stock.sticks), boards: 1.0, cost: float(stock.cost)}
        whole = usefulness(sawing, stock, stock.length)
        if stock.available is not None:
            entries[pools[stock.pool or f"stock {at}"]] = 1.0
        # an old board that is sawn is a whole one no more
        column(0 if stock.available is None else -whole, entries, None)
        if stock.sticks > 1:
            column(whole, {sticks[at]: -1.0}, Pattern(at, (0,) * len(sawing.wanted)))
    for way in ways:
        entries = {pieces[place]: float(count) for place, count in enumerate(way.counts)}
        entries[sticks[way.stock]] = -1.0
        stock = sawing.stocks[way.stock]
        column(usefulness(sawing, stock, sawing.left(stock, way.counts)), entries, way)
    solver.run()
    if not feasible(solver):
        return None
    amounts = zip(columns, solver.getSolution().col_value, strict=True)
    return whole_plan(
        sawing, [way for way, number in amounts if way is not None for _ in range(round(number))]
    )
