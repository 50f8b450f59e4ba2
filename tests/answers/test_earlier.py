"""How bad a thing was when it was set aside, read from the repository where the line is silent."""

from __future__ import annotations

import os
import subprocess
from datetime import date
from typing import TYPE_CHECKING

import pytest

from plantframe.answers.answers import answers_of
from plantframe.answers.earlier import as_it_was

if TYPE_CHECKING:
    from pathlib import Path

TODAY = date(2026, 11, 25)
PLAN = """\
garden Sallow Strip, 2027
  place 52 N, 1 W
  lines marked 2 March
bed Strip, 1.2 m x 12 m
frame Gate Net, net frame, in Strip
  bays 1 of {bay}
  posts 2x2, 8 ft, 18 in down, 6 ft 6 in up
  bar 2x2
  net 6 ft 6 in x 12 ft, mesh 15 cm
  grow climbing squash, 3 plants, sow 24 May
  ok too-heavy because "we prop it", 20 November 2026
"""


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    """A plan whose first version, of 20 November, is kept in git."""
    file = tmp_path / "strip.plan"
    file.write_text(PLAN.format(bay="6 ft"), encoding="utf-8")
    noon = "2026-11-20T12:00:00"
    settled = {
        **os.environ,
        "GIT_AUTHOR_DATE": noon,
        "GIT_COMMITTER_DATE": noon,
        "GIT_CONFIG_GLOBAL": os.devnull,
        "GIT_CONFIG_SYSTEM": os.devnull,
    }
    who = ["-c", "user.name=Isa", "-c", "user.email=isa@garden.invalid"]
    for words in (["init", "-q"], ["add", "."], [*who, "commit", "-q", "-m", "as it was"]):
        subprocess.run(["git", *words], cwd=tmp_path, env=settled, check=True)
    return file


def test_the_plan_as_it_was_is_read_from_git(plan: Path) -> None:
    plan.write_text(PLAN.format(bay="10 ft"), encoding="utf-8")
    then = as_it_was(answers_of(plan, TODAY), date(2026, 11, 20))
    assert then is not None
    assert then.season.frames["Gate Net"].figure("bays.length") == pytest.approx(6 * 0.3048)


def test_before_the_first_version_there_was_no_plan(plan: Path) -> None:
    assert as_it_was(answers_of(plan, TODAY), date(2026, 11, 1)) is None


def test_a_set_aside_wakes_by_what_git_tells_of_its_day(plan: Path) -> None:
    assert not answers_of(plan, TODAY).advice.woken
    plan.write_text(PLAN.format(bay="9 ft"), encoding="utf-8")
    (woken,) = answers_of(plan, TODAY).advice.woken
    assert "1.1 times when set aside" in woken.why


def test_outside_a_repository_nobody_can_tell_and_it_sleeps_on(tmp_path: Path) -> None:
    file = tmp_path / "strip.plan"
    file.write_text(PLAN.format(bay="9 ft"), encoding="utf-8")
    answers = answers_of(file, TODAY)
    assert as_it_was(answers, date(2026, 11, 20)) is None
    assert not answers.advice.woken
