"""Children in the garden as the rules ask of them: how old, and where they play."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.season.units import listed, two_figures

if TYPE_CHECKING:
    from plantframe.plan.things import Frame, Garden

BIG_YEARS = 13  # from then on they are told, and know (common practice, no source)
PLAY = re.compile(
    r"\b(?:the )?((?:[\w-]+ )?(?:lawn|sand ?pit|swings?|slide|playground|play ?house))\b",
    re.IGNORECASE,
)


def small_children(garden: Garden) -> str:
    """`children of 3 and 6`, `small children` where no age is given, "" where there are none."""
    if garden.children is None:
        return ""
    small = [age for age in garden.children if age < BIG_YEARS]
    if garden.children and not small:
        return ""
    if not small:
        return "small children"
    ages = listed([two_figures(age) for age in small])
    return f"a child of {ages}" if len(small) == 1 else f"children of {ages}"


def played_near(frame: Frame) -> str:
    """The lawn, swing or sandpit that its head places it by: `the ball lawn`."""
    for spot in frame.spots:
        found = PLAY.search(spot.said)
        if found and (spot.distance_m is None or spot.distance_m < 5.0):
            return f"the {found[1]}"
    return ""
