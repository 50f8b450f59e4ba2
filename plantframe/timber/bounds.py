"""Which boards can give the pieces at all, and the cheapest numbers of them that might.

What those cost no cutting can cost less than.

Whatever a piece of each length is held to be worth, the boards must hold at least the worth of all
that is wanted. Each set of worths gives one such inequality, in whole numbers; the linear programs
of the search supply worths that bite.
Source: weak duality of linear programming and the cuts of Benders 1962, for the pattern program of
Gilmore and Gomory 1961.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.timber.filling import Filling
from plantframe.timber.quiet import INFINITE, feasible, impossible, kind, quiet
from plantframe.timber.sawing import Pattern

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.timber.patterns import Prices
    from plantframe.timber.sawing import Sawing

STEPS: Final = 1 << 20  # steps in which the greatest worth is written
NODES: Final = 4000  # branches of the search for numbers of boards
SLACK: Final = 1e-6
GREAT: Final = 1e15  # beyond any worth
GAP: Final = 0.9  # of whole numbers: the least is known then
CLOSE: Final = 0.05  # above a whole number HiGHS's bound is that number: its sums are not exact
FEW_NODES: Final = 50  # where any numbers will do
SHARE: Final = 1e4  # a ten-thousandth of what is needed counts as much as one


def groups(sawing: Sawing) -> dict[tuple[int, ...], list[int]]:
    """The stocks that may give the same wanted lengths, as far as their kind goes.

    Gives the places of those lengths -> the stocks' places. A length that some of the stocks are
    too short for stands too: it never fits their room.
    """
    found: dict[tuple[int, ...], list[int]] = {}
    for at, stock in enumerate(sawing.stocks):
        places = tuple(place for place in range(len(sawing.wanted)) if stock.takes(place))
        if any(sawing.wanted[place].length <= stock.length for place in places):
            found.setdefault(places, []).append(at)
    return found


@frozen
class Worth:
    """Worths in whole numbers, and the most of them that one stick of each stock can hold.

    step     what one whole step stands for
    worths   of a piece of each length, in steps
    need     the worth of all that is wanted
    held     the most that one stick of each stock holds, by the stock's place
    fillings the filled stick of each stock that makes it
    """

    step: float
    worths: tuple[int, ...]
    need: int
    held: tuple[int, ...]
    fillings: tuple[Filling | None, ...]

    def holds(self, sawing: Sawing, numbers: Sequence[int]) -> int:
        """The most that so many boards of each stock hold."""
        return sum(
            held * stock.sticks * number
            for held, stock, number in zip(self.held, sawing.stocks, numbers, strict=True)
        )

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
    return Worth(step, tuple(whole), need, tuple(held), tuple(fillings))


@frozen
class Named:
    """Numbers of boards of each stock, none where the search broke off; and a bound of the cost."""

    numbers: tuple[int, ...]
    bound: int


class Boards:
    """The program of how many boards of each stock: whole numbers, cheap to solve."""

    def __init__(self, sawing: Sawing) -> None:
        self.sawing = sawing
        self.highs = quiet(mip_rel_gap=0.0, mip_abs_gap=GAP)
        stocks = range(len(sawing.stocks))
        self.pieces = sum(one.count for one in sawing.wanted)  # no board without a piece
        for at in stocks:
            self.highs.addCol(0.0, 0.0, float(self.pieces), 0, [], [])
            self.highs.changeColIntegrality(at, kind(whole=True))
        self.pools: dict[str, list[int]] = {}
        for at in stocks:
            if sawing.stocks[at].available is not None:
                self.pools.setdefault(sawing.stocks[at].pool or f"stock {at}", []).append(at)
        for members in self.pools.values():
            number = float(sawing.stocks[members[0]].available or 0)
            self.highs.addRow(-INFINITE, number, len(members), members, [1.0] * len(members))
        self.rows = len(self.pools)
        self.spare = len(sawing.stocks)  # column: by what share boards hold more than is needed
        self.highs.addCol(0.0, 0.0, 0.0, 0, [], [])

    def hold(self, one: Worth) -> bool:
        """Ask that the boards hold what is needed; False where they can hold nothing."""
        stocks = self.sawing.stocks
        values = [one.held[at] * stocks[at].sticks for at in range(len(stocks))]
        most = max(values)
        if most <= 0:
            return False
        index = [at for at, value in enumerate(values) if value > 0]
        need = one.need / most * (1 - 1e-7)  # HiGHS must not cut off what just fits
        self.highs.addRow(
            need,
            INFINITE,
            len(index) + 1,
            [*index, self.spare],
            [*(values[at] / most for at in index), -need],
        )
        self.rows += 1
        return True

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

    def exclude(self, numbers: Sequence[int]) -> None:
        """Name none of these boards' own subsets any more: of some stock more are asked for."""
        index: list[int] = []
        for at, number in enumerate(numbers):
            more = self.highs.getNumCol()  # whether there are more of this stock
            self.highs.addCol(0.0, 0.0, 1.0, 0, [], [])
            self.highs.changeColIntegrality(more, kind(whole=True))
            self.highs.addRow(0.0, INFINITE, 2, [at, more], [1.0, -(number + 1.0)])
            index.append(more)
        self.highs.addRow(1.0, INFINITE, len(index), index, [1.0] * len(index))
        self.rows += len(index) + 1

    def _filled(self, costs: Sequence[int], numbers: Sequence[int]) -> tuple[int, ...]:
        """These boards and all that cost nothing more."""
        out = list(numbers)
        for members in self.pools.values():
            at = next((at for at in members if not costs[at]), None)
            if at is not None:
                number = self.sawing.stocks[members[0]].available or 0
                out[at] += number - sum(out[one] for one in members)
        return tuple(out)

    def least(self, costs: Sequence[int], nodes: int = NODES) -> Named | None:
        """The numbers of boards that cost least, as far as so many branches tell.

        None where there are none.
        """
        unit = math.gcd(*costs) or 1  # prices in fives: a bound of 61 is one of 65
        for at, cost in enumerate(costs):
            self.highs.changeColCost(at, float(cost // unit))
        self._run(nodes)
        bound = self.highs.getInfo().mip_dual_bound
        if impossible(self.highs) or bound == INFINITE:
            return None
        return Named(self._numbers(costs), unit * math.ceil(max(bound, -GREAT) - CLOSE))

    def ample(self, costs: Sequence[int], most: int) -> tuple[int, ...] | None:
        """Numbers of boards that cost no more and hold most by the measure that is least kind.

        None where there are none; no numbers where the search broke off.
        """
        mark = self.mark()
        self.limit(costs, 0.0, most + 0.5)
        for at in range(len(costs)):
            self.highs.changeColCost(at, 0.0)
        self.highs.changeColCost(self.spare, -SHARE)
        self.highs.changeColBounds(self.spare, 0.0, 1.0)
        self._run(FEW_NODES)
        numbers = None if impossible(self.highs) else self._numbers(costs)
        self.highs.changeColCost(self.spare, 0.0)
        self.highs.changeColBounds(self.spare, 0.0, 0.0)
        self.back_to(mark)
        return numbers

    def _run(self, nodes: int) -> None:
        """Search so many branches at most, afresh: mending the last answer takes far longer."""
        self.highs.clearSolver()
        self.highs.setOptionValue("mip_max_nodes", nodes)
        self.highs.run()

    def _numbers(self, costs: Sequence[int]) -> tuple[int, ...]:
        if not feasible(self.highs):
            return ()
        values = list(self.highs.getSolution().col_value)[: len(self.sawing.stocks)]
        return self._filled(costs, [round(one) for one in values])

    def most(self, one: Worth, costs: Sequence[int], bound: int) -> int | None:
        """The most worth that boards of no more cost can hold; None where there are none."""
        held = [
            -value * stock.sticks for value, stock in zip(one.held, self.sawing.stocks, strict=True)
        ]
        mark = self.mark()
        self.limit(costs, 0.0, bound + 0.5)
        named = self.least(held)
        self.back_to(mark)
        # a little more than HiGHS says: its sums of great numbers are not exact
        return None if named is None else -named.bound + abs(named.bound) // 10**6 + 1
