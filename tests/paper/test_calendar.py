"""The calendar file, read back with a parser that is not the one that writes it."""

from __future__ import annotations

import re
from datetime import date, datetime, timedelta
from typing import TYPE_CHECKING, Any

import pytest
import vobject
from hypothesis import given, settings
from hypothesis import strategies as st

from plantframe.jobs.listing import jobs_of
from plantframe.language.files import read_input, read_plan
from plantframe.paper.calendar import calendar_file, events_of, is_ours
from plantframe.plan.building import build
from plantframe.season.season import Season

if TYPE_CHECKING:
    from pathlib import Path

    from plantframe.plan.things import Plan

JANUARY = date(2027, 1, 10)
TEXT = """garden Hazel End, 2027
  place 51.9 N, 2.3 W
  frost last 6 May, first 12 October
  person Isa
  person Bram
  free Saturday 6 h
frame Bean Net, net frame
  bays 2 of 8 ft
  bar 2x2
  grow pole bean, 40 plants, sow 18 May
  ready by 15 May
"""


def written(plan: Plan, today: date) -> bytes:
    """The file of a plan on a day."""
    return calendar_file(plan, events_of(plan, jobs_of(Season(plan, today))), today)


def file_of(text: str, today: date = JANUARY) -> bytes:
    plan, _ = build(read_input(text), today)
    return written(plan, today)


def events(content: bytes) -> dict[str, Any]:
    """Each event by its UID, as the other parser reads it."""
    calendar = vobject.readOne(content.decode("utf-8"))
    found = {event.uid.value: event for event in calendar.vevent_list}
    assert len(found) == len(calendar.vevent_list)  # no UID stands twice
    return found


DEMOS = [("quarry-row/2027", date(2027, 3, 1)), ("tussock-flat/2026-27", date(2026, 8, 20))]


@pytest.mark.parametrize(("demo", "today"), DEMOS)
def test_the_demo_gardens_are_read_by_another_program(root: Path, demo: str, today: date) -> None:
    plan, _ = build(read_plan(root / "plans" / f"{demo}.plan"), today)
    jobs = jobs_of(Season(plan, today))
    found = events(written(plan, today))
    planned = {job.id: job.planned for job in jobs.jobs if job.planned}
    assert len(found) == len(planned)
    for uid, event in found.items():
        name = uid.split(f".{plan.garden.year}@")[0]
        assert event.dtstart.value == planned[name]
        assert event.dtend.value == planned[name] + timedelta(days=1)
        assert not isinstance(event.dtstart.value, datetime)  # all day long


def test_every_line_keeps_to_the_standard() -> None:
    """RFC 5545, 3.1: lines end in CRLF and hold at most 75 octets; 3.6.1: UID and DTSTAMP once."""
    content = file_of(TEXT)
    assert content.endswith(b"END:VCALENDAR\r\n")
    assert b"\n" not in content.replace(b"\r\n", b"")
    assert all(len(line) <= 75 for line in content.split(b"\r\n"))
    for block in content.split(b"BEGIN:VEVENT")[1:]:
        own = block.split(b"BEGIN:VALARM")[0]
        assert own.count(b"\r\nUID:") == own.count(b"\r\nDTSTAMP:") == 1
    assert re.search(rb"\r\nVERSION:2.0\r\n", content)
    assert content.count(b"\r\nPRODID:") == 1


def test_the_same_plan_and_day_give_the_same_bytes() -> None:
    assert file_of(TEXT) == file_of(TEXT)


def test_a_later_file_has_the_same_events_with_higher_numbers() -> None:
    one, other = events(file_of(TEXT)), events(file_of(TEXT, date(2027, 2, 1)))
    assert set(one) == set(other)
    for uid, event in one.items():
        assert int(other[uid].sequence.value) > int(event.sequence.value)
        assert other[uid].dtstamp.value > event.dtstamp.value


def test_taking_it_in_twice_doubles_nothing_and_moves_what_was_moved() -> None:
    """What a calendar program does: one event a UID, the higher number wins."""
    moved = TEXT + "  move weave the bar to 2 May\n"
    kept = events(file_of(TEXT))
    before = len(kept)
    for uid, event in events(file_of(moved, date(2027, 2, 1))).items():
        if uid not in kept or int(event.sequence.value) >= int(kept[uid].sequence.value):
            kept[uid] = event
    assert len(kept) == before
    assert kept["bean-net/bar.2027@hazel-end.plantframe"].dtstart.value == date(2027, 5, 2)


def test_what_is_left_out_is_taken_out_of_the_calendar() -> None:
    skipped = TEXT + '  skip weave the bar because "a wire will do"\n'
    event = events(file_of(skipped))["bean-net/bar.2027@hazel-end.plantframe"]
    assert event.status.value == "CANCELLED"


def test_what_is_done_is_taken_out_and_rings_no_bell() -> None:
    done = TEXT + "  done weave the bar, 2 May\n"
    before, after = events(file_of(TEXT)), events(file_of(done))
    assert set(before) == set(after)
    event = after["bean-net/bar.2027@hazel-end.plantframe"]
    assert event.status.value == "CANCELLED"
    assert "valarm" not in event.contents


def test_a_round_repeats_to_its_last_day() -> None:
    event = events(file_of(TEXT))["bean-net/pole-bean-pick.2027@hazel-end.plantframe"]
    days = list(event.rruleset)
    assert (days[1] - days[0]).days == 3
    assert days[-1].date() <= date(2027, 10, 12)
    assert (date(2027, 10, 12) - days[-1].date()).days < 3


def test_an_alarm_goes_off_the_evening_before_a_last_day() -> None:
    found = events(file_of(TEXT))
    pins = found["bean-net/pins.2027@hazel-end.plantframe"]
    trigger = pins.valarm.trigger.value
    begins = datetime.combine(pins.dtstart.value, datetime.min.time())
    assert begins + trigger == datetime(2027, 5, 14, 18)  # noqa: DTZ001 - a day on the wall
    assert "last day" in pins.valarm.description.value
    assert hasattr(found["bean-net/sow-pole-bean.2027@hazel-end.plantframe"], "valarm")
    assert not hasattr(found["bean-net/mark.2027@hazel-end.plantframe"], "valarm")


def test_cautions_go_into_the_calendar_with_their_step() -> None:
    event = events(file_of(TEXT))["bean-net/ends.2027@hazel-end.plantframe"]
    assert "Mind: " in event.description.value
    assert "buried cables" in event.description.value


@settings(max_examples=40)
@given(name=st.text(min_size=1, max_size=30), task=st.text(min_size=1, max_size=60))
def test_whatever_is_typed_the_file_can_be_read(name: str, task: str) -> None:
    garden, line = (" ".join(words.split()) for words in (name, task))
    text = f"garden {garden}, 2027\ntask {line}, by 1 May\ntask dig; mow, by 2 May\n"
    content = file_of(text)
    assert not re.search(rb"[\x00-\x08\x0b\x0c\x0e-\x1f]", content)
    assert all(event.summary.value for event in events(content).values())


def test_a_task_with_commas_and_semicolons_is_read_as_typed() -> None:
    text = "garden Hazel End, 2027\ntask dig; weed and mow, by 2 May\n"
    (event,) = events(file_of(text)).values()
    assert event.summary.value == "dig; weed and mow"


def test_only_a_calendar_of_its_own_is_known() -> None:
    assert is_ours(file_of(TEXT))
    assert not is_ours(b"BEGIN:VCALENDAR\r\nPRODID:-//Somebody//Else//EN\r\n")
