"""What the frames still to be built are made of: sticks to saw, poles, and other goods."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from plantframe.catalogue.wares import several
from plantframe.catalogue.workings import MOST_OF_A_PART
from plantframe.frozen import frozen
from plantframe.language.slots import Section as Typed
from plantframe.language.values import Measure, Nail, Number, Size
from plantframe.season.units import Shown
from plantframe.timber.sections import Section, section_m, typed_section
from plantframe.timber.woods import CANE, ORDINARY, wood_in

if TYPE_CHECKING:
    from collections.abc import Iterator

    from plantframe.catalogue.workings import Pieces
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

# Sections that carry or stand in the ground: their sticks must be sound.
_BEARS: Final = frozenset({"posts", "end posts", "bar", "beams", "top rail"})
_METAL: Final = re.compile(r"\b(steel|iron|metal|alumin\w*|rebar|conduit)\b", re.IGNORECASE)
_SAWN: Final = frozenset({"wood", "strip"})


@frozen
class Stick:
    """Pieces of one part and length, to be sawn from boards, sticks or strip.

    wood       a wood's name; `wood_said` where the plan itself names it
    sound      a split or bent old piece will not do
    near_food  round a bed or box where food grows
    cut        what is done to its ends
    strip      it is lattice strip
    """

    frame: str
    part: str
    count: int
    section: Section
    length_m: float
    wood: str
    wood_said: bool = False
    sound: bool = False
    near_food: bool = False
    cut: str = ""
    strip: bool = False


@frozen
class Pole:
    """Round poles or canes of one part, each a pole of its own."""

    frame: str
    part: str
    count: int
    thick_m: float
    length_m: float
    wood: str
    wood_said: bool = False
    brush: bool = False


@frozen
class Goods:
    """Anything else: by number, by length, or by width and length.

    of       the catalogue's word for what it is made of: nail, net, wire ...
    size     words or a size to buy it by
    """

    frame: str
    part: str
    of: str
    count: int
    size: str = ""
    length_m: float | None = None
    width_m: float | None = None
    thick_m: float | None = None
    mesh_m: float | None = None
    made: str = ""


@frozen
class LeftOut:
    """A frame that is not in the list, and why."""

    frame: str
    because: str


@frozen
class Needs:
    """All that is wanted. `standing` are frames that stand already."""

    sticks: tuple[Stick, ...]
    poles: tuple[Pole, ...]
    goods: tuple[Goods, ...]
    left_out: tuple[LeftOut, ...]
    standing: tuple[str, ...]


def needs_of(season: Season, frames: frozenset[str] = frozenset()) -> Needs:
    """What the frames of a season want; only some of them where they are named."""
    sticks: list[Stick] = []
    poles: list[Pole] = []
    goods: list[Goods] = []
    left_out: list[LeftOut] = []
    standing: list[str] = []
    for name, frame in season.frames.items():
        if frames and name not in frames:
            continue
        if frame.stands:
            standing.append(name)
            continue
        because = _left_out(frame)
        if because:
            left_out.append(LeftOut(name, because))
            continue
        for one in (*_parts(frame), *_own(frame)):
            if isinstance(one, Stick):
                sticks.append(one)
            elif isinstance(one, Pole):
                poles.append(one)
            else:
                goods.append(one)
    return Needs(tuple(sticks), tuple(poles), tuple(goods), tuple(left_out), tuple(standing))


def _left_out(frame: WorkedFrame) -> str:
    if frame.builders_work:
        return "it is a builder's work; the builder says what to buy"
    if frame.problem:
        return f"it cannot be worked out: {frame.problem}"
    for fact in frame.frame.facts.get("piece", ()):
        count = fact.get("count")
        if isinstance(count, Number) and count.value > MOST_OF_A_PART:
            return (
                f"{count.value:,.0f} pieces are written down, and {MOST_OF_A_PART:,} is the most "
                "that is worked out for one frame"
            )
    if frame.structure is None and not frame.frame.fact("piece"):
        if frame.frame.own_design:
            return "its pieces are not written down; a line `piece 4 of 2x2, 1.9 m` would be one"
        return "what kind it is is not known"
    return ""


def _parts(frame: WorkedFrame) -> Iterator[Stick | Pole | Goods]:
    if frame.worked is None:
        return
    near_food = frame.structure is not None and frame.structure.stands.held == "ground"
    for pieces in frame.worked.pieces.values():
        of = pieces.part.of
        if of == "brush":
            yield _pole(frame, pieces, brush=True)
        elif of in _SAWN and pieces.lengths_m and _is_metal(frame, pieces):
            yield from _metal(frame, pieces)
        elif of in _SAWN and pieces.width_m is not None and pieces.lengths_m:
            if pieces.round:
                yield from _poles(frame, pieces)
            else:
                yield from _sticks(frame, pieces, near_food=near_food)
        else:
            yield from _goods(frame, pieces)


def _is_metal(frame: WorkedFrame, pieces: Pieces) -> bool:
    """Posts that the plan says are of steel; what they bear is of wood unless it says so too."""
    posts = pieces.part.section in {"posts", "end posts"}
    said = posts or frame.is_said(f"{pieces.part.section}.wood")
    return said and bool(_METAL.search(pieces.wood))


def _metal(frame: WorkedFrame, pieces: Pieces) -> Iterator[Goods]:
    name = pieces.part.name
    for length, count in _by_length(pieces):
        words = f"{several(name)}, {pieces.wood}"
        yield Goods(frame.frame.name, name, "steel", count, words, length)


def _by_length(pieces: Pieces) -> list[tuple[float, int]]:
    """The different lengths of a part, longest first, with how many of each."""
    counts: dict[float, int] = {}
    for length in pieces.lengths_m:
        key = round(length, 5)
        counts[key] = counts.get(key, 0) + 1
    if len(set(counts)) == 1:
        return [(next(iter(counts)), pieces.count)]
    return sorted(counts.items(), reverse=True)


def _wood(frame: WorkedFrame, pieces: Pieces) -> tuple[str, bool]:
    """The wood of a part, and whether the plan says so."""
    said = any(
        frame.is_said(f"{word}.wood")
        for word in (pieces.part.wood.partition(".")[0], pieces.part.section)
        if word
    )
    wood = frame.frame.fact("wood")
    if wood is not None and (named := wood_in(str(wood.get("stuff") or ""))):
        return named, True
    return wood_in(pieces.wood) or ORDINARY, said


def _sticks(frame: WorkedFrame, pieces: Pieces, *, near_food: bool) -> Iterator[Stick]:
    width = pieces.width_m or 0.0
    wood, said = _wood(frame, pieces)
    for length, count in _by_length(pieces):
        if length <= 0 or count <= 0:
            continue
        yield Stick(
            frame.frame.name,
            pieces.part.name,
            count,
            section_m(width, pieces.depth_m or width, is_round=False),
            length,
            ORDINARY if pieces.part.of == "strip" else wood,
            said,
            pieces.part.section in _BEARS,
            near_food,
            pieces.part.cut,
            pieces.part.of == "strip",
        )


def _poles(frame: WorkedFrame, pieces: Pieces) -> Iterator[Pole]:
    wood, said = _wood(frame, pieces)
    for length, count in _by_length(pieces):
        yield Pole(
            frame.frame.name, pieces.part.name, count, pieces.width_m or 0.0, length, wood, said
        )


def _pole(frame: WorkedFrame, pieces: Pieces, *, brush: bool) -> Pole:
    width = pieces.width_m or 0.0
    return Pole(
        frame.frame.name,
        pieces.part.name,
        pieces.count,
        width,
        pieces.length_m or 0.0,
        wood_in(pieces.wood) or "hazel",
        brush=brush,
    )


def _goods(frame: WorkedFrame, pieces: Pieces) -> Iterator[Goods]:
    mesh = frame.figure("net.mesh") if pieces.part.of in {"net", "mesh"} else None
    made = _made(frame, pieces.part.of)
    lengths = _by_length(pieces) if pieces.lengths_m else [(None, pieces.count)]
    for length, count in lengths:
        yield Goods(
            frame.frame.name,
            pieces.part.name,
            pieces.part.of,
            count,
            _size(frame, pieces.size),
            length,
            pieces.breadth_m,
            pieces.thickness_m,
            mesh,
            made,
        )


def _made(frame: WorkedFrame, of: str) -> str:
    """What the plan says a net or a wire is made of."""
    if of == "wire":
        gauge, thick = frame.figure("wires.gauge"), frame.figure("wires.thick")
        words = [f"{gauge:g} gauge"] if gauge else []
        words += [f"{thick * 1000:.1f} mm"] if thick else []
        return " ".join([*words, frame.word("wires.made")]).strip()
    return frame.word("net.made") if of == "net" else ""


def _size(frame: WorkedFrame, size: str) -> str:
    """The words to buy it by, with the length where they only say what it must span."""
    as_long = "as long as the gap"
    long = frame.figure("hooks.length") or frame.figure("gap")
    if as_long not in size or not long:
        return size
    return size.replace(as_long, f"{Shown(frame.garden.imperial).bench(long)} long")


def _own(frame: WorkedFrame) -> Iterator[Stick | Pole | Goods]:
    """The pieces the gardener has written down."""
    for number, fact in enumerate(frame.frame.facts.get("piece", ()), start=1):
        count, section, length = fact.get("count"), fact.get("section"), fact.get("length")
        if not isinstance(section, Typed):
            continue
        number_of = int(count.value) if isinstance(count, Number) else 1
        metres = length.value if isinstance(length, Measure) else section.length_m
        if metres is None:
            continue
        words = str(fact.get("text") or "")
        part = words.strip() or f"piece {number}"
        wood = wood_in(words)
        cut = typed_section(section, frame.garden)
        if cut.round:
            yield Pole(
                frame.frame.name,
                part,
                number_of,
                cut.wide_mm / 1000,
                metres,
                wood or (CANE if cut.wide_mm <= 25 else "hazel"),
                bool(wood),
            )
        else:
            yield Stick(
                frame.frame.name, part, number_of, cut, metres, wood or ORDINARY, bool(wood)
            )
    if frame.structure is None:
        yield from _own_net(frame)
        yield from _own_fixings(frame)


def _own_fixings(frame: WorkedFrame) -> Iterator[Goods]:
    """Nails and screws that are counted and sized."""
    for fact in frame.frame.facts.get("pins", ()):
        count, nail = fact.get("count"), fact.get("nail")
        if isinstance(count, Number) and isinstance(nail, Nail):
            yield Goods(frame.frame.name, "pin", "nail", int(count.value), f"{nail.penny}d")
    for fact in frame.frame.facts.get("screws", ()):
        count, length = fact.get("count"), fact.get("length")
        if isinstance(count, Number) and isinstance(length, Measure):
            long = Shown(frame.garden.imperial).bench(length.value)
            yield Goods(frame.frame.name, "screw", "screw", int(count.value), long)


def _own_net(frame: WorkedFrame) -> Iterator[Goods]:
    fact = frame.frame.fact("net")
    size = fact.get("size") if fact else None
    mesh = fact.get("mesh") if fact else None
    if isinstance(size, Size):
        high, long = (side.value for side in size.sides[:2])
        yield Goods(
            frame.frame.name,
            "net",
            "net",
            1,
            length_m=long,
            width_m=high,
            mesh_m=mesh.value if isinstance(mesh, Measure) else None,
        )
