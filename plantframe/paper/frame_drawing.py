"""A frame on one drawing: its views, the joints, where the posts go, and how to know it is true."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.paper.drawing import BOLD, FINE, Drawing, paragraphs, stacked
from plantframe.paper.elevation import all_views
from plantframe.paper.joints import joints
from plantframe.paper.pegs import CORNERS, pegs_of
from plantframe.paper.squareness import checks_of

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.paper.drawing import Point
    from plantframe.paper.pegs import Pegs
    from plantframe.paper.subject import Subject

ROOM: Final = (190.0, 270.0)  # what A4 and letter both have
TITLE_MM, HEADING_MM = 6.0, 3.4
ROW_MM: Final = 4.6
LEAST_VIEWS_MM: Final = 70.0
GAP_MM: Final = 4.0
UNDER_CAPTION: Final = "drawn to scale; measure no drawing where a figure is given"


def frame_drawing(subject: Subject, about: Sequence[str], room: Point = ROOM) -> Drawing | None:
    """Everything about a frame that is drawn, to scale; None where its kind gives no places.

    about   lines under its name
    Raises TooLargeError for a thing of no real size.
    """
    wide = room[0]
    head = [
        paragraphs([subject.name], wide, TITLE_MM, bold=True),
        paragraphs(about, wide),
    ]
    below = [
        joints(subject, wide),
        _table(pegs_of(subject), wide),
        _under(subject, wide),
    ]
    rest = [one for one in below if one is not None]
    taken = sum(one.height_mm + GAP_MM for one in (*head, *rest))
    views = all_views(subject, (wide, max(room[1] - taken, LEAST_VIEWS_MM)))
    if views is None:
        return None
    drawn, scale = views
    caption = paragraphs([f"{scale.name}, when printed at full size; {UNDER_CAPTION}"], wide)
    return stacked([*head, drawn, caption, *rest], GAP_MM)


def _table(pegs: Pegs | None, wide: float) -> Drawing | None:
    """The table of pegs: two blocks beside each other where there are many."""
    if pegs is None:
        return None
    blocks = 2 if len(pegs.rows) > 6 else 1
    per = -(-len(pegs.rows) // blocks)
    columns = [22.0, 40.0, 40.0] if len(pegs.heads) > 1 else [70.0, 40.0]
    step = wide / 2
    out = Drawing(wide, (per + 1) * ROW_MM + 1.0)
    for block in range(blocks):
        left = block * step
        for place, head in enumerate(pegs.heads, 1):
            out.text((left + sum(columns[:place]), ROW_MM - 1.4), head)
        width = min(sum(columns), step - 4.0)
        out.line((left, ROW_MM), (left + width, ROW_MM), BOLD)
        for line, row in enumerate(pegs.rows[block * per : (block + 1) * per], 1):
            level = (line + 1) * ROW_MM
            for place, words in enumerate(row):
                name = f"peg {words}" if place == 0 and len(pegs.heads) > 1 else words
                out.text((left + sum(columns[:place]), level - 1.4), name)
            out.line((left, level), (left + width, level), FINE)
    check = [f"Check: {pegs.check}"] if pegs.check else []
    middle = "" if pegs.of == CORNERS else ", to the middle of each"
    title = paragraphs([f"Where the {pegs.of} go{middle}"], wide, HEADING_MM, bold=True)
    return stacked([title, paragraphs([pegs.how], wide), out, paragraphs(check, wide)], 1.0)


def _under(subject: Subject, wide: float) -> Drawing:
    """How to know that it is true, and all parts, drawn or not."""
    found = []
    if checks := checks_of(subject):
        found += [paragraphs(["It is true if"], wide, HEADING_MM, bold=True)]
        found += [paragraphs([f"{check}." for check in checks], wide)]
    parts = [subject.piece_words(name, pieces) for name, pieces in subject.worked.pieces.items()]
    found += [paragraphs(["Parts"], wide, HEADING_MM, bold=True), paragraphs(parts, wide)]
    return stacked(found, 1.0)
