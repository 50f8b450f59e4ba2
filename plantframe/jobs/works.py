"""A season's jobs as work to be shared out: what takes hours, who can, when it is wished."""

from __future__ import annotations

import re
from datetime import date, timedelta
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.jobs.days import season_bounds
from plantframe.jobs.halves import AFTERNOON, Half, halves_of, hours_said
from plantframe.jobs.job import (
    BUILD,
    BY_THE_PLANT,
    CARE,
    LINES,
    OPEN,
    OWN,
    SKIPPED,
    TAKE_DOWN,
)
from plantframe.jobs.people import Crew, crew_of
from plantframe.jobs.sharing import Placed, Work, share

if TYPE_CHECKING:
    from collections.abc import Collection, Mapping

    from plantframe.jobs.job import Draft, Job
    from plantframe.jobs.timing import Days, Network
    from plantframe.plan.things import Garden

# What takes hours of a half-day; sowing, leading and picking are walks of ten minutes.
BY_THE_HOUR: Final = frozenset({BUILD, TAKE_DOWN, CARE, OWN, LINES})
USUAL_MINUTES: Final = 30.0  # of a job that nobody has put a time to (common practice, no source)
BEYOND: Final = timedelta(days=120)  # what cannot be done in the season is put after it
# Ground is open for posts from about ten weeks before the last frost to six after the first
# (common practice, no source).
THAWED: Final = timedelta(days=70)
FROZEN: Final = timedelta(days=42)
INDOORS: Final = frozenset({"at the bench", "at the yard"})
_UNDER_A_ROOF = re.compile(
    r"\b(indoors|inside|under cover|under glass|order|buy|book|ring|phone|ask|write|read|pay|"
    r"sharpen|mend|count|shed|kitchen|cellar|garage)\b",
    re.IGNORECASE,
)


@frozen
class Sharing:
    """Work shared out.

    works   each job's work by its id; `placed` where it comes
    halves  the half-days there are, and `crew` who is in them
    said    the plan gives the hours: they are the gardener's own
    """

    works: Mapping[str, Work]
    placed: Mapping[str, Placed]
    halves: tuple[Half, ...]
    crew: Crew
    said: bool

    def day(self, name: str) -> date:
        """The day a job is put on."""
        return self.placed[name].day

    @property
    def afternoons(self) -> dict[str, int]:
        """1 for each job that begins in an afternoon."""
        return {
            name: int(placed.parts[0].half.name == AFTERNOON)
            for name, placed in self.placed.items()
            if placed.parts
        }


def shared_out(
    network: Network, last: Days, wished: Days, garden: Garden, wet: Collection[date] = ()
) -> Sharing:
    """Share the open jobs of a season out over its half-days.

    last    the last day of each; `wished` the day it had best be done
    wet     days on which it rains: what is outdoors slides
    """
    crew = crew_of(garden)
    end = max(
        season_bounds(garden)[1],
        *(day for days in (last, wished) for day in days.values() if day is not None),
        network.floor,
    )
    halves = halves_of(garden, crew, network.floor, end + BEYOND, wet)
    said = hours_said(garden)
    follow, runs = _to_follow(network), _unbroken(network)
    works: dict[str, Work] = {}
    set_days: dict[str, date] = {}
    into = network.into()
    for name in network.names:
        draft = network.drafts[name]
        if draft.state not in {OPEN, SKIPPED}:
            if draft.pinned is not None:
                set_days[name] = draft.pinned
            continue
        after = tuple((one.first, network.wait(one).days) for one in into[name])
        job = draft.job
        wish, latest = wished[name], last[name]
        if draft.state == OPEN and said and wish is None and _any_time(draft):
            wish, latest = _open_ground(garden, network.floor)
        outdoors = is_outdoors(job)
        if draft.state == OPEN and outdoors:
            wish = _dry(wish, wet)
        works[name] = Work(
            name,
            minutes_of(job) if wish is not None and takes_hours(draft) else 0.0,
            max(job.hands, 1),
            crew.able(job),
            date.min if draft.state == SKIPPED else network.in_hand(name),
            latest,
            wish,
            set_day=_has_its_day(draft),
            moved=draft.pinned is not None,
            outdoors=outdoors,
            weight_kg=job.weight_kg,
            after=after,
            alone=bool(job.alone),
            soon=follow[name],
            unbroken=runs[name],
            led_by=crew.leading(job),
        )
    placed = share(list(works.values()), halves, crew, set_days)
    return Sharing(works, placed, halves, crew, said)


def takes_hours(draft: Draft) -> bool:
    """Whether a job takes hours of a half-day: no round, and nothing an event calls for."""
    job = draft.job
    return (
        draft.state == OPEN
        and job.kind in BY_THE_HOUR
        and job.every_days is None
        and not job.whenever
    )


def minutes_of(job: Job) -> float:
    """The minutes reckoned with: the middle of the range."""
    return sum(job.minutes) / 2 if job.minutes else USUAL_MINUTES


def is_outdoors(job: Job) -> bool:
    """Whether rain stops it."""
    if job.place in INDOORS or job.kind == LINES:
        return False
    return not _UNDER_A_ROOF.search(job.does if job.kind in BY_THE_PLANT | {OWN} else "")


def _any_time(draft: Draft) -> bool:
    """Whether it is building that nothing sets a day for: it goes where hours are left over."""
    return draft.job.kind == BUILD and not draft.job.whenever


def _has_its_day(draft: Draft) -> bool:
    return (
        draft.pinned is not None
        or draft.window.aim is not None
        or draft.job.every_days is not None
        or draft.job.kind in BY_THE_PLANT
    )


def _open_ground(garden: Garden, floor: date) -> tuple[date | None, date | None]:
    """From when to when posts go into the ground; None and None where that is over."""
    last, first = garden.frost_last, garden.frost_first
    if last is None or first is None:
        return floor, season_bounds(garden)[1]
    opens, shuts = last.day - THAWED, first.day + FROZEN
    return (max(floor, opens), shuts) if floor <= shuts else (None, None)


def _dry(day: date | None, wet: Collection[date]) -> date | None:
    while day is not None and day in wet:
        day += timedelta(days=1)
    return day


def _to_follow(network: Network) -> dict[str, float]:
    """The longest chain of minutes that hangs on each job, its own among them."""
    out_of = network.out_of()
    found: dict[str, float] = {}
    for name in reversed(network.names):
        own = minutes_of(network.drafts[name].job) if takes_hours(network.drafts[name]) else 0.0
        rest = (
            found[one.then] + network.wait(one).total_seconds() / 60 / 4 for one in out_of[name]
        )
        found[name] = own + max(rest, default=0.0)
    return found


def _unbroken(network: Network) -> dict[str, float]:
    """Minutes from the beginning of each step of a frame to the next good place to stop."""
    out_of = network.out_of()
    found: dict[str, float] = {}
    for name in reversed(network.names):
        draft = network.drafts[name]
        if not takes_hours(draft):
            found[name] = 0.0
            continue
        found[name] = minutes_of(draft.job)
        if not draft.job.stop_point:
            rest = (
                found[one.then]
                for one in out_of[name]
                if not network.wait(one) and network.drafts[one.then].job.block == draft.job.block
            )
            found[name] += max(rest, default=0.0)
    return found
