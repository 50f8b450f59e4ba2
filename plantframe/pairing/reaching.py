"""Is it tall and long enough, and can the picker reach."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.pairing.climber import GOURDS
from plantframe.pairing.matches import FAIR, GOOD, OUT
from plantframe.pairing.pair import Pair, fair, good, out
from plantframe.pairing.wording import capital, uncapital
from plantframe.season.plantings import as_range

if TYPE_CHECKING:
    from plantframe.pairing.matches import Reason
    from plantframe.plan.things import Garden

# A soft climber whose least height is this much more than the frame folds over its top.
OVER_THE_TOP = 1.4
# Led along, round or down again a plant may be longer by these before it swamps what holds it.
ROOMY, SWAMPED = 1.4, 2.0
# What stands by itself is held no lower than this share of its height.
HALF_WAY = 0.4
LET_DOWN = "hop pole"  # its lines come down with the crop
# Twiggy brush ends this far below the plant it holds, so that it is not seen: T. DiSabato-Aust.
BRUSH_BELOW_M = 0.15
# Less than this share of a frame filled, and most of it stands bare.
BARE = 0.6
# A source that prints this much more than the first is told beside it.
MUCH_MORE = 1.25
# Common practice, no source: what a grown person reaches, and how far above it is still picked.
USUAL_REACH_M = 2.0
STRETCH_M, LADDER_M = 0.15, 0.30


def reaching(pair: Pair) -> Reason:
    """Height and length against the plant, and its top against the picker's reach."""
    found = [_tall_enough(pair), _long_enough(pair), _in_reach(pair)]
    reasons = [one for one in found if one is not None]
    worst = min(reasons, key=lambda one: (OUT, FAIR, GOOD).index(one.verdict))
    if worst.verdict != GOOD:
        return worst
    return good("reach", " ".join(one.says for one in reasons))


def reach_of(garden: Garden) -> tuple[str, float]:
    """Who reaches highest by the plan, and how high in m; "" and the usual where it is silent."""
    known = [one for one in garden.people if one.reach_m is not None]
    if not known:
        return "", USUAL_REACH_M
    tallest = max(known, key=lambda one: one.reach_m or 0.0)
    return tallest.name, tallest.reach_m or USUAL_REACH_M


def _tall_enough(pair: Pair) -> Reason:
    """Room to climb, against what the plant grows to."""
    climber, support = pair.climber, pair.support
    height, way, grows = support.height_m, support.way_up_m, climber.height_m
    if height is None or way is None or grows is None:
        return good("reach", capital(_grows(pair)))
    if climber.habit == "low":
        return out(
            "reach",
            f"{support.is_} of no use to {climber.said}, which creeps along the ground and does "
            "not climb.",
        )
    is_high = f"{support.is_} {pair.shown.length(height)} high"
    if climber.propped:
        return _propped(pair, is_high, height / grows[1])
    if grows[1] < BARE * height and not support.overhead:
        return fair(
            "reach", f"{is_high}; {climber.said} grows {_tall(pair)}, so its upper part stays bare."
        )
    if climber.led_sideways:
        return _room(pair, is_high, way)
    over = climber.least_height_m / way
    if over > OVER_THE_TOP and not climber.stopped:
        says = (
            f"{is_high}; {climber.said} runs to {pair.shown.length(climber.least_height_m)} at the "
            "least, folds over the top and shades itself."
        )
        return _along(pair, is_high) or out("reach", says)
    return good("reach", f"{is_high}; {_grows(pair)}")


def _along(pair: Pair, is_high: str) -> Reason | None:
    """A flower may hang over and run along, where there is row enough for it."""
    climber, support = pair.climber, pair.support
    room = (support.way_up_m or 0.0) + (support.row_m or 0.0)
    if climber.entry.grown_for == "food" or climber.least_height_m > room:
        return None
    return fair(
        "reach",
        f"{is_high}; {climber.said} grows {_tall(pair)}, comes over the top and runs along it.",
    )


def _propped(pair: Pair, is_high: str, share: float) -> Reason:
    """What stands by itself is held half to two thirds of the way up, or by a cane to the top."""
    says = f"{is_high}; {_grows(pair)}"
    if "brush" in pair.support.kind:
        below = pair.shown.length(BRUSH_BELOW_M)
        return good("reach", f"{says} Cut the brush to end {below} below the grown plant.")
    if share < HALF_WAY:
        return fair(
            "reach", f"{says} Half to two thirds of that is the usual height to hold it at."
        )
    return good("reach", says)


def _room(pair: Pair, is_high: str, way: float) -> Reason:
    """For what is led along as well as up: height and length together."""
    climber, support = pair.climber, pair.support
    # one season's stem goes up and comes down again, its neighbours stand beside it
    counted = climber.lasting and way == support.height_m  # a way over is the row already
    along = (support.row_m or 0.0) if counted else 0.0
    room, least = way + along, climber.least_height_m
    if least <= ROOMY * room or (climber.stopped and not climber.lasting):
        led = "is led along it" if climber.lasting else "is stopped or turned down at the top"
        says = f"{is_high}; {climber.said} grows {_tall(pair)}"
        return good("reach", f"{says} and {led}." if least > way else f"{says}.")
    verb = "give" if support.plural else "gives"
    in_all = f" and {verb} {pair.shown.length(room)} in all" if along else ""
    says = f"{is_high}{in_all}; {climber.said} runs to {pair.shown.length(least)} at the least"
    creeps = climber.entry.family == GOURDS and not climber.lasting
    if least <= SWAMPED * room or creeps:
        often = "cut it back hard, every year" if climber.lasting else "pinch it again and again"
        return fair("reach", f"{says}: {often}.")
    return out("reach", f"{says}, and swamps it.")


def _long_enough(pair: Pair) -> Reason | None:
    """Room along the row: for the plants that are wanted, or for how many."""
    climber, support = pair.climber, pair.support
    wanted, row = climber.row_m, support.row_m
    if row is None or not support.in_plan:
        return None
    usual = as_range(climber.entry.plants_per_metre)
    if climber.lasting or usual is None:
        apart = climber.apart_m
        spaced = pair.shown.lengths(*apart) if apart else ""
        return good("reach", f"Its plants stand {spaced} apart.") if spaced else None
    fit = max(1, round(usual.middle * row))
    if wanted is None or wanted <= row * 1.1:
        return good("reach", f"Its {pair.shown.length(row)} of row take about {fit} plants.")
    return fair(
        "reach",
        f"{support.gives} {pair.shown.length(row)} of row; {climber.count} {climber.said} plants "
        f"want about {pair.shown.length(wanted)}. About {fit} fit.",
    )


def _in_reach(pair: Pair) -> Reason | None:
    """The top of a crop that is picked, against the picker."""
    climber, support = pair.climber, pair.support
    height, grows = support.height_m, climber.height_m
    if height is None or grows is None or climber.picked not in {"by hand", "cut"}:
        return None
    if climber.habit in {"upright", "bush"} and climber.entry.grown_for != "food":
        return None  # a spike in a border is cut low down
    top = min(height, grows[1])
    if support.kind == LET_DOWN:
        return good("reach", "Its lines are let down for picking: nobody climbs.")
    name, reach = reach_of(support.garden)
    who = f"{name} reaches" if name else "most people reach"
    says = f"The top picks hang at {pair.shown.length(top)}; {who} {pair.shown.length(reach)}."
    if top <= reach + STRETCH_M:
        return good("reach", says)
    once = climber.picked == "cut" or climber.lasting  # a step now and then, not every other day
    if top <= reach + LADDER_M or once:
        return fair(
            "reach",
            f"{support.The}: {uncapital(says)[:-1]}, so they want a stretch or a step.",
        )
    return out("reach", f"{support.The}: {uncapital(says)[:-1]}, so it is steps at every picking.")


def _tall(pair: Pair) -> str:
    grows = pair.climber.height_m
    if grows is None:
        return ""
    shown, most = pair.shown, pair.climber.most_height_m
    tall = shown.lengths(*grows) if grows[0] else f"up to {shown.length(grows[1])}"
    return f"{tall} ({shown.length(most)} is printed too)" if most > MUCH_MORE * grows[1] else tall


def _grows(pair: Pair) -> str:
    tall = _tall(pair)
    return f"{pair.climber.said} grows {tall}." if tall else "nobody has said how high it grows."
