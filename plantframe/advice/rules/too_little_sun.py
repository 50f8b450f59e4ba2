"""too-little-sun: a plant gets fewer hours of sun than it needs."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening, suited
from plantframe.advice.edits import other_crop, other_place
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.plantings import WorkedPlanting, as_range

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

MOST_BEDS = 3


@frozen
class Facts:
    """Hours of direct sun there, and hours wanted. `place`: on Bean Net, in Long Bed."""

    plant: str
    place: str
    has_h: tuple[float, float]
    wants_h: tuple[float, float]
    food: bool


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """The sun of the frame, bed or wall against the least the plant does with."""
    entry = planting.entry
    wants = as_range(entry.sun) if entry else None
    has = season.sun_at(planting)
    if entry is None or wants is None or has is None:
        return
    # part of the day may do; all of it short will not
    if sum(has) / 2 >= wants.low:
        return
    yield Finding(
        level="warn" if has[1] < wants.low else "note",
        where=planting.planting.fact.where,
        block=planting.holder,
        subject=planting.name,
        facts=Facts(
            planting.name,
            f"{'in' if planting.holder in season.plan.beds else 'on'} {planting.holder}",
            has,
            (wants.low, wants.high),
            entry.grown_for == "food",
        ),
        by=planting.in_ground.day if planting.in_ground else None,
        candidates=partial(_ways_out, planting, entry, wants.low, season),
        ways=("Another place, or a plant that is content with shade.",),
    )


def _ways_out(
    planting: WorkedPlanting, entry: Plant, least_h: float, season: Season
) -> Iterable[Edit]:
    """A sunnier bed for a frame that can still move; a plant that wants less."""
    frame = season.frames.get(planting.holder)
    if frame is not None and not frame.stands and frame.bed is not None:
        sunny = [
            bed.name
            for bed in season.plan.beds.values()
            if bed.sun_h is not None and sum(bed.sun_h) / 2 >= least_h
        ]
        for name in sunny[:MOST_BEDS]:
            yield from other_place(frame.frame, frame.bed.name, name)
    has = season.sun_at(planting)
    if frame is None or has is None:
        return
    for other in suited(frame):
        wants = as_range(other.sun)
        if wants is not None and wants.low <= sum(has) / 2 and other.grown_for == entry.grown_for:
            yield other_crop(planting.planting, other.name)


def hours(low: float, high: float) -> str:
    """`4 hours`, `6 to 8 hours`, `up to 3½ hours`, to the half hour."""
    first, last = (_halves(one) for one in (low, high))
    if last == "0":
        return "no hours"
    span = last if first == last else f"up to {last}" if first == "0" else f"{first} to {last}"
    return f"{span} hour" if span == "1" else f"{span} hours"


def _halves(figure: float) -> str:
    whole, half = divmod(round(figure * 2), 2)
    return f"{whole or ''}½" if half else str(whole)


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    plant = opening(facts.plant)
    has, wants = hours(*facts.has_h), hours(*facts.wants_h)
    says = (
        f"{plant} {facts.place}: {has} of sun on a clear day, "
        f"and it wants {wants.removesuffix(' hours')}."
    )
    short = facts.has_h[1] < facts.wants_h[0]
    ignored = "It may do, with less to show for it."
    if short:
        ignored = (
            "It grows long and thin, and sets little."
            if facts.food
            else "It grows long and thin, and flowers little."
        )
    return Words(
        says=says,
        if_ignored=ignored,
        told=f"{plant} {facts.place}, {has} of sun.",
        assumed="Direct sun in summer. Half a day is taken for 4 to 6 hours, full sun for 8 to 10.",
        sum=f"{has} against at least {_halves(facts.wants_h[0])}.",
    )


RULE = Rule(
    name="too-little-sun",
    summary="a plant gets fewer hours of direct sun than it needs",
    looks_at="planting",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
)
