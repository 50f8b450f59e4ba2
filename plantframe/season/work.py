"""The work on one frame: its steps, what the gardener has said of them, and what contradicts them.

Only direct questions of order are answered here; the graph of all jobs is the jobs' own.
"""

from __future__ import annotations

import re
from datetime import timedelta
from types import MappingProxyType
from typing import TYPE_CHECKING, Final

from plantframe.catalogue.entries import Step
from plantframe.frozen import frozen, replace
from plantframe.language.slots import When
from plantframe.language.values import Measure, Number
from plantframe.plan.dates import DateSlip, Season, resolve
from plantframe.season.likeness import Called, best, meant, short, slug
from plantframe.season.said import said_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping, Sequence

    from plantframe.catalogue.entries import Danger
    from plantframe.language.reader import Fact
    from plantframe.plan.dates import Dated
    from plantframe.plan.things import Frame, Garden, Mark
    from plantframe.season.frames import WorkedFrame

DEEP_M: Final = 0.30  # where buried lines may be met (common practice, no source)
CLOSE_M: Final = 3.0  # from the house or the verge that still counts as beside it (likewise)

# Words of a place where pipes and cables come in from the road (common practice, no source).
_BY_THE_ROAD = re.compile(
    r"\b(house|porch|door|verge|road|roadside|street|lane|drive|driveway|pavement|kerb|gate)\b",
    re.IGNORECASE,
)
_DIGS = re.compile(
    r"\b(dig|digs|hole|holes|drive|post|posts|pole|poles|iron bar|footings?)\b", re.IGNORECASE
)


@frozen
class FrameStep:
    """A step of building a frame.

    id         the step's short name in its entry, or one made of the gardener's words
    job        its address in the whole plan: bean-net/bar
    after      ids of the steps its kind puts before it
    own_after  ids of the steps the gardener's own `step … after …` lines put before it
    minutes    from and to, None where nobody says
    dangers    the cautions that stand with it
    fact       the gardener's own line, where there is one
    """

    id: str
    job: str
    step: Step
    after: tuple[str, ...]
    own_after: tuple[str, ...]
    minutes: tuple[float, float] | None
    dangers: tuple[Danger, ...] = ()
    fact: Fact | None = None

    @property
    def says(self) -> str:
        """What is done."""
        return self.step.do

    @property
    def short(self) -> str:
        """Its first clause."""
        return short(self.step.do)

    @property
    def wait_days(self) -> tuple[int, int]:
        """The fewest and the most days that must pass after it."""
        if self.step.wait is None:
            return 0, 0
        days = self.step.wait.days
        low = days.usual if days.low is None else days.low
        high = days.usual if days.high is None else days.high
        return round(low), round(high)

    @property
    def waits_for(self) -> str:
        """What those days are for: the feet to air."""
        return self.step.wait.for_ if self.step.wait else ""


@frozen
class StepDate:
    """When a step is, or was, done.

    how   done, moved, or finish where a `finish` line gives the date
    """

    day: Dated
    how: str
    fact: Fact


@frozen
class Broken:
    """Two dates against the order of work: the earlier step is dated after the later one."""

    earlier: FrameStep
    earlier_day: Dated
    later: FrameStep
    later_day: Dated
    because: str


@frozen
class TooSoon:
    """A step dated before what must dry or settle has had its days."""

    first: FrameStep
    first_day: Dated
    then: FrameStep
    then_day: Dated


@frozen
class Marked:
    """What the marks of a frame say of its steps, by the step's id.

    taken     each mark with the step it was taken for
    needless  marks of steps that this frame does not want
    unknown   marks that mean no step of building it
    """

    done: Mapping[str, Mark]
    moved: Mapping[str, Mark]
    skipped: Mapping[str, Mark]
    taken: tuple[tuple[Mark, FrameStep], ...]
    needless: tuple[Mark, ...]
    unknown: tuple[Mark, ...]


# ---- the steps ------------------------------------------------------------------------------
def steps_of(frame: WorkedFrame) -> tuple[FrameStep, ...]:
    """The steps of building it, those of its kind first, then the gardener's own.

    A frame of unknown kind has one: put it up.
    """
    block = slug(frame.frame.name)
    dangers = frame.structure.dangers if frame.structure else ()
    of_kind = [
        FrameStep(
            working.id,
            f"{block}/{slug(working.id)}",
            working,
            working.after,
            (),
            minutes,
            tuple(danger for danger in dangers if working.id in danger.at),
        )
        for working, minutes in _working(frame)
    ]
    steps = _with_own(of_kind, frame.frame, block)
    return tuple(steps) or (_put_up(frame.frame, block),)


def _working(frame: WorkedFrame) -> Iterator[tuple[Step, tuple[float, float] | None]]:
    """The kind's steps with their minutes; all that are always wanted where its figures fail."""
    if frame.worked is not None:
        yield from ((working.step, working.minutes) for working in frame.steps)
    elif frame.structure is not None:
        always = {step.id for step in frame.structure.steps if not step.when}
        for step in frame.structure.steps:
            if step.id in always:
                after = tuple(one for one in step.after if one in always)
                yield replace(step, after=after), None


def _with_own(steps: list[FrameStep], frame: Frame, block: str) -> list[FrameStep]:
    """The steps, and those of the gardener's own lines; some lines only put steps in order."""
    lines = [fact for fact in frame.facts.get("step", ()) if str(fact.get("job") or "").strip()]
    out = list(steps)
    if pieces := _pieces(frame, lines):
        out.append(_own("cut", pieces, block))
    cut = tuple(step.id for step in out if step.id == "cut" and not steps)
    meant: list[int] = []
    for fact in lines:
        job = str(fact.get("job")).strip()
        known = best(job, _called(steps)) if steps and fact.get("after") else None
        if known is None:
            out.append(_own(_free(slug(job), out), job, block, after=cut, fact=fact))
            known = len(out) - 1
        meant.append(known)
    for at, fact in zip(meant, lines, strict=True):
        others = [step for place, step in enumerate(out) if place != at]
        before = best(str(fact.get("after") or ""), _called(others))
        if before is not None:
            own_after = (*out[at].own_after, others[before].id)
            out[at] = replace(out[at], own_after=own_after, fact=fact)
    if pieces and not lines and not steps:
        out.append(_own("put-together", "put it together and set it up", block, after=cut))
    return out


def _pieces(frame: Frame, lines: list[Fact]) -> str:
    """Words for cutting the pieces of the gardener's own design, "" where a step says it."""
    lines_of_it = frame.facts.get("piece", ())
    pieces = [re.sub(r"^pieces?\b\s*", "", fact.text, flags=re.IGNORECASE) for fact in lines_of_it]
    said = any(re.search(r"\b(cut|saw)", str(fact.get("job")).lower()) for fact in lines)
    return f"cut the pieces: {'; '.join(pieces)}" if pieces and not said else ""


def _own(
    name: str, does: str, block: str, after: tuple[str, ...] = (), fact: Fact | None = None
) -> FrameStep:
    """A step in the gardener's own words."""
    hours, hands = (fact.get("hours"), fact.get("hands")) if fact else (None, None)
    minutes = (hours.value * 60, hours.value * 60) if isinstance(hours, Measure) else None
    people = int(hands.value) if isinstance(hands, Number) else 1
    step = Step(name, does, after=after, hands=max(people, 1))
    return FrameStep(name, f"{block}/{name}", step, after, (), minutes, fact=fact)


def _put_up(frame: Frame, block: str) -> FrameStep:
    does = "put it up" if frame.own_design else "put it up (its steps are known once its kind is)"
    return _own("put-up", does, block)


def _free(name: str, steps: Iterable[FrameStep]) -> str:
    """A name that no step has yet."""
    taken = {step.id for step in steps}
    names = (name or "step", *(f"{name or 'step'}-{count}" for count in range(2, 1000)))
    return next(one for one in names if one not in taken)


def _called(steps: Iterable[FrameStep]) -> list[Called]:
    return [Called(step.id, step.says) for step in steps]


def before(steps: Iterable[FrameStep]) -> dict[str, frozenset[str]]:
    """For each step all that its kind or the gardener puts before it, however far back."""
    direct = {step.id: (*step.after, *step.own_after) for step in steps}
    found: dict[str, frozenset[str]] = {}
    for name, first in direct.items():
        seen: set[str] = set()
        waiting = list(first)
        while waiting:
            one = waiting.pop()
            if one in direct and one not in seen:
                seen.add(one)
                waiting += direct[one]
        found[name] = frozenset(seen)
    return found


def last_steps(steps: Sequence[FrameStep]) -> tuple[FrameStep, ...]:
    """The steps nothing else waits for: with them the frame stands."""
    waited_for = {one for step in steps for one in (*step.after, *step.own_after)}
    return tuple(step for step in steps if step.id not in waited_for)


# ---- what the gardener says of them -----------------------------------------------------------
def match_mark(mark: Mark, steps: Sequence[FrameStep]) -> FrameStep | None:
    """The step that a mark's words mean, of several the last; None where none comes near."""
    found = best(mark.job, _called(steps))
    return None if found is None else steps[found]


def marked(frame: WorkedFrame, steps: Sequence[FrameStep] | None = None) -> Marked:
    """Which steps are done, moved and skipped. A skip without a reason does not count."""
    steps = steps_of(frame) if steps is None else steps
    by_kind: dict[str, dict[str, Mark]] = {"done": {}, "move": {}, "skip": {}}
    taken: list[tuple[Mark, FrameStep]] = []
    needless: list[Mark] = []
    unknown: list[Mark] = []
    wanted = {step.id for step in steps}
    others = [
        Called(step.id, step.do)
        for step in (frame.structure.steps if frame.structure else ())
        if step.id not in wanted
    ]
    for mark in frame.frame.marks:
        means = [steps[at] for at in meant(mark.job, _called(steps))]
        if not means:
            (unknown if best(mark.job, others) is None else needless).append(mark)
        for step in means:
            taken.append((mark, step))
            if mark.kind != "skip" or mark.because:
                by_kind[mark.kind].setdefault(step.id, mark)
    done, moved, skipped = (MappingProxyType(by_kind[kind]) for kind in ("done", "move", "skip"))
    return Marked(done, moved, skipped, tuple(taken), tuple(needless), tuple(unknown))


def dates_of(frame: WorkedFrame, steps: Sequence[FrameStep] | None = None) -> dict[str, StepDate]:
    """The dates the plan itself gives to steps, by the step's id."""
    steps = steps_of(frame) if steps is None else steps
    marks = marked(frame, steps)
    found: dict[str, StepDate] = {}
    for how, by_step in (("done", marks.done), ("moved", marks.moved)):
        for name, mark in by_step.items():
            if mark.day is not None:
                found.setdefault(name, StepDate(mark.day, how, mark.fact))
    finish = frame.frame.fact("finish")
    day = day_in(finish, "date", frame.garden) if finish else None
    if finish is not None and day is not None:
        for step in steps:
            if step.step.when.startswith("said.finish") and step.id not in marks.skipped:
                found.setdefault(step.id, StepDate(day, "finish", finish))
                break
    return found


def day_in(fact: Fact, slot: str, garden: Garden) -> Dated | None:
    """The date in a slot of a fact that the plan keeps as typed, None where there is none."""
    when = fact.get(slot)
    if not isinstance(when, When):
        return None
    last, first = garden.frost_last, garden.frost_first
    season = Season(
        garden.seasons,
        garden.southern,
        last.day if last else None,
        first.day if first else None,
        garden.frost_none,
    )
    try:
        return resolve(when, season)
    except DateSlip:
        return None  # said where the plan was built


def frame_ready(frame: WorkedFrame) -> Dated | None:
    """The day the plan itself says it stands by: its last step's date, else `ready by`."""
    steps = steps_of(frame)
    dates = dates_of(frame, steps)
    last = [dates[step.id].day for step in last_steps(steps) if step.id in dates]
    return max(last, key=lambda dated: dated.last) if last else frame.frame.ready_by


# ---- what contradicts the order ---------------------------------------------------------------
def order_broken(frame: WorkedFrame) -> tuple[Broken, ...]:
    """Pairs of dated steps in the wrong order, each with the reason for the order."""
    steps = steps_of(frame)
    by_id = {step.id: step for step in steps}
    dates = dates_of(frame, steps)
    skipped = marked(frame, steps).skipped
    earlier_than = before(steps)
    return tuple(
        Broken(
            by_id[early],
            dates[early].day,
            later,
            dates[later.id].day,
            _why(frame, by_id[early], later),
        )
        for later in steps
        if later.id in dates and later.id not in skipped
        for early in by_id
        if early in earlier_than[later.id] and early in dates and early not in skipped
        if _surely_after(dates[early].day, dates[later.id].day)
    )


def too_soon(frame: WorkedFrame) -> tuple[TooSoon, ...]:
    """Dated steps that leave what goes before them less than the shortest days it must dry."""
    steps = steps_of(frame)
    by_id = {step.id: step for step in steps}
    dates = dates_of(frame, steps)
    earlier_than = before(steps)
    found = []
    for step in steps:
        for one in earlier_than[step.id]:
            fewest, _ = by_id[one].wait_days
            if not fewest or one not in dates or step.id not in dates:
                continue
            first, then = dates[one].day, dates[step.id].day
            room = (then.last - first.day).days + then.give + first.give
            if 0 <= room < fewest:
                found.append(TooSoon(by_id[one], first, step, then))
    return tuple(found)


def _surely_after(early: Dated, later: Dated) -> bool:
    """Whether the first date is after the second, however either is meant."""
    return (early.day - later.last).days > early.give + later.give


def _why(frame: WorkedFrame, early: FrameStep, later: FrameStep) -> str:
    """Why the one goes before the other, as the kind's entry says it."""
    structure = frame.structure
    if structure is not None and structure.late.step == early.id and structure.late.because:
        return structure.late.because
    return early.step.not_yet or f"“{early.short}” comes before “{later.short}”"


# ---- digging ----------------------------------------------------------------------------------
def days_to_go(frame: WorkedFrame, begun: Sequence[FrameStep]) -> timedelta:
    """The days that must pass from some steps of building to the last, for drying and settling.

    Where the plan says by when it is to be ready, what the last step waits for comes after that.
    """
    steps = steps_of(frame)
    followers: dict[str, list[FrameStep]] = {step.id: [] for step in steps}
    for step in steps:
        for first in (*step.after, *step.own_after):
            followers.setdefault(first, []).append(step)
    found: dict[str, int] = {}

    def days(step: FrameStep, seen: frozenset[str]) -> int:
        if step.id in seen:
            return 0  # a circle of the gardener's own lines is told elsewhere
        if step.id not in found:
            then = followers.get(step.id, [])
            own = step.wait_days[1] if then or frame.frame.ready_by is None else 0
            rest = max((days(one, seen | {step.id}) for one in then), default=0)
            found[step.id] = own + rest
        return found[step.id]

    return timedelta(days=max((days(step, frozenset()) for step in begun), default=0))


def digging_steps(frame: WorkedFrame) -> tuple[FrameStep, ...]:
    """The steps that go deeper than 30 cm, where pipes and cables may lie."""
    if frame.structure is None:
        down = said_of(frame.frame, frame.garden).get("posts.down")
        if not isinstance(down, float) or down <= DEEP_M:
            return ()
        return tuple(step for step in steps_of(frame) if _DIGS.search(step.says))
    if frame.down_m is not None and frame.down_m <= DEEP_M:
        return ()
    return tuple(
        step
        for step in steps_of(frame)
        if any(danger.kind == "services" for danger in step.dangers) or _own_digging(step)
    )


def _own_digging(step: FrameStep) -> bool:
    """Whether it is the gardener's own line and speaks of digging."""
    return step.fact is not None and not step.dangers and bool(_DIGS.search(step.says))


def by_house_or_verge(frame: WorkedFrame) -> bool | None:
    """Whether it stands where services come in: at the house or a road; None where nobody says."""
    spots = (*frame.frame.spots, *(frame.bed.spots if frame.bed else ()))
    wall = {frame.wall.name} if frame.wall else set()
    told = [
        spot.distance_m is None or spot.distance_m <= CLOSE_M
        for spot in spots
        if spot.thing in wall or _BY_THE_ROAD.search(spot.said)
    ]
    if told:
        return any(told)
    return True if frame.frame.word == "fence" and frame.lasting else None
