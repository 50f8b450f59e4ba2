"""overdue-care: what wears out in a few years has had its years."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.edits import add_task
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.language.slots import When
from plantframe.language.values import Number
from plantframe.season.likeness import Called, best, short
from plantframe.season.work import day_in

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Care
    from plantframe.language.reader import Fact
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

YEARLY = 1.5  # rounds that come oftener are jobs of the year, never overdue
# The fact that dates a round of care, where it is not called as the round is.
DATED_BY = {"paint": "painted", "recoat": "finish"}


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
        if every is None or every.base != "years" or every.usual < YEARLY:
            continue
        since, fact = _since(frame, care)
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


def _since(frame: WorkedFrame, care: Care) -> tuple[int | None, Fact | None]:
    """The year it was last done and the line that says so, else the year of building."""
    done = [
        mark
        for mark in frame.frame.marks
        if mark.kind == "done" and mark.day and best(mark.job, [Called(care.id, care.do)]) == 0
    ]
    if done:
        last = max(done, key=lambda mark: mark.day.day if mark.day else None)  # type: ignore[arg-type,return-value]
        return (last.day.day.year if last.day else None), last.fact
    fact = frame.frame.fact(DATED_BY.get(care.id, care.id))
    if fact is not None:
        for slot in ("year", "since", "date"):
            value = fact.get(slot)
            if isinstance(value, Number):
                return int(value.value), fact
            if isinstance(value, When):
                dated = day_in(fact, slot, frame.garden)
                if dated is not None and value.day is not None and value.day.year:
                    return dated.day.year, fact
    return frame.frame.built, None


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
        if_ignored="" if facts.level == "note" else "What it spares wears out instead.",
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
