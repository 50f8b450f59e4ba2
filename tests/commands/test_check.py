"""`plantframe check` as a gardener, a script and an editor see it."""

from __future__ import annotations

import io
import json
import re
import subprocess
import sys
from pathlib import Path

import pytest

from plantframe.advice.engine import rule_named
from plantframe.commands.main import main
from tests.bench.faults import pair

PLANS = Path(__file__).parent.parent.parent / "plans"
TODAY = ["--today", "2026-11-25"]
SQUASH = """\
garden Test Strip, 2027
  place 52 N, 1 W
  lines marked 2 March
bed Strip, 1.2 m x 4 m
frame Gate Net, net frame, in Strip
  bays 1 of 8 ft
  posts 2x2, 8 ft, 18 in down, 6 ft 6 in up
  bar 2x2
  grow climbing squash, 3 plants, sow 24 May
"""


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    file = tmp_path / "strip.plan"
    file.write_text(SQUASH, encoding="utf-8")
    return file


def answered(name: str) -> bool:
    """It cannot be set aside, only answered."""
    rule = rule_named(name)
    return rule is not None and bool(rule.answered) and rule.answered_at == "note"


def said(capsys: pytest.CaptureFixture[str], *arguments: str) -> tuple[int, str, str]:
    status = main(list(arguments))
    out, err = capsys.readouterr()
    return status, out, err


def test_a_warning_alone_lets_the_command_end_with_0(plan, capsys) -> None:
    status, out, err = said(capsys, "check", str(plan), *TODAY)
    assert status == 0
    assert err == ""
    assert "too-heavy" in out
    assert "twice too much" in out


def test_something_to_stop_for_ends_with_1(plan, capsys) -> None:
    plan.write_text(SQUASH.replace("in Strip", "in Stirp"), encoding="utf-8")
    status, out, _ = said(capsys, "check", str(plan), *TODAY)
    assert status == 1
    assert "No bed “Stirp”. Nearest: Strip (line 4)." in out


def test_a_line_that_cannot_be_read_ends_with_1_and_the_rest_is_answered(plan, capsys) -> None:
    plan.write_text("  stray, line\n" + SQUASH, encoding="utf-8")
    status, out, _ = said(capsys, "check", str(plan), *TODAY)
    assert status == 1
    assert "no-block" in out
    assert "too-heavy" in out


def test_a_plan_that_is_not_there_ends_with_2_and_one_plain_sentence(tmp_path, capsys) -> None:
    status, out, err = said(capsys, "check", str(tmp_path / "nowhere.plan"))
    assert status == 2
    assert out == ""
    assert err.count("\n") == 1
    assert "there is no plan" in err


@pytest.mark.parametrize(
    "arguments",
    [
        ["dig"],
        ["check"],
        ["check", "--today", "tomorrow", "x.plan"],
        ["facts"],
        ["facts", "rubner"],
        ["jobs"],
    ],
)
def test_wrong_words_end_with_2_and_one_plain_sentence(arguments, capsys) -> None:
    status, out, err = said(capsys, *arguments)
    assert status == 2
    assert out == ""
    assert err.startswith("plantframe: ")
    assert err.count("\n") == 1
    assert "Traceback" not in err


def test_the_json_holds_what_is_promised(plan, capsys) -> None:
    status, out, _ = said(capsys, "check", "--json", str(plan), *TODAY)
    data = json.loads(out)
    assert status == 0
    assert set(data) >= {
        "plan",
        "mistakes",
        "advice",
        "set_aside",
        "fine",
        "assumed",
        "not_checked",
    }
    heavy = next(one for one in data["advice"] if one["name"] == "too-heavy")
    assert set(heavy) >= {
        "name",
        "level",
        "block",
        "file",
        "line",
        "says",
        "if_ignored",
        "by",
        "ratio",
        "basis",
        "source",
        "offers",
    }
    assert heavy["level"] == "warn"
    assert heavy["block"] == "Gate Net"
    assert heavy["line"] == 8
    assert heavy["by"] == "2027-05-24"
    assert heavy["ratio"] == sorted(heavy["ratio"])
    offer = heavy["offers"][0]
    assert set(offer) == {"says", "changes"}
    assert set(offer["changes"][0]) == {"file", "line", "old", "new"}


def test_an_offer_pasted_from_the_json_silences_the_warning(plan, capsys) -> None:
    _, out, _ = said(capsys, "check", "--json", str(plan), *TODAY)
    heavy = next(one for one in json.loads(out)["advice"] if one["name"] == "too-heavy")
    for offer in heavy["offers"]:
        lines = SQUASH.split("\n")
        for change in sorted(offer["changes"], key=lambda one: -one["line"]):
            if change["old"] is None:
                lines.insert(change["line"], change["new"])
            else:
                assert lines[change["line"] - 1] == change["old"]
                lines[change["line"] - 1] = change["new"]
        plan.write_text("\n".join(lines), encoding="utf-8")
        _, after, _ = said(capsys, "check", "--json", str(plan), *TODAY)
        assert "too-heavy" not in {one["name"] for one in json.loads(after)["advice"]}


def test_the_same_plan_on_the_same_day_gives_the_same_bytes() -> None:
    command = [sys.executable, "-m", "plantframe", "check", str(PLANS / "quarry-row"), *TODAY]
    once = subprocess.run(command, capture_output=True, check=False).stdout
    again = subprocess.run(
        command, capture_output=True, check=False, env={"PYTHONHASHSEED": "7", "TZ": "Asia/Tokyo"}
    ).stdout
    assert once
    assert once == again


@pytest.mark.parametrize("name", ["quarry-row", "tussock-flat"])
def test_a_demo_garden_has_warnings_and_nothing_to_stop_for(name, capsys) -> None:
    status, out, _ = said(capsys, "check", "--json", str(PLANS / name), *TODAY)
    data = json.loads(out)
    assert status == 0
    assert {"warn"} <= {one["level"] for one in data["advice"]}
    assert data["mistakes"] == []


def test_a_plan_may_come_on_standard_input(monkeypatch, capsys) -> None:
    stream = io.TextIOWrapper(io.BytesIO(SQUASH.encode()), encoding="utf-8")
    monkeypatch.setattr(sys, "stdin", stream)
    status, out, _ = said(capsys, "check", "-", *TODAY)
    assert status == 0
    assert "too-heavy" in out


def test_what_is_piped_is_plain(plan, capsys) -> None:
    _, out, _ = said(capsys, "check", str(plan), *TODAY)
    assert "\033" not in out


def test_no_line_is_wider_than_the_screen_but_for_a_word(plan, capsys) -> None:
    _, out, _ = said(capsys, "check", str(plan), *TODAY)
    assert max(len(line) for line in out.split("\n")) <= 80


def test_a_beginner_is_told_why(plan, capsys) -> None:
    _, seasoned, _ = said(capsys, "check", str(plan), *TODAY)
    _, beginner, _ = said(capsys, "check", "--voice", "beginner", str(plan), *TODAY)
    assert "Why:" in beginner
    assert "Why:" not in seasoned


def test_the_same_in_twelve_places_is_told_once_and_the_places_named(plan, capsys) -> None:
    frames = "\n".join(
        SQUASH.split("frame ", maxsplit=1)[1].join(["frame ", ""]).replace("Gate Net", f"Net {n}")
        for n in range(12)
    )
    plan.write_text(SQUASH.split("frame ", maxsplit=1)[0] + frames, encoding="utf-8")
    _, out, _ = said(capsys, "check", str(plan), *TODAY)
    assert out.count("warn  too-heavy") == 1
    assert "So too:  Net 1 (line " in out
    assert "5 more (plantframe check --all)" in " ".join(out.split())
    _, whole, _ = said(capsys, "check", "--all", str(plan), *TODAY)
    assert whole.count("warn  too-heavy") == 12


def test_what_can_hurt_says_so_of_each_thing_it_can_hurt_by(plan, capsys) -> None:
    text = SQUASH.replace("  lines marked", "  children 3 and 6\n  lines marked").replace(
        "  grow", "  grow wisteria, 1 plant\n  grow"
    )
    text += "bed Back Bed, 1.2 m x 4 m\n  grow foxglove, 2 plants\n"
    plan.write_text(text, encoding="utf-8")
    _, out, _ = said(capsys, "check", str(plan), *TODAY)
    assert out.count("warn  plant-harm") == 1
    folded = " ".join(out.split())
    assert "Foxglove is poisonous" in folded
    assert "isteria is poisonous" in folded


def test_the_first_screen_holds_seven_kinds_and_says_how_many_wait(plan, capsys) -> None:
    faulty, _sound, _causes = pair()
    plan.write_text(faulty, encoding="utf-8")
    _, out, _ = said(capsys, "check", str(plan), *TODAY)
    told = re.findall(r"^\S.* (stop|ask|warn|note)  (\S+)$", out, re.MULTILINE)
    assert [name for level, name in told if level == "note"] == []
    kinds = [name for _, name in told]
    assert len(kinds) == len(set(kinds))
    # what must not be crowded off takes its place first
    grave = [name for level, name in told if level == "stop" or answered(name)]
    assert len(kinds) - len(grave) == max(0, 7 - len(grave))
    assert "more warnings" in out
    _, whole, _ = said(capsys, "check", "--all", str(plan), *TODAY)
    assert whole.count("warn  ") > out.count("warn  ")


def test_a_reader_that_goes_away_is_no_error(plan) -> None:
    line = f"{sys.executable} -m plantframe check {plan} | head -1"
    done = subprocess.run(["sh", "-c", line], capture_output=True, check=False)
    assert done.stderr == b""
    assert done.stdout.startswith(b"Test Strip")


@pytest.mark.parametrize("closed", ["<&-", ">&-", "2>&-", "<&- >&- 2>&-"])
def test_a_stream_that_is_closed_costs_no_traceback(closed: str, plan: Path) -> None:
    command = f'"{sys.executable}" -m plantframe check "{plan}" --today 2026-11-25 {closed}'
    done = subprocess.run(["bash", "-c", command], capture_output=True, text=True, check=False)
    assert done.returncode == 0
    assert done.stderr == ""
    assert (done.stdout == "") == (">&-" in closed.replace("2>&-", ""))


def test_an_answer_that_cannot_be_written_is_said_in_a_sentence(plan: Path) -> None:
    command = f'"{sys.executable}" -m plantframe check "{plan}" >/dev/full'
    done = subprocess.run(["bash", "-c", command], capture_output=True, text=True, check=False)
    assert done.returncode == 2
    assert done.stderr == "plantframe: no space left on device.\n"


def test_nothing_piped_in_is_an_empty_plan() -> None:
    command = f'"{sys.executable}" -m plantframe check - <&-'
    done = subprocess.run(["bash", "-c", command], capture_output=True, text=True, check=False)
    assert done.returncode == 0
    assert "There is no line `garden Name, year`" in done.stdout
