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
from plantframe.paper.text import folded

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from plantframe.paper.drawing import Drawing
    from plantframe.paper.sheet import Aside, Row, Sheet

POINT_MM: Final = 0.3528
LINE_EM: Final = 1.3
SIZES_PT: Final = (11.0, 10.5, 10.0, 9.5, 9.0)
LARGE_PT: Final = (16.0, 15.0, 14.0)
# Heights of the front view that are tried, mm.
DRAWINGS_MM: Final = (78.0, 66.0, 54.0, 44.0)
LARGE_DRAWINGS_MM: Final = (66.0, 54.0)
SPARE: Final = 0.97  # of a page that is filled

# Widths that the pages' style gives, mm.
NUMBERS_MM: Final = 56.0
GUTTER_MM: Final = 4.0
TICK_MM: Final = 15.0
PEOPLE_MM, TIME_MM, TOOLS_MM = 15.0, 20.0, 36.0
ROUNDS_SAY_MM: Final = 74.0
ASIDES: Final = 3
LABELS: Final = 2
LABEL_LEAST_MM: Final = 34.0


@frozen
class Paper:
    """A paper size with its margins taken off, mm."""

    name: str
    width_mm: float
    height_mm: float


A4: Final = Paper("A4", 186.0, 275.0)
LETTER: Final = Paper("letter", 191.0, 257.0)


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
    for drawing, caption in _drawings(sheet, paper, large=large):
        for type_pt in LARGE_PT if large else SIZES_PT:
            height = _Heights(paper, type_pt)
            whole = height.fixed(sheet, sheet.dangers, drawing) + height.body(sheet)
            if whole <= room:
                return (_page(sheet, 1, 1, type_pt, sheet.rows, sheet.labels, drawing, caption),)
    return _several(sheet, paper, LARGE_PT[-1] if large else SIZES_PT[2], large=large)


def _drawings(sheet: Sheet, paper: Paper, *, large: bool) -> Iterator[tuple[Drawing | None, str]]:
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
    room = paper.height_mm * SPARE
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
        head = self.line_mm * 1.4 if sheet.rows else 0.0
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
        title = self.text(f"{sheet.title} {sheet.kind}", wide, 1.9)
        about = sum(self.text(line, wide) for line in sheet.about)
        return title + about + self.text(_stamp_words(sheet), wide, 0.9) + self.em_mm * 1.2

    def dangers(self, dangers: Sequence[Danger]) -> float:
        """The box of cautions."""
        if not dangers:
            return 0.0
        wide = self.paper.width_mm - 26.0
        lines = sum(self.text(f"{one.says} {one.rows}", wide) for one in dangers)
        return lines + self.em_mm * 1.6

    def top(self, sheet: Sheet, drawing: Drawing | None) -> float:
        """Numbers beside the front view, or over a drawing that takes the whole width."""
        beside = sheet.subject is not None
        narrow = NUMBERS_MM if beside else self.paper.width_mm / 3
        each = [
            self.em_mm * 3.0 + self.text(one.says, narrow - 6.0, 0.9) + self.em_mm * 0.9
            for one in sheet.numbers
        ]
        numbers = (sum(each) if beside else max(each, default=0.0)) + self.em_mm * 0.5
        drawn = drawing.height_mm + self.line_mm * 1.3 if drawing is not None else 0.0
        return (max(numbers, drawn) if beside else numbers + drawn) + self.em_mm * 0.5

    def asides(self, asides: Sequence[Aside]) -> float:
        """The short lists, three beside each other."""
        wide = (self.paper.width_mm - (ASIDES - 1) * GUTTER_MM) / ASIDES - 3.0
        each = [
            self.text(one.title, wide)
            + sum(self.text(line, wide - 3.0) + self.em_mm * 0.15 for line in one.lines)
            + self.em_mm * 0.8
            for one in asides
        ]
        return sum(max(each[place : place + ASIDES]) for place in range(0, len(each), ASIDES))

    def row(self, row: Row, sheet: Sheet) -> float:
        """A line to tick, with its notes."""
        if sheet.columns:
            wide = ROUNDS_SAY_MM - TICK_MM
            aside = 0.0
        else:
            wide = self.paper.width_mm - TICK_MM - PEOPLE_MM - TIME_MM - TOOLS_MM - 6.0
            aside = max(
                self.text(row.tools, TOOLS_MM - 3.0, 0.9), self.text(row.time, TIME_MM - 2.0)
            )
        extra = [f"{row.time}, {row.tools}"] if sheet.columns and (row.time or row.tools) else []
        notes = [f"{label}: {words}" if label else words for label, words in row.notes]
        says = f"{row.says} {row.state} ▲ ■"
        told = self.text(says, wide) + sum(self.text(one, wide, 0.95) for one in (*notes, *extra))
        return max(told, aside, self.em_mm * 1.5) + self.em_mm * 0.55

    def labels(self, labels: Sequence[tuple[str, ...]]) -> float:
        """Labels, two beside each other."""
        wide = self.paper.width_mm / LABELS - 10.0
        each = [
            max(
                self.text(one[0], wide, 1.6)
                + sum(self.text(line, wide) for line in one[1:])
                + self.em_mm * 1.6,
                LABEL_LEAST_MM,
            )
            for one in labels
        ]
        return sum(max(each[place : place + LABELS]) for place in range(0, len(each), LABELS))

    def foot(self, sheet: Sheet) -> float:
        """What becomes of the ticks."""
        lines = self.text(sheet.back, self.paper.width_mm) if sheet.back else 0.0
        return lines + self.line_mm + self.em_mm


def _stamp_words(sheet: Sheet) -> str:
    return f"{sheet.garden} · {sheet.file} · printed for {sheet.today} · mark {sheet.mark} · sheet"
