"""calendar: the season's jobs as a file for a calendar program."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any

from plantframe.commands.asked import FINE, Refused, one_answer, plan_argument, write_json
from plantframe.jobs.listing import jobs_of
from plantframe.paper.calendar import calendar_file, events_of, is_ours
from plantframe.season.units import plural

if TYPE_CHECKING:
    import argparse
    from datetime import date

    from plantframe.paper.calendar import Event


def arguments(parser: argparse.ArgumentParser) -> None:
    """What the command takes."""
    plan_argument(parser)
    parser.add_argument("--to", metavar="FILE", help="write it there, not over anything else")


def run(given: argparse.Namespace, today: date) -> int:
    """Print the calendar, or write it into a file of its own."""
    answers = one_answer(given.plan, today)
    jobs = jobs_of(answers.season)
    events = events_of(answers.plan, jobs)
    if given.json:
        write_json({"plan": answers.plan.name, "events": [_data(event) for event in events]})
        return FINE
    content = calendar_file(answers.plan, events, today)
    if given.to is None:
        sys.stdout.flush()
        sys.stdout.buffer.write(content)
        sys.stdout.buffer.flush()
    else:
        _write(Path(given.to), content)
        alarms = sum(event.alarm is not None for event in events)
        still = sum(not event.dropped for event in events)
        print(f"{given.to}: {plural(still, 'job')} with a day, {alarms} with an alarm.")
    return FINE


def _write(file: Path, content: bytes) -> None:
    """Write over nothing but a calendar that was written here."""
    try:
        if file.exists() and not is_ours(file.read_bytes()):
            raise Refused(f"{file} is there already and no calendar of mine; choose another name.")
        file.write_bytes(content)
    except OSError as error:
        reason = (error.strerror or "it cannot be opened").lower()
        raise Refused(f"{file} cannot be written: {reason}.") from None


def _data(event: Event) -> dict[str, Any]:
    return {
        "uid": event.uid,
        "day": event.day.isoformat(),
        "title": event.title,
        "says": event.text,
        "place": event.place or None,
        "kind": event.kind,
        "every_days": event.every_days,
        "until": event.until.isoformat() if event.until else None,
        "alarm_hours": round(event.alarm.total_seconds() / 3600) if event.alarm else None,
        "dropped": event.dropped,
    }
