"""What a gardener designs is drawn by its pieces: how many, how long, in which order."""

from __future__ import annotations

import re
from datetime import date

import pytest

from plantframe.answers.answers import answers_to
from plantframe.paper.pieces_drawing import pieces_drawing

PLAN = """\
garden Sorrel Row, 2027
  place 52 N, 1 W
frame Bean Bridge, own design
  piece 4 of 50x50 mm, 1.9 m
  piece 2 of 50x50 mm, 95 cm
  step cut the pieces
  step join the pieces after cut the pieces
frame Bare Idea, own design
"""


def drawn(name: str) -> str:
    answers = answers_to(PLAN, date(2027, 3, 10))
    frame = answers.season.frames[name]
    drawing = pieces_drawing(answers.season, frame, ["under its name"], garden_imperial=False)
    return drawing.svg(name) if drawing is not None else ""


def test_each_piece_stands_there_with_its_number_size_and_length() -> None:
    svg = drawn("Bean Bridge")
    assert "piece 1: 4 of 50x50 mm, 1.9 m" in svg
    assert "piece 2: 2 of 50x50 mm, 95 cm" in svg
    assert "join the pieces (after: cut the pieces)" in svg


def test_a_piece_half_as_long_is_drawn_half_as_long() -> None:
    boxes = re.findall(r'<polygon points="([\d.]+),[\d.]+ ([\d.]+),', drawn("Bean Bridge"))
    long, short = (float(end) - float(start) for start, end in boxes)
    assert long == pytest.approx(2 * short, abs=0.05)


def test_a_design_without_pieces_has_no_drawing() -> None:
    assert drawn("Bare Idea") == ""
