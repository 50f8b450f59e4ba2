"""A lot: pieces that are cut together, the boards they come from, and what it comes to."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.frozen import frozen

if TYPE_CHECKING:
    from plantframe.timber.needs import Stick
    from plantframe.timber.sections import Section


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
    unlisted  sections that the yard's own list does not have, taken in the usual lengths
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
    unlisted: tuple[Section, ...]
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


def mark_of(number: int) -> str:
    """The letters of a piece: a to z without i, l and o, which look like figures; then aa, ab."""
    letters = "abcdefghjkmnpqrstuvwxyz"
    first, last = divmod(number, len(letters))
    return (letters[first - 1] if first else "") + letters[last]
