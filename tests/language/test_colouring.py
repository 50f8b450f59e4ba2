"""The colouring file is fresh, and a real editor colours a plan with it and leaves it alone."""

from __future__ import annotations

import json
import subprocess
from typing import TYPE_CHECKING

import pytest

from plantframe.language.colouring import colouring, colouring_file

if TYPE_CHECKING:
    from pathlib import Path

PLAN = """\
(A remark on a line of its own.)
garden Sallow Strip, 2027
  frost last 6 May, first 12 October
frame Bean Net, net frame, in Long Bed
  posts 2x2, 8 ft, 18 in down (the straight ones)
  grow pole bean 'Tall Postman', 40 plants
  ok crowded because "we thin by eating", Isa
"""
# line and column (both from 1) -> the group that the editor must give it
WANTED = {
    (1, 3): "planRemark",
    (2, 1): "planBlock",
    (2, 10): "planName",
    (3, 4): "planFact",
    (3, 14): "planFigure",
    (3, 16): "planMonth",
    (4, 8): "planName",
    (5, 4): "planFact",
    (5, 9): "planFigure",
    (5, 35): "planRemark",
    (6, 20): "planCultivar",
    (7, 4): "planFact",
    (7, 25): "planReason",
}


def test_the_file_is_what_the_declarations_give() -> None:
    assert colouring_file().read_text(encoding="utf-8") == colouring(), (
        "write it anew: python -m plantframe.language.colouring"
    )


@pytest.mark.editor
def test_a_real_editor_colours_a_plan_and_writes_it_back_as_it_was(
    editor_path: str, tmp_path: Path
) -> None:
    plan, told = tmp_path / "strip.plan", tmp_path / "told.json"
    plan.write_text(PLAN, encoding="utf-8")
    places = json.dumps([list(place) for place in WANTED])
    ask = (
        f"call writefile([json_encode(map({places}, "
        "'synIDattr(synID(v:val[0], v:val[1], 1), \"name\")'))], "
        f"'{told}')"
    )
    command = [
        *(editor_path, "--headless", "-u", "NONE", "-i", "NONE", "-n", str(plan)),
        *("-c", "syntax on", "-c", f"source {colouring_file()}"),
        *("-c", ask, "-c", "write", "-c", "quit"),
    ]
    done = subprocess.run(command, capture_output=True, timeout=60, check=False)
    assert done.returncode == 0, done.stderr
    assert dict(zip(WANTED, json.loads(told.read_text(encoding="utf-8")), strict=True)) == WANTED
    assert plan.read_text(encoding="utf-8") == PLAN
