"""Which boards may be used for what: whole, ripped, old, bought, or out of stock."""

from __future__ import annotations

from plantframe.timber.needs import needs_of
from plantframe.timber.sections import Section
from plantframe.timber.stock import wood_of
from plantframe.timber.tape import Tape
from plantframe.timber.ways import Way, Ways
from tests.timber.gardens import HEAD, NET, YARD, season


def ways(text: str, head: str = HEAD, missing: tuple[Section, int] | None = None) -> list[Way]:
    found = season(text, head)
    tape = Tape(found.plan.garden.imperial)
    made = Ways(found.plan, tape, 2, wood_of(found.plan), missing=missing)
    sticks = list(needs_of(found).sticks)
    return made.of(sticks, sticks)


def test_old_boards_come_before_those_that_are_bought() -> None:
    found = ways(NET + YARD + "shed\n  2 posts 2x2, 8 ft\n")
    assert [way.old is None for way in found] == [False, True]


def test_where_the_yard_has_no_such_section_it_is_asked_for_in_lengths_the_yard_keeps() -> None:
    found = ways("frame Box, own design\n  piece 2 of 1x4, 5 ft\n" + YARD)
    assert all(way.usual and way.price is None for way in found)
    assert sorted({way.length for way in found}) == [96 * 16, 120 * 16]


def test_a_piece_longer_than_what_the_yard_keeps_is_looked_for_in_the_usual_lengths() -> None:
    found = ways("frame Box, own design\n  piece 2 of 1x4, 11 ft\n" + YARD)
    assert max(way.length for way in found) == 16 * 12 * 16


def test_what_the_yard_is_out_of_is_no_way() -> None:
    found = ways(NET + YARD + "task rip 2x4\n", missing=(Section(38, 38), 96 * 16))
    assert {way.section for way in found} == {Section(38, 89)}


def test_rotten_wood_is_no_way() -> None:
    found = ways(NET + YARD + "shed\n  2 posts 2x2, 8 ft (rotten)\n")
    assert all(way.old is None for way in found)


def test_a_section_that_is_just_half_a_board_is_ripped_from_it() -> None:
    found = ways("frame Box, own design\n  piece 4 of 38x43 mm, 5 ft\n")
    assert {(way.section, way.sticks) for way in found} == {(Section(38, 89), 2)}
