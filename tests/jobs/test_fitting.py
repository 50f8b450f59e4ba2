"""Hours wanted against hours there are: what can wait, and what cannot."""

from __future__ import annotations

import cProfile
from datetime import date

import pytest

from plantframe.jobs.fitting import hours_words, projects_of, slack_days, weeks_of
from tests.jobs.gardens import BEANS, HEAD, NET, listed, the

PEOPLE = HEAD + "  person Isa\n  person Bram\n"
FENCE = (
    "fence Rose Fence, mortised fence\n  posts 5 of 4 in round, 6 ft, 24 in down\n"
    "  rails 8 of 3 in round, 9 ft 6 in\n  bays 4 of 9 ft\n"
)


def nets(count: int, day: str = "15 May") -> str:
    return "".join(
        NET.replace("Bean Net", f"Net {number}") + f"  ready by {day}\n" for number in range(count)
    )


def test_a_week_has_the_hours_of_everybody_there() -> None:
    hours = "  free Saturday 6 h, Wednesday 2 h\n  away 3 to 9 May, Bram\n"
    found = listed(PEOPLE + hours + nets(1))
    weeks = {week.monday: week for week in weeks_of(found.jobs, found.sharing)}
    assert all(week.there in {8, 16} for week in weeks.values())
    assert all((week.there == 8) == (monday == date(2027, 5, 3)) for monday, week in weeks.items())


def test_the_hours_of_all_weeks_are_the_hours_of_all_work() -> None:
    found = listed(PEOPLE + "  free Saturday 3 h\n" + nets(2) + FENCE)
    weeks = weeks_of(found.jobs, found.sharing)
    projects = projects_of(found.jobs, found.sharing)
    for at in (0, 1):
        assert sum(week.wanted[at] for week in weeks) == pytest.approx(
            sum(one.hours[at] for one in projects)
        )


def test_too_little_time_is_told_with_what_can_wait_and_what_cannot() -> None:
    text = PEOPLE + "  free Saturday 2 h\n" + nets(9, "1 March") + FENCE + "  ready by 1 November\n"
    found = listed(text, date(2027, 2, 1))
    told = [one for one in found.troubles if one.name == "overfull"]
    assert told
    assert "Cannot wait: Net" in told[0].says
    assert "by 1 March" in told[0].says
    assert set(told[0].jobs) <= {job.id for job in found.jobs}


def test_a_fence_for_the_autumn_never_takes_the_hours_a_net_is_wanted_in() -> None:
    text = PEOPLE + "  free Saturday 3 h\n" + FENCE + nets(3)
    found = listed(text, date(2027, 4, 1))
    assert not [one for one in found.troubles if one.name == "overfull"]
    for number in range(3):
        job = the(found, f"net-{number}/pins")
        assert job.planned is not None
        assert job.planned <= date(2027, 5, 15)


def test_building_without_a_day_goes_where_hours_are_left_and_ground_is_open() -> None:
    found = listed(PEOPLE + "  free Saturday 6 h\n" + FENCE, date(2027, 1, 5))
    days = [job.planned for job in found.jobs if job.block == "Rose Fence" and job.kind == "build"]
    assert all(day is not None for day in days)
    assert min(day for day in days if day) >= date(2027, 2, 25)  # ten weeks before 6 May
    assert max(day for day in days if day) <= date(2027, 11, 23)  # six after 12 October


def test_no_day_is_made_up_where_the_plan_gives_no_hours() -> None:
    found = listed(PEOPLE + FENCE)
    assert all(job.planned is None for job in found.jobs if job.kind == "build")


def test_a_frost_free_garden_builds_in_any_month() -> None:
    head = "garden Palm End, 2027\n  place 12.4 S, 130.9 E\n  frost none\n  person Isa\n"
    found = listed(head + "  free Saturday 6 h\n" + FENCE, date(2027, 1, 5))
    first = the(found, "rose-fence/mortise").planned
    assert first is not None
    assert first <= date(2027, 1, 12)


def test_slack_is_what_is_left_to_the_last_day() -> None:
    found = listed(HEAD + NET + BEANS)
    pins, sow = the(found, "bean-net/pins"), the(found, "bean-net/sow-pole-bean")
    assert slack_days(pins) == 7
    assert slack_days(sow) == 0
    assert slack_days(the(found, "bean-net/care-lean")) is None


@pytest.mark.parametrize(
    ("low", "high", "said"),
    [(0.1, 0.2, "under half an hour"), (2.4, 2.6, "2.5 h"), (1.9, 3.1, "2 to 3 h")],
)
def test_hours_are_said_to_the_half(low: float, high: float, said: str) -> None:
    assert hours_words(low, high) == said


def nets_in_may(count: int) -> str:
    return "".join(
        NET.replace("Bean Net", f"Net {number}") + BEANS.replace("18 May", f"{8 + number % 20} May")
        for number in range(count)
    )


def test_five_hundred_jobs_take_hardly_more_than_five_times_a_hundred() -> None:
    # how long that is in seconds is for the bench to say
    def calls(count: int) -> tuple[int, int]:
        text = PEOPLE + "  free Saturday 6 h, Wednesday 2 h\n" + nets_in_may(count)
        profile = cProfile.Profile()
        found = profile.runcall(listed, text)
        return sum(entry.callcount for entry in profile.getstats()), len(found.jobs)

    calls(1)  # the library of graphs and the catalogue are read but once
    few, jobs = calls(6)
    many, more_jobs = calls(30)
    assert more_jobs >= 500
    assert more_jobs == 5 * jobs
    assert many < 10 * few


def test_work_that_finds_no_room_has_nothing_in_hand() -> None:
    people = "  person Nell\n  free Saturday 1 h\n"
    found = listed(HEAD + people + "task dig the pit, by 1 February, 9 h\n")
    (project,) = projects_of(found.jobs, found.sharing)
    assert project.slack_days == 0
