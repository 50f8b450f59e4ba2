"""Findings hang on what the plan says, not on the order it is said in, nor on what is beside it."""

from __future__ import annotations

import random
from typing import TYPE_CHECKING

import pytest

from plantframe.advice.engine import rules
from plantframe.answers.answers import answers_to
from tests.advice.cases import cases_of

if TYPE_CHECKING:
    from datetime import date

    from plantframe.advice.findings import Rule

MOST_OFFERS = 99
# No figure in it, since feet or metres are chosen by what most figures of a plan are in.
UNRELATED = (
    "bed Far Away Bed\n  sun full\npath Far Away Path\nwall Far Away Wall\nnote rain all day\n"
)


def _blocks(plan: str) -> list[list[str]]:
    out: list[list[str]] = []
    for line in plan.split("\n"):
        if out and line[:1] in {" ", "("}:
            out[-1].append(line)
        elif line.strip():
            out.append([line])
    return out


def _text(blocks: list[list[str]]) -> str:
    return "\n".join(line for block in blocks for line in block) + "\n"


def _found(plan: str, today: date, *, offers: bool = True) -> list[tuple[object, ...]]:
    """Everything of every finding but where it stands, and the edits that may cure it."""
    answers = answers_to(plan, today)
    return sorted(
        (
            *one.key,
            one.level,
            str(one.finding.by),
            one.finding.ways,
            *(words := one.words(answers.shown)).__dict__.values(),
            sorted(edit.says for edit in one.candidates(MOST_OFFERS)) if offers else words.says,
        )
        for one in answers.report.found
    )


@pytest.mark.parametrize("rule", rules(), ids=lambda rule: rule.name)
def test_blocks_in_any_order_give_the_same_findings(rule: Rule) -> None:
    dice = random.Random(rule.name)
    for case in cases_of(rule):
        blocks = _blocks(case.plan)
        dice.shuffle(blocks)
        assert _found(_text(blocks), case.today) == _found(case.plan, case.today), case.title


@pytest.mark.parametrize("rule", rules(), ids=lambda rule: rule.name)
def test_facts_in_any_order_give_the_same_findings(rule: Rule) -> None:
    dice = random.Random(rule.name)
    for case in cases_of(rule):
        blocks = _blocks(case.plan)
        for block in blocks:
            facts = block[1:]
            dice.shuffle(facts)
            block[1:] = facts
        assert _found(_text(blocks), case.today) == _found(case.plan, case.today), case.title


@pytest.mark.parametrize("rule", rules(), ids=lambda rule: rule.name)
def test_what_stands_elsewhere_changes_no_finding(rule: Rule) -> None:
    for case in cases_of(rule):
        for plan in (case.plan + UNRELATED, _text([*_blocks(UNRELATED), *_blocks(case.plan)])):
            # another bed may be a way out, and so the edits are left aside
            after = _found(plan, case.today, offers=False)
            assert after == _found(case.plan, case.today, offers=False), case.title
