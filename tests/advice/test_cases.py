"""Every rule against its own cases: it speaks for its cause and not for the twin."""

from __future__ import annotations

import re

import pytest

from plantframe.advice.engine import cases_file, rules
from plantframe.advice.findings import severity
from plantframe.answers.offers import cures, offers_for
from plantframe.commands.why import of_finding
from plantframe.language.edits import apply
from tests.advice.cases import Case, all_cases, cases_of

CASES = all_cases()
FIRING = [case for case in CASES if case.fires]


def _name(case: Case) -> str:
    return f"{case.rule.name}: {case.title}"


@pytest.mark.parametrize("rule", rules(), ids=lambda rule: rule.name)
def test_every_rule_has_a_case_that_fires_and_one_that_is_silent(rule) -> None:
    assert cases_file(rule).exists()
    kinds = {case.fires for case in cases_of(rule)}
    assert kinds == {True, False}


@pytest.mark.parametrize("case", CASES, ids=_name)
def test_every_line_of_a_case_is_understood(case: Case) -> None:
    answers = case.answers()
    unread = [
        (slip.where.line, slip.name, slip.says)
        for slip in answers.mistakes
        if slip.level in {"ask", "stop"} and slip.name not in {"no-place", "not-set-aside"}
    ]
    assert unread == []
    problems = [frame.problem for frame in answers.season.frames.values() if frame.problem]
    assert problems == []


@pytest.mark.parametrize("case", FIRING, ids=_name)
def test_the_rule_speaks_for_its_cause(case: Case) -> None:
    found = case.found()
    assert found, "it is silent"
    words = [one.words(case.answers().shown) for one in found]
    spoken = " ".join(f"{word.says} {word.if_ignored}" for word in words)
    for part in case.says:
        assert part.lower() in spoken.lower()
    # what was compared, and the ways that are no line of the plan
    worked = " ".join(f"{word.told} {word.assumed} {word.sum}" for word in words)
    worked += " ".join(way for one in found for way in one.finding.ways)
    for part in case.why:
        assert part.lower() in worked.lower()
    if case.level:
        assert case.level in {one.level for one in found}
    if case.at:
        assert any(case.at in one.finding.where.typed for one in found)


@pytest.mark.parametrize("case", FIRING, ids=_name)
def test_all_that_it_says_is_said_in_words(case: Case) -> None:
    for one in case.found():
        word = one.words(case.answers().shown)
        assert word.says
        assert word.told
        for part in (word.says, word.if_ignored, word.told, word.assumed, word.sum):
            assert isinstance(part, str)
            assert not re.search(r"\b(None|nan|inf|True|False)\b|  |\(\)|\{", part)


@pytest.mark.parametrize("case", [case for case in CASES if not case.fires], ids=_name)
def test_the_rule_is_silent_on_the_twin(case: Case) -> None:
    shown = case.answers().shown
    assert [one.words(shown).says for one in case.found()] == []


@pytest.mark.parametrize("case", FIRING, ids=_name)
def test_one_cause_draws_one_message(case: Case) -> None:
    answers = case.answers()
    blocks = {one.finding.block for one in case.found()}
    others = {
        one.rule.name
        for one in answers.report.found
        if one.rule.name != case.rule.name
        and one.finding.block in blocks
        and one.level in {"warn", "stop", "ask"}
    }
    assert others <= set(case.with_others)


@pytest.mark.parametrize("case", FIRING, ids=_name)
def test_every_offer_cures_when_pasted_and_wakes_nothing_worse(case: Case) -> None:
    answers = case.answers()
    for found in case.found():
        offers = offers_for(answers, found)
        for edit in offers:
            after = answers.edited(edit)
            assert apply(edit, answers.reading.sources) != answers.reading.sources
            assert cures(answers, after, found)
            assert all(
                severity(one.level) <= severity(found.level)
                for one in after.advice.active
                if one.key not in {old.key for old in answers.advice.active}
            )
        if case.cured_by:
            said = " | ".join(edit.says for edit in offers)
            for part in case.cured_by:
                assert part in said


@pytest.mark.parametrize("case", FIRING, ids=_name)
def test_ok_sets_that_rule_aside_and_no_other(case: Case) -> None:
    answers = case.answers()
    found = next((one for one in case.found() if one.finding.block in answers.plan.frames), None)
    if found is None:
        # garden and bed findings are covered by test_set_asides; here the rule only has to exist
        assert case.found()
        return
    block = answers.plan.frames[found.finding.block].block
    lines = case.plan.split("\n")
    line = f'  ok {found.rule.name} because "we know", 1 March'
    lines.insert(block.last_line, line)
    from plantframe.answers.answers import answers_to

    after = answers_to("\n".join(lines), case.today)
    before_keys = {one.key for one in answers.advice.active}
    after_keys = {one.key for one in after.advice.active}
    if found.answered:
        assert found.key in after_keys
        assert any(slip.name == "not-set-aside" for slip in after.mistakes)
    else:
        gone = before_keys - after_keys
        assert {key[0] for key in gone} == {found.rule.name}
        assert after_keys <= before_keys


@pytest.mark.parametrize("case", FIRING, ids=_name)
def test_the_working_has_four_lines_and_more_to_say_than_what_it_rests_on(case: Case) -> None:
    answers = case.answers()
    for found in case.found():
        working = of_finding(answers, found)
        lines = (working.told, working.assumed, working.sum, working.source)
        assert all(line.strip(" .") for line in lines)
        assert working.sum.strip(" .").lower() not in {"common practice", "estimate", "sum"}
        assert found.rule.basis in working.source
        assert bool(working.aside) is not bool(found.answered)
        if found.level in {"warn", "stop"}:
            assert found.words(answers.shown).if_ignored


@pytest.mark.parametrize("case", FIRING, ids=_name)
def test_a_warning_has_a_way_out(case: Case) -> None:
    answers = case.answers()
    for found in case.found():
        if found.level != "note":
            assert offers_for(answers, found, 1) or found.finding.ways
