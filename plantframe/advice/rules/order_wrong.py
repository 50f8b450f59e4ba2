"""order-wrong: work is dated against the order in which it can be done."""

from __future__ import annotations

from datetime import date, timedelta
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.units import Shown, day, plural
from plantframe.season.work import Broken, dates_of, order_broken, steps_of

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season


@frozen
class Facts:
    """Two steps, what each is called and when it is dated, and why the order matters."""

    frame: str
    earlier: str
    earlier_day: date
    later: str
    later_day: date
    later_done: bool
    because: str
    others: int


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The first pair of dated steps that is the wrong way round."""
    if frame.stands or not frame.frame.marks:
        return
    broken = order_broken(frame)
    if not broken:
        return
    worst = min(broken, key=lambda one: _places_apart(frame, one))
    dates = dates_of(frame)
    later = dates[worst.later.id]
    yield Finding(
        level="stop",
        where=later.fact.where,
        block=frame.frame.name,
        subject=worst.later.id,
        facts=Facts(
            frame.frame.name,
            worst.earlier.short,
            worst.earlier_day.day,
            worst.later.short,
            worst.later_day.day,
            later.how == "done",
            worst.because,
            len(broken) - 1,
        ),
        by=min(worst.earlier_day.day, worst.later_day.day),
        candidates=partial(_ways_out, frame, worst),
        ways=(
            f"Do “{worst.earlier.short}” first; what was done too early is taken off again.",
            "`plantframe jobs` lists the whole order.",
        ),
    )


def _places_apart(frame: WorkedFrame, one: Broken) -> int:
    """The nearer two steps follow each other, the plainer the reason."""
    order = [step.id for step in steps_of(frame)]
    return abs(order.index(one.later.id) - order.index(one.earlier.id))


def _ways_out(frame: WorkedFrame, worst: Broken) -> Iterable[Edit]:
    """A moved job is moved again; what is done already no line of the plan undoes."""
    dates = dates_of(frame)
    later, earlier = dates[worst.later.id], dates[worst.earlier.id]
    if later.how != "moved":
        return
    after = worst.earlier_day.last + timedelta(days=1)
    yield rewrite(later.fact, {"to": day(after)})
    if earlier.how == "moved":
        before = worst.later_day.day - timedelta(days=1)
        yield rewrite(earlier.fact, {"to": day(before)})


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    done = "is done on" if facts.later_done else "is set for"
    more = f" {plural(facts.others, 'more pair')} of dates go with it." if facts.others else ""
    because = facts.because[:1].upper() + facts.because[1:]
    return Words(
        says=(
            f"{facts.frame}: “{facts.later}” {done} {day(facts.later_day)}, before "
            f"“{facts.earlier}” on {day(facts.earlier_day)}. {because}.{more}"
        ),
        if_ignored="The work has to be undone and done again.",
        told=f"{facts.later}: {day(facts.later_day)}; {facts.earlier}: {day(facts.earlier_day)}.",
        sum="The order of work of this kind of frame: common practice.",
    )


RULE = Rule(
    name="order-wrong",
    summary="jobs are dated against the order in which they can be done",
    looks_at="frame",
    levels=("stop",),
    basis="common practice",
    check=check,
    words=words,
)
