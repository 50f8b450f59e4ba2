"""kerf: pieces that would just come out of a length, but for what the saw takes."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.stock import (
    UPRIGHTS,
    Needed,
    down_to,
    kerf_m,
    lengths_sold,
    lost_to_kerf,
    needed,
)
from plantframe.frozen import frozen
from plantframe.season.units import INCH_M, Shown, plural

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season


@frozen
class Facts:
    """So many pieces of a length from one length of stock, and what a cut takes: m."""

    frame: str
    part: str
    count: int
    piece_m: float
    stock_m: float
    kerf_m: float

    @property
    def wants_m(self) -> float:
        """What the pieces and the cuts between them want together."""
        return self.count * self.piece_m + (self.count - 1) * self.kerf_m


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """Pieces whose length the plan gives, against the lengths of the plan's yard."""
    if frame.stands or not season.plan.yard:
        return
    kerf = kerf_m(frame.garden)
    for piece in needed(frame):
        if piece.count < 2 or not piece.said or piece.fact is None:
            continue
        lengths = lengths_sold(season.plan, piece.sides_m)
        lost = lost_to_kerf(lengths, piece.length_m, piece.count, kerf)
        if lost is None:
            continue
        stock, count = lost
        facts = Facts(frame.frame.name, piece.part, count, piece.length_m, stock, kerf)
        yield Finding(
            level="note" if piece.word in UPRIGHTS else "warn",
            where=piece.fact.where,
            block=frame.frame.name,
            subject=f"{piece.part} of {piece.length_m * 1000:.0f} mm",
            facts=facts,
            by=frame.wanted_by,
            candidates=partial(_ways_out, frame, piece, facts),
            ways=("Or buy a longer length, if the yard has one.",),
        )


def _ways_out(frame: WorkedFrame, piece: Needed, facts: Facts) -> Iterable[Edit]:
    """Pieces shorter by their share of the cuts."""
    shorter = (facts.stock_m - (facts.count - 1) * facts.kerf_m) / facts.count
    if piece.fact is not None and piece.fact.slot("length") is not None:
        yield rewrite(piece.fact, {"length": down_to(shorter, Shown(frame.garden.imperial))})


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    cuts = plural(facts.count - 1, "cut")
    pieces = f"{facts.count} pieces of {shown.exact(facts.piece_m)}"
    called = "" if facts.part == "piece" else f" ({facts.part})"
    want, stock = _tape(facts.wants_m, shown), _tape(facts.stock_m, shown)
    takes = shown.bench(facts.kerf_m)
    return Words(
        says=(
            f"{facts.frame}: {pieces}{called} and {cuts} want {want}; the length at the yard is "
            f"{stock}."
        ),
        if_ignored="The last one comes out short, or a length more is bought for it.",
        told=f"{pieces}, and lengths of {shown.exact(facts.stock_m)} at the yard.",
        assumed=f"That a cut takes {takes}, and a length is no longer than sold.",
        sum=f"{facts.count} times the piece and {cuts} of {takes}.",
    )


def _tape(metres: float, shown: Shown) -> str:
    """In inches or millimetres, where a cut is to show."""
    if shown.imperial:
        return shown.bench(round(metres / INCH_M * 8) / 8 * INCH_M)
    return f"{metres * 1000:.0f} mm"


RULE = Rule(
    name="kerf",
    summary="pieces and the saw cuts between them want more than the length they come from",
    looks_at="frame",
    levels=("note", "warn"),
    basis="sum",
    check=check,
    words=words,
)
