"""Beds, walls, hedges, trees, paths and the house."""

from __future__ import annotations

import pytest

from tests.plan.building_plans import GARDEN, names_of, plan_of, slips_of


def test_a_bed_has_its_size_its_run_its_sun_and_soil() -> None:
    bed = plan_of(
        f"{GARDEN}bed Bed 3, 4' x 12', runs N-S\n  sun half\n  soil sand\n  raised 30 cm\n"
    ).beds["Bed 3"]
    assert bed.width_m == pytest.approx(1.2192)
    assert bed.length_m == pytest.approx(3.6576)
    assert (bed.runs, bed.sun, bed.sun_h, bed.soil, bed.raised_m) == (
        *("north-south", "half", (4.0, 6.0), "loose sand", 0.3),
    )


def test_a_bed_may_give_its_sides_by_name() -> None:
    bed = plan_of(f"{GARDEN}border Roses, 6 m long, 90 cm wide\n").beds["Roses"]
    assert (bed.word, bed.length_m, bed.width_m) == ("border", 6.0, 0.9)


def test_the_height_of_a_bed_is_how_far_it_is_raised() -> None:
    plan = plan_of(f"{GARDEN}bed Bed 3, 4' by 8', 10 in high, in full sun\n")
    assert plan.beds["Bed 3"].raised_m == pytest.approx(0.254)
    assert plan.beds["Bed 3"].sun_h == (8.0, 10.0)


def test_a_bed_of_no_size_has_none() -> None:
    bed = plan_of(GARDEN).beds["Low Bed"]
    assert (bed.length_m, bed.width_m, bed.sun_h) == (None, None, None)


def test_a_wall_faces_somewhere_and_is_made_of_something() -> None:
    wall = plan_of(
        f"{GARDEN}wall House Wall, faces east, shingles\n"
        "  eaves 10 ft, 2 ft out\n  painted 2022\n  sun morning\n"
    ).things["House Wall"]
    assert (wall.faces, wall.surface, wall.painted) == ("east", "shingles", 2022)
    assert wall.eaves_m == pytest.approx(3.048)
    assert wall.overhang_m == pytest.approx(0.6096)


def test_a_wall_of_painted_brick_is_not_painted_in_a_year() -> None:
    wall = plan_of(f"{GARDEN}wall House Wall, painted brick, faces east\n").things["House Wall"]
    assert (wall.surface, wall.painted) == ("painted brick", None)


@pytest.mark.parametrize("name", ["West Wall", "west wall", "Western Wall"])
def test_a_west_wall_is_on_the_west_side_or_faces_west(name: str) -> None:
    (slip,) = slips_of(f"{GARDEN}wall {name}\n")
    assert slip.name == "which-wall"
    assert [edit.changes[0].new for edit in slip.candidates] == [
        f"wall {name}, faces west",
        f"wall {name}, on the west side",
    ]


@pytest.mark.parametrize("more", [", faces west", ", on the west side", ", faces east"])
def test_a_west_wall_that_says_which_is_not_asked_about(more: str) -> None:
    assert names_of(f"{GARDEN}wall West Wall{more}\n") == []


def test_a_wall_that_nobody_declared_is_asked_about_by_its_side() -> None:
    assert names_of(f"{GARDEN}want clematis, on the west wall\n")[-1] == "which-wall"


def test_hedges_trees_and_paths_have_their_measures() -> None:
    things = plan_of(
        f"{GARDEN}hedge Holly Hedge, 3 m high, 1 m wide, 5 m south of Long Bed\n"
        "tree Old Pear, 6 m tall, 4 m across\n"
        "path Main Path, 90 cm wide, east of Long Bed\n"
        "house, 6 m high\n"
    ).things
    assert (things["Holly Hedge"].high_m, things["Holly Hedge"].wide_m) == (3.0, 1.0)
    assert things["Holly Hedge"].spots[0].distance_m == 5.0
    assert (things["Old Pear"].high_m, things["Old Pear"].wide_m) == (6.0, 4.0)
    assert things["Main Path"].wide_m == 0.9
    assert things["house"].high_m == 6.0


def test_jobs_in_a_bed_are_marked_there() -> None:
    bed = plan_of(f"{GARDEN}bed Bed 3\n  done dig it over, 2 March\n").beds["Bed 3"]
    assert bed.marks[0].job == "dig it over"
