"""nominal-or-actual: a size such as 2x12 may be the name of a board or its measure."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.language.edits import Edit, LineChange
from plantframe.language.slots import Section
from plantframe.season.said import actual_m

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.mistakes import Where
    from plantframe.language.reader import Fact
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

# Where a few millimetres decide whether things fit: sides that lights lie on, posts with mortises.
SIDES = ("back", "front")
UPRIGHTS = ("posts",)


@frozen
class Facts:
    """The size as typed, in which line, and what it measures either way, mm."""

    frame: str
    word: str
    typed: str
    dressed_mm: tuple[int, int]
    full_mm: tuple[int, int]


def check(season: Season, _season: Season) -> Iterable[Finding]:
    """Once for a garden that is measured in metres and does not say what such a size means."""
    garden = season.plan.garden
    if garden.imperial or garden.timber or garden.where is None:
        return
    for frame in season.frames.values():
        found = None if frame.stands else _first(frame)
        if found is None:
            continue
        fact, section = found
        width, depth, _round = actual_m(section, garden, fact.word)
        full = (round(section.width_m * 1000), round(section.depth_m * 1000))
        dressed = (round(width * 1000), round(depth * 1000))
        if full == dressed:
            continue
        yield Finding(
            level="ask",
            where=fact.where,
            block=garden.name,
            facts=Facts(frame.frame.name, fact.word, section.text, dressed, full),
            by=frame.wanted_by,
            candidates=partial(_ways_out, garden.where),
        )
        return


def _first(frame: WorkedFrame) -> tuple[Fact, Section] | None:
    """The first size of the frame on which something has to fit."""
    mortised = frame.frame.fact("mortises") is not None
    for word in UPRIGHTS if mortised else SIDES:
        fact = frame.frame.fact(word)
        section = fact.get("section") if fact else None
        if fact is not None and isinstance(section, Section) and section.nominal:
            return fact, section
    return None


def _ways_out(where: Where) -> Iterable[Edit]:
    """The answer is one word under the garden."""
    for means, says in (
        ("nominal", "the trade's name; planed boards measure less"),
        ("actual", "the boards measure just that"),
    ):
        line = f"timber {means}"
        yield Edit(f"{line} ({says})", (LineChange(where.file, where.line, None, f"  {line}"),))


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    dressed, full = (
        " x ".join(str(side) for side in sides) + " mm"
        for sides in (facts.dressed_mm, facts.full_mm)
    )
    return Words(
        says=(
            f"{facts.frame}: a {facts.typed} as it is sold planed measures {dressed}, and a full "
            f"one {full}. The first is taken here. Which do you have?"
        ),
        if_ignored=f"What is fitted to it comes out wrong by up to {_apart(facts)} mm.",
        told=f"{facts.word} {facts.typed}.",
        assumed=f"{dressed}.",
        sum="PS 20, American Softwood Lumber Standard: dressed sizes.",
    )


def _apart(facts: Facts) -> int:
    return max(
        abs(full - dressed) for full, dressed in zip(facts.full_mm, facts.dressed_mm, strict=True)
    )


RULE = Rule(
    name="nominal-or-actual",
    summary="a size such as 2x12 may be its name or its measure, and something has to fit on it",
    looks_at="season",
    levels=("ask",),
    basis="published",
    check=check,
    words=words,
    source="PS 20, American Softwood Lumber Standard: dressed sizes",
)
