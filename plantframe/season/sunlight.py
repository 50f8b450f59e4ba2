"""Hours of direct sun where the plan gives none but the sky can tell."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from plantframe.language.slots import COMPASS

if TYPE_CHECKING:
    from plantframe.plan.things import Garden, Thing


def wall_sun_h(wall: Thing | None, garden: Garden) -> tuple[float, float] | None:
    """Hours on a wall from spring to autumn: what it says itself, else what the sky gives it.

    The lesser and the mean of two days, equinox and midsummer: a wall that faces the pole sees the
    sun only round midsummer, early and late. Nothing that stands before the wall is reckoned with.
    None where the wall does not say which way it faces, or the garden not where it is.
    """
    if wall is None or wall.sun_h is not None:
        return wall.sun_h if wall else None
    faces, latitude = faces_deg(wall), garden.latitude
    if faces is None or latitude is None or not garden.year:
        return None
    from plantframe.sky.shadow import wall_sun_hours

    midsummer = date(garden.year, 6, 21) if latitude >= 0 else date(garden.year, 12, 21)
    equinox, summer = (
        wall_sun_hours(latitude, day, faces) for day in (date(garden.year, 3, 21), midsummer)
    )
    mean = (equinox + summer) / 2
    return min(equinox, mean), mean


def faces_deg(wall: Thing) -> float | None:
    """Compass bearing a wall looks towards; one on the west side of a garden looks east."""
    if wall.faces in COMPASS:
        return COMPASS[wall.faces]
    sides = [spot.part.removesuffix(" side") for spot in wall.spots if spot.part.endswith(" side")]
    found = next((COMPASS[side] for side in sides if side in COMPASS), None)
    return None if found is None else (found + 180.0) % 360.0
