"""Some of the jobs: of a day, a week, a person, a frame, a walk."""

from __future__ import annotations

from datetime import date

from plantframe.jobs.choosing import beyond_walk, of_day, of_frame, of_person, of_week, walk
from plantframe.jobs.job import OWN, Job
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


def test_a_walk_is_at_most_eight_lines() -> None:
    day = date(2027, 7, 9)
    many = [
        Job(f"task/{n}", f"look at {n}", "", OWN, minutes=(1, 1), planned=day) for n in range(12)
    ]
    assert [job.id for job in walk(many, day)] == [f"task/{n}" for n in range(8)]
    assert len(beyond_walk(many, day)) == 4


def test_a_walk_is_no_longer_than_ten_minutes_and_what_is_longer_is_told_apart() -> None:
    many = "".join(f"frame Net {n}, net frame\n  built 2025\n{BEANS}" for n in range(9))
    jobs, day = listed(HEAD + many).jobs, date(2027, 7, 9)
    goes, rest = walk(jobs, day), beyond_walk(jobs, day)
    assert sum(job.minutes[0] for job in goes if job.minutes) <= 10
    assert goes
    assert not ids(goes) & ids(rest)
    assert len(goes) + len(rest) == 18  # each net is picked and led


def test_a_walk_takes_small_jobs_of_the_day_and_no_building() -> None:
    day = date(2027, 7, 9)
    found = walk(FOUND.jobs, day)
    assert [job.id for job in found] == ["task/wash-the-pots", "bean-net/pole-bean-lead"]
    assert [job.id for job in beyond_walk(FOUND.jobs, day)] == ["bean-net/pole-bean-pick"]
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
