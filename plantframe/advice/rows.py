"""Rows of plants: whether a frame carries one, how many it has, and which way it runs."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.climbers import matter

if TYPE_CHECKING:
    from plantframe.season.frames import WorkedFrame

RUNS_DEG = {"north-south": 0.0, "east-west": 90.0}


def rows(frame: WorkedFrame) -> int:
    """Rows that it is planted in: two where it leans together over the ground along its length."""
    worked = frame.worked
    if worked is None or frame.structure is None:
        return 1
    leans = frame.structure.stands.held == "braces itself"
    along = worked.ground_m[0]
    return 2 if leans and abs(worked.row_m - along) < 0.01 * max(along, 1.0) else 1


def is_row(frame: WorkedFrame) -> bool:
    """A bar, wires, a face or woven twine along a row, and not a support to each plant."""
    carried = frame.structure is not None and any(
        one.by in {"bar", "wire", "mesh"} for one in frame.structure.carries
    )
    woven = any(
        held.hold.runs == "across" and matter(frame, held) == "twine" for held in frame.holds
    )
    alone = frame.structure is not None and frame.structure.stands.held == "alone"
    return carried or (woven and alone)


def runs(frame: WorkedFrame) -> str:
    """Which way its row lies: its own line, else the way of its bed; "" where neither says."""
    own = frame.said.get("runs.line")
    return own if isinstance(own, str) else frame.bed.runs if frame.bed else ""
