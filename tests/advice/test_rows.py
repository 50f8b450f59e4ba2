"""How many rows a frame is planted in."""

from __future__ import annotations

from datetime import date

from plantframe.advice.rows import is_row, rows
from plantframe.answers.answers import answers_to

PLAN = """\
garden Fold End, 2027
  place 52 N, 1 W
  lines marked 2 March
bed East Bed, 1.2 m x 8 m
frame Tent, A-frame, in East Bed
  panels 2 of 1.2 m x 1.6 m
  feet 1 m apart, chained, pegged
  grow cucumber, 5 plants, plant out 10 June
frame Pea Net, net frame, in East Bed
  bays 2 of 1.8 m
  posts 38x38 mm, 2.4 m, 45 cm down
  bar 38x38 mm
  grow tall pea, 60 plants
frame Whatnot, gantry
  posts 2 of 38x38 mm
"""


def test_a_tent_has_two_rows_a_net_one_and_what_nobody_knows_one() -> None:
    frames = answers_to(PLAN, date(2026, 11, 25)).season.frames
    assert {name: rows(frame) for name, frame in frames.items()} == {
        "Tent": 2,
        "Pea Net": 1,
        "Whatnot": 1,
    }
    assert is_row(frames["Pea Net"])
