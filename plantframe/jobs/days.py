"""Days of the year in a gardener's words, and the days that are free."""

from __future__ import annotations

import calendar
from datetime import date, timedelta
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.jobs.job import Window
from plantframe.season import times

if TYPE_CHECKING:
    from plantframe.plan.dates import Dated
    from plantframe.plan.things import Garden

WEEKDAYS: Final = tuple(name.lower() for name in calendar.day_name)
SEARCHED_DAYS: Final = 62  # no free day within two months: the plan's free days are not kept to


def window_of(dated: Dated) -> Window:
    """The days a typed date leaves: a month alone is its middle, give or take two weeks."""
    give = timedelta(days=dated.give)
    return Window(dated.day - give, dated.day, dated.last + give, dated.said)


def time_of_year(words: str, garden: Garden) -> Window | None:
    """The days of this season that a time of year means: late winter; None where it means none."""
    found = times.time_of_year(words, garden)
    return Window(found.first, None, found.last, found.here) if found else None


def season_bounds(garden: Garden) -> tuple[date, date]:
    """The first and last day of the plan's work; autumn before belongs to it."""
    first, second = garden.seasons
    if garden.southern:
        return date(first, 2, 1), date(second, 9, 30)
    return date(first - 1, 8, 1), date(second, 12, 31)


@frozen
class FreeDays:
    """The days somebody is there to work: the weekdays the garden names, less days away."""

    garden: Garden

    def is_free(self, day: date) -> bool:
        """Whether there is time on that day."""
        named = self.garden.free_h
        if named and not named.get(WEEKDAYS[day.weekday()]):
            return False
        return not any(away.first <= day <= away.last for away in self.garden.away if not away.who)

    def home_from(self, day: date) -> date:
        """The first day from this one on which somebody is at home."""
        spans = [away for away in self.garden.away if not away.who]
        for away in sorted(spans, key=lambda one: one.first):
            if away.first <= day <= away.last:
                day = away.last + timedelta(days=1)
        return day

    def at_or_before(self, day: date) -> date:
        """The last free day up to this one, or the day itself where there is none near."""
        return self._near(day, -1)

    def at_or_after(self, day: date) -> date:
        """The first free day from this one, or the day itself where there is none near."""
        return self._near(day, 1)

    def _near(self, day: date, step: int) -> date:
        return next(
            (
                other
                for days in range(SEARCHED_DAYS)
                if self.is_free(other := day + timedelta(days=days * step))
            ),
            day,
        )
