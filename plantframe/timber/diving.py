"""From fractions to whole sticks: settle one way to cut at a time, and mend what it upsets.

Source: diving with column generation, as the handbooks of branch and price describe it; a choice
that leaves pieces without a place is taken back, a few times at most.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.frozen import replace
from plantframe.timber.bounds import worth
from plantframe.timber.quiet import INFINITE

if TYPE_CHECKING:
    from plantframe.timber.patterns import Patterns, Prices
    from plantframe.timber.sawing import Pattern, Sawing

TINY: Final = 1e-6
AMONG: Final = 4  # ways that stand nearest to a whole stick, among which turns choose
BACK: Final = 12  # choices that may be taken back
ROUNDS: Final = 40  # of new ways after one choice


def dive(sawing: Sawing, patterns: Patterns, turn: int) -> list[Pattern]:
    """The pieces cut from what the program allows; no sticks where that was not found.

    turn   0 settles the likeliest way first, others now and then one of the next likeliest
    """
    settled = _Dive(sawing, patterns).sticks(turn)
    patterns.release()
    return settled


class _Dive:
    """What is settled: way -> how many sticks of it at least."""

    def __init__(self, sawing: Sawing, patterns: Patterns) -> None:
        self.sawing = sawing
        self.patterns = patterns
        self.settled: dict[Pattern, int] = {}

    def sticks(self, turn: int) -> list[Pattern]:
        """Settle ways until every stick is whole; none where pieces stay short."""
        if self._mended(self.patterns.prices()).value > TINY:
            return []
        back = steps = 0
        refused: set[Pattern] = set()
        while rest := self._rest():
            open_ways = [(amount, way) for amount, way in rest if way not in refused]
            if not open_ways or back > BACK:
                return []
            before = dict(self.settled)
            place = (turn + steps) % min(turn + 1, AMONG) if turn else 0
            chosen = self._settle(open_ways, place, together=not refused)
            steps += 1
            if self._mended(self.patterns.prices()).value <= TINY:
                refused.clear()
                continue
            back += 1
            refused.update(chosen)
            self.settled = before
            for way in chosen:
                self.patterns.hold(way, before.get(way, 0))
            self.patterns.prices()
        return [way for way, count in self.settled.items() for _ in range(count)]

    def _rest(self) -> list[tuple[float, Pattern]]:
        """The ways that are cut more often than is settled, and how much more often."""
        return [
            (amount - self.settled.get(way, 0), way)
            for way, amount in self.patterns.amounts()
            if amount - self.settled.get(way, 0) > TINY
        ]

    def _settle(
        self, rest: list[tuple[float, Pattern]], place: int, *, together: bool
    ) -> list[Pattern]:
        """Settle all whole sticks together, else the way at that place by its nearness to one."""
        whole = [(int(amount + TINY), way) for amount, way in rest if amount >= 1 - TINY]
        if not whole or not together:
            rest.sort(key=lambda pair: -pair[0])
            whole = [(1, rest[min(place, len(rest) - 1)][1])]
        for count, way in whole:
            self.settled[way] = self.settled.get(way, 0) + count
            self.patterns.hold(way, self.settled[way])
        return [way for _, way in whole]

    def _mended(self, prices: Prices) -> Prices:
        """Add ways to cut what is not settled yet until all pieces have a place, if they can."""
        left = [one.count for one in self.sawing.wanted]
        for way, count in self.settled.items():
            for place, pieces in enumerate(way.counts):
                left[place] -= pieces * count
        wanted = tuple(
            replace(one, count=max(number, 0))
            for one, number in zip(self.sawing.wanted, left, strict=True)
        )
        smaller = replace(self.sawing, wanted=wanted)
        for _ in range(ROUNDS):
            if prices.value <= TINY or prices.value == INFINITE:
                break
            worths = [
                one if number > 0 else 0.0 for one, number in zip(prices.worths, left, strict=True)
            ]
            measured = worth(smaller, worths)
            if not self.patterns.add(measured.better(smaller, prices)):
                break
            prices = self.patterns.prices()
        return prices
