"""What stands beside what, and on which side, as the plan's places say it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.frozen import frozen
from plantframe.language.slots import COMPASS

if TYPE_CHECKING:
    from collections.abc import Iterator

    from plantframe.plan.things import Bed, Frame, Plan, Spot, Thing


@frozen
class Neighbour:
    """Something to one side of a thing.

    bearing_deg   compass bearing towards it
    distance_m    clear ground between, None where the plan does not say
    spot          the place that says so
    own           whether that place is the thing's own and not the neighbour's
    """

    thing: Bed | Frame | Thing
    bearing_deg: float
    distance_m: float | None
    spot: Spot
    own: bool


def beside(plan: Plan, name: str) -> Iterator[Neighbour]:
    """Everything that the plan places north, south, east … of a thing, or the thing of it."""
    here = plan.named(name)
    for spot in here.spots if here is not None else ():
        found = plan.named(spot.thing)
        if spot.relation in COMPASS and found is not None:
            bearing = (COMPASS[spot.relation] + 180.0) % 360.0
            yield Neighbour(found, bearing, spot.distance_m, spot, own=True)
    for other, spot in plan.placed_by.get(name, ()):
        if spot.relation in COMPASS:
            bearing = COMPASS[spot.relation]
            yield Neighbour(other, bearing, spot.distance_m, spot, own=False)


def apart_deg(one: float, other: float) -> float:
    """Angle between two bearings, 0 to 180."""
    return abs((one - other + 180.0) % 360.0 - 180.0)
