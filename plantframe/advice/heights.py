"""How high a frame stands and a plant grows, and the edit that makes a frame higher or lower."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite, uprights
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterator

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame

# Sums of kinds whose top is a way over to the other side: the whole way is there to climb.
WAYS_OVER = ("round_it", "mesh.long")


def way_up_m(frame: WorkedFrame) -> float | None:
    """How far a vine can climb: up, and over where there is a way over."""
    if frame.height_m is None:
        return None
    return max([frame.height_m, *(frame.figure(name) or 0.0 for name in WAYS_OVER)])


def lengths_m(entry: Plant) -> tuple[float | None, float | None]:
    """The least and the most it grows to on a frame.

    Beside the entry's own figure only the trade's counts: other print takes in dwarf kinds, and
    what the same plant does without a frame.
    """
    height = entry.height
    if height is None:
        return None, None
    usual = [one for one in height.also if one.basis == "common practice" and not one.doubt]
    trusted = [height, *usual]
    lows = [one.low for one in trusted if one.low is not None]
    highs = [one.high for one in trusted if one.high is not None]
    return min(lows, default=None), max(highs, default=None)


def standing(frame: WorkedFrame, height_m: float) -> Iterator[Edit]:
    """The same uprights at the same depth, so long that they stand this high."""
    fact, down = uprights(frame.frame), frame.figure("posts.down")
    if fact is None or down is None or fact.slot("length") is None:
        return
    shown = Shown(frame.garden.imperial)
    slots = {"length": shown.typed(height_m + down)}
    if fact.slot("up") is not None:
        slots["up"] = shown.typed(height_m)
    yield rewrite(fact, slots)


def step_m(frame: WorkedFrame) -> float:
    """A round measure in the plan's units: half a foot, or 10 cm."""
    return 0.1524 if frame.garden.imperial else 0.1
