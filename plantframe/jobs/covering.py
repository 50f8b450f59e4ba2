"""The days a cover has its lights or cloth on: those of the plan, and those still running."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from datetime import date

    from plantframe.season.frames import WorkedFrame


def spans_on(frame: WorkedFrame, today: date) -> tuple[tuple[date, date], ...]:
    """The first and last days it is on, those the plan's own dates mean first.

    `on 1 October to 15 April` means the autumn of the season and the spring after it; a cover that
    stands already is on since the autumn before as well, until a day that is still to come.
    """
    on = frame.frame.on
    if on is None:
        return ()
    before = _year_before(on.day), _year_before(on.last)
    runs = frame.stands and today <= before[1] < on.day
    return ((on.day, on.last), before) if runs else ((on.day, on.last),)


def _year_before(day: date) -> date:
    leap = (day.month, day.day) == (2, 29)
    return day.replace(year=day.year - 1, day=28 if leap else day.day)
