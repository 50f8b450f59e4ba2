"""Limits: figures of a plan that a kind cannot be built with, by its entry's own sums."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.catalogue.expressions import evaluate
from plantframe.catalogue.facts import SAID, settle
from plantframe.catalogue.mistakes import ExpressionError
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Mapping

    from plantframe.catalogue.entries import Limit, Structure
    from plantframe.catalogue.facts import Settled

HAIR = 1e-3  # m or pieces: figures that differ by less are one figure


@frozen
class Broken:
    """A limit that is not kept: the figure, and the bound it goes beyond (None where it is odd).

    said      whether the plan gives the figure itself
    instead   what the other figure would have to be, or None
    """

    limit: Limit
    value: float
    least: float | None
    most: float | None
    said: bool
    instead: float | None


def broken(
    structure: Structure, said: Mapping[str, object], measure: str = ""
) -> tuple[Broken, ...]:
    """The limits of a structure that what is said of it does not keep to.

    It is asked also where the whole cannot be worked out: that is what limits are for.
    """
    if not structure.limits:
        return ()
    settled = settle(structure, said, leave_out=True, measure=measure)
    found = (_one(limit, settled) for limit in structure.limits)
    return tuple(one for one in found if one is not None)


def _one(limit: Limit, settled: Settled) -> Broken | None:
    value = _figure(limit.fact, settled)
    if value is None or (limit.when and not _figure(limit.when, settled)):
        return None
    least = _figure(limit.least, settled) if limit.least else None
    most = _figure(limit.most, settled) if limit.most else None
    low = least is not None and value < least - HAIR
    high = most is not None and value > most + HAIR
    odd = limit.even and value % 2 != 0
    if not (low or high or odd):
        return None
    return Broken(
        limit,
        value,
        least if low else None,
        most if high and not low else None,
        settled.origins.get(limit.fact) == SAID,
        _figure(limit.instead_to, settled) if limit.instead_to else None,
    )


def _figure(text: str, settled: Settled) -> float | None:
    """A sum over what could be settled, or None where something it asks for could not."""
    try:
        value = evaluate(text, settled.values)
    except ExpressionError:
        return None
    return None if isinstance(value, str) else float(value)
