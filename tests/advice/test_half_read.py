"""A plan that lost a line, or has a nought for a figure, still gets an answer of every rule."""

from __future__ import annotations

import re

import pytest

from plantframe.advice.engine import rules
from plantframe.answers.answers import answers_to
from plantframe.answers.offers import MOST_TRIED
from tests.advice.cases import Case, cases_of

FIRST = [next(case for case in cases_of(rule) if case.fires) for rule in rules()]


def _answer(case: Case, lines: list[str]) -> int:
    """Ask everything of a plan: findings, their words, and the edits that might help."""
    answers = answers_to("\n".join(lines) + "\n", case.today)
    for found in answers.report.found:
        assert found.words(answers.shown).says
        found.candidates(MOST_TRIED)
    return len(answers.report.found)


@pytest.mark.parametrize("case", FIRST, ids=lambda case: case.rule.name)
def test_a_plan_that_lost_any_one_line_is_still_answered(case: Case) -> None:
    lines = case.plan.rstrip("\n").split("\n")
    whole = _answer(case, lines)
    assert whole > 0
    for place in range(len(lines)):
        assert _answer(case, [*lines[:place], *lines[place + 1 :]]) >= 0


@pytest.mark.parametrize("case", FIRST, ids=lambda case: case.rule.name)
def test_a_nought_in_place_of_a_figure_stops_no_rule(case: Case) -> None:
    lines = case.plan.rstrip("\n").split("\n")
    for place, line in enumerate(lines):
        for figure in re.finditer(r"\d+(?:\.\d+)?", line):
            nought = f"{line[: figure.start()]}0{line[figure.end() :]}"
            assert _answer(case, [*lines[:place], nought, *lines[place + 1 :]]) >= 0
