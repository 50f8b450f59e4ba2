"""The cheapest way to cut a list of pieces from boards, proven where it can be.

Two programs talk to each other. One, over ways to cut a stick, is grown by column generation
(Gilmore and Gomory 1961) until no new way helps. The other knows only how many boards there are of
each length, and inequalities that every cutting obeys (bounds.py); its answer is the bound. Where
the pieces can be cut from the boards it names, those boards are cheapest; where they cannot, it
learns why and names others. Then, at that cost, the fewest boards are looked for likewise, and with
those the most useful leftovers.

Limits are counted in steps, never in seconds: the same list is always cut alike.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from plantframe.frozen import replace
from plantframe.timber.bounds import Boards, groups, worth
from plantframe.timber.diving import dive
from plantframe.timber.filling import TooMany, fillings
from plantframe.timber.leftovers import kept, trimmed
from plantframe.timber.longest_first import longest_first
from plantframe.timber.patterns import Patterns, Prices
from plantframe.timber.sawing import Pattern, Plan, Sawing, Solved, whole_plan

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from plantframe.timber.sawing import Stock

MOST_LENGTHS: Final = 150  # different ones; a list of more is sawn longest first, with its gap
ROUNDS: Final = 500  # of adding ways; garden lists take some dozens
TRIES: Final = 150  # sets of boards that are tried
TURNS: Final = 3  # dives from the same boards, each with other choices
OTHERS: Final = 12  # stocks of which fewest and most are tried, at the same cost
FEW_NODES: Final = 5  # branches of one short search for whole numbers
WORK: Final = 600_000  # of a long one: branches times ways to cut
PART: Final = 5  # a fifth of that where it cannot decide
LISTED: Final = (500, 2000)  # ways that are listed at once, where a search needs more
FINE: Final = 4000  # the first step up from there, a four-thousandth of the cost, then double
ABOVE: Final = 6  # dearer sets of boards that are tried where the cheapest stays undecided
TINY: Final = 1e-6


def solve(sawing: Sawing) -> Solved | None:
    """The best cutting; None where some piece fits in no board that is left.

    Each wanted length must fit in a stock of which any number can be had, or `longest_first` must
    find room for it in the boards there are.
    """
    if not any(one.count for one in sawing.wanted):
        return Solved(whole_plan(sawing, ()), 0, 0, fewest=True)
    start = longest_first(sawing)
    if start is None:
        return None
    if len(sawing.wanted) > MOST_LENGTHS:
        return Solved(start, start.cost(sawing), _by_length(sawing), fewest=False)
    search = _Search(sawing, start)
    costs = [stock.cost for stock in sawing.stocks]
    bound = search.least(costs)
    cost = search.best.cost(sawing)
    fewest = False
    if bound >= cost:
        fewest = search.least([1] * len(costs), cost) >= search.best.board_count
    plan = kept(sawing, search.best, search.patterns.ways) or search.best
    return Solved(plan, cost, min(bound, cost), fewest=fewest)


def _by_length(sawing: Sawing) -> int:
    """What the pieces cost at least, at the best price of a length of stick; bought or had."""
    wanted = sum(one.count * (one.length + sawing.kerf) for one in sawing.wanted)
    had = sum(
        sawing.room(one) * one.sticks * one.available
        for one in sawing.stocks
        if one.available is not None
    )
    prices = [
        one.cost / (sawing.room(one) * one.sticks) for one in sawing.stocks if one.available is None
    ]
    return max(math.floor((wanted - had) * min(prices, default=0.0) + TINY), 0)


class _Search:
    """One list being cut. `best` is the best plan yet: cheapest, then of fewest boards."""

    def __init__(self, sawing: Sawing, start: Plan) -> None:
        self.sawing = sawing
        self.best = start
        self.patterns = Patterns(sawing)
        self.boards = Boards(sawing)
        self.groups = groups(sawing)
        self.patterns.add(stick for stick in start.sticks if any(stick.counts))
        self.patterns.add(self._single())

    def _single(self) -> Iterator[Pattern]:
        """Each stick filled with one length alone."""
        for places, stocks in self.groups.items():
            for at in stocks:
                room = self.sawing.room(self.sawing.stocks[at])
                for place in places:
                    one = self.sawing.wanted[place]
                    count = min(one.count, room // (one.length + self.sawing.kerf))
                    counts = [0] * len(self.sawing.wanted)
                    counts[place] = count
                    if count:
                        yield Pattern(at, tuple(counts))

    # -- the least of something -------------------------------------------------------------------
    def least(self, costs: Sequence[int], cap: int | None = None) -> int:
        """Keep the sum of `costs` over the boards small; what it cannot be less than.

        cap   what the boards may cost, where the fewest boards of that cost are looked for
        """
        own = [stock.cost for stock in self.sawing.stocks]
        if cap is not None:
            self.boards.limit(own, 0.0, cap + 0.5)
        prices = self._generate(costs, cap)
        for _ in range(TRIES):
            named = self.boards.least(costs)
            if named is None:
                return self._sum(costs)  # nothing is as cheap as what there is already
            numbers, bound = named
            if bound >= self._sum(costs):
                return bound
            if not self._could_give(numbers):
                continue
            if self._cut(numbers, costs, bound, cap):
                return bound
            gap = bound - prices.value
            closed = self._listed(prices, gap, bound, cap)
            if self._sum(costs) <= bound:
                return bound
            if not closed:
                self._above(costs, bound, cap)
                return bound
            self.boards.limit(costs, bound + 0.5, float("inf"))
        return bound

    def _sum(self, costs: Sequence[int]) -> int:
        return sum(cost * count for cost, count in zip(costs, self.best.boards, strict=True))

    def _above(self, costs: Sequence[int], bound: int, cap: int | None) -> None:
        """Try sets of boards that cost a little more, where the cheapest set stays undecided."""
        rows = self.boards.mark()
        self.boards.limit(costs, bound + 0.5, float("inf"))
        tried = 0
        for _ in range(TRIES):
            named = self.boards.least(costs)
            if named is None or named[1] >= self._sum(costs) or tried == ABOVE:
                break
            numbers, bound = named
            if not self._could_give(numbers):
                continue
            tried += 1
            if self._dived(numbers, TURNS) or self._any(bound, cap, FEW_NODES)[0]:
                break
            step = bound * (2**tried) // FINE
            self.boards.limit(costs, bound + step + 0.5, float("inf"))
        self.boards.back_to(rows)

    # -- growing the ways -------------------------------------------------------------------------
    def _generate(self, costs: Sequence[int], cap: int | None) -> Prices:
        """Add ways until none makes the boards cheaper."""
        self.patterns.limit(cost=float("inf") if cap is None else float(cap))
        self.patterns.keep_small(costs)
        prices = self.patterns.prices()
        for _ in range(ROUNDS):
            measured = worth(self.sawing, prices.worths)
            self.boards.hold(measured)
            if not self.patterns.add(measured.better(self.sawing, prices)):
                break
            prices = self.patterns.prices()
        return prices

    def _could_give(self, numbers: Sequence[int]) -> bool:
        """Whether these boards could give the pieces, if a stick might be cut a little each way.

        If not, the inequality that says so is kept.
        """
        self.patterns.limit()
        self.patterns.from_boards(numbers)
        prices = self.patterns.prices()
        for _ in range(ROUNDS):
            if prices.value <= TINY:
                return True
            measured = worth(self.sawing, prices.worths)
            if self.boards.short(measured, numbers):
                self.boards.hold(measured)
                return False
            if not self.patterns.add(measured.better(self.sawing, prices)):
                break
            prices = self.patterns.prices()
        return True  # too near to tell: the search in whole numbers has the word

    # -- whole numbers ----------------------------------------------------------------------------
    def _cut(
        self, numbers: Sequence[int], costs: Sequence[int], bound: int, cap: int | None
    ) -> bool:
        """Try to cut the pieces from these boards, then from others that cost no more."""
        if self._dived(numbers, TURNS) or self._any(bound, cap, FEW_NODES)[0]:
            return True
        tried = {tuple(numbers)}
        for choice in self.boards.choices(OTHERS):
            others = self.boards.other(costs, bound, choice)
            if others is not None and others not in tried:
                tried.add(others)
                if self._could_give(others) and self._dived(others, TURNS):
                    break
        return self._sum(costs) <= bound or self._any(bound, cap, 10 * FEW_NODES)[0]

    def _dived(self, numbers: Sequence[int], turns: int) -> bool:
        """Settle sticks from these boards."""
        self.patterns.limit()
        self.patterns.from_boards(numbers)
        for turn in range(turns):
            sticks = dive(self.sawing, self.patterns, turn)
            if sticks:
                self._keep(sticks)
                return True
        return False

    def _any(self, bound: int, cap: int | None, nodes: int) -> tuple[bool, bool]:
        """Search any boards within the limits; whether it went, whether it cannot."""
        self._allow(bound, cap)
        return self._tried(nodes)

    def _allow(self, bound: int, cap: int | None) -> None:
        """Any boards that cost no more than the bound; or no more than the cap, and as few."""
        if cap is None:
            self.patterns.limit(cost=bound + 0.5)
        else:
            self.patterns.limit(cost=cap + 0.5, count=bound + 0.5)
        self.patterns.from_any()

    def _tried(self, nodes: int) -> tuple[bool, bool]:
        """Search in whole numbers; whether nothing stays short, and whether something must."""
        found = self.patterns.whole(nodes, TINY)
        if found.sticks:
            self._keep(found.sticks)
        return found.value <= TINY, found.bound > TINY

    def _keep(self, sticks: Sequence[Pattern]) -> None:
        """Keep these sticks as the best plan, if they are; short pieces get boards of their own."""
        sawing = self.sawing
        plan = trimmed(sawing, whole_plan(sawing, sticks))
        made = [0] * len(sawing.wanted)
        for stick in plan.sticks:
            for place, count in enumerate(stick.counts):
                made[place] += count
        short = tuple(
            replace(one, count=max(one.count - done, 0))
            for one, done in zip(sawing.wanted, made, strict=True)
        )
        if any(one.count for one in short):
            more = longest_first(replace(sawing, wanted=short, stocks=_rest(sawing, plan)))
            if more is None:
                return
            plan = whole_plan(sawing, [*plan.sticks, *more.sticks])
        if (plan.cost(sawing), plan.board_count) < (self.best.cost(sawing), self.best.board_count):
            self.best = plan

    def _listed(self, prices: Prices, gap: float, bound: int, cap: int | None) -> bool:
        """List the ways that a cutting of this cost could use, and try them.

        A cutting of cost `bound` uses only ways whose loss is at most the gap: if all of those are
        listed and something must stay short, there is no such cutting, and True says so.
        """
        for most in LISTED:
            share = gap
            for _ in range(16):
                if self._list(prices, share, most):
                    break
                share /= 2
            else:
                continue
            # a list that is complete decides; one that is not only helps to find
            work = WORK if share == gap else WORK // PART
            done, cannot = self._any(bound, cap, work // len(self.patterns.ways))
            if done:
                return False
            if share == gap:
                return cannot
        return False

    def _list(self, prices: Prices, gap: float, most: int) -> bool:
        """Add every way whose loss is at most the gap; False where there are too many."""
        sawing = self.sawing
        found: list[Pattern] = []
        for places, stocks in self.groups.items():
            longest = max(sawing.stocks[at].length for at in stocks)
            least = [
                (sawing.room(sawing.stocks[at]), prices.sticks[at] - gap - TINY) for at in stocks
            ]
            try:
                found += [
                    Pattern(stocks[number], counts)
                    for number, counts in fillings(
                        sawing, prices.worths, places, longest, least, most - len(found)
                    )
                ]
            except TooMany:
                return False
        self.patterns.add(found)
        return True


def _rest(sawing: Sawing, plan: Plan) -> tuple[Stock, ...]:
    """The stocks, less the boards that a plan takes of those there are only some of."""
    taken: dict[str, int] = {}
    for at, stock in enumerate(sawing.stocks):
        key = stock.pool or f"stock {at}"
        taken[key] = taken.get(key, 0) + plan.boards[at]
    return tuple(
        stock
        if stock.available is None
        else replace(stock, available=stock.available - taken[stock.pool or f"stock {at}"])
        for at, stock in enumerate(sawing.stocks)
    )
