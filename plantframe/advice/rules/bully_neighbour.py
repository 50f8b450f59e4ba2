"""bully-neighbour: two plants share a frame and one of them smothers the other."""

from __future__ import annotations

from datetime import timedelta
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import is_tied_as_grown, is_yearly, opening, word
from plantframe.advice.edits import drop
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.heights import lengths_m
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

WEIGHT, HEIGHT = 3.0, 2.0  # times the other's (common practice, no source)
TURN = timedelta(days=45)  # sown so far apart, the first crop is over as the second fills out
BY_ITSELF = frozenset({"twines", "tendrils", "leaf stalks", "clings"})


@frozen
class Facts:
    """The two plants, how high each grows, m, and how many times the weight one has."""

    frame: str
    bully: str
    bully_m: tuple[float, float]
    other: str
    other_m: tuple[float, float]
    weight: float


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Every two plants that stand on it in the same weeks and in the same place."""
    if frame.builders_work:
        return
    pairs = [
        (one, other)
        for at, one in enumerate(frame.plantings)
        for other in frame.plantings[at + 1 :]
        if _together(one, other)
    ]
    for one, other in pairs:
        for bully, weak in ((one, other), (other, one)):
            facts = _smothers(frame, bully, weak)
            if facts is not None:
                yield Finding(
                    level="warn",
                    where=bully.planting.fact.where,
                    block=frame.frame.name,
                    subject=f"{bully.name}, {weak.name}",
                    facts=facts,
                    by=frame.wanted_by,
                    candidates=partial(_ways_out, bully, weak),
                    ways=(
                        f"A bay or a frame of its own for {weak.name}.",
                        "A companion of its own strength.",
                    ),
                )


def _ways_out(bully: WorkedPlanting, weak: WorkedPlanting) -> Iterable[Edit]:
    """One of the two is left out here."""
    yield drop(bully.planting.fact, f"no {bully.name} here")
    yield drop(weak.planting.fact, f"no {weak.name} here")


def _together(one: WorkedPlanting, other: WorkedPlanting) -> bool:
    """In the same weeks, and neither has an end of its own."""
    if one.planting.spot is not None or other.planting.spot is not None:
        return False
    if one.in_ground is None or other.in_ground is None:
        return True
    first, second = sorted((one, other), key=lambda each: each.in_ground.day)  # type: ignore[union-attr]
    if first.in_ground is None or second.in_ground is None:
        return True
    if first.entry is None or not is_yearly(first.entry):
        return True
    until = first.planting.until
    if until is not None:
        return until.day > second.in_ground.day + TURN
    return second.in_ground.day - first.in_ground.day < TURN


def _smothers(frame: WorkedFrame, bully: WorkedPlanting, weak: WorkedPlanting) -> Facts | None:
    strong, soft = bully.entry, weak.entry
    if strong is None or soft is None or not _goes_by_itself(strong) or not _climbs(soft):
        return None
    heights = [lengths_m(entry) for entry in (strong, soft)]
    (low, high), (other_low, other_high) = heights
    if low is None or high is None or other_low is None or other_high is None:
        return None
    taller = (low + high) / (other_low + other_high)
    weights = bully.weight_kg_per_m, weak.weight_kg_per_m
    heavier = weights[0].middle / weights[1].middle if weights[0] and weights[1] else 0.0
    if heavier <= WEIGHT and taller <= HEIGHT:
        return None
    return Facts(
        frame.frame.name, bully.name, (low, high), weak.name, (other_low, other_high), heavier
    )


def _goes_by_itself(entry: Plant) -> bool:
    """It climbs over its neighbours; what is tied in goes where it is led."""
    return word(entry.holds_on) in BY_ITSELF and not is_tied_as_grown(entry)


def _climbs(entry: Plant) -> bool:
    """It wants the frame as well, and is not a salad at its foot."""
    return word(entry.habit) in {"climber", "leaner"}


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    says = (
        f"{facts.frame}: {facts.bully} grows to {shown.lengths(*facts.bully_m)} and {facts.other} "
        f"to {shown.lengths(*facts.other_m)}"
    )
    heavy = f", with about {facts.weight:.0f} times the weight" if facts.weight > WEIGHT else ""
    return Words(
        says=f"{says}{heavy}. On one frame {facts.bully} wins by early summer.",
        if_ignored=f"{opening(facts.other)} is shaded out and pulled down.",
        told=f"{opening(facts.bully)} and {facts.other} on {facts.frame}.",
        assumed="That both stand there in the same weeks, mixed.",
        sum=f"Said from {WEIGHT:.0f} times the weight or {HEIGHT:.0f} times the height.",
    )


RULE = Rule(
    name="bully-neighbour",
    summary="two plants share a frame and one smothers the other",
    looks_at="frame",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
