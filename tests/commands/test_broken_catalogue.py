"""One broken entry costs that entry and nothing else, and every command says which line it is."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

HOUSE = Path(__file__).resolve().parent.parent.parent
PLAN = """\
garden Sorrel Row, 2027
  place 52 N, 1 W
  frost last 10 May, first 5 October
  lines marked 2 March
bed Long Bed, 1.2 m x 12 m
frame Wig, wigwam, in Long Bed
  grow runner bean, 8 plants
frame Net, net frame, in Long Bed
  bays 1 of 8 ft
  grow tall pea, 60 plants
want cucumber, 4 plants
"""
WHAT = {
    "a word no entry has": (
        "structures/wigwam.yaml",
        ("\nheight: tie.height", "\nheigth: tie.height"),
        ["wigwam.yaml, line", "heigth", "no entry has this word"],
        "Wig",
    ),
    "a bracket too many": (
        "structures/wigwam.yaml",
        ("\nsums:", "\nsums: ["),
        ["wigwam.yaml, line", "out of place"],
        "Wig",
    ),
    "a figure without its basis": (
        "structures/wigwam.yaml",
        ("{value: 20 mm round, basis: common practice}", "{value: 20 mm round}"),
        ["wigwam.yaml, line", "facts, posts, section"],
        "Wig",
    ),
    "a broken plant": (
        "plants/runner-bean.yaml",
        ("\nlatin:", "\nlattin:"),
        ["runner-bean.yaml, line", "lattin"],
        "runner bean in Wig",
    ),
}


@pytest.fixture(scope="module")
def copy(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A copy of the program, to break."""
    place = tmp_path_factory.mktemp("house")
    without = shutil.ignore_patterns("__pycache__")
    for room in ("plantframe", "grammar"):
        shutil.copytree(HOUSE / room, place / room, ignore=without)
    (place / "two.plan").write_text(PLAN, encoding="utf-8")
    return place


def told(copy: Path, *words: str) -> tuple[int, str]:
    """What a command of the copy prints, on both channels, on one line."""
    env = {**os.environ, "PYTHONPATH": str(copy), "XDG_CACHE_HOME": str(copy / "cache")}
    command = [sys.executable, "-m", "plantframe", *words]
    done = subprocess.run(
        command, cwd=copy, env=env, capture_output=True, text=True, check=False, timeout=60
    )
    return done.returncode, " ".join((done.stdout + done.stderr).split())


@pytest.mark.parametrize("fault", WHAT)
def test_a_broken_entry_is_named_and_the_rest_still_serves(copy: Path, fault: str) -> None:
    file, (old, new), says, holder = WHAT[fault]
    entry = copy / "plantframe" / "catalogue" / file
    whole = entry.read_text(encoding="utf-8")
    assert whole.count(old) == 1
    entry.write_text(whole.replace(old, new), encoding="utf-8")
    try:
        status, check = told(copy, "check", "two.plan")
        jobs = told(copy, "jobs", "two.plan")
        facts = told(copy, "facts", entry.stem.replace("-", " "))
        others = told(copy, "facts", "net frame")
        pairs = told(copy, "pair", "two.plan")
    finally:
        entry.write_text(whole, encoding="utf-8")
    assert status in {0, 1}
    assert f"{holder} (its entry cannot be read: " in check
    for words in says:
        assert words in check
        assert words in facts[1]
    assert jobs[0] == others[0] == pairs[0] == 0
    assert "thread the net on the posts" in jobs[1]  # the other frame is built as ever
    assert "Traceback" not in check + jobs[1] + facts[1] + others[1] + pairs[1]
