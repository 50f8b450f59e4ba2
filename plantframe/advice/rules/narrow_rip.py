"""narrow-rip: narrow stock is to be ripped with a power saw held in the hand."""

from __future__ import annotations

import re
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.language.edits import lengthen
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.plan.things import Task
    from plantframe.season.season import Season

RIP = re.compile(r"\b(?:rip|ripped|ripping)\b", re.IGNORECASE)
HELD = re.compile(
    r"\b(circular saw|power saw|hand[- ]held saw|jig ?saw|reciprocating saw|chain ?saw)\b",
    re.IGNORECASE,
)
OTHERS = re.compile(
    r"\b(yard|hand ?saw|rip ?saw|table saw|bench saw|band ?saw|track saw|saw bench|mill)\b",
    re.IGNORECASE,
)
# Two sides in inches or millimetres, as stock is named.
STOCK = re.compile(r"\b(\d+)\s?[x×]\s?(\d+)\s?(mm|cm)?", re.IGNORECASE)
# A strip narrower than this puts the fingers beside the blade (common practice, no source).
NARROW_M = 0.05
UNITS_M = {"": 0.0254, "mm": 0.001, "cm": 0.01}


@frozen
class Facts:
    """The task, the stock, how wide each half is, m, whether it is named in inches, the saw."""

    task: str
    stock: str
    strip_m: float
    inches: bool
    saw: str


def check(season: Season, _season: Season) -> Iterable[Finding]:
    """Tasks that rip narrow stock, unless at the yard, by hand or on a bench."""
    tools = " ".join(season.plan.garden.tools)
    for task in season.plan.tasks:
        text = task.block.head.text
        if task.done is not None or RIP.search(text) is None or OTHERS.search(text):
            continue
        saw = HELD.search(text) or HELD.search(tools)
        stock = STOCK.search(text)
        if saw is None or stock is None:
            continue
        unit = (stock[3] or "").lower()
        strip = max(float(stock[1]), float(stock[2])) * UNITS_M[unit] / 2
        if not 0 < strip < NARROW_M + 0.001:
            continue
        yield Finding(
            level="warn",
            where=task.block.where,
            block=task.block.name,
            facts=Facts(task.what, stock[0].strip(), strip, not unit, saw[1].lower()),
            by=task.by.day if task.by else None,
            candidates=partial(_ways_out, task),
            ways=(
                "The yard rips it for a few coins a cut.",
                "Else clamp it to a bench along a fence: goggles, ear muffs, and never alone.",
                "Outdoors the saw runs on a socket with a safety trip.",
            ),
        )


def _ways_out(task: Task) -> Iterable[Edit]:
    """Ripped at the yard, or by hand."""
    if task.spot is None:
        yield lengthen(task.block.where, ", at the yard")


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    strip = Shown(facts.inches).bench(facts.strip_m)
    return Words(
        says=(
            f"“{facts.task}”: ripping {facts.stock} down the middle with a {facts.saw} leaves "
            f"about {strip} to hold it by, with the fingers that near the blade."
        ),
        if_ignored="The blade binds and kicks, and fingers are lost to it.",
        told=facts.task,
        sum="Half the width of the stock. The saw's own instructions come before this.",
    )


RULE = Rule(
    name="narrow-rip",
    summary="narrow stock is to be ripped with a power saw held in the hand",
    looks_at="season",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
