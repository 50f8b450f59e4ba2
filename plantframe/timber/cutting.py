"""The cutting list of a plan: which board gives which pieces, old wood first, and what is left."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.frozen import frozen, replace
from plantframe.timber.bench import Bench
from plantframe.timber.needs import needs_of
from plantframe.timber.stock import with_lengths, wood_of
from plantframe.timber.tape import KERF_M, Tape
from plantframe.timber.ways import Ways

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.season.season import Season
    from plantframe.timber.lots import Board, Lot
    from plantframe.timber.needs import Needs
    from plantframe.timber.stock import OldWood, Wood


@frozen
class Cutting:
    """The whole list.

    kerf         what a cut takes, in steps; `kerf_said` where the garden gives it
    yard_listed  the plan has a list of its own yard
    """

    tape: Tape
    kerf: int
    kerf_said: bool
    yard_listed: bool
    lots: tuple[Lot, ...]
    needs: Needs
    wood: Wood
    unused: tuple[tuple[OldWood, int], ...]

    @property
    def proven(self) -> bool:
        """Nothing better exists for any lot."""
        return all(lot.proven for lot in self.lots)

    @property
    def boards(self) -> tuple[Board, ...]:
        """Every stick on the saw."""
        return tuple(board for lot in self.lots for board in lot.boards)


def cutting_of(
    season: Season,
    frames: frozenset[str] = frozenset(),
    lengths_m: Sequence[float] = (),
    needs: Needs | None = None,
) -> Cutting:
    """The cutting list of a season.

    frames     only these, where any are named
    lengths_m  the only lengths the yard has, where it has not what its list says
    """
    plan = season.plan
    tape = Tape(plan.garden.imperial)
    kerf_m = plan.garden.kerf_m
    kerf = tape.kerf(KERF_M if kerf_m is None else kerf_m)
    needs = needs_of(season, frames) if needs is None else needs
    wood = wood_of(plan)
    if lengths_m:
        wood = with_lengths(wood, lengths_m)
    ways = Ways(plan, tape, kerf, wood, tuple(lengths_m))
    bench = Bench(tape, kerf, ways, needs.sticks)
    lots = _numbered(tuple(bench.lot(sticks) for sticks in bench.lots()))
    return Cutting(
        tape, kerf, kerf_m is not None, bool(plan.yard), lots, needs, wood, _unused(wood, lots)
    )


def _numbered(lots: tuple[Lot, ...]) -> tuple[Lot, ...]:
    """Boards numbered through the whole list."""
    out, so_far = [], 0
    for lot in lots:
        boards = tuple(replace(board, number=board.number + so_far) for board in lot.boards)
        so_far = max([so_far, *(board.number for board in boards)])
        out.append(replace(lot, boards=boards))
    return tuple(out)


def _unused(wood: Wood, lots: tuple[Lot, ...]) -> tuple[tuple[OldWood, int], ...]:
    """Old wood that stays in the shed: each line with how many sticks of it."""
    used: dict[str, int] = {}
    for lot in lots:
        for board in lot.from_shed:
            used[board.old] = used.get(board.old, 0) + 1
    out = []
    for old in wood.shed:
        rest = old.whole - used.get(old.says, 0)
        used[old.says] = max(used.get(old.says, 0) - old.whole, 0)
        if rest > 0 and not old.section.round:
            out.append((old, rest))
    return tuple(out)


def without(season: Season, cutting: Cutting, lot: Lot, board: Board) -> Lot:
    """The same lot where the yard is out of boards of that section and length."""
    tape = cutting.tape
    missing = (board.section, board.length)
    ways = Ways(season.plan, tape, cutting.kerf, cutting.wood, missing=missing)
    bench = Bench(tape, cutting.kerf, ways, cutting.needs.sticks)
    return bench.lot([piece.stick for piece in lot.pieces], asking=False)
