"""What a round of care uses up, counted: foot strips and their screws, string, a net."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.season.units import Shown, listed, plural

if TYPE_CHECKING:
    from plantframe.catalogue.entries import Care
    from plantframe.catalogue.workings import Pieces
    from plantframe.season.frames import WorkedFrame


BY_THE_LENGTH = frozenset({"twine", "string", "rope", "cord", "wire"})  # cut from a ball or a coil


def needed(care: Care, frame: WorkedFrame) -> str:
    """The parts a round wants, in words; "" where it wants none, or none of this frame's."""
    worked = frame.worked
    pieces = worked.pieces if worked is not None else {}
    shown = Shown(frame.garden.imperial)
    told = [
        _counted(name, pieces[name], shown) if name in pieces else name
        for name in care.needs
        if name not in pieces or pieces[name].count
    ]
    return f"It takes {listed(told)}" if told else ""


def _counted(name: str, pieces: Pieces, shown: Shown) -> str:
    """`2 long foot strips of 8 ft`."""
    if pieces.part.of in BY_THE_LENGTH:
        return name
    count = plural(pieces.count, name)
    if pieces.part.of != "wood" or not pieces.length_m:
        return count
    return f"{count} of {shown.bench(pieces.length_m)}"
