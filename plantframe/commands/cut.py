"""cut: which board gives which pieces, each board on one line with its pieces and what is left."""

from __future__ import annotations

import sys
from collections import Counter
from typing import TYPE_CHECKING, Any

from plantframe.commands.asked import FINE, one_answer, write_json
from plantframe.commands.yard import arguments, frames_named, lengths
from plantframe.season.units import Shown, listed, plural
from plantframe.timber.cutting import cutting_of

if TYPE_CHECKING:
    import argparse
    from collections.abc import Sequence
    from datetime import date

    from plantframe.answers.answers import Answers
    from plantframe.commands.screen import Screen
    from plantframe.plan.things import Garden
    from plantframe.timber.cutting import Cutting
    from plantframe.timber.lots import Board, Lot, Piece, Unfit

CAUTION = (
    "Clamp the board, keep both hands behind the blade, and wear something over eyes and ears at a "
    "power saw. Old wood: draw the nails first."
)

__all__ = ["arguments", "run"]


def run(given: argparse.Namespace, today: date) -> int:
    """Print the cutting list."""
    from plantframe.commands.screen import Screen

    answers = one_answer(given.plan, today)
    cutting = cutting_of(answers.season, frames_named(answers, given.frame), lengths(given.lengths))
    if given.json:
        write_json({"plan": answers.plan.name, **as_data(cutting, answers.plan.garden)})
    else:
        show(answers, cutting, Screen.of(sys.stdout))
    return FINE


# ---- on the screen --------------------------------------------------------------------------
def show(answers: Answers, cutting: Cutting, screen: Screen) -> None:
    """The list: each lot with its pieces, its boards, and what it comes to."""
    plan = answers.plan
    screen.line(screen.strong(f"{plan.garden.name or plan.name}: what to saw from what"))
    if not cutting.lots:
        screen.wrapped("No frame that is still to be built wants sawn wood.", "")
    else:
        screen.wrapped(_kerf(cutting), "")
        screen.wrapped(f"Mind: {CAUTION}", "")
    for lot in cutting.lots:
        _lot(lot, cutting, plan.garden, screen)
    _shed(cutting, screen)
    for one in cutting.needs.left_out:
        screen.wrapped(f"Not in the list: {one.frame}; {one.because}.", "", "  ")


def _kerf(cutting: Cutting) -> str:
    kerf = cutting.tape.kerf_says(cutting.kerf)
    told = "as the plan says" if cutting.kerf_said else "as a power saw mostly does"
    more = "" if cutting.kerf_said else "; a line `kerf 2 mm` in the garden says what yours takes"
    sizes = "a sixteenth of an inch" if cutting.tape.imperial else "a millimetre"
    return (
        f"Each cut takes {kerf}, {told}{more}. Lengths are to {sizes}; pencil its letter on each "
        "piece. Measure each board: it may run over its length, and is not counted on to."
    )


def heading(lot: Lot, garden: Garden) -> str:
    """What a lot is of: `2x2 (1-1/2 x 1-1/2 in)`, `2x4, cedar`."""
    names = []
    for section in lot.sections:
        measures = section.measures(garden)
        names.append(f"{section.name(garden)} ({measures})" if measures else section.name(garden))
    wood = "" if lot.strip or lot.wood == "softwood" else f", {lot.wood}"
    return f"{'Lattice strip ' if lot.strip else ''}{listed(names)}{wood}"


def _lot(lot: Lot, cutting: Cutting, garden: Garden, screen: Screen) -> None:
    tape = cutting.tape
    screen.heading(heading(lot, garden))
    several = len(lot.sections) > 1
    for piece in lot.pieces:
        section = f" of {piece.stick.section.name(garden)}" if several else ""
        cut = f" ({piece.stick.cut})" if piece.stick.cut else ""
        says = f"{piece.stick.count} of {tape.says(piece.length)}{section}: {piece.for_}{cut}"
        screen.labelled(f"{piece.mark:>2}", says, "  ")
    old = [board for board in lot.boards if board.old]
    new = [board for board in lot.boards if not board.old]
    for title, boards in (("From the shed", old), ("Bought", new)):
        if boards:
            screen.line(f"  {title}:")
            for board in boards:
                _board(board, cutting, garden, screen)
    for one in lot.unfit:
        screen.wrapped(_unfit(one, cutting), "  ")
    for says in outcome(lot, cutting, garden):
        screen.wrapped(says, "  ")


def _board(board: Board, cutting: Cutting, garden: Garden, screen: Screen) -> None:
    """One line: the board, its pieces in order, what is left."""
    tape = cutting.tape
    name = f"{board.section.name(garden)} {tape.board(board.length)}"
    if board.half:
        name += ", ripped"
    if board.flawed:
        name += ", a flawed one"
    if not board.pieces:
        text = "whole, to spare"
    elif board.as_it_is:
        text = f"{board.pieces[0].mark}, as it is"
    else:
        text = f"{_pieces(board.pieces, cutting)}; left {tape.says(board.left)}"
    if board.pieces and not board.as_it_is and board.left == 0:
        text = f"{_pieces(board.pieces, cutting)}; nothing left"
    screen.labelled(f"{board.number:3}{board.half or ' '} {name:<{_width(garden)}}", text, "  ")


def _width(garden: Garden) -> int:
    return 20 if garden.imperial else 24


def _pieces(pieces: Sequence[Piece], cutting: Cutting) -> str:
    """The pieces in their order; several alike that follow each other are counted."""
    told: list[str] = []
    for mark, count in Counter(piece.mark for piece in pieces).items():
        length = next(piece.length for piece in pieces if piece.mark == mark)
        many = f"{count} of " if count > 1 else ""
        told.append(f"{many}{mark} {cutting.tape.says(length)}")
    return ", ".join(told)


def _unfit(one: Unfit, cutting: Cutting) -> str:
    tape = cutting.tape
    longest = (
        f"the longest there is, is {tape.board(one.longest)}" if one.longest else "none is sold"
    )
    ask = (
        f"Ask for {tape.board(one.would_do)}, or make it of two, the joint backed by a batten."
        if one.would_do
        else "No yard mostly keeps any so long: make it of two with a lap at a post."
    )
    return (
        f"Cannot be cut: {one.count} of {tape.says(one.piece.length)} for {one.piece.for_}; "
        f"{longest}. {ask}"
    )


def outcome(lot: Lot, cutting: Cutting, garden: Garden) -> list[str]:
    """What a lot comes to, whether that is proven, and what would save something."""
    said = []
    if lot.bought:
        said.append(_comes_to(lot, cutting, garden))
    rests = Counter(board.left for board in lot.boards if board.left)
    if rests:
        tape = cutting.tape
        left = [
            f"{count} of {tape.says(rest)}" for rest, count in sorted(rests.items(), reverse=True)
        ]
        said.append(f"Left over: {listed(left)}.")
    said += _savings(lot, cutting)
    return said


def _comes_to(lot: Lot, cutting: Cutting, garden: Garden) -> str:
    metres = sum(cutting.tape.metres(board.length) for board in lot.bought)
    long = Shown(garden.imperial).length(metres)
    boards = plural(len(lot.bought), "board")
    text = (
        f"Comes to {lot.cost:.2f} for {boards}"
        if lot.priced
        else f"Comes to {boards}, {long} in all"
    )
    least = "cheaper" if lot.priced else "with less wood"
    if lot.proven:
        few = ", nor at that with fewer boards" if lot.fewest else ""
        text += f"; proven: it cannot be had {least}{few}."
    else:
        gap = (lot.cost - lot.bound) / lot.cost * 100
        text += f"; the best found, at most {gap:.1f} % above what it could be."
    if not lot.priced and cutting.yard_listed:
        text += " Not every price is known, so the least wood was looked for."
    if lot.longest_first is not None and lot.longest_first > lot.cost + 1e-6:
        more = (lot.longest_first / lot.cost - 1) * 100 if lot.cost else 100.0
        text += f" Sawn longest first as it comes, it would have taken {more:.0f} % more."
    return text


def _savings(lot: Lot, cutting: Cutting) -> list[str]:
    tape, said = cutting.tape, []
    if lot.shorter is not None:
        how = (
            f"{lot.shorter.saves:.2f} is saved"
            if lot.priced
            else f"{plural(lot.shorter.boards, 'board')} will do"
            if lot.shorter.boards < len(lot.bought)
            else "less wood will do"
        )
        said.append(
            f"Made {tape.says(lot.shorter.to)} instead of {tape.says(lot.shorter.length)}, the "
            f"pieces fit the boards, cuts and all, and {how}; if nothing else hangs on it."
        )
    if lot.ripping_old_saves > 0:
        what = f"{lot.ripping_old_saves:.2f}" if lot.priced else "wood"
        said.append(
            f"Ripping old boards of the shed as well would save {what}, with a saw bench or a yard "
            "that rips old wood; nails in it are the danger."
        )
    return said + _by_wood(lot, cutting)


def _by_wood(lot: Lot, cutting: Cutting) -> list[str]:
    """Old wood that would do if it were the wood that is wanted."""
    in_soil = any(piece.stick.sound for piece in lot.pieces)
    if lot.wood == "softwood" or lot.wood_said or not in_soil:
        return []
    reckoned = f"These stand in soil, so {lot.wood} is reckoned with; the plan does not say."
    for old, count in cutting.unused:
        same = any(old.section.same_as(section) for section in lot.sections)
        shortest = min(piece.length for piece in lot.pieces)
        if same and not old.wood and cutting.tape.within(old.length_m) >= shortest:
            sticks = plural(count, "stick")
            said = f"{reckoned} Are the {sticks} of “{old.says}” such wood, saw them from those."
            return [said]
    return [reckoned]


def _shed(cutting: Cutting, screen: Screen) -> None:
    idle = [f"{count} of “{old.says}”" for old, count in cutting.unused]
    idle += [f"“{line}” (it says no size or no length)" for line in cutting.wood.unclear]
    if idle and cutting.lots:
        screen.line()
        screen.wrapped(f"Stays in the shed: {listed(idle)}.", "", "  ")


# ---- as data --------------------------------------------------------------------------------
def as_data(cutting: Cutting, garden: Garden) -> dict[str, Any]:
    """The list as data: the promise of the commands page.

    Lengths are there to the millimetre, and in `steps` of the tape, in which they add up exactly.
    """
    tape = cutting.tape
    priced = [lot for lot in cutting.lots if lot.priced]
    return {
        "step": "1/16 in" if tape.imperial else "1 mm",
        "kerf_mm": tape.millimetres(cutting.kerf),
        "kerf_steps": cutting.kerf,
        "boards": [
            _board_data(board, cutting, garden) for lot in cutting.lots for board in lot.boards
        ],
        "cost": round(sum(lot.cost for lot in priced), 2) if priced else None,
        "bound": round(sum(lot.bound for lot in priced), 2) if priced else None,
        "proven": cutting.proven,
        "lots": [_lot_data(lot, cutting, garden) for lot in cutting.lots],
        "cannot_be_cut": [
            {
                "for": one.piece.for_,
                "length_mm": tape.millimetres(one.piece.length),
                "count": one.count,
                "would_do_mm": None if one.would_do is None else tape.millimetres(one.would_do),
            }
            for lot in cutting.lots
            for one in lot.unfit
        ],
        "stays_in_shed": [{"line": old.says, "count": count} for old, count in cutting.unused],
        "not_in_the_list": [
            {"frame": one.frame, "because": one.because} for one in cutting.needs.left_out
        ],
    }


def _board_data(board: Board, cutting: Cutting, garden: Garden) -> dict[str, Any]:
    tape = cutting.tape
    return {
        "number": board.number,
        "half": board.half or None,
        "stock": board.section.name(garden),
        "section_mm": [board.stick.thick_mm, board.stick.wide_mm],
        "from_shed": board.old or None,
        "length_mm": tape.millimetres(board.length),
        "length_steps": board.length,
        "price": None if board.old else board.price,
        "pieces": [
            {
                "mark": piece.mark,
                "for": piece.for_,
                "length_mm": tape.millimetres(piece.length),
                "length_steps": piece.length,
            }
            for piece in board.pieces
        ],
        "left_mm": tape.millimetres(board.left),
        "left_steps": board.left,
    }


def _lot_data(lot: Lot, cutting: Cutting, garden: Garden) -> dict[str, Any]:
    return {
        "of": heading(lot, garden),
        "measure": "price" if lot.priced else "wood bought",
        "cost": round(lot.cost, 2),
        "bound": round(lot.bound, 2),
        "proven": lot.proven,
        "fewest_boards": lot.fewest,
        "longest_first": None if lot.longest_first is None else round(lot.longest_first, 2),
        "shorter": None
        if lot.shorter is None
        else {
            "length_mm": cutting.tape.millimetres(lot.shorter.length),
            "to_mm": cutting.tape.millimetres(lot.shorter.to),
            "saves": round(lot.shorter.saves, 2),
        },
    }
