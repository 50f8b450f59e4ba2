"""The rooms and which way they may look: the contract of pyproject, and what it cannot say."""

from __future__ import annotations

import ast
import subprocess
import sys
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from pathlib import Path


def imported(source: str) -> set[str]:
    """The top names that a module imports, wherever in it the import stands."""
    names: set[str] = set()
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Import):
            names |= {alias.name.split(".")[0] for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.level == 0 and node.module:
            names.add(node.module.split(".")[0])
    return names


def test_no_room_looks_where_it_may_not(root: Path) -> None:
    contract = "from importlinter.cli import lint_imports_command as run; run()"
    run = subprocess.run(
        [sys.executable, "-c", contract, "--no-logo", "--no-cache"],
        cwd=root,
        capture_output=True,
        text=True,
        check=False,
    )
    assert run.returncode == 0, run.stdout + run.stderr
    assert "0 broken" in run.stdout


@pytest.mark.parametrize("room", ["mechanics", "sky"])
def test_formulas_need_nothing_but_the_standard_library(root: Path, room: str) -> None:
    modules = sorted((root / "plantframe" / room).rglob("*.py"))
    assert modules
    outside = {
        f"{module.name} imports {name}"
        for module in modules
        for name in imported(module.read_text("utf-8"))
        if name not in sys.stdlib_module_names and name != "plantframe"
    }
    assert not outside


def test_every_room_on_disk_is_tested_in_a_folder_of_its_name(root: Path) -> None:
    rooms = {path.parent.name for path in (root / "plantframe").glob("*/__init__.py")}
    tested = {path.parent.name for path in (root / "tests").glob("*/test_*.py")}
    assert rooms
    assert rooms <= tested
