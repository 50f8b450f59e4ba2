"""Sheets as HTML that prints: the only place that loads the library of page templates."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.paper import layout
from plantframe.paper.drawing import MADE_BY
from plantframe.paper.text import plain
from plantframe.season.units import day, listed

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import date

    from jinja2 import Environment
    from markupsafe import Markup

    from plantframe.paper.drawing import Drawing
    from plantframe.paper.layout import Page, Paper


def sheets_page(title: str, pages: Iterable[Page], paper: Paper) -> str:
    """Sheets as one document, a page of paper to each."""
    return rendered("sheets.html", paper, title=title, pages=list(pages))


def rendered(template: str, paper: Paper, **told: object) -> str:
    """A document from a template, its style in it, so that it needs no other file."""
    environment = _environment()
    sizes = {
        "paper_name": paper.name,
        "margin_mm": layout.MARGIN_MM,
        "paper_mm": paper.width_mm,
        "gutter_mm": layout.GUTTER_MM,
        "numbers_mm": layout.NUMBERS_MM,
        "aside_mm": layout.ASIDE_MM,
        "tick_mm": layout.TICK_MM,
        "with_mm": layout.WITH_MM,
        "labels": layout.LABELS,
        "label_least_mm": layout.LABEL_LEAST_MM,
    }
    styles = {
        name: _trusted(environment.get_template(f"{file}.css").render(sizes))
        for name, file in (("style", "paper"), ("book_style", "book"))
    }
    return environment.get_template(template).render(
        styles | {"made_by": _trusted(MADE_BY)}, **told
    )


def _environment() -> Environment:
    from jinja2 import Environment, PackageLoader, StrictUndefined

    environment = Environment(
        loader=PackageLoader("plantframe.paper"),
        autoescape=True,
        undefined=StrictUndefined,
        finalize=_printable,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
    )
    environment.filters |= {"inline": _inline, "longday": long_day, "rownumbers": _row_numbers}
    return environment


def _printable(value: object) -> object:
    """Text of plans without what no printer has a letter for; what is a page already, as it is."""
    if isinstance(value, str) and not hasattr(value, "__html__"):
        return plain(value) if value.strip() == value else value
    return value


def _trusted(text: str) -> Markup:
    """Text that is ours and holds nothing of a plan."""
    from markupsafe import Markup

    return Markup(text)  # noqa: S704


def _inline(drawing: Drawing, title: str) -> Markup:
    """A drawing within a page; its text was escaped as it was drawn."""
    return _trusted(drawing.svg(title, alone=False))


def long_day(value: date) -> str:
    """A day with its year: 18 May 2027."""
    return f"{day(value)} {value.year}"


def _row_numbers(numbers: tuple[int, ...]) -> str:
    """Which rows a caution stands with: `4, 6:`."""
    return f"{listed([str(number) for number in numbers])}:"
