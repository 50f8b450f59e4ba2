"""Boards drawn: each on a line, its pieces in order, lengths true to scale."""

from __future__ import annotations

import re

import pytest

from plantframe.paper.cutting_drawing import cutting_drawings
from plantframe.timber.cutting import cutting_of
from tests.paper.gardens import BED, HEAD, NET, answers, texts

PLAN = HEAD + "yard\n  2x2, 10 ft, at 4\n" + BED + NET


def test_each_board_is_on_one_line_with_its_pieces() -> None:
    found = answers(PLAN)
    cutting = cutting_of(found.season)
    ((_, drawing),) = cutting_drawings(cutting, found.plan.garden)
    says = texts(drawing.svg("2x2"))
    for board in cutting.boards:
        assert any(one.startswith(f"{board.number} 2x2 10 ft") for one in says)
    assert sum(one.startswith(("a 8 ft", "b 8 ft")) for one in says) == 5


def test_a_board_and_its_pieces_have_their_lengths_at_one_scale() -> None:
    found = answers(PLAN)
    ((_, drawing),) = cutting_drawings(cutting_of(found.season), found.plan.garden)
    wide = set()
    for points in re.findall(r'<polygon points="([^"]*)"', drawing.svg("2x2")):
        xs = [float(point.split(",")[0]) for point in points.split()]
        wide.add(round(max(xs) - min(xs), 1))
    assert len(wide) == 2
    assert min(wide) / max(wide) == pytest.approx(8 / 10, abs=0.01)


def test_without_sawn_wood_nothing_is_drawn() -> None:
    found = answers(HEAD)
    assert cutting_drawings(cutting_of(found.season), found.plan.garden) == []
