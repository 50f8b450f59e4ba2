"""The jobs of building a frame, and of taking it down again."""

from __future__ import annotations

import re
from datetime import timedelta
from itertools import pairwise
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen, replace
from plantframe.jobs.cautions import cautions
from plantframe.jobs.covering import spans_on
from plantframe.jobs.days import time_of_year, window_of
from plantframe.jobs.job import (
    BUILD,
    CARE,
    DONE,
    IN_HAND,
    OPEN,
    TAKE_DOWN,
    Before,
    Draft,
    Job,
    Window,
)
from plantframe.season.likeness import short, slug
from plantframe.season.units import day as shown
from plantframe.season.weights import box_kg
from plantframe.season.work import dates_of, last_steps, steps_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping, Sequence
    from datetime import date

    from plantframe.catalogue.entries import Step
    from plantframe.jobs.drafts import Drafts
    from plantframe.plan.things import Frame
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.work import FrameStep

PLACES: Final = {"bench": "at the bench", "yard": "at the yard", "wood": "in the wood"}
LIFTING: Final = "lifting"  # a caution's kind, as the entries have it
# A net or a frame comes in within three weeks of the last picking (common practice, no source).
CLEARING_DAYS: Final = timedelta(days=21)
_NUMBERED = re.compile(r"down \d+")  # the name of a step that its entry gives none


@frozen
class Standing:
    """What the other jobs of a frame hang on, as job ids.

    steps         each step's job by the step's id
    before_plant  what must be done before it is planted, with the days that must pass after it,
                  the fewest and the most, and what they are for
    after_plant   what is done after planting
    last          with these it stands
    """

    steps: Mapping[str, str]
    before_plant: tuple[tuple[str, tuple[int, int], str], ...] = ()
    after_plant: tuple[str, ...] = ()
    last: tuple[str, ...] = ()


# ---- building -------------------------------------------------------------------------------
def add_building(frame: WorkedFrame, today: date, out: Drafts) -> Standing:
    """Add the steps of building it in their order; none where it stands already."""
    if frame.stands:
        return Standing({})
    steps = steps_of(frame)
    by_id = {step.id: step for step in steps}
    jobs = {step.id: out.add(_building_step(step, frame)) for step in steps}
    for step in steps:
        _in_its_season(step, jobs[step.id], frame, today, out)
    _finished(frame, steps, jobs, today, out)
    for step in steps:
        for first in step.after:
            _put_after(by_id[first], step, jobs, frame, out)
        for first in step.own_after:
            where = step.fact.where if step.fact else None
            because = "your own line says so"
            out.befores.append(Before(jobs[first], jobs[step.id], because=because, own=where))
    standing = _standing(frame, steps, jobs)
    if frame.frame.ready_by is not None:
        by = frame.frame.ready_by.last
        for name in standing.last:
            out.change(name, window=Window(not_after=by, said=f"ready by {shown(by)}"))
    if frame.frame.word != "cover" and frame.frame.ready_by is None:
        _as_it_grows(standing.after_plant, steps, jobs, out)
    return standing


def _building_step(step: FrameStep, frame: WorkedFrame) -> Draft:
    low, high = step.wait_days
    days = f"{low}" if low == high else f"{low} to {high}"
    job = Job(
        step.job,
        f"{frame.frame.name}: {step.says}",
        frame.frame.name,
        BUILD,
        hands=step.step.hands,
        tools=step.step.tools,
        minutes=step.minutes,
        who=who_of(frame.frame, "built by"),
        dont_yet=step.step.not_yet,
        stop_point=step.step.stop,
        alone=step.step.alone,
        wait=f"{days} days for {step.waits_for}" if high else "",
        dangers=tuple(danger.says for danger in step.dangers) or _own_cautions(step),
        place=place_of(frame, step.step.at),
        power=step.step.power,
        weight_kg=_weight_kg(step, frame),
        where=step.fact.where if step.fact else frame.frame.block.where,
    )
    return Draft(job, step.id)


def _weight_kg(step: FrameStep, frame: WorkedFrame) -> float:
    """What the hands of a step lift between them: the box, where lifting is its caution."""
    if not any(danger.kind == LIFTING for danger in step.dangers):
        return 0.0
    weight = box_kg(frame)
    return weight.middle if weight else 0.0


def _own_cautions(step: FrameStep) -> tuple[str, ...]:
    """The usual cautions for a step in the gardener's own words."""
    return cautions(step.says) if step.fact or step.id == "cut" else ()


def _in_its_season(
    step: FrameStep, name: str, frame: WorkedFrame, today: date, out: Drafts
) -> None:
    """Put a step into the time of year it belongs to, such as felling poles in late winter."""
    window = time_of_year(step.step.season, frame.garden) if step.step.season else None
    if window is None or window.not_before is None or window.not_after is None:
        return
    if window.not_after >= today:
        middle = window.not_before + (window.not_after - window.not_before) / 2
        out.change(name, window=Window(said=window.said, wanted=middle + IN_HAND))


def _as_it_grows(
    after_plant: Iterable[str], steps: Sequence[FrameStep], jobs: Mapping[str, str], out: Drafts
) -> None:
    """What is done to plants already there, and all that follows it, waits for their growth."""
    growing = set(after_plant)
    for step in steps:
        name = jobs[step.id]
        if name not in growing and not growing & {jobs[one] for one in step.after}:
            continue
        growing.add(name)
        draft = out.by_id[name]
        if draft.window.wanted is None:
            out.change(name, job=replace(draft.job, whenever="as the plants grow"))


def want_by(steps: Iterable[str], day: date | None, out: Drafts) -> None:
    """Steps that planting does not wait for had better be done by then all the same."""
    for name in steps:
        draft = out.by_id[name]
        if not draft.job.whenever and draft.window == Window():
            out.change(name, window=Window(wanted=day))


def _finished(
    frame: WorkedFrame,
    steps: Sequence[FrameStep],
    jobs: Mapping[str, str],
    today: date,
    out: Drafts,
) -> None:
    """A `finish` line with a day says when it is painted or coated; a day that is over, was."""
    for name, dated in dates_of(frame, steps).items():
        if dated.how == "finish":
            state = DONE if dated.day.last < today else OPEN
            out.change(jobs[name], state=state, pinned=dated.day.day)


def _put_after(
    first: FrameStep, then: FrameStep, jobs: Mapping[str, str], frame: WorkedFrame, out: Drafts
) -> None:
    """Put one step before another, with what must dry or settle between them."""
    late = frame.structure.late if frame.structure else None
    because = late.because if late and late.step == first.id else first.step.not_yet
    out.put(
        [jobs[first.id]],
        [jobs[then.id]],
        wait=first.wait_days,
        waits_for=first.waits_for,
        because=because,
    )


def _standing(frame: WorkedFrame, steps: Sequence[FrameStep], jobs: Mapping[str, str]) -> Standing:
    """Where planting comes in: after the whole frame, or where its kind's own order has it."""
    last = [step.id for step in last_steps(steps)]
    before, after = last, []
    if frame.structure is not None:
        planting = frame.structure.planting
        after = [one for one in planting.before if one in jobs]
        before = [one for one in planting.after if one in jobs]
        if not before and not planting.own_order:
            before = [one for one in last if one not in after]
    waits = tuple(
        (jobs[step.id], step.wait_days, step.waits_for) for step in steps if step.id in before
    )
    return Standing(
        jobs, waits, tuple(jobs[one] for one in after), tuple(jobs[one] for one in last)
    )


def place_of(frame: WorkedFrame, at: str = "there") -> str:
    """Where a step is done, in words."""
    if at != "there":
        return PLACES.get(at, at)
    if frame.bed is not None:
        return f"in {frame.bed.name}"
    if frame.wall is not None:
        return f"at {frame.wall.name}"
    return next((spot.said for spot in frame.frame.spots if spot.said), "")


def who_of(frame: Frame, word: str) -> tuple[str, ...]:
    """The people that a fact of the frame names: built by, picked by."""
    fact = frame.fact(word)
    return tuple(str(name) for name in fact.all("person")) if fact else ()


# ---- taking down ------------------------------------------------------------------------------
def add_taking_down(
    frame: WorkedFrame, after: Sequence[str], ends: Iterable[date | None], today: date, out: Drafts
) -> tuple[str, ...]:
    """Add what takes it down at the end of its season; nothing where it stays.

    after  the jobs that are over by then: building, planting, picking
    ends   the last day of each planting, None where it has none
    """
    window = _down_window(frame, ends)
    if window is None:
        return ()
    added = _down(frame, window, after, out)
    if frame.frame.take_down is None:
        for _, off in spans_on(frame, today)[1:]:
            _down(frame, _off(off), (), out)
    return added


def _down(frame: WorkedFrame, window: Window, after: Sequence[str], out: Drafts) -> tuple[str, ...]:
    """Add the steps of taking it down in their order."""
    steps = [working.step for working in frame.worked.down] if frame.worked else []
    minutes = [working.minutes for working in frame.worked.down] if frame.worked else []
    name, block = frame.frame.name, slug(frame.frame.name)
    dangers = frame.structure.dangers if frame.structure else ()
    drafts = [
        Draft(
            Job(
                f"{block}/{_down_id(step)}",
                f"{name}: {step.do}",
                name,
                TAKE_DOWN,
                hands=step.hands,
                tools=step.tools,
                minutes=spent,
                alone=step.alone,
                dangers=tuple(d.says for d in dangers if {step.id, "down"} & set(d.at)),
                place=place_of(frame),
                where=frame.frame.block.where,
            ),
            step.id,
        )
        for step, spent in zip(steps, minutes, strict=True)
    ] or [Draft(_whole(frame, f"{block}/take-down", "take it down"), "take down")]
    if frame.structure is not None and frame.structure.storage:
        last = drafts[-1]
        drafts[-1] = replace(last, job=replace(last.job, how=frame.structure.storage))
    added = [out.add(replace(draft, window=window)) for draft in drafts]
    out.put(after, added[:1])
    for first, then in pairwise(added):
        out.put([first], [then])
    return tuple(added)


def _down_id(step: Step) -> str:
    """A step's own name; one that has none is called by its words, whatever comes before it."""
    return slug(f"down {short(step.do)}" if _NUMBERED.fullmatch(step.id) else step.id)


def _down_window(frame: WorkedFrame, ends: Iterable[date | None]) -> Window | None:
    """When it comes down: its `take down` date, the end of a cover's days, the end of the crops."""
    if frame.frame.take_down is not None:
        meant = window_of(frame.frame.take_down)
        return replace(meant, said=f"take down {shown(meant.aim)}" if meant.aim else "")
    if frame.frame.on is not None:
        return _off(frame.frame.on.last)
    if frame.lasting or frame.stands or frame.structure is None:
        return None
    known = [end for end in ends if end is not None]
    if not known:
        return Window()
    end = max(known)
    return Window(end, said="the end of its crop", wanted=end + CLEARING_DAYS)


def _off(day: date) -> Window:
    return Window(day, day, day + timedelta(days=7), f"on to {shown(day)}")


def add_putting_on(frame: WorkedFrame, last: Sequence[str], out: Drafts) -> None:
    """A cover that has its days goes on by the first of them."""
    if frame.frame.word != "cover" or frame.frame.on is None:
        return
    start = frame.frame.on.day
    window = Window(None, None, start, f"on from {shown(start)}")
    for name in last:
        if out.by_id[name].window.not_after is None:
            out.change(name, window=window)
    if frame.stands:
        job = _whole(frame, f"{slug(frame.frame.name)}/put-on", "put its lights or cloth on", CARE)
        out.add(Draft(job, "put on", replace(window, aim=start, not_before=start)))


def _whole(frame: WorkedFrame, name: str, does: str, kind: str = TAKE_DOWN) -> Job:
    """A job that is one step of its own."""
    return Job(
        name,
        f"{frame.frame.name}: {does}",
        frame.frame.name,
        kind,
        place=place_of(frame),
        where=frame.frame.block.where,
    )
