"""From fractions to whole sticks: settle one way to cut at a time, and mend what it upsets.

Source: diving with column generation, as the handbooks of branch and price describe it. A choice
that leaves pieces without a place is taken back, a few times at most; then the last sticks are
freed again and decided together.
"""

from __future__ import annotations

from collections import Counter
from typing import TYPE_CHECKING, Final

from plantframe.frozen import replace
from plantframe.timber.bounds import worth
from plantframe.timber.deciding import margin, missing, told
from plantframe.timber.patterns import Patterns
from plantframe.timber.quiet import INFINITE

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.timber.patterns import Prices
    from plantframe.timber.sawing import Pattern, Sawing

TINY: Final = 1e-6
AMONG: Final = 4  # ways that stand nearest to a whole stick, among which turns choose
MANY: Final = 0.03  # of a stick, for each piece: what is cut into many goes first
BACK: Final = 12  # choices that may be taken back
ROUNDS: Final = 40  # of new ways after one choice
FREED: Final = (4, 10, 16)  # sticks that are freed again at the end
LISTED: Final = 600  # ways to cut them, at most
WORK: Final = 1500  # branches times ways


def dive(sawing: Sawing, patterns: Patterns, numbers: Sequence[int], turn: int) -> list[Pattern]:
    """The pieces cut from so many boards of each stock; no sticks where that was not found.

    turn   0 settles the likeliest way first, others now and then one of the next likeliest
    """
    patterns.limit()
    patterns.from_boards(numbers)
    sticks = _Dive(sawing, patterns, numbers).sticks(turn)
    patterns.release()
    return sticks


class _Dive:
    """`settled` are the sticks that are settled, in their order."""

    def __init__(self, sawing: Sawing, patterns: Patterns, numbers: Sequence[int]) -> None:
        self.sawing = sawing
        self.patterns = patterns
        self.numbers = numbers
        self.settled: list[Pattern] = []

    def sticks(self, turn: int) -> list[Pattern]:
        """Settle ways until every stick is whole; none where pieces stay short."""
        if self._mended(self.patterns.prices()).value > TINY:
            return []
        back = steps = 0
        furthest: list[Pattern] = []
        refused: set[Pattern] = set()
        while rest := self._rest():
            open_ways = [(amount, way) for amount, way in rest if way not in refused]
            if not open_ways or back > BACK:
                return self._freed(furthest)
            before = len(self.settled)
            place = (turn + steps) % min(turn + 1, AMONG)
            chosen = self._settle(open_ways, place, together=not refused)
            steps += 1
            if self._mended(self.patterns.prices()).value <= TINY:
                refused.clear()
                furthest = max(furthest, list(self.settled), key=len)
                continue
            back += 1
            refused.update(chosen)
            del self.settled[before:]
            for way in chosen:
                self.patterns.hold(way, self.settled.count(way))
            self.patterns.prices()
        return self.settled

    def _rest(self) -> list[tuple[float, Pattern]]:
        """The ways that are cut more often than is settled, and how much more often."""
        settled = Counter(self.settled)
        return [
            (amount - settled[way], way)
            for way, amount in self.patterns.amounts()
            if amount - settled[way] > TINY
        ]

    def _settle(
        self, rest: list[tuple[float, Pattern]], place: int, *, together: bool
    ) -> list[Pattern]:
        """Settle all whole sticks together, else the way at that place by its nearness to one."""
        whole = [(int(amount + TINY), way) for amount, way in rest if amount >= 1 - TINY]
        if not whole or not together:
            rest.sort(key=lambda pair: -pair[0] - sum(pair[1].counts) * MANY)
            whole = [(1, rest[min(place, len(rest) - 1)][1])]
        for count, way in whole:
            self.settled += [way] * count
            self.patterns.hold(way, self.settled.count(way))
        return [way for _, way in whole]

    def _left(self, settled: Sequence[Pattern]) -> Sawing:
        """The list that is left once those sticks are cut."""
        left = [one.count for one in self.sawing.wanted]
        for way in settled:
            for place, count in enumerate(way.counts):
                left[place] -= count
        wanted = tuple(
            replace(one, count=max(count, 0))
            for one, count in zip(self.sawing.wanted, left, strict=True)
        )
        return replace(self.sawing, wanted=wanted)

    def _mended(self, prices: Prices) -> Prices:
        """Add ways to cut what is not settled yet until all pieces have a place, if they can."""
        left = self._left(self.settled)
        for _ in range(ROUNDS):
            if prices.value <= TINY or prices.value == INFINITE:
                break
            worths = [
                one if wanted.count else 0.0
                for one, wanted in zip(prices.worths, left.wanted, strict=True)
            ]
            measured = worth(left, worths)
            if not self.patterns.add(measured.better(left, prices)):
                break
            prices = self.patterns.prices()
        return prices

    def _freed(self, settled: list[Pattern]) -> list[Pattern]:
        """All but the last of those sticks, and the rest of the pieces cut anew, if they can be."""
        for last in FREED:
            kept = settled[: max(len(settled) - last, 0)]
            rest = self._anew(kept)
            if rest or not kept:
                return [*kept, *rest]
        return []

    def _anew(self, kept: list[Pattern]) -> tuple[Pattern, ...]:
        """The pieces that those sticks do not give cut from the rest of the sticks, if they can."""
        used = Counter(way.stock for way in kept)
        left = self._left(kept)
        numbers = [
            stock.sticks * number - used[at]
            for at, (stock, number) in enumerate(zip(left.stocks, self.numbers, strict=True))
        ]
        # the halves of a ripped board are sticks of their own here
        stocks = tuple(replace(one, sticks=1, available=None, pool="") for one in left.stocks)
        left = replace(left, stocks=stocks)
        patterns = Patterns(left)
        patterns.add(way for way, amount in self.patterns.amounts() if amount > TINY)
        if missing(left, patterns, numbers) is not None:
            return ()
        around = margin(left, patterns, numbers)
        ways = None if around is None else around.ways(left, LISTED)
        if not ways:
            return ()
        verdict = told(left, ways, WORK, numbers)
        return verdict.sticks if verdict.gives else ()
