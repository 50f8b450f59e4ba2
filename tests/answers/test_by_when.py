"""What to settle first: advice says by when without the graph of jobs, and agrees with it."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

import pytest

from plantframe.answers.answers import answers_of, answers_to
from plantframe.jobs.job import BUILD
from plantframe.jobs.listing import jobs_of

if TYPE_CHECKING:
    from pathlib import Path

DEMOS = [("quarry-row/2027", date(2027, 1, 10)), ("tussock-flat/2026-27", date(2026, 8, 20))]


@pytest.mark.parametrize(("demo", "today"), DEMOS)
def test_advice_wants_settling_by_a_day_the_jobs_know_too(
    root: Path, demo: str, today: date
) -> None:
    answers = answers_of(root / "plans" / f"{demo}.plan", today)
    jobs = jobs_of(answers.season).jobs
    checked = 0
    for found in answers.report.found:
        finding = found.finding
        frame = answers.season.frames.get(finding.block)
        if frame is None or finding.by is None:
            continue
        own = [job for job in jobs if job.block == finding.block and job.latest is not None]
        assert finding.by in {job.latest for job in own}, found.rule.name
        checked += 1
    assert checked >= 2


@pytest.mark.parametrize(("demo", "today"), DEMOS)
def test_a_frame_with_a_day_of_its_own_has_it_in_both(root: Path, demo: str, today: date) -> None:
    season = answers_of(root / "plans" / f"{demo}.plan", today).season
    jobs = jobs_of(season).jobs
    for name, frame in season.frames.items():
        last = [job.latest for job in jobs if job.block == name and job.kind == BUILD]
        known = [day for day in last if day is not None]
        if frame.wanted_by is not None and not frame.stands:
            assert max(known) == frame.wanted_by


def test_lines_are_wanted_marked_by_the_day_the_digging_and_its_settling_leave() -> None:
    text = (
        "garden Lane End, 2027\n  frost last 6 May, first 12 October\n"
        "frame Vine Wires, grape wires, along the lane\n  ready by 15 April\n"
    )
    answers = answers_to(text, date(2027, 1, 10))
    (by,) = {one.finding.by for one in answers.report.found if one.rule.name == "services"}
    marking = jobs_of(answers.season).job("garden/lines-marked")
    assert marking is not None
    assert by == marking.latest == date(2027, 3, 11)  # 28 days to settle, a week to be marked
