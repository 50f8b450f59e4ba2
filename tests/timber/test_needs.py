"""What frames want: every part of what is to be built, nothing of what stands."""

from __future__ import annotations

from plantframe.timber.sections import Section
from tests.timber.gardens import NET, needs


def test_a_row_of_two_bays_wants_three_posts_two_bars_three_pins_and_a_net() -> None:
    found = needs(NET)
    assert [(one.part, one.count) for one in found.sticks] == [("post", 3), ("bar", 2)]
    assert {one.section for one in found.sticks} == {Section(38, 38)}
    assert [(one.part, one.count) for one in found.goods] == [("pin", 3), ("net", 1)]


def test_posts_and_bars_must_be_sound() -> None:
    assert all(one.sound for one in needs(NET).sticks)


def test_a_frame_that_stands_wants_nothing() -> None:
    found = needs(NET + "  built 2024\n")
    assert (found.sticks, found.goods, found.standing) == ((), (), ("Bean Net",))


def test_a_builders_frame_is_left_out_and_says_so() -> None:
    found = needs("frame Walk, pergola\n  long 4 m\n")
    assert found.sticks == ()
    assert found.left_out[0].frame == "Walk"
    assert "builder" in found.left_out[0].because


def test_a_frame_of_no_known_kind_is_left_out_and_says_so() -> None:
    found = needs("frame Thing, contraption\n  posts 2x2, 8 ft\n")
    assert "kind" in found.left_out[0].because


def test_the_gardeners_own_pieces_are_wanted() -> None:
    found = needs(
        "frame Bean Bridge, own design\n  piece 4 of 2x2, 1.9 m\n  piece 2 of 2x4 cedar, 6 ft\n"
    )
    assert [(one.count, one.section, one.wood) for one in found.sticks] == [
        (4, Section(38, 38), "softwood"),
        (2, Section(38, 89), "cedar"),
    ]


def test_own_pieces_that_are_round_are_poles() -> None:
    found = needs("frame Arch, own design\n  piece 6 of 20 mm round, 2.4 m\n")
    assert [(one.count, one.length_m, one.wood) for one in found.poles] == [(6, 2.4, "bamboo")]


def test_an_own_design_without_pieces_is_told_how_to_write_one() -> None:
    found = needs("frame Arch, own design\n")
    assert "piece 4 of 2x2" in found.left_out[0].because


def test_poles_of_a_wigwam_are_canes_and_not_sawn() -> None:
    found = needs("frame Wigwam, wigwam\n  poles 6 of 20 mm round, 2.4 m, 25 cm down\n")
    assert found.sticks == ()
    assert [(one.part, one.count, one.wood) for one in found.poles] == [("pole", 6, "bamboo")]


def test_only_the_frames_that_are_named_are_counted() -> None:
    from plantframe.timber.needs import needs_of
    from tests.timber.gardens import season

    two = season(NET + NET.replace("Bean Net", "Pea Net"))
    assert {one.frame for one in needs_of(two, frozenset({"Pea Net"})).sticks} == {"Pea Net"}


def test_the_wood_a_plan_names_is_the_wood_that_is_asked_for() -> None:
    found = needs(NET.replace("6 ft 6 in up", "6 ft 6 in up, cedar"))
    assert {one.wood for one in found.sticks} == {"cedar"}
    assert found.sticks[0].wood_said


def test_nails_and_screws_of_the_gardeners_own_design_are_bought_too() -> None:
    found = needs(
        "frame Bean Bridge, own design\n  piece 2 of 2x2, 6 ft\n  pins 8 of 20d\n"
        "  screws 12 of 3 in\n"
    )
    goods = {one.of: (one.count, one.size) for one in found.goods}
    assert goods["nail"] == (8, "20d")
    assert goods["screw"][0] == 12


def test_a_slip_of_the_keys_is_left_out_with_its_figure_and_the_rest_is_listed() -> None:
    text = (
        NET
        + "frame Far Net, net frame\n  bays 999999 of 8 ft\n"
        + ("frame Own, own design\n  piece 99999999 of 2x2, 3 ft\n")
    )
    found = needs(text)
    assert {one.frame for one in found.left_out} == {"Far Net", "Own"}
    assert "1,000,000" in next(one.because for one in found.left_out if one.frame == "Far Net")
    assert {one.frame for one in found.sticks} == {"Bean Net"}


def test_steel_posts_are_bought_as_steel_and_not_cut_in_the_wood() -> None:
    found = needs(
        "fence Hare Fence, animal fence\n  bays 2 of 8 ft\n  posts steel T, 5 ft, 24 in down\n"
    )
    assert found.poles == ()
    posts = [one for one in found.goods if one.of == "steel"]
    assert sum(one.count for one in posts) == 3  # two bays, three posts
    assert all("steel T" in one.size for one in posts)
