"""Can it carry the plant at full size, wet, with something in hand."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.pairing.matches import OUT
from plantframe.pairing.pair import Pair, fair, good, out
from plantframe.season.loads import LIKELY, TIGHT, TIMES, grade
from plantframe.season.units import times, two_figures

if TYPE_CHECKING:
    from plantframe.mechanics.ranges import Range
    from plantframe.pairing.matches import Reason
    from plantframe.season.loads import Droop, Load

# A wire hangs low by this share of its span: a note, a warning.
LOW, TOO_LOW = 0.04, 0.06
# What a grown woody vine weighs, kg a metre, and the post it asks for (common practice, no source:
# 75 mm for the strong ones, 100 mm for the heaviest and for those with a trunk; a builder gives
# wisteria 125 to 150).
STRONG_KG_PER_M, HUGE_KG_PER_M = 15.0, 25.0
STRONG_POST_M, HUGE_POST_M = 0.075, 0.100
POLE_M = 0.030  # thinner than this a pole is a cane
# Wire for a trunk: common practice; and what the German horticultural encyclopaedia Hortipendium
# asks for.
TRUNK_WIRE_M, TRUNK_ROPE_M = (0.003, 0.004), 0.008


def carrying(pair: Pair) -> Reason:
    """Wet weight at full size against what the support carries."""
    climber, support = pair.climber, pair.support
    if climber.habit == "low" and climber.picked != "dug":
        return out(
            "carry",
            f"{support.is_} no place for {climber.said}: its fruit is too heavy to hang and parts "
            "from the vine unripe. It stays on the ground.",
        )
    weight = climber.grown_kg_per_m
    if support.bare_wall:
        return good("carry", f"{support.does('bears', 'bear')} it: {climber.said} lies against it.")
    if weight is None:
        steadies = support.does("only steadies", "only steady")
        return good("carry", f"{steadies} {climber.said}, which stands on its own stem.")
    thin = _too_thin(pair)
    if thin is not None:
        return thin
    worked = support.worked
    if worked is None or worked.builders_work:
        return fair(
            "carry",
            f"{support.is_} for a builder to size: {climber.said}, wet, comes to "
            f"{pair.shown.hanging(weight)}. Ask what beams and footings that wants.",
        )
    load = worked.load_of(weight)
    if load is not None:
        return _windy(pair, _hanging(pair, load))
    droop = worked.droop_of(weight)
    if droop is not None and not climber.stiff and climber.habit == "climber":
        return _windy(pair, _drooping(pair, droop, weight))
    return _windy(pair, _standing(pair, weight))


def how_much(ratio: Range) -> str:
    """Asked over carried in words: "about twice too much"."""
    if ratio.middle <= TIGHT:
        return "with something in hand"
    if ratio.middle <= LIKELY:
        return "about as much as it carries, so tight"
    if ratio.middle <= TIMES:
        return "likely too much"
    return f"about {times(ratio.middle)} too much"


def _hanging(pair: Pair, load: Load) -> Reason:
    """What hangs on a bar, rails or a face, against what they carry."""
    climber, support = pair.climber, pair.support
    if load.stick is not None and load.span_m:
        carries = "carry" if load.part.endswith("s") else "carries"
        part = f"The {pair.shown.length(load.span_m)} {load.part} of {support.the} {carries}"
    else:
        part = support.does("carries", "carry")
    says = (
        f"{part} {pair.shown.hanging(load.carried)}; {climber.said}, wet, comes to "
        f"{pair.shown.hanging_bare(load.asked)}: {how_much(load.ratio)}."
    )
    # where an estimate and the trade's own habit disagree, the habit counts for one class
    grown = "The trade grows it on just such, and watches it."
    level = grade(load.ratio.middle)
    if level == "silent":
        return good("carry", says)
    listed = _as_listed(pair)
    if level == "note" and not listed:
        return fair("carry", says)
    if level == "note":
        return good("carry", f"{says} {grown}")
    return fair("carry", f"{says} {grown}") if listed else out("carry", says)


def _as_listed(pair: Pair) -> bool:
    """The trade grows just this on such a bay, and the sticks are no other than usual."""
    suited, worked = pair.suited, pair.support.worked
    if suited is None or worked is None:
        return False
    bay = worked.figure("bays.length")
    if suited.bay is not None and suited.bay.high is not None:
        return bay is not None and bay <= suited.bay.high + 0.02
    return not worked.said.keys() & {"bar.width", "bays.length", "rails.width"}


def _drooping(pair: Pair, droop: Droop, weight: Range) -> Reason:
    """How far a wire hangs under what climbs it."""
    climber, support, shown = pair.climber, pair.support, pair.shown
    tight = "strained" if droop.strained else "hand-tight"
    says = (
        f"The {tight} wire of {support.the} drops about {shown.length(droop.sag_m)} over "
        f"{shown.length(droop.span_m)} under {climber.said}, {shown.hanging(weight)} wet"
    )
    if droop.share <= LOW:
        return good("carry", f"{says}; that is little.")
    if droop.share <= TOO_LOW:
        return fair("carry", f"{says}: it hangs low by late summer.")
    return out("carry", f"{says}: too far, and the plants go with it.")


def _standing(pair: Pair, weight: Range) -> Reason:
    """Nothing hangs: each post, pole or wire only holds up what stands on its own foot."""
    climber, support, shown = pair.climber, pair.support, pair.shown
    says = f"{climber.said}, wet, comes to {shown.hanging(weight)}"
    if climber.stem == "trunk" and _by(pair) == "wire":
        return fair(
            "carry",
            f"{support.does('wants', 'want')} stouter wire: {says} and makes a trunk. "
            f"{shown.bench(TRUNK_WIRE_M[0])} to {shown.bench(TRUNK_WIRE_M[1])} is usual for it; "
            f"Hortipendium, a German handbook, asks for steel rope of {shown.bench(TRUNK_ROPE_M)}.",
        )
    little = support.does("carries", "carry")
    if climber.stiff or climber.habit != "climber":
        return good(
            "carry",
            f"{little} little: {says}, and stands on its own stems; it is only held upright.",
        )
    post = support.post_m
    takes = support.does("takes", "take")
    if post is not None and weight.middle >= STRONG_KG_PER_M and post < POLE_M:
        return fair(
            "carry",
            f"{takes} each plant on its own pole: {says}, a lot for poles "
            f"{shown.bench(post)} thick. Take the stoutest.",
        )
    return good("carry", f"{takes} each plant on its own foot: {says}.")


def _too_thin(pair: Pair) -> Reason | None:
    """A strong woody vine on sticks: it grows heavier than they are, or crushes them."""
    weight = pair.climber.wet_kg_per_m
    climber, support, shown = pair.climber, pair.support, pair.shown
    worked = support.worked
    if worked is None or weight is None or not climber.lasting or weight.middle < STRONG_KG_PER_M:
        return None
    held = support.structure.stands.held if support.structure else ""
    if held == "wall" or worked.builders_work or _by(pair) == "mesh" or pair.suited is not None:
        return None  # left to the wall, the builder, what the face bears, or the trade's own habit
    trunk = climber.stem == "trunk"
    huge = trunk or climber.entry.strangles or weight.middle >= HUGE_KG_PER_M
    wanted = HUGE_POST_M if huge else STRONG_POST_M
    post = support.post_m
    if post is not None and post >= wanted - 1e-3:
        return _just_stout_enough(pair, weight, post) if huge else None
    has = f"posts of {shown.bench(post)}" if post is not None else "no posts in the ground"
    grows = "makes a trunk, comes" if trunk else "comes"
    return out(
        "carry",
        f"{support.has} {has}; {climber.said} {grows} to {shown.hanging(weight)} in its years and "
        f"asks for posts of {shown.bench(wanted)} and more.",
    )


def _just_stout_enough(pair: Pair, weight: Range, post: float) -> Reason:
    """The heaviest vines on the stoutest posts of a gardener's own making."""
    shown = pair.shown
    return fair(
        "carry",
        f"{pair.support.has} posts of {shown.bench(post)}, just stout enough: {pair.climber.said} "
        f"comes to {shown.hanging(weight)} in its years. A builder's pergola is surer.",
    )


def _by(pair: Pair) -> str:
    """How the weight travels: bar, wire, mesh, none."""
    worked = pair.support.worked.worked if pair.support.worked else None
    return worked.carries.by if worked is not None and worked.carries is not None else ""


def _windy(pair: Pair, reason: Reason) -> Reason:
    """In full leaf it is a sail: said where the wind is too much for the posts of this place."""
    worked = pair.support.worked
    if worked is None or reason.verdict == OUT:
        return reason
    push = pair.support.push
    if push is None or grade(push.ratio.middle) != "warn":
        return reason
    weak = "its posts hold" if push.weak == "wood" else "the ground round their feet holds"
    stay = "Make it lower or shorter." if push.stayed else "Stays square to the row answer that."
    place = f"in {'an' if worked.place[0] in 'aeiou' else 'a'} {worked.place} place"
    return fair(
        "carry",
        f"{reason.says} In full leaf {place} the wind is about {two_figures(push.ratio.middle)} "
        f"times what {weak}. {stay}",
    )
