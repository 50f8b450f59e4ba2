"""The built wheel: all that a gardener installs, run where the source cannot be seen."""

from __future__ import annotations

import shutil
import subprocess
import sys
import sysconfig
import zipfile
from pathlib import Path
from typing import NamedTuple

import pytest

ROOT = Path(__file__).resolve().parent.parent.parent


class Installed(NamedTuple):
    """A wheel, and an environment of its own that it is installed in."""

    wheel: Path
    python: Path


def run(*words: str | Path, cwd: Path) -> subprocess.CompletedProcess[str]:
    """Run a command somewhere, with nothing inherited that could lead back to the source."""
    clean = {"PATH": "/usr/bin:/bin", "HOME": str(cwd), "LANG": "C.UTF-8", "NO_COLOR": "1"}
    return subprocess.run(
        [str(word) for word in words],
        cwd=cwd,
        env=clean,
        capture_output=True,
        text=True,
        check=False,
    )


def names_in(wheel: Path) -> set[str]:
    """Every file of a wheel."""
    with zipfile.ZipFile(wheel) as packed:
        return set(packed.namelist())


@pytest.fixture(scope="module")
def installed(tmp_path_factory: pytest.TempPathFactory) -> Installed:
    """Build a copy of the source and install the wheel; nothing is fetched.

    The libraries come from the environment of the tests through a .pth file whose line is read
    after the wheel's own folder. An editable install of plantframe there is a .pth too, and the
    .pth files of a folder added in this way are not read: the source stays out of sight.
    """
    folder = tmp_path_factory.mktemp("wheel")
    source = folder / "source"
    kept_out = shutil.ignore_patterns(".*", "__pycache__", "*.egg-info", "dist", "build")
    shutil.copytree(ROOT, source, ignore=kept_out)
    built = run(
        *(sys.executable, "-m", "build", "--no-isolation", "--outdir", folder / "dist", source),
        cwd=folder,
    )
    assert built.returncode == 0, built.stdout + built.stderr
    (wheel,) = (folder / "dist").glob("*.whl")
    shutil.rmtree(source)

    room = folder / "room"
    made = run(sys.executable, "-m", "venv", "--without-pip", room, cwd=folder)
    assert made.returncode == 0, made.stderr
    python = room / "bin" / "python"
    put = run(
        *(sys.executable, "-m", "pip", "--python", python, "install", "-q"),
        *("--no-deps", "--no-index", "--disable-pip-version-check", wheel),
        cwd=folder,
    )
    assert put.returncode == 0, put.stderr
    (own,) = (room / "lib").glob("python*/site-packages")
    (own / "libraries.pth").write_text(sysconfig.get_path("purelib") + "\n", "utf-8")
    return Installed(wheel, python)


def test_the_wheel_holds_the_grammar_and_every_entry_of_the_catalogue(installed: Installed) -> None:
    inside = names_in(installed.wheel)
    grammar = {f"plantframe/grammar/{path.name}" for path in (ROOT / "grammar").glob("*.lark")}
    catalogue = ROOT / "plantframe" / "catalogue"
    entries = {
        path.relative_to(ROOT).as_posix()
        for end in ("yaml", "json")
        for path in catalogue.rglob(f"*.{end}")
    }
    assert grammar
    assert entries
    assert grammar | entries <= inside


def test_the_wheel_holds_no_tests_and_no_demo_gardens(installed: Installed) -> None:
    tops = {name.split("/")[0] for name in names_in(installed.wheel)}
    assert {top.split("-")[0] for top in tops} == {"plantframe"}


def test_a_plan_is_checked_far_from_the_source(installed: Installed, tmp_path: Path) -> None:
    shutil.copytree(ROOT / "plans" / "quarry-row", tmp_path / "garden")
    where = run(
        installed.python, "-c", "import plantframe; print(plantframe.__file__)", cwd=tmp_path
    )
    assert Path(where.stdout.strip()).is_relative_to(installed.python.parent.parent)

    program = installed.python.parent / "plantframe"
    checked = run(program, "check", "garden", "--today", "2027-03-01", cwd=tmp_path)
    assert checked.returncode == 0, checked.stdout + checked.stderr
    assert checked.stdout.strip()
    assert checked.stderr == ""


def test_the_module_runs_like_the_command(installed: Installed, tmp_path: Path) -> None:
    shutil.copytree(ROOT / "plans" / "quarry-row", tmp_path / "garden")
    words = ("check", "garden", "--today", "2027-03-01")
    command = run(installed.python.parent / "plantframe", *words, cwd=tmp_path)
    module = run(installed.python, "-m", "plantframe", *words, cwd=tmp_path)
    assert (module.returncode, module.stdout) == (command.returncode, command.stdout)


def test_a_plan_that_is_not_there_costs_one_sentence(installed: Installed, tmp_path: Path) -> None:
    lost = run(installed.python.parent / "plantframe", "check", "nowhere.plan", cwd=tmp_path)
    assert lost.returncode == 2
    assert "nowhere.plan" in lost.stderr
    assert "Traceback" not in lost.stderr
