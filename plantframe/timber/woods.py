"""Which wood is meant, and which will do where another is wanted."""

from __future__ import annotations

from functools import lru_cache
from typing import Final

from plantframe.catalogue import reading as catalogue
from plantframe.catalogue.mistakes import CatalogueError

ORDINARY: Final = "softwood"
TREATED: Final = "treated softwood"
CANE: Final = "bamboo"


@lru_cache(maxsize=256)
def wood_in(text: str) -> str:
    """The wood that words name, "" where they name none: `2 cedar posts` is cedar."""
    words = text.lower().replace(",", " ").split()
    for length in (3, 2, 1):
        for at in range(len(words) - length + 1):
            said = " ".join(words[at : at + length])
            for name in catalogue.materials_named(said):
                if _is_wood(name):
                    return name
    return ""


@lru_cache(maxsize=256)
def _is_wood(name: str) -> bool:
    try:
        entry = catalogue.material(name)
    except CatalogueError:
        return False
    return entry is not None and entry.kind == "timber" and "density dry" in entry.figures


def will_do(there: str, wanted: str, *, near_food: bool = False) -> bool:
    """Whether wood that is there may be used where another is wanted.

    there   "" where nobody says what it is

    Ordinary softwood may be any wood, but treated wood is for no box round food. A wood that was
    asked for by name is that wood.
    """
    if wanted in {"", ORDINARY}:
        return not (near_food and there == TREATED)
    return there == wanted


def density_kg_per_m3(wood: str) -> tuple[float, float]:
    """From dry to wet, in kg a cubic metre; of ordinary softwood where the wood is not known."""
    for name in (wood, ORDINARY):
        try:
            entry = catalogue.material(name) if name else None
        except CatalogueError:
            entry = None
        dry = entry.figures.get("density dry") if entry else None
        if entry is not None and dry is not None:
            wet = entry.figures.get("density wet", dry)
            return dry.low or dry.usual, wet.high or wet.usual
    return 430.0, 800.0
