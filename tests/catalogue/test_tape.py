"""Assumed lengths in the measure of the garden."""

from __future__ import annotations

import pytest

from plantframe.catalogue.reading import structure
from plantframe.catalogue.tape import FEET, METRES, rounded_m
from plantframe.catalogue.workings import work

FOOT = 0.3048


@pytest.mark.parametrize(
    ("metres", "feet"),
    [(2.4, 8), (2.44, 8), (1.8, 6), (1.2, 4), (0.45, 1.5), (2.0, 6.5), (3.0, 10), (0.15, 0.5)],
)
def test_whoever_works_in_feet_takes_the_round_foot_beside_a_metric_length(
    metres: float, feet: float
) -> None:
    assert rounded_m(metres, FEET) == pytest.approx(feet * FOOT)


@pytest.mark.parametrize(
    ("metres", "round_m"),
    [
        (2.44, 2.4),
        (1.83, 1.8),
        (1.22, 1.2),
        (0.61, 0.6),
        (2.45, 2.45),
        (0.75, 0.75),
        (0.038, 0.038),
    ],
)
def test_whoever_works_in_metres_takes_no_converted_foot(metres: float, round_m: float) -> None:
    assert rounded_m(metres, METRES) == pytest.approx(round_m)


@pytest.mark.parametrize("measure", [FEET, METRES])
@pytest.mark.parametrize("millimetres", range(20, 6000, 7))
def test_a_length_is_made_rounder_by_less_than_a_twenty_fifth(
    millimetres: int, measure: str
) -> None:
    metres = millimetres / 1000
    assert abs(rounded_m(metres, measure) - metres) <= metres / 25


def test_a_net_frame_of_which_nothing_is_said_is_cut_from_the_boards_that_are_sold() -> None:
    """A 2x2 is sold in 8 ft (PS 20 sizes, common lengths) and in 2.4 m (common practice)."""
    entry = structure("net frame")
    assert entry is not None
    assert work(entry, {}, FEET).facts.values["posts.length"] == pytest.approx(8 * FOOT)
    assert work(entry, {}, METRES).facts.values["posts.length"] == pytest.approx(2.4)


def test_what_the_plan_says_is_never_made_rounder() -> None:
    entry = structure("net frame")
    assert entry is not None
    assert work(entry, {"posts.length": 2.44}, METRES).facts.values["posts.length"] == 2.44
