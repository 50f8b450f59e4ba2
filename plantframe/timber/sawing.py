"""The cutting problem in whole numbers: lengths wanted, lengths in stock, cuts, what is left.

Every length is a whole number of the smallest step a tape shows (1 mm or 1/16 in), so that pieces,
saw cuts and leftovers add up to the board exactly.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable


@frozen
class Wanted:
    """So many pieces of one length. `length` in steps of the tape."""

    length: int
    count: int


@frozen
class Stock:
    """Boards of one length.

    length     in steps of the tape
    cost       of one board, a whole number of cents (or of whatever is to be kept small)
    available  how many there are, None where as many as wanted can be bought
    sticks     how many sticks of that length one board gives: 2 where it is ripped
    pool       boards that may be used in several ways (whole, ripped) share their number
    fits       which of the wanted lengths may be cut from it, by their place; None: all
    """

    length: int
    cost: int
    available: int | None = None
    sticks: int = 1
    pool: str = ""
    fits: frozenset[int] | None = None

    def takes(self, place: int) -> bool:
        """Whether the wanted length at that place may be cut from it, as far as its kind goes."""
        return self.fits is None or place in self.fits


@frozen
class Sawing:
    """What is wanted, from what, with what saw. `kerf` is what one cut takes away, in steps."""

    wanted: tuple[Wanted, ...]
    stocks: tuple[Stock, ...]
    kerf: int

    def room(self, stock: Stock) -> int:
        """The length to be filled by pieces that each bring a cut: the last needs none."""
        return stock.length + self.kerf

    def used(self, counts: Iterable[int]) -> int:
        """What a pattern takes of `room`."""
        pairs = zip(counts, self.wanted, strict=True)
        return sum(count * (one.length + self.kerf) for count, one in pairs)

    def left(self, stock: Stock, counts: Iterable[int]) -> int:
        """What is left of a stick once the pieces and their cuts are off it.

        A rest thinner than a cut goes to dust with it: nothing is left then.
        """
        counts = tuple(counts)
        if not any(counts):
            return stock.length
        return max(stock.length - self.used(counts), 0)

    def fits(self, stock: Stock, counts: Iterable[int]) -> bool:
        """Whether a stick of this stock can give these pieces."""
        counts = tuple(counts)
        kinds = all(stock.takes(place) for place, count in enumerate(counts) if count)
        return kinds and self.used(counts) <= self.room(stock)


@frozen
class Pattern:
    """How one stick is cut: the stock's place, and how many pieces of each wanted length."""

    stock: int
    counts: tuple[int, ...]


@frozen
class Plan:
    """Sticks cut, each with its pattern, and boards taken, by the stock's place.

    A ripped board gives two sticks; the second may stay whole, as a pattern of no pieces.
    """

    sticks: tuple[Pattern, ...]
    boards: tuple[int, ...]

    def cost(self, sawing: Sawing) -> int:
        """What the boards cost."""
        return sum(
            count * stock.cost for count, stock in zip(self.boards, sawing.stocks, strict=True)
        )

    @property
    def board_count(self) -> int:
        """How many boards are sawn."""
        return sum(self.boards)


@frozen
class Solved:
    """The best cutting found.

    cost     what its boards cost
    bound    what no cutting can cost less than, from a sum of its own
    fewest   no cutting of that cost saws fewer boards, as far as that is proven too
    """

    plan: Plan
    cost: int
    bound: int
    fewest: bool

    @property
    def proven(self) -> bool:
        """Nothing cheaper exists."""
        return self.bound >= self.cost


def whole_plan(sawing: Sawing, sticks: Iterable[Pattern]) -> Plan:
    """The plan of these sticks: boards counted, and ripped halves that stay whole added."""
    by_stock: dict[int, list[Pattern]] = {}
    for stick in sticks:
        by_stock.setdefault(stick.stock, []).append(stick)
    nothing = (0,) * len(sawing.wanted)
    boards = [0] * len(sawing.stocks)
    out: list[Pattern] = []
    for place, stock in enumerate(sawing.stocks):
        cut = sorted(by_stock.get(place, ()), key=lambda one: one.counts, reverse=True)
        cut = [one for one in cut if any(one.counts)]
        boards[place] = -(-len(cut) // stock.sticks)
        spare = boards[place] * stock.sticks - len(cut)
        out += [*cut, *([Pattern(place, nothing)] * spare)]
    return Plan(tuple(out), tuple(boards))


def faults(sawing: Sawing, plan: Plan) -> list[str]:
    """What is wrong with a plan, counted afresh: nothing, or sentences for whoever works on it."""
    made = [
        sum(stick.counts[place] for stick in plan.sticks) for place in range(len(sawing.wanted))
    ]
    found = [
        f"{number} pieces of {one.length}, {one.count} wanted"
        for number, one in zip(made, sawing.wanted, strict=True)
        if number != one.count
    ]
    found += [
        f"{stick.counts} do not fit in stock {stick.stock}"
        for stick in plan.sticks
        if not sawing.fits(sawing.stocks[stick.stock], stick.counts)
    ]
    pools: dict[str, int] = {}
    for place, stock in enumerate(sawing.stocks):
        sticks = sum(1 for stick in plan.sticks if stick.stock == place)
        if sticks != plan.boards[place] * stock.sticks:
            found.append(f"{sticks} sticks from {plan.boards[place]} boards of stock {place}")
        if stock.available is not None:
            key = stock.pool or f"stock {place}"
            pools[key] = pools.get(key, 0) + plan.boards[place]
            if pools[key] > stock.available:
                found.append(f"{pools[key]} boards of {key}, {stock.available} there")
    return found
