"""Filling one stick with the pieces that are worth most: the inner sum of column generation.

Source: the bounded knapsack by dynamic programming (Gilmore and Gomory 1961 price patterns so;
Martello and Toth, Knapsack Problems, 1990, for the splitting of counts).
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from plantframe.timber.sawing import Sawing


@frozen
class Part:
    """So many pieces of one wanted length, taken or left together."""

    place: int
    count: int
    room: int


class Filling:
    """The best worth for every room up to the longest stick, for the lengths in `places`.

    worths   what one piece of each wanted length is worth, by its place; whole numbers stay whole
    """

    def __init__(
        self, sawing: Sawing, worths: Sequence[float], places: Sequence[int], longest: int
    ) -> None:
        import numpy as np

        self.sawing = sawing
        self.worths = worths
        room = longest + sawing.kerf
        whole = all(isinstance(worth, int) for worth in worths)
        best = np.zeros(room + 1, dtype=np.int64 if whole else np.float64)
        self.parts: list[Part] = []
        self.taken: list[Any] = []
        for place in places:
            if worths[place] <= 0:
                continue
            one = sawing.wanted[place].length + sawing.kerf
            for count in _split(min(sawing.wanted[place].count, room // one)):
                part = Part(place, count, count * one)
                with_it = best[: room + 1 - part.room] + count * worths[place]
                without = best[part.room :]
                self.parts.append(part)
                self.taken.append(with_it > without)
                np.maximum(without, with_it, out=without)
        self.best = best

    def worth(self, room: int) -> float:
        """The most that fits in that room."""
        return self.best[room].item()  # type: ignore[no-any-return]

    def counts(self, room: int) -> tuple[int, ...]:
        """The pieces that make it."""
        out = [0] * len(self.sawing.wanted)
        for part, take in zip(reversed(self.parts), reversed(self.taken), strict=True):
            if room >= part.room and take[room - part.room]:
                out[part.place] += part.count
                room -= part.room
        return tuple(out)


def _split(count: int) -> Iterator[int]:
    """Numbers whose sums give every count up to this one: 1, 2, 4 … and the rest."""
    step = 1
    while count > 0:
        yield min(step, count)
        count -= step
        step *= 2


class TooMany(Exception):  # noqa: N818 - no fault, only more than is worth listing
    """More fillings than asked for."""


def fillings(
    sawing: Sawing,
    worths: Sequence[float],
    places: Sequence[int],
    longest: int,
    least: Sequence[tuple[int, float]],
    most: int,
) -> Iterator[tuple[int, tuple[int, ...]]]:
    """Every filling worth at least so much that no further piece fits in.

    least    (room, least worth) of each stock
    most     raises TooMany once there are more
    Yields the place in `least` and the counts.
    """
    order = sorted(places, key=lambda place: -sawing.wanted[place].length)
    sizes = [sawing.wanted[place].length + sawing.kerf for place in order]
    rest = _rests(sawing, worths, order, longest + sawing.kerf)
    found = 0
    steps = 0
    for number, (space, enough) in enumerate(least):
        counts = [0] * len(sawing.wanted)
        stack = [(0, space, 0.0, -1)]
        # depth first over the lengths, longest first; -1 opens a length, else its count is set
        while stack:
            at, free, worth, chosen = stack.pop()
            steps += 1
            if steps > 40 * most:
                raise TooMany
            if chosen >= 0:
                counts[order[at]] = chosen
                free -= chosen * sizes[at]
                worth += chosen * worths[order[at]]
                at += 1
            if at == len(order):
                if worth >= enough and _full(sawing, counts, order, sizes, free):
                    found += 1
                    if found > most:
                        raise TooMany
                    yield number, tuple(counts)
                continue
            place, size = order[at], sizes[at]
            for count in range(min(sawing.wanted[place].count, free // size) + 1):
                gained = worth + count * worths[place] + rest[at + 1][free - count * size]
                if gained >= enough:
                    stack.append((at, free, worth, count))


def _rests(sawing: Sawing, worths: Sequence[float], order: Sequence[int], room: int) -> list[Any]:
    """The most that pieces from the i-th on are worth in room c: at [i][c]."""
    import numpy as np

    rest = [np.zeros(room + 1)]
    for place in reversed(order):
        best = rest[-1]
        one = sawing.wanted[place].length + sawing.kerf
        for count in _split(min(sawing.wanted[place].count, room // one)):
            with_it = best[: room + 1 - count * one] + count * max(worths[place], 0)
            best = best.copy()
            best[count * one :] = np.maximum(best[count * one :], with_it)
        rest.append(best)
    rest.reverse()
    return rest


def _full(
    sawing: Sawing, counts: list[int], order: Sequence[int], sizes: Sequence[int], free: int
) -> bool:
    return all(
        counts[place] >= sawing.wanted[place].count or size > free
        for place, size in zip(order, sizes, strict=True)
    )
