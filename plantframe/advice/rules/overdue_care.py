"""overdue-care: what wears out in a few years has had its years."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.edits import add_task
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.likeness import Called, best, short
from plantframe.season.rounds import is_of_years, last_done

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Care
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown


@frozen
class Facts:
    """A round of care: when it was last done, and every how many years it is usual."""

    frame: str
    does: str
    since: int
    built: bool
    low: int
    high: int
    year: int

    @property
    def level(self) -> str:
        """silent, note from the first year it may be due, warn past the last."""
        age = self.year - self.since
        if age > self.high:
            return "warn"
        return "note" if age >= self.low else "silent"


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """Rounds of several years against the year they were last done, or the frame was built."""
    structure = frame.structure
    if structure is None:
        return
    for care in structure.care:
        every = care.every
        if every is None or not is_of_years(care):
            continue
        since, fact = last_done(frame, care)
        if since is None or not _wanted(frame, care) or _planned(season, frame, care):
            continue
        low = round(every.low if every.low is not None else every.usual)
        high = round(every.high if every.high is not None else every.usual)
        year = frame.garden.year
        facts = Facts(frame.frame.name, care.do, since, fact is None, low, high, year)
        if facts.level == "silent":
            continue
        built = frame.frame.fact("built")
        line = fact or built
        job = f"{short(care.do)}, at {frame.frame.name}"
        yield Finding(
            level=facts.level,
            where=line.where if line else frame.frame.block.where,
            block=frame.frame.name,
            subject=care.id,
            facts=facts,
            candidates=(add_task(frame.frame.block, job),),
        )


def _wanted(frame: WorkedFrame, care: Care) -> bool:
    """The parts it renews are there."""
    if not care.when:
        return True
    worked = frame.worked
    try:
        return worked is not None and bool(worked.figure(care.when))
    except ValueError:
        return False


def _planned(season: Season, frame: WorkedFrame, care: Care) -> bool:
    """A task of the plan, at this frame or at none, is the same job."""
    return any(
        best(task.what, [Called(care.id, care.do)]) == 0
        for task in season.tasks_about(frame.frame.name)
    )


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    every = (
        f"{facts.low} to {facts.high} years" if facts.low != facts.high else f"{facts.low} years"
    )
    counted = (
        f"counted from {facts.since}, when it was built"
        if facts.built
        else f"last done in {facts.since}"
    )
    due = facts.since + facts.high
    when = "is due this year" if facts.level == "note" else f"was due by {due}"
    return Words(
        says=(f"{facts.frame}: “{short(facts.does)}” comes every {every}; {counted}, it {when}."),
        if_ignored="What it spares wears out instead.",
        told=f"{facts.since}.",
        sum=f"{facts.since} and {every}: common practice.",
    )


RULE = Rule(
    name="overdue-care",
    summary="what wears out in a few years has had its years",
    looks_at="frame",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
)
