"""What a plant brings to a pairing."""

from __future__ import annotations

import pytest

from plantframe.pairing.climber import Climber
from plantframe.season.entries import entry_of


def climber(name: str, leaders: int | None = None) -> Climber:
    entry = entry_of(name)
    assert entry is not None
    return Climber(entry, entry.name, leaders)


def test_two_leaders_weigh_more_than_one() -> None:
    one, two = climber("tall tomato", 1).wet_kg_per_m, climber("tall tomato", 2).wet_kg_per_m
    assert one is not None
    assert two is not None
    assert two.middle > one.middle


def test_the_least_height_is_the_lowest_that_anybody_prints() -> None:
    # runner bean: print starts at 10 ft, common practice at 2.4 m
    assert climber("runner bean").least_height_m == pytest.approx(2.4)


def test_only_what_keeps_its_wood_grows_heavier_year_by_year() -> None:
    for name, keeps in (
        ("pole bean", False),
        ("late clematis", False),
        ("mountain clematis", True),
        ("climbing rose", True),
        ("summer raspberry", False),
    ):
        assert climber(name).keeps_stems is keeps, name


def test_lettuce_wants_no_frame_and_a_delphinium_its_canes() -> None:
    assert climber("lettuce").unsupported
    assert not climber("delphinium").unsupported
    assert climber("delphinium").propped
