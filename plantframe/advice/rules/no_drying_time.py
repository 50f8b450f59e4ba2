"""no-drying-time: a job is dated before what must dry, set or settle has had its days."""

from __future__ import annotations

from datetime import timedelta
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.units import Shown, day, plural
from plantframe.season.work import dates_of, too_soon

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import date

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.work import TooSoon


@frozen
class Facts:
    """What must wait, for what, how many days at the least, and how many it is given."""

    frame: str
    first: str
    first_day: date
    then: str
    then_day: date
    waits_for: str
    days: tuple[int, int]


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The first dated job that comes too soon after one that must dry."""
    if frame.stands:
        return
    found = too_soon(frame)
    if not found:
        return
    one = min(found, key=lambda pair: pair.then_day.day)
    line = dates_of(frame)[one.then.id].fact
    yield Finding(
        level="warn",
        where=line.where,
        block=frame.frame.name,
        subject=one.first.id,
        facts=Facts(
            frame.frame.name,
            one.first.short,
            one.first_day.day,
            one.then.short,
            one.then_day.day,
            one.first.waits_for,
            one.first.wait_days,
        ),
        by=one.then_day.day,
        candidates=partial(_ways_out, frame, one),
        ways=("Or leave the coat off, and lift the posts out each autumn to dry.",)
        if one.first.step.when.startswith("said.finish")
        else (),
    )


def _ways_out(frame: WorkedFrame, one: TooSoon) -> Iterable[Edit]:
    """A moved job is moved on to the first day that will do."""
    line = dates_of(frame)[one.then.id]
    if line.how == "moved":
        later = one.first_day.last + timedelta(days=one.first.wait_days[0])
        yield rewrite(line.fact, {"to": day(later)})


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    low, high = facts.days
    span = f"{low} days" if low == high else f"{low} to {high} days"
    waits = f" for {facts.waits_for}" if facts.waits_for else ""
    given = (facts.then_day - facts.first_day).days
    has = "none" if given <= 0 else f"{given}"
    return Words(
        says=(
            f"{facts.frame}: “{facts.first}” on {day(facts.first_day)} wants {span}{waits}, and "
            f"“{facts.then}” on {day(facts.then_day)} leaves it {has}."
        ),
        if_ignored="What is not dry or firm by then is spoilt by the next job.",
        told=f"{facts.first}: {day(facts.first_day)}; {facts.then}: {day(facts.then_day)}.",
        sum=f"{plural(given, 'day')} of {span}. How long it takes is common practice.",
    )


RULE = Rule(
    name="no-drying-time",
    summary="a job is dated before paint, concrete or soil has had its days",
    looks_at="frame",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
