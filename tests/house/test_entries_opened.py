"""A plan of forty plants opens their forty entries and no other, and stays quick."""

from __future__ import annotations

import json
import subprocess
import sys
from typing import TYPE_CHECKING

from plantframe.catalogue.reading import entry_names

if TYPE_CHECKING:
    from pathlib import Path

FORTY = 40

PROBE = """
import json, sys
from plantframe.catalogue import reading
opened = []
true_load = reading.load
def load(path):
    opened.append(f"{path.parent.name}/{path.stem}")
    return true_load(path)
reading.load = load
from plantframe.language.files import read_plan
from plantframe.plan.building import build
from plantframe.season.season import Season
from datetime import date
today = date(2027, 1, 15)
plan, _ = build(read_plan(sys.argv[1]), today)
read = list(opened)
season = Season(plan, today)
for planting in season.plantings:
    planting.weight_kg_per_m, planting.usual_per_metre, planting.harvest
print(json.dumps({"read": read, "opened": opened, "plants": len(season.plantings)}))
"""


def plan_of(names: list[str], folder: Path) -> Path:
    """A plan with each of these plants in a bed of its own."""
    beds = "".join(f"bed Bed {one}, 1 m x 3 m\n  grow {name}\n" for one, name in enumerate(names))
    file = folder / "2027.plan"
    head = "garden Hill, 2027\n  place 52 N, 1 W\n  frost last 6 May, first 12 October\n"
    file.write_text(head + beds, encoding="utf-8")
    return file


def opened_by(file: Path, root: Path) -> dict[str, list[str]]:
    run = subprocess.run(
        [sys.executable, "-c", PROBE, str(file)],
        cwd=root,
        capture_output=True,
        text=True,
        check=False,
    )
    assert run.returncode == 0, run.stderr
    found: dict[str, list[str]] = json.loads(run.stdout)
    return found


def test_a_plan_of_forty_plants_opens_forty_entries_and_no_other(
    root: Path, tmp_path: Path
) -> None:
    names = entry_names("plant")[::4][:FORTY]
    assert len(names) == FORTY
    found = opened_by(plan_of(names, tmp_path), root)
    plants = {one for one in found["opened"] if one.startswith("plants/")}
    # an entry that is like another is filled in from that one
    assert len(plants) <= FORTY + 6
    assert {f"plants/{name.lower().replace(' ', '-').replace(chr(39), '')}" for name in names} <= {
        *plants
    }
    assert len(found["opened"]) == len(set(found["opened"])), "each is opened once"


def test_reading_a_plan_opens_no_entry_at_all(root: Path, tmp_path: Path) -> None:
    found = opened_by(plan_of(entry_names("plant")[:FORTY], tmp_path), root)
    assert found["read"] == []
