"""A frame worked out: what its lines settle."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

import pytest

from plantframe.language.files import read_input
from plantframe.plan.building import build
from plantframe.season.season import Season

if TYPE_CHECKING:
    from plantframe.season.frames import WorkedFrame


def tall(kind: str, lines: str) -> WorkedFrame:
    day = date(2027, 3, 1)
    text = f"garden Test Row, 2027\nbed Strip, 2 m x 8 m\nframe Tall, {kind}, in Strip\n{lines}"
    plan, _ = build(read_input(text), day)
    return Season(plan, day).frames["Tall"]


@pytest.mark.parametrize(
    ("kind", "slot"),
    [
        ("net frame", "posts.up"),
        ("wigwam", "tie.height"),
        ("arch", "headroom"),
        ("cane wires", "posts.up"),
        ("kiwi T-bar", "arms.up"),
    ],
)
def test_a_height_that_is_said_settles_what_makes_the_kind_so_high(kind: str, slot: str) -> None:
    frame = tall(kind, "  high 1.9 m\n")
    assert frame.height_m == pytest.approx(1.9)
    assert frame.figure(slot) == pytest.approx(1.9)


def test_posts_whose_length_and_depth_are_said_outrank_a_height() -> None:
    frame = tall("net frame", "  high 1 m\n  posts 38x38 mm, 2.4 m, 45 cm down\n")
    assert frame.height_m == pytest.approx(1.95)
