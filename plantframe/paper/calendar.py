"""The season's jobs as a calendar file (RFC 5545) that any calendar program takes in.

Each job is one all-day event, each round one that repeats. An event keeps its UID as long as its
job keeps its name, and its number grows with the day it is written on, so that a program that has
taken an earlier file in mends what it has and doubles nothing. Nothing here reads a clock.
"""

from __future__ import annotations

import re
from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.jobs.job import BUILD, CARE, LINES, OWN, PLANT, SOW
from plantframe.season.likeness import short, slug
from plantframe.season.units import day as shown
from plantframe.season.units import listed

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from icalendar import Event as Component

    from plantframe.jobs.job import Job
    from plantframe.jobs.listing import Jobs
    from plantframe.plan.things import Plan

PRODUCT: Final = "-//plantframe//season plan//EN"
EVENING: Final = timedelta(hours=6)  # the alarm of a last day goes off at six the evening before
FIRST_NUMBER: Final = date(2000, 1, 1)  # SEQUENCE counts days from here
# RFC 5545, 3.1: a content line holds no control character but the tab.
_CONTROL = re.compile(r"[\x00-\x08\x0b-\x1f\x7f-\x9f\ud800-\udfff]")


@frozen
class Event:
    """What a job is in a calendar.

    every_days   of a round: it comes again after so many days, `until` then
    alarm        how long after the day's beginning (before it, if negative) the alarm goes off
    dropped      it is not done this season; programs take it out
    """

    uid: str
    day: date
    title: str
    text: str
    place: str
    kind: str
    every_days: int | None = None
    until: date | None = None
    alarm: timedelta | None = None
    alarm_says: str = ""
    dropped: bool = False


def events_of(plan: Plan, jobs: Jobs) -> tuple[Event, ...]:
    """An event for each job that has a day."""
    name = slug(plan.garden.name or plan.name) or "garden"
    biting = _biting(jobs.jobs)
    found = []
    over = {job.id for job in (*jobs.skipped, *jobs.done)}
    for job in (*jobs.jobs, *jobs.skipped, *jobs.done):
        if job.planned is None:
            continue
        alarm, says = _alarm(job) if job.id in biting else (None, "")
        found.append(
            Event(
                f"{job.id}.{plan.garden.year}@{name}.plantframe",
                job.planned,
                _title(job),
                _text(job),
                job.place,
                job.kind,
                job.every_days[1] if job.every_days else None,
                job.until if job.every_days else None,
                alarm,
                says,
                dropped=job.id in over and job.every_days is None,
            )
        )
    return tuple(found)


def _title(job: Job) -> str:
    """Block and step, short enough for a month's page."""
    return f"{job.block}: {short(job.does)}" if job.block and job.says != job.does else job.says


def _text(job: Job) -> str:
    """All that is said of a job, its cautions included."""
    people = f"{job.hands} people" if job.hands > 1 else ""
    lines = [
        f"{job.does[:1].upper()}{job.does[1:]}.",
        f"Who: {listed(list(job.who))}." if job.who else "",
        f"{people}.{f' Alone: {job.alone}.' if job.alone else ''}" if people else "",
        f"Tools: {', '.join(job.tools)}." if job.tools else "",
        f"Not yet: {job.dont_yet}." if job.dont_yet else "",
        *(f"Mind: {danger}." for danger in job.dangers),
        f"Then wait {job.wait}." if job.wait else "",
        f"{job.how.rstrip('.')}." if job.how else "",
        f"By {shown(job.latest)} at latest." if job.latest and not job.every_days else "",
    ]
    return "\n".join(line for line in lines if line)


def _biting(jobs: Sequence[Job]) -> frozenset[str]:
    """Jobs whose last day bites: each sowing and planting, and the last job of a frame or task."""
    last: dict[tuple[str, str, date], str] = {}
    for job in jobs:
        if job.latest is None or job.planned is None or job.every_days or job.overdue:
            continue
        if job.kind in {SOW, PLANT}:
            last[job.id, job.kind, job.latest] = job.id
        elif job.kind in {BUILD, CARE, OWN, LINES}:
            last[job.block, job.kind, job.latest] = job.id
    return frozenset(last.values())


def _alarm(job: Job) -> tuple[timedelta | None, str]:
    """The evening before its last day, counted from the beginning of the planned one."""
    if job.latest is None or job.planned is None or job.latest < job.planned:
        return None, ""
    return job.latest - job.planned - EVENING, f"Tomorrow is the last day: {_title(job)}"


# ---- the file ----------------------------------------------------------------------------------
def calendar_file(plan: Plan, events: Iterable[Event], today: date) -> bytes:
    """The events as a file of RFC 5545, the same bytes for the same plan and day."""
    from icalendar import Calendar

    calendar = Calendar()
    calendar.add("prodid", PRODUCT)
    calendar.add("version", "2.0")
    calendar.add("method", "PUBLISH")
    title = _clean(plan.garden.name or plan.name)
    calendar.add("name", title)
    calendar.add("x-wr-calname", title)
    for event in events:
        calendar.add_component(_component(event, today))
    return bytes(calendar.to_ical())


def _component(event: Event, today: date) -> Component:
    """One VEVENT of the library."""
    from icalendar import Alarm
    from icalendar import Event as EventComponent

    stamp = datetime.combine(today, time(0), UTC)
    one = EventComponent()
    one.add("uid", _clean(event.uid))
    one.add("dtstamp", stamp)
    one.add("last-modified", stamp)
    one.add("sequence", max((today - FIRST_NUMBER).days, 0))
    one.add("dtstart", event.day)
    one.add("dtend", event.day + timedelta(days=1))
    one.add("summary", _clean(event.title) or event.kind)
    one.add("description", _clean(event.text))
    one.add("categories", [event.kind])
    one.add("transp", "TRANSPARENT")
    one.add("status", "CANCELLED" if event.dropped else "CONFIRMED")
    if event.place:
        one.add("location", _clean(event.place))
    if event.every_days is not None:
        rule: dict[str, object] = {"freq": "daily", "interval": event.every_days}
        if event.until is not None:
            rule["until"] = event.until
        one.add("rrule", rule)
    if event.alarm is not None:
        bell = Alarm()
        bell.add("action", "DISPLAY")
        bell.add("description", _clean(event.alarm_says))
        bell.add("trigger", event.alarm)
        one.add_component(bell)
    return one


def is_ours(text: bytes) -> bool:
    """Whether a file is a calendar that was written here."""
    return PRODUCT.encode() in text[:400]


def _clean(text: str) -> str:
    return _CONTROL.sub("", text)
