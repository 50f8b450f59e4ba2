"""The pieces of something of the gardener's own design, drawn side by side to one scale."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.paper.drawing import BOLD, SMALL_MM, Drawing, paragraphs, stacked
from plantframe.paper.scale import scale_for
from plantframe.season.units import Shown
from plantframe.timber.needs import needs_of

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

WIDE_MM: Final = 190.0
WORDS_MM: Final = 74.0
STEP_MM: Final = 9.0
LEAST_MM, MOST_MM = 1.2, 6.5  # how thick a piece is drawn, whatever its scale
TITLE_MM, HEADING_MM = 6.0, 3.4


def pieces_drawing(
    season: Season, frame: WorkedFrame, about: Sequence[str], *, garden_imperial: bool
) -> Drawing | None:
    """Each of its pieces once with how many there are, then its steps; None where none is told.

    about   lines under its name
    Raises TooLargeError for a piece of no real size.
    """
    name = frame.frame.name
    needs = needs_of(season, frozenset({name}))
    rows: list[tuple[str, float, float]] = []
    shown = Shown(garden_imperial)
    for stick in needs.sticks:
        words = f"{stick.part}: {stick.count} of {stick.section.name(frame.garden)}"
        thick_m = stick.section.wide_mm / 1000
        rows.append((f"{words}, {shown.exact(stick.length_m)}", stick.length_m, thick_m))
    for pole in needs.poles:
        words = f"{pole.part}: {pole.count} of {shown.bench(pole.thick_m)} round"
        rows.append((f"{words}, {shown.exact(pole.length_m)}", pole.length_m, pole.thick_m))
    if not rows:
        return None
    longest = max(length for _, length, _ in rows)
    room = WIDE_MM - WORDS_MM
    scale = scale_for(longest, 0.0, room, STEP_MM, imperial=garden_imperial)
    out = Drawing(WIDE_MM, len(rows) * STEP_MM + 2.0)
    for line, (words, length_m, thick_m) in enumerate(rows):
        thick = min(max(scale.mm(thick_m), LEAST_MM), MOST_MM)
        middle = line * STEP_MM + STEP_MM / 2
        out.text((0.0, middle + SMALL_MM / 3), words)
        out.box((WORDS_MM, middle - thick / 2), (scale.mm(length_m), thick), BOLD)
    caption = (
        f"{scale.name}, when printed at full size; where the pieces go is not written down, "
        "so they lie side by side"
    )
    steps = [
        f"{number}. {fact.get('job')}"
        + (f" (after: {fact.get('after')})" if fact.get("after") else "")
        for number, fact in enumerate(frame.frame.facts.get("step", ()), start=1)
    ]
    order = [paragraphs(["Its steps"], WIDE_MM, HEADING_MM, bold=True), paragraphs(steps, WIDE_MM)]
    return stacked(
        [
            paragraphs([name], WIDE_MM, TITLE_MM, bold=True),
            paragraphs(about, WIDE_MM),
            out,
            paragraphs([caption], WIDE_MM),
            *(order if steps else []),
        ],
        3.0,
    )
