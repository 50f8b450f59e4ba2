"""Some of the jobs: of a day, a week, a person, a frame, a walk."""

from __future__ import annotations

from datetime import date

from plantframe.jobs.choosing import of_day, of_frame, of_person, of_week, walk
from tests.jobs.gardens import BEANS, HEAD, NET, listed, the

PLAN = (
    HEAD
    + "  person Isa\n  person Bram\n"
    + NET
    + BEANS
    + "  picked by Bram\n  built 2026\n"
    + "task order seed, Isa, on 18 May\ntask wash the pots, 5 min, on 9 July\n"
)
FOUND = listed(PLAN)


def ids(jobs: tuple[object, ...]) -> set[str]:
    return {getattr(job, "id", "") for job in jobs}


def test_a_day_has_what_is_down_for_it() -> None:
    assert ids(of_day(FOUND.jobs, date(2027, 5, 18))) == {
        "bean-net/sow-pole-bean",
        "task/order-seed",
    }


def test_a_round_falls_on_every_day_of_its_turn() -> None:
    led = "bean-net/pole-bean-lead"
    assert led in ids(of_day(FOUND.jobs, date(2027, 6, 22)))
    assert led not in ids(of_day(FOUND.jobs, date(2027, 6, 23)))
    assert led not in ids(of_day(FOUND.jobs, date(2027, 10, 19)))


def test_a_week_lists_a_round_once() -> None:
    week = of_week(FOUND.jobs, date(2027, 7, 14))
    assert [job.id for job in week].count("bean-net/pole-bean-pick") == 1
    assert "bean-net/pole-bean-lead" in ids(week)


def test_a_person_has_their_own_and_what_is_nobodys() -> None:
    isa = ids(of_person(FOUND.jobs, "isa"))
    assert "task/order-seed" in isa
    assert "bean-net/sow-pole-bean" in isa
    assert "bean-net/pole-bean-pick" not in isa


def test_a_frame_has_its_own_jobs_whatever_the_capitals() -> None:
    jobs = of_frame(FOUND.jobs, "bean net")
    assert jobs
    assert {job.block for job in jobs} == {"Bean Net"}


def test_a_walk_is_at_most_eight_lines_the_oftenest_round_first() -> None:
    many = "".join(f"frame Net {n}, net frame\n  built 2025\n{BEANS}" for n in range(9))
    found = walk(listed(HEAD + many).jobs, date(2027, 7, 9))
    assert len(found) == 8
    assert all("pick" in job.id for job in found)


def test_a_walk_takes_small_jobs_of_the_day_and_no_building() -> None:
    found = walk(FOUND.jobs, date(2027, 7, 9))
    assert [job.id for job in found] == [
        "bean-net/pole-bean-pick",
        "bean-net/pole-bean-lead",
        "task/wash-the-pots",
    ]
    assert walk(listed(HEAD + NET + BEANS).jobs, date(2027, 5, 11)) == ()


def test_nothing_is_picked_in_winter() -> None:
    assert walk(FOUND.jobs, date(2027, 12, 1)) == ()


def test_a_long_job_is_on_the_list_of_each_of_its_days() -> None:
    text = HEAD + "  person Nell\n  free Saturday 1 h\ntask dig the pit, by 1 April, 2 h\n"
    found = listed(text)
    job = the(found, "task/dig-the-pit")
    assert len(job.days) == 2
    for day in job.days:
        assert job in of_day(found.jobs, day)
