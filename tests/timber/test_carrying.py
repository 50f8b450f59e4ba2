"""For the car: the longest piece and the weight."""

from __future__ import annotations

import pytest

from tests.timber.gardens import NET, YARD, buying


def test_five_sticks_weigh_what_their_volume_weighs() -> None:
    # by hand: 5 x 0.038 x 0.038 x 2.4384 m3 at 430 to 800 kg/m3
    load = buying(NET + YARD).load
    volume = 5 * 0.038**2 * 2.4384
    assert load.low_kg == pytest.approx(430 * volume)
    assert load.high_kg == pytest.approx(800 * volume)


def test_the_longest_is_the_longest_board() -> None:
    load = buying(NET + YARD).load
    assert load.longest_m == pytest.approx(2.4384)
    assert load.what == "2x2"


def test_what_rolls_up_is_not_long() -> None:
    text = NET.replace("16 ft", "60 ft") + YARD
    assert buying(text).load.longest_m < 3


def test_what_is_in_the_shed_is_not_carried() -> None:
    load = buying(NET + YARD + "shed\n  5 posts 2x2, 8 ft\n").load
    assert (load.low_kg, load.longest_m) == (0, 0)
