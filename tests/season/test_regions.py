"""A garden's region against the parts of the world that printed lists speak of."""

from __future__ import annotations

import pytest

from plantframe.season.regions import lies_in, may_lie_in

INSIDE = [
    ("Vermont", "Vermont"),
    ("Fold End, Vermont", "eastern United States"),
    ("Ohio", "United States"),
    ("Ohio", "North America"),
    ("Oregon", "western North America"),
    ("England", "Europe"),
    ("France", "European Union"),
    ("West Virginia", "mid-Atlantic states"),
]
OUTSIDE = [
    ("England", "European Union"),
    ("West Virginia", "Virginia"),
    ("New South Wales", "Wales"),
    ("Ohio", "eastern United States"),
    ("Victoria", "United States"),
]


@pytest.mark.parametrize(("region", "part"), INSIDE)
def test_a_state_lies_in_its_part_of_the_world(region: str, part: str) -> None:
    assert lies_in(region, part)


@pytest.mark.parametrize(("region", "part"), OUTSIDE)
def test_a_state_lies_in_no_other_part(region: str, part: str) -> None:
    assert not lies_in(region, part)


def test_a_garden_across_the_ocean_need_not_say_which_state_it_is_in() -> None:
    assert not may_lie_in(52.0, -1.0, "Vermont")
    assert may_lie_in(44.0, -73.0, "Vermont")
    assert may_lie_in(52.0, -1.0, "England")
    assert not may_lie_in(-37.0, 145.0, "North Carolina")
    assert may_lie_in(None, None, "Vermont")


def test_gardens_at_the_edge_of_a_part_of_the_world_are_still_in_it() -> None:
    assert may_lie_in(64.1, -21.9, "Europe")  # Reykjavik
    assert may_lie_in(55.8, 43.0, "Europe")  # east of Moscow
    assert not may_lie_in(40.4, 49.9, "Europe")  # Baku
    assert not may_lie_in(0.3, 32.6, "Australia")  # Kampala, just north of the line
    assert may_lie_in(-41.3, 174.8, "New Zealand")
    assert not may_lie_in(-33.9, 18.4, "England")
