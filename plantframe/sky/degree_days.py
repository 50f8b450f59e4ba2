"""Warmth added up over days: degree-days above a lower and below an upper threshold."""

import math
from collections.abc import Iterable


def single_sine_degree_days(
    min_c: float, max_c: float, lower_c: float, upper_c: float = math.inf
) -> float:
    """Degree-days of one day, its temperature taken as a sine wave from lowest to highest.

    min_c, max_c   lowest and highest air temperature of the day
    lower_c        threshold below which the plant or pest does not develop
    upper_c        threshold above which more warmth brings no more (horizontal cut-off)

    Degree-days (°C × days) are the area under the wave above the lower threshold less the area
    above the upper one; the textbook's six cases all follow from that one difference.

    Raises ValueError where the lowest exceeds the highest, or the thresholds are crossed.
    Source: single sine method with horizontal cut-off, as the University of California Statewide
    Integrated Pest Management Program uses it (Baskerville and Emin, Ecology 50, 1969; the paper
    cited from memory).
    """
    if not min_c <= max_c:
        raise ValueError(f"the lowest of the day, {min_c:g} °C, is above the highest, {max_c:g} °C")
    if not lower_c <= upper_c:
        raise ValueError(f"the lower threshold, {lower_c:g} °C, is above the upper, {upper_c:g} °C")
    return _above_degree_days(min_c, max_c, lower_c) - _above_degree_days(min_c, max_c, upper_c)


def days_to_reach(
    degree_days: float,
    days_min_max_c: Iterable[tuple[float, float]],
    lower_c: float,
    upper_c: float = math.inf,
) -> int | None:
    """Number of days until so many degree-days have come together; None if they never do.

    degree_days      the sum wanted
    days_min_max_c   lowest and highest air temperature of each day, in order
    lower_c, upper_c   thresholds, as for `single_sine_degree_days`

    Raises ValueError as that function does. Source: as there.
    """
    gathered = 0.0
    if degree_days <= gathered:
        return 0
    for count, (min_c, max_c) in enumerate(days_min_max_c, start=1):
        gathered += single_sine_degree_days(min_c, max_c, lower_c, upper_c)
        if gathered >= degree_days:
            return count
    return None


def _above_degree_days(min_c: float, max_c: float, threshold_c: float) -> float:
    """Area of the day's wave above one threshold."""
    mean_c = (max_c + min_c) / 2.0
    swing_c = (max_c - min_c) / 2.0
    if max_c <= threshold_c:
        return 0.0
    if min_c >= threshold_c:
        return mean_c - threshold_c
    crosses = math.asin((threshold_c - mean_c) / swing_c)
    return (
        (mean_c - threshold_c) * (math.pi / 2.0 - crosses) + swing_c * math.cos(crosses)
    ) / math.pi
