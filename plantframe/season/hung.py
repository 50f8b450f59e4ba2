"""Nets, strings and wires that a plan hangs on a frame whose kind has none of its own."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.catalogue.entries import Hold
from plantframe.catalogue.sourced import Sourced
from plantframe.catalogue.workings import Held

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from plantframe.catalogue.workings import Worked

_CORD = Sourced(
    low=0.002, middle=0.003, high=0.004, unit="m", base="m", doubt="cord, twine or wire"
)
# Fact word -> the part, the way it runs, the slots that say how far apart, and the usual distance
# in m where none does (common practice, no source).
_HUNG = {
    "net": ("net", "both", ("net.mesh", "mesh.length", "mesh"), 0.15),
    "strings": ("string", "up", ("strings.apart", "strings"), 0.2),
    "wires": ("wire", "across", ("wires.apart",), 0.4),
}


def hung_on(worked: Worked, said: Mapping[str, object]) -> Iterator[Held]:
    """What the plan hangs on a frame beyond the parts that its kind has.

    worked   the frame worked out
    said     what the plan says of it, by `word.slot`
    """
    for word, (part, runs, slots, usual_m) in _HUNG.items():
        if word in worked.structure.facts:
            continue  # its kind knows the word, and says itself what it gives to hold
        if not any(name == word or name.startswith(f"{word}.") for name in said):
            continue
        apart = next((said[slot] for slot in slots if isinstance(said.get(slot), float)), usual_m)
        hold = Hold(part=part, thickness=_CORD, runs=runs)
        yield Held(hold, _CORD.usual, float(apart) if isinstance(apart, float) else usual_m)
