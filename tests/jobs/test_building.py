"""Building a frame and taking it down; orders and waits are common practice, no source."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from tests.jobs.gardens import BEANS, HEAD, NET, listed, place, the


def test_a_job_carries_what_is_needed_on_the_day() -> None:
    job = the(listed(HEAD + NET + BEANS + "  built by Isa\n"), "bean-net/bar")
    assert job.says == "Bean Net: weave the bar through the top row of meshes"
    assert (job.block, job.kind, job.hands) == ("Bean Net", "build", 2)
    assert "net still on the ground" in job.alone
    assert job.tools == ("steps",)
    assert job.minutes is not None
    assert 0 < job.minutes[0] <= job.minutes[1]
    assert job.who == ("Isa",)
    assert any("Steps sink" in danger for danger in job.dangers)


def test_what_must_not_be_done_yet_stands_with_the_step() -> None:
    found = listed(HEAD + NET)
    assert the(found, "bean-net/net").dont_yet == "the bar waits until the net is on"


def test_there_are_good_places_to_stop() -> None:
    found = listed(HEAD + NET)
    stops = [job.id for job in found.jobs if job.stop_point]
    assert stops == ["bean-net/bore", "bean-net/firm", "bean-net/pins"]


def test_bench_work_is_told_from_work_in_the_bed() -> None:
    bed = "bed Long Bed, 1.2 m x 8 m\n"
    found = listed(HEAD + bed + NET.replace("net frame", "net frame, in Long Bed", 1))
    assert the(found, "bean-net/bore").place == "at the bench"
    assert the(found, "bean-net/net").place == "in Long Bed"


def test_a_frame_that_stands_is_not_built_again() -> None:
    found = listed(HEAD + NET + "  built 2024\n" + BEANS)
    assert not [job for job in found.jobs if job.kind == "build"]
    assert the(found, "bean-net/sow-pole-bean").after == ()


def test_ready_by_leaves_a_week_in_hand() -> None:
    job = the(listed(HEAD + NET + "  ready by 15 May\n"), "bean-net/pins")
    assert job.latest == date(2027, 5, 15)
    assert job.planned == date(2027, 5, 8)


def test_feet_air_their_full_days_before_they_touch_soil() -> None:
    found = listed(HEAD + NET + "  finish oil\n  ready by 15 May\n")
    coat, ends = the(found, "bean-net/coat"), the(found, "bean-net/ends")
    assert coat.wait == "7 to 14 days for the feet to air before they touch soil"
    assert coat.planned is not None
    assert ends.planned is not None
    assert ends.planned - coat.planned >= timedelta(days=14)
    assert coat.latest == date(2027, 5, 1)


def test_a_finish_line_with_a_day_is_kept_to() -> None:
    found = listed(HEAD + NET + "  finish oil, 12 April\n" + BEANS)
    assert the(found, "bean-net/coat").planned == date(2027, 4, 12)


def test_a_finish_line_whose_day_is_over_is_done() -> None:
    found = listed(HEAD + NET + "  finish oil, 12 April\n" + BEANS, date(2027, 4, 20))
    assert "bean-net/coat" in {job.id for job in found.done}
    assert the(found, "bean-net/ends").earliest == date(2027, 4, 26)


def test_work_falls_on_the_days_that_are_free() -> None:
    free = "  free Saturday 6 h\n  away 1 to 9 May\n"
    job = the(listed(HEAD + free + NET + "  ready by 15 May\n"), "bean-net/pins")
    assert job.planned == date(2027, 4, 24)
    assert job.planned.strftime("%A") == "Saturday"


# ---- planting among the steps -------------------------------------------------------------------
def test_nothing_is_planted_before_the_trial_fold() -> None:
    found = listed(f"{HEAD}frame Porch Lattice, hinged lattice\n  grow late clematis\n")
    planted = the(found, "porch-lattice/plant-out-late-clematis")
    assert planted.after == ("porch-lattice/fold",)


def test_strings_are_up_before_the_tomato_that_stands_on_their_foot() -> None:
    plan = "frame Tomato Drops, string drops\n  bar 2x2\n  grow tall tomato, plant out 1 June\n"
    planted = the(listed(HEAD + plan), "tomato-drops/plant-out-tall-tomato")
    assert "tomato-drops/strings" in planted.after


def test_a_cold_frame_is_sown_once_it_is_level() -> None:
    plan = "cover Salad Box, cold frame\n  size 8 ft x 4 ft\n  grow lettuce, sow 10 March\n"
    found = listed(HEAD + plan)
    assert the(found, "salad-box/sow-lettuce").after == ("salad-box/level",)


def test_soil_under_a_cloche_warms_before_it_is_sown() -> None:
    plan = "cover Bell, cloche\n  grow lettuce, sow 10 March\n"
    found = listed(HEAD + plan)
    warm, sow = the(found, "bell/warm"), the(found, "bell/sow-lettuce")
    assert warm.latest == date(2027, 2, 24)
    assert sow.planned == date(2027, 3, 10)
    assert place(found, "sow lettuce") < place(found, "set it back")


def test_stakes_that_may_follow_the_plant_are_ready_all_the_same() -> None:
    plan = "frame Tomato Row, stakes and twine\n  grow bush tomato, plant out 25 May\n"
    found = listed(HEAD + plan)
    assert the(found, "tomato-row/stakes").planned == date(2027, 5, 18)
    first = the(found, "tomato-row/first")
    assert "tomato-row/plant-out-bush-tomato" in first.after
    assert (first.planned, first.whenever) == (None, "as the plants grow")


def test_brush_is_cut_while_the_wood_sleeps() -> None:
    plan = "frame Pea Row, pea sticks\n  grow short pea, sow 1 April\n"
    cut = the(listed(HEAD + plan), "pea-row/cut")
    assert cut.planned is not None
    assert cut.planned.month == 2


# ---- own design -----------------------------------------------------------------------------
def test_the_gardeners_own_design_is_built_in_its_own_order() -> None:
    plan = (
        "frame Bean Bridge\n  own design\n  piece 4 of 2x2, 1.9 m\n"
        "  step set it up after join the pieces, 2 people\n  step join the pieces, 1 h\n"
        "  grow sweet pea, sow 1 April\n"
    )
    found = listed(HEAD + plan)
    order = [job.does for job in found.jobs if job.kind in {"build", "sow"}]
    assert order == [
        "cut the pieces: 4 of 2x2, 1.9 m",
        "join the pieces",
        "set it up",
        "sow sweet pea",
    ]
    assert the(found, "bean-bridge/set-it-up").hands == 2


def test_own_steps_carry_the_usual_cautions() -> None:
    plan = "frame Bean Bridge\n  own design\n  step saw the poles\n  step dig the holes\n"
    found = listed(HEAD + plan)
    assert any("Clamp" in says for says in the(found, "bean-bridge/saw-the-poles").dangers)
    assert any("cables" in says for says in the(found, "bean-bridge/dig-the-holes").dangers)


# ---- taking down ------------------------------------------------------------------------------
def test_pins_bar_net_and_posts_come_down_in_that_order_after_the_frost() -> None:
    found = listed(HEAD + NET + BEANS)
    down = [job for job in found.jobs if job.kind == "take down"]
    told = ["pull the pins", "slide the bars", "lift the net", "draw the posts"]
    assert all(words in job.says for words, job in zip(told, down, strict=True))
    assert all(job.planned and job.planned >= date(2027, 10, 12) for job in down)
    assert "label" in down[-1].how


def test_a_take_down_date_is_kept_to() -> None:
    found = listed(HEAD + NET + BEANS + "  take down 25 September\n")
    assert the(found, "bean-net/down-pull-the-pins").planned == date(2027, 9, 25)
    assert the(found, "bean-net/pole-bean-pick").until == date(2027, 9, 25)


def test_nothing_is_taken_down_before_anything_was_picked() -> None:
    found = listed(HEAD + NET + BEANS + "  take down 20 June\n")
    assert any(one.name == "too-late" and "pull the pins" in one.says for one in found.troubles)
    down, pick = the(found, "bean-net/down-pull-the-pins"), the(found, "bean-net/pole-bean-pick")
    assert down.planned is not None
    assert pick.planned is not None
    assert down.planned >= pick.planned


@pytest.mark.parametrize(
    "plan",
    [
        "fence Lane Fence, mortised fence\n  grow climbing rose\n",
        NET + "  built 2024\n" + BEANS,
    ],
)
def test_what_stays_up_is_not_taken_down(plan: str) -> None:
    assert not [job for job in listed(HEAD + plan).jobs if job.kind == "take down"]


def test_a_cover_goes_on_and_off_on_its_days() -> None:
    plan = (
        "cover Salad Box, cold frame\n  size 8 ft x 4 ft\n  built 2021\n"
        "  on 1 October to 15 April 2028\n"
    )
    found = listed(HEAD + plan)
    assert the(found, "salad-box/put-on").planned == date(2027, 10, 1)
    assert the(
        found, "salad-box/down-lift-the-lights-off-and-carry-them-one-at-a-time"
    ).planned == date(2028, 4, 15)


def test_a_step_of_taking_down_keeps_its_name_when_another_comes_before_it() -> None:
    bare = {job.id for job in listed(HEAD + NET + BEANS).jobs if job.kind == "take down"}
    stays = "  stays 2, square to the row\n"
    found = listed(HEAD + NET + BEANS + stays)
    stayed = {job.id for job in found.jobs if job.kind == "take down"}
    assert stayed - bare == {"bean-net/stays-down"}
    assert bare <= stayed
    assert not [name for name in stayed if name[-1].isdigit()]
