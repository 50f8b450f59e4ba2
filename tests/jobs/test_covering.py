"""The days a cover is on: the plan's own, and those still running from the autumn before."""

from __future__ import annotations

from datetime import date

import pytest

from plantframe.jobs.covering import spans_on
from tests.jobs.gardens import HEAD, SOUTH, listed, season, the

BOX = "cover Salad Box, cold frame\n  size 8 ft x 4 ft\n  lights 4\n"
WINTER = BOX + "  on 1 October to 15 April\n"


@pytest.mark.parametrize(
    ("today", "spans"),
    [
        (date(2027, 1, 10), 2),
        (date(2027, 4, 15), 2),
        (date(2027, 4, 16), 1),
        (date(2027, 11, 1), 1),
    ],
)
def test_a_box_that_stands_is_on_since_last_autumn_until_its_day_in_spring(
    today: date, spans: int
) -> None:
    frame = season(HEAD + WINTER + "  built 2020\n", today).frames["Salad Box"]
    assert len(spans_on(frame, today)) == spans


def test_a_box_still_to_be_built_was_not_on_last_winter() -> None:
    day = date(2027, 1, 10)
    assert len(spans_on(season(HEAD + WINTER, day).frames["Salad Box"], day)) == 1


def test_it_is_aired_from_today_and_its_lights_come_off_in_spring() -> None:
    found = listed(HEAD + WINTER + "  built 2020\n", date(2027, 1, 10))
    vents = [job for job in found.jobs if "care-vent" in job.id]
    assert [(job.planned, job.until) for job in vents] == [
        (date(2027, 1, 10), date(2027, 4, 15)),
        (date(2027, 10, 1), date(2028, 4, 15)),
    ]
    off = [job.planned for job in found.jobs if job.kind == "take down"]
    assert off == [date(2027, 4, 15), date(2028, 4, 15)]


def test_a_southern_winter_that_still_runs_is_aired_too() -> None:
    text = SOUTH + BOX + "  on 1 May to 30 September\n  built 2021\n"
    vents = [job for job in listed(text, date(2026, 8, 1)).jobs if "care-vent" in job.id]
    assert vents[0].planned == date(2026, 8, 1)
    assert vents[0].until == date(2026, 9, 30)


def test_the_rounds_of_the_plans_own_days_keep_their_names() -> None:
    text = HEAD + WINTER + "  built 2020\n"
    winter, summer = listed(text, date(2027, 1, 10)), listed(text, date(2027, 7, 1))
    own = the(winter, "salad-box/care-vent")
    assert own.planned == the(summer, "salad-box/care-vent").planned == date(2027, 10, 1)
