"""Where the posts go, and how to know it is true: the sums are done here by hand."""

from __future__ import annotations

from plantframe.catalogue import reading as catalogue
from plantframe.paper.pegs import pegs_of, plumb_row, ring_m
from plantframe.paper.squareness import checks_of
from plantframe.paper.subject import Subject, subject_of_kind
from plantframe.season.units import Shown
from tests.paper.gardens import BED, HEAD, NET, subject


def kind(name: str) -> Subject:
    structure = catalogue.structure(name)
    assert structure is not None
    found = subject_of_kind(structure, Shown())
    assert found is not None
    return found


def test_posts_of_a_row_are_measured_from_both_ends() -> None:
    pegs = pegs_of(subject(HEAD + BED + NET, "Bean Net"))
    assert pegs is not None
    assert pegs.rows == (
        ("1", "here", "15 ft 9 in"),
        ("2", "7 ft 10½ in", "7 ft 10½ in"),
        ("3", "15 ft 9 in", "here"),
    )


def test_a_cage_of_4_80_by_3_60_has_6_m_across_its_corners() -> None:
    # 3-4-5 twice over: 3.6, 4.8, 6.0
    pegs = pegs_of(kind("fruit cage"))
    assert pegs is not None
    assert pegs.rows[2] == ("3", "3.6 m", "6 m")
    assert pegs.rows[3] == ("4", "6 m", "3.6 m")
    assert pegs.check == "corner to corner 6 m, both ways alike"
    assert "Diagonals on the ground: 6 m both ways, within 1 cm" in checks_of(kind("fruit cage"))


def test_six_poles_stand_as_far_apart_as_half_the_ring() -> None:
    # the side of a six-sided figure is the radius of the ring round it
    pegs = pegs_of(kind("wigwam"))
    assert pegs is not None
    assert [row[1] for row in pegs.rows] == ["50 cm", "50 cm"]


def test_three_poles_stand_at_half_the_root_of_three_of_the_ring() -> None:
    # 0.9 m × sin 60° = 0.779 m, to 5 mm
    pegs = pegs_of(kind("tripod"))
    assert pegs is not None
    assert pegs.rows[1][1] == "78 cm"


def test_a_bay_is_measured_from_a_ground_line_to_the_next_head() -> None:
    # √(94.5² + 78²) in = 122.5 in
    checks = checks_of(subject(HEAD + BED + NET, "Bean Net"))
    assert "10 ft 2½ in both ways, within ½ in" in checks[0]


def test_a_ring_of_upright_stakes_is_no_ring_of_leaning_poles() -> None:
    assert ring_m(kind("corral")) is None
    assert ring_m(kind("wigwam")) is not None


def test_cloth_on_the_ground_has_no_pegs_of_its_own() -> None:
    assert pegs_of(kind("row cover")) is None
    assert checks_of(kind("row cover")) == ()


def test_a_prop_under_a_bar_and_a_brace_at_an_end_are_no_posts_to_set_out() -> None:
    propped = subject(
        HEAD
        + "frame Long Net, net frame\n  bays 3 of 5 ft\n  posts 2x4, 9 ft, 24 in down\n  prop\n",
        "Long Net",
    )
    braced = subject(HEAD + "frame Love Apples, stakes and twine, 13 ft long\n", "Love Apples")
    assert len(plumb_row(propped)) == 4  # posts = bays + 1
    assert "prop" in propped.worked.pieces
    assert len(plumb_row(braced)) == braced.figure("posts.count")
    assert "end brace" in braced.worked.pieces
