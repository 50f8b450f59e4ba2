"""wrong-fixing: plain or indoor screws in wood that rusts them."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.advice.edits import swap
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

INDOOR = re.compile(
    r"\b(plaster ?board|dry ?wall|interior|indoor|plain|bright|black|uncoated)\b", re.IGNORECASE
)
# Woods with tannin, or with copper in them, that eat plain steel (common practice, no source).
EATS_STEEL = re.compile(r"\b(cedar|oak|chestnut|redwood|treated|larch|douglas)\b", re.IGNORECASE)
WOODS = ("posts.wood", "back.wood", "front.wood", "rails.wood", "bar.wood")


@frozen
class Facts:
    """The screws as typed, and the wood."""

    frame: str
    screws: str
    wood: str


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Indoor screws, wood that rusts them, and a frame that is to last more than two years."""
    fact = frame.frame.fact("screws")
    if fact is None or frame.stands or not frame.lasting:
        return
    indoor = INDOOR.search(fact.text)
    wood = _wood(frame)
    if indoor is None or not wood:
        return
    yield Finding(
        level="note",
        where=fact.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, indoor[0].lower(), wood),
        by=frame.wanted_by,
        candidates=tuple(swap(fact, indoor[0], other) for other in ("exterior", "stainless")),
        ways=("Or keep them, and renew them after four or five years.",),
    )


def _wood(frame: WorkedFrame) -> str:
    """A wood of this frame, as the plan says it, that eats plain steel."""
    said = [frame.word(name) for name in WOODS if frame.is_said(name)]
    whole = frame.frame.fact("wood")
    said += [whole.text.removeprefix("wood").removeprefix("made of").strip()] if whole else []
    return next((wood for wood in said if EATS_STEEL.search(wood)), "")


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    return Words(
        says=(
            f"{facts.frame}: {facts.screws} screws rust and snap in wet {facts.wood}. Practice "
            "differs: some renew them after four or five years; coated or stainless ones stay."
        ),
        if_ignored="Heads snap off when they are next undone, and the joint has no hold.",
        told=f"{facts.screws} screws, {facts.wood}.",
        sum="Said of plain steel in woods that eat it, on what is to stay over two years.",
    )


RULE = Rule(
    name="wrong-fixing",
    summary="plain or indoor screws in cedar, oak or treated wood that is to last",
    looks_at="frame",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
