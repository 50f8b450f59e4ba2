"""Times of the year in this garden: what `early spring` means here, by its frosts.

The names of the seasons are those of garden calendars, three months each from March on; a garden
whose frosts are earlier or later than usual has its springs and autumns earlier or later too, by
less than the frosts themselves.
"""

from __future__ import annotations

import re
from datetime import date, timedelta
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.season.units import MONTHS as NAMES

if TYPE_CHECKING:
    from plantframe.plan.dates import Dated
    from plantframe.plan.things import Garden

# First and last month, north of the equator; half a year on south of it. The convention of
# meteorologists and of garden calendars: spring is March to May (common practice, no source).
MONTHS: Final = {
    "early spring": (3, 3),
    "mid spring": (4, 4),
    "late spring": (5, 5),
    "spring": (3, 5),
    "early summer": (6, 6),
    "midsummer": (7, 7),
    "high summer": (7, 7),
    "late summer": (8, 8),
    "summer": (6, 8),
    "early autumn": (9, 9),
    "mid autumn": (10, 10),
    "late autumn": (11, 11),
    "autumn": (9, 11),
    "early winter": (12, 12),
    "midwinter": (1, 1),
    "late winter": (2, 2),
    "winter": (1, 2),
}
_SEASON = re.compile("|".join(sorted(MONTHS, key=len, reverse=True)))
# The frosts of a garden whose seasons fall in those months: day of the year, north (estimate).
USUAL_LAST: Final = (5, 11)
USUAL_FIRST: Final = (10, 5)
# Buds and leaves move by less than frosts do: some two days in five (estimate, from memory of the
# rule that spring comes four days later for a degree of latitude), and by some three weeks at most.
SHARE: Final = 0.4
MOST_DAYS: Final = 24
TROPIC_DEG: Final = 23.44  # the sun's greatest declination: between the tropics no cold season
# How far the first day of each month moves with spring's shift and with autumn's.
_MOVES: Final = {
    **dict.fromkeys((3, 4, 5, 6), (1.0, 0.0)),
    2: (0.5, 0.0),
    7: (0.5, 0.0),
    **dict.fromkeys((9, 10, 11, 12), (0.0, 1.0)),
}


@frozen
class TimeOfYear:
    """The days that a time of year means in a garden.

    words   early spring
    """

    words: str
    first: date
    last: date

    @property
    def here(self) -> str:
        """`early spring here: 10 to 30 March`."""
        return f"{self.words} here: {days_words(self.first, self.last)}"


def time_of_year(words: str, garden: Garden) -> TimeOfYear | None:
    """The days of this season that a time of year means; None where the words name none.

    None too between the tropics where there is no frost: there is no early spring there.
    """
    found = _SEASON.search(words.lower())
    if found is None or is_tropical(garden):
        return None
    first, last = MONTHS[found[0]]
    if garden.southern:
        first, last = (first + 5) % 12 + 1, (last + 5) % 12 + 1
    year = _year_of(first, garden)
    after = last % 12 + 1
    start = _opens(first, year, garden)
    stop = _opens(after, year + (after <= first), garden) - timedelta(days=1)
    return TimeOfYear(found[0], start, stop)


def names_a_time(words: str) -> bool:
    """Whether words name a season of the year."""
    return _SEASON.search(words.lower()) is not None


def is_tropical(garden: Garden) -> bool:
    """Between the tropics, and the plan says that there is no frost."""
    return garden.frost_none and garden.latitude is not None and abs(garden.latitude) < TROPIC_DEG


def days_words(first: date, last: date) -> str:
    """`10 to 30 March`, `24 February to 26 March`, `10 March`."""
    end = f"{last.day} {NAMES[last.month - 1]}"
    if first == last:
        return end
    if (first.year, first.month) == (last.year, last.month):
        return f"{first.day} to {end}"
    return f"{first.day} {NAMES[first.month - 1]} to {end}"


def _year_of(month: int, garden: Garden) -> int:
    """The calendar year of a month of the plan's season."""
    first, second = garden.seasons
    return first if first == second or month >= 7 else second


def _opens(month: int, year: int, garden: Garden) -> date:
    """The day on which what is usually a month of the calendar begins in this garden."""
    plain = date(year, month, 1)
    northern = (month + 5) % 12 + 1 if garden.southern else month
    spring, autumn = _MOVES.get(northern, (0.0, 0.0))
    days = spring * _shift_days(garden, USUAL_LAST, garden.frost_last)
    days += autumn * _shift_days(garden, USUAL_FIRST, garden.frost_first)
    return plain + timedelta(days=round(days))


def _shift_days(garden: Garden, usual: tuple[int, int], frost: Dated | None) -> float:
    """Days that a season is later than usual here, less than nothing for earlier."""
    spring = usual == USUAL_LAST
    if frost is None:
        return (-MOST_DAYS if spring else MOST_DAYS) if garden.frost_none else 0.0
    month = (usual[0] + 5) % 12 + 1 if garden.southern else usual[0]
    later = (frost.day - date(frost.day.year, month, usual[1])).days
    later = (later + 182) % 365 - 182  # a frost of New Year's Eve is not eleven months late
    return max(-MOST_DAYS, min(MOST_DAYS, SHARE * later))
