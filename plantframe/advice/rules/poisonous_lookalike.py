"""poisonous-lookalike: a poisonous plant shares a frame with a crop that its pods look like."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import meant, opening, word
from plantframe.advice.edits import other_block
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

PODS = "Fabaceae"  # peas and beans: pods on a climbing stem look alike


@frozen
class Facts:
    """The frame, the flower and the crop it is taken for."""

    frame: str
    flower: str
    crop: str


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """Each poisonous flower of the frame against each crop that is picked from it."""
    for flower in frame.plantings:
        for crop in frame.plantings:
            if not _looks_like(meant(flower), meant(crop)):
                continue
            yield Finding(
                level="stop",
                where=flower.planting.fact.where,
                block=frame.frame.name,
                subject=flower.name,
                facts=Facts(frame.frame.name, flower.name, crop.name),
                by=flower.in_ground.day if flower.in_ground else None,
                candidates=partial(_ways_out, flower, frame, season),
                ways=(f"A frame of its own for {flower.name}, well away from anything eaten.",),
            )
            break


def _looks_like(flowers: tuple[Plant, ...], crops: tuple[Plant, ...]) -> bool:
    """Every plant that the one name can mean is taken for one that the other can mean."""
    return bool(flowers) and all(
        any(_is_taken_for(flower, crop) for crop in crops) for flower in flowers
    )


def _is_taken_for(flower: Plant, crop: Plant) -> bool:
    """Poisonous pods beside eating pods on stems that climb alike: sweet peas among peas.

    Sweet peas among runner beans hold on otherwise, and nobody takes one pod for the other.
    """
    return (
        flower.family == crop.family == PODS
        and flower.grown_for != "food"
        and crop.grown_for == "food"
        and word(flower.stem) == "soft"
        and any(one.kind == "poisonous" for one in flower.harm)
        and word(flower.holds_on) == word(crop.holds_on)
    )


def _ways_out(flower: WorkedPlanting, frame: WorkedFrame, season: Season) -> Iterable[Edit]:
    """Another frame of the plan."""
    for other in season.frames.values():
        if other.frame.name == frame.frame.name or not other.holds:
            continue
        if any(_looks_like(meant(flower), meant(one)) for one in other.plantings):
            continue
        says = f"{flower.name} on {other.frame.name}"
        yield other_block(flower.planting.fact, other.frame.block, says)


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    return Words(
        says=(
            f"{facts.frame}: {facts.flower} and {facts.crop} on one frame. The pods look alike, "
            f"and those of {facts.flower} are poisonous."
        ),
        if_ignored="Somebody picks the wrong ones, a child or a guest before anybody else.",
        told=f"{opening(facts.flower)} and {facts.crop} on {facts.frame}.",
        sum="Said of a poisonous plant with pods beside a climber grown for its pods.",
    )


RULE = Rule(
    name="poisonous-lookalike",
    summary="a poisonous plant shares a frame with a crop that its pods look like",
    looks_at="frame",
    levels=("stop",),
    basis="common practice",
    check=check,
    words=words,
    answered="give one of the two a frame of its own",
)
