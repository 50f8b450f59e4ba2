"""Who is there, and who can: as the garden's own lines say."""

from __future__ import annotations

from datetime import date

from plantframe.frozen import replace
from plantframe.jobs.job import Job
from plantframe.jobs.people import crew_of
from tests.jobs.gardens import HEAD, NET, listed, season, the

PEOPLE = (
    HEAD
    + "  person Isa, lifts 15 kg, no saw\n"
    + "  person Bram, lifts 25 kg, axe\n"
    + "  person Tom, here 8 May\n"
    + "  away 3 to 9 June, Bram\n"
    + "  away 10 to 20 July\n"
)
CREW = crew_of(season(PEOPLE).plan.garden)
SAWING = Job("a/cut", "A: cut it", "A", "build", tools=("hand saw",))


def test_a_helper_for_one_saturday_is_there_on_that_saturday() -> None:
    assert CREW.there(date(2027, 5, 8)) == ("Isa", "Bram", "Tom")
    assert CREW.there(date(2027, 5, 15)) == ("Isa", "Bram")


def test_who_is_away_is_not_there_and_in_the_holidays_nobody_is() -> None:
    assert CREW.there(date(2027, 6, 5)) == ("Isa",)
    assert CREW.there(date(2027, 7, 15)) == ()
    assert CREW.there(date(2027, 7, 21)) == ("Isa", "Bram")


def test_the_saw_is_with_those_whom_the_plan_does_not_keep_from_it() -> None:
    assert CREW.able(SAWING) == ("Bram", "Tom")


def test_the_axe_is_with_the_one_whose_it_is() -> None:
    assert CREW.able(replace(SAWING, tools=("axe", "chisel"))) == ("Bram",)
    assert CREW.able(replace(SAWING, tools=("borer",))) == ("Isa", "Bram", "Tom")


def test_whom_the_plan_names_for_a_job_does_it_saw_or_no_saw() -> None:
    assert CREW.able(replace(SAWING, who=("isa",))) == ("Isa",)


def test_two_share_a_garden_that_names_nobody() -> None:
    crew = crew_of(season(HEAD + "  away 10 to 20 July\n").plan.garden)
    assert not crew.named
    assert len(crew.there(date(2027, 5, 8))) == 2
    assert crew.there(date(2027, 7, 15)) == ()


def test_nobody_unnamed_is_named_in_the_list() -> None:
    found = listed(HEAD + "  free Saturday 6 h\n" + NET + "  ready by 15 May\n")
    assert the(found, "bean-net/net").who == ()


def test_a_helper_brings_the_two_person_work_to_their_day() -> None:
    """Isa alone but for Tom on 8 May: the net, which wants two, is threaded on that day."""
    text = HEAD + "  person Isa\n  person Tom, here 8 May\n  free Saturday 6 h\n"
    found = listed(text + NET + "  ready by 15 May\n")
    for step in ("net", "bar", "pins"):
        job = the(found, f"bean-net/{step}")
        assert (job.planned, job.short) == (date(2027, 5, 8), False), step
        assert set(job.who) == {"Isa", "Tom"}


def test_one_person_gets_the_one_person_way() -> None:
    found = listed(HEAD + "  person Isa\n  free Saturday 6 h\n" + NET + "  ready by 15 May\n")
    job = the(found, "bean-net/net")
    assert job.short
    assert job.who == ("Isa",)
    assert "flat on the ground" in job.alone


def test_a_heavy_box_is_turned_by_those_who_lift_it() -> None:
    """Boards of two inches weigh more than Ann and Ben lift between them, and Cal lends a hand."""
    people = "".join(f"  person {name}, lifts 14 kg\n" for name in ("Ann", "Ben", "Cal"))
    box = (
        "cover Seed Box, cold frame\n  size 8 ft 1 in x 4 ft, low side south\n"
        "  back 2x12\n  front 2x8\n  lights 4 of 24 in x 4 ft, glass\n  ready by 15 May\n"
    )
    job = the(listed(f"{HEAD}{people}  free Saturday 6 h\n{box}"), "seed-box/turn")
    assert job.weight_kg > 28
    assert sorted(job.who) == ["Ann", "Ben", "Cal"]


def test_two_saw_together_where_one_of_them_may() -> None:
    text = HEAD + "  person Nell, no saw\n  person Odo, saw\n  free Saturday 4 h\n"
    job = the(
        listed(text + "task saw up the logs, by 1 April, 1 h, both of us\n"), "task/saw-up-the-logs"
    )
    assert sorted(job.who) == ["Nell", "Odo"]
    assert not job.short


def test_two_who_may_not_saw_do_not_saw_while_the_third_is_away() -> None:
    text = (
        HEAD + "  person Nell, no saw\n  person Wim, no saw\n  person Odo, saw\n"
        "  free Saturday 4 h\n  away Odo 1 February to 20 March\n"
    )
    job = the(
        listed(text + "task saw up the logs, by 1 April, 1 h, both of us\n"), "task/saw-up-the-logs"
    )
    assert "Odo" in job.who
    assert job.planned is not None
    assert job.planned > date(2027, 3, 20)
