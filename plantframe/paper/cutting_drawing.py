"""The cutting list drawn: each board a bar, its pieces in order with their letters, the rest."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.paper.drawing import BOLD, LINE, SMALL_MM, Drawing, paragraphs, stacked, text_mm
from plantframe.paper.scale import scale_for

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.paper.scale import Scale
    from plantframe.plan.things import Garden
    from plantframe.timber.cutting import Cutting
    from plantframe.timber.lots import Board, Lot

WIDE_MM: Final = 190.0
NAME_MM: Final = 44.0
BAR_MM, STEP_MM = 5.6, 8.2
HEADING_MM: Final = 4.0
LEFT_OVER_MM: Final = 24.0
A_PAGE: Final = 24  # boards
CAUTION: Final = (
    "Mind: clamp the board, keep both hands behind the blade, and cover eyes and ears at a power "
    "saw; draw the nails of old wood first."
)


def cutting_drawings(cutting: Cutting, garden: Garden) -> list[tuple[str, Drawing]]:
    """A heading and a drawing for each lot of sticks sawn together; a long lot has several."""
    longest = max((cutting.tape.metres(board.length) for board in cutting.boards), default=0.0)
    if longest <= 0:
        return []
    wide = WIDE_MM - NAME_MM - LEFT_OVER_MM
    scale = scale_for(longest, 0.0, wide, BAR_MM, imperial=garden.imperial)
    found = []
    for lot in (lot for lot in cutting.lots if lot.boards):
        name = _lot_name(lot, garden)
        shares = [lot.boards[at : at + A_PAGE] for at in range(0, len(lot.boards), A_PAGE)]
        for place, boards in enumerate(shares, 1):
            part = f", {place} of {len(shares)}" if len(shares) > 1 else ""
            drawing = _lot(lot, boards, cutting, garden, scale)
            title = paragraphs([f"{name}{part}"], WIDE_MM, HEADING_MM, bold=True)
            found.append((f"{name}{part}", stacked([title, drawing], 1.5)))
    return found


def _lot_name(lot: Lot, garden: Garden) -> str:
    names = " and ".join(dict.fromkeys(section.name(garden) for section in lot.sections))
    wood = "" if lot.strip or lot.wood == "softwood" else f", {lot.wood}"
    return f"{'lattice strip ' if lot.strip else ''}{names}{wood}"


def _lot(
    lot: Lot, boards: Sequence[Board], cutting: Cutting, garden: Garden, scale: Scale
) -> Drawing:
    """The pieces of a lot in words, its boards drawn, and what cannot be cut."""
    says = cutting.tape.says
    pieces = [
        f"{piece.mark}  {piece.stick.count} of {says(piece.length)}: {piece.for_}"
        for piece in lot.pieces
    ]
    unfit = [
        f"Cannot be cut from what there is: {one.count} of {says(one.piece.length)}, "
        f"{one.piece.for_}."
        for one in lot.unfit
    ]
    out = Drawing(WIDE_MM, len(boards) * STEP_MM + 2.0)
    for line, board in enumerate(boards):
        _board(out, board, cutting, garden, scale, line * STEP_MM + 1.0)
    kerf = cutting.tape.kerf_says(cutting.kerf)
    under = [
        f"{scale.name}, when printed at full size; hatched: left over. Each cut takes {kerf}.",
        CAUTION,
    ]
    return stacked([paragraphs(pieces, WIDE_MM), out, paragraphs([*unfit, *under], WIDE_MM)], 2.0)


def _board(
    drawing: Drawing, board: Board, cutting: Cutting, garden: Garden, scale: Scale, top: float
) -> None:
    """One board on one line: what it is, its pieces with the saw's cuts between, what is left."""
    tape = cutting.tape
    level = top + BAR_MM / 2 + SMALL_MM / 3
    ripped = ", ripped" if board.half else ""
    old = ", shed" if board.old else ""
    name = f"{board.number}{board.half} {board.section.name(garden)} {tape.board(board.length)}"
    drawing.text((0.0, level), f"{name}{ripped}{old}")
    left = NAME_MM

    def mm(steps: int) -> float:
        return scale.mm(tape.metres(steps))

    whole = mm(board.length)
    used = 0
    for piece in board.pieces:
        start, wide = left + mm(used), mm(piece.length)
        drawing.box((start, top), (wide, BAR_MM), LINE)
        says = f"{piece.mark} {tape.says(piece.length)}"
        words = says if text_mm(says) < wide - 1.0 else piece.mark
        drawing.text((start + wide / 2, level), words, anchor="middle")
        used += piece.length + cutting.kerf
    rest = left + whole - mm(board.left)
    if board.left:
        corners = [
            (rest, top),
            (left + whole, top),
            (left + whole, top + BAR_MM),
            (rest, top + BAR_MM),
        ]
        drawing.hatch(corners, 1.6, 45.0)
        drawing.text((left + whole + 1.5, level), f"{tape.says(board.left)} left")
    drawing.box((left, top), (whole, BAR_MM), BOLD, filled=False)
