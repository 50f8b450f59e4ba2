"""The known-bad bench: structures that fail in gardens, each with the rule that must say so."""

from __future__ import annotations

from pathlib import Path

import pytest
import yaml

from plantframe.answers.answers import answers_to
from tests.advice.cases import TODAY, but

ROWS = yaml.safe_load((Path(__file__).parent / "known_bad.yaml").read_text(encoding="utf-8"))
# The ratios were written down to one decimal: a twentieth, or half of that decimal.
NEAR, ROUNDED = 0.05, 0.05
CURES = [(name, change) for name, row in ROWS.items() for change in row.get("gone with", ())]


def _found(plan: str, rule: str) -> list[tuple[str, float | None]]:
    report = answers_to(plan, TODAY).report
    return [(one.level, one.times) for one in report.found if one.rule.name == rule]


@pytest.mark.parametrize("name", ROWS)
def test_every_line_of_a_known_bad_plan_is_understood(name: str) -> None:
    answers = answers_to(ROWS[name]["plan"], TODAY)
    assert [slip.says for slip in answers.mistakes if slip.level in {"ask", "stop"}] == []
    assert [frame.problem for frame in answers.season.frames.values() if frame.problem] == []


@pytest.mark.parametrize("name", ROWS)
def test_a_known_bad_structure_is_spoken_of(name: str) -> None:
    row = ROWS[name]
    found = _found(row["plan"], row["rule"])
    assert [level for level, _ in found] == [row["level"]]
    if "r" in row:
        ratio = found[0][1]
        assert ratio is not None
        assert abs(ratio - row["r"]) <= max(NEAR * row["r"], ROUNDED)


@pytest.mark.parametrize("name", ROWS)
def test_no_second_rule_warns_of_the_same_cause(name: str) -> None:
    row = ROWS[name]
    others = {
        one.rule.name
        for one in answers_to(row["plan"], TODAY).report.found
        if one.level in {"warn", "stop"} and one.rule.name != row["rule"]
    }
    assert others <= set(row.get("and", ()))


@pytest.mark.parametrize(("name", "change"), CURES)
def test_what_cures_it_quiets_the_rule(name: str, change: str) -> None:
    row = ROWS[name]
    assert _found(but(row["plan"], change), row["rule"]) == []
