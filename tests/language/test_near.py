"""What was most likely meant."""

from __future__ import annotations

import pytest

from plantframe.language.near import MOST, near_words, nearest, one_slip


def test_the_nearest_name_comes_first_whatever_its_capitals() -> None:
    assert nearest("lond bed", ["Low Bed", "Long Bed", "Seed Box"])[0] == "Long Bed"


def test_at_most_four_names_are_near() -> None:
    assert len(nearest("bed 0", [f"Bed {number}" for number in range(9)])) == MOST


def test_nothing_is_near_what_is_like_nothing() -> None:
    assert nearest("compost heap", ["Long Bed", "Seed Box"]) == ()
    assert near_words("zzz", ["posts", "bar"]) == ()
    assert near_words("2x2", ["2x4"]) == ()


@pytest.mark.parametrize(
    ("typed", "meant", "slip"),
    [
        ("donw", "down", True),
        ("dow", "down", True),
        ("downn", "down", True),
        ("dawn", "down", True),
        ("down", "down", False),
        ("dnwo", "down", False),
        ("up", "down", False),
        ("", "a", True),
        ("ba", "ab", True),
        ("abc", "acb", True),
    ],
)
def test_one_slip_is_one_letter_missing_added_wrong_or_swapped(
    typed: str, meant: str, slip: bool
) -> None:
    assert one_slip(typed, meant) is slip
