"""crown-behind-hinge: a plant stands so far behind the hinge that folding stretches its stems."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite, set_fact, swap
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.language.values import Measure
from plantframe.mechanics.geometry import fold_stretch_m
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

FIRST_TIE_M = 0.60  # above the hinge (common practice, no source)
HIGHEST_M = 0.45  # a hinge higher than this leaves too little lattice
HAIR_M = 0.01


@frozen
class Facts:
    """How far the crown is behind the hinge and the hinge is up, m."""

    frame: str
    plant: str
    behind_m: float
    hinge_m: float

    @property
    def stretch_m(self) -> float:
        """How much longer the way to the first tie becomes."""
        return fold_stretch_m(-self.behind_m, self.hinge_m, FIRST_TIE_M)


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """How far behind the hinge each plant stands, against how high the hinge is."""
    hinge = frame.figure("hinges.up")
    if not hinge or frame.word("hinges.at") in {"top", "head"}:
        return
    for planting in frame.plantings:
        behind = _behind_m(frame, planting)
        if behind is None or behind <= hinge + HAIR_M:
            continue
        yield Finding(
            level="warn",
            where=planting.planting.fact.where,
            block=frame.frame.name,
            subject=planting.name,
            facts=Facts(frame.frame.name, planting.name, behind, hinge),
            by=frame.wanted_by,
            candidates=partial(_ways_out, frame, planting, behind, hinge),
            ways=("Leave slack in the lowest ties, or undo them before it is folded.",),
        )


def _behind_m(frame: WorkedFrame, planting: WorkedPlanting) -> float | None:
    """How far towards the wall from the hinge a plant stands, None where nothing says."""
    typed = planting.planting.fact.get("behind")
    if isinstance(typed, Measure):
        return typed.value
    spot, gap = planting.planting.spot, frame.figure("gap")
    if spot is None or spot.distance_m is None or spot.relation != "from" or gap is None:
        return None
    wall = frame.wall
    at_wall = "wall" in spot.said.lower() or (wall is not None and spot.thing == wall.name)
    return gap - spot.distance_m if at_wall else None


def _ways_out(
    frame: WorkedFrame, planting: WorkedPlanting, behind: float, hinge: float
) -> Iterable[Edit]:
    """The plant at the hinge or nearly, or the hinge as high as the plant is behind it."""
    shown = Shown(frame.garden.imperial)
    fact = planting.planting.fact
    slot = fact.slot("behind")
    if slot is not None:
        yield rewrite(fact, {"behind": shown.typed(hinge / 2)})
    elif planting.planting.spot is not None and (gap := frame.figure("gap")):
        distance = next((one for one in fact.slots if one.name == "spot"), None)
        measure = distance.text.split(" from")[0] if distance else ""
        if measure:
            yield swap(fact, measure, shown.typed(gap))
    hinges = frame.frame.fact("hinges")
    if behind <= HIGHEST_M + HAIR_M:
        up = shown.typed(behind)
        if hinges is not None and hinges.slot("up"):
            yield rewrite(hinges, {"up": up})
        elif hinges is None:
            yield set_fact(frame.frame, "hinges", f"hinges at the foot, {up} up")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    behind, hinge = shown.length(facts.behind_m), shown.length(facts.hinge_m)
    stretch = shown.bench(facts.stretch_m) if shown.imperial else shown.length(facts.stretch_m)
    return Words(
        says=(
            f"{facts.frame}: {facts.plant} stands {behind} behind a hinge that is {hinge} up. "
            f"Folding it down pulls its stems longer, by about {stretch} to the first tie."
        ),
        if_ignored="The stems tear at the foot the first time the wall is painted.",
        told=f"{facts.plant} {behind} behind the hinge, the hinge {hinge} up.",
        assumed=f"A first tie {shown.length(FIRST_TIE_M)} above the hinge.",
        sum="A stem is stretched only where its foot is further back than the hinge is high.",
    )


RULE = Rule(
    name="crown-behind-hinge",
    summary="a plant stands so far behind the hinge that folding stretches its stems",
    looks_at="frame",
    levels=("warn",),
    basis="sum",
    check=check,
    words=words,
)
