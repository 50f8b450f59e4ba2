"""A round of care that the gardener has put into a task is told once."""

from __future__ import annotations

from datetime import date

from tests.jobs.gardens import HEAD, listed, the

BOX = "cover Salad Box, cold frame\n  size 8 ft x 4 ft\n  lights 4\n  built 2018\n"
STRIPS = "task unscrew the foot strips and screw on new ones, at Salad Box"


def test_a_task_that_is_a_round_is_listed_once_with_the_rounds_parts_and_minutes() -> None:
    found = listed(HEAD + BOX + STRIPS + "\n")
    (job,) = [one for one in found.jobs if "foot strips" in one.says]
    assert job.id.startswith("task/")
    assert sum(job.minutes or ()) == 80
    assert "strip screws" in job.how
    assert job.latest is not None
    assert job.latest.month in {3, 4}


def test_what_the_task_says_itself_stays() -> None:
    job = next(
        one
        for one in listed(HEAD + BOX + STRIPS + ", by 1 May, 2 h\n").jobs
        if "foot strips" in one.says
    )
    assert sum(job.minutes or ()) == 240
    assert job.latest == date(2027, 5, 1)


def test_another_task_at_the_box_leaves_the_round_alone() -> None:
    found = listed(HEAD + BOX + "task oil the hinges, at Salad Box\n")
    assert the(found, "salad-box/care-strips").hands == 2
