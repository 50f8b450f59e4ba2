"""not-in-stock-length: a piece is longer than the yard sells, or just too long to be cut well."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite, set_fact
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.stock import (
    HAIR_M,
    Needed,
    down_to,
    kerf_m,
    lengths_sold,
    longest_in_store,
    lost_to_kerf,
    needed,
    out_of,
)
from plantframe.frozen import frozen
from plantframe.season.units import Shown, plural

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

WASTE_SHARE = 0.30  # of a length, from which it is worth a word
# A piece may lose so much and still do its work (common practice, no source).
SPARE_M, SPARE_SHARE = 0.055, 0.04


@frozen
class Facts:
    """A piece against the lengths it comes in, m.

    most    what comes out of one length as the plan has it
    more    what would, with pieces of `cut_m`
    """

    frame: str
    part: str
    count: int
    piece_m: float
    stock_m: float
    most: int = 0
    more: int = 0
    cut_m: float = 0.0


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """Every stick and board of it, against the lengths of the plan's yard."""
    if frame.stands or frame.builders_work or not season.plan.yard:
        return
    pieces = list(needed(frame))
    for piece in pieces:
        lengths = lengths_sold(season.plan, piece.sides_m)
        if not lengths or piece.count < 1:
            continue
        longest = max(lengths[-1], longest_in_store(season.plan, piece.sides_m))
        facts: Facts | None = None
        if piece.length_m > longest + HAIR_M:
            facts = Facts(frame.frame.name, piece.part, piece.count, piece.length_m, longest)
        elif piece.said and piece.count > 1:
            facts = _wasteful(frame, piece, lengths, pieces)
        if facts is None:
            continue
        yield Finding(
            level="note" if facts.most else "warn",
            where=piece.fact.where if piece.fact else frame.frame.block.where,
            block=frame.frame.name,
            subject=f"{piece.part} of {piece.length_m * 1000:.0f} mm",
            facts=facts,
            by=frame.wanted_by,
            candidates=partial(_ways_out, frame, piece, facts),
            ways=()
            if facts.most
            else ("Ask the yard for a longer one, or join two over a post or a brace.",),
        )


def _wasteful(
    frame: WorkedFrame, piece: Needed, lengths: tuple[float, ...], pieces: list[Needed]
) -> Facts | None:
    """A little less would bring one more out of a length, and nothing else wants what is left."""
    kerf, long = kerf_m(frame.garden), piece.length_m
    if lost_to_kerf(lengths, long, piece.count, kerf) is not None:
        return None  # the saw's own cuts are another matter
    best = min(lengths, key=lambda stock: _left(stock, long, kerf) / stock)
    left = _left(best, long, kerf)
    if left <= WASTE_SHARE * best:
        return None
    smaller = [
        one
        for one in pieces
        if one is not piece and one.sides_m == piece.sides_m and one.length_m <= left
    ]
    if smaller:
        return None
    for stock in lengths:
        count = out_of(stock, long, kerf)
        cut = (stock - count * kerf) / (count + 1)
        if count and long - cut <= max(SPARE_M, SPARE_SHARE * long) + HAIR_M:
            name = frame.frame.name
            return Facts(name, piece.part, piece.count, long, stock, count, count + 1, cut)
    return None


def _left(stock: float, piece: float, kerf: float) -> float:
    """What is left of a length when all that come out of it are cut; all of it where none do."""
    count = out_of(stock, piece, kerf)
    return max(0.0, stock - count * (piece + kerf))


def _ways_out(frame: WorkedFrame, piece: Needed, facts: Facts) -> Iterable[Edit]:
    """A piece that comes out of what is sold; for a bar, shorter bays."""
    shown = Shown(frame.garden.imperial)
    fact = piece.fact
    if facts.most and fact is not None and fact.slot("length") is not None:
        yield rewrite(fact, {"length": down_to(facts.cut_m, shown)})
        return
    count, length = frame.figure("bays.count"), frame.figure("bays.length")
    if piece.word in {"bar", "rails"} and count and length:
        for parts in (2, 3):
            half = length / parts
            if half <= facts.stock_m:
                yield set_fact(
                    frame.frame, "bays", f"bays {count * parts:.0f} of {shown.typed(half)}"
                )
    if piece.said and fact is not None and not facts.most:
        yield rewrite(fact, {"length": shown.typed(facts.stock_m)})


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    piece, stock = shown.exact(facts.piece_m), shown.length(facts.stock_m)
    if not facts.most:
        return Words(
            says=(
                f"{facts.frame}: a {facts.part} of {piece}, and the longest of that section is "
                f"{stock}."
            ),
            if_ignored="You stand at the yard with a list that cannot be bought.",
            told=f"{facts.part.capitalize()} {piece}.",
            assumed="That the yard and the shed have what the plan lists, and no more.",
            sum=f"{piece} against {stock}.",
        )
    cut = down_to(facts.cut_m, shown)
    called = "" if facts.part == "piece" else f" ({facts.part})"
    return Words(
        says=(
            f"{facts.frame}: {plural(facts.count, 'piece')} of {piece}{called} from lengths of "
            f"{stock}: {_only(facts.most)} to a length. At {cut} there are {facts.more}."
        ),
        if_ignored="More lengths are bought than it takes, and the ends are firewood.",
        told=f"{facts.part.capitalize()} {piece}.",
        assumed="That nothing else of this frame is cut from what is left.",
        sum=f"{stock} holds {facts.most} of {piece}, or {facts.more} of {cut} and the cuts.",
    )


def _only(count: int) -> str:
    return "only one" if count == 1 else f"only {count}"


RULE = Rule(
    name="not-in-stock-length",
    summary="a piece is longer than the yard sells, or a little too long to be cut without waste",
    looks_at="frame",
    levels=("note", "warn"),
    basis="sum",
    check=check,
    words=words,
)
