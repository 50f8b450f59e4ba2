"""low-headroom: an arch that one walks through bent, or that is too narrow to pass."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import word
from plantframe.advice.edits import rewrite, set_fact, together
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.heights import standing
from plantframe.frozen import frozen
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

# To walk under, common practice without a source: bare; where thorns or fruit hang; a low arch of
# mesh between two beds, where one only stoops to pick.
BARE_M = 2.1
HUNG_M = 2.25
BETWEEN_BEDS_M = 1.8
NARROW_M = 0.9  # one person, scratched
TWO_ABREAST_M = 1.2
HANGING_M = 0.3  # what hangs takes so much off
GRACE_M = 0.02


SMOOTH = "A plant without thorns, tied in along the sides and thinned over the top."


@frozen
class Facts:
    """How high and wide, and how high and wide one wants it.

    fault   "low", "hung", "narrow"
    what    what hangs, "" for nothing
    """

    frame: str
    fault: str
    high_m: float
    wide_m: float
    least_m: float
    what: str
    thorns: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Height under the arch, and room between its legs."""
    high, wide = frame.figure("headroom"), frame.figure("wide")
    if high is None or frame.builders_work or not frame.holds:
        return
    hanging = next(((one.name, one.entry) for one in frame.plantings if _hangs(one.entry)), None)
    what, entry = hanging or ("", None)
    mesh = frame.worked is not None and any(
        one.part.of == "mesh" for one in frame.worked.pieces.values()
    )
    least = BETWEEN_BEDS_M if mesh else HUNG_M if entry is not None else BARE_M
    thorns = entry is not None and _is_thorny(entry)
    if high < least - GRACE_M:
        yield _finding(frame, "low", (high, wide or 0.0, least), what, thorns=thorns)
    elif mesh and entry is not None and high < BETWEEN_BEDS_M + HANGING_M - GRACE_M:
        yield _finding(frame, "hung", (high, wide or 0.0, least), what, thorns=thorns)
    elif wide is not None and frame.is_said("wide") and wide < TWO_ABREAST_M - GRACE_M:
        yield _finding(frame, "narrow", (high, wide, TWO_ABREAST_M), what, thorns=thorns)


def _finding(
    frame: WorkedFrame, fault: str, size_m: tuple[float, float, float], what: str, *, thorns: bool
) -> Finding:
    high, wide, least = size_m
    fact = frame.frame.fact("wide" if fault == "narrow" else "headroom")
    gentle = fault == "hung" or (fault == "narrow" and wide >= NARROW_M - GRACE_M)
    return Finding(
        level="note" if gentle else "warn",
        where=fact.where if fact else frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, fault, high, wide, least, what, thorns),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, fault, least),
        ways=(SMOOTH,) if what and fault != "narrow" else (),
    )


def _is_thorny(entry: Plant) -> bool:
    return any(one.kind == "thorny" for one in entry.harm)


def _hangs(entry: Plant | None) -> bool:
    """Thorny canes, or fruit of some weight."""
    if entry is None:
        return False
    heavy = entry.fruit_weight is not None and entry.fruit_weight.usual >= 0.1
    return _is_thorny(entry) or (heavy and word(entry.habit) == "climber")


def _ways_out(frame: WorkedFrame, fault: str, least_m: float) -> Iterable[Edit]:
    """Higher, wider."""
    imperial = frame.garden.imperial
    if fault == "narrow":
        yield set_fact(frame.frame, "wide", "wide 4 ft" if imperial else "wide 1.2 m")
        return
    if fault == "hung":
        return
    high = 2.286 if imperial else 2.3
    if least_m == BETWEEN_BEDS_M:
        high = 1.905 if imperial else 1.9
    shown = Shown(imperial)
    fact = frame.frame.fact("headroom")
    if fact is not None:
        higher = rewrite(fact, {"length": shown.typed(high)})
        wide = frame.figure("wide")
        if wide is not None and frame.is_said("wide") and wide < TWO_ABREAST_M - GRACE_M:
            # too narrow as well: a higher one alone would only be told of the next
            wider = set_fact(frame.frame, "wide", "wide 4 ft" if imperial else "wide 1.2 m")
            yield together(f"{higher.says}  and  {wider.says}", higher, wider)
            return
        yield higher
    else:
        yield from standing(frame, high)
        if not frame.is_said("posts.up") and not frame.is_said("posts.length"):
            yield set_fact(frame.frame, "headroom", f"headroom {shown.typed(high)}")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    high = shown.length(facts.high_m)
    least = shown.length(facts.least_m)
    if facts.fault == "narrow":
        says = (
            f"{facts.frame}: {shown.length(facts.wide_m)} between its legs; "
            f"{least} lets two pass, or one with a barrow."
        )
        ignored = "One goes through sideways, and is scratched." if facts.thorns else ""
    else:
        what = f", and {facts.what} hangs into it" if facts.what else ""
        says = f"{facts.frame}: {high} to walk under{what}."
        if facts.what:
            says = f"{says[:-1]}: about {shown.length(facts.high_m - HANGING_M)} is left."
        if facts.fault == "low":
            says = f"{says[:-1]}; {least} is the least."
        ignored = (
            "Thorns at the height of a face." if facts.thorns else "One ducks, summer after summer."
        )
    return Words(
        says=says,
        if_ignored=ignored,
        told=f"{facts.frame}, {high} high.",
        assumed=f"What hangs takes {shown.length(HANGING_M)} off." if facts.what else "",
        sum=f"{high} against {least}."
        if facts.fault != "narrow"
        else f"{shown.length(facts.wide_m)} against {least}.",
    )


RULE = Rule(
    name="low-headroom",
    summary="an arch is too low to walk under upright, or too narrow",
    looks_at="frame",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
)
