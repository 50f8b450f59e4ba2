"""Can it carry the plant at full size, wet, with something in hand?"""

from __future__ import annotations

from typing import TYPE_CHECKING

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
# 75 mm for the strong ones, 100 mm for those with a trunk, and a builder's 125 to 150 mm for
# wisteria).
STRONG_KG_PER_M, HUGE_KG_PER_M = 15.0, 30.0
STRONG_POST_M, HUGE_POST_M = 0.075, 0.100
# A fruit beyond this tears loose from its vine unripe, sling or no sling (common practice).
HANGING_FRUIT_KG = 4.0


def carrying(pair: Pair) -> Reason:
    """Wet weight at full size against what the support carries."""
    climber, support = pair.climber, pair.support
    fruit = climber.entry.fruit_weight
    heaviest = (fruit.high or fruit.usual) if fruit is not None and not fruit.is_word else 0.0
    if climber.habit == "low" and (heaviest > HANGING_FRUIT_KG or climber.entry.fruit_across):
        return out(
            "carry",
            f"{support.The} is no place for {climber.said}: its fruit is too heavy to hang and "
            "parts from the vine unripe. It stays on the ground.",
        )
    weight = climber.grown_kg_per_m
    if support.bare_wall:
        return good("carry", f"{support.The} takes its own: {climber.said} lies against it.")
    if weight is None:
        return good("carry", f"{support.The} only steadies {climber.said}, which stands by itself.")
    thin = _thin_posts(pair, weight)
    if thin is not None:
        return thin
    worked = support.worked
    if worked is None or worked.builders_work:
        return fair(
            "carry",
            f"{support.The} is a builder's to size: tell him {climber.said}, wet, comes to "
            f"{pair.shown.hanging(weight)}, and ask what beams and footings that wants.",
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
        return "about as much as it carries: tight"
    if ratio.middle <= TIMES:
        return "likely too much"
    return f"about {times(ratio.middle)} too much"


def _hanging(pair: Pair, load: Load) -> Reason:
    climber, support = pair.climber, pair.support
    part = load.part if load.part != "mesh" else _face(pair)
    span = f"{pair.shown.length(load.span_m)} " if load.span_m and load.stick else ""
    says = (
        f"{_of(support.the)} {span}{part} carries {pair.shown.hanging_bare(load.carried)} "
        f"{pair.shown.a_metre}; {climber.said}, wet, comes to "
        f"{pair.shown.hanging_bare(load.asked)}: {how_much(load.ratio)}."
    )
    says = says[0].upper() + says[1:]
    level = grade(load.ratio.middle)
    if level == "silent":
        return good("carry", says)
    if level == "note" or _as_listed(pair):
        return fair("carry", says)
    return out("carry", says)


def _as_listed(pair: Pair) -> bool:
    """The trade grows just this on such a bay, and the sticks are no thinner than usual."""
    suited, worked = pair.suited, pair.support.worked
    if suited is None or worked is None:
        return False
    bay = worked.figure("bays.length")
    if suited.bay is not None and suited.bay.high is not None:
        return bay is not None and bay <= suited.bay.high + 0.02
    return not worked.said.keys() & {"bar.width", "bays.length", "rails.width"}


def _drooping(pair: Pair, droop: Droop, weight: Range) -> Reason:
    climber, support = pair.climber, pair.support
    tight = "strained" if droop.strained else "hand-tight"
    says = (
        f"{_of(support.the)} {tight} wire drops about {pair.shown.length(droop.sag_m)} over "
        f"{pair.shown.length(droop.span_m)} under {climber.said}, {pair.shown.hanging(weight)} wet"
    )
    says = says[0].upper() + says[1:]
    if droop.share <= LOW:
        return good("carry", f"{says}; that is little.")
    if droop.share <= TOO_LOW:
        return fair("carry", f"{says}: it hangs low by late summer.")
    return out("carry", f"{says}: too far, and the plants go with it.")


def _standing(pair: Pair, weight: Range) -> Reason:
    """Nothing hangs: each post, pole or wire only holds up what stands on its own foot."""
    climber, support = pair.climber, pair.support
    says = f"{climber.said}, wet, comes to {pair.shown.hanging(weight)}"
    if climber.stiff or climber.habit != "climber":
        return good(
            "carry",
            f"{support.The} carries little: {says}, and stands on its own stems; it is only held "
            "upright.",
        )
    post = support.post_m
    thin = post is not None and post < 0.03
    if weight.middle >= STRONG_KG_PER_M and thin:
        return fair(
            "carry",
            f"{support.The} takes each plant on its own pole: {says}, a lot for poles "
            f"{pair.shown.bench(post or 0.0)} thick. Take the stoutest.",
        )
    return good("carry", f"{support.The} takes each plant on its own foot: {says}.")


def _thin_posts(pair: Pair, weight: Range) -> Reason | None:
    """A woody vine on sticks: it grows heavier than they are, or crushes them."""
    climber, support = pair.climber, pair.support
    trunk = climber.stem == "trunk" or climber.entry.strangles
    held = support.structure.stands.held if support.structure else ""
    by = support.worked.worked.carries if support.worked and support.worked.worked else None
    if not climber.lasting or held == "wall" or (support.worked and support.worked.builders_work):
        return None
    if by is not None and by.by == "mesh":
        return None  # the face's own bearing is compared
    huge = trunk or weight.middle >= HUGE_KG_PER_M
    wanted = HUGE_POST_M if huge else STRONG_POST_M
    post = support.post_m
    if weight.middle < STRONG_KG_PER_M or (post is not None and post >= wanted - 1e-3):
        return None
    has = f"posts of {pair.shown.bench(post)}" if post is not None else "no posts in the ground"
    grows = "makes a trunk and " if trunk else ""
    return out(
        "carry",
        f"{support.The} has {has}; {climber.said} {grows}comes to {pair.shown.hanging(weight)} in "
        f"its years and asks for {pair.shown.bench(wanted)} and more.",
    )


def _windy(pair: Pair, reason: Reason) -> Reason:
    """In full leaf it is a sail: said where the wind is too much for the posts of this place."""
    worked = pair.support.worked
    if worked is None or reason.verdict == "knocked out":
        return reason
    push = worked.push_in(worked.place)
    if push is None or grade(push.ratio.middle) != "warn":
        return reason
    weak = "its posts" if push.weak == "wood" else "the ground round their feet"
    stay = "Stays square to the row answer it." if not push.stayed else "Make it lower or shorter."
    place = f"in {_article(worked.place)} place"
    return fair(
        "carry",
        f"{reason.says} In full leaf {place} the wind is about {two_figures(push.ratio.middle)} "
        f"times what {weak} hold. {stay}",
    )


def _article(word: str) -> str:
    return f"{'an' if word[0] in 'aeiou' else 'a'} {word}"


def _face(pair: Pair) -> str:
    """What a frame's face is called."""
    names = [pair.support.matter(held) for held in pair.support.holds[:1]]
    return {"net": "net", "mesh": "panel", "strip": "lattice"}.get(
        names[0] if names else "", "face"
    )


def _of(the: str) -> str:
    return f"{the}'s" if not the.endswith("s") else f"{the}'"
