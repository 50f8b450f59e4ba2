"""Parts of a frame as something to hold on to, and how they are spoken of."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.pairing.pair import Pair, out

if TYPE_CHECKING:
    from plantframe.catalogue.workings import Held
    from plantframe.pairing.matches import Reason

# Distances of common practice, no source, in m.
RUNG_EVERY_M = 0.40  # rungs or strips this close let a shoot lie over them where it cannot grip
RUNG_THICK_M = 0.045  # thicker than this it is a rail, and nothing lies over it of itself
FINE_MM = 5.0  # a wire is told to half a millimetre


def parts(pair: Pair, held: Held) -> str:
    """A part as a gardener names several of it: net cord, poles, mesh wire."""
    matter = pair.support.matter(held)
    if matter == "net":
        return "net cord"
    if matter == "mesh":
        return "mesh wire"
    if matter == "strip":
        return "strips"
    part = held.hold.part
    return f"{part}es" if part.endswith(("s", "h", "x")) else f"{part}s"


def thick(pair: Pair, held: Held) -> str:
    """A part with its thickness: poles 20 mm thick."""
    millimetres = held.thickness_m * 1000
    if millimetres < FINE_MM and not pair.shown.imperial:
        return f"{parts(pair, held)} {millimetres:.2g} mm thick"
    return f"{parts(pair, held)} {pair.shown.bench(held.thickness_m)} thick"


def every(pair: Pair, held: Held) -> str:
    """How far it is from one to the next."""
    return pair.shown.length(held.every_m or 0.0)


def is_rung(held: Held) -> bool:
    """A rung or strip that a shoot can lie over: close to the next, and no rail."""
    return (
        held.hold.runs in {"across", "both"}
        and held.every_m is not None
        and held.every_m <= RUNG_EVERY_M + 1e-6
        and held.thickness_m <= RUNG_THICK_M
    )


def endures(pair: Pair, held: Held) -> bool:
    """Whether a part lasts under what climbs it: string, rope and net rot under wood that stays."""
    climber = pair.climber
    soft = pair.support.matter(held) in {"net", "twine", "rope"}
    return not (soft and climber.lasting and climber.stiff)


def rots(pair: Pair, held: Held) -> Reason:
    """Said where only such parts are there."""
    climber = pair.climber
    return out(
        "hold",
        f"{pair.support.has} {parts(pair, held)}, which rot and cut in under wood that stays for "
        f"years, as that of {climber.said} does.",
    )
