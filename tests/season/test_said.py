"""What a plan says of a stick, as its measured size."""

from __future__ import annotations

from datetime import date

import pytest

from plantframe.language.files import read_input
from plantframe.plan.building import build
from plantframe.season.season import Season

TODAY = date(2026, 11, 25)


def bar(typed: str, timber: str = "nominal") -> tuple[object, object]:
    text = (
        f"garden Fold End, 2027\n  timber {timber}\nframe Gate Net, net frame\n"
        f"  bays 1 of 8 ft\n  bar {typed}\n"
    )
    plan, _ = build(read_input(text), TODAY)
    said = Season(plan, TODAY).frames["Gate Net"].said
    return said["bar.width"], said["bar.depth"]


def test_a_trade_size_is_the_planed_stick() -> None:
    # PS 20, American Softwood Lumber Standard: 2x4 is dressed to 1½ by 3½ in
    assert bar("2x4") == pytest.approx((0.0381, 0.0889), abs=0.0006)


def test_a_rough_stick_is_as_thick_as_typed_where_the_garden_says_so() -> None:
    assert bar("2x4", "actual") == pytest.approx((0.0508, 0.1016))


def test_a_size_that_no_yard_planes_is_taken_as_typed() -> None:
    assert bar("0x2") == pytest.approx((0.0, 0.0508))


def test_six_tomatoes_each_on_a_stake_of_its_own_want_six_stakes() -> None:
    text = (
        "garden Fold End, 2027\nframe Love Apples, stake\n  grow tall tomato, 6 plants\n"
        "frame Two More, stake\n  stakes 2\n  grow tall tomato, 6 plants\n"
    )
    plan, _ = build(read_input(text), TODAY)
    frames = Season(plan, TODAY).frames
    assert frames["Love Apples"].figure("posts.count") == 6
    assert frames["Two More"].figure("posts.count") == 2


@pytest.mark.parametrize(
    "typed",
    [
        "net 3 ft 6 in, mesh 1 in, 3 ft up and 6 in buried",
        "net mesh 1 in, 3 ft up, 6 in buried",
        "mesh 1 in, 3 ft up and 6 in buried",
        "mesh 1 in, 3 ft 6 in high, 6 in buried",
    ],
)
def test_mesh_that_stands_and_is_buried_is_as_wide_as_both_together(typed: str) -> None:
    # Arizona Cooperative Extension, Fencing your garden: 3 ft high and 6 in or more buried
    text = f"garden Fold End, 2027\nfence Rabbit Fence, animal fence\n  {typed}\n"
    reading = read_input(text)
    plan, slips = build(reading, TODAY)
    assert not [one.says for one in (*reading.mistakes, *slips) if one.name != "no-place"]
    frame = Season(plan, TODAY).frames["Rabbit Fence"]
    assert frame.figure("net.high") == pytest.approx(42 * 0.0254)
    assert frame.figure("net.buried") == pytest.approx(6 * 0.0254)


def test_a_width_that_is_not_its_parts_together_is_asked_about() -> None:
    line = "  net 4 ft, mesh 1 in, 3 ft up and 6 in buried\n"
    text = f"garden Fold End, 2027\nfence Rabbit Fence, animal fence\n{line}"
    assert "which-length" in {one.name for one in read_input(text).mistakes}
