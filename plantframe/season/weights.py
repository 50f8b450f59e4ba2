"""What a box of boards weighs, from its pieces and its wood."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.catalogue import reading as catalogue
from plantframe.catalogue.mistakes import CatalogueError
from plantframe.mechanics.ranges import Range

if TYPE_CHECKING:
    from plantframe.catalogue.entries import Material
    from plantframe.catalogue.sourced import Sourced
    from plantframe.catalogue.workings import Pieces
    from plantframe.season.frames import WorkedFrame

ORDINARY_WOOD = "softwood"


def wood_named(name: str) -> Material | None:
    """The catalogue's timber of that name, ordinary softwood where it knows none."""
    for one in (name, ORDINARY_WOOD):
        try:
            found = catalogue.material(one) if one else None
        except CatalogueError:
            found = None
        if found is not None and found.kind == "timber":
            return found
    return None


def box_kg(frame: WorkedFrame) -> Range | None:
    """Weight of a box when it is dry, without its lights, kg; None for what is no box of boards.

    Source: volume of its pieces times the density of its wood.
    """
    worked = frame.worked
    if worked is None or frame.structure is None or frame.structure.stands.held != "ground":
        return None
    if not any(pieces.breadth_m for pieces in worked.pieces.values() if _is_wood(pieces)):
        return None
    volume = sum(
        _volume_m3(pieces)
        for name, pieces in worked.pieces.items()
        if _is_wood(pieces) and not name.startswith("light")
    )
    wood = wood_named(frame.word("back.wood"))
    density = wood.figures.get("density dry") if wood else None
    if not volume or density is None:
        return None
    return _range(density).times(volume)


def _is_wood(pieces: Pieces) -> bool:
    return pieces.part.of == "wood"


def _volume_m3(pieces: Pieces) -> float:
    width, depth, length = pieces.width_m, pieces.depth_m, pieces.length_m
    if width is None or depth is None or length is None:
        return 0.0
    if pieces.breadth_m is None:
        return pieces.count * width * depth * length
    return pieces.count * min(width, depth) * _height_m(pieces) * length


def _height_m(pieces: Pieces) -> float:
    """How high a board is: of one cut to a slope, drawn from low end to high, the mean."""
    for place in pieces.places:
        if place.view == "side" and place.x[0] != place.x[1] and place.y[0] != place.y[1]:
            return (place.y[0] + place.y[1]) / 2
    return pieces.breadth_m or 0.0


def _range(value: Sourced) -> Range:
    middle = value.usual
    return Range(
        middle if value.low is None else value.low,
        middle,
        middle if value.high is None else value.high,
    )
