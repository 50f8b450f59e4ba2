"""Structures worked out: parts, places, spans, steps, from a plan's own figures."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.catalogue.mistakes import ExpressionError
from plantframe.catalogue.reading import entry_names, material, structure
from plantframe.catalogue.workings import Worked, work

KINDS = entry_names("structure")


def worked(kind: str, **said: object) -> Worked:
    found = structure(kind)
    assert found is not None
    return work(found, {name.replace("__", "."): value for name, value in said.items()})


# -- known-good frames of the trade: common practice, no source -------------------------------


@pytest.mark.parametrize("bays", [1, 2, 5])
def test_a_row_of_bays_has_one_post_more_than_bays_and_a_bar_to_each(bays: int) -> None:
    row = worked("net frame", bays__count=bays)
    counts = {name: pieces.count for name, pieces in row.pieces.items()}
    assert (counts["post"], counts["bar"], counts["pin"]) == (bays + 1, bays, bays + 1)


def test_bars_that_lie_side_by_side_have_a_pin_at_each_end() -> None:
    row = worked("net frame", bays__count=3, bar__joint="side by side")
    assert row.pieces["pin"].count == 6


def test_an_eight_foot_bay_spans_from_pin_to_pin_a_post_less() -> None:
    bay = worked("net frame", bays__count=1, bays__length=2.438)
    assert bay.span_m == pytest.approx(2.40)
    assert worked("net frame", bays__length=2.438, prop=True).span_m == pytest.approx(1.20)


def test_two_lapped_bars_are_twice_as_thick_under_the_pin_and_halved_ones_are_not() -> None:
    # 4 in nail: through 1.5 in it bites 2.5 in, through two lapped bars only 1 in
    one, two = (
        worked("net frame", bays__count=2, bar__joint=joint).sums["under_pin"]
        for joint in ("halved", "lapped")
    )
    assert (one, two) == pytest.approx((0.038, 0.076))


def test_a_stick_on_edge_stands_and_one_laid_flat_lies() -> None:
    for lie, tall in (("on edge", 0.089), ("flat", 0.038)):
        bay = worked("net frame", bar__section="38x89 mm", bar__lie=lie)
        assert bay.figure("bar_tall") == tall


def test_one_long_bar_over_two_bays_is_one_bar() -> None:
    # fifteen feet of bar over two bays of seven
    row = worked("net frame", bays__count=2, bays__length=2.134, bar__length=4.572)
    assert row.pieces["bar"].count == 1


def test_wires_in_place_of_a_bar_carry_the_net() -> None:
    row = worked("net frame", wires__count=1, wires__heights=(1.9,))
    assert row.carries is not None
    assert row.carries.by == "wire"
    assert "bar" not in row.pieces
    assert "bar" not in {step.step.id for step in row.steps}


def test_a_net_tied_of_two_widths_wants_half_as_much_cord_again_as_the_row_is_long() -> None:
    row = worked("net frame", bays__count=2, bays__length=2.4, net__widths=2)
    assert row.pieces["net"].count == 2
    assert row.pieces["joining cord"].length_m == pytest.approx(1.5 * 4.8)
    assert "join" in {step.step.id for step in row.steps}


def test_a_wigwam_of_eight_foot_canes_is_tied_at_1_88_m() -> None:
    # sum: 2.4 m canes, 30 cm in the soil, tied 15 cm down, feet 0.5 m out: a right-angled triangle
    tied = worked("wigwam", posts__length=2.4, posts__down=0.30, circle=1.0)
    assert tied.height_m == pytest.approx(1.88, abs=0.005)
    assert tied.standing.area_m2 == pytest.approx(2 / 3 * 1.0 * 1.88, abs=0.005)
    assert tied.standing.shares == 6


def test_a_cold_frame_box_has_fourteen_corner_screws_and_its_strips_go_round() -> None:
    box = worked("cold frame", size__size=(2.464, 1.22))
    assert box.pieces["corner screw"].count == 14
    strips = sum(
        pieces.length_m * pieces.count
        for name, pieces in box.pieces.items()
        if "foot strip" in name and pieces.length_m is not None
    )
    assert strips == pytest.approx(7.2, abs=0.15)  # 24 ft of scrap in the trade's count


def test_a_cold_frame_is_made_to_its_lights() -> None:
    box = worked("cold frame", lights__count=4, lights__wide=0.6096)
    assert box.ground_m[0] == pytest.approx(4 * 0.6096 + 0.012)
    assert box.pieces["brace"].count == 1
    assert worked("cold frame", lights__count=2).pieces.keys().isdisjoint({"brace"})


def test_a_box_that_is_to_have_no_brace_has_none_whatever_its_length() -> None:
    box = worked("cold frame", lights__count=4, brace__none="none")
    assert "brace" not in box.pieces
    assert "brace" not in {step.step.id for step in box.steps}


def test_a_cold_frame_of_2x12_and_2x8_falls_four_inches() -> None:
    box = worked("cold frame", back__section="38x285.75 mm", front__section="38x184.15 mm")
    assert box.sums["fall"] == pytest.approx(4 * 0.0254, abs=1e-6)


@pytest.mark.parametrize(
    ("wide", "high", "arc", "rod", "cover"),
    [(1.2, 0.5, 1.73, 2.13, 2.33), (1.2, 0.6, 1.88, 2.28, 2.48), (0.9, 0.5, 1.49, 1.89, 2.09)],
)
def test_hoops_and_covers_are_cut_to_half_an_ellipse(
    wide: float, high: float, arc: float, rod: float, cover: float
) -> None:
    # sums by hand: half an ellipse, 20 cm a foot, 30 cm a skirt
    tunnel = worked("low tunnel", hoops__wide=wide, hoops__up=high)
    assert tunnel.sums["arc"] == pytest.approx(arc, abs=0.006)
    assert tunnel.pieces["hoop"].length_m == pytest.approx(rod, abs=0.006)
    assert tunnel.pieces["cover"].breadth_m == pytest.approx(cover, abs=0.006)


def test_a_mortised_fence_counts_a_rail_length_of_wind_to_a_post() -> None:
    fence = worked("mortised fence", rails__length=2.7, rails__count=2, bays__count=4)
    assert fence.standing.metres_m == pytest.approx(2.7)
    assert fence.pieces["rail"].count == 8


def test_paired_poles_are_two_to_a_place() -> None:
    fence = worked("paired-pole fence", bays__count=4)
    assert fence.pieces["pole"].count == 10
    assert fence.standing.shares == 2


@pytest.mark.parametrize(
    ("kind", "said", "area_m2", "push_at_m", "shares"),
    [  # sums by hand: height times metres of row a post answers for, pushed 0.55 of the way up
        ("net frame", {"bays.count": 2, "bays.length": 2.44, "posts.up": 1.98}, 4.83, 1.09, 1),
        ("net frame", {"bays.count": 1, "bays.length": 2.44, "posts.up": 1.98}, 2.42, 1.09, 1),
        ("stake", {"posts.up": 1.5}, 0.675, 0.825, 1),
        ("stakes and twine", {"posts.up": 1.5, "spacing": 1.0}, 1.5, 0.825, 1),
        ("crossed row", {"tie.height": 1.9}, 1.9, 1.045, 8),
        ("obelisk", {"posts.up": 1.8}, 0.72, 0.99, 4),
        ("espalier row", {"bays.length": 3.5, "posts.up": 1.8}, 6.3, 0.99, 1),
        ("grape wires", {"bays.length": 6, "posts.up": 1.8, "wires.lowest": 0.9}, 5.4, 1.395, 1),
        ("paired-pole fence", {"bays.length": 2.4, "posts.up": 1.0}, 2.4, 0.55, 2),
        ("kiwi T-bar", {"bays.length": 4, "posts.up": 1.8}, 2.4, 1.83, 1),
        ("hop pole", {"posts.length": 5, "posts.down": 1.1}, 2.34, 2.145, 1),
    ],
)
def test_the_wind_finds_as_many_leaves_as_stand_there(
    kind: str, said: dict[str, object], area_m2: float, push_at_m: float, shares: float
) -> None:
    found = structure(kind)
    assert found is not None
    standing = work(found, said).standing
    middle = standing.leafy_from_m + 0.55 * (standing.leafy_to_m - standing.leafy_from_m)
    assert standing.area_m2 == pytest.approx(area_m2, rel=0.01)
    assert middle == pytest.approx(push_at_m, rel=0.01)
    assert standing.shares == shares


def test_a_tent_with_sides_and_feet_of_four_feet_is_three_and_a_half_high() -> None:
    # sum by hand: sides of 4 ft, feet 4 ft apart, so the height is the root of 16 less 4
    tent = worked("A-frame", panels__high=4 * 0.3048, feet__apart=4 * 0.3048)
    assert tent.height_m / 0.3048 == pytest.approx(3.46, abs=0.01)


# -- published designs ------------------------------------------------------------------------


@pytest.mark.published
def test_a_cage_of_five_feet_of_mesh_is_nineteen_inches_across() -> None:
    # Tomato trellising, consumer quick reference, NC State Extension: a cage from 5 ft of mesh.
    # Build your own cages, Kansas State University: 6.5 ft of mesh, 2 ft across.
    for feet, across_in, slack_in in ((5, 19, 0.5), (6.5, 24, 1)):
        cage = worked("wire cage", cages__length=feet * 0.3048)
        assert cage.figure("cages.across") / 0.0254 == pytest.approx(across_in, abs=slack_in)


@pytest.mark.published
def test_a_three_foot_bed_takes_hoops_of_76_inches_at_18_inches_high() -> None:
    # Making inexpensive row covers with low tunnels, Mother Earth News: 76 to 80 in for 3 ft beds
    tunnel = worked("low tunnel", hoops__wide=0.9144, hoops__up=0.4572)
    length = tunnel.pieces["hoop"].length_m
    assert length is not None
    assert 72 <= length / 0.0254 <= 80


# -- every kind -------------------------------------------------------------------------------


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_has_pieces_to_see_and_steps_to_follow(kind: str) -> None:
    found = worked(kind)
    assert found.pieces
    assert found.steps
    assert any(pieces.places for pieces in found.pieces.values())


@pytest.mark.parametrize("kind", KINDS)
def test_every_piece_stands_within_the_frame_it_belongs_to(kind: str) -> None:
    found = worked(kind)
    longest = max(found.row_m, *found.ground_m, found.height_m, 1.0)
    for pieces in found.pieces.values():
        for place in pieces.places:
            across = (*place.x, *place.y)
            assert all(-longest - 1.0 <= one <= 2 * longest + 1.0 for one in across), (
                pieces.part.name,
                place,
            )


@pytest.mark.parametrize("kind", KINDS)
def test_uprights_reach_from_their_depth_to_their_height(kind: str) -> None:
    found = worked(kind)
    by = found.structure.stands.by
    if not by:
        assert found.standing.down_m >= 0
        return
    down, up = found.figure(f"{by}.down"), found.height_m
    lowest = min(one.y[0] for p in found.pieces.values() for one in p.places if one.view == "front")
    assert lowest <= -down + 0.01
    assert up > 0


@pytest.mark.parametrize("kind", KINDS)
def test_every_step_left_in_comes_after_steps_that_are_left_in(kind: str) -> None:
    ids = [step.step.id for step in worked(kind).steps]
    for step in worked(kind).steps:
        assert set(step.step.after) <= set(ids)


@pytest.mark.parametrize("kind", KINDS)
def test_a_way_for_one_person_stands_only_with_work_for_more(kind: str) -> None:
    found = structure(kind)
    assert found is not None
    for step in (*found.steps, *found.down):
        assert not step.alone or step.hands > 1, step.id


@pytest.mark.parametrize("kind", KINDS)
def test_every_wood_an_entry_takes_for_granted_is_a_material(kind: str) -> None:
    for pieces in worked(kind).pieces.values():
        if pieces.wood:
            assert material(pieces.wood) is not None, pieces.wood


@pytest.mark.parametrize("kind", KINDS)
def test_digging_and_driving_more_than_a_hand_deep_names_what_lies_buried(kind: str) -> None:
    found = worked(kind)
    digs = found.standing.down_m > 0.30 and found.structure.name != "tub trellis"
    kinds = {danger.kind for danger in found.structure.dangers}
    assert not digs or "services" in kinds or kind == "raised bed frame"


@given(st.sampled_from(KINDS), st.integers(1, 9), st.floats(0.5, 4.0), st.floats(0.2, 1.2))
def test_any_ordinary_figures_give_pieces_or_a_plain_refusal(
    kind: str, bays: int, length: float, down: float
) -> None:
    said = {"bays.count": bays, "bays.length": length, "posts.down": down, "posts.length": 2.4}
    found = structure(kind)
    assert found is not None
    try:
        pieces = work(found, said).pieces
    except ExpressionError:
        pieces = {}
    assert all(one.count > 0 for one in pieces.values())


@given(st.integers(1, 12))
def test_more_bays_never_need_less_wood_nor_less_time(bays: int) -> None:
    def wood(count: int) -> tuple[float, float]:
        row = worked("net frame", bays__count=count)
        metres = sum(sum(one.lengths_m) for one in row.pieces.values() if one.part.of == "wood")
        return metres, sum(step.minutes[0] for step in row.steps if step.minutes)

    assert wood(bays) < wood(bays + 1)
