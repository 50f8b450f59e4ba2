"""A warning set aside with a reason sleeps, and wakes when its cause has clearly worsened."""

from __future__ import annotations

from datetime import date

import pytest

from plantframe.answers.answers import Answers, answers_to
from plantframe.commands.why import about

TODAY = date(2026, 11, 25)
PLAN = """\
garden Sallow Strip, 2027
  place 52 N, 1 W
  lines marked 2 March
bed Strip, 1.2 m x 12 m
frame Gate Net, net frame, in Strip
  bays 1 of {bay}
  posts 2x2, 8 ft, 18 in down, 6 ft 6 in up
  bar 2x2
  net 6 ft 6 in x 12 ft, mesh 15 cm
  grow climbing squash, 3 plants, sow 24 May
  {ok}
"""
OK = 'ok too-heavy because "we prop it", Isa, 2 March'


def answers(ok: str = OK, bay: str = "8 ft", today: date = TODAY) -> Answers:
    return answers_to(PLAN.format(bay=bay, ok=ok), today)


def active(one: Answers) -> set[str]:
    return {found.rule.name for found in one.advice.active}


def test_a_warning_set_aside_is_not_told_again_and_its_reason_is_kept() -> None:
    one = answers()
    assert "too-heavy" not in active(one)
    (aside,) = one.advice.aside
    assert aside.by.because == "we prop it"
    assert aside.by.who == "Isa"
    assert one.stops is False


def test_other_warnings_of_the_same_frame_are_still_told() -> None:
    one = answers_to(PLAN.format(bay="8 ft", ok=OK).replace("net 6 ft 6 in", "net 4 ft"), TODAY)
    assert "net-size" in active(one)
    assert "too-heavy" not in active(one)


@pytest.mark.parametrize(
    ("bay", "wakes"),
    [("8 ft", False), ("8 ft 4 in", False), ("10 ft", True)],
)
def test_it_wakes_when_it_is_a_quarter_worse_than_what_was_accepted(bay: str, wakes: bool) -> None:
    one = answers(f"{OK}, at about 2 times", bay)
    assert ("too-heavy" in active(one)) is wakes
    assert bool(one.advice.woken) is wakes


def test_it_wakes_when_it_is_graver_than_what_was_accepted() -> None:
    one = answers(f"{OK}, at note")
    assert "too-heavy" in active(one)
    (woken,) = one.advice.woken
    assert "note" in woken.why


def test_it_sleeps_as_long_as_it_is_no_graver() -> None:
    assert "too-heavy" not in active(answers(f"{OK}, at warn"))


@pytest.mark.parametrize(("today", "wakes"), [("2027-05-31", False), ("2027-06-02", True)])
def test_it_wakes_when_its_time_has_run_out(today: str, wakes: bool) -> None:
    one = answers(f"{OK}, until 1 June", today=date.fromisoformat(today))
    assert ("too-heavy" in active(one)) is wakes


def test_a_set_aside_without_a_reason_is_asked_about_and_does_nothing() -> None:
    one = answers("ok too-heavy")
    assert "too-heavy" in active(one)
    (slip,) = [slip for slip in one.mistakes if slip.name == "no-reason"]
    assert slip.level == "ask"
    assert slip.where.line == 11


def test_a_set_aside_of_what_is_not_there_is_said_to_be_stale() -> None:
    one = answers(OK, "4 ft")
    (slip,) = [slip for slip in one.mistakes if slip.name == "nothing-to-set-aside"]
    assert slip.level == "note"
    assert "Gate Net" in slip.says


def test_nothing_is_called_stale_where_a_line_of_the_frame_was_not_understood() -> None:
    one = answers(OK, "eight")
    assert not [slip for slip in one.mistakes if slip.name == "nothing-to-set-aside"]


def test_nothing_is_called_stale_where_a_planting_was_not_understood() -> None:
    plan = PLAN.format(bay="4 ft", ok=OK).replace("3 plants", "3 plants, flibber 7")
    one = answers_to(plan, TODAY)
    assert "too-heavy" not in {found.rule.name for found in one.report.found}
    assert not [slip for slip in one.mistakes if slip.name == "nothing-to-set-aside"]


def test_a_warning_of_no_such_name_is_asked_about_with_the_nearest() -> None:
    one = answers('ok to-heavy because "we prop it"')
    (slip,) = [slip for slip in one.mistakes if slip.name == "unknown-rule"]
    assert "too-heavy" in slip.says


def test_buried_lines_cannot_be_set_aside_only_answered() -> None:
    text = PLAN.format(bay="4 ft", ok='ok services because "we have dug here before"')
    text = text.replace("  lines marked 2 March\n", "").replace(
        "in Strip\n", "in Strip, 1 m from the house\n"
    )
    one = answers_to(text + "house, 6 m high\n", TODAY)
    assert active(one) >= {"services", "no-leader-rule"}  # and what comes after it is still told
    (slip,) = [slip for slip in one.mistakes if slip.name == "not-set-aside"]
    assert "lines marked" in slip.says


def test_a_stop_that_is_set_aside_stays_on_the_list_as_set_aside() -> None:
    text = PLAN.format(bay="4 ft", ok='ok doesn\'t-add-up because "I measured twice"')
    one = answers_to(text.replace("6 ft 6 in up", "7 ft up"), TODAY)
    assert "doesn't-add-up" in {aside.found.rule.name for aside in one.advice.aside}


NEST = """\
garden Sallow Strip, 2027
  place {place}
  region {region}
hedge Holly Hedge, 2 m high
  ok birds-nesting because "it is a small trim"
task trim Holly Hedge, {when}
"""


def test_what_the_law_asks_of_nests_cannot_be_set_aside_where_there_is_such_a_law() -> None:
    one = answers_to(NEST.format(place="52 N, 1 W", region="England", when="20 June"), TODAY)
    assert "birds-nesting" in active(one)
    (slip,) = [slip for slip in one.mistakes if slip.name == "not-set-aside"]
    assert "looks for nests" in slip.says


def test_a_nest_that_no_known_law_guards_is_for_the_gardener_to_judge() -> None:
    one = answers_to(NEST.format(place="52 N, 20 E", region="nowhere", when="20 June"), TODAY)
    assert "birds-nesting" not in active(one)
    assert [aside.found.level for aside in one.advice.aside] == ["warn"]
    assert not [slip for slip in one.mistakes if slip.name == "not-set-aside"]


POISON = """\
garden Sallow Strip, 2027
  place 52 N, 1 W
  lines marked 2 March
bed Strip, 1.2 m x 12 m
frame Gate Net, net frame, in Strip
  bays 1 of 6 ft
  net 6 ft 6 in x 6 ft, mesh 10 cm
  grow tall pea, 30 plants, sow 1 April
  grow sweet pea, 6 plants, sow 1 April
  ok poisonous-lookalike because "we know them apart"
"""


def test_poison_among_food_cannot_be_set_aside_only_answered() -> None:
    one = answers_to(POISON, TODAY)
    assert "poisonous-lookalike" in active(one)
    (slip,) = [slip for slip in one.mistakes if slip.name == "not-set-aside"]
    assert "frame of its own" in slip.says


def test_the_working_of_what_is_set_aside_says_why_and_by_whom() -> None:
    one = answers()
    (working,) = about(one, "too-heavy")
    assert working.sleeps == "“we prop it”, Isa, 2 March, line 11"
    (awake,) = about(answers("bar 2x2"), "too-heavy")
    assert awake.sleeps == ""
    assert "at about 2 times" in awake.aside
