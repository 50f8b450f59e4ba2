"""Fitting a sheet on a page: the largest type that leaves room for all, more pages if none does.

Heights are reckoned from a broad typeface, so that a narrower one only leaves room over. Nothing is
ever left out or cut off to make a sheet fit.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen, replace
from plantframe.paper.elevation import front
from plantframe.paper.scale import TooLargeError
from plantframe.paper.sheet import Danger, Row
from plantframe.paper.text import BOLD, folded

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from plantframe.paper.drawing import Drawing
    from plantframe.paper.sheet import Aside, Sheet

POINT_MM: Final = 0.3528
LINE_EM: Final = 1.3
SIZES_PT: Final = (13.0, 12.0, 11.0, 10.5, 10.0, 9.5, 9.0, 8.5)
LARGE_PT: Final = (16.0, 15.0, 14.0, 13.0)
SEVERAL_PT: Final = (10.0, 9.5)  # of what goes on over more than one page
# Heights of the front view that are tried, mm.
DRAWINGS_MM: Final = (78.0, 66.0, 54.0, 44.0)
LARGE_DRAWINGS_MM: Final = (66.0, 54.0)
SPARE: Final = 0.98  # of a page that is filled

# Widths that the pages' style gives, mm.
MARGIN_MM: Final = 10.0
NUMBERS_MM: Final = 56.0
GUTTER_MM: Final = 4.0
ASIDE_MM: Final = 34.0
TICK_MM: Final = 15.5
WITH_MM: Final = 42.0
ROUNDS_SAY_MM: Final = 74.0  # at least, with its tick
ONE_BOX_MM, BOXES_MM = 8.0, 13.0  # a column with one box a row, and with several
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
    say_mm    how wide the words of a round are
    drawing   the front view or the sheet's own drawing, on the first page only
    dangers   all of them on the first page; on the others what stands with its rows or always
    """

    sheet: Sheet
    number: int
    of: int
    type_pt: float
    say_mm: float
    asides: tuple[Aside, ...]
    rows: tuple[Row, ...]
    dangers: tuple[Danger, ...]
    labels: tuple[tuple[str, ...], ...]
    drawing: Drawing | None
    caption: str

    @property
    def first(self) -> bool:
        """The page with numbers and drawing."""
        return self.number == 1


def pages_of(sheet: Sheet, paper: Paper, *, large: bool = False) -> tuple[Page, ...]:
    """The pages of a sheet: one, unless there is more to say than a page holds."""
    room = paper.height_mm * SPARE
    drawings = list(_drawings(sheet, paper, large=large))
    sizes = LARGE_PT if large else SIZES_PT
    for type_pt, (drawing, caption) in _tries(sizes, drawings):
        height = _Heights(paper, type_pt)
        all_of_it = _Share(sheet.asides, sheet.rows, sheet.labels)
        whole = height.share(sheet, all_of_it, sheet.dangers) + height.top(sheet, drawing)
        if whole <= room:
            told = sheet.asides, sheet.rows, sheet.dangers, sheet.labels
            say_mm = rounds_say_mm(sheet, paper)
            return (Page(sheet, 1, 1, type_pt, say_mm, *told, drawing, caption),)
    several = [
        _several(sheet, paper, size, large=large) for size in (LARGE_PT if large else SEVERAL_PT)
    ]
    return min(several, key=len)  # of as many pages, those in the larger type


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


@frozen
class _Share:
    """What of a sheet goes on one page."""

    asides: tuple[Aside, ...] = ()
    rows: tuple[Row, ...] = ()
    labels: tuple[tuple[str, ...], ...] = ()


def _dangers_on(sheet: Sheet, share: _Share, number: int) -> tuple[Danger, ...]:
    """The cautions of a page: all of them on the first, else those of its rows and of all time."""
    if number == 1:
        return sheet.dangers
    here = {row.number for row in share.rows}
    return tuple(
        Danger(one.says, tuple(n for n in one.rows if n in here))
        for one in sheet.dangers
        if not one.rows or here & set(one.rows)
    )


def _several(sheet: Sheet, paper: Paper, type_pt: float, *, large: bool) -> tuple[Page, ...]:
    """Lists and rows shared out over as many pages as they need."""
    drawing, caption = list(_drawings(sheet, paper, large=large))[-1]
    height = _Heights(paper, type_pt)
    room = paper.height_mm * SPARE - height.line_mm  # for the number of the sheet
    shares = _label_shares(sheet, height, room) if sheet.labels else [_Share()]
    items: tuple[Aside | Row, ...] = (*sheet.asides, *sheet.rows)
    for item in items:
        share = _with(shares[-1], item)
        first = len(shares) == 1
        used = height.share(sheet, share, _dangers_on(sheet, share, len(shares)))
        used += height.top(sheet, drawing) if first else 0.0
        if used > room and (first or shares[-1] != _Share()):
            shares.append(_with(_Share(), item))
        else:
            shares[-1] = share
    return tuple(
        Page(
            sheet,
            number,
            len(shares),
            type_pt,
            rounds_say_mm(sheet, paper),
            share.asides,
            share.rows,
            _dangers_on(sheet, share, number),
            share.labels,
            drawing if number == 1 else None,
            caption if number == 1 else "",
        )
        for number, share in enumerate(shares, 1)
    )


def _with(share: _Share, item: Aside | Row) -> _Share:
    """A share with one more list or row."""
    if isinstance(item, Row):
        return replace(share, rows=(*share.rows, item))
    return replace(share, asides=(*share.asides, item))


def _label_shares(sheet: Sheet, height: _Heights, room: float) -> list[_Share]:
    """Labels, whole lines of them to a page."""
    shares = [_Share()]
    for place in range(0, len(sheet.labels), LABELS):
        some = sheet.labels[place : place + LABELS]
        share = _Share(labels=(*shares[-1].labels, *some))
        if height.share(sheet, share, ()) > room and shares[-1].labels:
            shares.append(_Share(labels=some))
        else:
            shares[-1] = share
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

    def share(self, sheet: Sheet, share: _Share, dangers: Sequence[Danger]) -> float:
        """All of a page but its numbers and drawing."""
        rows = sum(
            self.row(row, sheet) + self.day_line(share.rows, place)
            for place, row in enumerate(share.rows)
        )
        heads = self.line_mm if sheet.columns and share.rows else 0.0
        return (
            self.head(sheet)
            + self.dangers(dangers)
            + self.asides(share.asides)
            + heads
            + rows
            + self.labels(share.labels)
            + self.foot(sheet)
        )

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
        if not asides:
            return 0.0
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
        hands = f"{row.hands} people, " if row.hands > 1 else f"{row.who}, " if row.who else ""
        aside = f"{hands}{row.time}; {row.tools}"
        if sheet.columns:
            wide = rounds_say_mm(sheet, self.paper) - 1.5
            told = self.text(says, wide) + self.text(aside, wide)
            boxes = self.em_mm * 1.1 * max(row.weeks, default=0)
            return max(told, boxes, self.em_mm * 1.5) + self.em_mm * 0.8
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


def rounds_say_mm(sheet: Sheet, paper: Paper) -> float:
    """How wide the words of a round are: all that its columns of boxes leave."""
    several = any(boxes > 1 for row in sheet.rows for boxes in row.weeks)
    boxes = len(sheet.columns) * (BOXES_MM if several else ONE_BOX_MM)
    return max(paper.width_mm - boxes, ROUNDS_SAY_MM) - TICK_MM


def _numbers(danger: Danger) -> str:
    return ", ".join(str(number) for number in danger.rows)


def _stamp_words(sheet: Sheet) -> str:
    return (
        f"{sheet.garden} · {sheet.file} · printed for 30 September 2027 · mark MMMM "
        "(a newer print with another mark: throw this one away)"
    )
