"""What to take beyond the count."""

from __future__ import annotations

import math
from functools import lru_cache

from plantframe.season.entries import material_of


@lru_cache(maxsize=16)
def share(of: str) -> float:
    """The share of spares for `nails and screws`, `poles and canes`, `twine and wire` or `seed`.

    Source: the catalogue's entry, common practice; seed an estimate.
    """
    entry = material_of("spares")
    figure = entry.figures.get(of) if entry else None
    return figure.usual if figure is not None else 0.1


def spares(count: int, of: str) -> int:
    """How many more: the share of them, whole ones, one at least."""
    return math.ceil(count * share(of) - 1e-9) if count > 0 else 0
