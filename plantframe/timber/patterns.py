"""The linear program over ways to cut a stick: which ways, how often, on how many boards."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, Final

from plantframe.frozen import frozen
from plantframe.timber.quiet import INFINITE, feasible, kind, quiet, stop_above

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from plantframe.timber.sawing import Pattern, Sawing


# without searches for answers within the search: dives find them sooner
WITHOUT: Final = {
    f"mip_heuristic_run_{name}": False for name in ("rins", "rens", "root_reduced_cost")
}


@frozen
class Prices:
    """What the program says: its value, the worths of the pieces, and of a stick of each stock."""

    value: float
    worths: tuple[float, ...]
    sticks: tuple[float, ...]


@frozen
class Whole:
    """A solution in whole numbers.

    value  of what was to be kept small, not a number where nothing was found
    bound  what it cannot be less than over the ways there are
    """

    value: float
    bound: float
    sticks: tuple[Pattern, ...]


class Patterns:
    """Columns: pieces left short, boards of each stock, ways to cut.

    Rows: pieces, sticks, pools, and limits on what the boards cost and how many there are.
    """

    def __init__(self, sawing: Sawing) -> None:
        self.sawing = sawing
        self.highs: Any = quiet(mip_rel_gap=0.0, **WITHOUT)
        self.pieces, self.stocks = len(sawing.wanted), len(sawing.stocks)
        self.ways: dict[Pattern, int] = {}
        self.solved = 0  # linear programs
        self.held: set[Pattern] = set()
        for one in sawing.wanted:
            self.highs.addRow(float(one.count), INFINITE, 0, [], [])
        for _ in sawing.stocks:
            self.highs.addRow(0.0, INFINITE, 0, [], [])
        rows = self.pieces + self.stocks
        self.cost_row, self.count_row = rows, rows + 1
        for _ in range(2):
            self.highs.addRow(-INFINITE, INFINITE, 0, [], [])
        rows += 2
        pools: dict[str, int] = {}
        for at, stock in enumerate(sawing.stocks):
            key = stock.pool or f"stock {at}"
            if stock.available is not None and key not in pools:
                self.highs.addRow(-INFINITE, float(stock.available), 0, [], [])
                pools[key] = rows
                rows += 1
        for place in range(self.pieces):
            self.highs.addCol(1.0, 0.0, 0.0, 1, [place], [1.0])
        for at, stock in enumerate(sawing.stocks):
            index = [self.pieces + at, self.count_row]
            value = [float(stock.sticks), 1.0]
            if stock.cost:
                index.append(self.cost_row)
                value.append(float(stock.cost))
            if stock.available is not None:
                index.append(pools[stock.pool or f"stock {at}"])
                value.append(1.0)
            self.highs.addCol(0.0, 0.0, INFINITE, len(index), index, value)

    def add(self, ways: Iterable[Pattern]) -> bool:
        """Add ways to cut; whether any was new."""
        fresh = [way for way in dict.fromkeys(ways) if way not in self.ways]
        for way in fresh:
            index = [place for place, count in enumerate(way.counts) if count]
            value = [float(way.counts[place]) for place in index]
            self.highs.addCol(
                0.0,
                0.0,
                INFINITE,
                len(index) + 1,
                [*index, self.pieces + way.stock],
                [*value, -1.0],
            )
            self.ways[way] = len(self.ways)
        return bool(fresh)

    # -- what is asked ------------------------------------------------------------------------
    def keep_small(self, costs: Sequence[int], most: Sequence[int] | None = None) -> None:
        """Ask for all pieces, from boards of least cost, and no more of each than there may be."""
        self._short(allowed=False)
        for at, cost in enumerate(costs):
            self._board(at, float(cost), 0.0, INFINITE if most is None else float(most[at]))

    def from_boards(self, numbers: Sequence[int]) -> None:
        """Ask for as much as these boards give."""
        self._short(allowed=True)
        for at, number in enumerate(numbers):
            self._board(at, 0.0, float(number), float(number))

    def from_any(self) -> None:
        """Ask for as much as any boards give within the limits."""
        self._short(allowed=True)
        for at in range(self.stocks):
            self._board(at, 0.0, 0.0, INFINITE)

    def limit(self, cost: float = INFINITE, count: float = INFINITE) -> None:
        """The boards may cost so much and be so many."""
        self.highs.changeRowBounds(self.cost_row, -INFINITE, cost)
        self.highs.changeRowBounds(self.count_row, -INFINITE, count)

    def _short(self, *, allowed: bool) -> None:
        for place, one in enumerate(self.sawing.wanted):
            self.highs.changeColBounds(place, 0.0, float(one.count) if allowed else 0.0)

    def _board(self, at: int, cost: float, low: float, high: float) -> None:
        self.highs.changeColCost(self.pieces + at, cost)
        self.highs.changeColBounds(self.pieces + at, low, high)

    def hold(self, way: Pattern, low: int, high: float = INFINITE) -> None:
        """Cut so many sticks in that way at least, and at most."""
        self.highs.changeColBounds(self.pieces + self.stocks + self.ways[way], float(low), high)
        self.held.add(way)

    def release(self) -> None:
        """Let every way be cut as often as may be again."""
        for way in sorted(self.held, key=self.ways.__getitem__):
            self.hold(way, 0)
        self.held.clear()

    # -- answers --------------------------------------------------------------------------------
    def prices(self) -> Prices:
        """Solve with any numbers, and read the shadow prices; of no value where that cannot be."""
        self.highs.run()
        self.solved += 1
        if not feasible(self.highs):
            return Prices(INFINITE, (0.0,) * self.pieces, (0.0,) * self.stocks)
        dual = list(self.highs.getSolution().row_dual)
        return Prices(
            self.highs.getInfo().objective_function_value,
            tuple(max(one, 0.0) for one in dual[: self.pieces]),
            tuple(max(one, 0.0) for one in dual[self.pieces : self.pieces + self.stocks]),
        )

    def amounts(self) -> list[tuple[Pattern, float]]:
        """How many sticks are cut in each way, by the last answer."""
        values = list(self.highs.getSolution().col_value)[self.pieces + self.stocks :]
        return list(zip(self.ways, values, strict=True))

    def whole(self, nodes: int, gap: float, enough: float = INFINITE) -> Whole:
        """Solve in whole numbers, over at most so many branches, to within a gap.

        enough  a bound above that ends it
        """
        first = self.pieces
        columns = range(first, first + self.stocks + len(self.ways))
        self.highs.setOptionValue("mip_max_nodes", nodes)
        self.highs.setOptionValue("mip_abs_gap", gap)
        stop_above(self.highs, enough)
        for column in columns:
            self.highs.changeColIntegrality(column, kind(whole=True))
        self.highs.run()
        info = self.highs.getInfo()
        found = Whole(float("nan"), info.mip_dual_bound, ())
        if feasible(self.highs):
            values = list(self.highs.getSolution().col_value)[first + self.stocks :]
            sticks = tuple(
                way
                for way, number in zip(self.ways, values, strict=True)
                for _ in range(round(number))
            )
            found = Whole(info.objective_function_value, info.mip_dual_bound, sticks)
        return found
