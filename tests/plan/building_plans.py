"""Plans built from small texts, for the tests of this room."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from plantframe.language.files import read_input
from plantframe.plan.building import build

if TYPE_CHECKING:
    from plantframe.language.mistakes import Mistake
    from plantframe.plan.dates import Dated
    from plantframe.plan.things import Frame, Plan

TODAY = date(2027, 3, 1)
GARDEN = """\
garden Quarry Row, 2027
  place 52.1 N, 1.4 W
  frost last 6 May, first 12 October
bed Long Bed, 1.2 m x 7.5 m, runs north-south
bed Low Bed
"""
SOUTH = """\
garden Back Paddock, 2026-27
  place 37.8 S, 145 E
  frost last 25 September, first 20 May
bed Top Bed
"""


def built(text: str) -> tuple[Plan, list[Mistake]]:
    """The plan of a text, and every slip of reading and building it."""
    reading = read_input(text)
    plan, slips = build(reading, TODAY)
    return plan, [*reading.mistakes, *slips]


def plan_of(text: str) -> Plan:
    """The plan of a text that has no slip in it."""
    plan, slips = built(text)
    assert not [slip.says for slip in slips if slip.level != "note"]
    return plan


def slips_of(text: str) -> list[Mistake]:
    """The slips of a text, less those that only say how something was read."""
    return [slip for slip in built(text)[1] if slip.level != "note"]


def names_of(text: str) -> list[str]:
    """The names of the slips of a text."""
    return [slip.name for slip in slips_of(text)]


def frame_of(lines: str, head: str = "frame Bean Net, net frame, in Long Bed") -> Frame:
    """The frame of these lines in a garden."""
    (frame,) = plan_of(f"{GARDEN}{head}\n{lines}").frames.values()
    return frame


def days(dated: Dated | None) -> tuple[str, str, int]:
    """First day, last day, give or take."""
    assert dated is not None
    return dated.day.isoformat(), dated.last.isoformat(), dated.give
