"""Frames, kinds and walls as supports."""

from __future__ import annotations

import pytest

from plantframe.pairing.supports import kinds, of_frame, of_kind, of_wall
from tests.pairing.gardens import season_of


@pytest.mark.parametrize("kind", kinds())
def test_every_kind_works_out_at_its_ordinary_sizes(kind: str) -> None:
    support = of_kind(kind)
    assert support is not None
    assert support.holds
    assert support.height_m


def test_a_cold_frame_is_no_support_for_climbers() -> None:
    assert "cold frame" not in kinds()
    assert of_kind("cold frame") is None


def test_a_kind_is_spoken_of_in_its_own_number() -> None:
    net, wires = of_kind("net frame"), of_kind("cane wires")
    assert net is not None
    assert wires is not None
    assert net.has == "A net frame has"
    assert wires.has == "Cane wires have"
    assert of_wall(None).the == "a bare wall"


def test_changing_a_frame_leaves_the_frame_itself_as_it_was() -> None:
    season = season_of("garden Test Row, 2027\nframe Row, net frame\n  bays 1 of 2.4 m\n")
    support = of_frame(season, "Row")
    assert support is not None
    changed = support.changed({"bays.count": 2.0, "bays.length": 1.2})
    assert changed is not None
    assert changed.worked is not None
    assert support.worked is not None
    assert changed.worked.figure("bays.length") == pytest.approx(1.2)
    assert support.worked.figure("bays.length") == pytest.approx(2.4)
