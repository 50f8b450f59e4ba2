"""Whether given boards give the pieces: all ways to cut that could take part, listed and searched.

Worths are found for which the boards hold hardly more than is needed. What they hold beyond it is
all that may be lost; a way to cut that loses more by itself takes no part. That leaves some hundred
ways of very many, and HiGHS tells whether whole numbers of them give the pieces.
Source: variable fixing by reduced cost, as the handbooks of integer programming describe it, over
the pattern program of Gilmore and Gomory 1961.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.timber.bounds import Worth, groups, worth
from plantframe.timber.filling import TooMany, fillings
from plantframe.timber.patterns import Patterns
from plantframe.timber.quiet import INFINITE
from plantframe.timber.sawing import Pattern

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from plantframe.timber.sawing import Sawing

ROUNDS: Final = 500  # of adding ways
TINY: Final = 1e-6
SHORT: Final = 1e-3  # pieces: what a bound must be above to say that one stays short
ONE: Final = 0.99  # pieces: whether one stays short at all is what is asked


@frozen
class Verdict:
    """What was found out.

    sticks  the pieces cut, or most of them; none where nothing was found
    gives   whether the boards give all pieces; None where that stays open
    """

    sticks: tuple[Pattern, ...]
    gives: bool | None


@frozen
class Margin:
    """By how much boards hold more than is needed, by some worths: `beyond`, in their steps.

    boards  the stocks that there are boards of
    """

    measured: Worth
    beyond: int
    boards: frozenset[int]

    def may(self, way: Pattern) -> bool:
        """Whether that way to cut may take part: it loses no more than all boards may."""
        if way.stock not in self.boards:
            return False
        pairs = zip(way.counts, self.measured.worths, strict=True)
        holds = sum(count * value for count, value in pairs if count)
        return self.measured.held[way.stock] - holds <= self.beyond

    def ways(self, sawing: Sawing, most: int) -> list[Pattern] | None:
        """Every way that may take part and leaves no room for a piece; None where too many do."""
        found: list[Pattern] = []
        for places, stocks in groups(sawing).items():
            there = [at for at in stocks if at in self.boards]
            if not there:
                continue
            least = [
                (sawing.room(sawing.stocks[at]), self.measured.held[at] - self.beyond)
                for at in there
            ]
            longest = max(sawing.stocks[at].length for at in there)
            try:
                found += [
                    Pattern(there[number], counts)
                    for number, counts in fillings(
                        sawing, self.measured.worths, places, longest, least, most - len(found)
                    )
                ]
            except TooMany:
                return None
        return found


def missing(sawing: Sawing, patterns: Patterns, numbers: Sequence[int]) -> Worth | None:
    """Worths of which these boards hold less than is needed, even if sticks are cut in fractions.

    None where there are none, or where it is too near to tell. `patterns` gains ways to cut.
    """
    patterns.limit()
    patterns.from_boards(numbers)
    for _ in range(ROUNDS):
        prices = patterns.prices()
        if prices.value <= TINY:
            return None
        measured = worth(sawing, prices.worths)
        if measured.holds(sawing, numbers) < measured.need:
            return measured
        if not patterns.add(measured.better(sawing, prices)):
            return None
    return None


def margin(sawing: Sawing, patterns: Patterns, numbers: Sequence[int]) -> Margin | None:
    """Worths by which these boards hold little more than is needed; None: none were found.

    They come of asking for the least length of stick, among these boards, that gives the pieces:
    whatever is left over is then left of one stock, and worth nearly nothing is lost elsewhere.
    `patterns` gains ways to cut.
    """
    patterns.limit()
    patterns.keep_small([sawing.room(stock) * stock.sticks for stock in sawing.stocks], numbers)
    for _ in range(ROUNDS):
        prices = patterns.prices()
        if prices.value == INFINITE:
            return None
        measured = worth(sawing, prices.worths)
        if not patterns.add(measured.better(sawing, prices)):
            beyond = measured.holds(sawing, numbers) - measured.need
            boards = frozenset(at for at, number in enumerate(numbers) if number)
            return Margin(measured, beyond, boards)
    return None


def told(
    sawing: Sawing,
    ways: Iterable[Pattern],
    work: int,
    numbers: Sequence[int] | None,
    cost: float = INFINITE,
    count: float = INFINITE,
) -> Verdict:
    """Whether these ways to cut give the pieces, from so many boards of each stock.

    work     branches times ways that may be searched
    numbers  None: from any boards of no more cost and number
    """
    few = Patterns(sawing)
    few.add(ways)
    if numbers is None:
        few.from_any()
        few.limit(cost, count)
    else:
        few.from_boards(numbers)
    found = few.whole(work // (len(few.ways) + 1), ONE, SHORT)
    if found.bound > SHORT:
        return Verdict(found.sticks, gives=False)
    return Verdict(found.sticks, gives=True if found.value <= TINY else None)
