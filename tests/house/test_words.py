"""What is written in the house: no promise, no address, no machine's path, nothing unfinished."""

from __future__ import annotations

import ast
import re
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent.parent
TOP_LEVEL = {
    *("README.md", "DEVELOPERS.md", "LICENSE", "pyproject.toml"),
    *("plantframe", "grammar", "tests", "plans"),
}

# The program compares; it never certifies. A loader's own name is not a word of ours, and a pattern
# that hunts for these words holds them side by side.
CERTIFIES = re.compile(r"\b(safe|approved|certified|guaranteed|passes)\b", re.IGNORECASE)
NOT_OURS = re.compile(
    r"\byaml\.safe_(load|dump)(_all)?\b|\bC?Safe(Loader|Dumper)\b|\w+\|approved\|certified\|[\w|]+"
)

# Letters in brackets, so that this file does not match itself. What stands after w3.org is the name
# of a namespace that SVG and XHTML demand, not an address to visit; `.invalid` leads nowhere at all
# (RFC 2606, Reserved Top Level DNS Names).
ADDRESS = re.compile(
    r"(?:http[s]?://|\bw[w]w\.)"
    r"(?!(?:www\.)?w3\.org/(?:2000/svg|1999/xhtml|1999/xlink)\b|[\w.-]+\.invalid\b)"
    r"[A-Za-z]"
)
MACHINE = re.compile(
    r"(?:^|[^A-Za-z0-9_.])/(?:wo[r]k|ro[o]t|tm[p]|ho[m]e|Use[r]s)/[A-Za-z]", re.MULTILINE
)
UNFINISHED = re.compile(
    r"TO[D]O|FIX[M]E|\bX[X]X\b|NotImplemented[E]rror|pytest\.ski[p]|importorski[p]|"
    r"mark\.(?:ski[p]|xfai[l])|unittest\.ski[p]"
)


def committed() -> list[Path]:
    """Every text file that git keeps, as it lies on disk."""
    listed = subprocess.run(
        ["git", "ls-files", "-z"], cwd=ROOT, capture_output=True, check=True
    ).stdout.decode("utf-8")
    files = [ROOT / name for name in listed.split("\0") if name]
    return [path for path in files if path.is_file() and b"\0" not in path.read_bytes()]


def hits(
    pattern: re.Pattern[str], paths: list[Path], but: re.Pattern[str] | None = None
) -> list[str]:
    """Where a pattern occurs, as file:line: text."""
    found = []
    for path in paths:
        for number, line in enumerate(
            path.read_text("utf-8", errors="replace").split("\n"), start=1
        ):
            if pattern.search(but.sub("", line) if but else line):
                found.append(f"{path.relative_to(ROOT)}:{number}: {line.strip()[:100]}")
    return found


def under(*rooms: str) -> list[Path]:
    """The committed files of some folders or files of the top level."""
    return [path for path in committed() if path.relative_to(ROOT).parts[0] in rooms]


def test_nothing_a_gardener_reads_certifies_anything() -> None:
    files = under("plantframe", "grammar", "plans", "README.md")
    assert files
    assert hits(CERTIFIES, files, but=NOT_OURS) == []


def test_no_file_holds_an_address_of_the_web() -> None:
    assert hits(ADDRESS, committed()) == []


def test_no_file_holds_a_path_of_one_machine() -> None:
    assert hits(MACHINE, committed()) == []


def test_nothing_is_unfinished_and_no_check_is_skipped() -> None:
    assert hits(UNFINISHED, under("plantframe", "grammar", "tests", "plans")) == []


def test_the_top_level_holds_what_was_agreed_and_nothing_else() -> None:
    names = {path.relative_to(ROOT).parts[0] for path in committed()}
    assert {name for name in names if not name.startswith(".")} == TOP_LEVEL


@pytest.mark.parametrize(
    "line", ["It is Safe.", "approved by", "it passes", "Guaranteed for years"]
)
def test_a_word_that_certifies_is_seen(line: str) -> None:
    assert CERTIFIES.search(NOT_OURS.sub("", line))


@pytest.mark.parametrize(
    "line", ["yaml.safe_load(text)", "CSafeLoader", "unsafe ladder", "a mountain pass"]
)
def test_a_loader_or_an_ordinary_word_is_left_alone(line: str) -> None:
    assert not CERTIFIES.search(NOT_OURS.sub("", line))


def asserts(test: ast.FunctionDef) -> bool:
    """Tell whether a test can fail: it asserts, expects an error, or calls what does."""
    checkers = ("raises", "warns", "assert", "prove")
    return any(
        isinstance(node, ast.Assert)
        or (isinstance(node, ast.Call) and any(word in ast.unparse(node.func) for word in checkers))
        for node in ast.walk(test)
    )


def test_every_test_can_fail() -> None:
    tests = [
        (path, node)
        for path in under("tests")
        if path.suffix == ".py"
        for node in ast.walk(ast.parse(path.read_text("utf-8")))
        if isinstance(node, ast.FunctionDef) and node.name.startswith("test_")
    ]
    assert tests
    idle = [f"{path.relative_to(ROOT)}: {node.name}" for path, node in tests if not asserts(node)]
    assert idle == []
