"""Which boards can give the pieces at all, and the cheapest numbers of them that might.

What those cost no cutting can cost less than.

Whatever a piece of each length is held to be worth, the boards must hold at least the worth of all
that is wanted. Each set of worths gives one such inequality, in whole numbers; the linear programs
of the search supply worths that bite.
Source: weak duality of linear programming and the cuts of Benders 1962, for the pattern program of
Gilmore and Gomory 1961.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.timber.filling import Filling
from plantframe.timber.quiet import INFINITE, feasible, kind, quiet
from plantframe.timber.sawing import Pattern

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.timber.patterns import Prices
    from plantframe.timber.sawing import Sawing

STEPS: Final = 1 << 20  # steps in which the greatest worth is written
NODES: Final = 20000
SLACK: Final = 1e-6


def groups(sawing: Sawing) -> dict[tuple[int, ...], list[int]]:
    """The stocks that take the same wanted lengths: those lengths' places -> the stocks'."""
    found: dict[tuple[int, ...], list[int]] = {}
    for at, stock in enumerate(sawing.stocks):
        places = tuple(
            place
            for place, one in enumerate(sawing.wanted)
            if stock.takes(place) and one.length <= stock.length
        )
        if places:
            found.setdefault(places, []).append(at)
    return found


@frozen
class Worth:
    """Worths in whole numbers, and the most of them that one stick of each stock can hold.

    step     what one whole step stands for
    need     the worth of all that is wanted
    held     the most that one stick of each stock holds, by the stock's place
    fillings the filled stick of each stock that makes it
    """

    step: float
    need: int
    held: tuple[int, ...]
    fillings: tuple[Filling | None, ...]

    def better(self, sawing: Sawing, prices: Prices) -> list[Pattern]:
        """For each stock the way to cut it that is worth most, where that beats the stick."""
        return [
            Pattern(at, filling.counts(sawing.room(sawing.stocks[at])))
            for at, (filling, held) in enumerate(zip(self.fillings, self.held, strict=True))
            if filling is not None and held * self.step > prices.sticks[at] + SLACK
        ]


def worth(sawing: Sawing, worths: Sequence[float]) -> Worth:
    """Measure the stocks by what pieces are held to be worth."""
    step = max(*worths, 1e-12) / STEPS
    whole = [max(round(one / step), 0) for one in worths]
    held = [0] * len(sawing.stocks)
    fillings: list[Filling | None] = [None] * len(sawing.stocks)
    for places, stocks in groups(sawing).items():
        longest = max(sawing.stocks[at].length for at in stocks)
        filling = Filling(sawing, whole, places, longest)
        for at in stocks:
            held[at] = int(filling.worth(sawing.room(sawing.stocks[at])))
            fillings[at] = filling
    need = sum(one.count * value for one, value in zip(sawing.wanted, whole, strict=True))
    return Worth(step, need, tuple(held), tuple(fillings))


class Boards:
    """The program of how many boards of each stock: whole numbers, cheap to solve."""

    def __init__(self, sawing: Sawing) -> None:
        self.sawing = sawing
        self.highs = quiet(mip_rel_gap=0.0, mip_abs_gap=0.5, mip_max_nodes=NODES)
        stocks = range(len(sawing.stocks))
        for at in stocks:
            self.highs.addCol(0.0, 0.0, INFINITE, 0, [], [])
            self.highs.changeColIntegrality(at, kind(whole=True))
        pools: dict[str, list[int]] = {}
        for at in stocks:
            if sawing.stocks[at].available is not None:
                pools.setdefault(sawing.stocks[at].pool or f"stock {at}", []).append(at)
        for members in pools.values():
            number = float(sawing.stocks[members[0]].available or 0)
            self.highs.addRow(-INFINITE, number, len(members), members, [1.0] * len(members))
        self.rows = len(pools)

    def hold(self, one: Worth) -> bool:
        """Ask that the boards hold what is needed; False where they can hold nothing."""
        stocks = self.sawing.stocks
        values = [one.held[at] * stocks[at].sticks for at in range(len(stocks))]
        most = max(values)
        if most <= 0:
            return False
        index = [at for at, value in enumerate(values) if value > 0]
        self.highs.addRow(
            one.need / most * (1 - 1e-9),
            INFINITE,
            len(index),
            index,
            [values[at] / most for at in index],
        )
        self.rows += 1
        return True

    def short(self, one: Worth, numbers: Sequence[int]) -> bool:
        """Whether these boards hold less than is needed, by those worths."""
        stocks = self.sawing.stocks
        have = sum(one.held[at] * stocks[at].sticks * number for at, number in enumerate(numbers))
        return have < one.need * (1 - SLACK)

    def limit(self, costs: Sequence[int], low: float, high: float) -> None:
        """The boards' cost must lie between."""
        index = [at for at, cost in enumerate(costs) if cost]
        value = [float(costs[at]) for at in index]
        self.highs.addRow(low, high, len(index), index, value)
        self.rows += 1

    def mark(self) -> int:
        """Where the inequalities stand now."""
        return self.rows

    def back_to(self, mark: int) -> None:
        """Take away what was asked since."""
        self.highs.deleteRows(self.rows - mark, list(range(mark, self.rows)))
        self.rows = mark

    def choices(self, most: int) -> list[tuple[int, int]]:
        """Stocks to have as few or as many boards of as may be: the place, and 1 or -1.

        What can be bought comes first: of that there is most choice.
        """
        places = range(len(self.sawing.stocks))
        order = sorted(places, key=lambda at: self.sawing.stocks[at].available is not None)
        return [(at, sign) for at in order[:most] for sign in (1, -1)]

    def other(
        self, costs: Sequence[int], bound: int, choice: tuple[int, int]
    ) -> tuple[int, ...] | None:
        """A set of boards that costs no more, with as few or as many of one stock as may be."""
        mark = self.mark()
        self.limit(costs, 0.0, bound + 0.5)
        ones = [0] * len(costs)
        ones[choice[0]] = choice[1]
        found = self.least(ones)
        self.back_to(mark)
        return found[0] if found is not None else None

    def least(self, costs: Sequence[int]) -> tuple[tuple[int, ...], int] | None:
        """The numbers of boards that cost least, and a cost that nothing can go below.

        None where there are none.
        """
        for at, cost in enumerate(costs):
            self.highs.changeColCost(at, float(cost))
        self.highs.run()
        if not feasible(self.highs):
            return None
        numbers = tuple(round(one) for one in self.highs.getSolution().col_value)
        bound = int(-(-(self.highs.getInfo().mip_dual_bound - SLACK) // 1))
        return numbers, bound
