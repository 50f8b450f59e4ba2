"""What a plan hangs on a frame, beyond the parts of its kind, gives plants a hold."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

import pytest

from plantframe.language.files import read_input
from plantframe.plan.building import build
from plantframe.season.season import Season

if TYPE_CHECKING:
    from plantframe.season.frames import WorkedFrame


def frame(lines: str) -> WorkedFrame:
    day = date(2027, 3, 1)
    plan, _ = build(read_input(f"garden Test Row, 2027\nfence Row, mortised fence\n{lines}"), day)
    return Season(plan, day).frames["Row"]


def test_a_net_on_a_rail_fence_is_something_thin_to_hold() -> None:
    thinnest = frame("  net mesh 10 cm\n").holds[0]
    assert thinnest.hold.part == "net"
    assert thinnest.thickness_m < 0.01
    assert thinnest.every_m == pytest.approx(0.10)


def test_strings_run_up_and_wires_run_across() -> None:
    parts = {held.hold.part: held.hold.runs for held in frame("  strings 20 cm apart\n").holds}
    assert parts["string"] == "up"
    parts = {held.hold.part: held.hold.runs for held in frame("  wires 3, 30 cm apart\n").holds}
    assert parts["wire"] == "across"


def test_a_fence_with_nothing_hung_on_it_has_its_own_parts_only() -> None:
    assert {held.hold.part for held in frame("").holds} == {"rail", "post"}


def test_a_net_frame_counts_its_own_net_once() -> None:
    day = date(2027, 3, 1)
    text = "garden Test Row, 2027\nframe Row, net frame\n  net mesh 10 cm\n"
    plan, _ = build(read_input(text), day)
    parts = [held.hold.part for held in Season(plan, day).frames["Row"].holds]
    assert parts.count("net") == 1
