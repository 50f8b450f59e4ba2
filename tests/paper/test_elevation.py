"""Front views: every kind of structure, true to scale, with the dimensions that matter."""

from __future__ import annotations

import re

import pytest

from plantframe.catalogue import reading as catalogue
from plantframe.paper.elevation import all_views, front
from plantframe.paper.frame_drawing import frame_drawing
from plantframe.paper.subject import subject_of_kind
from plantframe.paper.views import extent_of, stands_at_wall
from plantframe.season.units import Shown
from tests.paper.gardens import BED, FENCE, HEAD, KINDS, NET, subject, texts

ROOM = (190.0, 200.0)


@pytest.mark.parametrize("imperial", [False, True])
@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_of_structure_is_drawn_and_fits(kind: str, imperial: bool) -> None:
    structure = catalogue.structure(kind)
    assert structure is not None
    drawn = subject_of_kind(structure, Shown(imperial))
    assert drawn is not None
    whole = frame_drawing(drawn, ["ordinary sizes"])
    assert whole is not None
    assert whole.width_mm <= 190.0
    assert whole.height_mm <= 277.0
    svg = whole.svg(kind)
    for x in re.findall(r'<(?:line|text)[^>]* x1?="(-?[\d.]+)"', svg):
        assert -1.0 <= float(x) <= 191.0


def test_sizes_on_paper_are_those_of_the_garden_over_the_scale() -> None:
    net = subject(HEAD + BED + NET, "Bean Net")
    found = front(net, ROOM)
    assert found is not None
    drawing, scale = found
    ground = [
        line
        for line in re.findall(r"<line [^>]*>", drawing.svg("Bean Net"))
        if 'stroke-width="0.7"' in line
    ]
    ends = [float(x) for x in re.findall(r'x[12]="([\d.]+)"', ground[0])]
    # two bays of 8 ft, and 5 mm of ground shown at either side
    assert ends[1] - ends[0] - 10.0 == pytest.approx(16 * 304.8 / scale.ratio, abs=0.02)


def test_depth_height_and_spacing_stand_on_the_drawing() -> None:
    net = subject(HEAD + BED + NET, "Bean Net")
    found = front(net, ROOM)
    assert found is not None
    says = texts(found[0].svg("Bean Net"))
    # a 2x2 is 1-1/2 in thick (PS 20), so posts of 8 ft bars stand 7 ft 10-1/2 in apart
    assert {"18 in down", "6 ft 6 in", "7 ft 10½ in each", "16 ft"} <= set(says)


def test_what_is_in_the_ground_is_broken_and_what_stands_is_not() -> None:
    net = subject(HEAD + BED + NET, "Bean Net")
    found = front(net, ROOM)
    assert found is not None
    polygons = re.findall(r"<polygon [^>]*>", found[0].svg("Bean Net"))
    broken = [one for one in polygons if "stroke-dasharray" in one]
    assert len(broken) == 3  # one to a post


def test_poles_on_a_ring_get_no_spacing_that_only_the_view_makes() -> None:
    wigwam = subject(HEAD + "frame W, wigwam\n  poles 6 of 20 mm round, 2.4 m, 25 cm down\n", "W")
    found = front(wigwam, ROOM)
    assert found is not None
    assert not [one for one in texts(found[0].svg("W")) if "each" in one]


def test_a_lattice_shows_the_wall_it_stands_off_from() -> None:
    lattice = subject(
        HEAD + "wall W, faces east\nframe L, hinged lattice, on W\n  hooks 6 in\n", "L"
    )
    assert stands_at_wall(lattice)
    extent = extent_of(lattice, "side")
    assert extent is not None
    assert extent.left == 0.0
    found = all_views(lattice, ROOM)
    assert found is not None
    assert "6 in clear" in texts(found[0].svg("L"))


def test_mortises_are_marked_at_the_height_of_the_rails() -> None:
    fence = subject(HEAD + FENCE, "Rose Fence")
    whole = frame_drawing(fence, [])
    assert whole is not None
    says = " ".join(texts(whole.svg("Rose Fence")))
    assert "pencil line" in says
    assert "Each mortise is 10 cm high and 5 cm wide" in says


def test_the_hole_for_a_pin_is_as_far_from_the_end_as_the_plan_says() -> None:
    bored = NET.replace("  bar 2x2\n", "  bar 2x2\n  pins 20d, 3 cm from the end\n")
    net = subject(HEAD + bored, "Bean Net")
    whole = frame_drawing(net, [])
    assert whole is not None
    says = texts(whole.svg("Bean Net"))
    assert "1⅛ in" in says  # 3 cm to an eighth
    assert any("for a 20d nail as the pin" in one for one in says)


def test_a_drawing_names_every_part_with_its_count() -> None:
    net = subject(HEAD + BED + NET, "Bean Net")
    whole = frame_drawing(net, [])
    assert whole is not None
    says = texts(whole.svg("Bean Net"))
    assert {"3 posts, 2x2, 8 ft", "2 bars, 2x2, 8 ft", "3 pins, 20d"} <= set(says)
