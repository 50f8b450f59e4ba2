"""The six questions asked of one pair, in their order."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.pairing.carrying import carrying
from plantframe.pairing.holding import holding
from plantframe.pairing.light import lighting
from plantframe.pairing.matches import OUT, VERDICTS, Reason
from plantframe.pairing.outlasting import outlasting
from plantframe.pairing.reaching import reaching
from plantframe.pairing.upkeep import upkeeping

if TYPE_CHECKING:
    from plantframe.pairing.pair import Pair

ASKED = (holding, carrying, reaching, outlasting, lighting, upkeeping)

Place = tuple[bool, bool, tuple[int, ...], bool, bool, float, str, str]


def reasons(pair: Pair) -> tuple[Reason, ...]:
    """All six answers."""
    return tuple(ask(pair) for ask in ASKED)


def ruled_out(answers: tuple[Reason, ...]) -> Reason | None:
    """The first answer that knocks the pair out, or None."""
    return next((one for one in answers if one.verdict == OUT), None)


def place(
    pair: Pair, answers: tuple[Reason, ...], *, taken: bool = False, tired: bool = False
) -> Place:
    """Where a pairing ranks.

    A bed that had its family too lately comes last.

    What the trade grows on such a frame comes before what it does not: a hop pole would hold a
    clematis too. Then by the six answers in order. Among equals the free frame comes before the
    taken, one that the plan has before one to be built, then the nearest height, then the name.
    Nothing is added up.
    """
    classes = tuple(VERDICTS.index(one.verdict) for one in answers)
    support = pair.support
    name = support.name or support.kind
    new, unusual = not support.in_plan, pair.suited is None
    return tired, unusual, classes, taken, new, _misfit_m(pair), name, pair.climber.name


def _misfit_m(pair: Pair) -> float:
    """How far the support's height is from the plant's."""
    height, grows = pair.support.height_m, pair.climber.height_m
    if height is None or grows is None:
        return 0.0
    return round(abs(height - sum(grows) / 2), 2)
