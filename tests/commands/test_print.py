"""`draw`, `sheet` and `book` as they are typed."""

from __future__ import annotations

import json
from typing import TYPE_CHECKING

import pytest

from plantframe.commands.main import main
from tests.paper.gardens import BED, HEAD, NET, PLANS

if TYPE_CHECKING:
    from pathlib import Path

QUARRY = str(PLANS / "quarry-row")
TODAY = ["--today", "2027-03-01"]


@pytest.fixture
def plan(tmp_path: Path) -> str:
    file = tmp_path / "hazel.plan"
    file.write_text(HEAD + BED + NET, encoding="utf-8")
    return str(file)


def said(capsys: pytest.CaptureFixture[str], *arguments: str) -> tuple[int, str, str]:
    status = main([*arguments, *TODAY])
    out, err = capsys.readouterr()
    return status, out, err


def test_a_frame_is_drawn_whatever_the_capitals(capsys: pytest.CaptureFixture[str]) -> None:
    status, out, _ = said(capsys, "draw", QUARRY, "bean net")
    assert status == 0
    assert out.startswith('<?xml version="1.0"')
    assert out.endswith("</svg>\n")
    assert "Bean Net" in out


def test_a_bed_is_drawn_with_its_shade(capsys: pytest.CaptureFixture[str]) -> None:
    _, out, _ = said(capsys, "draw", QUARRY, "Plum Bed")
    assert "12 o&#x27;clock" in out


def test_boards_are_drawn(capsys: pytest.CaptureFixture[str]) -> None:
    status, out, _ = said(capsys, "draw", QUARRY, "--cutting")
    assert status == 0
    assert "left over" in out


def test_a_kind_is_drawn_without_a_plan(capsys: pytest.CaptureFixture[str]) -> None:
    status, out, _ = said(capsys, "draw", "--structure", "cold frame")
    assert status == 0
    assert "ordinary sizes" in out


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (["draw", QUARRY, "Bean Nett"], "no frame or bed here is called"),
        (["draw", QUARRY], "name what to draw, or a folder with --to"),
        (["draw"], "name a plan, or --structure and a kind"),
        (["draw", "--structure", "wigwaam"], "nearest: wigwam"),
        (["sheet", QUARRY, "Nothing"], "no frame, bed or wall here is called"),
        (["sheet", QUARRY, "--away"], "names no days from here on"),
        (["sheet", QUARRY, "Low Bed"], "there is no"),
    ],
)
def test_what_cannot_be_printed_is_said_in_a_sentence(
    capsys: pytest.CaptureFixture[str], words: list[str], says: str
) -> None:
    status, out, err = said(capsys, *words)
    assert (status, out) == (2, "")
    assert says in err.lower()
    assert "Traceback" not in err


def test_the_building_sheet_is_the_one_printed_unless_another_is_named(
    capsys: pytest.CaptureFixture[str], plan: str
) -> None:
    _, out, _ = said(capsys, "sheet", plan, "Bean Net")
    assert out.count('class="sheet"') == 1
    assert "· building" in out
    _, out, _ = said(capsys, "sheet", plan, "Bean Net", "--planting", "--take-down")
    assert "· building" not in out
    assert out.count('class="sheet"') == 2


def test_sheets_go_into_a_folder_one_file_each(
    capsys: pytest.CaptureFixture[str], plan: str, tmp_path: Path
) -> None:
    status, out, _ = said(capsys, "sheet", plan, "--to", str(tmp_path / "prints"))
    assert status == 0
    names = {path.name for path in (tmp_path / "prints").iterdir()}
    assert {"bean-net-building.html", "bean-net-taking-down.html"} <= names
    assert all(name in out for name in names)


def test_a_file_of_the_gardeners_own_is_never_written_over(
    capsys: pytest.CaptureFixture[str], plan: str, tmp_path: Path
) -> None:
    (tmp_path / "hazel-end-book.html").write_text("mine", encoding="utf-8")
    status, _, err = said(capsys, "book", plan, "--to", str(tmp_path))
    assert status == 2
    assert "no print of mine" in err
    assert (tmp_path / "hazel-end-book.html").read_text("utf-8") == "mine"


def test_paper_and_type_are_as_asked_for(capsys: pytest.CaptureFixture[str], plan: str) -> None:
    _, out, _ = said(capsys, "sheet", plan, "Bean Net", "--letter", "--large")
    assert "size: letter" in out
    assert "sheet 1 of" in out


@pytest.mark.parametrize("command", ["draw", "sheet", "book"])
def test_the_same_answer_as_data(
    capsys: pytest.CaptureFixture[str], plan: str, command: str
) -> None:
    status, out, _ = said(capsys, command, plan, "--json")
    assert status == 0
    data = json.loads(out)
    assert data["plan"]
    assert any(
        "Bean Net" in json.dumps(one) for one in next(v for v in data.values() if v != data["plan"])
    )


@pytest.mark.parametrize(
    "command", [["draw", QUARRY, "Rose Fence"], ["sheet", QUARRY], ["book", QUARRY]]
)
def test_the_same_plan_and_day_give_the_same_bytes(
    capsys: pytest.CaptureFixture[str], command: list[str]
) -> None:
    assert said(capsys, *command) == said(capsys, *command)


def test_one_frame_of_no_real_size_costs_only_itself(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    file = tmp_path / "hazel.plan"
    vast = "frame Vast, net frame\n  bays 1 of 99999999 m\n"
    file.write_text(HEAD + BED + NET + vast, encoding="utf-8")
    status, out, err = said(capsys, "draw", str(file), "--to", str(tmp_path / "prints"))
    assert status == 0
    assert "bean-net.svg" in out
    assert "Vast is left out" in err


def test_a_name_that_climbs_out_of_the_folder_stays_in_it(
    capsys: pytest.CaptureFixture[str], tmp_path: Path
) -> None:
    file = tmp_path / "hazel.plan"
    file.write_text(HEAD + BED + NET.replace("Bean Net", "../../etc/Net"), encoding="utf-8")
    status, _, _ = said(capsys, "sheet", str(file), "--to", str(tmp_path / "a" / "b"))
    assert status == 0
    assert {path.parent for path in tmp_path.rglob("*.html")} == {tmp_path / "a" / "b"}
