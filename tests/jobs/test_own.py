"""The gardener's own tasks, and buried lines."""

from __future__ import annotations

from datetime import date

import pytest

from tests.jobs.gardens import BEANS, HEAD, NET, listed, place, the


def test_a_task_is_done_with_a_week_in_hand() -> None:
    job = the(listed(HEAD + "task rip 4 of 2x4, at the yard, by 1 April\n"), "task/rip-4-of-2x4")
    assert (job.says, job.place) == ("rip 4 of 2x4", "at the yard")
    assert (job.planned, job.latest) == (date(2027, 3, 25), date(2027, 4, 1))
    assert job.dangers


def test_a_task_says_who_how_long_and_how_many() -> None:
    people = "  person Isa\n  person Bram\n"
    task = "task lift the dahlias, 2 h, both of us, Isa, on 1 November\n"
    job = the(listed(HEAD + people + task), "task/lift-the-dahlias")
    assert (job.hands, job.minutes, job.who) == (2, (120, 120), ("Isa", "Bram"))
    assert job.planned == date(2027, 11, 1)


def test_before_christmas_is_the_last_day_and_not_the_day() -> None:
    job = the(
        listed(HEAD + "task mend the gate hinge, before Christmas\n"), "task/mend-the-gate-hinge"
    )
    assert job.latest == date(2027, 12, 24)


def test_a_task_that_is_done_drops_out() -> None:
    found = listed(HEAD + "task order seed, by 15 January, done 3 January\n")
    assert not found.jobs
    assert [job.says for job in found.done] == ["order seed"]


def test_a_task_that_waits_for_weather_has_no_day() -> None:
    job = the(
        listed(HEAD + "task take nets off, when the wind warning is out\n"), "task/take-nets-off"
    )
    assert (job.planned, job.whenever) == (None, "when the wind warning is out")


@pytest.mark.parametrize(
    "after", ["Bean Net: firm the soil", "firm the soil", "Bean Net", "the Bean Net"]
)
def test_a_task_comes_after_the_job_or_the_frame_it_names(after: str) -> None:
    found = listed(HEAD + NET + BEANS + f"task lay the path, after {after}\n")
    assert place(found, "firm the soil") < place(found, "lay the path")
    if "firm" not in after:
        assert place(found, "drop in the pins") < place(found, "lay the path")


def test_a_task_after_a_task_needs_no_comma() -> None:
    plan = "task lime the bed after clear the leeks, on 5 March\ntask clear the leeks, by 8 March\n"
    found = listed(HEAD + plan)
    assert the(found, "task/lime-the-bed").after == ("task/clear-the-leeks",)
    assert the(found, "task/clear-the-leeks").latest == date(2027, 3, 5)


def test_a_task_after_nothing_that_is_known_is_asked_about() -> None:
    found = listed(HEAD + "task lay the path, after the comet\n")
    (slip,) = found.mistakes
    assert (slip.name, slip.level) == ("no-such-job", "ask")
    assert "the comet" in slip.says
    assert the(found, "task/lay-the-path").after == ()


# ---- buried lines -------------------------------------------------------------------------------
FENCE = "fence Lane Fence, mortised fence\n  posts 4 of 4 in round, 6 ft, 2 ft down\n"


def test_lines_are_marked_a_week_before_the_first_hole_by_the_road() -> None:
    found = listed(HEAD + FENCE + "  ready by 1 April\n")
    marking, holes = the(found, "garden/lines-marked"), the(found, "lane-fence/holes")
    assert marking.id in holes.after
    assert marking.planned is not None
    assert holes.planned is not None
    assert (holes.planned - marking.planned).days >= 7
    assert "local service" in marking.how


def test_the_marking_is_one_job_for_all_that_is_dug() -> None:
    arch = "frame Rose Arch, arch, by the gate\n  grow climbing rose\n"
    found = listed(HEAD + FENCE + arch)
    (marking,) = [job for job in found.jobs if job.kind == "buried lines"]
    assert "Lane Fence and Rose Arch" in marking.says


@pytest.mark.parametrize("where", ["garden", "frame"])
def test_lines_that_are_marked_want_no_job_and_nothing_is_dug_before(where: str) -> None:
    line = "  lines marked 2 March\n"
    found = listed(HEAD + line + FENCE if where == "garden" else HEAD + FENCE + line)
    assert found.job("garden/lines-marked") is None
    assert the(found, "lane-fence/holes").earliest == date(2027, 3, 2)


def test_the_gardeners_own_task_of_marking_is_not_doubled() -> None:
    found = listed(HEAD + FENCE + "task have the buried lines marked, by 1 March\n")
    assert found.job("garden/lines-marked") is None
    assert "task/have-the-buried-lines-marked" in the(found, "lane-fence/holes").after


def test_a_bean_row_in_the_middle_of_the_garden_keeps_the_caution_alone() -> None:
    found = listed(HEAD + NET)
    assert found.job("garden/lines-marked") is None
    assert any("cables" in says for says in the(found, "bean-net/ends").dangers)


def test_a_pergola_begins_with_the_marking_itself() -> None:
    found = listed(f"{HEAD}frame Vine Walk, pergola, by the house\n  grow grape\n")
    assert found.job("garden/lines-marked") is None
    assert place(found, "found and marked") < place(found, "footings")


def test_lines_are_not_marked_for_what_stands() -> None:
    assert listed(HEAD + FENCE + "  built 2020\n").job("garden/lines-marked") is None


def test_a_task_of_sawing_goes_to_whose_the_saw_is() -> None:
    people = "  person Nell, no saw, no axe\n  person Odo, saw, axe\n  free Saturday 4 h\n"
    task = "task rip 4 of 2x4, by 1 April, 2 h\ntask split the kindling, by 1 April, 1 h\n"
    found = listed(HEAD + people + task)
    assert the(found, "task/rip-4-of-2x4").who == ("Odo",)
    assert the(found, "task/split-the-kindling").who == ("Odo",)


def test_what_the_yard_saws_wants_nobodys_saw() -> None:
    assert (
        the(
            listed(HEAD + "task rip 4 of 2x4, at the yard, by 1 April\n"), "task/rip-4-of-2x4"
        ).tools
        == ()
    )
