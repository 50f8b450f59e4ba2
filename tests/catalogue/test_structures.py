"""What every structure owes whoever builds it: cautions, seasons, counts that go together."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

import pytest

from plantframe.catalogue.reading import entry_names, structure
from plantframe.catalogue.workings import Worked, work

if TYPE_CHECKING:
    from plantframe.catalogue.entries import Step, Structure

MONTHS = re.compile(
    r"\b(January|February|March|April|May|June|July|August|September|October|November|December)\b"
)


def kind(name: str) -> Structure:
    found = structure(name)
    assert found is not None
    return found


KINDS = [kind(name) for name in entry_names("structure")]


def worked(name: str, **said: object) -> Worked:
    return work(kind(name), {key.replace("__", "."): value for key, value in said.items()})


def cautioned(entry: Structure, step: Step, *kinds: str) -> bool:
    """Whether one of these cautions stands with a step."""
    own = {step.id} | ({"down"} if step in entry.down else set())
    return any(danger.kind in kinds and own & set(danger.at) for danger in entry.dangers)


@pytest.mark.parametrize("entry", KINDS, ids=lambda entry: entry.name)
def test_work_off_the_ground_has_its_caution(entry: Structure) -> None:
    for step in (*entry.steps, *entry.down):
        off_the_ground = {"steps", "ladder"} & set(step.tools)
        if off_the_ground and step.id != "raise":  # a tall pole is raised by its own caution
            assert cautioned(entry, step, "ladder"), step.id
    if any("steps" in care.tools for care in entry.care):
        assert any(danger.kind == "ladder" and "care" in danger.at for danger in entry.dangers)


@pytest.mark.parametrize("entry", KINDS, ids=lambda entry: entry.name)
def test_what_goes_deeper_than_a_foot_has_buried_lines_marked(entry: Structure) -> None:
    if entry.name in {"raised bed frame", "tub trellis"}:
        return  # their posts stand in a bed or a tub, above the ground
    depths = [
        value
        for name, value in work(entry, {}).facts.values.items()
        if name.endswith(".down") and isinstance(value, float)
    ]
    if max(depths, default=0.0) > 0.3:
        assert "services" in {danger.kind for danger in entry.dangers}


@pytest.mark.parametrize("entry", KINDS, ids=lambda entry: entry.name)
def test_no_entry_names_a_month_which_is_wrong_on_half_the_globe(entry: Structure) -> None:
    steps, cares = (*entry.steps, *entry.down), entry.care
    texts = [entry.storage, entry.planting.says, entry.late.because, *entry.fails]
    texts += [text for step in steps for text in (step.do, step.season, step.alone, step.not_yet)]
    texts += [text for care in cares for text in (care.do, care.season, care.event)]
    texts += [danger.says for danger in entry.dangers]
    assert [text for text in texts if MONTHS.search(text)] == []


@pytest.mark.parametrize("entry", KINDS, ids=lambda entry: entry.name)
def test_no_good_place_to_stop_is_one_its_caution_forbids(entry: Structure) -> None:
    for step in entry.steps:
        forbids = [d for d in entry.dangers if step.id in d.at and "do not leave it" in d.says]
        assert not (step.stop and forbids), step.id


@pytest.mark.parametrize("rails", [2, 3, 4])
def test_a_pair_of_poles_takes_one_spacer_more_than_it_has_rails(rails: int) -> None:
    # spacer and rail by turns, a spacer lowest and a spacer on top (common practice, no source)
    fence = worked("paired-pole fence", bays__count=3, rails__count=rails)
    pairs = 4
    assert fence.pieces["pole"].count == 2 * pairs
    assert fence.pieces["spacer"].count == pairs * (rails + 1)
    assert fence.pieces["spacer nail"].count == 2 * pairs * (rails + 1)


@pytest.mark.parametrize(("up", "rails"), [(0.9, 2), (1.2, 3)])
def test_a_rail_fence_of_three_feet_has_two_rails_and_one_of_four_has_three(
    up: float, rails: int
) -> None:
    fence = worked("mortised fence", bays__count=2, posts__up=up, rails__length=2.7)
    assert fence.pieces["rail"].count == 2 * rails


def test_a_net_held_by_a_wire_has_the_wire_put_in_and_taken_out_and_no_pins() -> None:
    net = worked("net frame", wires__count=1, wires__heights=(1.9,), stays__count=2)
    order = [one.step.id for one in net.steps]
    assert {"net", "stays", "wire"} <= set(order)
    wire = next(one.step for one in net.steps if one.step.id == "wire")
    assert "stays" in wire.after  # a wire is strained on posts that are stayed
    assert not any("pins" in one.step.do or "bars" in one.step.do for one in net.down)


@pytest.mark.parametrize("name", ["cane wires", "espalier row", "grape wires"])
def test_wires_wait_until_the_soil_has_settled_round_braces_and_posts(name: str) -> None:
    row = worked(name, ends__how="braced")
    steps = {one.step.id: one.step for one in row.steps}
    (settle,) = steps["wires"].after
    wait = steps[settle].wait
    assert wait is not None
    assert (wait.days.low, wait.days.high) == (14, 28)
    assert {"ends", "lines"} <= set(steps[settle].after)
    assert any("brace" in one for one in steps[settle].after)


def test_a_tent_of_poles_has_no_step_of_panels_and_one_of_panels_none_of_poles() -> None:
    panels = worked("A-frame", panels__count=4)
    poles = worked("A-frame", posts__count=8, posts__length=1.8)
    assert {one.step.id for one in panels.steps} & {"pairs", "ridge", "hang"} == set()
    assert {one.step.id for one in poles.steps} == {"pairs", "ridge", "hang"}
    assert (panels.pieces["peg"].count, panels.pieces["chain"].count) == (8, 4)
    assert panels.pieces["net"].length_m == pytest.approx(1.2)


@pytest.mark.parametrize("size", [(1.3, 4.9), (4.9, 1.3)])
def test_a_stock_panel_stands_lengthways_whichever_side_is_typed_first(
    size: tuple[float, float],
) -> None:
    row = worked("mesh panel", bays__count=3, bays__length=1.6, panels__size=size)
    panel = row.pieces["panel"]
    assert (panel.count, panel.length_m, panel.breadth_m) == (1, 4.9, 1.3)


def test_hoops_over_a_row_of_five_metres_end_with_the_row() -> None:
    tunnel = worked("low tunnel", long=5.0)
    assert tunnel.row_m == pytest.approx(5.0)
    last = [place.x[0] for place in tunnel.pieces["hoop"].places if place.view == "front"][-1]
    assert last == pytest.approx(5.0)


def test_thin_boards_have_short_screws_at_their_corners() -> None:
    box = worked("cold frame", back__section="25x250 mm", front__section="25x180 mm")
    assert "corner screw" not in box.pieces
    assert box.pieces["short corner screw"].count > 0
