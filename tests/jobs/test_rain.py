"""A day of rain slides what is outdoors, and says what that moves."""

from __future__ import annotations

from datetime import date, timedelta

from hypothesis import given, settings
from hypothesis import strategies as st

from plantframe.jobs.gathering import gather
from plantframe.jobs.rain import slid
from plantframe.jobs.works import is_outdoors
from tests.jobs.gardens import BEANS, HEAD, NET, listed, season

TEXT = HEAD + "  person Isa\n  person Bram\n  free Saturday 6 h, Wednesday 2 h\n" + NET + BEANS


def test_work_outdoors_slides_to_the_next_free_day_and_the_bench_stays() -> None:
    before = listed(TEXT)
    wet = next(job.planned for job in before.jobs if job.id == "bean-net/ends")
    assert wet is not None
    found = slid(season(TEXT), before, wet)
    assert {move.job.id for move in found.moved} >= {"bean-net/ends", "bean-net/net"}
    assert all(move.becomes > wet for move in found.moved if move.was == wet)
    assert {job.id for job in found.stays} >= {"bean-net/mark", "bean-net/bore"}


def test_a_sowing_slides_by_a_day() -> None:
    found = slid(season(TEXT), listed(TEXT), date(2027, 5, 18))
    moves = {move.job.id: move.becomes for move in found.moved}
    assert moves == {"bean-net/sow-pole-bean": date(2027, 5, 19)}


def test_rain_on_an_empty_day_moves_nothing() -> None:
    found = slid(season(TEXT), listed(TEXT), date(2027, 2, 10))
    assert found.moved == ()
    assert found.troubles == ()


def test_what_rain_makes_too_late_is_told() -> None:
    text = HEAD + "  person Isa\n  person Bram\n  free Saturday 6 h\n" + NET + "  ready by 22 May\n"
    today = date(2027, 5, 18)
    found = slid(season(text, today), listed(text, today), date(2027, 5, 22))
    assert [one.name for one in found.troubles] == ["overfull"]


def test_a_wet_day_has_work_under_a_roof() -> None:
    text = TEXT + "frame Pea Net, net frame\n  bays 1 of 6 ft\n  bar 2x2\n  ready by 29 May\n"
    found = slid(season(text), listed(text), date(2027, 5, 8))
    assert found.roof
    assert not any(is_outdoors(job) for job in found.roof)


@settings(max_examples=30)
@given(day=st.dates(date(2027, 4, 20), date(2027, 6, 10)))
def test_no_order_is_broken_by_rain(day: date) -> None:
    found = slid(season(TEXT), listed(TEXT), day).jobs
    planned = {job.id: job.planned for job in found.jobs}
    assert all(job.planned != day or not is_outdoors(job) or job.every_days for job in found.jobs)
    for before in gather(season(TEXT)).befores:
        first, then = planned.get(before.first), planned.get(before.then)
        if first is not None and then is not None:
            assert first + timedelta(days=before.wait[0]) <= then


def test_no_outdoor_work_stays_on_a_day_of_rain_though_no_other_has_hours() -> None:
    people = "  person Nell\n  person Wim\n  free Saturday 5 h\n"
    text = HEAD + people + NET + BEANS + "  ready by 18 May\n"
    today = date(2027, 5, 14)
    found = slid(season(text, today), listed(text, today), date(2027, 5, 15))
    assert not [job.id for job in found.stays if is_outdoors(job)]
    assert [job.id for job in found.stays]
    assert found.moved
    assert all(move.becomes > date(2027, 5, 15) for move in found.moved)
