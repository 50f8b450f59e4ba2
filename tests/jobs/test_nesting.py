"""Hedges and thick climbers are cut before birds nest in them, or after."""

from __future__ import annotations

from datetime import date

import pytest

from tests.jobs.gardens import HEAD, JANUARY, SOUTH, listed, the

HEDGE = "hedge Holly Hedge, 8 ft high\n"
TRIM = "task trim Holly Hedge\n"
TROPICS = "garden Palm Yard, 2027\n  place 12 N, 5 E\n  frost none\n"


def test_a_hedge_without_a_day_is_cut_before_march() -> None:
    """March to August, as the British and European bird societies ask (from memory)."""
    job = the(listed(HEAD + HEDGE + TRIM), "task/trim-holly-hedge")
    assert job.latest == date(2027, 2, 28)
    assert job.planned is not None
    assert job.planned < date(2027, 3, 1)
    assert "nest" in job.dangers[0]


def test_once_they_nest_it_waits_until_they_have_flown() -> None:
    job = the(listed(HEAD + HEDGE + TRIM, date(2027, 4, 2)), "task/trim-holly-hedge")
    assert job.earliest == date(2027, 9, 1)


def test_a_last_day_among_the_nests_comes_before_them() -> None:
    task = "task trim Holly Hedge, by 10 June\n"
    job = the(listed(HEAD + HEDGE + task), "task/trim-holly-hedge")
    assert job.latest == date(2027, 2, 28)


@pytest.mark.parametrize("day", ["10 June", "20 September"])
def test_a_day_the_gardener_wrote_stays_and_is_told_of_the_nests(day: str) -> None:
    job = the(listed(f"{HEAD}{HEDGE}task trim Holly Hedge, on {day}\n"), "task/trim-holly-hedge")
    assert job.planned in {date(2027, 6, 10), date(2027, 9, 20)}
    assert any("nest" in danger for danger in job.dangers)


def test_in_the_south_they_nest_half_a_year_later() -> None:
    plan = SOUTH + HEDGE + TRIM
    assert the(listed(plan, date(2026, 7, 1)), "task/trim-holly-hedge").latest == date(2026, 8, 31)
    late = the(listed(plan, date(2026, 10, 1)), "task/trim-holly-hedge")
    assert late.earliest == date(2027, 3, 1)


def test_between_the_tropics_no_month_is_named() -> None:
    job = the(listed(TROPICS + HEDGE + TRIM), "task/trim-holly-hedge")
    assert (job.latest, job.planned) == (None, None)
    assert "nest" in job.dangers[0]


def test_ivy_that_is_clipped_in_late_winter_has_its_last_day_before_the_nests() -> None:
    """Late frosts bring late winters that run into March."""
    late = HEAD.replace("6 May", "10 June").replace("12 October", "10 September")
    plan = late + "wall Old Wall, faces north\n  grow ivy, 1 plant\n"
    job = the(listed(plan), "old-wall/ivy-clip")
    assert job.latest == date(2027, 2, 28)
    assert any("nest" in danger for danger in job.dangers)


@pytest.mark.parametrize("task", ["trim the edges of the path", "cut 4 of 2x4", "plant the hedge"])
def test_other_work_is_left_alone(task: str) -> None:
    (job,) = listed(f"{HEAD}{HEDGE}task {task}\n", JANUARY).jobs
    assert job.latest is None
    assert not any("nest" in danger for danger in job.dangers)
