"""How long `plantframe check` takes and how much memory it holds, against what was aimed at.

    .venv/bin/python tests/bench/bench.py [--runs 7]

Whole processes are timed and the median is kept. Ratios travel between machines, seconds do not, so
the targets are ratios, but for memory. It prints a table and ends with 0 whether a target is met or
not; only a command that could not be run at all ends it with 1.
"""

from __future__ import annotations

import argparse
import os
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from typing import NamedTuple

ROOT = Path(__file__).resolve().parent.parent.parent
sys.path.insert(0, str(ROOT))

from tests.bench.faults import pair  # noqa: E402 - found once the root is known

HEAD = """\
garden Bench Bottom, 2027
  place 51.4 N, 2.1 W
  frost last 4 May, first 14 October
  wind average, from the south-west
  soil firm loam
  person Wren, reach 1.95 m, lifts 15 kg
  person Ansel, lifts 25 kg
  free Saturday 6 h, Wednesday 2 h
  lines marked 2 March

shed
  6 posts 2x2, 8 ft
  net 5 ft x 20 ft, mesh 10 cm
  40 nails 20d

yard
  2x2, 8 ft
  2x4, 8 ft
"""

# One household's ordinary blocks, over and over under new names. With squash in the Long Beds the
# year before nothing is worth a warning, so that the time is that of reading and working out; with
# peas there each Bean Net is warned of, and ways out are tried for those on the first screen.
BLOCKS = """
bed Long Bed {n}, 1.2 m x 7.5 m, runs north-south
  sun full
  had lettuce in 2025, {before} in 2026

frame Bean Net {n}, net frame, in Long Bed {n}, north end
  bays 2 of 6 ft
  posts 2x2, 8 ft, 18 in down, 6 ft 6 in up
  bar 2x2
  net 6 ft 6 in x 12 ft, mesh 15 cm
  grow pole bean 'Tall Piper', 20 plants, sow 20 May
  ready by 15 May
  (the row that the blackbirds like)

bed Short Bed {n}, 1.2 m x 4 m, runs north-south
  sun full
  had squash in 2026

frame Pea Net {n}, net frame, in Short Bed {n}
  bays 2 of 6 ft
  posts 2x2, 8 ft, 18 in down, 6 ft 6 in up
  bar 2x2
  net 6 ft 6 in x 12 ft, mesh 10 cm
  grow tall pea, 60 plants, sow 5 April
  take down 30 July

task mend the net of Bean Net {n}, by 1 April
log 2 August, Bean Net {n}, picked 1.4 kg
"""


class Target(NamedTuple):
    """One thing measured: what, how much, how much was aimed at, and in what."""

    what: str
    measured: float
    aim: float
    unit: str


def plan(lines: int, before: str = "squash") -> str:
    """A plan of just so many lines; `before` is what the Long Beds had the year before."""
    text = HEAD
    number = 0
    while text.count("\n") < lines:
        number += 1
        text += BLOCKS.format(n=number, before=before)
    return "".join(text.splitlines(keepends=True)[:lines])


def once(command: list[str], folder: Path) -> tuple[float, float]:
    """Seconds and megabytes of one run of a command; it may find faults, but has no complaint."""
    seen = {**os.environ, "PYTHONPATH": str(ROOT)}
    with tempfile.TemporaryFile() as said:
        began = time.perf_counter()
        child = subprocess.Popen(
            command, cwd=folder, env=seen, stdout=subprocess.DEVNULL, stderr=said
        )
        _, status, used = os.wait4(child.pid, 0)
        seconds = time.perf_counter() - began
        child.returncode = os.waitstatus_to_exitcode(status)
        said.seek(0)
        complaint = said.read().decode(errors="replace").strip()
        if child.returncode not in (0, 1) or complaint:
            raise RuntimeError(f"{' '.join(command)} ended with {child.returncode}: {complaint}")
    per_mb = 1e6 if sys.platform == "darwin" else 1e3  # the one counts bytes, the others thousands
    return seconds, used.ru_maxrss / per_mb


def median(command: list[str], folder: Path, runs: int) -> tuple[float, float]:
    """Median seconds, largest megabytes, after one run that warms the disk and is not counted."""
    once(command, folder)
    took = [once(command, folder) for _ in range(runs)]
    return statistics.median(s for s, _ in took), max(mb for _, mb in took)


def measure(folder: Path, runs: int) -> tuple[list[Target], dict[str, float]]:
    """All targets, and the seconds that they came from."""
    check = [sys.executable, "-m", "plantframe", "check", "--today", "2027-03-05"]
    seconds, megabytes = {}, {}
    imports = [sys.executable, "-c", "import lark, yaml"]
    seconds["import lark and yaml"], _ = median(imports, folder, runs)
    for lines in (300, 1_000, 10_000):
        (folder / f"{lines}.plan").write_text(plan(lines), "utf-8")
        name = f"check of {lines:,} lines"
        seconds[name], megabytes[lines] = median([*check, f"{lines}.plan"], folder, runs)
    (folder / "faults.plan").write_text(plan(300, before="pea"), "utf-8")
    name = "check of 300 lines, a screen of warnings"
    seconds[name], _ = median([*check, "faults.plan"], folder, runs)
    faulty, sound, causes = pair()
    for name, text in (("sound", sound), ("faulty", faulty)):
        (folder / f"{name}.plan").write_text(text, "utf-8")
    with_causes, without = f"check of a garden with {causes} causes", "check of its twin with none"
    seconds[without], _ = median([*check, "sound.plan"], folder, runs)
    seconds[with_causes], _ = median([*check, "faulty.plan"], folder, runs)
    start = seconds["check of 300 lines"] / seconds["import lark and yaml"]
    growth = seconds["check of 10,000 lines"] / seconds["check of 1,000 lines"]
    return [
        Target("check of 300 lines ÷ import of lark and yaml", start, 3, "times"),
        Target("check of 10,000 lines ÷ check of 1,000", growth, 12, "times"),
        Target(
            "check with fifty causes ÷ check without",
            seconds[with_causes] / seconds[without],
            2,
            "times",
        ),
        Target("memory, check of 300 lines", megabytes[300], 120, "MB"),
        Target("memory, check of 10,000 lines", megabytes[10_000], 120, "MB"),
    ], seconds


def main() -> int:
    """Measure, print, and tell whether everything could be run."""
    reader = argparse.ArgumentParser(description="Times plantframe check against its targets.")
    reader.add_argument("--runs", type=int, default=7, help="runs of each command (default 7)")
    runs = reader.parse_args().runs
    with tempfile.TemporaryDirectory() as folder:
        try:
            targets, seconds = measure(Path(folder), runs)
        except (OSError, RuntimeError) as failed:
            print(failed, file=sys.stderr)
            return 1
    print(f"median of {runs}, whole processes, Python {sys.version.split()[0]}")
    for name, took in seconds.items():
        print(f"  {name:<46} {took * 1000:>8.0f} ms")
    print(f"  {'':<46} {'measured':>8} {'aim':>8}")
    for target in targets:
        met = "" if target.measured <= target.aim else "  over"
        print(
            f"  {target.what:<46} {target.measured:>8.1f} {target.aim:>8.0f} {target.unit:<6}{met}"
        )
    return 0


if __name__ == "__main__":
    sys.exit(main())
