"""The counters of a shop, and a line of the buying list."""

from __future__ import annotations

from typing import Final

from plantframe.frozen import frozen

TIMBER: Final = "boards and sticks"
STRIP: Final = "strip"
CANES: Final = "canes and poles"
SHEET: Final = "sheet, mesh and cloth"
FIXINGS: Final = "nails, screws and fittings"
NETS: Final = "nets"
WIRE: Final = "wire"
CORD: Final = "twine and cord"
PAINT: Final = "paint and preservative"
GROUND: Final = "for the ground"
METAL: Final = "rods and posts of metal"
SEED: Final = "seed and plants"
COUNTERS: Final = (
    *(TIMBER, STRIP, CANES, SHEET, FIXINGS, NETS, WIRE, CORD, PAINT, GROUND, METAL, SEED),
)


@frozen
class Line:
    """One line of the list.

    what       what is asked for: `2x4`, `nails 20d`, `net`
    says       the same with its size, as it is read out at the counter
    length_m, width_m   of one, where it has them
    count      how many to buy; of wire and twine 1, with the length of all in `length_m`
    for_       whose it is, each part once
    wanted     how many are wanted in all, spares in
    from_shed  how many of them are in the shed
    spare      how many of them are spares
    cost       of all, at the gardener's own prices; None where there is none
    instead    what else will do, where they are out of it
    minds      what to know of it
    loose      measured out and not counted: manure, soil
    """

    counter: str
    what: str
    says: str
    count: int
    for_: tuple[str, ...]
    length_m: float | None = None
    width_m: float | None = None
    wanted: int = 0
    from_shed: int = 0
    spare: int = 0
    cost: float | None = None
    instead: str = ""
    minds: tuple[str, ...] = ()
    loose: bool = False
