"""What a start costs: `check` reads and advises without a graph, a solver or an editor library."""

from __future__ import annotations

import json
import subprocess
import sys
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from pathlib import Path

# Each of these costs more than reading a whole plan does.
HEAVY = {
    *("networkx", "numpy", "scipy", "highspy", "ortools"),  # order, sums and solvers
    *("matplotlib", "drawsvg", "jinja2", "icalendar"),  # drawing and paper
    *("pygls", "lsprotocol"),  # the editor
}

PROBE = """
import json, sys
from plantframe.commands.main import main
try:
    status = main(sys.argv[1:])
except SystemExit as end:
    status = end.code
loaded = sorted({name.split(".")[0] for name in sys.modules})
print(json.dumps({"status": status, "loaded": loaded}), file=sys.stderr)
"""


def loaded_by(root: Path, *words: str) -> set[str]:
    """The top names of all that a command has loaded when it ends, and no traceback."""
    run = subprocess.run(
        [sys.executable, "-c", PROBE, *words],
        cwd=root,
        capture_output=True,
        text=True,
        check=False,
    )
    assert run.returncode == 0, run.stderr
    *complaints, last = run.stderr.splitlines()
    told = json.loads(last)
    assert told["status"] in (0, None), "\n".join([run.stdout, *complaints])
    return set(told["loaded"])


def test_the_probe_sees_a_library_that_is_loaded(root: Path) -> None:
    assert "lark" in loaded_by(root, "check", "plans/quarry-row", "--today", "2027-03-01")


@pytest.mark.parametrize("form", [[], ["--json"]], ids=["in words", "as data"])
def test_check_loads_no_graph_no_solver_and_no_editor(root: Path, form: list[str]) -> None:
    loaded = loaded_by(root, "check", "plans/quarry-row", "--today", "2027-03-01", *form)
    assert not loaded & HEAVY


def test_help_loads_not_even_the_reader(root: Path) -> None:
    assert not loaded_by(root, "--help") & {*HEAVY, "lark", "yaml", "tabulate"}
