"""The wall a plant grows on."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from plantframe.plan.things import Thing
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season


def wall_of(planting: WorkedPlanting, season: Season) -> Thing | None:
    """The wall that a planting grows on, or that its frame is fixed to."""
    frame = season.frames.get(planting.holder)
    if frame is not None:
        return frame.wall
    thing = season.plan.things.get(planting.holder)
    return thing if thing is not None and thing.word in {"wall", "house"} else None
