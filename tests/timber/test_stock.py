"""Old wood and its faults, and what the yard sells."""

from __future__ import annotations

import pytest

from plantframe.timber.sections import Section
from plantframe.timber.stock import usual_lengths, with_lengths
from plantframe.timber.tape import Tape
from tests.timber.gardens import YARD, wood


@pytest.mark.parametrize(
    ("line", "sound", "flawed", "useless"),
    [
        ("6 posts 2x2, 8 ft", 6, 0, 0),
        ("2 posts 2x2, 6 ft (one has a split top)", 1, 1, 0),
        ("4 posts 2x2, 6 ft (two rotten, one bent)", 1, 1, 2),
        ("3 posts 2x2, 6 ft (rotten at the foot)", 0, 0, 3),
        ("3 posts 2x2, 6 ft (not split)", 3, 0, 0),
        ("3 split posts 2x2, 6 ft", 0, 3, 0),
        ("posts 2x2, 6 ft (the straight ones)", 1, 0, 0),
        ("3 posts 2x2, 6 ft, from the pea net of 2024", 3, 0, 0),
    ],
)
def test_old_sticks_are_counted_by_their_faults(line, sound, flawed, useless) -> None:
    (old,) = wood(f"shed\n  {line}\n").shed
    assert (old.count, old.flawed, old.useless) == (sound, flawed, useless)


def test_a_trade_size_in_the_shed_is_what_it_measures() -> None:
    (old,) = wood("shed\n  3 of 2x4, 6 ft\n").shed
    assert old.section == Section(38, 89)
    assert old.length_m == pytest.approx(1.8288)


def test_wire_net_nails_and_twine_are_no_wood() -> None:
    text = (
        "shed\n  1 roll wire 2.5 mm, 50 m\n  net 5 ft x 20 ft\n  9 nails 20d\n"
        "  2 balls jute twine\n"
    )
    assert wood(text).shed == ()
    assert wood(text).unclear == ()


def test_wood_without_a_length_is_not_counted_but_told() -> None:
    assert wood("shed\n  6 posts 2x2\n").unclear == ("6 posts 2x2",)


def test_the_yards_list_keeps_lengths_and_prices() -> None:
    sold = wood(YARD).yard
    assert [(one.section, round(one.length_m, 2), one.price) for one in sold] == [
        (Section(38, 38), 2.44, 3.10),
        (Section(38, 89), 2.44, 4.60),
        (Section(38, 89), 3.05, 6.20),
    ]


def test_a_yard_that_has_other_lengths_today_keeps_the_prices_it_has() -> None:
    sold = with_lengths(wood(YARD), (3.048,)).yard
    assert [(one.section, one.price) for one in sold] == [
        (Section(38, 38), None),
        (Section(38, 89), 6.20),
    ]


def test_the_usual_lengths_are_those_of_the_tape() -> None:
    # common practice, no source
    feet = [round(one / 0.3048) for one in usual_lengths(Tape(imperial=True))]
    assert feet == [8, 10, 12, 14, 16]
    assert usual_lengths(Tape()) == (1.8, 2.4, 3.0, 3.6, 4.2, 4.8)
