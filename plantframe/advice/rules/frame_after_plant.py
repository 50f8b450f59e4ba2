"""frame-after-plant: the frame goes up through what is already sown or planted."""

from __future__ import annotations

from datetime import date, timedelta
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.units import Shown, day
from plantframe.season.work import dates_of, frame_ready

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.plan.dates import Dated
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

SOWN_DAYS = 10  # seed has no root to speak of for so long (common practice, no source)
YEARS_AGO = 200  # a date so long before is another year's planting


@frozen
class Facts:
    """What grows there, since when, and when the frame is to stand."""

    frame: str
    plant: str
    sown: bool
    in_ground: date
    ready: date
    days: int


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The day the frame stands against the first day something is in its soil."""
    structure = frame.structure
    if frame.stands or (structure is not None and structure.planting.own_order):
        return
    ready = _ready(frame)
    if ready is None:
        return
    for planting in frame.plantings:
        there = planting.in_ground
        if there is None:
            continue
        sown = planting.planting.out is None
        grace = there.give + ready.give + (SOWN_DAYS if sown else 0)
        days = (ready.day - there.last).days
        if not grace < days < YEARS_AGO:
            continue
        yield Finding(
            level="warn",
            where=planting.planting.fact.where,
            block=frame.frame.name,
            subject=planting.name,
            facts=Facts(frame.frame.name, planting.name, sown, there.day, ready.day, days),
            by=there.day,
            candidates=partial(_ways_out, frame, planting, there, ready),
            ways=("Raise it in pots, and set it out once the frame stands.",) if sown else (),
        )
        return


def _ready(frame: WorkedFrame) -> Dated | None:
    """When the steps that planting waits for are done."""
    structure = frame.structure
    if structure is not None and structure.planting.after:
        dates = dates_of(frame)
        wanted = [dates[one].day for one in structure.planting.after if one in dates]
        if wanted:
            return max(wanted, key=lambda dated: dated.last)
    return frame_ready(frame)


def _ways_out(
    frame: WorkedFrame, planting: WorkedPlanting, there: Dated, ready: Dated
) -> Iterable[Edit]:
    """The frame ready the day before, or the planting after it."""
    fact = frame.frame.fact("ready by")
    if fact is not None and frame.frame.ready_by == ready:
        before = there.day - timedelta(days=1)
        yield rewrite(fact, {"date": day(before)})
    slot = "sow" if planting.planting.out is None else "out"
    holders = (planting.planting.fact, *planting.planting.facts)
    own = next((one for one in holders if one.slot(slot) is not None), None)
    if own is not None:
        yield rewrite(own, {slot: day(ready.last + timedelta(days=1))})


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    how = "sown" if facts.sown else "planted"
    return Words(
        says=(
            f"{facts.frame}: it is to stand by {day(facts.ready)}, {facts.days} days after "
            f"{facts.plant} is {how} there on {day(facts.in_ground)}."
        ),
        if_ignored="The posts go in through the roots, and feet tread the row hard.",
        told=f"{facts.plant} {how} {day(facts.in_ground)}; ready {day(facts.ready)}.",
        assumed=f"Seed bears a frame put up over it within {SOWN_DAYS} days." if facts.sown else "",
        sum=f"{facts.days} days. Frames before plants: common practice.",
    )


RULE = Rule(
    name="frame-after-plant",
    summary="a frame is to stand only after its plants are in the ground",
    looks_at="frame",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
