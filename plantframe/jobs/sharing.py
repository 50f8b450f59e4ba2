"""Work shared out: each job a half-day, a place in it, and the hands that do it.

Jobs are taken one by one, those wanted soonest first and none before what it comes after; each goes
to the first half-day from its wished day on that has room. What finds no room by its last day is
tried again with all that leads up to it begun sooner. Days are kept where hours are not enough:
work then overruns, and that is told.
"""

from __future__ import annotations

import heapq
from bisect import bisect_left
from dataclasses import dataclass, field
from datetime import date, timedelta
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

    from plantframe.jobs.halves import Half
    from plantframe.jobs.people import Crew

EPSILON: Final = 1e-6
LEAST_MINUTES: Final = 30.0  # of a long job that is worth beginning (common practice, no source)
SOONER_DAYS: Final = (7, 14, 28, 56, 112, 400)  # how much sooner what finds no room is begun
FAR: Final = date.max


@frozen
class Work:
    """A job as far as sharing it out goes.

    minutes   for all its hands together; 0 for what takes none of the hours for building
    hands     how many do it together; `able` who can; `weight_kg` what they lift between them
    ready     the first day it may be done on; `last` the last one, None where none is set
    wish      the day it is put on where there is room, None for as soon as there is
    set_day   it stays on its wished day, or comes as soon after as what goes before it allows
    moved     it stays on its wished day whatever goes before it: the gardener put it there
    after     what goes before it, with the days between
    alone     it can be done by one person fewer than `hands`, if need be
    soon      how much work hangs on it, where several might come next
    unbroken  minutes from its beginning to the next place where one may well stop
    led_by    of whom one must be at it; () where anybody able will do
    """

    id: str
    minutes: float
    hands: int
    able: tuple[str, ...]
    ready: date
    last: date | None = None
    wish: date | None = None
    set_day: bool = False
    moved: bool = False
    outdoors: bool = True
    weight_kg: float = 0.0
    after: tuple[tuple[str, int], ...] = ()
    alone: bool = False
    soon: float = 0.0
    unbroken: float = 0.0
    led_by: tuple[str, ...] = ()


@frozen
class Part:
    """Some minutes of a job in one half-day, counted from its beginning, and who is at it."""

    half: Half
    start: float
    minutes: float
    who: tuple[str, ...]

    @property
    def end(self) -> float:
        """Where in the half-day it is over."""
        return self.start + self.minutes


@frozen
class Placed:
    """Where a job comes.

    parts     its half-days, most often one; none where it takes no hours or overruns them
    short     fewer hands do it than it wants
    overruns  the half-days had no room for it
    """

    day: date
    over: date
    parts: tuple[Part, ...] = ()
    short: bool = False
    overruns: bool = False


Shared = dict[str, Placed]


def share(
    works: Sequence[Work], halves: Sequence[Half], crew: Crew, set_days: Mapping[str, date]
) -> Shared:
    """Give every job its day, half-day and hands.

    works     in an order that keeps to what goes before what
    set_days  of jobs that are not shared out: the day they are done, for what comes after them
    """
    by_id = {work.id: work for work in works}
    best = _Sharing(works, halves, crew, set_days).run()
    sooner: dict[str, int] = {}
    for days in SOONER_DAYS:
        late = [name for name, placed in best.items() if _avoidable(placed, by_id[name])]
        if not late:
            break
        for name in _behind(late, by_id):
            sooner[name] = days
        found = _Sharing(works, halves, crew, set_days, sooner).run()
        if _overrun(found, by_id) <= _overrun(best, by_id):
            best = found
    return best


def _avoidable(placed: Placed, work: Work) -> bool:
    return placed.overruns and not work.set_day and (work.last is None or work.ready <= work.last)


def _overrun(shared: Shared, works: Mapping[str, Work]) -> float:
    return sum(
        works[name].minutes * works[name].hands
        for name, placed in shared.items()
        if placed.overruns
    )


def _behind(names: Sequence[str], works: Mapping[str, Work]) -> set[str]:
    """These jobs and all that goes before them."""
    seen: set[str] = set()
    waiting = list(names)
    while waiting:
        name = waiting.pop()
        if name in seen or name not in works:
            continue
        seen.add(name)
        waiting += [first for first, _ in works[name].after]
    return seen


@dataclass
class _Sharing:
    """One way through the jobs."""

    works: Sequence[Work]
    halves: Sequence[Half]
    crew: Crew
    set_days: Mapping[str, date]
    sooner: Mapping[str, int] = field(default_factory=dict)

    def __post_init__(self) -> None:
        self.by_id = {work.id: work for work in self.works}
        self.days = [half.day for half in self.halves]
        self.day_set = set(self.days)
        self.longest = max((half.minutes for half in self.halves), default=0.0)
        self.longest_light = max((half.light for half in self.halves), default=0.0)
        self.busy: list[dict[str, list[tuple[float, float]]]] = [{} for _ in self.halves]
        self.spent: dict[str, float] = {}
        self.placed: Shared = {}
        self.over: dict[str, tuple[int, float]] = {}  # the half-day and minute a job is over

    def run(self) -> Shared:
        """Place all, the soonest wanted first."""
        waiting = {
            work.id: sum(first in self.by_id for first, _ in work.after) for work in self.works
        }
        then: dict[str, list[str]] = {}
        for work in self.works:
            for first, _ in work.after:
                then.setdefault(first, []).append(work.id)
        turn = {work.id: place for place, work in enumerate(self.works)}
        heap = [(self._key(work), turn[work.id]) for work in self.works if not waiting[work.id]]
        heapq.heapify(heap)
        while heap:
            _, place = heapq.heappop(heap)
            work = self.works[place]
            self._place(work)
            for name in then.get(work.id, ()):
                waiting[name] -= 1
                if not waiting[name]:
                    heapq.heappush(heap, (self._key(self.by_id[name]), turn[name]))
        return self.placed

    def _key(self, work: Work) -> tuple[int, int, float]:
        last, wish = work.last or FAR, self._wish(work) or FAR
        return last.toordinal(), wish.toordinal(), -work.soon

    def _wish(self, work: Work) -> date | None:
        if work.wish is None or work.set_day:
            return work.wish
        return work.wish - timedelta(days=self.sooner.get(work.id, 0))

    # -- one job --------------------------------------------------------------------------
    def _place(self, work: Work) -> None:
        first, after = self._after(work)
        placed = self._put(work, first, after)
        self.placed[work.id] = placed
        for part in placed.parts:
            for name in part.who:
                self.spent[name] = self.spent.get(name, 0.0) + part.minutes
        if not placed.parts and self.halves and self.halves[after[0]].day == placed.day:
            # what takes no hours still stands between what it follows and what follows it
            self.over[work.id] = after

    def _put(self, work: Work, first: date, after: tuple[int, float]) -> Placed:
        wish = self._wish(work)
        if work.set_day and wish is not None:
            day = wish if work.moved else max(first, wish)
            placed = self._try(work, [(day, day)], after) if work.minutes else None
            has_hours = bool(work.minutes) and day in self.day_set
            return placed or Placed(day, day, overruns=has_hours)
        aim = max(first, wish) if wish is not None else first
        if not work.minutes:
            return Placed(aim, aim)
        last = work.last if work.last is not None and work.last >= first else None
        aim = aim if last is None else min(aim, last)
        found = self._try(work, [(aim, last), *_before(aim, first)], after)
        return found or self._overrun(work, first, last or aim)

    def _after(self, work: Work) -> tuple[date, tuple[int, float]]:
        """The first day for a job; the half-day and minute when what it follows is over."""
        day, after = work.ready, (0, 0.0)
        for name, days in work.after:
            placed = self.placed.get(name)
            over = placed.over if placed else self.set_days.get(name)
            if over is not None:
                day = max(day, over + timedelta(days=days))
                after = max(after, self.over.get(name, after)) if not days else after
        return day, after

    def _try(
        self, work: Work, spans: Sequence[tuple[date, date | None]], after: tuple[int, float]
    ) -> Placed | None:
        """Room in the first of some spans that has it, with all its hands rather than fewer."""
        ways = [True] if len(work.able) >= work.hands else []
        ways += [False] if _may_be_short(work) else []
        run = work.unbroken if work.minutes < work.unbroken else 0.0
        for full in ways:
            for unbroken in (run, 0.0) if run else (0.0,):
                for first, last in spans:
                    found = self._fit(work, first, last, after, full=full, unbroken=unbroken)
                    if found is not None:
                        return found
        return None

    def _fit(
        self,
        work: Work,
        first: date,
        last: date | None,
        after: tuple[int, float],
        *,
        full: bool,
        unbroken: float,
    ) -> Placed | None:
        """The first room for a job between two days; None where there is none.

        unbroken   minutes from its beginning that the half-day shall have left
        """
        hands = work.hands if full else max(min(len(work.able), work.hands - 1), 1)
        minutes = work.minutes if full else work.minutes * work.hands / hands
        parts: list[Part] = []
        left = minutes
        for place in self._places(first, last, after[0]):
            half = self.halves[place]
            if half.wet and work.outdoors:
                continue
            room = half.light if work.outdoors else half.minutes
            begin = after[1] if place == after[0] else 0.0
            if begin + unbroken > room + EPSILON and unbroken <= room:
                continue
            whole = minutes <= self._longest(outdoors=work.outdoors)
            part = self._room(place, work, hands, begin, left, room, whole=whole)
            if part is None:
                continue
            parts.append(part)
            left -= part.minutes
            if left <= 0:
                return self._take(work, parts, place, short=not full)
        return None

    def _take(self, work: Work, parts: list[Part], place: int, *, short: bool) -> Placed:
        index = place
        for part in reversed(parts):
            while self.halves[index] is not part.half:
                index -= 1
            for name in part.who:
                spans = self.busy[index].setdefault(name, [])
                spans.insert(bisect_left(spans, (part.start, part.end)), (part.start, part.end))
        self.over[work.id] = place, parts[-1].end
        return Placed(parts[0].half.day, parts[-1].half.day, tuple(parts), short)

    def _longest(self, *, outdoors: bool) -> float:
        """The longest half-day: a job that fits into none is done in several."""
        return self.longest_light if outdoors else self.longest

    def _places(self, first: date, last: date | None, after: int) -> Iterator[int]:
        place = max(bisect_left(self.days, first), after)
        while place < len(self.halves) and (last is None or self.days[place] <= last):
            yield place
            place += 1

    def _room(
        self,
        place: int,
        work: Work,
        hands: int,
        begin: float,
        minutes: float,
        room: float,
        *,
        whole: bool,
    ) -> Part | None:
        """The first minutes of a half-day in which enough hands are free together.

        whole   all of it in one go; else as much as there is room for, if that is worth while
        """
        half, busy = self.halves[place], self.busy[place]
        able = [name for name in half.people if name in work.able]
        if len(able) < hands or begin >= room:
            return None
        starts = sorted(
            {begin, *(end for name in able for _, end in busy.get(name, ()) if end > begin)}
        )
        least = minutes if whole else min(minutes, LEAST_MINUTES)
        for start in starts:
            if start + least > room + EPSILON:
                return None
            lengths = {name: _free(busy.get(name, ()), start, room) for name in able}
            free = [name for name in able if lengths[name] >= least - EPSILON]
            if work.led_by and not set(work.led_by) & set(free):
                continue
            who = self.crew.lifting(self._chosen(free, work, place), hands, work.weight_kg)
            if who:
                take = minutes if whole else min(minutes, *(lengths[name] for name in who))
                return Part(half, start, take, who)
        return None

    def _chosen(self, names: list[str], work: Work, place: int) -> list[str]:
        """The names in the order they are asked: who is at it already, then who has done least."""
        before = {
            name
            for first, _ in work.after
            if self.over.get(first, (-1, 0.0))[0] == place and self.placed[first].parts
            for name in self.placed[first].parts[-1].who
        }
        turn = {name: at for at, name in enumerate(names)}
        return sorted(
            names,
            key=lambda name: (
                bool(work.led_by) and name not in work.led_by,
                name not in before,
                self.spent.get(name, 0.0),
                turn[name],
            ),
        )

    def _overrun(self, work: Work, first: date, last: date) -> Placed:
        """No room: on the last day with hours that it may fall on, beyond them.

        What is done outdoors does not stay on a day of rain: it takes a dry day without hours.
        """
        place = bisect_left(self.days, last + timedelta(days=1)) - 1
        while place >= 0 and self.halves[place].wet and work.outdoors:
            place -= 1
        day = self.days[place] if place >= 0 and self.days[place] >= first else first
        wet = {half.day for half in self.halves if half.wet} if work.outdoors else set()
        while day in wet:
            day += timedelta(days=1)
        return Placed(day, day, overruns=True)


def _may_be_short(work: Work) -> bool:
    """One person alone gets the one-person way; so do those of whom fewer are able."""
    return work.hands > 1 and (work.alone or len(work.able) < work.hands)


def _before(aim: date, first: date) -> Iterator[tuple[date, date | None]]:
    """Ever longer spans before a day, back to the first: what has no room later comes sooner."""
    for days in SOONER_DAYS:
        if aim <= first:
            return
        start = max(first, aim - timedelta(days=min(days, (aim - first).days)))
        yield start, aim
        if start == first:
            return


def _free(spans: Sequence[tuple[float, float]], start: float, room: float) -> float:
    """How long somebody is free from a minute on."""
    for begin, end in spans:
        if begin <= start < end:
            return 0.0
        if begin > start:
            return min(begin, room) - start
    return room - start
