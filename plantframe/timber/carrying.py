"""What is carried home: the longest piece and the weight of the wood."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.frozen import frozen
from plantframe.timber.counters import SHEET
from plantframe.timber.woods import density_kg_per_m3

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.timber.counters import Line
    from plantframe.timber.cutting import Cutting


@frozen
class Load:
    """The longest thing that is bought, and what the wood weighs, dry to wet.

    longest   its length in m, 0 where nothing has one
    what      what it is
    """

    longest_m: float
    what: str
    low_kg: float
    high_kg: float


def load_of(cutting: Cutting, lines: Iterable[Line]) -> Load:
    """What the boards weigh, and the longest thing of the list that does not roll up.

    Source: volume times density.
    """
    low = high = 0.0
    longest, what = 0.0, ""
    for lot in cutting.lots:
        for board in lot.bought:
            length = cutting.tape.metres(board.length)
            dry, wet = density_kg_per_m3(board.wood or lot.wood)
            low += board.section.area_m2 * length * dry
            high += board.section.area_m2 * length * wet
    for line in lines:
        rolled = line.counter in _ROLLS or (line.counter == SHEET and not _STIFF.search(line.what))
        if line.count and line.length_m and not rolled and line.length_m > longest:
            longest, what = line.length_m, line.what
    return Load(longest, what, low, high)


_STIFF = re.compile(r"\b(panels?|panes?|glass|twin-wall)\b")
_ROLLS = frozenset({"nets", "wire", "twine and cord", "seed and plants"})
