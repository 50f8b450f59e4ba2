"""The cheapest way to cut a list of pieces from boards, proven where it can be.

Two programs talk to each other. One, over ways to cut a stick, is grown by column generation
(Gilmore and Gomory 1961) until no new way helps. The other knows only how many boards there are of
each length, and inequalities that every cutting obeys (bounds.py); its answer is the bound. Where
the pieces can be cut from the boards it names (trying.py), those boards are cheapest; where they
cannot, it learns why and names others. Then, at that cost, the fewest boards are looked for
likewise, and with those the most useful leftovers.
Source: logic-based decomposition after Benders 1962 (Hooker and Ottosson 2003).

Limits are counted in steps, never in seconds: the same list is always cut alike.
"""

from __future__ import annotations

import math
from collections import Counter
from typing import TYPE_CHECKING, Final

from plantframe.frozen import replace
from plantframe.timber.bounds import NODES, Boards, Named, groups, worth
from plantframe.timber.deciding import Margin, missing, told
from plantframe.timber.leftovers import kept, trimmed
from plantframe.timber.longest_first import longest_first
from plantframe.timber.patterns import Patterns
from plantframe.timber.sawing import Pattern, Plan, Sawing, Solved, whole_plan
from plantframe.timber.trying import Trials

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from plantframe.timber.bounds import Worth
    from plantframe.timber.sawing import Stock

MOST_LENGTHS: Final = 150  # different ones; a list of more is sawn longest first, with its gap
ROUNDS: Final = 500  # of adding ways; garden lists take some dozens
TRIES: Final = 150  # sets of boards that are tried
SAME: Final = 8  # sets of boards of one cost that are tried before all of that cost together
OPEN: Final = 5  # sets of boards that may stay open at once
OPEN_TOO: Final = 2  # and where only the number of boards is at stake
FEWEST: Final = 250  # of the purse, likewise
FEW_NODES: Final = 100  # branches of a first search for numbers of boards
MOST_WAYS: Final = 2000  # that are listed to settle a cost
WORK: Final = 10_000  # branches times ways, likewise
ABOVE: Final = 6  # times that dearer boards are tried: by a 64th of what is open, by a 32nd …


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
        unsure = search.unsure  # of boards that may be fewer and cost no more
        count = search.least([1] * len(costs), cost)
        fewest = count >= search.best.board_count and not unsure
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
    return max(math.floor((wanted - had) * min(prices, default=0.0) + 1e-6), 0)


class _Search:
    """One list being cut. `best` is the best plan yet: cheapest, then of fewest boards."""

    def __init__(self, sawing: Sawing, start: Plan) -> None:
        self.sawing = sawing
        self.best = start
        self.patterns = Patterns(sawing)
        self.boards = Boards(sawing)
        self.groups = groups(sawing)
        self.trials = Trials(sawing, self.patterns, self._keep)
        self.seen: Counter[int] = Counter()  # sets of boards that were named, by their cost
        self.unsure = False  # whether boards were given up that might do
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
            self.trials.purse = min(self.trials.purse, FEWEST)
        bound = self._bound(self.boards.least(costs, FEW_NODES), costs)
        if bound >= self._sum(costs):
            return bound  # what is known of boards already says so
        measured = self._generate(costs, cap)
        self.seen.clear()
        for _ in range(TRIES):
            named = self._next(costs)
            bound = self._bound(named, costs)
            if self._open(costs, bound, closer=cap is None):
                break
            if named is None or bound >= self._sum(costs) or not named.numbers:
                break
            if self.seen[bound] == SAME:
                self._settle(costs, bound, cap, measured)
            elif not self.trials.gives(named):
                self.boards.exclude(named.numbers)
        bound = min([bound, self._sum(costs), *(one.named.bound for one in self.trials.open)])
        self.unsure = self.unsure or bool(self.trials.open)
        self.trials.open.clear()
        if bound < self._sum(costs):
            self._above(costs)
        return bound

    def _open(self, costs: Sequence[int], bound: int, *, closer: bool) -> bool:
        """Whether some boards stay open, once dearer ones are named or too many are open."""
        trials = self.trials
        many = len(trials.open) >= (OPEN if closer else OPEN_TOO)
        if not trials.open or (bound <= trials.open[0].named.bound and not many):
            return False
        if closer:
            for trial in list(trials.open):
                if trial.named.bound < self._sum(costs) and trials.closer(trial) is not None:
                    trials.open.remove(trial)
        return bool(trials.open)

    def _bound(self, named: Named | None, costs: Sequence[int]) -> int:
        """What cannot be gone below; where no boards are named, what there already is is least."""
        return self._sum(costs) if named is None else min(named.bound, self._sum(costs))

    def _next(self, costs: Sequence[int]) -> Named | None:
        """The cheapest boards that could give the pieces, as far as fractions of sticks tell.

        Where many sets of one cost cannot, the last of them: its cost wants settling as a whole.
        """
        nodes = FEW_NODES
        for _ in range(TRIES):
            named = self.boards.least(costs, nodes)
            if named is None or named.bound >= self._sum(costs):
                return named
            least = bool(named.numbers) and _sum(costs, named.numbers) <= named.bound
            if not least and nodes == FEW_NODES:
                if not named.numbers or self._could_give(named.numbers):
                    nodes = NODES
                continue
            nodes = FEW_NODES
            if not named.numbers:
                return named
            if least and self.seen[named.bound]:
                ample = self.boards.ample(costs, named.bound)
                named = replace(named, numbers=ample or named.numbers)
            self.seen[named.bound] += 1
            if self.seen[named.bound] == SAME or self._could_give(named.numbers):
                return named
        return named

    def _settle(self, costs: Sequence[int], bound: int, cap: int | None, measured: Worth) -> None:
        """Try to cut the pieces from any boards of that cost; no more of it where none will do."""
        most = self.boards.most(measured, costs, bound)
        if most is None:
            return
        every = frozenset(range(len(costs)))
        ways = Margin(measured, most - measured.need, every).ways(self.sawing, MOST_WAYS)
        if ways is None:
            return
        limits = (bound + 0.5,) if cap is None else (cap + 0.5, bound + 0.5)
        verdict = told(self.sawing, ways, WORK, None, *limits)
        if verdict.sticks:
            self._keep(verdict.sticks)
        if verdict.gives is False:
            self.boards.limit(costs, bound + 0.5, float("inf"))

    def _sum(self, costs: Sequence[int]) -> int:
        return _sum(costs, self.best.boards)

    def _above(self, costs: Sequence[int]) -> None:
        """Try sets of boards that cost more and more, where the cheapest ones stay undecided."""
        rows = self.boards.mark()
        for tried in range(ABOVE, 0, -1):
            named = self._next(costs)
            if named is None or not named.numbers or named.bound >= self._sum(costs):
                break
            if self.trials.likely(named):
                break
            more = (self._sum(costs) - named.bound) >> tried
            self.boards.limit(costs, named.bound + more + 0.5, float("inf"))
        self.boards.back_to(rows)

    # -- growing the ways -------------------------------------------------------------------------
    def _generate(self, costs: Sequence[int], cap: int | None) -> Worth:
        """Add ways until none makes the boards cheaper."""
        self.patterns.limit(cost=float("inf") if cap is None else float(cap))
        self.patterns.keep_small(costs)
        for _ in range(ROUNDS):
            prices = self.patterns.prices()
            measured = worth(self.sawing, prices.worths)
            self.boards.hold(measured)
            if not self.patterns.add(measured.better(self.sawing, prices)):
                break
        return measured

    def _could_give(self, numbers: Sequence[int]) -> bool:
        """Whether these boards could give the pieces, if a stick might be cut a little each way.

        If not, the inequality that says so is kept.
        """
        measured = missing(self.sawing, self.patterns, numbers)
        if measured is not None:
            self.boards.hold(measured)
            if measured.holds(self.sawing, numbers) > measured.need * (1 - 1e-6):
                self.boards.exclude(numbers)
        return measured is None

    # -- what is found ----------------------------------------------------------------------------
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


def _sum(costs: Sequence[int], numbers: Sequence[int]) -> int:
    return sum(cost * number for cost, number in zip(costs, numbers, strict=True))


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
