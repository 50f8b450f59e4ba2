"""Work that nobody marked: long after its day it is asked about once, and the season goes on."""

from __future__ import annotations

from datetime import date

from plantframe.jobs.choosing import of_day
from tests.jobs.gardens import BEANS, HEAD, NET, listed, the

TEXT = HEAD + "  free Saturday 6 h\n" + NET + BEANS
JULY = date(2027, 7, 20)


def test_a_row_that_was_due_in_may_is_not_planned_for_july() -> None:
    found = listed(TEXT, JULY)
    for step in ("mark", "net", "pins", "sow-pole-bean"):
        job = the(found, f"bean-net/{step}")
        assert job.overdue
        assert job.planned is None


def test_its_picking_goes_on_from_the_day_it_was_due() -> None:
    found = listed(TEXT, JULY)
    pick = the(found, "bean-net/pole-bean-pick")
    assert pick.planned is not None
    assert (pick.planned - JULY).days <= 3
    assert pick in of_day(found.jobs, pick.planned)


def test_it_is_asked_about_all_the_same() -> None:
    assert "overdue" in {one.name for one in listed(TEXT, JULY).troubles}


def test_a_week_late_is_only_late() -> None:
    found = listed(TEXT, date(2027, 5, 25))
    assert the(found, "bean-net/sow-pole-bean").planned is not None


def test_what_waits_for_a_day_still_to_come_is_not_taken_as_done() -> None:
    moved = TEXT + "  move firm the soil to 1 August\n"
    found = listed(moved, JULY)
    assert the(found, "bean-net/firm").planned == date(2027, 8, 1)
    sow = the(found, "bean-net/sow-pole-bean").planned
    assert sow is not None
    assert sow >= date(2027, 8, 1)


def test_a_frame_without_a_crop_in_it_is_still_to_be_built() -> None:
    text = HEAD + "  free Saturday 6 h\n" + NET + "  ready by 15 May\n"
    pins = the(listed(text, JULY), "bean-net/pins")
    assert pins.planned is not None
    assert pins.planned >= JULY


def test_pruning_whose_time_is_over_is_asked_about_and_not_put_into_spring() -> None:
    text = HEAD + "frame Vine Wires, grape wires\n  built 2020\n  grow grape, 3 plants\n"
    found = listed(text, date(2027, 4, 20))
    prune = the(found, "vine-wires/grape-prune")
    assert prune.planned is None
    assert prune.overdue
    assert the(found, "vine-wires/care-poke").planned is not None  # better late than never
