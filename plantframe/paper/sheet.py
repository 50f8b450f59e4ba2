"""A sheet: what one page for bench, bed or pocket says, before it is laid out."""

from __future__ import annotations

import hashlib
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import date

    from plantframe.answers.answers import Answers
    from plantframe.paper.drawing import Drawing
    from plantframe.paper.subject import Subject

BUILDING, PLANTING, TRAINING, TAKING_DOWN = "building", "planting", "training", "taking down"
AWAY, LABELS = "while we are away", "for the shed"
# Letters that cannot be taken for each other or for figures, and that make no words.
MARK_LETTERS: Final = "BCDFGHJKLMNPQRTVWXZ"
MARK_LENGTH: Final = 4


@frozen
class Number:
    """One of the three big numbers, and what it is."""

    value: str
    says: str


@frozen
class Danger:
    """A caution, and the numbers of the rows it stands with; none where it holds all the time."""

    says: str
    rows: tuple[int, ...] = ()


@frozen
class Row:
    """A line to be ticked.

    number   its number on the sheet: the order of the work
    notes    what belongs to it: (label, words), the label "" for words alone
    who      whose it is, where it is not everybody's
    when     the day it is down for, "" where nothing sets one
    state    "" to be done, `done 3 May` or `left out`
    stop     work may be left for a while after it
    danger   a caution at the top stands with it
    weeks    of a round: which columns of the sheet it falls in, and how often
    """

    number: int
    says: str
    notes: tuple[tuple[str, str], ...] = ()
    hands: int = 1
    time: str = ""
    tools: str = ""
    who: str = ""
    when: str = ""
    state: str = ""
    stop: bool = False
    danger: bool = False
    weeks: tuple[int, ...] = ()


@frozen
class Aside:
    """A short list with a heading: what to carry, how to know that it is true."""

    title: str
    lines: tuple[str, ...]


@frozen
class Sheet:
    """One sheet.

    kind      building, planting, training, taking down, while we are away, labels
    title     the frame's name
    about     what it is, where, by when
    garden    the garden's name and season; `file` the plan's file
    today     the day it is printed for
    subject   what is drawn from the front, as large as the page has room for
    drawing   a drawing of a size of its own; `caption` stands under it
    columns   heads of the columns of a sheet of rounds, one for each entry of a row's `weeks`
    labels    of a label list: each label's lines
    back      how to copy ticks back into the plan
    """

    kind: str
    title: str
    about: tuple[str, ...]
    garden: str
    file: str
    today: date
    dangers: tuple[Danger, ...] = ()
    numbers: tuple[Number, ...] = ()
    subject: Subject | None = None
    drawing: Drawing | None = None
    caption: str = ""
    asides: tuple[Aside, ...] = ()
    rows: tuple[Row, ...] = ()
    columns: tuple[str, ...] = ()
    labels: tuple[tuple[str, ...], ...] = ()
    back: str = ""

    @property
    def mark(self) -> str:
        """Four letters that change when the sheet says something else, not with the day."""
        told = (
            *(self.kind, self.title, self.about, self.garden, self.numbers, self.asides),
            *(self.dangers, self.rows, self.columns, self.labels, self.back),
            self.drawing.svg(self.title) if self.drawing else "",
        )
        number = int.from_bytes(hashlib.sha256(repr(told).encode("utf-8")).digest()[:8], "big")
        letters = []
        for _ in range(MARK_LENGTH):
            number, letter = divmod(number, len(MARK_LETTERS))
            letters.append(MARK_LETTERS[letter])
        return "".join(letters)


def garden_words(answers: Answers) -> str:
    """The garden's name and its season: Quarry Row, 2027."""
    first, last = answers.plan.garden.seasons
    season = f"{first}" if first == last else f"{first}-{last % 100:02d}"
    return f"{answers.plan.garden.name or answers.plan.name}, {season}"


def plan_file(answers: Answers) -> str:
    """The name of the plan's file; of a plan that was piped in, its own name."""
    path = answers.source.path
    return path.name if path is not None else answers.plan.name


def dangers_of(cautions: Sequence[tuple[int, Sequence[str]]]) -> tuple[Danger, ...]:
    """The cautions of some rows, each once, with the numbers of its rows."""
    rows: dict[str, list[int]] = {}
    for number, says in cautions:
        for one in says:
            rows.setdefault(one, []).append(number)
    return tuple(Danger(says, tuple(numbers)) for says, numbers in rows.items())
