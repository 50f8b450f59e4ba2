"""Posts against the wind: which are asked about the ground, and the edits that help them."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from plantframe.advice.edits import UPRIGHTS, rewrite, set_fact, uprights
from plantframe.mechanics.section import rectangle_modulus_m3, round_modulus_m3
from plantframe.season.units import INCH_M, Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame

LOWEST_M = 1.2  # a net lower than this is no longer the frame that was asked for
DEEPEST_M = 0.9  # as deep as an iron bar opens a hole without a borer
# Sizes a yard sells, thinner first, with the thickness of the stick and whether it is round.
SAWN_IMPERIAL = (("2x2", 0.038, 0.038), ("2x4", 0.038, 0.089), ("4x4", 0.089, 0.089))
UPWIND = "A hedge or a wall upwind halves the push."
SAWN_METRIC = (("50x50 mm", 0.05, 0.05), ("75x75 mm", 0.075, 0.075), ("100x100 mm", 0.1, 0.1))
ROUND_IMPERIAL = (("3 in round", 0.0762), ("4 in round", 0.1016))
ROUND_METRIC = (("50 mm round", 0.05), ("75 mm round", 0.075), ("100 mm round", 0.1))


def ground_is_asked(frame: WorkedFrame) -> bool:
    """Is the hold of the ground asked about: a frame put up each year on posts standing alone."""
    return (
        frame.structure is not None
        and frame.structure.stands.held == "alone"
        and not frame.reckoned_lasting
    )


def stayed(frame: WorkedFrame) -> Iterable[Edit]:
    """A stay on each side of every post, square to the row: a rope only pulls."""
    posts = frame.figure("posts.count")
    if posts is None or frame.structure is None or "stays" not in frame.structure.facts:
        return
    count = round(2 * posts)
    line = f"stays {count}, square to the row"
    old = frame.figure("stays.count") if frame.is_said("stays.count") else None
    if old and not frame.stayed_square:
        # those that stand in line with the row go on doing their own work
        line = f"stays {count + round(old)}, both ways"
    yield set_fact(frame.frame, "stays", line, f"{line} (one each side of every post)")


def thicker(frame: WorkedFrame, times: float) -> Iterable[Edit]:
    """Posts of the next sizes that are at least so many times as strong in bending."""
    width, depth = frame.figure("posts.width"), frame.figure("posts.depth")
    worked = frame.worked
    if width is None or depth is None or worked is None:
        return
    imperial = frame.garden.imperial
    if worked.facts.values.get("posts.round"):
        wanted = round_modulus_m3(width) * times
        rounds = ROUND_IMPERIAL if imperial else ROUND_METRIC
        names = [name for name, across in rounds if round_modulus_m3(across) >= wanted]
    else:
        small, large = sorted((width, depth))
        wanted = rectangle_modulus_m3(large, small) * times
        sawn = SAWN_IMPERIAL if imperial else SAWN_METRIC
        names = [name for name, thin, wide in sawn if rectangle_modulus_m3(wide, thin) >= wanted]
    for name in names[:2]:
        yield _retyped(frame, {"section": name}, f"thicker {frame.uprights}")


def lower(frame: WorkedFrame, times: float) -> Iterable[Edit]:
    """The same row, so much lower that the wind at the ground falls to a share of what it was.

    times   what the push may be of what it is; it grows with the square of the height
    """
    up, down = frame.figure("posts.up"), frame.figure("posts.down")
    if up is None or down is None or frame.reckoned_lasting:
        return
    step = 3 * INCH_M if frame.garden.imperial else 0.05
    height = math.floor(up * math.sqrt(times) / step + 1e-6) * step
    if height < LOWEST_M:
        return
    said = f"{Shown(frame.garden.imperial).typed(height)} standing"
    yield _retyped(frame, _lengths(frame, height, down), said)


def deeper(frame: WorkedFrame, *depths_m: float) -> Iterable[Edit]:
    """The same height on longer posts that stand deeper."""
    up, down = frame.figure("posts.up"), frame.figure("posts.down")
    if up is None or down is None:
        return
    shown = Shown(frame.garden.imperial)
    for depth in depths_m:
        if down < depth <= DEEPEST_M + 0.02:
            said = f"{shown.length(depth)} down, on longer {frame.uprights}"
            yield _retyped(frame, _lengths(frame, up, depth), said)


def sunk(frame: WorkedFrame, depth_m: float, least_up_m: float) -> Iterable[Edit]:
    """The same posts set deeper, so that less of them stands."""
    up, down = frame.figure("posts.up"), frame.figure("posts.down")
    if up is None or down is None or up + down - depth_m < least_up_m:
        return
    left = up + down - depth_m
    shown = Shown(frame.garden.imperial)
    said = f"the same {frame.uprights} {shown.length(depth_m)} down, {shown.typed(left)} standing"
    yield _retyped(frame, _lengths(frame, left, depth_m), said)


def _lengths(frame: WorkedFrame, up: float, down: float) -> dict[str, str]:
    """The figures to type for a height and a depth: those that the plan has, and no fourth."""
    shown = Shown(frame.garden.imperial)
    fact = uprights(frame.frame)
    said = {slot.name for slot in fact.slots} if fact else set()
    figures = {
        "length": shown.typed(up + down),
        "down": shown.length(down),
        "up": shown.typed(up),
    }
    kept = {name: figure for name, figure in figures.items() if name in said}
    if len(kept) < 2:
        # one figure alone would leave the other to be assumed
        kept = {"length": figures["length"], **kept, "down": figures["down"]}
    worded = {"length": "", "down": " down", "up": " up"}
    return {
        name: figure if name in said else f"{figure}{worded[name]}" for name, figure in kept.items()
    }


def _retyped(frame: WorkedFrame, slots: dict[str, str], remark: str) -> Edit:
    fact = uprights(frame.frame)
    if fact is None:
        own = next((one for one in UPRIGHTS if frame.uprights == one), "posts")
        return set_fact(frame.frame, own, f"{own} {', '.join(slots.values())}", remark)
    edit = rewrite(fact, slots)
    return rewrite(fact, slots, f"{edit.says} ({remark})")
