"""How warm the soil is likely to be at sowing depth on a date: an estimate, with its range.

A soil thermometer outranks everything here. Where nobody has read one, the warmth 5-10 cm down is
taken as a sine wave through the year, hung on the average frosts: it stands at much the same
warmth on both frost dates, peaks midway between them, and swings the wider the shorter the
frost-free season is. Every constant is an estimate from memory, with no source; the range is meant
to be shown with the figure.
"""

import math
from dataclasses import dataclass
from datetime import date, timedelta

from plantframe.sky.frost import following, frost_free_days, nearest

# Mean of a day 5-10 cm down in open, unmulched ground on the average dates of last and first frost
# (estimate, from memory): the low end near a coast or in wet clay, the high end inland or in sand.
ON_FROST_DATE_C = (10.0, 12.5, 15.0)
# Half the yearly swing, per day of the year that is not frost-free (estimate, from memory): mild
# coasts, with 120 to 180 such days, swing 6 to 8 °C either way; inland, 240 days go with 18 °C.
SWING_C_PER_FROST_DAY = (0.045, 0.06, 0.075)
# Damp soil hangs about freezing point before it cools further; below that the wave says nothing.
COLDEST_C = 0.0
# A reading at eight in the morning runs so far under the mean of the day (estimate, from memory).
MORNING_BELOW_MEAN_C = 2.0

_YEAR_DAYS = 365.25


@dataclass(frozen=True)
class Warmth:
    """An estimated soil temperature in °C: likely lowest, middle and likely highest."""

    low_c: float
    middle_c: float
    high_c: float


def soil_warmth_c(
    average_last: date | None, average_first: date | None, day: date
) -> Warmth | None:
    """Estimated mean soil temperature of a day, 5-10 cm deep, in open ground.

    average_last    average last frost of spring, of any year, north or south
    average_first   average first frost of autumn, of any year
    day             the date asked about

    None where either frost does not come: without them there is nothing to hang the wave on.
    A morning reading is some MORNING_BELOW_MEAN_C lower.
    Basis: estimate (see the head of this module); never below COLDEST_C.
    """
    frost_free = frost_free_days(average_last, average_first)
    if average_last is None or frost_free is None:
        return None
    peak = average_last + timedelta(days=frost_free // 2)
    from_peak = (day - nearest(peak, day)).days
    warmer_than_frost_date = math.cos(math.tau * from_peak / _YEAR_DAYS) - math.cos(
        math.tau * (frost_free // 2) / _YEAR_DAYS
    )
    gain_c = [
        swing * (_YEAR_DAYS - frost_free) * warmer_than_frost_date
        for swing in SWING_C_PER_FROST_DAY
    ]
    low_c, middle_c, high_c = ON_FROST_DATE_C
    return Warmth(
        max(COLDEST_C, low_c + min(gain_c)),
        max(COLDEST_C, middle_c + gain_c[1]),
        max(COLDEST_C, high_c + max(gain_c)),
    )


def first_warm_day(
    average_last: date | None, average_first: date | None, soil_c: float, year: int
) -> date | None:
    """First day of the warming half-year whose estimated middle warmth reaches a temperature.

    average_last, average_first   as for `soil_warmth_c`
    soil_c                        mean soil temperature wanted
    year                          the year of the last frost meant

    None where either frost does not come, or where the soil is not expected to get so warm.
    Basis: estimate.
    """
    frost_free = frost_free_days(average_last, average_first)
    if average_last is None or frost_free is None:
        return None
    peak = following(average_last, date(year - 1, 12, 31)) + timedelta(days=frost_free // 2)
    for before_peak in range(182, -1, -1):
        day = peak - timedelta(days=before_peak)
        warmth = soil_warmth_c(average_last, average_first, day)
        if warmth is not None and warmth.middle_c >= soil_c:
            return day
    return None
