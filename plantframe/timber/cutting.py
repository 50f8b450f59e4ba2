"""The cutting list of a plan: which board gives which pieces, old wood first, and what is left."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen, replace
from plantframe.timber.longest_first import longest_first
from plantframe.timber.needs import needs_of
from plantframe.timber.sawing import Sawing, Stock, Wanted
from plantframe.timber.solver import solve
from plantframe.timber.stock import usual_lengths, with_lengths, wood_of
from plantframe.timber.tape import KERF_M, Tape
from plantframe.timber.woods import will_do

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from plantframe.plan.things import Plan as GardenPlan
    from plantframe.season.season import Season
    from plantframe.timber.needs import Needs, Stick
    from plantframe.timber.sawing import Pattern, Solved
    from plantframe.timber.sections import Section
    from plantframe.timber.stock import OldWood, Sold, Wood

CENTS: Final = 100
_RIPS: Final = re.compile(r"\brip(s|ped|ping)?\b", re.IGNORECASE)
_RIP_SAW: Final = re.compile(
    r"\b(table|circular|band|bench|rip|track) ?saw\b|\bbandsaw\b", re.IGNORECASE
)
_MOST_TO_A_BOARD: Final = 6
_NEARLY: Final = 0.05  # a length that is too long by no more than this share may be shortened


@frozen
class Piece:
    """Pieces of one part of one frame. `mark` is the letter on the list and on the wood."""

    mark: str
    stick: Stick
    length: int

    @property
    def for_(self) -> str:
        """Whose it is: `Bean Net, post`."""
        return f"{self.stick.frame}, {self.stick.part}"


@frozen
class Board:
    """One stick on the saw, in steps of the tape.

    number   of the board on the list; both halves of a ripped one share it
    half     "a" or "b" of a ripped board, else ""
    section  of the board as it is bought; `stick` of what is sawn from it
    old      the line of the shed it comes from, "" where it is bought
    price    of the whole board, None where it is not known, 0 where it is old
    """

    number: int
    half: str
    section: Section
    stick: Section
    wood: str
    length: int
    old: str
    flawed: bool
    price: float | None
    pieces: tuple[Piece, ...]
    left: int

    @property
    def as_it_is(self) -> bool:
        """It is one piece, and nothing is sawn off."""
        return len(self.pieces) == 1 and self.left == 0


@frozen
class Unfit:
    """Pieces that come from no board there is. `longest` is the longest there is, in steps."""

    piece: Piece
    count: int
    longest: int
    would_do: int | None


@frozen
class Shorter:
    """Pieces of one length that, cut a little shorter, would save so much; lengths in steps.

    saves   in the measure of the cost
    boards  how many boards would be bought then
    """

    length: int
    to: int
    saves: float
    boards: int


@frozen
class Lot:
    """All pieces that are cut together: one wood, and sections that come from the same boards.

    priced   every board that can be bought has a price: the cost is kept small, else the waste
    cost     in money where priced; else of the boards bought, in steps of length (or of area, where
             boards of several sections are weighed against each other)
    bound    what no cutting can be below, reckoned apart from the cutting
    unasked  sections that the yard's own list does not have, taken in the usual lengths
    longest_first  what sawing without this list would have come to, in the measure of the cost
    ripping_old_saves  what ripping old boards as well would save, 0 where it would not
    """

    sections: tuple[Section, ...]
    wood: str
    wood_said: bool
    strip: bool
    pieces: tuple[Piece, ...]
    boards: tuple[Board, ...]
    unfit: tuple[Unfit, ...]
    priced: bool
    cost: float
    bound: float
    proven: bool
    fewest: bool
    unasked: tuple[Section, ...]
    longest_first: float | None
    shorter: Shorter | None
    ripping_old_saves: float

    @property
    def bought(self) -> tuple[Board, ...]:
        """Boards that must be bought, ripped ones once."""
        return tuple(board for board in self.boards if not board.old and board.half != "b")

    @property
    def from_shed(self) -> tuple[Board, ...]:
        """Old boards that are used, ripped ones once."""
        return tuple(board for board in self.boards if board.old and board.half != "b")


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


@frozen
class _Alike:
    """Pieces that are alike to the saw, and whose they are."""

    wanted: Wanted
    section: Section
    sound: bool
    pieces: tuple[Piece, ...]


@frozen
class _Way:
    """One way to use boards of one sort: whole, or ripped into two sticks."""

    section: Section
    stick: Section
    wood: str
    length: int
    price: float | None
    old: OldWood | None
    flawed: bool
    sticks: int
    pool: str
    available: int | None
    usual: bool


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
    bench = _Bench(plan, tape, kerf, wood, tuple(lengths_m))
    lots = tuple(bench.lot(sticks) for sticks in bench.lots(needs.sticks))
    lots = _numbered(lots)
    return Cutting(
        tape, kerf, kerf_m is not None, bool(plan.yard), lots, needs, wood, _unused(wood, lots)
    )


def rips(plan: GardenPlan) -> bool:
    """Does the plan speak of ripping boards?"""
    return any(_RIPS.search(task.what) for task in plan.tasks)


class _Bench:
    """Where lots are made up and sawn."""

    def __init__(
        self,
        plan: GardenPlan,
        tape: Tape,
        kerf: int,
        wood: Wood,
        only_m: tuple[float, ...],
    ) -> None:
        self.garden = plan.garden
        self.tape = tape
        self.kerf = kerf
        self.wood = wood
        self.usual_m = only_m or usual_lengths(tape)
        self.rips = rips(plan)
        self.rip_saw = any(_RIP_SAW.search(tool) for tool in plan.garden.tools)
        self.marks = 0

    # -- what is cut together -----------------------------------------------------------------
    def lots(self, sticks: Iterable[Stick]) -> list[list[Stick]]:
        """Sticks by wood and by the boards they come from."""
        by_wood: dict[tuple[str, bool, bool], list[Stick]] = {}
        for stick in sticks:
            by_wood.setdefault((stick.wood, stick.strip, stick.near_food), []).append(stick)
        out = []
        for group in by_wood.values():
            out += self._by_source(group)
        order = sorted(out, key=lambda lot: (lot[0].strip, lot[0].section.area_m2, lot[0].wood))
        return order

    def _by_source(self, group: list[Stick]) -> list[list[Stick]]:
        lots: list[tuple[set[Section], list[Stick]]] = []
        for stick in group:
            sources = {stick.section, *self._ripped_from(stick)}
            same = [lot for lot in lots if any(a.same_as(b) for a in lot[0] for b in sources)]
            sections, members = set(sources), [stick]
            for lot in same:
                sections |= lot[0]
                members = [*lot[1], *members]
                lots.remove(lot)
            lots.append((sections, members))
        return [members for _, members in lots]

    def _ripped_from(self, stick: Stick) -> list[Section]:
        """Boards whose ripped halves give that stick, where ripping is wanted."""
        if stick.strip:
            return []
        listed = [sold.section for sold in self.wood.yard if will_do(sold.wood, stick.wood)]
        sold_so = any(section.same_as(stick.section) for section in listed)
        if sold_so and not self.rips:
            return []
        boards = list(listed)
        if not listed and self._is_half(stick.section):
            boards = [self._double(stick.section)]
        kerf_m = self.tape.metres(self.kerf)
        found = []
        for section in boards:
            half = section.ripped(kerf_m)
            if half is not None and half.stands_for(stick.section) and section not in found:
                found.append(section)
        return found

    def _double(self, half: Section) -> Section:
        from plantframe.timber.sections import trade_names

        kerf_m = self.tape.metres(self.kerf)
        for thick, wide in trade_names():
            ripped = type(half)(thick, wide).ripped(kerf_m)
            if ripped is not None and ripped.same_as(half):
                return type(half)(thick, wide)
        return half

    def _is_half(self, section: Section) -> bool:
        return self._double(section) != section

    # -- one lot --------------------------------------------------------------------------------
    def lot(self, sticks: list[Stick], *, asking: bool = True) -> Lot:
        """Saw one lot; `asking` looks as well for what would save something."""
        pieces = self._pieces(sticks)
        ways = self._ways(sticks)
        fitting, unfit = self._fitting(pieces, ways)
        sections = tuple(dict.fromkeys(stick.section for stick in sticks))
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
        shorter = None
        ripping_old = 0
        if asking:
            shorter = self._shorter(fitting, ways, solved.cost, priced=priced)
            ripping_old = self._ripping_old_saves(sticks, fitting, solved.cost, priced=priced)
        bought = {board.section for board in boards if not board.old}
        return Lot(
            sections,
            sticks[0].wood,
            any(stick.wood_said for stick in sticks),
            sticks[0].strip,
            tuple(pieces),
            boards,
            tuple(unfit),
            priced,
            solved.cost / scale,
            solved.bound / scale,
            solved.proven,
            solved.fewest,
            tuple(
                dict.fromkeys(way.section for way in ways if way.usual and way.section in bought)
            ),
            greedy.cost(sawing) / scale if greedy is not None else None,
            replace(shorter, saves=shorter.saves / scale) if shorter else None,
            ripping_old / scale,
        )

    def _ripping_old_saves(
        self, sticks: list[Stick], pieces: list[Piece], cost: int, *, priced: bool
    ) -> int:
        """What would be saved if old boards were ripped too, where no saw for that is in the house."""
        if self.rip_saw or not any(self._ripped_from(stick) for stick in sticks):
            return 0
        self.rip_saw = True
        ways = self._ways(sticks)
        self.rip_saw = False
        if not any(way.old is not None and way.sticks > 1 for way in ways):
            return 0
        solved = solve(self._sawing(pieces, ways, priced=priced)[0])
        return max(cost - solved.cost, 0) if solved is not None else 0

    def _sawing(
        self, pieces: list[Piece], ways: list[_Way], *, priced: bool
    ) -> tuple[Sawing, list[_Alike]]:
        wanted = self._wanted(pieces)
        stocks = self._stocks(ways, wanted, priced=priced)
        return Sawing(tuple(one.wanted for one in wanted), stocks, self.kerf), wanted

    def _shorter(
        self, pieces: list[Piece], ways: list[_Way], cost: int, *, priced: bool
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
            cut = [
                replace(piece, length=to) if piece.length == length else piece for piece in pieces
            ]
            sawing, _ = self._sawing(cut, ways, priced=priced)
            solved = solve(sawing)
            if solved is not None and solved.cost < cost:
                saves = cost - solved.cost
                boards = sum(
                    count
                    for count, way in zip(solved.plan.boards, ways, strict=True)
                    if way.old is None
                )
                if best is None or saves > best.saves:
                    best = Shorter(length, to, saves, boards)
        return best

    def _pieces(self, sticks: list[Stick]) -> list[Piece]:
        order = sorted(
            sticks, key=lambda stick: (-stick.length_m, stick.section.area_m2, stick.frame)
        )
        out = []
        for stick in order:
            out.append(Piece(mark_of(self.marks), stick, self.tape.nearest(stick.length_m)))
            self.marks += 1
        return out

    def _wanted(self, pieces: list[Piece]) -> list[_Alike]:
        """Pieces that are alike to the saw, with whose they are."""
        alike: dict[tuple[int, Section, bool], list[Piece]] = {}
        for piece in pieces:
            key = (piece.length, piece.stick.section, piece.stick.sound)
            alike.setdefault(key, []).append(piece)
        keys = sorted(alike, key=lambda key: (-key[0], key[1].area_m2, key[2]))
        return [
            _Alike(
                Wanted(key[0], sum(piece.stick.count for piece in alike[key])),
                key[1],
                key[2],
                tuple(alike[key]),
            )
            for key in keys
        ]

    # -- boards there are -------------------------------------------------------------------------
    def _ways(self, sticks: list[Stick]) -> list[_Way]:
        """Every way to use a board for these sticks, old ones first."""
        wood, near_food = sticks[0].wood, sticks[0].near_food
        sections = list(dict.fromkeys(stick.section for stick in sticks))
        halves = {
            board: section
            for stick in sticks
            for section in [stick.section]
            for board in self._ripped_from(stick)
        }
        out: list[_Way] = []
        for at, old in enumerate(self.wood.shed):
            if not old.section.round and will_do(old.wood, wood, near_food=near_food):
                out += self._old_ways(f"shed {at}", old, sections, halves)
        yard = [sold for sold in self.wood.yard if will_do(sold.wood, wood, near_food=near_food)]
        for at, sold in enumerate(yard):
            out += self._sold_ways(f"yard {at}", sold, sections, halves, usual=False)
        sold_sections = [sold.section for sold in yard]
        for section in sections:
            half = any(
                board.same_as(one)
                for board in self._boards_of(section, halves)
                for one in sold_sections
            )
            if half or any(section.same_as(one) for one in sold_sections):
                continue
            boards = self._boards_of(section, halves) or [section]
            longest = max(stick.length_m for stick in sticks if stick.section == section)
            out += self._usual_ways(boards, sections, halves, longest)
        return out

    def _boards_of(self, section: Section, halves: dict[Section, Section]) -> list[Section]:
        return [board for board, stick in halves.items() if stick == section]

    def _usual_ways(
        self,
        boards: list[Section],
        sections: list[Section],
        halves: dict[Section, Section],
        longest_m: float,
    ) -> list[_Way]:
        from plantframe.timber.stock import Sold

        out = []
        for board in boards:
            for at, length in enumerate(self._likely_m(board, longest_m)):
                sold = Sold(board, "", length, None)
                key = f"usual {board.thick_mm}x{board.wide_mm} {at}"
                out += self._sold_ways(key, sold, sections, halves, usual=True)
        return out

    def _likely_m(self, board: Section, longest_m: float) -> tuple[float, ...]:
        """Lengths a yard is likely to have of a section that its list does not give.

        Those it has of that section in another wood, else those it has of anything, else the
        usual ones: the first of these that are long enough for the longest piece.
        """
        same = {sold.length_m for sold in self.wood.yard if sold.section.same_as(board)}
        every = {sold.length_m for sold in self.wood.yard if not sold.section.round}
        for lengths in (same, every):
            if lengths and max(lengths) >= longest_m:
                return tuple(sorted(lengths))
        return self.usual_m

    def _old_ways(
        self,
        key: str,
        old: OldWood,
        sections: list[Section],
        halves: dict[Section, Section],
    ) -> list[_Way]:
        out = []
        length = self.tape.within(old.length_m)
        for flawed, count in ((False, old.count), (True, old.flawed)):
            if not count:
                continue
            pool = f"{key}{' flawed' if flawed else ''}"
            way = _Way(
                old.section, old.section, old.wood, length, 0.0, old, flawed, 1, pool, count, False
            )
            if any(old.section.same_as(section) for section in sections):
                out.append(way)
            stick = self._half(old.section, halves)
            if self.rip_saw and stick is not None:
                out.append(replace(way, stick=stick, sticks=2))
        return out

    def _sold_ways(
        self,
        key: str,
        sold: Sold,
        sections: list[Section],
        halves: dict[Section, Section],
        *,
        usual: bool,
    ) -> list[_Way]:
        out = []
        length = self.tape.within(sold.length_m)
        way = _Way(
            sold.section,
            sold.section,
            sold.wood,
            length,
            sold.price,
            None,
            False,
            1,
            key,
            None,
            usual,
        )
        if any(sold.section.same_as(section) for section in sections):
            out.append(way)
        stick = self._half(sold.section, halves)
        if stick is not None:
            out.append(replace(way, stick=stick, sticks=2))
        return out

    def _half(self, board: Section, halves: dict[Section, Section]) -> Section | None:
        """What each half of a board measures, where halves are wanted."""
        if any(board.same_as(one) for one in halves):
            return board.ripped(self.tape.metres(self.kerf))
        return None

    def _takes(self, way: _Way, section: Section, *, sound: bool) -> bool:
        if sound and way.flawed:
            return False
        if way.sticks == 1:
            return way.stick.same_as(section)
        return way.stick.stands_for(section)

    def _fitting(self, pieces: list[Piece], ways: list[_Way]) -> tuple[list[Piece], list[Unfit]]:
        fitting, unfit = [], []
        for piece in pieces:
            lengths = [
                way.length
                for way in ways
                if self._takes(way, piece.stick.section, sound=piece.stick.sound)
            ]
            if any(length >= piece.length for length in lengths):
                fitting.append(piece)
            else:
                unfit.append(self._unfit(piece, ways))
        return fitting, unfit

    def _unfit(self, piece: Piece, ways: list[_Way]) -> Unfit:
        lengths = [
            way.length
            for way in ways
            if self._takes(way, piece.stick.section, sound=piece.stick.sound)
            and way.available is None
        ]
        usual = [self.tape.within(length) for length in usual_lengths(self.tape)]
        would_do = min((length for length in usual if length >= piece.length), default=None)
        return Unfit(piece, piece.stick.count, max(lengths, default=0), would_do)

    def _stocks(
        self,
        ways: list[_Way],
        wanted: list[_Alike],
        *,
        priced: bool,
    ) -> tuple[Stock, ...]:
        several = len({way.section for way in ways}) > 1
        out = []
        for way in ways:
            fits = frozenset(
                place
                for place, one in enumerate(wanted)
                if self._takes(way, one.section, sound=one.sound)
            )
            if way.old is not None:
                cost = 0
            elif priced:
                cost = round((way.price or 0.0) * CENTS)
            else:
                area = round(way.section.area_m2 * 1e4) if several else 1
                cost = way.length * max(area, 1)
            pool = "" if way.available is None else way.pool
            out.append(Stock(way.length, cost, way.available, way.sticks, pool, fits))
        return tuple(out)

    # -- boards as they are sawn ----------------------------------------------------------------
    def _boards(
        self,
        sawing: Sawing,
        solved: Solved,
        ways: list[_Way],
        wanted: list[_Alike],
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
        halves: dict[int, int] = {}
        number = 0
        for stick in order:
            way = ways[stick.stock]
            half = ""
            if way.sticks > 1:
                halves[stick.stock] = halves.get(stick.stock, 0) + 1
                half = "ab"[(halves[stick.stock] - 1) % 2]
            if half != "b":
                number += 1
            pieces = tuple(
                handed.next(place, flawed=way.flawed)
                for place, count in enumerate(stick.counts)
                for _ in range(count)
            )
            out.append(
                Board(
                    number,
                    half,
                    way.section,
                    way.stick,
                    way.wood,
                    way.length,
                    way.old.says if way.old else "",
                    way.flawed,
                    way.price,
                    pieces,
                    sawing.left(sawing.stocks[stick.stock], stick.counts),
                )
            )
        return tuple(out)


class _Handed:
    """Hands out pieces of one length to sticks: on old sound ones first what must be sound."""

    def __init__(self, wanted: list[_Alike], sticks: list[tuple[Pattern, bool]]) -> None:
        self.keys = [(one.wanted.length, one.section) for one in wanted]
        self.sound: dict[tuple[int, Section], list[Piece]] = {}
        self.flawed: dict[tuple[int, Section], list[Piece]] = {}
        for one in sorted(wanted, key=lambda one: not one.sound):
            pieces = [piece for piece in one.pieces for _ in range(piece.stick.count)]
            self.sound.setdefault((one.wanted.length, one.section), []).extend(pieces)
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


def mark_of(number: int) -> str:
    """The letters of a piece: a to z without i, l and o, which look like figures; then aa, ab …"""
    letters = "abcdefghjkmnpqrstuvwxyz"
    first, last = divmod(number, len(letters))
    return (letters[first - 1] if first else "") + letters[last]


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


def without(season: Season, cutting: Cutting, lot: Lot, board: Board) -> Lot | None:
    """The same lot where the yard has no boards of that section and length; None where it has no
    other length at all.
    """
    tape = cutting.tape
    yard = tuple(
        sold
        for sold in cutting.wood.yard
        if not (
            sold.section.same_as(board.section) and tape.within(sold.length_m) == board.length
        )
    )
    usual = tuple(
        length for length in usual_lengths(tape) if tape.within(length) != board.length
    )
    if not usual:
        return None
    wood = replace(cutting.wood, yard=yard)
    bench = _Bench(season.plan, tape, cutting.kerf, wood, usual)
    return bench.lot([piece.stick for piece in lot.pieces], asking=False)
