"""screws-short: the screws hardly reach into the piece that is to hold."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.language.values import Measure
from plantframe.mechanics.fixings import end_grain_screw_length_m, least_screw_length_m
from plantframe.season.units import INCH_M, Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

GRACE_M = 0.002  # 3 in screws and boards of 38 mm were made for each other


@frozen
class Facts:
    """A screw and the board it goes through: m."""

    cover: str
    length_m: float
    board_m: float

    @property
    def level(self) -> str:
        """silent, note or warn."""
        if self.length_m < least_screw_length_m(self.board_m) - GRACE_M:
            return "warn"
        short = self.length_m < end_grain_screw_length_m(self.board_m) - GRACE_M
        return "note" if short else "silent"


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The screws of a box, which hold in the end grain of its boards at the corners."""
    fact = frame.frame.fact("screws")
    board = frame.figure("thick")
    typed = fact.get("length") if fact else None
    if fact is None or frame.stands or not board or not isinstance(typed, Measure):
        return
    facts = Facts(frame.frame.name, typed.value, board)
    if facts.level == "silent":
        return
    shown = Shown(frame.garden.imperial)
    longer = _longer(end_grain_screw_length_m(board), shown)
    edit: Edit = rewrite(fact, {"length": longer})
    yield Finding(
        level=facts.level,
        where=fact.where,
        block=frame.frame.name,
        facts=facts,
        by=frame.wanted_by,
        candidates=(edit,),
    )


def _longer(metres: float, shown: Shown) -> str:
    """The next length sold: by the half inch, or by the centimetre."""
    if shown.imperial:
        return shown.bench(-(-(metres - GRACE_M) // (INCH_M / 2)) * INCH_M / 2)
    return f"{-(-(metres - GRACE_M) // 0.01) * 10:.0f} mm"


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    length, board = shown.bench(facts.length_m), shown.bench(facts.board_m)
    left = facts.length_m - facts.board_m
    holds = f"holds by {shown.bench(left)}" if left > 0 else "holds by nothing"
    says = f"{facts.cover}: a {length} screw through a board of {board} {holds} in the end grain."
    if facts.level == "note":
        says += " That is the least; longer ones hold better there."
    return Words(
        says=says,
        if_ignored="The corners work loose in some years."
        if facts.level == "note"
        else "It pulls out when the box is lifted.",
        told=f"Screws of {length}, boards of {board}.",
        sum=(
            f"Twice the board is {shown.bench(least_screw_length_m(facts.board_m))}; into end "
            f"grain {shown.bench(end_grain_screw_length_m(facts.board_m))} is better. Common "
            "practice."
        ),
    )


RULE = Rule(
    name="screws-short",
    summary="the screws are shorter than twice the board they hold",
    looks_at="frame",
    levels=("note", "warn"),
    basis="sum",
    check=check,
    words=words,
)
