"""Small invented gardens for the tests of what is printed, and the way from their text to paper."""

from __future__ import annotations

import html
import re
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from plantframe.answers.answers import Answers, answers_of, answers_to
from plantframe.catalogue import reading as catalogue
from plantframe.catalogue.names import all_names
from plantframe.jobs.listing import jobs_of
from plantframe.paper.sheets import ALL_KINDS, frame_sheets
from plantframe.paper.subject import Subject, subject_of

if TYPE_CHECKING:
    from plantframe.paper.sheet import Sheet

PLANS = Path(__file__).parent.parent.parent / "plans"
JANUARY = date(2027, 1, 10)
DEMOS = (
    ("quarry-row/2027.plan", date(2027, 3, 1)),
    ("tussock-flat/2026-27.plan", date(2026, 8, 20)),
)
KINDS = sorted(
    {name for name in all_names("structure") if catalogue.structures_named(name) == [name]}
)

HEAD = """garden Hazel End, 2027
  place 51.9 N, 2.3 W
  frost last 6 May, first 12 October
"""
BED = "bed Long Bed, 1.2 m x 8 m, runs north-south\n"
NET = """frame Bean Net, net frame, in Long Bed, north end
  bays 2 of 8 ft
  posts 2x2, 8 ft, 18 in down, 6 ft 6 in up
  bar 2x2
  grow pole bean, 40 plants, sow 18 May
"""
FENCE = """fence Rose Fence, mortised fence
  bays 3 of 2.4 m
  posts 100 mm round, 1.8 m, 60 cm down
  rails 2, 75 mm round
"""
PERGOLA = "frame Walk, pergola\n"


def answers(text: str, today: date = JANUARY) -> Answers:
    """The answers to a plan's text."""
    return answers_to(text, today)


def demo(name: str, today: date) -> Answers:
    """The answers to one of the demo plans."""
    return answers_of(PLANS / name, today)


def subject(text: str, name: str) -> Subject:
    """A frame of a plan's text, as it is drawn."""
    found = answers(text)
    drawn = subject_of(found.season.frames[name], found.shown)
    assert drawn is not None
    return drawn


def sheets(text: str, name: str, *kinds: str, today: date = JANUARY) -> list[Sheet]:
    """The sheets of a frame of a plan's text."""
    found = answers(text, today)
    return frame_sheets(found, jobs_of(found.season), found.season.frames[name], kinds or ALL_KINDS)


def texts(svg: str) -> list[str]:
    """All that is written in a drawing."""
    return [html.unescape(one) for one in re.findall(r"<text[^>]*>([^<]*)</text>", svg)]
