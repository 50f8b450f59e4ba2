"""`why`, `facts` and `tidy` as a gardener and a script see them."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from plantframe.commands.main import main

PLANS = Path(__file__).parent.parent.parent / "plans"
TODAY = ["--today", "2026-11-25"]


def said(capsys: pytest.CaptureFixture[str], *arguments: str) -> tuple[int, str]:
    status = main(list(arguments))
    return status, capsys.readouterr().out


def test_why_gives_four_lines_for_a_warning(capsys) -> None:
    status, out = said(capsys, "why", str(PLANS / "quarry-row"), "too-heavy", *TODAY)
    assert status == 0
    for label in ("told", "assumed", "sum", "from"):
        assert f"  {label}" in out
    assert "not yet reviewed" in out


def test_why_of_a_line_tells_the_load_even_where_there_is_nothing_to_say(capsys) -> None:
    plan = PLANS / "quarry-row" / "2027.plan"
    line = next(
        number
        for number, text in enumerate(plan.read_text(encoding="utf-8").split("\n"), start=1)
        if text.startswith("frame Bean Net")
    )
    status, out = said(capsys, "why", str(plan), str(line + 1), *TODAY)
    assert status == 0
    assert "Bean Net: what hangs on its bar" in out
    assert "nothing to say" in out
    assert "Silent below 0.85" in out


def test_why_offers_the_line_that_sets_a_warning_aside_with_how_bad_it_is(capsys) -> None:
    _, out = said(capsys, "why", str(PLANS / "quarry-row"), "too-heavy", "--json", *TODAY)
    working = json.loads(out)["workings"][0]
    assert working["set_aside_with"] == 'ok too-heavy because "…", at about 2 times'


@pytest.mark.parametrize("kind", ["plants", "structures", "rules", "sources", "materials"])
def test_every_list_of_facts_is_data_with_a_name_each(kind, capsys) -> None:
    status, out = said(capsys, "facts", f"--{kind}", "--json")
    rows = json.loads(out)
    assert status == 0
    assert rows
    key = "key" if kind == "sources" else "name"
    names = [row[key] for row in rows]
    assert len(set(names)) == len(names)


def test_every_rule_is_listed_with_its_severity_basis_source_and_cases(capsys) -> None:
    _, out = said(capsys, "facts", "--rules", "--json")
    for row in json.loads(out):
        assert set(row) >= {"name", "severity", "basis", "source", "cases"}
        assert row["cases"] >= 2


def test_every_source_is_listed_with_the_figures_it_bears(capsys) -> None:
    _, out = said(capsys, "facts", "--sources", "--json")
    rows = json.loads(out)
    assert all(row["figures"] >= 0 for row in rows)
    assert sum(row["figures"] for row in rows) > 300


def test_a_plant_is_shown_with_the_origin_of_each_figure(capsys) -> None:
    status, out = said(capsys, "facts", "runner bean")
    assert status == 0
    assert "published" in out
    assert "estimate" in out
    assert "10 to 15 ft" in out


def test_a_name_of_several_plants_shows_each(capsys) -> None:
    _, out = said(capsys, "facts", "bean")
    assert "pole bean" in out.split("\n", maxsplit=1)[0]
    assert "Phaseolus coccineus" in out


def test_a_structure_is_shown_with_its_cautions_and_its_order(capsys) -> None:
    _, out = said(capsys, "facts", "net frame")
    order = out.index("thread the net on the posts"), out.index("weave the bar")
    assert order[0] < order[1]
    assert "marked" in out
    assert "Local rules" in out


def test_builders_work_is_shown_as_questions(capsys) -> None:
    _, out = said(capsys, "facts", "pergola")
    assert "Left to a builder" in out


def test_tidy_prints_and_leaves_the_file_alone(tmp_path, capsys) -> None:
    plan = tmp_path / "a.plan"
    untidy = "garden  A,2027\n\n\n\tplace 52 N,1 W   \n"
    plan.write_text(untidy, encoding="utf-8")
    status, out = said(capsys, "tidy", str(plan))
    assert status == 0
    assert out == "garden A, 2027\n\n  place 52 N, 1 W\n"
    assert plan.read_text(encoding="utf-8") == untidy


def test_tidy_writes_only_when_told_to(tmp_path, capsys) -> None:
    plan = tmp_path / "a.plan"
    plan.write_text("garden A,  2027\n", encoding="utf-8")
    status, _ = said(capsys, "tidy", "--write", str(plan))
    assert status == 0
    assert plan.read_text(encoding="utf-8") == "garden A, 2027\n"
