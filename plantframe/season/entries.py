"""Looking things up in the catalogue, where a broken entry is as good as none."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.catalogue import reading as catalogue
from plantframe.catalogue.mistakes import CatalogueError
from plantframe.plan.things import VarietyName
from plantframe.season.own_plants import own_entry
from plantframe.season.told import told

if TYPE_CHECKING:
    from plantframe.catalogue.entries import Material, Plant, Structure
    from plantframe.plan.things import Garden


def entry_of(name: str | None, garden: Garden | None = None) -> Plant | None:
    """The catalogue's plant, None where there is none or its entry is broken.

    garden   whose units its sentences are told in
    """
    if name is None:
        return None
    try:
        entry = own_entry(name) if isinstance(name, VarietyName) else catalogue.plant(name)
    except CatalogueError:
        return None
    if entry is None:
        return None
    return told(entry, imperial=garden is not None and garden.imperial)


def kind_of(name: str, garden: Garden | None = None) -> Structure | None:
    """The catalogue's structure, None where there is none or its entry is broken.

    garden   whose units its sentences are told in
    """
    if not name:
        return None
    try:
        entry = catalogue.structure(name)
    except CatalogueError:
        return None
    if entry is None:
        return None
    return told(entry, imperial=garden is not None and garden.imperial)


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
        entry_name = name.variety.like if isinstance(name, VarietyName) else name
        catalogue.plant(entry_name) if kind == "plant" else catalogue.structure(name)
    except CatalogueError as error:
        return str(error).removesuffix(".")
    return ""
