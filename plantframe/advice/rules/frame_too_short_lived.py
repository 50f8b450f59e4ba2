"""frame-too-short-lived: a vine that cannot be untied stands long after its frame has rotted."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening, suited, word
from plantframe.advice.edits import other_crop
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.plantings import WorkedPlanting, as_range
from plantframe.season.units import Shown, two_figures

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.mechanics.ranges import Range
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

ELSEWHERE = (
    "Wires on a sound masonry wall, or posts of 5 in (125 mm) and more on steel feet, for a "
    "builder to size."
)
SHARE = 0.5  # of the years the plant stands: a frame renewed once in its life is no matter


@frozen
class Facts:
    """Years of the frame and of the plant.

    grown_in   it winds round the frame or grips it, and cannot be taken off whole
    """

    plant: str
    frame: str
    stays: Range
    lasts: Range
    grown_in: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The years of a woody plant against those of what carries it."""
    lasts = as_range(frame.structure.life) if frame.structure else None
    on_wall = frame.structure is not None and frame.structure.stands.held == "wall"
    if lasts is None or not frame.holds or on_wall or frame.builders_work:
        return
    for planting in frame.plantings:
        entry = planting.entry
        stays = as_range(entry.stays) if entry else None
        if entry is None or stays is None or not _climbs_for_years(entry):
            continue
        if lasts.middle >= SHARE * stays.middle:
            continue
        grown_in = is_grown_in(entry)
        if not grown_in and word(entry.stem) == "flexible" and _lifts_off(frame):
            continue
        yield Finding(
            level="warn" if grown_in else "note",
            where=planting.planting.fact.where,
            block=frame.frame.name,
            subject=planting.name,
            facts=Facts(planting.name, frame.frame.name, stays, lasts, grown_in),
            ratio=stays.times(SHARE / lasts.middle),
            by=frame.wanted_by,
            candidates=partial(_ways_out, frame, planting, entry),
            ways=(ELSEWHERE,),
        )


def _climbs_for_years(entry: Plant) -> bool:
    return word(entry.life) == "woody" and word(entry.habit) in {"climber", "leaner"}


def _lifts_off(frame: WorkedFrame) -> bool:
    """A light thing on legs of its own: a new one is set over a plant whose shoots bend."""
    stands = frame.structure.stands if frame.structure else None
    return stands is not None and stands.loads == "light" and stands.held == "braces itself"


def is_grown_in(entry: Plant) -> bool:
    """It winds into the frame, clings to it or makes a trunk round it."""
    return word(entry.holds_on) in {"twines", "clings"} or word(entry.stem) == "trunk"


def _ways_out(frame: WorkedFrame, planting: WorkedPlanting, entry: Plant) -> Iterable[Edit]:
    """Something of the kind's own list that is sown each year or can be untied."""
    for other in suited(frame):
        if not is_grown_in(other) and other.grown_for == entry.grown_for:
            yield other_crop(planting.planting, other.name)


def years(span: Range) -> str:
    """`20 years`, `10 to 15 years`."""
    low, high = two_figures(span.low), two_figures(span.high)
    return f"{low} years" if low == high else f"{low} to {high} years"


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    plant = opening(facts.plant)
    says = (
        f"{plant} on {facts.frame}: the plant stands for {years(facts.stays)}, "
        f"a frame of this kind for {years(facts.lasts)}."
    )
    ignored = (
        "Its stems are wound into the frame by then: the one cannot be renewed without the other."
        if facts.grown_in
        else "It can be untied, so posts and sticks are renewed one by one under it."
    )
    return Words(
        says=says,
        if_ignored=ignored,
        told=f"{plant} on {facts.frame}.",
        assumed="The wood that is usual for this kind.",
        sum=(
            f"{two_figures(facts.lasts.middle)} years against half of "
            f"{two_figures(facts.stays.middle)}."
        ),
    )


RULE = Rule(
    name="frame-too-short-lived",
    summary="a woody vine stands long after its frame has rotted",
    looks_at="frame",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
)
