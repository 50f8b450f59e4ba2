"""How likely a frost still is, or already is, on a date; and the dates a careful grower uses.

An average last frost is the middle of many years: in one year in two a frost comes later. Dates
of a chance are reckoned by a normal distribution about the average. That holds where every year
has its frost; a garden without frost has no average date, and every function then answers None.
"""

import math
from datetime import date, timedelta

# Spread (standard deviation) of the last frost in spring and the first in autumn, in days.
# Source: University of Delaware, Research and Education Center, Georgetown, frost dates by
# probability (weather service data, 1970). At 0 °C (32 °F) it prints, for 10, 33, 50, 67 and 90 %,
#   after, in spring     10 May, 30 April, 25 April, 20 April, 10 April
#   before, in autumn    2 October, 11 October, 16 October, 21 October, 30 October
# Half the days from 10 to 90 %, over 1.2816 (the normal distribution's one-in-ten mark), is a
# standard deviation.
SPRING_SPREAD_DAYS = 11.70
AUTUMN_SPREAD_DAYS = 10.92
# The same table's rows for -4 °C and -9 °C (24 and 16 °F) range so, and one place is one place:
# elsewhere a spread within these bounds, or a little beyond, is an estimate.
LEAST_SPREAD_DAYS = 9.4
MOST_SPREAD_DAYS = 12.5


def last_frost_at_chance(
    average_last: date | None, chance: float, spread_days: float = SPRING_SPREAD_DAYS
) -> date | None:
    """Date after which a frost still comes with a given chance.

    average_last   average date of the last frost of spring; None where there is no frost
    chance         0 to 1, ends excluded: 0.1 is the careful, late date; 0.9 an early one
    spread_days    standard deviation of the date

    Raises ValueError for a chance that is not between 0 and 1, or a spread below 0.
    Source: normal distribution; it gives the ten 0 °C dates of the Delaware table to the day.
    """
    if average_last is None:
        return None
    return average_last - timedelta(days=round(_marks_from_middle(chance) * _checked(spread_days)))


def first_frost_at_chance(
    average_first: date | None, chance: float, spread_days: float = AUTUMN_SPREAD_DAYS
) -> date | None:
    """Date before which a frost has already come with a given chance.

    average_first   average date of the first frost of autumn; None where there is no frost
    chance          0 to 1, ends excluded: 0.1 is the careful, early date
    spread_days     standard deviation of the date

    Raises ValueError as `last_frost_at_chance` does. Source: as there.
    """
    if average_first is None:
        return None
    return average_first + timedelta(days=round(_marks_from_middle(chance) * _checked(spread_days)))


def one_in_ten_last_day(
    average_last: date | None, spread_days: float = SPRING_SPREAD_DAYS
) -> date | None:
    """Date after which a frost comes in one spring out of ten.

    Source: as `last_frost_at_chance`.
    """
    return last_frost_at_chance(average_last, 0.1, spread_days)


def one_in_ten_first_day(
    average_first: date | None, spread_days: float = AUTUMN_SPREAD_DAYS
) -> date | None:
    """Date before which a frost comes in one autumn out of ten.

    Source: as `last_frost_at_chance`.
    """
    return first_frost_at_chance(average_first, 0.1, spread_days)


def spring_frost_chance(
    day: date, average_last: date | None, spread_days: float = SPRING_SPREAD_DAYS
) -> float | None:
    """Chance, 0 to 1, that a spring frost comes after a date.

    day            the date asked about
    average_last   average last frost, of any year: the spring nearest to the day is meant
    spread_days    standard deviation; 0 takes the average for a certainty

    Raises ValueError for a spread below 0. Source: as `last_frost_at_chance`.
    """
    if average_last is None:
        return None
    return 1.0 - _share_before((day - nearest(average_last, day)).days, _checked(spread_days))


def autumn_frost_chance(
    day: date, average_first: date | None, spread_days: float = AUTUMN_SPREAD_DAYS
) -> float | None:
    """Chance, 0 to 1, that an autumn frost has come before a date.

    day             the date asked about
    average_first   average first frost, of any year: the autumn nearest to the day is meant
    spread_days     standard deviation; 0 takes the average for a certainty

    Raises ValueError for a spread below 0. Source: as `last_frost_at_chance`.
    """
    if average_first is None:
        return None
    return _share_before((day - nearest(average_first, day)).days, _checked(spread_days))


def frost_free_days(average_last: date | None, average_first: date | None) -> int | None:
    """Days from the average last frost to the next average first frost, over New Year if need be.

    Only day and month of the two dates count. None where either frost does not come.
    Source: the calendar.
    """
    if average_last is None or average_first is None:
        return None
    return (following(average_first, average_last) - average_last).days


def nearest(yearly: date, day: date) -> date:
    """The yearly date's return that lies closest to a day.

    Source: the calendar; 29 February returns as the 28th in a common year.
    """
    returns = [in_year(yearly, day.year + step) for step in (-1, 0, 1)]
    return min(returns, key=lambda one: abs((one - day).days))


def following(yearly: date, day: date) -> date:
    """The yearly date's first return after a day.

    Source: the calendar, as `nearest`.
    """
    this_year = in_year(yearly, day.year)
    return this_year if this_year > day else in_year(yearly, day.year + 1)


def in_year(yearly: date, year: int) -> date:
    """The same day and month in another year.

    Source: the calendar, as `nearest`.
    """
    if yearly.month == 2 and yearly.day == 29:
        return date(year, 3, 1) - timedelta(days=1)
    return yearly.replace(year=year)


def _marks_from_middle(chance: float) -> float:
    """Standard deviations from the middle at which a normal distribution has gone so far."""
    from statistics import NormalDist

    if not 0.0 < chance < 1.0:
        raise ValueError(f"a chance lies between 0 and 1, not at {chance:g}")
    return NormalDist().inv_cdf(chance)


def _share_before(days_past_average: int, spread_days: float) -> float:
    if spread_days == 0.0:
        return 0.5 if days_past_average == 0 else float(days_past_average > 0)
    return 0.5 * math.erfc(-days_past_average / (spread_days * math.sqrt(2.0)))


def _checked(spread_days: float) -> float:
    if not spread_days >= 0.0:
        raise ValueError(f"a spread of dates cannot be less than nothing: {spread_days:g} days")
    return spread_days
