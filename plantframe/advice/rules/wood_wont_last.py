"""wood-won't-last: the wood rots in soil before the years that are wanted are over."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite, uprights
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.plantings import as_range
from plantframe.season.units import two_figures
from plantframe.season.weights import wood_named

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Material
    from plantframe.language.edits import Edit
    from plantframe.mechanics.ranges import Range
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

THICK_M = 0.085  # a post of 89 mm outlasts a stick of 38
LASTING = ("cedar", "chestnut", "locust")  # woods whose heart stands in soil untreated


@frozen
class Facts:
    """The wood, its years in soil, and the years wanted. `said` is whether the plan names it."""

    frame: str
    posts: str
    wood: str
    years: Range
    wanted: float
    said: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The years the plan wants against the years that wood lasts in soil."""
    wanted = frame.frame.stays_years
    if wanted is None or not frame.down_m or frame.builders_work:
        return
    name = frame.word("posts.wood")
    wood = wood_named(name) if name else None
    years = _years(wood, frame.figure("posts.width")) if wood else None
    if wood is None or years is None or "steel" in name or wanted <= years.high:
        return
    fact = uprights(frame.frame)
    yield Finding(
        level="warn",
        where=fact.where if fact else frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(
            frame.frame.name,
            frame.uprights,
            wood.name,
            years,
            wanted,
            frame.is_said("posts.wood"),
        ),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame),
        ways=("Steel feet that keep the wood out of the soil, or posts renewed one by one.",),
    )


def _years(wood: Material, width_m: float | None) -> Range | None:
    """Its life in soil, of thick posts where it is told apart."""
    thick = wood.figures.get("life in soil thick")
    if thick is not None and width_m is not None and width_m >= THICK_M:
        return as_range(thick)
    return as_range(wood.figures.get("life in soil"))


def _ways_out(frame: WorkedFrame) -> Iterable[Edit]:
    """Posts of a wood that lasts."""
    fact = uprights(frame.frame)
    if fact is None:
        return
    for wood in LASTING:
        edit = rewrite(fact, {"wood": wood})
        yield edit


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    low, high = two_figures(facts.years.low), two_figures(facts.years.high)
    lasts = f"{low} to {high} years" if low != high else f"{low} years"
    return Words(
        says=(
            f"{facts.frame}: {facts.posts} of {facts.wood} last {lasts} in soil, and "
            f"{two_figures(facts.wanted)} are wanted."
        ),
        if_ignored="They break at the soil line, in leaf and in wind.",
        told=f"Wanted for {two_figures(facts.wanted)} years.",
        assumed="" if facts.said else f"That they are of {facts.wood}: the plan names no wood.",
        sum=f"{lasts} in soil; dry ground is kinder than wet.",
    )


RULE = Rule(
    name="wood-won't-last",
    summary="the wood rots in soil before the years that are wanted are over",
    looks_at="frame",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
