"""What the hands can lift: the revised lifting equation of NIOSH, and the filter of the HSE.

Guidance for healthy adults at work, not a promise to any one back: a gardener's own figure goes
before it.
"""

from __future__ import annotations

import math

LOAD_CONSTANT_KG = 23.0  # NIOSH 1991: lifted close, waist high, straight, seldom, with handles

COUPLING_FACTORS = {"good": 1.0, "fair": 0.95, "poor": 0.90}  # below 75 cm

# NIOSH 1991, frequency multiplier for at most an hour, by lifts a minute. Three lifts a minute is
# read in a printed example; the other values are from memory.
FREQUENCY_FACTORS_ONE_HOUR = (
    (0.2, 1.00),
    (0.5, 0.97),
    (1, 0.94),
    (2, 0.91),
    (3, 0.88),
    (4, 0.84),
    (5, 0.80),
    (6, 0.75),
    (7, 0.70),
    (8, 0.60),
    (9, 0.52),
    (10, 0.45),
)

# HSE, lifting and lowering filter, load close to the body, kg: men, women.
FILTER_KG = {
    "head height": (10, 7),
    "shoulder": (20, 13),
    "elbow": (25, 16),
    "knuckle": (20, 13),
    "mid lower leg": (10, 7),
}


def horizontal_factor(reach_m: float) -> float:
    """Multiplier for how far from the ankles the hands are, no unit. Reach in m.

    Source: NIOSH 1991, HM = 25/H (cm); 1 within 25 cm, and beyond 63 cm nothing may be lifted.
    """
    if reach_m > 0.63:
        return 0.0
    return 0.25 / max(reach_m, 0.25)


def vertical_factor(height_m: float) -> float:
    """Multiplier for the height of the hands at the start, no unit. Height above the floor in m.

    Source: NIOSH 1991, VM = 1 - 0.003 |V - 75| (cm). The upper end, 175 cm, is from memory.
    """
    if height_m > 1.75:
        return 0.0
    return 1 - 0.3 * abs(height_m - 0.75)


def distance_factor(travel_m: float) -> float:
    """Multiplier for how far up or down the load goes, no unit. Travel in m.

    Source: NIOSH 1991, DM = 0.82 + 4.5/D (cm), and 1 up to 25 cm. Beyond 175 cm nothing may be
    lifted (that end from memory).
    """
    if travel_m > 1.75:
        return 0.0
    return 0.82 + 0.045 / max(travel_m, 0.25)


def twist_factor(twist_deg: float) -> float:
    """Multiplier for a twist of the body, no unit. Twist in degrees, 0 or more.

    Source: NIOSH 1991, AM = 1 - 0.0032 A. Beyond 135 degrees nothing may be lifted.
    """
    return 0.0 if twist_deg > 135 else 1 - 0.0032 * twist_deg


def coupling_factor(grip: str, height_m: float) -> float:
    """Multiplier for the grip, "good", "fair" or "poor", no unit. Height of the hands in m.

    Raises ValueError for another word.
    Source: NIOSH 1991; a fair grip costs nothing from 75 cm up.
    """
    if grip not in COUPLING_FACTORS:
        raise ValueError(f"a grip is good, fair or poor, not {grip!r}")
    return 1.0 if grip == "fair" and height_m >= 0.75 else COUPLING_FACTORS[grip]


def frequency_factor(lifts_per_min: float) -> float:
    """Multiplier for work of an hour at most, no unit, by lifts a minute.

    Between rows of the table the next busier one is taken; beyond ten a minute, none may be made.
    Source: NIOSH 1991, frequency table; 3 a minute as printed in an example, the rest from memory.
    """
    for most, factor in FREQUENCY_FACTORS_ONE_HOUR:
        if lifts_per_min <= most:
            return factor
    return 0.0


def recommended_weight_kg(
    reach_m: float,
    height_m: float,
    travel_m: float,
    *,
    twist_deg: float = 0.0,
    frequency_factor: float = 1.0,
    grip: str = "good",
) -> float:
    """Weight that nearly all healthy workers may lift so, kg.

    reach_m            hands to ankles, level, m
    height_m           hands above the floor at the start, m
    travel_m           how far up or down, m
    twist_deg          twist of the body, degrees
    frequency_factor   `frequency_factor`, no unit; 1 for a lift now and then
    grip               "good", "fair" or "poor"

    Raises ValueError for another grip. Both hands, standing, no slipping, no ladder, one person.
    Source: NIOSH 1991, revised lifting equation, RWL = LC HM VM DM AM FM CM.
    """
    return (
        LOAD_CONSTANT_KG
        * horizontal_factor(reach_m)
        * vertical_factor(height_m)
        * distance_factor(travel_m)
        * twist_factor(twist_deg)
        * frequency_factor
        * coupling_factor(grip, height_m)
    )


def lifting_ratio(load_kg: float, recommended_kg: float) -> float:
    """Load over recommended weight, no unit; above 1 it asks too much of some.

    Loads in kg; without bound where nothing may be lifted.
    Source: NIOSH 1991, lifting index LI = L / RWL.
    """
    return load_kg / recommended_kg if recommended_kg > 0 else math.inf


def hands_needed(load_kg: float, each_kg: float) -> int:
    """People it takes when each lifts up to so much, at least one.

    load_kg   the load, kg
    each_kg   what one person may lift, kg, above zero

    Two people do not share a load quite evenly; nothing is taken off for it here.
    Source: division; the limit is the person's own, or NIOSH's 23 kg.
    """
    return max(1, math.ceil(round(load_kg / each_kg, 9)))
