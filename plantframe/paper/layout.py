"""Fitting a sheet on a page: the largest type that leaves room for all, more pages if none does.

Heights are reckoned from a broad typeface, so that a narrower one only leaves room over. Nothing is
ever left out or cut off to make a sheet fit.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.paper.elevation import front
from plantframe.paper.scale import TooLargeError
from plantframe.paper.sheet import Danger
from plantframe.paper.text import BOLD, folded

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from plantframe.paper.drawing import Drawing
    from plantframe.paper.sheet import Aside, Row, Sheet

POINT_MM: Final = 0.3528
LINE_EM: Final = 1.3
SIZES_PT: Final = (13.0, 12.0, 11.0, 10.5, 10.0, 9.5, 9.0)
LARGE_PT: Final = (16.0, 15.0, 14.0)
# Heights of the front view that are tried, mm.
DRAWINGS_MM: Final = (78.0, 66.0, 54.0, 44.0)
LARGE_DRAWINGS_MM: Final = (66.0, 54.0)
SPARE: Final = 0.98  # of a page that is filled

# Widths that the pages' style gives, mm.
MARGIN_MM: Final = 10.0
NUMBERS_MM: Final = 56.0
GUTTER_MM: Final = 4.0
ASIDE_MM: Final = 34.0
TICK_MM: Final = 13.0
WITH_MM: Final = 42.0
ROUNDS_SAY_MM: Final = 74.0
LABELS: Final = 2
LABEL_LEAST_MM: Final = 34.0


@frozen
class Paper:
    """A paper size with its margins taken off, mm."""

    name: str
    width_mm: float
    height_mm: float


Drawn = tuple["Drawing | None", str]
"""A drawing, or none, and what stands under it."""

A4: Final = Paper("A4", 190.0, 277.0)
LETTER: Final = Paper("letter", 195.9, 259.4)


@frozen
class Page:
    """One page of a sheet.

    type_pt   size of its letters
    drawing   the front view or the sheet's own drawing, on the first page only
    dangers   all that stand with its rows, and those that hold all the time
    """

    sheet: Sheet
    number: int
    of: int
    type_pt: float
    rows: tuple[Row, ...]
    dangers: tuple[Danger, ...]
    labels: tuple[tuple[str, ...], ...]
    drawing: Drawing | None
    caption: str

    @property
    def first(self) -> bool:
        """The page with numbers, drawing and lists."""
        return self.number == 1


def pages_of(sheet: Sheet, paper: Paper, *, large: bool = False) -> tuple[Page, ...]:
    """The pages of a sheet: one, unless there is more to say than a page holds."""
    room = paper.height_mm * SPARE
    drawings = list(_drawings(sheet, paper, large=large))
    sizes = LARGE_PT if large else SIZES_PT
    for type_pt, (drawing, caption) in _tries(sizes, drawings):
        height = _Heights(paper, type_pt)
        whole = height.fixed(sheet, sheet.dangers, drawing) + height.body(sheet)
        if whole <= room:
            return (_page(sheet, 1, 1, type_pt, sheet.rows, sheet.labels, drawing, caption),)
    return _several(sheet, paper, LARGE_PT[-1] if large else SIZES_PT[2], large=large)


def _tries(sizes: Sequence[float], drawings: Sequence[Drawn]) -> Iterator[tuple[float, Drawn]]:
    """Type and drawing in the order they are tried: large type first, then a large drawing.

    The smallest drawing and the smallest type come last: neither is good to read in the rain.
    """
    if len(drawings) > 1:
        yield from ((size, one) for size in sizes[:-1] for one in drawings[:-1])
    yield from ((size, one) for size in sizes for one in drawings)


def _drawings(sheet: Sheet, paper: Paper, *, large: bool) -> Iterator[Drawn]:
    """The drawing of a sheet in the sizes that may do, largest first."""
    if sheet.subject is None:
        yield sheet.drawing, sheet.caption
        return
    wide = paper.width_mm - NUMBERS_MM - GUTTER_MM
    for high in LARGE_DRAWINGS_MM if large else DRAWINGS_MM:
        try:
            found = front(sheet.subject, (wide, high))
        except TooLargeError:
            found = None
        if found is None:
            yield None, ""
            return
        yield found[0], f"{found[1].name}, when printed at full size"


def _page(
    sheet: Sheet,
    number: int,
    of: int,
    type_pt: float,
    rows: Sequence[Row],
    labels: Sequence[tuple[str, ...]],
    drawing: Drawing | None,
    caption: str,
) -> Page:
    """One page, with the cautions of its own rows and those that hold all the time."""
    here = {row.number for row in rows}
    dangers = tuple(
        Danger(one.says, tuple(n for n in one.rows if n in here))
        for one in sheet.dangers
        if not one.rows or here & set(one.rows)
    )
    return Page(sheet, number, of, type_pt, tuple(rows), dangers, tuple(labels), drawing, caption)


def _several(sheet: Sheet, paper: Paper, type_pt: float, *, large: bool) -> tuple[Page, ...]:
    """The rows shared out over as many pages as they need; each page takes at least one."""
    drawing, caption = list(_drawings(sheet, paper, large=large))[-1]
    height = _Heights(paper, type_pt)
    room = paper.height_mm * SPARE - height.line_mm  # for the number of the sheet
    shares: list[list[Row]] = [[]]
    used = height.fixed(sheet, sheet.dangers, drawing)
    for place, row in enumerate(sheet.rows):
        high = height.row(row, sheet) + height.day_line(sheet.rows, place)
        if used + high > room and shares[-1]:
            shares.append([])
            used = height.head(sheet) + height.dangers(sheet.dangers) + height.foot(sheet)
            used += height.day_line(sheet.rows, 0)
        shares[-1].append(row)
        used += high
    labels = _label_shares(sheet, height, room)
    count = max(len(shares), len(labels))
    shares += [[]] * (count - len(shares))
    labels += [[]] * (count - len(labels))
    return tuple(
        _page(
            sheet,
            number,
            count,
            type_pt,
            rows,
            some,
            drawing if number == 1 else None,
            caption if number == 1 else "",
        )
        for number, (rows, some) in enumerate(zip(shares, labels, strict=True), 1)
    )


def _label_shares(sheet: Sheet, height: _Heights, room: float) -> list[list[tuple[str, ...]]]:
    if not sheet.labels:
        return []
    shares: list[list[tuple[str, ...]]] = [[]]
    used = height.head(sheet) + height.foot(sheet)
    for place in range(0, len(sheet.labels), LABELS):
        some = sheet.labels[place : place + LABELS]
        high = height.labels(some)
        if used + high > room and shares[-1]:
            shares.append([])
            used = height.head(sheet) + height.foot(sheet)
        shares[-1] += some
        used += high
    return shares


class _Heights:
    """How high each piece of a page comes out, mm, in letters of one size."""

    def __init__(self, paper: Paper, type_pt: float) -> None:
        self.paper = paper
        self.em_mm = type_pt * POINT_MM
        self.line_mm = self.em_mm * LINE_EM

    def text(self, says: str, width_mm: float, size_em: float = 1.0) -> float:
        """A paragraph in a column."""
        size = self.em_mm * size_em
        return len(folded(says, max(width_mm, size) / size)) * size * LINE_EM

    def fixed(self, sheet: Sheet, dangers: Sequence[Danger], drawing: Drawing | None) -> float:
        """All of the first page but its rows and labels."""
        return (
            self.head(sheet)
            + self.dangers(dangers)
            + self.top(sheet, drawing)
            + self.asides(sheet.asides)
            + self.foot(sheet)
        )

    def body(self, sheet: Sheet) -> float:
        """All rows, or all labels."""
        head = self.line_mm if sheet.columns else 0.0
        days = sum(self.day_line(sheet.rows, place) for place in range(len(sheet.rows)))
        rows = sum(self.row(row, sheet) for row in sheet.rows)
        return head + days + rows + self.labels(sheet.labels)

    def day_line(self, rows: Sequence[Row], place: int) -> float:
        """The line with a day over the first row that is down for it."""
        row = rows[place]
        again = place > 0 and rows[place - 1].when == row.when
        return self.line_mm + self.em_mm * 0.4 if row.when and not again else 0.0

    def head(self, sheet: Sheet) -> float:
        """Title, what it is, and the stamp that shows a stale sheet."""
        wide = self.paper.width_mm
        title = self.text(f"{sheet.title} {sheet.kind}", wide / BOLD, 1.9)
        about = sum(self.text(line, wide) for line in sheet.about)
        return title + about + self.text(_stamp_words(sheet), wide, 0.9) + self.em_mm * 0.9

    def dangers(self, dangers: Sequence[Danger]) -> float:
        """The box of cautions."""
        if not dangers:
            return 0.0
        wide = self.paper.width_mm - self.em_mm * 7.0
        lines = sum(self.text(f"{_numbers(one)} {one.says}", wide) for one in dangers)
        return lines + self.em_mm + 1.4

    def top(self, sheet: Sheet, drawing: Drawing | None) -> float:
        """Numbers beside the front view, or over a drawing that takes the whole width."""
        beside = sheet.subject is not None
        narrow = NUMBERS_MM if beside else self.paper.width_mm / 3
        each = [
            self.text(one.value, (narrow - 4.0) / BOLD, 2.02)
            + self.text(one.says, narrow - 4.0, 0.9)
            + self.em_mm * 0.6
            for one in sheet.numbers
        ]
        numbers = sum(each) if beside else max(each, default=0.0)
        drawn = drawing.height_mm + self.line_mm if drawing is not None else 0.0
        return (max(numbers, drawn) if beside else numbers + drawn) + self.em_mm * 0.5

    def asides(self, asides: Sequence[Aside]) -> float:
        """The short lists, each beside its heading."""
        wide = self.paper.width_mm - ASIDE_MM - 2.0
        return (
            sum(
                max(self.text(". ".join(one.lines), wide), self.text(one.title, ASIDE_MM / BOLD))
                + self.em_mm * 0.15
                for one in asides
            )
            + self.em_mm * 0.5
        )

    def row(self, row: Row, sheet: Sheet) -> float:
        """A line to tick, with its notes."""
        notes = [f"{label}: {words}." if label else f"{words}." for label, words in row.notes]
        signs = " ▲" * row.danger + " ■" * row.stop
        says = " ".join([f"{row.says} {row.state}{signs}", *notes])
        hands = f"{row.hands} people, " if row.hands > 1 else ""
        aside = f"{hands}{row.time}; {row.tools}"
        if sheet.columns:
            wide = ROUNDS_SAY_MM - TICK_MM - 1.5
            told = self.text(says, wide) + self.text(aside, wide)
            boxes = self.em_mm * 1.1 * max(row.weeks, default=0)
            return max(told, boxes, self.em_mm * 1.5) + self.em_mm * 0.7
        told = self.text(says, self.paper.width_mm - TICK_MM - WITH_MM - 1.5)
        return max(told, self.text(aside, WITH_MM), self.em_mm * 1.4) + self.em_mm * 0.5

    def labels(self, labels: Sequence[tuple[str, ...]]) -> float:
        """Labels, two beside each other."""
        wide = self.paper.width_mm / LABELS - 10.0
        each = [
            max(
                self.text(one[0], wide / BOLD, 1.6)
                + sum(self.text(line, wide) for line in one[1:])
                + self.em_mm,
                LABEL_LEAST_MM,
            )
            for one in labels
        ]
        return sum(max(each[place : place + LABELS]) for place in range(0, len(each), LABELS))

    def foot(self, sheet: Sheet) -> float:
        """What becomes of the ticks."""
        return self.text(sheet.back, self.paper.width_mm) + self.em_mm * 0.5 if sheet.back else 0.0


def _numbers(danger: Danger) -> str:
    return ", ".join(str(number) for number in danger.rows)


def _stamp_words(sheet: Sheet) -> str:
    return (
        f"{sheet.garden} · {sheet.file} · printed for 30 September 2027 · mark MMMM "
        "(a newer print with another mark: throw this one away)"
    )
