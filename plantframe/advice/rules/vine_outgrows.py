"""vine-outgrows: a soft vine grows well past the top of what it climbs."""

from __future__ import annotations

import math
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import is_pea, is_yearly, kin, opening, word
from plantframe.advice.edits import other_crop, rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.heights import lengths_m, standing, step_m, way_up_m
from plantframe.frozen import frozen
from plantframe.mechanics.ranges import Range
from plantframe.season.units import Shown, times

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

# The least it grows over what it is given: beyond this the top folds over and shades the rest
# (common practice, no source; a vine a third too long is only tucked in).
MOST = 1.4


@frozen
class Facts:
    """How long the vine grows, and what it is given."""

    plant: str
    frame: str
    low_m: float
    high_m: float
    given_m: float
    food: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Soft twiners and peas that nobody pinches, cuts back or leads sideways."""
    given = way_up_m(frame)
    if not given or not frame.holds or frame.builders_work or not _height_is_said(frame):
        return
    for planting in frame.plantings:
        entry = planting.entry
        if entry is None or not _runs_up(planting, entry):
            continue
        low, high = lengths_m(entry)
        if low is None or low <= MOST * given + 0.005:
            continue
        food = entry.grown_for == "food" and is_yearly(entry)
        yield Finding(
            level="warn" if food else "note",
            where=planting.planting.fact.where,
            block=frame.frame.name,
            subject=planting.name,
            facts=Facts(planting.name, frame.frame.name, low, high or low, given, food),
            ratio=Range(low / given, low / given, (high or low) / given),
            by=frame.wanted_by,
            candidates=partial(_ways_out, frame, planting, entry, given),
            ways=("Pinching the tips out at the top keeps it to the frame.",),
        )


def _height_is_said(frame: WorkedFrame) -> bool:
    """The plan gives some height; an assumed one is the kind's ordinary one and is not scolded."""
    slots = (".up", ".length", ".high", ".size", ".height", ".heights")
    return any(
        name in {"high", "size"} or (name.endswith(slots) and not name.startswith("bays."))
        for name in frame.said
    )


def _runs_up(planting: WorkedPlanting, entry: Plant) -> bool:
    own = planting.planting
    held_back = own.pinched or own.trained or own.cut
    climbs = word(entry.holds_on) == "twines" or is_pea(entry)
    return bool(not held_back and climbs and word(entry.stem) == "soft")


def _ways_out(
    frame: WorkedFrame, planting: WorkedPlanting, entry: Plant, given: float
) -> Iterable[Edit]:
    """Pinching, a shorter kind, taller posts."""
    yield rewrite(planting.planting.fact, {"pinched": "pinched at the top"})
    for other in kin(entry):
        low, _ = lengths_m(other)
        if word(other.habit) == "climber" and low is not None and low <= MOST * given:
            yield other_crop(planting.planting, other.name)
    step = step_m(frame)
    yield from standing(frame, math.ceil((lengths_m(entry)[0] or 0.0) / MOST / step - 1e-6) * step)


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    grown = shown.lengths(facts.low_m, facts.high_m)
    says = (
        f"{opening(facts.plant)} on {facts.frame}: {grown} of growth, and "
        f"{shown.length(facts.given_m)} to climb. Even the shortest is "
        f"{times(facts.low_m / facts.given_m)} as long as that."
    )
    ignored = (
        "The tops fold over, shade what hangs below, and the best picking is lost in the tangle."
        if facts.food
        else "It comes over the top by midsummer and hangs down outside."
    )
    return Words(
        says=says,
        if_ignored=ignored,
        told=f"{opening(facts.plant)} on {facts.frame}; nothing said of pinching or leading it.",
        assumed="The least that the sources give for its length in an ordinary summer.",
        sum=(
            f"{shown.length(facts.low_m)} over {shown.length(facts.given_m)} is "
            f"{facts.low_m / facts.given_m:.2g}; up to {MOST} is tucked in and said nothing of."
        ),
    )


RULE = Rule(
    name="vine-outgrows",
    summary="a twining vine or a pea grows well past the top of its frame",
    looks_at="frame",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
)
