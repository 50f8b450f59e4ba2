"""Cutting as one would at the bench without thinking: the longest piece first, where it fits."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.timber.sawing import Pattern, Plan, Sawing, whole_plan

if TYPE_CHECKING:
    from collections.abc import Iterator


def longest_first(sawing: Sawing) -> Plan | None:
    """A cutting made piece by piece, the longest first.

    The longest piece still wanted goes on the first stick begun that has room, else on a new
    board: one that costs nothing, the shortest that will do, else one that is bought.
    Whoever buys takes the cheapest board the piece fits in, or the cheapest for its length: both
    are tried, and the cheaper cutting is given. None where a piece fits in nothing that is left.

    Source: first-fit decreasing, the textbook rule for packing.
    """
    plans = [_sawn(sawing, by_length=by_length) for by_length in (False, True)]
    found = [plan for plan in plans if plan is not None]
    return min(found, key=lambda plan: (plan.cost(sawing), plan.board_count), default=None)


def _sawn(sawing: Sawing, *, by_length: bool) -> Plan | None:
    left = [stock.available for stock in sawing.stocks]
    pools = {stock.pool: stock.available for stock in sawing.stocks if stock.pool}
    opened: list[tuple[int, list[int], int]] = []
    for place, length in _pieces(sawing):
        need = length + sawing.kerf
        for at, (begun, counts, room) in enumerate(opened):
            if room >= need and sawing.stocks[begun].takes(place):
                counts[place] += 1
                opened[at] = (begun, counts, room - need)
                break
        else:
            new = _open(sawing, place, left, pools, by_length=by_length)
            if new is None:
                return None
            stock = sawing.stocks[new]
            for number in range(stock.sticks):
                counts = [0] * len(sawing.wanted)
                room = sawing.room(stock)
                if number == 0:
                    counts[place] = 1
                    room -= need
                opened.append((new, counts, room))
    return whole_plan(sawing, [Pattern(stock, tuple(counts)) for stock, counts, _ in opened])


def _pieces(sawing: Sawing) -> Iterator[tuple[int, int]]:
    order = sorted(enumerate(sawing.wanted), key=lambda pair: (-pair[1].length, pair[0]))
    for place, one in order:
        for _ in range(one.count):
            yield place, one.length


def _open(
    sawing: Sawing,
    place: int,
    left: list[int | None],
    pools: dict[str, int | None],
    *,
    by_length: bool,
) -> int | None:
    """The stock to open for a piece, taken off what is left of it."""

    def there(at: int, stock_pool: str) -> bool:
        number = pools.get(stock_pool) if stock_pool else left[at]
        return number is None or number > 0

    able = [
        (at, stock)
        for at, stock in enumerate(sawing.stocks)
        if stock.takes(place)
        and stock.length >= sawing.wanted[place].length
        and there(at, stock.pool)
    ]
    if not able:
        return None
    free = [pair for pair in able if pair[1].cost == 0]
    if free:
        at, stock = min(free, key=lambda pair: (pair[1].length, pair[0]))
    else:
        at, stock = min(
            able,
            key=lambda pair: (
                pair[1].cost / pair[1].sticks / (pair[1].length if by_length else 1),
                pair[1].length,
            ),
        )
    number = left[at]
    if number is not None:
        left[at] = number - 1
    shared = pools.get(stock.pool)
    if shared is not None:
        pools[stock.pool] = shared - 1
    return at
