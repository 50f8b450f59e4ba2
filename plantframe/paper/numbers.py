"""The three numbers that somebody on their knees needs: large, with a few words each."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.paper.pegs import plumb_row, ring_m
from plantframe.paper.sheet import Number

if TYPE_CHECKING:
    from collections.abc import Iterator

    from plantframe.paper.subject import Subject

MOST: Final = 3
# Facts and sums in the order in which they are wanted, and what each is.
WANTED: Final = (
    ("tie.height", "bind the tops this high"),
    ("posts.up", "standing above ground"),
    ("back.high", "high at the back"),
    ("front.high", "high at the front"),
    ("size.long", "long"),
    ("size.deep", "deep, front to back"),
    ("size.high", "high"),
    ("size.wide", "wide"),
    ("panels.wide", "wide, each panel"),
    ("panels.high", "high, each panel"),
    ("feet.apart", "between the feet"),
    ("gap", "clear of the wall"),
    ("hinges.up", "from the ground to the hinge"),
    ("hoops.apart", "from hoop to hoop"),
    ("fabric.wide", "width of the cover"),
    ("wires.lowest", "lowest wire"),
    ("wires.apart", "from wire to wire"),
    ("headroom", "clear to walk under"),
    ("wide", "clear between the posts"),
    ("spacing", "from one to the next"),
    ("circle", "across"),
    ("cages.across", "across"),
    ("cages.high", "high"),
    ("rings.across", "across"),
    ("rings.high", "high"),
    ("cloches.across", "across"),
    ("slings.up", "above ground"),
    ("stays.up", "tied this high"),
    ("stays.out", "out from the foot"),
    ("posts.length", "long"),
)


def numbers_of(subject: Subject) -> tuple[Number, ...]:
    """At most three, the depth first."""
    found: list[Number] = []
    for number in _wanted(subject):
        if len(found) < MOST and all(number.says != one.says for one in found):
            found.append(number)
    return tuple(found)


def _wanted(subject: Subject) -> Iterator[Number]:
    shown = subject.shown
    uprights = subject.called("posts")
    down = subject.figure("posts.down")
    if down:
        yield Number(shown.length(down), f"in the ground: pencil line on the {uprights}")
    ring = ring_m(subject)
    row = plumb_row(subject)
    if ring is not None:
        yield Number(subject.tape(ring / 2), "string from the middle peg to the marks")
    elif len(row) > 1:
        says = f"from middle to middle of the {uprights}"
        yield Number(subject.tape(row[1] - row[0]), says)
    board = any(pieces.breadth_m for pieces in subject.worked.pieces.values())
    for name, says in WANTED:
        metres = subject.figure(name)
        if metres:
            yield Number(shown.bench(metres) if board else shown.length(metres), says)
