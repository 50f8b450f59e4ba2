"""Nails, screws, wire, twine, panes: counted, spared, less the shed."""

from __future__ import annotations

import pytest

from tests.timber.gardens import NET, line

BOX = """cover Seed Box, cold frame
  size 8 ft 1 in x 4 ft, low side south
  back 2x12
  front 2x8
  lights 4 of 24 in x 4 ft, glass
"""


def test_three_pins_are_bought_with_one_to_spare() -> None:
    found = line(NET, "nails 20d")
    assert (found.count, found.spare, found.from_shed) == (4, 1, 0)


@pytest.mark.published
def test_a_twentypenny_nail_is_four_inches_long() -> None:
    # ASTM F1667, common nails: 20d, 4 in
    assert line(NET, "nails 20d").says == "nails 20d (4 in long)"


@pytest.mark.parametrize(("there", "bought"), [(9, 0), (4, 0), (3, 1), (1, 3)])
def test_nails_in_the_shed_are_not_bought_again(there: int, bought: int) -> None:
    found = line(NET + f"shed\n  {there} nails 20d\n", "nails 20d")
    assert (found.count, found.from_shed) == (bought, min(there, 4))


def test_nails_of_another_size_are_other_nails() -> None:
    assert line(NET + "shed\n  9 nails 16d\n", "nails 20d").from_shed == 0


def test_a_box_of_screws_is_counted_by_the_gardener() -> None:
    found = line(BOX + "shed\n  half a box of screws 3 in\n", "screws, 3 in")
    assert found.count == 0
    assert any("count them" in mind for mind in found.minds)


def test_four_lights_want_four_panes_of_their_own_size() -> None:
    found = line(BOX, "panes, glass")
    assert found.count == 4
    assert found.says.endswith("3 mm thick")
    assert found.instead.startswith("for glass, twin-wall")


def test_twine_is_counted_in_whole_feet_with_a_tenth_for_knots() -> None:
    found = line("frame Wigwam, wigwam\n  poles 6 of 20 mm round, 8 ft, 10 in down\n", "twine")
    # 2 m for the tie, and a tenth: 7.2 ft, so 8
    assert found.says == "twine, 8 ft"


def test_a_ball_of_twine_in_the_shed_is_reckoned_low() -> None:
    text = (
        "frame Wigwam, wigwam\n  poles 6 of 20 mm round, 8 ft, 10 in down\n"
        "shed\n  jute twine, 1 ball\n"
    )
    found = line(text, "twine")
    assert found.count == 0
    assert any("measure" in mind for mind in found.minds)


def test_a_roll_of_wire_is_used_as_far_as_it_goes() -> None:
    text = "frame Wires, wall wires, on Barn\n  size 2 m x 4 m\n  wires 5\nwall Barn, faces east\n"
    without = line(text, "2.5 mm wire")
    assert without.count == 1
    assert line(text + "shed\n  1 roll wire 2.5 mm, 500 m\n", "2.5 mm wire").count == 0


def test_only_the_gardeners_own_price_is_a_cost() -> None:
    assert line(NET, "nails 20d").cost is None
    assert line(NET + "yard\n  nails 20d, at 0.20\n", "nails 20d").cost == pytest.approx(0.8)
