"""A drawing in black on white, in millimetres of paper, and the SVG it is written as.

Nothing is told by colour: lines differ in weight and dashes, surfaces in hatching. Hatching is made
of lines of its own, so that a page may hold many drawings and each stays a drawing by itself.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.paper.text import BOLD as BOLD_LETTERS
from plantframe.paper.text import escaped, folded, plain, width_em

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

Point = tuple[float, float]

FONTS: Final = "Helvetica, Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif"
SMALL_MM: Final = 2.8
MADE_BY: Final = "<!-- made by plantframe; a new one may be written over this -->"


@frozen
class Pen:
    """A line: how thick on paper, and how it is broken."""

    width_mm: float
    dashes: str = ""


BOLD: Final = Pen(0.7)
LINE: Final = Pen(0.35)
FINE: Final = Pen(0.18)
HIDDEN: Final = Pen(0.3, "1.4 0.9")
DOTTED: Final = Pen(0.3, "0.3 1")


class Drawing:
    """Marks on paper, one over the other. Millimetres from the top left corner."""

    def __init__(self, width_mm: float, height_mm: float) -> None:
        self.width_mm = width_mm
        self.height_mm = height_mm
        self._marks: list[str] = []

    def line(self, start: Point, end: Point, pen: Pen = LINE) -> None:
        """A straight line."""
        places = _attributes(x1=start[0], y1=start[1], x2=end[0], y2=end[1])
        self._marks.append(f"<line {places} {_stroke(pen)}/>")

    def outline(self, points: Sequence[Point], pen: Pen = LINE, *, filled: bool = True) -> None:
        """A closed figure; filled it hides what lies behind."""
        fill = "#fff" if filled else "none"
        listed = " ".join(f"{_figure(x)},{_figure(y)}" for x, y in points)
        self._marks.append(f'<polygon points="{listed}" fill="{fill}" {_stroke(pen)}/>')

    def solid(self, points: Sequence[Point]) -> None:
        """A closed figure, all black."""
        listed = " ".join(f"{_figure(x)},{_figure(y)}" for x, y in points)
        self._marks.append(f'<polygon points="{listed}" fill="#000"/>')

    def box(self, corner: Point, size: Point, pen: Pen = LINE, *, filled: bool = True) -> None:
        """An upright rectangle from its top left corner."""
        (x, y), (wide, high) = corner, size
        corners = [(x, y), (x + wide, y), (x + wide, y + high), (x, y + high)]
        self.outline(corners, pen, filled=filled)

    def ellipse(
        self, centre: Point, across: Point, pen: Pen = LINE, *, filled: bool = True
    ) -> None:
        """An ellipse; `across` are its two half widths."""
        places = _attributes(cx=centre[0], cy=centre[1], rx=across[0], ry=across[1])
        fill = "#fff" if filled else "none"
        self._marks.append(f'<ellipse {places} fill="{fill}" {_stroke(pen)}/>')

    def half_ellipse(self, left: Point, right: Point, crown_mm: float, pen: Pen = LINE) -> None:
        """The upper half of an ellipse from one foot to the other."""
        across = (right[0] - left[0]) / 2
        path = (
            f"M{_figure(left[0])} {_figure(left[1])} "
            f"A{_figure(across)} {_figure(crown_mm)} 0 0 1 {_figure(right[0])} {_figure(right[1])}"
        )
        self._marks.append(f'<path d="{path}" fill="none" {_stroke(pen)}/>')

    def hatch(self, corners: Sequence[Point], step_mm: float, lean_deg: float) -> None:
        """Parallel lines over a figure that has no hollow side."""
        for start, end in hatching(corners, step_mm, lean_deg):
            self.line(start, end, FINE)

    def text(
        self,
        place: Point,
        says: str,
        size_mm: float = SMALL_MM,
        *,
        anchor: str = "start",
        bold: bool = False,
        upright: bool = True,
    ) -> None:
        """A line of text on its baseline, with a white edge so that lines behind do not cut it.

        anchor   start, middle or end
        upright  false: turned a quarter to the left, read from the right
        """
        places = _attributes(x=place[0], y=place[1])
        turn = (
            "" if upright else f' transform="rotate(-90 {_figure(place[0])} {_figure(place[1])})"'
        )
        weight = ' font-weight="bold"' if bold else ""
        self._marks.append(
            f'<text {places} font-size="{_figure(size_mm)}" text-anchor="{anchor}"{weight}{turn} '
            f'stroke="#fff" stroke-width="0.7" stroke-linejoin="round" paint-order="stroke" '
            f'fill="#000">{escaped(says)}</text>'
        )

    def put(self, other: Drawing, corner: Point) -> None:
        """Another drawing, its top left corner here."""
        move = f'<g transform="translate({_figure(corner[0])} {_figure(corner[1])})">'
        self._marks += [move, *other._marks, "</g>"]

    def svg(self, title: str, *, alone: bool = True) -> str:
        """The drawing as SVG, its sizes those on paper.

        alone   a file of its own, with a mark that says who made it; else a piece of a page
        """
        size = f"{_figure(self.width_mm)} {_figure(self.height_mm)}"
        head = (
            f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {size}" '
            f'width="{_figure(self.width_mm)}mm" height="{_figure(self.height_mm)}mm" role="img" '
            f'font-family="{FONTS}">'
        )
        paper = '<rect width="100%" height="100%" fill="#fff"/>'
        parts = [head, f"<title>{escaped(title)}</title>", paper, *self._marks, "</svg>"]
        if alone:
            parts = ['<?xml version="1.0" encoding="UTF-8"?>', MADE_BY, *parts, ""]
        return "\n".join(parts)


def stacked(drawings: Iterable[Drawing], gap_mm: float = 6.0) -> Drawing:
    """Drawings one under the other."""
    every = [one for one in drawings if one.height_mm > 0]
    high = sum(one.height_mm for one in every) + gap_mm * max(len(every) - 1, 0)
    out = Drawing(max((one.width_mm for one in every), default=0.0), high)
    down = 0.0
    for one in every:
        out.put(one, (0.0, down))
        down += one.height_mm + gap_mm
    return out


def paragraphs(
    lines: Iterable[str], width_mm: float, size_mm: float = SMALL_MM, *, bold: bool = False
) -> Drawing:
    """Text one line under the other, each folded to the width."""
    room = width_mm / size_mm / (BOLD_LETTERS if bold else 1.0)
    broken = [one for line in lines for one in folded(plain(line), room)]
    step = size_mm * 1.35
    out = Drawing(width_mm, len(broken) * step + size_mm * 0.3)
    for place, line in enumerate(broken):
        out.text((0.0, (place + 0.85) * step), line, size_mm, bold=bold)
    return out


def text_mm(says: str, size_mm: float = SMALL_MM) -> float:
    """How much room a line of text takes."""
    return width_em(says) * size_mm


def hatching(
    corners: Sequence[Point], step_mm: float, lean_deg: float
) -> list[tuple[Point, Point]]:
    """Parallel lines across a figure without hollow sides, leaning so far from level."""
    if len(corners) < 3 or step_mm <= 0:
        return []
    lean = math.radians(lean_deg)
    along, across = (math.cos(lean), -math.sin(lean)), (math.sin(lean), math.cos(lean))
    reach = [x * across[0] + y * across[1] for x, y in corners]
    first, last = math.ceil(min(reach) / step_mm), math.floor(max(reach) / step_mm)
    found = []
    for count in range(first, last + 1):
        level = count * step_mm
        cuts: list[float] = []
        for here, there in zip(corners, [*corners[1:], corners[0]], strict=True):
            one = here[0] * across[0] + here[1] * across[1] - level
            two = there[0] * across[0] + there[1] * across[1] - level
            if (one < 0) == (two < 0):
                continue
            share = one / (one - two)
            x = here[0] + share * (there[0] - here[0])
            y = here[1] + share * (there[1] - here[1])
            cuts.append(x * along[0] + y * along[1])
        if len(cuts) >= 2:
            low, high = min(cuts), max(cuts)
            found.append(
                (
                    (along[0] * low + across[0] * level, along[1] * low + across[1] * level),
                    (along[0] * high + across[0] * level, along[1] * high + across[1] * level),
                )
            )
    return found


def _attributes(**values: float) -> str:
    return " ".join(f'{name}="{_figure(value)}"' for name, value in values.items())


def _stroke(pen: Pen) -> str:
    dashes = f' stroke-dasharray="{pen.dashes}"' if pen.dashes else ""
    return f'stroke="#000" stroke-width="{_figure(pen.width_mm)}"{dashes}'


def _figure(value: float) -> str:
    """A figure to a hundredth of a millimetre, without idle noughts."""
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text in {"-0", ""} else text
