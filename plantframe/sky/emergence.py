"""Days from sowing until seedlings show, by the warmth of the soil, as printed and in between."""

import math
from collections.abc import Mapping

# Days to emergence at constant soil temperature, seed 13 mm (half an inch) deep. A crop's missing
# temperature was not tested; NONE_CAME_UP is printed as "no germination".
# Source: Knott's Handbook for Vegetable Growers, 4th edition (Wiley, 1997), after a University of
# California Agricultural Extension leaflet of 1954; as reprinted in Teaching Organic Farming and
# Gardening (University of California, Santa Cruz), unit 1.3. Printed in °F: 32, 41, 50 ... 104,
# which are exactly 0, 5, 10 ... 40 °C. A copy by Oregon State University Extension differs by one
# day in ten places, and has its aubergine row one column to the left.
NONE_CAME_UP = math.inf
_TEMPERATURES_C = (0.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0)
_PRINTED = """
asparagus      NG   NG   53   24   15   10   12   20   28
lima bean      .    .    NG   31   18   7    7    NG   .
snap bean      NG   NG   NG   16   11   8    6    6    NG
beet           .    42   17   10   6    5    5    5    .
cabbage        .    .    15   9    6    5    4    .    .
carrot         NG   51   17   10   7    6    6    9    NG
cauliflower    .    .    20   10   6    5    5    .    .
celery         NG   41   16   12   7    NG   NG   NG   .
sweet corn     NG   NG   22   12   7    4    4    3    NG
cucumber       NG   NG   NG   13   6    4    3    3    .
aubergine      .    .    .    .    13   8    5    .    .
lettuce        49   15   7    4    3    2    3    NG   NG
muskmelon      .    .    .    .    8    4    3    .    .
okra           NG   NG   NG   27   17   13   7    6    7
onion          136  31   13   7    5    4    4    13   NG
parsley        .    .    29   17   14   13   12   .    .
parsnip        172  57   27   19   14   15   32   NG   NG
pea            .    36   14   9    8    6    6    .    .
pepper         NG   NG   NG   25   13   8    8    9    NG
radish         NG   29   11   6    4    4    3    .    .
spinach        63   23   12   7    6    5    6    NG   NG
tomato         NG   NG   43   14   8    6    6    9    NG
turnip         NG   NG   5    3    2    1    1    1    3
watermelon     .    NG   .    .    12   5    4    3    .
"""


def _row(line: str) -> tuple[str, dict[float, float]]:
    *name, a, b, c, d, e, f, g, h, i = line.split()
    return " ".join(name), {
        soil_c: NONE_CAME_UP if days == "NG" else float(days)
        for soil_c, days in zip(_TEMPERATURES_C, (a, b, c, d, e, f, g, h, i), strict=True)
        if days != "."
    }


# crop -> soil temperature in °C -> days, or NONE_CAME_UP
DAYS_TO_EMERGENCE: Mapping[str, Mapping[float, float]] = dict(
    _row(line) for line in _PRINTED.strip().splitlines()
)


def emergence_days(days_by_soil_c: Mapping[float, float], soil_c: float) -> float | None:
    """Days from sowing to the first seedlings at a steady soil temperature.

    days_by_soil_c   printed days at each soil temperature tested (°C), NONE_CAME_UP where nothing
                     came up: a row of DAYS_TO_EMERGENCE, or another table's
    soil_c           soil temperature at the depth of the seed

    None where print does not say: outside the temperatures tested, or between a temperature with
    a count of days and one where nothing came up. NONE_CAME_UP at and between temperatures where
    nothing came up. Between two counts the *rate* (one over the days) is read along a straight
    line; the answer lies between the two.

    Source: a germinating seed's rate rises in proportion to warmth (Garcia-Huidobro, Monteith and
    Squire, Journal of Experimental Botany 33, 1982; cited from memory).
    """
    if soil_c in days_by_soil_c:
        return days_by_soil_c[soil_c]
    cooler = max((c for c in days_by_soil_c if c < soil_c), default=None)
    warmer = min((c for c in days_by_soil_c if c > soil_c), default=None)
    if cooler is None or warmer is None:
        return None
    slow, fast = days_by_soil_c[cooler], days_by_soil_c[warmer]
    if math.isinf(slow) != math.isinf(fast):
        return None
    if math.isinf(slow):
        return NONE_CAME_UP
    share = (soil_c - cooler) / (warmer - cooler)
    return 1.0 / ((1.0 - share) / slow + share / fast)


def printed_range_c(days_by_soil_c: Mapping[float, float]) -> tuple[float, float] | None:
    """Coolest and warmest soil (°C) with a printed count of days; None where there is none.

    Source: the table it is given.
    """
    counted = [soil_c for soil_c, days in days_by_soil_c.items() if math.isfinite(days)]
    return (min(counted), max(counted)) if counted else None
