"""Looking things up in the catalogue, where a broken entry is as good as none."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.catalogue import reading as catalogue
from plantframe.catalogue.mistakes import CatalogueError

if TYPE_CHECKING:
    from plantframe.catalogue.entries import Material, Plant, Structure


def entry_of(name: str | None) -> Plant | None:
    """The catalogue's plant, None where there is none or its entry is broken."""
    if name is None:
        return None
    try:
        return catalogue.plant(name)
    except CatalogueError:
        return None


def kind_of(name: str) -> Structure | None:
    """The catalogue's structure, None where there is none or its entry is broken."""
    if not name:
        return None
    try:
        return catalogue.structure(name)
    except CatalogueError:
        return None


def material_of(name: str) -> Material | None:
    """The catalogue's material, None where there is none or its entry is broken."""
    try:
        return catalogue.material(name)
    except CatalogueError:
        return None


def broken_entry(kind: str, name: str | None) -> str:
    """What is wrong with the entry of that name, with its file and line; "" where nothing is.

    kind   "plant" or "structure"
    """
    if not name:
        return ""
    try:
        catalogue.plant(name) if kind == "plant" else catalogue.structure(name)
    except CatalogueError as error:
        return str(error).removesuffix(".")
    return ""
