"""A plan as a whole: what is kept, what is found by name, and that order does not matter."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from plantframe.language.files import read_input
from plantframe.plan.building import build
from tests.plan.building_plans import GARDEN, TODAY, plan_of

BLOCKS = (
    "bed Long Bed, 1.2 m x 7.5 m, runs north-south\n  sun full\n",
    "wall House Wall, faces east, shingles\n  eaves 3 m\n",
    "frame Bean Net, net frame, in Long Bed, north end\n  bays 2 of 8 ft\n  grow pole bean, 40\n",
    "cover Seed Box, cold frame, south of the shed\n  back 2x12\n",
    "frame Clematis Lattice, hinged lattice, on House Wall\n  grow late clematis\n",
    "shed\n  6 posts 2x2, 8 ft\n",
    "want cucumber, 6 plants\n",
    "task rip 4 of 2x4, by 1 April\n",
    "log 2 August, Bean Net, picked 1.4 kg\n",
)
HEAD = "garden Quarry Row, 2027\n  place 52.1 N, 1.4 W\n  frost last 6 May, first 12 October\n"


def test_everything_of_a_plan_is_found_by_its_name() -> None:
    plan = plan_of(HEAD + "".join(BLOCKS))
    for name in ("Long Bed", "House Wall", "Bean Net", "Seed Box", "Clematis Lattice"):
        thing = plan.named(name)
        assert thing is not None
        assert thing.name == name
    assert plan.named("Lond Bed") is None
    net, lattice = plan.frames["Bean Net"], plan.frames["Clematis Lattice"]
    assert plan.bed_of(net) is plan.beds["Long Bed"]
    assert plan.bed_of(lattice) is None
    assert plan.wall_of(lattice) is plan.things["House Wall"]
    assert plan.wall_of(net) is None
    assert [planting.said for planting in plan.plantings] == ["pole bean", "late clematis"]
    assert "shed" in plan.places


@given(st.permutations(BLOCKS))
def test_the_order_of_blocks_does_not_matter(blocks: list[str]) -> None:
    plan = plan_of(HEAD + "\n".join(blocks))
    other = plan_of(HEAD + "".join(BLOCKS))
    assert set(plan.frames) == set(other.frames)
    for name, frame in plan.frames.items():
        assert (frame.kind, frame.spots) == (other.frames[name].kind, other.frames[name].spots)
    assert set(plan.beds) == set(other.beds)
    assert set(plan.things) == set(other.things)


def test_the_first_of_two_of_one_name_is_used() -> None:
    plan, slips = build(read_input(f"{GARDEN}bed Long Bed, 2 m x 3 m\n"), TODAY)
    assert plan.beds["Long Bed"].length_m == 7.5
    assert [slip.name for slip in slips] == ["same-name"]


def test_an_empty_text_is_a_plan_with_nothing_in_it() -> None:
    plan, slips = build(read_input(""), TODAY)
    assert not plan.frames
    assert not plan.beds
    assert plan.garden.year == TODAY.year
    assert [slip.name for slip in slips] == ["no-garden"]
