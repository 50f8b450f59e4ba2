"""What is kept between runs saves work and never costs an answer."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from plantframe import kept

if TYPE_CHECKING:
    from collections.abc import Iterator

ROOT = Path(__file__).parent.parent.parent
PLAN = ROOT / "plans" / "quarry-row" / "2027.plan"


@pytest.fixture
def cache(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "cache"))
    kept.folder.cache_clear()
    yield tmp_path / "cache" / "plantframe"
    kept.folder.cache_clear()


def test_what_was_kept_of_a_file_comes_back(cache: Path, tmp_path: Path) -> None:
    file = tmp_path / "bean.yaml"
    file.write_text("name: bean", encoding="utf-8")
    value = {"name": "bean", "weights": {1: [0.5, None, True]}}
    kept.write(file, value)
    assert kept.read(file) == value
    assert list(cache.iterdir())


@pytest.mark.usefixtures("cache")
def test_a_file_that_has_changed_is_read_anew(tmp_path: Path) -> None:
    file = tmp_path / "bean.yaml"
    file.write_text("name: bean", encoding="utf-8")
    kept.write(file, {"name": "bean"})
    file.write_text("name: broad bean", encoding="utf-8")
    assert kept.read(file) is None


@pytest.mark.parametrize("rubbish", [b"", b"rubbish", b"\xff" * 40])
def test_a_broken_cache_is_no_cache(cache: Path, tmp_path: Path, rubbish: bytes) -> None:
    file = tmp_path / "bean.yaml"
    file.write_text("name: bean", encoding="utf-8")
    kept.write(file, {"name": "bean"})
    for one in cache.iterdir():
        one.write_bytes(rubbish)
    assert kept.read(file) is None


def test_a_file_cut_short_or_with_one_byte_wrong_is_no_cache(cache: Path, tmp_path: Path) -> None:
    file = tmp_path / "bean.yaml"
    file.write_text("name: bean", encoding="utf-8")
    kept.write(file, {"name": "bean", "heights": [1.8, 2.4]})
    (own,) = cache.iterdir()
    whole = own.read_bytes()
    for place in range(len(whole)):
        own.write_bytes(whole[:place])
        assert kept.read(file) is None
        own.write_bytes(whole[:place] + bytes([whole[place] ^ 0x10]) + whole[place + 1 :])
        assert kept.read(file) is None


def test_what_cannot_be_kept_is_let_be(cache: Path, tmp_path: Path) -> None:
    file = tmp_path / "bean.yaml"
    file.write_text("name: bean", encoding="utf-8")
    kept.write(file, {"name": object()})
    assert kept.read(file) is None
    assert not [one for one in cache.iterdir() if one.suffix != ".kept"]


@pytest.mark.parametrize("place", ["/dev/null/nowhere", "/proc/nowhere"])
def test_a_home_that_cannot_be_written_costs_no_answer(place: str) -> None:
    command = [sys.executable, "-m", "plantframe", "check", str(PLAN), "--today", "2026-11-25"]
    without = {**os.environ, "XDG_CACHE_HOME": place}
    with_one = subprocess.run(command, capture_output=True, check=False, cwd=ROOT)
    done = subprocess.run(command, capture_output=True, check=False, cwd=ROOT, env=without)
    assert done.returncode == with_one.returncode == 0
    assert done.stdout == with_one.stdout
    assert done.stderr == b""
