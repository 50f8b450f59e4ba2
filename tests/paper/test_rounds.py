"""Rounds as columns of boxes."""

from __future__ import annotations

from datetime import date

from plantframe.jobs.job import PICK, Job
from plantframe.paper.rounds import columns_of, round_days


def picking(first: date, last: date, every: tuple[int, int]) -> Job:
    return Job("a", "pick", "Bean Net", PICK, planned=first, until=last, every_days=every)


def test_a_weekly_round_of_five_weeks_has_five_days() -> None:
    days = round_days(picking(date(2027, 6, 7), date(2027, 7, 9), (7, 7)))
    assert [day.day for day in days] == [7, 14, 21, 28, 5]


def test_a_short_season_goes_by_weeks_that_begin_on_a_monday() -> None:
    columns = columns_of([picking(date(2027, 6, 9), date(2027, 7, 9), (2, 3))])
    assert columns is not None
    assert columns.starts[0] == date(2027, 6, 7)
    assert columns.heads[0] == "7 Jun"


def test_a_long_season_goes_by_months() -> None:
    columns = columns_of([picking(date(2027, 3, 1), date(2027, 10, 30), (7, 7))])
    assert columns is not None
    assert columns.heads == ("Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct")


def test_every_day_of_a_round_falls_in_some_column() -> None:
    job = picking(date(2027, 6, 9), date(2027, 8, 1), (14, 14))
    columns = columns_of([job])
    assert columns is not None
    assert sum(columns.of(job)) == len(round_days(job))


def test_without_rounds_there_are_no_columns() -> None:
    assert columns_of([Job("a", "look", "Bean Net", PICK, whenever="after a gale")]) is None
