"""too-wide-to-reach: an arm does not reach over a cold frame or a raised bed."""

from __future__ import annotations

import re
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import is_yearly
from plantframe.advice.edits import rewrite, swap, together
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.lights import has_lights
from plantframe.frozen import frozen
from plantframe.language.slots import COMPASS
from plantframe.language.values import Size
from plantframe.season.beside import apart_deg, beside
from plantframe.season.entries import entry_of
from plantframe.season.units import INCH_M

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.language.mistakes import Where
    from plantframe.plan.things import Bed
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

# Common practice, no source: how far an arm works with ease, and at a stretch; from two sides the
# old six foot sash, reached 90 cm from each, is still no loss.
EASE_M, ONE_SIDE_M = 0.75, 0.95
EASE_TWO_M, TWO_SIDES_M = 1.40, 1.90
PLOT_M = 3.0  # wider ground has paths between its rows
WALK_M = 0.45  # room to stand and bend
HAIR_M = 0.015
SOLID = frozenset({"wall", "house", "hedge", "fence"})
FIXED = re.compile(r"\bhinged?\b", re.IGNORECASE)


@frozen
class Facts:
    """How wide it is, m, from how many sides it is reached, and what stands in the way.

    bed   it is a bed
    deep  it may not be stepped into: a raised bed, a frame
    """

    name: str
    wide_m: float
    sides: int
    behind: str
    bed: bool
    deep: bool

    @property
    def level(self) -> str:
        """silent, note or warn."""
        ease, most = (EASE_M, ONE_SIDE_M) if self.sides == 1 else (EASE_TWO_M, TWO_SIDES_M)
        if self.wide_m > most + HAIR_M:
            return "warn"
        return "note" if self.deep and self.wide_m > ease + HAIR_M else "silent"


def check(season: Season, _season: Season) -> Iterable[Finding]:
    """Cold frames by their depth, beds by their width."""
    for frame in season.frames.values():
        yield from _frame(frame, season)
    for bed in season.plan.beds.values():
        yield from _bed(bed, season)


def _frame(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    deep = frame.figure("size.deep")
    if not has_lights(frame) or not deep or not frame.is_said("size.deep"):
        return
    fact = frame.frame.fact("size")
    where = fact.where if fact else frame.frame.block.where
    behind = "its hinged lights" if _hinged(frame) else _solid(frame.frame.name, season)
    facts = Facts(frame.frame.name, deep, 1 if behind else 2, behind, bed=False, deep=True)
    if facts.level == "silent" or (frame.stands and facts.level == "note"):
        return
    yield Finding(
        level=facts.level,
        where=where,
        block=frame.frame.name,
        facts=facts,
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, facts),
        ways=_ways(facts),
    )


def _hinged(frame: WorkedFrame) -> bool:
    """Lights hinged at the back do not lift off, and shut that side."""
    lights = frame.frame.fact("lights")
    return frame.frame.fact("hinges") is not None or bool(lights and FIXED.search(lights.text))


def _bed(bed: Bed, season: Season) -> Iterable[Finding]:
    width = bed.width_m
    if bed.word != "bed" or not width or width > PLOT_M:
        return
    raised = bool(bed.raised_m)
    behind = _solid(bed.name, season) if raised else ""
    facts = Facts(bed.name, width, 1 if behind else 2, behind, bed=True, deep=raised)
    if facts.level == "silent" or not (raised or _rows(bed, season)):
        return
    where: Where = bed.block.where
    yield Finding(
        level=facts.level,
        where=where,
        block=bed.name,
        facts=facts,
        candidates=partial(_narrower, bed, facts, season),
        ways=_ways(facts),
    )


def _narrower(bed: Bed, facts: Facts, season: Season) -> Iterable[Edit]:
    """The same bed as wide as arms reach, where its size stands in its head."""
    head = bed.block.head
    size = head.get("size")
    if not isinstance(size, Size) or len(size.sides) != 2:
        return
    wide = ("30 in" if facts.sides == 1 else "4 ft") if season.plan.garden.imperial else ""
    wide = wide or ("75 cm" if facts.sides == 1 else "1.2 m")
    across = min(size.sides, key=lambda side: side.value)
    slot = head.slot("size")
    if slot is not None:
        sides = [wide if side is across else side.text for side in size.sides]
        yield swap(head, slot.text, " x ".join(sides))


def _rows(bed: Bed, season: Season) -> bool:
    """Food that is sown or planted each year grows in it, on a frame or off: it is weeded."""
    own = [planting.plant for planting in bed.plantings]
    on_frames = [
        worked.planting.plant
        for frame in season.frames.values()
        if frame.bed is not None and frame.bed.name == bed.name
        for worked in frame.plantings
    ]
    found = [entry_of(plant) for plant in (*own, *on_frames)]
    return any(one is not None and one.grown_for == "food" and is_yearly(one) for one in found)


def _solid(name: str, season: Season) -> str:
    """The wall, house, hedge or fence along one long side of it, "" where both are open."""
    here = season.plan.named(name)
    if here is None:
        return ""
    across = _across(name, season)
    for near in beside(season.plan, name):
        word = getattr(near.thing, "word", "")
        close = near.distance_m is not None and near.distance_m < WALK_M
        at_side = (
            across is None
            or min(apart_deg(near.bearing_deg, across), apart_deg(near.bearing_deg, across + 180))
            <= 45
        )
        if word in SOLID and close and at_side:
            return near.thing.name
    for spot in here.spots:
        thing = season.plan.named(spot.thing)
        against = spot.relation in {"on", "against", "along"} or (
            spot.relation == "from" and (spot.distance_m or 0.0) < WALK_M
        )
        if thing is not None and getattr(thing, "word", "") in SOLID and against:
            return thing.name
    return ""


def _across(name: str, season: Season) -> float | None:
    """The bearing square to its long sides, None where the plan does not say."""
    frame, bed = season.frames.get(name), season.plan.beds.get(name)
    if frame is not None:
        for word, slot in (("low side", "direction"), ("size", "low")):
            fact = frame.frame.fact(word)
            low = fact.get(slot) if fact else None
            if isinstance(low, str) and low in COMPASS:
                return COMPASS[low]
    if bed is not None and bed.runs:
        return 90.0 if bed.runs == "north-south" else 0.0
    return None


def _ways(facts: Facts) -> tuple[str, ...]:
    if facts.bed:
        return (
            "A bed a little over a metre (4 ft) wide is reached from both sides.",
            "A plank or stepping stones down the middle.",
        )
    if facts.behind == "its hinged lights":
        return ("Lights that lift off instead of hinged ones: it is then reached from the back.",)
    if facts.sides == 1:
        return ("Stand it an arm's width clear, so that it is reached from the back too.",)
    return ()


def _ways_out(frame: WorkedFrame, facts: Facts) -> Iterable[Edit]:
    """A box as deep as an arm is long."""
    fact = frame.frame.fact("size")
    size = fact.get("size") if fact else None
    if fact is None or not isinstance(size, Size) or len(size.sides) != 2:
        return
    imperial = frame.garden.imperial
    depths = (
        {1: ("30 in", "3 ft"), 2: ("4 ft",)} if imperial else {1: ("75 cm", "90 cm"), 2: ("1.2 m",)}
    )
    lights = frame.frame.fact("lights")
    typed = lights.get("size") if lights else None
    for depth in depths[facts.sides]:
        box = rewrite(fact, {"size": f"{size.sides[0].text} x {depth}"})
        if lights is not None and isinstance(typed, Size) and len(typed.sides) == 2:
            shorter = rewrite(lights, {"size": f"{typed.sides[0].text} x {depth}"})
            yield together(f"{box.says}, and {shorter.says}", box, shorter)
        else:
            yield box


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    wide = shown.exact(facts.wide_m)  # as it was typed: what is left has to add up
    arm = shown.length(EASE_M)
    if facts.sides == 1:
        out = shown.exact(facts.wide_m - (30 * INCH_M if shown.imperial else EASE_M))
        shut = "shut" if facts.behind.endswith("lights") else "shuts"
        says = (
            f"{facts.name}: {wide} from front to back, and {facts.behind} {shut} the far side. An "
            f"arm works with ease to about {arm}; {out} is left."
        )
        ignored = "The back is not weeded, and slugs have it to themselves."
    else:
        says = (
            f"{facts.name}: {wide} wide, so {shown.exact(facts.wide_m / 2)} to the middle from "
            f"each side. An arm works with ease to about {arm}."
        )
        ignored = "The middle is not weeded." if facts.deep else "You tread on what you dig."
    return Words(
        says=says,
        if_ignored=ignored,
        told=f"{wide} wide.",
        assumed="" if facts.sides == 1 else "That both its long sides can be walked along.",
        sum=f"With ease {arm}, at a stretch {shown.length(ONE_SIDE_M)}: common practice.",
    )


RULE = Rule(
    name="too-wide-to-reach",
    summary="an arm does not reach the back or the middle of a cold frame or a bed",
    looks_at="season",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
)
