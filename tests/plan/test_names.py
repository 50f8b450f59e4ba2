"""Names in a plan: what they mean, and what is said of one that means nothing."""

from __future__ import annotations

import pytest

from plantframe.plan.names import (
    fitting_kinds,
    kinds,
    kinds_in_name,
    near_kinds,
    near_plants,
    plants,
)
from tests.plan.building_plans import GARDEN, built, frame_of, names_of, plan_of, slips_of


@pytest.mark.parametrize(
    ("typed", "thing"),
    [
        ("in Long Bed", "Long Bed"),
        ("in long bed", "Long Bed"),
        ("in Long\u00a0Bed", "Long Bed"),
        ("in Long  Bed", "Long Bed"),
        ("in the Long Bed", "Long Bed"),
        ("north of the shed", "shed"),
        ("5 m south of Low Bed", "Low Bed"),
        ("between Long Bed and Low Bed", "Long Bed"),
        ("over the blueberries", ""),
        ("by the gate", ""),
    ],
)
def test_a_place_finds_its_thing_whatever_the_capitals(typed: str, thing: str) -> None:
    plan = plan_of(f"{GARDEN}shed\n  6 posts\nframe Bean Net, net frame, {typed}\n")
    (spot,) = plan.frames["Bean Net"].spots
    assert (spot.thing, spot.said) == (thing, typed)


def test_the_one_hedge_there_is_may_be_called_the_hedge() -> None:
    text = (
        f"{GARDEN}hedge North Hedge, 3 m high\nframe Bean Net, net frame, 2 m south of the hedge\n"
    )
    assert plan_of(text).frames["Bean Net"].spots[0].thing == "North Hedge"


def test_a_name_that_means_nothing_names_its_nearest_with_their_lines() -> None:
    (slip,) = slips_of(f"{GARDEN}frame Bean Net, net frame, in Lond Bed\n")
    assert slip.name == "no-such-place"
    assert "Nearest: Long Bed (line 4)" in slip.says
    assert slip.candidates[0].changes[0].new == "frame Bean Net, net frame, in Long Bed"


def test_a_name_with_nothing_near_names_what_there_is() -> None:
    (slip,) = slips_of(f"{GARDEN}frame Bean Net, net frame, in Xyzzy\n")
    assert "Long Bed, Low Bed" in slip.says


def test_two_things_of_one_name_are_both_named() -> None:
    (slip,) = slips_of(f"{GARDEN}bed long bed\n")
    assert slip.name == "same-name"
    assert "the bed on line 4" in slip.says
    assert "the bed on line 6" in slip.says


@pytest.mark.parametrize(
    ("head", "short"),
    [
        ("frame Clematis Lattice on House Wall", "Clematis Lattice"),
        ("frame Bean Net in Long Bed", "Bean Net"),
        ("frame Bean Net by Low Bed", "Bean Net"),
    ],
)
def test_a_name_that_holds_another_is_most_likely_two_things(head: str, short: str) -> None:
    found = slips_of(f"{GARDEN}wall House Wall, faces east\n{head}\n")
    (slip,) = [slip for slip in found if slip.name == "two-things-in-a-name"]
    assert f"or is it “{short}”" in slip.says


def test_a_name_may_hold_a_small_word_all_the_same() -> None:
    assert "two-things-in-a-name" not in names_of(f"{GARDEN}bed Stow on the Wold\n")


@pytest.mark.parametrize(
    ("typed", "found"),
    [
        ("pole bean", ("pole bean",)),
        ("pole beans", ("pole bean",)),
        ("Pole Bean", ("pole bean",)),
        ("yellow pole bean", ("pole bean",)),
        ("tomatoes", 2),
        ("bean", 2),
        ("runer bean", ()),
        ("sweat peas", ()),  # a slip for sweet peas, and no sort of pea
        ("runnerbeans", ("runner bean",)),
        ("Sweetpeas", ("sweet pea",)),
        ("gorse", ()),
    ],
)
def test_a_plants_name_may_be_several_or_have_a_word_before_it(
    typed: str, found: tuple[str, ...] | int
) -> None:
    if isinstance(found, int):
        assert len(plants(typed)) >= found
    else:
        assert plants(typed) == found


def test_a_slip_of_a_plants_name_has_its_plant_near() -> None:
    assert near_plants("runer bean")[0] == "runner bean"


def test_a_plant_is_offered_by_one_of_its_names() -> None:
    offered = near_plants("runer bean")
    meant = [plants(name) for name in offered]
    assert len(meant) == len(set(meant))


def test_a_bean_in_a_bed_is_asked_about_and_on_a_frame_left_to_the_advice() -> None:
    assert names_of(f"{GARDEN}bed Bean Bed\n  grow bean, 10 plants\n") == ["which-plant"]
    assert frame_of("  grow bean, 10 plants\n").plantings[0].plant is None


def test_a_kind_may_be_a_synonym() -> None:
    assert kinds("bean teepee") == ("wigwam",)
    assert "wigwam" in near_kinds("bean tepe", "frame")
    assert "cold frame" in fitting_kinds("cover")
    assert "cold frame" not in fitting_kinds("fence")


def test_the_kinds_in_a_name_come_longest_first() -> None:
    assert kinds_in_name("Old Hinged Lattice by the Door", "frame")[0] == "hinged lattice"
    assert kinds_in_name("Xyzzy", "frame") == ()


def test_slips_of_names_cost_nothing_else() -> None:
    plan, slips = built(
        f"{GARDEN}frame Bean Net, net fram, in Lond Bed\n  grow runer bean, 30 plants\n  bar 2x2\n"
    )
    frame = plan.frames["Bean Net"]
    assert (frame.kind, frame.plantings[0].count) == ("", 30)
    assert frame.fact("bar") is not None
    assert {slip.name for slip in slips} == {"unknown-kind", "no-such-place", "unknown-plant"}


@pytest.mark.parametrize("joint", [" and ", "; ", " & ", " + ", "/"])
def test_two_plants_in_a_line_are_the_first_and_the_second_is_asked_about(joint: str) -> None:
    text = f"{GARDEN}frame Net, net frame\n  grow runner bean{joint}sweet pea, 12 plants\n"
    plan, slips = built(text)
    (planting,) = plan.frames["Net"].plantings
    assert planting.said == "runner bean"
    (slip,) = [slip for slip in slips if slip.name == "two-plants"]
    assert [change.new for change in slip.candidates[0].changes] == [
        "  grow runner bean, 12 plants",
        "  grow sweet pea",
    ]


def test_a_plant_whose_name_holds_an_and_is_one_plant() -> None:
    text = f"{GARDEN}frame Net, net frame\n  grow cup and saucer vine, 2 plants\n"
    plan, slips = built(text)
    assert plan.frames["Net"].plantings[0].said == "cup and saucer vine"
    assert not [slip for slip in slips if slip.name == "two-plants"]
