"""Reads a material's entry, and a source's."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.catalogue.entries import Material, Source
from plantframe.catalogue.page import Page

if TYPE_CHECKING:
    from plantframe.catalogue.sourced import Sourced


def material_from(raw: object, file: str) -> Material:
    """A material from its entry as YAML gave it."""
    page = Page(raw, file)
    sizes = {name: _figures(inner) for name, inner in page.pages("sizes")}
    material = Material(
        name=page.needed("name"),
        also=page.texts("also"),
        kind=page.needed("kind"),
        says=page.text("is"),
        figures={key: page.as_figure(page.take(key), key) for key in page.rest()},
        sizes=sizes,
    )
    page.done()
    return material


def _figures(page: Page) -> dict[str, Sourced]:
    return {key: page.as_figure(page.take(key), key) for key in page.raw}


def source_from(raw: object, file: str) -> Source:
    """A source from its entry as YAML gave it."""
    page = Page(raw, file)
    year = page.take("year")
    source = Source(
        key=page.needed("key"),
        title=page.needed("title"),
        publisher=page.needed("publisher"),
        year="" if year is None else str(year),
        kind=page.needed("kind"),
        note=page.text("note"),
        general=page.flag("general"),
    )
    page.done()
    return source
