"""The ways to use each sort of board there is: old or bought, whole or ripped into two sticks."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen, replace
from plantframe.timber.sections import Section, trade_names
from plantframe.timber.stock import Sold, usual_lengths
from plantframe.timber.woods import ORDINARY, will_do

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.plan.things import Plan
    from plantframe.timber.needs import Stick
    from plantframe.timber.stock import OldWood, Wood
    from plantframe.timber.tape import Tape

_RIPS: Final = re.compile(r"\brip(s|ped|ping)?\b", re.IGNORECASE)
_RIP_SAW: Final = re.compile(
    r"\b(table|circular|band|bench|rip|track) ?saw\b|\bbandsaw\b", re.IGNORECASE
)


@frozen
class Way:
    """One way to use boards of one sort.

    section  of the board, `stick` of what is sawn from it: half of it where it is ripped
    price    of one, None where it is not known
    old      the line of the shed, None where it is bought; `flawed` for a split or bent one
    sticks   1, or 2 where it is ripped
    pool     boards that are the same boards, whatever is done with them
    usual    the yard's own list does not have it
    """

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

    def takes(self, section: Section, *, sound: bool, near_food: bool) -> bool:
        """Whether a piece of that section may be sawn from it."""
        if (sound and self.flawed) or not will_do(self.wood, "", near_food=near_food):
            return False
        if self.sticks == 1:
            return self.stick.same_as(section)
        return self.stick.stands_for(section)


class Ways:
    """What boards there are for the sticks of a plan.

    only_m   the only lengths the yard has, empty where it has what its list says
    missing  a section and length in steps that the yard is out of
    """

    def __init__(
        self,
        plan: Plan,
        tape: Tape,
        kerf: int,
        wood: Wood,
        only_m: tuple[float, ...] = (),
        missing: tuple[Section, int] | None = None,
    ) -> None:
        self.tape = tape
        self.kerf_m = tape.metres(kerf)
        self.wood = wood
        self.usual_m = only_m or usual_lengths(tape)
        self.rips = any(_RIPS.search(task.what) for task in plan.tasks)
        self.rip_saw = any(_RIP_SAW.search(tool) for tool in plan.garden.tools)
        self.missing = missing

    # -- ripping --------------------------------------------------------------------------------
    def boards_to_rip(self, stick: Stick) -> list[Section]:
        """Boards whose ripped halves give that stick.

        Only where the plan speaks of ripping, or the yard sells boards for it and no such stick.
        """
        if stick.strip:
            return []
        listed = [sold.section for sold in self.wood.yard if will_do(sold.wood, stick.wood)]
        if any(section.same_as(stick.section) for section in listed) and not self.rips:
            return []
        found = []
        for section in listed or self._doubles(stick.section):
            half = section.ripped(self.kerf_m)
            if half is not None and half.stands_for(stick.section) and section not in found:
                found.append(section)
        return found

    def _doubles(self, half: Section) -> list[Section]:
        """The trade's board that gives two of these, where a section is just half of one."""
        boards = [Section(thick, wide) for thick, wide in trade_names()]
        return [
            board
            for board in boards
            if (ripped := board.ripped(self.kerf_m)) is not None
            and ripped.same_as(half)
            and not any(one.same_as(half) for one in boards)
        ]

    # -- all of them ----------------------------------------------------------------------------
    def of(self, sticks: list[Stick], others: Iterable[Stick]) -> list[Way]:
        """Every way to use a board for these sticks, old boards first.

        others   all sticks of the plan: old wood of a kind that one of them asks for is kept for it
        """
        wood = sticks[0].wood
        sections = list(dict.fromkeys(stick.section for stick in sticks))
        to_rip = list(dict.fromkeys(b for stick in sticks for b in self.boards_to_rip(stick)))
        kept_for_others = {one.wood for one in others} - {wood, ORDINARY}
        out: list[Way] = []
        for at, old in enumerate(self.wood.shed):
            usable = will_do(old.wood, wood) and old.wood not in kept_for_others
            if usable and not old.section.round:
                out += self._old(f"shed {at}", old, sections, to_rip)
        yard = [sold for sold in self.wood.yard if will_do(sold.wood, wood)]
        for sold in yard:
            out += self._sold(sold, sections, to_rip, usual=False)
        for section in sections:
            boards = [one for one in to_rip if self._halves_do(one, section)]
            if any(one.section.same_as(two) for one in yard for two in (section, *boards)):
                continue
            longest = max(stick.length_m for stick in sticks if stick.section == section)
            for board in boards or [section]:
                for length in self._likely_m(board, longest):
                    likely = Sold(board, "" if wood == ORDINARY else wood, length, None)
                    out += self._sold(likely, sections, to_rip, usual=True)
        return out

    def _halves_do(self, board: Section, section: Section) -> bool:
        half = board.ripped(self.kerf_m)
        return half is not None and half.stands_for(section)

    def _likely_m(self, board: Section, longest_m: float) -> tuple[float, ...]:
        """Lengths a yard is likely to have of a section that its list does not give.

        Those it has of that section in another wood, else those it has of anything, else the
        usual ones: the first of these that are long enough for the longest piece.
        """
        same = {sold.length_m for sold in self.wood.yard if sold.section.same_as(board)}
        every = {sold.length_m for sold in self.wood.yard if not sold.section.round}
        for lengths in (sorted(same), sorted(every), self.usual_m):
            there = tuple(length for length in lengths if not self._is_missing(board, length))
            if there and max(there) >= longest_m:
                return there
        return tuple(length for length in self.usual_m if not self._is_missing(board, length))

    def _is_missing(self, board: Section, length_m: float) -> bool:
        if self.missing is None:
            return False
        section, length = self.missing
        return board.same_as(section) and self.tape.within(length_m) == length

    def _old(
        self, key: str, old: OldWood, sections: list[Section], to_rip: list[Section]
    ) -> list[Way]:
        out = []
        length = self.tape.within(old.length_m)
        for flawed, count in ((False, old.count), (True, old.flawed)):
            way = Way(
                section=old.section,
                stick=old.section,
                wood=old.wood,
                length=length,
                price=0.0,
                old=old,
                flawed=flawed,
                sticks=1,
                pool=f"{key}{' flawed' if flawed else ''}",
                available=count,
                usual=False,
            )
            if count:
                out += self._used(way, sections, to_rip if self.rip_saw else [])
        return out

    def _sold(
        self, sold: Sold, sections: list[Section], to_rip: list[Section], *, usual: bool
    ) -> list[Way]:
        if self._is_missing(sold.section, sold.length_m):
            return []
        way = Way(
            section=sold.section,
            stick=sold.section,
            wood=sold.wood,
            length=self.tape.within(sold.length_m),
            price=sold.price,
            old=None,
            flawed=False,
            sticks=1,
            pool="",
            available=None,
            usual=usual,
        )
        return self._used(way, sections, to_rip)

    def _used(self, way: Way, sections: list[Section], to_rip: list[Section]) -> list[Way]:
        """The board whole, where a piece is of its section, and ripped, where halves are wanted."""
        out = []
        if any(way.section.same_as(section) for section in sections):
            out.append(way)
        half = way.section.ripped(self.kerf_m)
        if half is not None and any(way.section.same_as(board) for board in to_rip):
            out.append(replace(way, stick=half, sticks=2))
        return out
