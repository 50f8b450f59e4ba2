"""What is offered for posts in the wind and for shallow ones: sizes, heights, depths, stays."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

import pytest

from plantframe.advice import posts
from plantframe.answers.answers import answers_to

if TYPE_CHECKING:
    from plantframe.season.frames import WorkedFrame

TODAY = date(2026, 11, 25)
FENCE = """\
garden Fold End, 2027
  place 52 N, 1 W
  soil firm loam
  lines marked 2 March
fence Rose Fence, mortised fence
  bays 4
  posts {posts}
  rails 2 of 3 in round, 9 ft
  grow climbing rose, 5 plants
"""
NET = """\
garden Long Paddock, 2027
  place 52 N, 1 W
  soil firm loam
  lines marked 2 March
bed Strip, 1.2 m x 12 m
frame Net, net frame, in Strip
  bays 2 of 2.4 m
  posts {posts}
  bar 50x50 mm
  net 1.8 m x 5 m, mesh 15 cm
  stays 2, in line with the row
  grow climbing squash, 3 plants, sow 24 May
"""


def fence(line: str = "4 in round, 6 ft, 18 in down") -> WorkedFrame:
    return answers_to(FENCE.format(posts=line), TODAY).season.frames["Rose Fence"]


def net(line: str = "50x50 mm, 2.5 m, 50 cm down") -> WorkedFrame:
    return answers_to(NET.format(posts=line), TODAY).season.frames["Net"]


def test_the_same_post_six_inches_deeper_stands_six_inches_lower() -> None:
    # 6 ft in all: 24 in down leaves 4 ft
    (edit,) = posts.sunk(fence(), 0.6096, least_up_m=1.2)
    assert edit.says.endswith("(the same posts 24 in down, 4 ft standing)")


def test_a_post_is_not_sunk_below_what_must_stand() -> None:
    assert not list(posts.sunk(fence(), 0.6096, least_up_m=1.3))


def test_deeper_means_deeper_than_it_is_and_no_deeper_than_a_bar_digs() -> None:
    says = [edit.says for edit in posts.deeper(fence(), 0.4572, 0.6096, 0.9, 1.0)]
    assert ["24 in" in says[0], "35 in" in says[1], len(says)] == [True, True, 2]


# The strength of a square stick goes with the cube of its side, of a round one with that of its
# diameter: 75 mm is 3.375 times 50 mm, 100 mm 8 times; 3 in is 1.728 times 2½ in, 4 in 4.096 times.
# The wind takes a 2x4 as likely by its flat: 89 x 38 x 38 against 38 x 38 x 38, 2.34 times a 2x2;
# a 4x4 12.85 times.
SQUARE, ROUND, THIN = "50x50 mm, 2.5 m, 50 cm down", "50 mm round, 2.5 m, 50 cm down", "2x2, 6 ft"
SLIGHT, POLE = "40x40 mm, 2.5 m, 50 cm down", "2½ in round, 6 ft, 18 in down"


@pytest.mark.parametrize(
    ("line", "times", "sizes"),
    [
        (SQUARE, 1.2, ["75x75 mm", "100x100 mm"]),
        (SLIGHT, 1.9, ["50x50 mm", "75x75 mm"]),  # 50 mm is 1.95 times 40 mm
        (SLIGHT, 2.0, ["75x75 mm", "100x100 mm"]),
        (SQUARE, 3.3, ["75x75 mm", "100x100 mm"]),
        (SQUARE, 3.45, ["100x100 mm"]),
        (SQUARE, 7.9, ["100x100 mm"]),
        (SQUARE, 8.1, []),
        (ROUND, 3.3, ["75 mm round", "100 mm round"]),
        (ROUND, 3.45, ["100 mm round"]),
        (ROUND, 7.9, ["100 mm round"]),
        (ROUND, 8.1, []),
        (THIN, 2.2, ["2x4", "4x4"]),
        (THIN, 2.5, ["4x4"]),
        (THIN, 12.6, ["4x4"]),
        (THIN, 13.0, []),
        (POLE, 1.7, ["3 in round", "4 in round"]),
        (POLE, 1.8, ["4 in round"]),
        (POLE, 4.0, ["4 in round"]),
        (POLE, 4.2, []),
    ],
)
def test_the_next_sizes_that_are_strong_enough_are_offered(
    line: str, times: float, sizes: list[str]
) -> None:
    frame = net(line) if " mm" in line else fence(line)
    assert [e.says.split(",")[0].removeprefix("posts ") for e in posts.thicker(frame, times)] == (
        sizes
    )


def test_the_push_at_the_ground_falls_with_the_square_of_the_height() -> None:
    # 2 m standing; the half of the push is 2 m / sqrt 2 = 1.41 m, to the 5 cm below
    (edit,) = posts.lower(net(), 0.5)
    assert edit.says.endswith("(1.4 m standing)")


def test_a_net_is_not_made_lower_than_four_feet() -> None:
    (edit,) = posts.lower(net(), 0.36)  # 0.6 of 2 m
    assert edit.says.endswith("(1.2 m standing)")
    assert not list(posts.lower(net(), 0.33))  # 1.15 m


def test_stays_in_line_stay_and_two_a_post_come_to_them() -> None:
    # three posts, two to each, and the two there are
    (edit,) = posts.stayed(net())
    assert edit.says.startswith("stays 8, both ways")
