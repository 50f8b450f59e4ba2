"""The bench: sticks sorted into lots, each lot sawn, and what would save something."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen, replace
from plantframe.timber.longest_first import longest_first
from plantframe.timber.lots import Board, Lot, Piece, Shorter, Unfit, mark_of
from plantframe.timber.sawing import Sawing, Stock, Wanted
from plantframe.timber.solver import solve
from plantframe.timber.stock import usual_lengths

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.timber.needs import Stick
    from plantframe.timber.sawing import Pattern, Solved
    from plantframe.timber.sections import Section
    from plantframe.timber.tape import Tape
    from plantframe.timber.ways import Way, Ways

CENTS: Final = 100
_MOST_TO_A_BOARD: Final = 6
_NEARLY: Final = 0.05  # a length that is too long by no more than this share may be shortened


@frozen
class _Alike:
    """Pieces that are alike to the saw, and whose they are."""

    wanted: Wanted
    section: Section
    sound: bool
    near_food: bool
    pieces: tuple[Piece, ...]


class Bench:
    """Where lots are made up and sawn. `others` are all sticks of the plan."""

    def __init__(self, tape: Tape, kerf: int, ways: Ways, others: Iterable[Stick]) -> None:
        self.tape = tape
        self.kerf = kerf
        self.ways = ways
        self.others = tuple(others)
        self.marks = 0

    def lots(self) -> list[list[Stick]]:
        """Sticks by wood and by the boards they come from."""
        by_wood: dict[str, list[Stick]] = {}
        for stick in self.others:
            by_wood.setdefault(stick.wood, []).append(stick)
        out = [lot for group in by_wood.values() for lot in self._by_source(group)]
        return sorted(out, key=lambda lot: (lot[0].strip, lot[0].section.area_m2, lot[0].wood))

    def _by_source(self, group: list[Stick]) -> list[list[Stick]]:
        lots: list[tuple[set[Section], list[Stick]]] = []
        for stick in group:
            sources, members = {stick.section, *self.ways.boards_to_rip(stick)}, [stick]
            same = [lot for lot in lots if any(a.same_as(b) for a in lot[0] for b in sources)]
            for lot in same:
                sources |= lot[0]
                members = [*lot[1], *members]
                lots.remove(lot)
            lots.append((sources, members))
        return [members for _, members in lots]

    # -- one lot --------------------------------------------------------------------------------
    def lot(self, sticks: list[Stick], *, asking: bool = True) -> Lot:
        """Saw one lot; `asking` looks as well for what would save something."""
        pieces = self._pieces(sticks)
        ways = self.ways.of(sticks, self.others)
        fitting, unfit = self._fitting(pieces, ways)
        priced = all(way.price is not None for way in ways if way.old is None)
        sawing, wanted = self._sawing(fitting, ways, priced=priced)
        solved = solve(sawing)
        while solved is None:
            # the shed alone has boards long enough, and too few of them
            longest = max(fitting, key=lambda piece: piece.length)
            fitting.remove(longest)
            unfit.append(self._unfit(longest, ways))
            sawing, wanted = self._sawing(fitting, ways, priced=priced)
            solved = solve(sawing)
        scale = CENTS if priced else 1
        greedy = longest_first(sawing) if fitting else None
        boards = self._boards(sawing, solved, ways, wanted)
        bought = {board.section for board in boards if not board.old}
        unlisted = dict.fromkeys(way.section for way in ways if way.usual and way.section in bought)
        shorter = self._shorter(fitting, ways, solved.cost, priced=priced) if asking else None
        ripping = self._ripping_old(sticks, fitting, solved.cost, priced=priced) if asking else 0
        return Lot(
            sections=tuple(dict.fromkeys(stick.section for stick in sticks)),
            wood=sticks[0].wood,
            wood_said=any(stick.wood_said for stick in sticks),
            strip=all(stick.strip for stick in sticks),
            pieces=tuple(pieces),
            boards=boards,
            unfit=tuple(unfit),
            priced=priced,
            cost=solved.cost / scale,
            bound=solved.bound / scale,
            proven=solved.proven,
            fewest=solved.fewest,
            unlisted=tuple(unlisted),
            longest_first=greedy.cost(sawing) / scale if greedy is not None else None,
            shorter=replace(shorter, saves=shorter.saves / scale) if shorter else None,
            ripping_old_saves=ripping / scale,
        )

    def _pieces(self, sticks: list[Stick]) -> list[Piece]:
        order = sorted(
            sticks, key=lambda stick: (-stick.length_m, stick.section.area_m2, stick.frame)
        )
        out = []
        for stick in order:
            out.append(Piece(mark_of(self.marks), stick, self.tape.nearest(stick.length_m)))
            self.marks += 1
        return out

    def _sawing(
        self, pieces: list[Piece], ways: list[Way], *, priced: bool
    ) -> tuple[Sawing, list[_Alike]]:
        wanted = _wanted(pieces)
        stocks = tuple(self._stock(way, ways, wanted, priced=priced) for way in ways)
        return Sawing(tuple(one.wanted for one in wanted), stocks, self.kerf), wanted

    def _stock(self, way: Way, ways: list[Way], wanted: list[_Alike], *, priced: bool) -> Stock:
        fits = frozenset(
            place
            for place, one in enumerate(wanted)
            if way.takes(one.section, sound=one.sound, near_food=one.near_food)
        )
        cost = 0
        if way.old is None and priced:
            cost = round((way.price or 0.0) * CENTS)
        elif way.old is None:
            # without prices the wood is kept little: its length, or its area where boards of
            # several sections are weighed against each other
            several = len({one.section for one in ways}) > 1
            cost = way.length * max(round(way.section.area_m2 * 1e4), 1) if several else way.length
        return Stock(way.length, cost, way.available, way.sticks, way.pool, fits)

    # -- what fits nowhere ------------------------------------------------------------------------
    def _fitting(self, pieces: list[Piece], ways: list[Way]) -> tuple[list[Piece], list[Unfit]]:
        fitting, unfit = [], []
        for piece in pieces:
            if any(way.length >= piece.length for way in ways if _takes(way, piece)):
                fitting.append(piece)
            else:
                unfit.append(self._unfit(piece, ways))
        return fitting, unfit

    def _unfit(self, piece: Piece, ways: list[Way]) -> Unfit:
        lengths = [way.length for way in ways if _takes(way, piece) and way.available is None]
        usual = [self.tape.within(length) for length in usual_lengths(self.tape)]
        would_do = min((length for length in usual if length >= piece.length), default=None)
        return Unfit(piece, piece.stick.count, max(lengths, default=0), would_do)

    # -- what would save something ----------------------------------------------------------------
    def _shorter(
        self, pieces: list[Piece], ways: list[Way], cost: int, *, priced: bool
    ) -> Shorter | None:
        """The length that, cut a little shorter, saves most; None where none does."""
        best: Shorter | None = None
        bought = sorted({way.length for way in ways if way.old is None})
        for length in sorted({piece.length for piece in pieces}, reverse=True):
            tries = {
                (board - (number - 1) * self.kerf) // number
                for board in bought
                for number in range(1, _MOST_TO_A_BOARD + 1)
            }
            near = [one for one in tries if 0 < length - one <= length * _NEARLY]
            if not near:
                continue
            to = max(near)
            cut = [replace(one, length=to) if one.length == length else one for one in pieces]
            solved = solve(self._sawing(cut, ways, priced=priced)[0])
            if solved is None or solved.cost >= cost:
                continue
            if best is None or cost - solved.cost > best.saves:
                counted = zip(solved.plan.boards, ways, strict=True)
                boards = sum(number for number, way in counted if way.old is None)
                best = Shorter(length, to, cost - solved.cost, boards)
        return best

    def _ripping_old(
        self, sticks: list[Stick], pieces: list[Piece], cost: int, *, priced: bool
    ) -> int:
        """What ripping old boards too would save, where no saw for that is in the house."""
        if self.ways.rip_saw or not any(self.ways.boards_to_rip(stick) for stick in sticks):
            return 0
        self.ways.rip_saw = True
        ways = self.ways.of(sticks, self.others)
        self.ways.rip_saw = False
        if not any(way.old is not None and way.sticks > 1 for way in ways):
            return 0
        solved = solve(self._sawing(pieces, ways, priced=priced)[0])
        return max(cost - solved.cost, 0) if solved is not None else 0

    # -- boards as they are sawn ----------------------------------------------------------------
    def _boards(
        self, sawing: Sawing, solved: Solved, ways: list[Way], wanted: list[_Alike]
    ) -> tuple[Board, ...]:
        order = sorted(
            solved.plan.sticks,
            key=lambda stick: (
                ways[stick.stock].old is None,
                ways[stick.stock].sticks,
                stick.stock,
                [-count for count in stick.counts],
            ),
        )
        handed = _Handed(wanted, [(stick, ways[stick.stock].flawed) for stick in order])
        out: list[Board] = []
        sawn: dict[int, int] = {}
        number = 0
        for stick in order:
            way = ways[stick.stock]
            sawn[stick.stock] = sawn.get(stick.stock, 0) + 1
            half = "" if way.sticks == 1 else "ba"[sawn[stick.stock] % 2]
            number += half != "b"
            pieces = tuple(
                handed.next(place, flawed=way.flawed)
                for place, count in enumerate(stick.counts)
                for _ in range(count)
            )
            out.append(
                Board(
                    number=number,
                    half=half,
                    section=way.section,
                    stick=way.stick,
                    wood=way.wood,
                    length=way.length,
                    old=way.old.says if way.old else "",
                    flawed=way.flawed,
                    price=way.price,
                    pieces=pieces,
                    left=sawing.left(sawing.stocks[stick.stock], stick.counts),
                )
            )
        return tuple(out)


def _takes(way: Way, piece: Piece) -> bool:
    stick = piece.stick
    return way.takes(stick.section, sound=stick.sound, near_food=stick.near_food)


def _wanted(pieces: list[Piece]) -> list[_Alike]:
    alike: dict[tuple[int, Section, bool, bool], list[Piece]] = {}
    for piece in pieces:
        stick = piece.stick
        key = (piece.length, stick.section, stick.sound, stick.near_food)
        alike.setdefault(key, []).append(piece)
    keys = sorted(alike, key=lambda key: (-key[0], key[1].area_m2, key[2:]))
    return [
        _Alike(
            Wanted(key[0], sum(piece.stick.count for piece in alike[key])),
            *key[1:],
            tuple(alike[key]),
        )
        for key in keys
    ]


class _Handed:
    """Hands out pieces of one length to sticks: to old sound ones first what must be sound."""

    def __init__(self, wanted: list[_Alike], sticks: list[tuple[Pattern, bool]]) -> None:
        self.keys = [(one.wanted.length, one.section, one.near_food) for one in wanted]
        self.sound: dict[tuple[int, Section, bool], list[Piece]] = {}
        self.flawed: dict[tuple[int, Section, bool], list[Piece]] = {}
        for key, one in sorted(zip(self.keys, wanted, strict=True), key=lambda p: not p[1].sound):
            pieces = [piece for piece in one.pieces for _ in range(piece.stick.count)]
            self.sound.setdefault(key, []).extend(pieces)
        for stick, flawed in sticks:
            if flawed:
                for place, count in enumerate(stick.counts):
                    for _ in range(count):
                        key = self.keys[place]
                        # what need not be sound stands last
                        self.flawed.setdefault(key, []).append(self.sound[key].pop())

    def next(self, place: int, *, flawed: bool) -> Piece:
        """The next piece for a stick."""
        return (self.flawed if flawed else self.sound)[self.keys[place]].pop(0)
