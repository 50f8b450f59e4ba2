"""Is there light enough where it would stand."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.pairing.climber import word
from plantframe.pairing.pair import Pair, fair, good, out
from plantframe.pairing.wording import capital
from plantframe.season.sunlight import wall_sun_h

if TYPE_CHECKING:
    from plantframe.catalogue.sourced import Sourced
    from plantframe.pairing.matches import Reason
    from plantframe.pairing.supports import Support

FULL_SUN_H = 8.0


def lighting(pair: Pair) -> Reason:
    """Hours of direct sun there, against the hours it wants."""
    climber, support = pair.climber, pair.support
    wants = climber.sun_h
    likes = word(climber.entry.other.get("light"))
    if wants is None:
        return good("light", f"Nobody has said how much sun {climber.said} wants.")
    need = f"{climber.said} wants {_hours(wants)} of sun"
    need += _beside(climber.entry.sun)
    has = sun_at(support)
    if has is None and not support.here:
        return good("light", f"{capital(need)}: look for such a place.")
    if has is None:
        return fair("light", f"{capital(need)}; nobody has said how much {support.here} has.")
    place = f"{support.here or 'The place'} has {_hours(has)} of sun; {need}"
    shade = "shade" in likes.replace("part shade", "")
    if has[1] < wants[0] and not shade:
        return out("light", f"{place}: too little.")
    if sum(has) / 2 < wants[0] and not shade:
        return fair("light", f"{place}: it may do, with less to show for it.")
    if likes.startswith("part shade") and "sun" not in likes and has[0] >= FULL_SUN_H:
        return fair("light", f"{place}, and scorches in more.")
    return good("light", f"{place}.")


def sun_at(support: Support) -> tuple[float, float] | None:
    """Hours of direct sun there, low and high; None where nobody can say."""
    if support.worked is not None:
        return support.worked.sun_h
    if support.wall is None and support.bed is not None:
        return support.bed.sun_h
    return wall_sun_h(support.wall, support.garden)


def _beside(sun: Sourced | None) -> str:
    """What the entry says beside the hours, where it is of the plant and not of the source."""
    doubt = sun.doubt if sun is not None else ""
    of_the_source = any(sign in doubt for sign in ("memory", "said of", ";", "printed"))
    return f", {doubt}" if doubt and not of_the_source else ""


def _hours(span: tuple[float, float]) -> str:
    low, high = (f"{one:.0f}" for one in span)
    return f"{low} hours" if low == high else f"{low} to {high} hours"
