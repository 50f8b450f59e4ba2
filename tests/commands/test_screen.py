"""What goes to the screen: signs that would steer it stand there as marks that can be seen."""

from __future__ import annotations

import io
import json
import re
from typing import TYPE_CHECKING

import pytest

from plantframe.commands.main import main
from plantframe.commands.screen import Screen, shown

if TYPE_CHECKING:
    from pathlib import Path

# ISO/IEC 6429 (C0, DEL and C1) and Unicode Standard Annex 9 (embeddings, overrides, isolates).
STEERING = [
    *(chr(code) for code in range(0x20) if chr(code) not in "\t\n"),
    *(chr(code) for code in range(0x7F, 0xA0)),
    *(chr(code) for code in (*range(0x202A, 0x202F), *range(0x2066, 0x206A))),
]
BED, NET = "Lo\u202eng Bed\x9b", "Bean\u2066 Net\x07"
PLAN = (
    f"garden Quarry Row\x1b[31m, 2027\n  place 52.1 N, 1.4 W\nbed {BED}, 4 ft x 8 ft\n"
    f"frame {NET}, net frame, in {BED}\n  bays 2 of 8 ft\n  bears 2x2\x1b]0;x\x07\n"
    "  grow pole bean\n"
)
ANY = re.compile("[" + "".join(re.escape(sign) for sign in STEERING) + "]")


@pytest.mark.parametrize("sign", STEERING, ids=lambda sign: f"{ord(sign):04x}")
def test_each_sign_that_steers_has_a_stand_in_of_one_place(sign: str) -> None:
    said = shown(f"a{sign}b")
    assert len(said) == 3
    assert sign not in said
    assert said[1].isprintable()


def test_what_gardeners_write_stays_as_it_is() -> None:
    plain = "Ré\u2019s Bëd, 2½ ft × 8 ft, 20 °C, 菜園, \u05d2\u05df\ttab"
    assert shown(plain) == plain


def test_the_screen_keeps_its_own_emphasis_and_takes_no_other() -> None:
    out = io.StringIO()
    screen = Screen(out, 80, plain=False)
    screen.line(screen.strong("Bean\x1b[5m Net"))
    assert out.getvalue() == "\x1b[1mBean\u241b[5m Net\x1b[0m\n"
    out = io.StringIO()
    Screen(out).line("\x1b[1mBean")
    assert "\x1b" not in out.getvalue()


@pytest.mark.parametrize(
    "asked",
    [("check",), ("jobs",), ("pair",), ("buy",), ("cut",), ("calendar",), ("log",), ("draw", "x")],
    ids=lambda asked: asked[0],
)
def test_no_answer_steers_the_screen(
    asked: tuple[str, ...], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "row.plan"
    file.write_text(PLAN, encoding="utf-8")
    main([asked[0], str(file), *asked[1:]])
    said = "".join(capsys.readouterr())
    assert said
    assert not ANY.search(said.replace("\r\n", "\n"))


def test_as_data_the_names_are_kept_whole(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "row.plan"
    file.write_text(PLAN, encoding="utf-8")
    main(["check", str(file), "--json"])
    out = capsys.readouterr().out
    assert not ANY.search(out)
    assert "\u2066" in json.dumps(json.loads(out), ensure_ascii=False)
