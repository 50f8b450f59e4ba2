"""What a plan does not say is settled from what it says, then from what is usual."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from plantframe.catalogue.facts import section_m, settle
from plantframe.catalogue.mistakes import ExpressionError
from plantframe.catalogue.reading import structure
from plantframe.catalogue.sourced import Sourced

if TYPE_CHECKING:
    from plantframe.catalogue.entries import Structure


def kind(name: str) -> Structure:
    found = structure(name)
    assert found is not None
    return found


@pytest.mark.parametrize(
    "said",
    [
        {"posts.length": 2.44, "posts.down": 0.46},
        {"posts.length": 2.44, "posts.up": 1.98},
        {"posts.down": 0.46, "posts.up": 1.98},
    ],
)
def test_two_of_length_depth_and_height_give_the_third(said: dict[str, object]) -> None:
    values = settle(kind("net frame"), said).values
    both = values["posts.up"], values["posts.down"]
    assert values["posts.length"] == pytest.approx(2.44)
    assert both == pytest.approx((1.98, 0.46))


def test_a_height_alone_takes_the_usual_depth_and_the_length_follows() -> None:
    settled = settle(kind("net frame"), {"posts.up": 1.5})
    assert settled.values["posts.length"] == pytest.approx(1.95)
    assert settled.origins["posts.up"] == "said"
    assert isinstance(settled.origins["posts.down"], Sourced)
    assert "posts.down" in settled.assumed()


def test_posts_are_bays_and_one_more_whichever_is_said() -> None:
    assert settle(kind("net frame"), {"bays.count": 4}).values["posts.count"] == 5
    assert settle(kind("net frame"), {"posts.count": 4}).values["bays.count"] == 3


def test_a_length_of_row_gives_the_bays() -> None:
    values = settle(kind("mortised fence"), {"long": 14.0, "rails.length": 2.7}).values
    assert values["bays.count"] == 6  # 2.58 m from post to post


def test_poles_and_stakes_and_canes_are_the_uprights() -> None:
    for word in ("poles", "canes", "stakes", "legs"):
        assert settle(kind("wigwam"), {f"{word}.count": 8}).values["posts.count"] == 8


def test_a_fact_that_is_one_length_is_taken_with_or_without_its_slot() -> None:
    for name in ("circle", "circle.length"):
        assert settle(kind("wigwam"), {name: 1.07}).values["circle"] == 1.07


def test_the_sides_of_a_size_fill_the_slots_their_kind_names() -> None:
    net = settle(kind("net frame"), {"net.size": (1.98, 4.88)}).values
    box = settle(kind("cold frame"), {"size.size": (2.464, 1.22)}).values
    assert (net["net.high"], net["net.long"]) == (1.98, 4.88)
    assert (box["size.long"], box["size.deep"]) == (2.464, 1.22)


def test_heights_of_wires_give_the_top_the_lowest_and_the_count() -> None:
    values = settle(kind("string drops"), {"wires.heights": (0.3, 1.68)}).values
    assert (values["wires.top"], values["wires.lowest"], values["wires.count"]) == (1.68, 0.3, 2)


def test_several_words_of_one_slot_are_each_true() -> None:
    values = settle(kind("A-frame"), {"feet.how": ("chained", "pegged")}).values
    assert values["feet.chained"] is True
    assert values["feet.pegged"] is True


@pytest.mark.parametrize(
    ("text", "section"),
    [
        ("38x89 mm", (0.038, 0.089, False)),
        ("75 mm round", (0.075, 0.075, True)),
        ("25 mm", (0.025, 0.025, False)),
    ],
)
def test_a_section_in_words_is_read(text: str, section: tuple[float, float, bool]) -> None:
    assert section_m(text) == section


def test_a_section_that_is_none_is_refused() -> None:
    with pytest.raises(ExpressionError, match="is no section"):
        section_m("thick")
    with pytest.raises(ExpressionError, match="neither a figure nor a word"):
        settle(kind("wigwam"), {"circle": object()})


def test_a_net_hung_on_poles_leaves_their_own_figures_alone() -> None:
    bare = settle(kind("wigwam"), {"circle": 1.0}).values
    with_net = settle(kind("wigwam"), {"circle": 1.0, "net.size": (1.8, 3.0)}).values
    assert {name: with_net[name] for name in bare} == dict(bare)


@pytest.mark.parametrize(
    ("name", "long", "bays", "length"),
    [("net frame", 5.0, 3, 5 / 3), ("cane wires", 9.0, 3, 3.0), ("picket fence", 10.0, 5, 2.0)],
)
def test_bays_fill_the_row_that_is_said(name: str, long: float, bays: int, length: float) -> None:
    values = settle(kind(name), {"long": long}).values
    assert values["bays.count"] == bays
    assert values["bays.length"] == pytest.approx(length)


def test_a_bay_that_is_said_is_not_made_to_fit() -> None:
    # a row of 5 m and bays of 2.4 m do not agree: that is for the advice to say
    values = settle(kind("net frame"), {"long": 5.0, "bays.length": 2.4}).values
    assert (values["bays.count"], values["bays.length"]) == (3, 2.4)


def test_rails_are_cut_to_the_bays_of_the_row_that_is_said() -> None:
    # 12 m in five bays of 2.4 m, and 12 cm more for the two ends in the mortises
    values = settle(kind("mortised fence"), {"long": 12.0}).values
    assert values["bays.count"] == 5
    assert values["rails.length"] == pytest.approx(2.52)
