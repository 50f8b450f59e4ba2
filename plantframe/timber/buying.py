"""The buying list: need less shed, by counter, with the note for the yard."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.frozen import frozen
from plantframe.season.units import listed, plural
from plantframe.timber.carrying import Load, load_of
from plantframe.timber.counters import COUNTERS, STRIP, TIMBER, Line
from plantframe.timber.cutting import cutting_of, without
from plantframe.timber.finishes import finish_lines
from plantframe.timber.goods import goods_lines
from plantframe.timber.needs import needs_of
from plantframe.timber.poles import Cut, Poles, poles_of
from plantframe.timber.sowing import seed_lines
from plantframe.timber.woods import ORDINARY

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.season.season import Season
    from plantframe.timber.cutting import Cutting
    from plantframe.timber.lots import Board, Lot, Unfit
    from plantframe.timber.needs import LeftOut
    from plantframe.timber.stock import OldWood


_RIP_COUNT = re.compile(r"\brip(?:ped|ping)?\s+(\d+)\b", re.IGNORECASE)


@frozen
class OldUse:
    """What old wood is best used for: the line of the shed, and its uses with how many."""

    says: str
    uses: tuple[tuple[str, int], ...]


@frozen
class Buying:
    """The whole list.

    lines     what to buy, and what would have been bought but lies in the shed (count 0)
    to_cut    poles to cut in the wood
    old       what the shed's wood is used for; `idle` what of it stays where it is
    to_rip    the two lines for the yard, empty where nothing is ripped
    own_count where the gardener's own task has another number to rip, a sentence that says so
    """

    lines: tuple[Line, ...]
    to_cut: tuple[Cut, ...]
    old: tuple[OldUse, ...]
    idle: tuple[tuple[OldWood, int], ...]
    to_rip: tuple[str, ...]
    own_count: str
    load: Load
    cutting: Cutting
    left_out: tuple[LeftOut, ...]
    standing: tuple[str, ...]

    @property
    def cost(self) -> float | None:
        """What the lines with a price come to; None where none has one."""
        known = [line.cost for line in self.lines if line.count and line.cost is not None]
        return sum(known) if known else None

    @property
    def without_price(self) -> tuple[Line, ...]:
        """Lines to buy that have no price."""
        return tuple(line for line in self.lines if line.count and line.cost is None)


def buying_of(
    season: Season, frames: frozenset[str] = frozenset(), lengths_m: Sequence[float] = ()
) -> Buying:
    """The buying list of a season; of some frames, where they are named."""
    plan = season.plan
    needs = needs_of(season, frames)
    cutting = cutting_of(season, frames, lengths_m, needs)
    poles = poles_of(needs, cutting.wood, plan.garden)
    lines = [
        *(line for lot in cutting.lots for line in _lot_lines(season, cutting, lot)),
        *poles.lines,
        *goods_lines(needs.goods, plan),
        *finish_lines(season, frames),
        *seed_lines(season, frames),
    ]
    lines.sort(key=lambda line: COUNTERS.index(line.counter))
    return Buying(
        tuple(lines),
        poles.cut,
        _old_uses(cutting, poles),
        (*cutting.unused, *poles.unused),
        _to_rip(season, cutting),
        _own_count(season, cutting),
        load_of(cutting, lines),
        cutting,
        needs.left_out,
        needs.standing,
    )


def _lot_lines(season: Season, cutting: Cutting, lot: Lot) -> list[Line]:
    """The boards of a lot that are bought, by section and length."""
    groups: dict[tuple[object, ...], list[Board]] = {}
    for board in lot.boards:
        if not board.old:
            groups.setdefault((board.section, board.length, bool(board.half)), []).append(board)
    out = []
    first = True
    for boards in groups.values():
        from_shed = len(lot.from_shed) if first else 0
        alone = len(groups) == 1
        out.append(_board_line(season, cutting, lot, boards, from_shed, alone=alone))
        first = False
    return out + [_long_line(season, cutting, lot, one) for one in lot.unfit]


def _long_line(season: Season, cutting: Cutting, lot: Lot, one: Unfit) -> Line:
    """A piece longer than any board there is: to be asked for."""
    tape = cutting.tape
    what = one.piece.stick.section.name(season.plan.garden)
    length = one.piece.length if one.would_do is None else one.would_do
    there = tape.board(one.longest) if one.longest else "none"
    return Line(
        STRIP if lot.strip else TIMBER,
        what,
        f"{_kind(lot)}{what}{_wood(lot)}, {tape.board(length)} or longer",
        one.count,
        (one.piece.for_,),
        length_m=tape.metres(length),
        wanted=one.count,
        minds=(f"{tape.says(one.piece.length)} is wanted, the longest known of is {there}: ask",),
    )


def _wood(lot: Lot) -> str:
    return "" if lot.strip or lot.wood == ORDINARY else f" {lot.wood}"


def _kind(lot: Lot) -> str:
    return "lattice strip " if lot.strip else ""


def _board_line(
    season: Season,
    cutting: Cutting,
    lot: Lot,
    boards: list[Board],
    from_shed: int,
    *,
    alone: bool,
) -> Line:
    garden, tape = season.plan.garden, cutting.tape
    board = boards[0]
    count = sum(1 for one in boards if one.half != "b")
    what, asked = board.section.name(garden), board.section.asked_for(garden)
    ripped = ", ripped down the middle" if board.half else ""
    minds = []
    if board.section in lot.unlisted and cutting.yard_listed:
        minds.append(_unlisted(cutting, lot, board, what))
    return Line(
        STRIP if lot.strip else TIMBER,
        what,
        f"{_kind(lot)}{asked}{_wood(lot)}, {tape.board(board.length)}{ripped}",
        count,
        tuple(dict.fromkeys(piece.for_ for one in boards for piece in one.pieces)),
        length_m=tape.metres(board.length),
        wanted=count + from_shed,
        from_shed=from_shed,
        cost=None if board.price is None else board.price * count,
        instead=_instead(season, cutting, lot, board, alone=alone),
        minds=tuple(minds),
    )


def _unlisted(cutting: Cutting, lot: Lot, board: Board, what: str) -> str:
    listed_so = any(sold.section.same_as(board.section) for sold in cutting.wood.yard)
    if listed_so:
        return f"your yard's list does not say {lot.wood}: ask whether it has {what} of it"
    return f"your yard's list has no {what}: ask whether it is sold in this length"


def _instead(season: Season, cutting: Cutting, lot: Lot, board: Board, *, alone: bool) -> str:
    """What boards to take where there are none of this length."""
    other = without(season, cutting, lot, board)
    if other.unfit or not other.bought:
        return ""
    boards = listed(_counted(season, cutting, other.bought))
    return boards if alone else f"for the whole lot, {boards}"


def _counted(season: Season, cutting: Cutting, boards: Sequence[Board]) -> list[str]:
    counts: dict[str, int] = {}
    for board in boards:
        name = board.section.name(season.plan.garden)
        says = f"{name}, {cutting.tape.board(board.length)}{', ripped' if board.half else ''}"
        counts[says] = counts.get(says, 0) + 1
    return [f"{count} of {says}" for says, count in counts.items()]


def _old_uses(cutting: Cutting, poles: Poles) -> tuple[OldUse, ...]:
    uses: dict[str, dict[str, int]] = {}
    for lot in cutting.lots:
        for board in lot.boards:
            if board.old:
                for piece in board.pieces:
                    own = uses.setdefault(board.old, {})
                    own[piece.for_] = own.get(piece.for_, 0) + 1
    for old, count, whose in poles.used:
        own = uses.setdefault(old.says, {})
        own[whose] = own.get(whose, 0) + count
    return tuple(OldUse(says, tuple(own.items())) for says, own in uses.items())


def _to_rip(season: Season, cutting: Cutting) -> tuple[str, ...]:
    """The note for the yard: what to rip, and what the halves must measure."""
    garden, tape = season.plan.garden, cutting.tape
    boards = [board for lot in cutting.lots for board in lot.boards if board.half == "a"]
    boards = [board for board in boards if not board.old]
    if not boards:
        return ()
    kerf = tape.kerf_says(cutting.kerf)
    halves = dict.fromkeys(board.stick for board in boards)
    sizes = [
        half.inches() if garden.imperial else f"{half.thick_mm} x {half.wide_mm} mm"
        for half in halves
    ]
    counted = [one.removesuffix(", ripped") for one in _counted(season, cutting, boards)]
    sticks = plural(2 * len(boards), "stick")
    return (
        f"Please rip {listed(counted)} down the middle, full length: {sticks}.",
        f"Each stick about {listed(sizes)}, a cut of {kerf}; no planing, no cutting to length.",
    )


def _own_count(season: Season, cutting: Cutting) -> str:
    """Where a task of the gardener's own says another number of boards to rip."""
    wanted = sum(1 for board in cutting.boards if board.half == "a" and not board.old)
    for task in season.plan.tasks:
        said = _RIP_COUNT.search(task.what)
        if said and wanted and int(said[1]) != wanted and task.done is None:
            return f"Your own task says “{task.what}”; this list wants {wanted}."
    return ""
