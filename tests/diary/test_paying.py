"""Did a frame pay: the hours its work is reckoned to take, by hand."""

from __future__ import annotations

import pytest

from plantframe.diary.paying import paid
from tests.diary.diaries import BED, HEAD, NET, season

LOG = "log 2 August, Bean Net, picked 1.4 kg\n"


def test_what_came_off_stands_beside_the_hours() -> None:
    (one,) = paid(season(HEAD + BED + NET + LOG))
    assert one.kg == pytest.approx(1.4)
    assert one.hours is not None
    assert 0 < one.hours[0] <= one.hours[1]


def test_hours_are_those_of_building_leading_picking_and_taking_down() -> None:
    """A frame without a crop: its building and taking down alone, added up from its jobs."""
    from datetime import date

    from plantframe.frozen import replace
    from plantframe.jobs.listing import jobs_of

    bare = season(HEAD + BED + NET.split("  grow")[0] + "  ready by 15 May\n")
    (one,) = paid(bare)
    jobs = jobs_of(replace(bare, today=date(2026, 8, 1))).jobs
    minutes = [job.minutes[1] * job.hands for job in jobs if job.minutes and not job.whenever]
    assert one.hours is not None
    assert one.hours[1] == pytest.approx(sum(minutes) / 60)
    (crop,) = paid(season(HEAD + BED + NET))
    assert crop.hours is not None
    assert crop.hours[1] > one.hours[1]


def test_hours_do_not_hang_on_the_day_they_are_asked_on() -> None:
    done = NET + "  done set the posts, 2 May\n"
    one, other = paid(season(HEAD + BED + NET))[0], paid(season(HEAD + BED + done))[0]
    assert one.hours is not None
    assert other.hours == pytest.approx(one.hours)
