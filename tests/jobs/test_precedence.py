"""Random gardens: whatever their frames, dates, people and hours, no order is broken."""

from __future__ import annotations

from datetime import date, timedelta

from hypothesis import given, settings
from hypothesis import strategies as st

from plantframe.jobs.gathering import gather
from plantframe.jobs.order import without_circles
from tests.jobs.gardens import listed, season
from tests.jobs.random_gardens import DAYS, gardens


@settings(max_examples=120)
@given(
    text=gardens(),
    today=st.dates(date(2026, 9, 1), date(2027, 12, 31)),
    rain=st.none() | DAYS,
)
def test_order_and_waits_are_kept_whatever_the_dates(
    text: str, today: date, rain: date | None
) -> None:
    from plantframe.jobs.listing import jobs_of

    garden = season(text, today)
    found = jobs_of(garden, (rain,) if rain else ())
    drafts = gather(garden)
    befores, left_out = without_circles(tuple(drafts.by_id), drafts.befores)
    assert not left_out
    place = {job.id: at for at, job in enumerate(found.jobs)}
    day = {job.id: job.planned for job in found.jobs}
    for before in befores:
        first, then = before.first, before.then
        if first not in place or then not in place:
            continue
        assert place[first] < place[then], (first, then)
        one, other = day[first], day[then]
        if one is not None and other is not None:
            assert one + timedelta(days=before.wait[0]) <= other, (first, one, then, other)


@settings(max_examples=40)
@given(text=gardens(), today=st.dates(date(2026, 9, 1), date(2027, 12, 31)))
def test_nothing_still_to_be_done_is_planned_before_today(text: str, today: date) -> None:
    for job in listed(text, today).jobs:
        assert job.planned is None or job.planned >= today or today > date(2027, 12, 31)


@settings(max_examples=30)
@given(text=gardens(), today=st.dates(date(2026, 9, 1), date(2027, 8, 31)))
def test_the_same_plan_and_day_give_the_same_list(text: str, today: date) -> None:
    one, other = listed(text, today), listed(text, today)
    assert one.jobs == other.jobs
    assert one.troubles == other.troubles
