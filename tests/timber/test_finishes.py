"""Paint and preservative: how much wood it is for."""

from __future__ import annotations

from tests.timber.gardens import NET, buying, line


def test_feet_are_coated_to_above_the_ground() -> None:
    # by hand: 3 posts, 4 sides of 38 mm, 18 in + 10 cm: 0.254 m2, 2.7 sq ft
    found = line(NET + "  feet coated with plant-oil preservative\n", "plant-oil preservative")
    assert "2.7 sq ft of post feet" in found.says


def test_a_painted_frame_is_painted_all_over() -> None:
    # by hand: 5 sticks of 8 ft, 4 sides of 38 mm: 1.85 m2, 20 sq ft
    assert "20 sq ft of wood" in line(NET + "  finish linseed oil\n", "linseed oil").says


def test_what_is_not_finished_wants_no_paint() -> None:
    assert not any(one.counter.startswith("paint") for one in buying(NET).lines)
    assert not any(one.counter.startswith("paint") for one in buying(NET + "  finish none\n").lines)
