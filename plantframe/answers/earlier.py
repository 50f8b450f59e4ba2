"""The plan as it was on an earlier day, from git: how bad a thing was when it was accepted."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from plantframe.answers.answers import Answers

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import date
    from pathlib import Path

    from plantframe.plan.things import SetAside

PATIENCE_S = 5  # a repository that does not answer must not keep a gardener waiting


def as_it_was(answers: Answers, on: date) -> Answers | None:
    """The answers of the plan as committed by the end of that day; None where git has none."""
    path = answers.source.path
    if path is None:
        return None
    folder = path.parent
    by = f"--before={on.isoformat()}T23:59:59"
    commit = _git(folder, "rev-list", "-1", by, "HEAD", "--", ".")
    if not commit:
        return None
    texts = {}
    for file in answers.reading.sources:
        text = _git(folder, "show", f"{commit.strip()}:./{file}", strip=False)
        # a file that was not there then held nothing
        texts[file] = text or ""
    if not texts.get(answers.reading.main):
        return None
    return Answers(answers.source, on, tuple(texts.items()))


def _git(folder: Path, *words: str, strip: bool = True) -> str:
    """What git says, or nothing where it says no."""
    import subprocess

    try:
        done = subprocess.run(  # noqa: S603 - words of ours and names of the plan's own files
            ["git", "-C", str(folder), *words],  # noqa: S607 - the gardener's own git
            capture_output=True,
            timeout=PATIENCE_S,
            check=False,
        )
    except (OSError, subprocess.TimeoutExpired):
        return ""
    if done.returncode != 0:
        return ""
    text = done.stdout.decode("utf-8", errors="replace")
    return text.strip() if strip else text


def accepted_at(answers: Answers) -> Callable[[SetAside, str], tuple[float | None, str] | None]:
    """Tell how bad a rule's finding in a block was on the day it was set aside."""
    known: dict[date, Answers | None] = {}

    def ask(by: SetAside, block: str) -> tuple[float | None, str] | None:
        if by.when is None:
            return None
        # the set-aside itself was committed on its day or soon after
        for later in (0, 7):
            on = by.when.day + timedelta(days=later)
            if on not in known:
                known[on] = as_it_was(answers, on)
            then = known[on]
            if then is None:
                continue
            for one in then.report.found:
                if one.rule.name == by.rule and block in {one.finding.block, ""}:
                    return one.times, one.level
        return None

    return ask
