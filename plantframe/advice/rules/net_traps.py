"""net-traps: a net in which birds, bats and small animals are caught."""

from __future__ import annotations

import re
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite, swap
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.language.reader import Fact
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

FINE_M = 0.005  # at full stretch, as household fruit nets must be where the law speaks of them
LOOSE_M = 0.010  # a finger goes through, and so does a head
TAUT = frozenset({"tied", "taut"})
# Where household fruit nets must be that fine (from memory: state rules of 2021 and after).
LAW = re.compile(r"\b(victoria|act|australian capital territory|canberra)\b", re.IGNORECASE)


@frozen
class Facts:
    """The net: its mesh in m (0 where unsaid), how it hangs, and whether the law speaks there."""

    frame: str
    mesh_m: float
    loose: bool
    law: bool
    climbing: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """A net that is not taut, or coarser than the law of the place allows over fruit."""
    fact = frame.frame.fact("net") or frame.frame.fact("mesh")
    if fact is None or not _is_a_net(frame):
        return
    mesh = frame.figure("net.mesh") if frame.is_said("net.mesh") else None
    loose = "loose" in frame.word("net.hung")
    facts = Facts(
        frame.frame.name,
        mesh or 0.0,
        loose,
        LAW.search(frame.garden.region) is not None,
        bool(frame.holds),
    )
    level = _level(facts)
    if level == "silent":
        return
    yield Finding(
        level=level,
        where=fact.where,
        block=frame.frame.name,
        facts=facts,
        by=frame.wanted_by,
        candidates=partial(_ways_out, fact, facts),
        ways=("Draw it taut, and take it down with the vines.",)
        if facts.climbing
        else (
            "A fine white net, pulled taut over a frame, looked at each day and off after picking.",
        ),
    )


def _is_a_net(frame: WorkedFrame) -> bool:
    """Of cord, and not a stiff mesh that nothing tangles in."""
    worked = frame.worked
    return worked is not None and any(one.part.of == "net" for one in worked.pieces.values())


def _level(facts: Facts) -> str:
    """silent, note, warn or stop."""
    if facts.climbing:
        # a climbing net has holes that a bird flies through, as long as it is taut
        return "note" if facts.loose else "silent"
    if facts.law and facts.mesh_m > FINE_M + 1e-6:
        return "stop"
    return "warn" if facts.loose and facts.mesh_m > LOOSE_M + 1e-6 else "silent"


def _ways_out(fact: Fact, facts: Facts) -> Iterable[Edit]:
    """The same net pulled taut; a net as fine as the law asks."""
    if facts.law:
        yield rewrite(fact, {"mesh": "5 mm"})
        return
    slot = next(
        (slot for slot in fact.slots if slot.name == "hung" and slot.text not in TAUT), None
    )
    if slot is not None:
        yield swap(fact, slot.text, "taut")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    mesh = shown.bench(facts.mesh_m)
    if facts.climbing:
        return Words(
            says=f"{facts.frame}: a climbing net wants to be taut, and down in autumn.",
            if_ignored="Birds and hedgehogs are caught in slack net.",
            told="The net hangs loose.",
            sum="Said of loose nets; a taut one throws a bird off.",
        )
    if facts.law:
        says = (
            f"{facts.frame}: a mesh of {mesh} over fruit. The law there asks for "
            f"{shown.bench(FINE_M)} or finer at full stretch; ask what it says today."
        )
    else:
        says = (
            f"{facts.frame}: a loose net of {mesh} mesh. A finger goes through it, and so does a "
            "head."
        )
    return Words(
        says=says,
        if_ignored="Birds, bats and snakes hang in it and die there.",
        told=f"Mesh {mesh}{', loose' if facts.loose else ''}.",
        sum=f"{mesh} against {shown.bench(LOOSE_M)} loose; local law goes before it.",
    )


RULE = Rule(
    name="net-traps",
    summary="a net over fruit that is loose, or coarser than local law allows",
    looks_at="frame",
    levels=("note", "warn", "stop"),
    basis="common practice",
    check=check,
    words=words,
    answered="write the finer mesh, or take the net off",
    answered_at="stop",
)
