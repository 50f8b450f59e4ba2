"""README.md and DEVELOPERS.md: what they name exists, and what they say to type can be typed."""

from __future__ import annotations

import re
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent.parent
PAGES = ("README.md", "DEVELOPERS.md")

FENCE = re.compile(r"^```(\w*)\n(.*?)^```$", re.MULTILINE | re.DOTALL)
CODE = re.compile(r"`([^`\n]+)`")
# A file or a folder as the pages write it: a path from the top, or one of the top's own files.
FILE = re.compile(
    r"^\.?[\w*-]+(?:/[\w*.-]+)*(?:/|\.(?:md|toml|py|yaml|lark|json|plan))$|^\.ci/run$"
)
VERB = re.compile(r"(?:^|[\s/])plantframe ([a-z]+)\b", re.MULTILINE)
TOOL = re.compile(r"\.venv/bin/([\w-]+)")


def page(name: str) -> str:
    """The text of a page."""
    return (ROOT / name).read_text("utf-8")


def fences(name: str, language: str) -> list[str]:
    """The texts of a page's fenced blocks in one language."""
    return [text for lang, text in FENCE.findall(page(name)) if lang == language]


def codes(name: str) -> list[str]:
    """All that a page sets as code within its prose."""
    return CODE.findall(FENCE.sub("", page(name)))


def typed(name: str) -> str:
    """All that a page says to type: its inline code and its fenced blocks."""
    return "\n".join([*codes(name), *(text for _, text in FENCE.findall(page(name)))])


def extras() -> set[str]:
    """Names of all packages that the extras bring."""
    with (ROOT / "pyproject.toml").open("rb") as file:
        declared = tomllib.load(file)["project"]["optional-dependencies"].values()
    return {re.split(r"[<>=~\[; ]", line)[0] for lines in declared for line in lines}


@pytest.mark.parametrize("name", PAGES)
def test_each_file_that_a_page_names_exists(name: str) -> None:
    named = [code for code in codes(name) if FILE.match(code)]
    assert named
    assert [path for path in named if not any(ROOT.glob(path.rstrip("/")))] == []


@pytest.mark.parametrize("name", PAGES)
def test_each_tool_that_a_page_names_is_brought_by_an_extra(name: str) -> None:
    brought = extras() | {"python", "pip", "plantframe"}
    brought |= {"lint-imports"} if "import-linter" in brought else set()
    tools = set(TOOL.findall(typed(name)))
    assert tools
    assert tools <= brought


@pytest.mark.parametrize("verb", sorted({v for name in PAGES for v in VERB.findall(typed(name))}))
def test_each_command_that_a_page_names_can_be_asked_for_help(verb: str) -> None:
    asked = subprocess.run(
        [sys.executable, "-m", "plantframe", verb, "--help"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert asked.returncode == 0, asked.stderr
    assert verb in asked.stdout


def test_the_readme_has_one_block_to_use_it_and_one_to_test_it() -> None:
    use, test = fences("README.md", "sh")
    assert ".venv/bin/plantframe check plans/" in use
    assert ".venv/bin/pytest" in test


def test_ci_runs_the_blocks_of_the_readme_and_no_copy_of_them() -> None:
    script = (ROOT / ".ci" / "run").read_text("utf-8")
    assert "run_block 1" in script
    assert "run_block 2" in script
    assert "pytest" not in script


def test_from_clone_to_green_in_three_commands() -> None:
    first = fences("DEVELOPERS.md", "")[0]
    assert len(first.splitlines()) == 3
    assert first == fences("README.md", "sh")[1]


@pytest.mark.parametrize(
    ("code", "is_file"),
    [("grammar/plan.lark", True), ("plantframe/sky/", True), ("pyproject.toml", True)]
    + [(".ci/run", True), ("too-heavy", False), ("_n_per_m", False), ("import lark, yaml", False)],
)
def test_a_file_is_told_from_other_code(code: str, is_file: bool) -> None:
    assert bool(FILE.match(code)) is is_file
