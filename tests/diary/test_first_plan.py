"""A first plan, whatever was said of it."""

from __future__ import annotations

from datetime import date

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plantframe.diary.first_plan import QUESTIONS, Told, first_plan, slips_in
from plantframe.language.files import read_input
from plantframe.plan.building import build

TODAY = date(2027, 1, 10)
FULL = Told(
    "Elm Yard",
    "",
    "52.1 N, 1.4 W",
    "6 May",
    "12 October",
    "Saturday 6 h",
    ("Maud, lifts 15 kg", "Wim"),
    ("Long Bed, 1.2 m x 7.5 m",),
    ("runner bean, 20 plants", "cucumber"),
)


def test_all_that_was_said_is_read_back() -> None:
    text = first_plan(FULL, TODAY)
    assert slips_in(text, TODAY) == ()
    plan, _ = build(read_input(text), TODAY)
    assert (plan.garden.name, plan.garden.year) == ("Elm Yard", 2027)
    assert plan.garden.latitude == 52.1
    assert [person.name for person in plan.garden.people] == ["Maud", "Wim"]
    assert plan.garden.free_h == {"saturday": 6}
    assert list(plan.beds) == ["Long Bed"]
    assert [want.said for want in plan.wants] == ["runner bean", "cucumber"]


def test_nothing_said_is_a_plan_all_the_same() -> None:
    text = first_plan(Told(), TODAY)
    assert slips_in(text, TODAY) == ()
    assert "garden Our Garden, 2027" in text


def test_a_garden_without_frost_says_so() -> None:
    plan, _ = build(read_input(first_plan(Told(last_frost="none"), TODAY)), TODAY)
    assert plan.garden.frost_none


def test_a_slip_in_an_answer_is_told() -> None:
    text = first_plan(Told(last_frost="31 June", first_frost="1 October"), TODAY)
    assert [slip.name for slip in slips_in(text, TODAY)] == ["impossible-date"]


def test_every_question_asks_for_something_that_can_be_told() -> None:
    for field, question, _ in QUESTIONS:
        assert field in Told().FIELDS  # type: ignore[attr-defined]
        assert question


@settings(max_examples=60)
@given(words=st.text(max_size=40), more=st.lists(st.text(max_size=20), max_size=3))
def test_any_answer_makes_a_text_that_can_be_read(words: str, more: list[str]) -> None:
    told = Told(words, words, words, words, words, words, tuple(more), tuple(more), tuple(more))
    text = first_plan(told, TODAY)
    slips_in(text, TODAY)
    assert text.startswith("garden ")


@pytest.mark.parametrize(
    ("place", "today", "year"),
    [
        ("52.1 N, 1.4 W", date(2026, 11, 25), "2027"),
        ("52.1 N, 1.4 W", date(2027, 3, 1), "2027"),
        ("43.5 S, 172.6 E", date(2027, 3, 1), "2026-27"),
        ("43.5 S, 172.6 E", date(2027, 8, 1), "2027-28"),
    ],
)
def test_without_a_year_it_is_for_the_next_season_there_is_time_for(
    place: str, today: date, year: str
) -> None:
    text = first_plan(Told(name="Hill", place=place), today)
    assert text.startswith(f"garden Hill, {year}\n")
    assert ("November" in text) == ("S" in place)


@pytest.mark.parametrize(
    "bed", ["South patch 4x8", "East 1.2 x 7.5", "Long Bed, 4x8", "Herb 4 by 8"]
)
def test_a_bed_whose_unit_was_not_said_is_asked_for_it(bed: str) -> None:
    text = first_plan(Told("Elm Yard", beds=(bed, "Bed 3", "Low Bed, 4 ft x 8 ft")), TODAY)
    assert [(one.name, one.where.typed) for one in slips_in(text, TODAY)] == [
        ("no-unit", f"bed {bed}")
    ]
