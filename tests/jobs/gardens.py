"""Small invented gardens for the tests of the jobs, and the way from their text to the list."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from plantframe.jobs.listing import Jobs, jobs_of
from plantframe.language.files import read_input
from plantframe.plan.building import build
from plantframe.season.season import Season

if TYPE_CHECKING:
    from plantframe.jobs.job import Job

JANUARY = date(2027, 1, 10)

HEAD = """garden Hazel End, 2027
  place 51.9 N, 2.3 W
  frost last 6 May, first 12 October
"""
SOUTH = """garden Wattle Flat, 2026-27
  place 37.8 S, 145 E
  frost last 25 September, first 20 May
"""
NET = """frame Bean Net, net frame
  bays 2 of 8 ft
  posts 2x2, 8 ft, 18 in down, 6 ft 6 in up
  bar 2x2
"""
BEANS = "  grow pole bean, 40 plants, sow 18 May\n"


def season(text: str, today: date = JANUARY) -> Season:
    """The season of a plan's text."""
    plan, _ = build(read_input(text), today)
    return Season(plan, today)


def listed(text: str, today: date = JANUARY) -> Jobs:
    """The jobs of a plan's text."""
    return jobs_of(season(text, today))


def the(found: Jobs, name: str) -> Job:
    """The listed job of that id."""
    job = found.job(name)
    assert job is not None, (name, [one.id for one in found.jobs])
    return job


def place(found: Jobs, words: str) -> int:
    """Where in the list the first job stands that says so."""
    places = [at for at, job in enumerate(found.jobs) if words in job.says]
    assert places, (words, [job.says for job in found.jobs])
    return places[0]
