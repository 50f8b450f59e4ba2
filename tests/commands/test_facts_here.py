"""facts: what a plant does to people, when its care comes, and its days in a garden of a plan."""

from __future__ import annotations

import json
import re
from typing import TYPE_CHECKING

from plantframe.commands.main import main

if TYPE_CHECKING:
    from pathlib import Path

    import pytest

PLAN = """\
garden Tarn Side, 2027
  place 52.1 N, 1.4 W
  frost last 6 May, first 12 October
variety Ida Bean, like runner bean
  height 2 to 2.6 m
"""


def said(capsys: pytest.CaptureFixture[str], *words: str) -> str:
    assert main([*words]) == 0
    return " ".join(capsys.readouterr().out.split())


def test_harm_is_told_with_where_it_is_from(capsys: pytest.CaptureFixture[str]) -> None:
    out = said(capsys, "facts", "wisteria")
    assert "Mind: Poisonous: toxic to people and animals" in out
    assert "Mind: Strangles:" in out
    assert "Mind: Invasive in eastern United States" in out
    harm = out.split("Mind:", 1)[1]
    assert "(published [" in harm
    mark = harm.split("(published ", 1)[1].split("]", 1)[0] + "]"
    assert f"{mark} " in harm.split("Published in", 1)[1]


def test_sources_are_numbered_as_they_are_named_and_told_once_at_the_foot(
    capsys: pytest.CaptureFixture[str],
) -> None:
    page, foot = said(capsys, "facts", "runner bean").split("Published in", 1)
    marks = list(dict.fromkeys(re.findall(r"\[\d+\]", page)))
    assert marks == [f"[{number}]" for number in range(1, len(marks) + 1)]
    assert re.findall(r"\[\d+\]", foot) == marks
    assert foot.count("The movements and habits of climbing plants") == 1


def test_care_says_when_and_how_often_in_plain_words(capsys: pytest.CaptureFixture[str]) -> None:
    assert "(midsummer, every year)" in said(capsys, "facts", "wisteria")
    out = said(capsys, "facts", "tall tomato")
    assert "(6 to 8 weeks before first frost)" in out
    assert "-8" not in out


def test_a_stay_of_less_than_a_year_is_told_in_months(capsys: pytest.CaptureFixture[str]) -> None:
    assert "stays 4 to 5 months" in said(capsys, "facts", "runner bean")


def test_with_a_plan_it_tells_the_days_there(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    plan = tmp_path / "2027.plan"
    plan.write_text(PLAN, encoding="utf-8")
    out = said(capsys, "facts", "wisteria", "--plan", str(plan))
    assert "Here, at Tarn Side" in out
    assert "winter prune late winter here: 31 January to 26 February" in out


def test_a_plant_of_the_gardeners_own_is_told_as_theirs(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    plan = tmp_path / "2027.plan"
    plan.write_text(PLAN, encoding="utf-8")
    out = said(capsys, "facts", "Ida Bean", "--plan", str(plan))
    assert "height 2 to 2.6 m your figure" in out
    assert "Your own entry (2027.plan, line 4); the rest is as for runner bean." in out


def test_each_source_is_listed_with_the_figures_it_bears(
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert main(["facts", "--sources", "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert len(found) > 100
    assert all(isinstance(one["figures"], int) and one["figures"] >= 0 for one in found)
    assert all(one["title"] and one["publisher"] for one in found)
    # Every source bears something: a figure, a table, a training rule, or a harm.
    assert [one["key"] for one in found if one["figures"] == 0] == []
