"""A bed on one drawing: the map of its rows, and the shade that falls on it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.paper.bed_map import bed_map, row_lines
from plantframe.paper.drawing import Drawing, paragraphs, stacked
from plantframe.paper.ground import ground_of
from plantframe.paper.shade import NOTE, shade

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.answers.answers import Answers
    from plantframe.plan.things import Bed

WIDE_MM: Final = 190.0
MAP_MM, SHADE_MM = 100.0, 120.0
TITLE_MM, HEADING_MM = 6.0, 3.4
NO_PLACE: Final = (
    "No shade is drawn: the plan does not say where the garden is (a line `place 52.1 N` does)."
)
NO_RUN: Final = "No shade is drawn: the plan does not say which way the bed runs."


def bed_drawing(answers: Answers, bed: Bed, about: Sequence[str]) -> Drawing | None:
    """The map and the shade; None where nothing tells how large the bed is.

    Raises TooLargeError for a bed of no real size.
    """
    ground = ground_of(answers.season, bed)
    if ground is None:
        return None
    shown = answers.shown
    drawn, scale = bed_map(ground, shown, (WIDE_MM, MAP_MM))
    parts = [
        paragraphs([bed.name], WIDE_MM, TITLE_MM, bold=True),
        paragraphs(about, WIDE_MM),
        drawn,
        paragraphs([f"{scale.name}, when printed at full size"], WIDE_MM),
        paragraphs(row_lines(ground, shown), WIDE_MM),
    ]
    latitude = answers.plan.garden.latitude
    if latitude is None:
        parts.append(paragraphs([NO_PLACE], WIDE_MM))
    elif ground.runs_deg is None:
        parts.append(paragraphs([NO_RUN], WIDE_MM))
    else:
        year = answers.plan.garden.year or answers.today.year
        parts += [
            paragraphs(["Shade"], WIDE_MM, HEADING_MM, bold=True),
            shade(ground, latitude, year, shown, (WIDE_MM, SHADE_MM)),
            paragraphs([NOTE], WIDE_MM),
        ]
    return stacked(parts, 2.5)
