"""While nobody is at home: the neighbour's page."""

from __future__ import annotations

from datetime import date

from plantframe.jobs.away import next_away, while_away
from tests.jobs.gardens import BEANS, HEAD, JANUARY, NET, listed, season

TEXT = HEAD + "  person Isa\n  person Bram\n  away 10 to 20 August\n" + NET + BEANS


def test_what_is_picked_in_those_days_is_on_the_page_and_tying_can_wait() -> None:
    found = while_away(
        listed(TEXT).jobs, date(2027, 8, 10), date(2027, 8, 20), season(TEXT).plan.garden
    )
    assert [job.id for job in found.rounds] == ["bean-net/pole-bean-pick"]
    assert [job.id for job in found.events] == ["bean-net/care-lean"]


def test_nothing_is_asked_of_anybody_before_there_is_anything_to_pick() -> None:
    found = while_away(
        listed(TEXT).jobs, date(2027, 5, 20), date(2027, 5, 30), season(TEXT).plan.garden
    )
    assert found.rounds == ()


def test_what_has_its_last_day_meanwhile_is_done_before_leaving() -> None:
    text = TEXT.replace("10 to 20 August", "14 to 25 May")
    found = while_away(
        listed(text).jobs, date(2027, 5, 14), date(2027, 5, 25), season(text).plan.garden
    )
    assert "bean-net/pins" in {job.id for job in found.leaving}


def test_no_snow_is_looked_for_in_august() -> None:
    box = "cover Seed Box, cold frame\n  size 8 ft x 4 ft\n  lights 4\n  built 2024\n"
    jobs, garden = listed(TEXT + box).jobs, season(TEXT + box).plan.garden
    august = while_away(jobs, date(2027, 8, 10), date(2027, 8, 20), garden)
    january = while_away(jobs, date(2027, 1, 12), date(2027, 1, 20), garden)
    assert not any("snow" in job.whenever for job in august.events)
    assert any("snow" in job.whenever for job in january.events)


def test_the_next_days_away_are_those_when_everybody_is() -> None:
    text = (
        HEAD + "  person Isa\n  person Bram\n"
        "  away 1 to 9 June, Isa\n  away 5 to 20 June, Bram\n  away 1 to 8 August\n"
    )
    span = next_away(season(text).plan.garden, JANUARY)
    assert span is not None
    assert (span.first, span.last) == (date(2027, 6, 5), date(2027, 6, 9))
    later = next_away(season(text).plan.garden, date(2027, 7, 1))
    assert later is not None
    assert later.first == date(2027, 8, 1)
    assert next_away(season(text).plan.garden, date(2027, 9, 1)) is None


def test_what_can_wait_until_they_are_back_is_neither_done_before_nor_while_away() -> None:
    text = (
        HEAD + "  away 10 to 24 August\n" + NET + "  grow tall tomato, 6 plants, plant out 1 June\n"
    )
    found = listed(text)
    pinch = next(job for job in found.jobs if "pinch out the top" in job.says)
    assert pinch.planned is not None
    assert pinch.latest is not None
    assert not date(2027, 8, 10) <= pinch.planned <= date(2027, 8, 24)


def test_the_neighbour_walks_no_row_that_does_not_stand_yet_or_is_down_again() -> None:
    text = HEAD + "  free Saturday 4 h\n" + NET + BEANS
    jobs = listed(text).jobs
    garden = season(text).plan.garden
    for first, last, calls in (
        (date(2027, 2, 1), date(2027, 2, 10), False),
        (date(2027, 7, 1), date(2027, 7, 10), True),
        (date(2027, 12, 1), date(2027, 12, 10), False),
    ):
        found = while_away(jobs, first, last, garden)
        assert any("walk the row" in job.says for job in found.events) == calls
