"""Does it hold on: how a plant climbs, against what the support gives it to climb."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.frozen import replace
from plantframe.pairing.climbing import grasping, twining
from plantframe.pairing.clinging import clinging
from plantframe.pairing.matches import OUT
from plantframe.pairing.pair import Pair, fair, out
from plantframe.pairing.tying import propped, tied
from plantframe.pairing.wording import capital

if TYPE_CHECKING:
    from collections.abc import Callable

    from plantframe.pairing.matches import Reason

WAYS: dict[str, Callable[[Pair], Reason]] = {
    "twines": twining,
    "tendrils": grasping,
    "leaf stalks": grasping,
    "clings": clinging,
    "tied in": tied,
}
SAID = {
    "twines": "twines",
    "tendrils": "holds by tendrils",
    "leaf stalks": "holds by its leaf stalks",
    "clings": "clings by itself",
    "tied in": "has to be tied",
    "stands alone": "stands alone",
}


def holding(pair: Pair) -> Reason:
    """Whether it holds on, and to what."""
    climber, support = pair.climber, pair.support
    way = climber.holds_on
    if support.bare_wall and climber.holds_otherwise == "clings":
        way = "clings"
    if support.bare_wall and way != "clings":
        return out(
            "hold",
            f"{support.gives} nothing to grip: {climber.said} {SAID.get(way, 'stands alone')} and "
            "cannot take a flat face.",
        )
    if climber.habit == "low":
        return fair("hold", f"{capital(climber.said)} creeps, and climbs only where it is led up.")
    if climber.propped or way not in WAYS:
        return propped(pair)
    reason = WAYS[way](pair)
    if reason.verdict == OUT and climber.by_hand:
        reason = fair("hold", f"{reason.says} The plan has it tied by hand, and so it holds.")
    other = climber.holds_otherwise if climber.holds_otherwise != way else climber.holds_on
    if other in WAYS and other != way:
        differ = f"{reason.says} Sources differ: some say it {SAID[other]}."
        reason = replace(reason, says=differ)
    return reason
