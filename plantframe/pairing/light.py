"""Is there light enough where it would stand."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from plantframe.pairing.climber import word
from plantframe.pairing.pair import Pair, fair, good, out
from plantframe.pairing.supports import capital
from plantframe.sky.shadow import wall_sun_hours

if TYPE_CHECKING:
    from plantframe.catalogue.sourced import Sourced
    from plantframe.pairing.matches import Reason
    from plantframe.pairing.supports import Support
    from plantframe.plan.things import Thing

COMPASS_DEG = {
    name: 45.0 * place
    for place, name in enumerate(
        ("north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west")
    )
}
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
    """Hours of direct sun there, low and high; None where nobody can say.

    What the plan says comes first; else the sky's own hours on a wall whose facing and latitude are
    known.
    """
    if support.worked is not None and support.worked.sun_h is not None:
        return support.worked.sun_h
    wall = support.wall
    if wall is not None:
        return wall.sun_h or wall_hours(wall, support.garden.latitude, support.garden.year)
    return support.bed.sun_h if support.bed else None


def wall_hours(wall: Thing, latitude_deg: float | None, year: int) -> tuple[float, float] | None:
    """Hours of clear sun on a wall from spring to autumn: the lesser and the mean of two days.

    Taken at the equinox and at midsummer, since a wall that faces the pole sees the sun only round
    midsummer, low and slanting. Nothing that stands before the wall is reckoned with.
    """
    faces = COMPASS_DEG.get(wall.faces)
    if faces is None or latitude_deg is None or not year:
        return None
    midsummer = date(year, 6, 21) if latitude_deg >= 0 else date(year, 12, 21)
    equinox, summer = (
        wall_sun_hours(latitude_deg, day, faces) for day in (date(year, 3, 21), midsummer)
    )
    mean = (equinox + summer) / 2
    return min(equinox, mean), mean


def _beside(sun: Sourced | None) -> str:
    """What the entry says beside the hours, where it is of the plant and not of the source."""
    doubt = sun.doubt if sun is not None else ""
    of_the_source = any(sign in doubt for sign in ("memory", "said of", ";", "printed"))
    return f", {doubt}" if doubt and not of_the_source else ""


def _hours(span: tuple[float, float]) -> str:
    low, high = (f"{one:.0f}" for one in span)
    return f"{low} hours" if low == high else f"{low} to {high} hours"
