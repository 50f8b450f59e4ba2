"""The work on one frame: steps, marks, dates, and what goes against the order of the trade.

Orders and waits are common practice, no source.
"""

from __future__ import annotations

import subprocess
import sys
from datetime import date
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.language.files import read_input
from plantframe.plan.building import build
from plantframe.season.season import Season
from plantframe.season.work import (
    before,
    by_house_or_verge,
    dates_of,
    digging_steps,
    frame_ready,
    last_steps,
    marked,
    match_mark,
    order_broken,
    steps_of,
    too_soon,
)

if TYPE_CHECKING:
    from pathlib import Path

    from plantframe.season.frames import WorkedFrame

TODAY = date(2027, 1, 10)
HEAD = "garden Hazel End, 2027\n  frost last 6 May, first 12 October\n"
NET = """frame Bean Net, net frame
  bays 2 of 8 ft
  posts 2x2, 8 ft, 18 in down, 6 ft 6 in up
  bar 2x2
"""


def frame(*lines: str, head: str = NET, before_it: str = "") -> WorkedFrame:
    text = HEAD + before_it + head + "".join(f"  {line}\n" for line in lines)
    plan, _ = build(read_input(text), TODAY)
    (found,) = Season(plan, TODAY).frames.values()
    return found


def names(found: WorkedFrame) -> list[str]:
    return [step.id for step in steps_of(found)]


# ---- the steps ------------------------------------------------------------------------------
def test_a_step_has_the_address_of_its_frame_and_its_own_name() -> None:
    step = next(one for one in steps_of(frame()) if one.id == "bar")
    assert step.job == "bean-net/bar"
    assert step.says == "weave the bar through the top row of meshes"
    assert step.after == ("net",)


def test_only_the_steps_this_frame_wants_are_there() -> None:
    assert {"coat", "stays", "join"}.isdisjoint(names(frame()))
    assert "coat" in names(frame("finish oil"))
    assert "stays" in names(frame("stays 2, square to the row"))


def test_cautions_stand_with_their_step() -> None:
    ends = next(one for one in steps_of(frame()) if one.id == "ends")
    assert any("cables" in danger.says for danger in ends.dangers)


def test_what_goes_before_reaches_all_the_way_back() -> None:
    assert {"bore", "mark", "ends", "middles", "firm", "net"} <= before(steps_of(frame()))["bar"]


def test_a_frame_stands_with_its_last_steps() -> None:
    assert [step.id for step in last_steps(steps_of(frame()))] == ["pins"]


OWN = "frame Bean Bridge, own design\n  own design\n"


def test_own_steps_come_in_the_order_the_gardener_gives() -> None:
    found = frame("step set it up after join the pieces", "step join the pieces, 1 h", head=OWN)
    up, join = steps_of(found)
    assert (up.id, up.own_after) == ("set-it-up", ("join-the-pieces",))
    assert join.minutes == (60, 60)


def test_pieces_are_cut_before_anything_is_made_of_them() -> None:
    found = frame(
        "piece 4 of 2x2, 1.9 m", "step join them", "step hang the net, 2 people", head=OWN
    )
    cut, join, hang = steps_of(found)
    assert cut.says == "cut the pieces: 4 of 2x2, 1.9 m"
    assert join.after == hang.after == ("cut",)
    assert hang.step.hands == 2


def test_pieces_alone_are_cut_and_put_together() -> None:
    assert names(frame("piece 4 of 2x2, 1.9 m", head=OWN)) == ["cut", "put-together"]


def test_a_frame_of_unknown_kind_is_put_up_in_one_step() -> None:
    assert names(frame(head="frame Late Idea\n")) == ["put-up"]


def test_a_line_may_put_steps_of_a_kind_in_another_order() -> None:
    found = frame("step firm the soil after thread the net")
    firm = next(step for step in steps_of(found) if step.id == "firm")
    assert firm.own_after == ("net",)
    assert len(steps_of(found)) == len(steps_of(frame()))


def test_a_line_may_add_a_step_to_a_kind() -> None:
    found = frame("step hang up tins against birds after drop in the pins")
    added = steps_of(found)[-1]
    assert added.own_after == ("pins",)


def test_a_frame_whose_figures_cannot_be_worked_still_has_its_order() -> None:
    found = frame("bays 0 of 8 ft", head="frame Bean Net, net frame\n")
    assert names(found).index("net") > names(found).index("firm")


# ---- marks and dates --------------------------------------------------------------------------
def test_a_mark_finds_its_step_by_near_enough_words() -> None:
    found = frame("done weave the bars, 2 May")
    (mark,) = found.frame.marks
    step = match_mark(mark, steps_of(found))
    assert step is not None
    assert step.id == "bar"


def test_marks_are_sorted_into_done_moved_and_skipped() -> None:
    found = marked(
        frame(
            "done set the posts, 24 April",
            "move weave the bar to 2 May",
            'skip draw a pencil line because "the old line is there"',
            "done whistle a tune",
        )
    )
    assert set(found.done) == {"ends", "middles"}
    assert set(found.moved) == {"bar"}
    assert set(found.skipped) == {"mark"}
    assert [mark.job for mark in found.unknown] == ["whistle a tune"]


def test_a_skip_without_a_reason_does_not_count() -> None:
    assert not marked(frame("skip thread the net")).skipped


def test_a_mark_of_a_step_this_frame_does_not_want_is_no_slip() -> None:
    found = marked(frame('skip stays because "sheltered corner"'))
    assert [mark.job for mark in found.needless] == ["stays"]
    assert not found.unknown


def test_a_finish_line_dates_the_coating() -> None:
    dated = dates_of(frame("finish linseed oil, 12 April"))["coat"]
    assert (dated.day.day, dated.how) == (date(2027, 4, 12), "finish")


def test_a_frame_is_ready_when_its_last_step_is_dated_else_as_the_plan_says() -> None:
    ready = frame_ready(frame("ready by 15 May", "move drop in the pins to 9 May"))
    assert ready is not None
    assert ready.day == date(2027, 5, 9)
    said = frame_ready(frame("ready by 15 May"))
    assert said is not None
    assert said.day == date(2027, 5, 15)
    assert frame_ready(frame()) is None


# ---- order ------------------------------------------------------------------------------------
def test_a_bar_done_before_its_net_is_found_with_the_reason() -> None:
    (broken,) = order_broken(frame("done weave the bar, 2 May", "move thread the net to 5 May"))
    assert (broken.earlier.id, broken.later.id) == ("net", "bar")
    assert broken.earlier_day.day > broken.later_day.day
    assert "no longer be threaded" in broken.because


def test_dates_in_order_are_left_alone() -> None:
    assert not order_broken(frame("done thread the net, 2 May", "move weave the bar to 2 May"))
    assert not too_soon(frame("finish oil, 12 April", "move set the posts to 26 April"))


def test_a_date_given_or_taken_two_weeks_is_no_proof() -> None:
    assert not order_broken(frame("move thread the net to May", "move weave the bar to 10 May"))


def test_a_step_left_out_breaks_no_order() -> None:
    lines = ("move weave the bar to 2 May", "move thread the net to 5 May")
    assert order_broken(frame(*lines))
    assert not order_broken(frame(*lines, 'skip thread the net because "string will do"'))


def test_posts_set_before_their_feet_have_aired_are_found() -> None:
    found = too_soon(frame("finish oil, 12 April", "move set the posts to 15 April"))
    assert {(one.first.id, one.then.id) for one in found} == {("coat", "ends"), ("coat", "middles")}
    assert found[0].first.wait_days == (7, 14)


STEPS = ["mark", "bore", "ends", "middles", "firm", "net", "bar", "pins"]
WORDS = {
    "mark": "draw a pencil line",
    "bore": "bore the tops",
    "ends": "open a hole for each end post",
    "middles": "set the middle posts",
    "firm": "firm the soil",
    "net": "thread the net",
    "bar": "weave the bar",
    "pins": "drop in the pins",
}


@given(st.dictionaries(st.sampled_from(STEPS), st.integers(1, 30), min_size=2))
def test_an_order_is_broken_exactly_where_two_dates_are_the_wrong_way_round(
    days: dict[str, int],
) -> None:
    lines = [f"move {WORDS[step]} to {day} April" for step, day in days.items()]
    found = {(one.earlier.id, one.later.id) for one in order_broken(frame(*lines))}
    order = [step for step in STEPS if step in days]
    wrong = {
        (first, then)
        for at, first in enumerate(order)
        for then in order[at + 1 :]
        if days[first] > days[then] and (first, then) != ("mark", "bore")
    }
    assert found == wrong


# ---- digging ----------------------------------------------------------------------------------
def test_posts_deeper_than_thirty_centimetres_are_digging() -> None:
    assert [step.id for step in digging_steps(frame())] == ["ends", "middles"]


def test_poles_pushed_in_by_hand_are_not() -> None:
    assert not digging_steps(frame("poles 6 of 20 mm round, 8 ft, 25 cm down", head=WIGWAM))


WIGWAM = "frame Scent Wigwam, wigwam\n"


def test_deep_posts_of_the_gardeners_own_design_are_digging() -> None:
    found = frame("posts 4x4, 8 ft, 2 ft down", "step set the posts", "step hang it", head=OWN)
    assert [step.id for step in digging_steps(found)] == ["set-the-posts"]


@pytest.mark.parametrize(
    ("before_it", "spot", "close"),
    [
        ("wall House Wall, faces east\n", ", on House Wall", True),
        ("wall House Wall, faces east\n", ", 1 m from House Wall", True),
        ("wall House Wall, faces east\n", ", 9 m from House Wall", False),
        ("", ", along the lane", True),
        ("", "", None),
    ],
)
def test_pipes_and_cables_come_in_by_the_house_and_the_road(
    before_it: str, spot: str, close: bool | None
) -> None:
    head = f"frame Rose Arch, arch{spot}\n"
    assert by_house_or_verge(frame(head=head, before_it=before_it)) is close


def test_a_fence_stands_at_the_road_until_the_plan_says_otherwise() -> None:
    assert by_house_or_verge(frame(head="fence Far Fence, mortised fence\n")) is True


def test_these_questions_need_no_graph(root: Path) -> None:
    code = (
        "import sys, plantframe.season.work; "
        "sys.exit(bool({'networkx', 'numpy'} & set(sys.modules)))"
    )
    assert subprocess.run([sys.executable, "-c", code], cwd=root, check=False).returncode == 0
