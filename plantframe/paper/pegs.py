"""Where the posts go: each peg's distance from two fixed points, and a check across the corners."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.paper.views import LEVEL, UPRIGHT_WORDS, seen, uprights

if TYPE_CHECKING:
    from collections.abc import Callable

    from plantframe.paper.drawing import Point
    from plantframe.paper.subject import Subject

BROAD_M: Final = 0.4  # what is narrower on the ground stands in one row
CORNERS: Final = "corners"
MOST_PEGS: Final = 24  # more of them are told by their spacing


@frozen
class Pegs:
    """A table of pegs. Distances are to the middle of each post.

    of      what stands there: the posts, the corners
    how     how the two fixed points are set out
    heads   over the columns of figures
    rows    each peg's name and its distances, as a tape shows them
    check   the measure across the corners, "" where one row has none
    """

    of: str
    how: str
    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    check: str = ""


def pegs_of(subject: Subject) -> Pegs | None:
    """The pegs of a structure that stands in or on the ground; None where it has no such marks."""
    across = ring_m(subject)
    if across is not None:
        return _ring(subject, across)
    if subject.figure("tub.across"):
        return None
    points = _from_above(subject)
    corners = corners_m(subject)
    if not points and corners is not None:
        along, deep = corners
        points = [(0.0, 0.0), (along, 0.0), (0.0, deep), (along, deep)]
    if points:
        return _rectangle(subject, points)
    xs = plumb_row(subject)
    return _row(subject, xs) if len(xs) > 1 else None


def ring_m(subject: Subject) -> float | None:
    """Across the ring that leaning poles stand on; None where they stand otherwise."""
    across = subject.figure("circle")
    leaning = bool(subject.structure.stands.by) and not plumb_row(subject)
    return across if across and leaning else None


def corners_m(subject: Subject) -> tuple[float, float] | None:
    """The two sides of a wooden base with four corners; None for rows, rings and cloth."""
    wood = any(pieces.part.of == "wood" for pieces in subject.worked.pieces.values())
    along = subject.figure("size.long") or subject.figure("panels.wide")
    deep = (
        subject.figure("size.deep")
        or subject.figure("feet.apart")
        or (subject.figure("size.wide") if subject.figure("size.high") is None else None)
    )
    ring = subject.figure("circle") is not None and subject.figure("posts.up") is None
    if not wood or ring or not along or not deep or min(along, deep) < BROAD_M:
        return None
    return along, deep


def plumb_row(subject: Subject) -> list[float]:
    """Where upright posts stand along one row, m; empty where they lean or there are none."""
    places = [place for _, place in uprights(subject)]
    if any(abs(place.x[1] - place.x[0]) > LEVEL for place in places):
        return []
    return sorted({round(place.x[0], 3) for place in places})


def _from_above(subject: Subject) -> list[Point]:
    """Posts as the view from above has them, when they stand in more than one row."""
    points = {
        (round(place.x[0], 3), round(place.y[0], 3))
        for _, pieces, place in seen(subject, "top")
        if pieces.part.section in UPRIGHT_WORDS and place.x[0] == place.x[1]
        if place.y[0] == place.y[1]
    }
    rows = {y for _, y in points}
    return sorted(points, key=lambda point: (point[1], point[0])) if len(rows) > 1 else []


def _distance(tape: Callable[[float], str], metres: float) -> str:
    return tape(metres) if metres > LEVEL else "here"


def _row(subject: Subject, xs: list[float]) -> Pegs:
    tape, last = subject.tape, len(xs)
    told = xs if last <= MOST_PEGS else xs[:MOST_PEGS]
    rows = [
        (f"{n}", _distance(tape, x - xs[0]), _distance(tape, xs[-1] - x))
        for n, x in enumerate(told, 1)
    ]
    if last > MOST_PEGS:
        rows.append(("and so on", f"every {tape(xs[1] - xs[0])}", ""))
    return Pegs(
        subject.called("posts"),
        f"Set peg 1 and peg {last} first, with a string between them. Leave the tape lying from "
        "peg 1, so that small errors do not add up.",
        ("from peg 1", f"from peg {last}"),
        tuple(rows),
    )


def _rectangle(subject: Subject, points: list[Point]) -> Pegs:
    """Pegs of a figure with corners; the two at the ends of the first side are the fixed ones."""
    tape = subject.tape
    first = points[0]
    second = max((one for one in points if one[1] == first[1]), key=lambda point: point[0])
    order = [first, second, *(one for one in points if one not in {first, second})]
    rows = [
        (f"{n}", *(_distance(tape, math.dist(fixed, one)) for fixed in (first, second)))
        for n, one in enumerate(order[:MOST_PEGS], 1)
    ]
    wide, deep = second[0] - first[0], max(y for _, y in points) - first[1]
    how = "Set pegs 1 and 2 first. Each of the others stands where both tapes meet."
    apart, posts = subject.figure("posts.apart"), subject.figure("posts.count") or 0
    if apart and posts > len(points):
        how += f" The posts between the corners stand {tape(apart)} apart."
    return Pegs(
        subject.called("posts") if apart or posts else CORNERS,
        how,
        ("from peg 1", "from peg 2"),
        tuple(rows),
        f"corner to corner {tape(math.hypot(wide, deep))}, both ways alike",
    )


def _ring(subject: Subject, across: float) -> Pegs:
    count = round(subject.figure("posts.count") or 0)
    tape = subject.tape
    chord = across * math.sin(math.pi / count) if count > 1 else across
    return Pegs(
        subject.called("posts"),
        "Set a peg in the middle and walk a string round it.",
        ("measure",),
        (
            ("string, from the middle peg", tape(across / 2)),
            (f"from mark to mark, straight, {count} marks", tape(chord)),
        ),
        f"across the ring from mark to opposite mark {tape(across)}"
        if count % 2 == 0
        else "the last step closes the ring like the others",
    )
