"""Small invented gardens for the tests of yard and bench, and the way from text to the lists."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from plantframe.language.files import read_input
from plantframe.plan.building import build
from plantframe.season.season import Season
from plantframe.timber.buying import buying_of
from plantframe.timber.cutting import cutting_of
from plantframe.timber.needs import needs_of
from plantframe.timber.stock import wood_of

if TYPE_CHECKING:
    from plantframe.plan.things import Plan
    from plantframe.timber.buying import Buying
    from plantframe.timber.counters import Line
    from plantframe.timber.cutting import Cutting
    from plantframe.timber.needs import Needs
    from plantframe.timber.stock import Wood

FEBRUARY = date(2027, 2, 1)

HEAD = "garden Alder Row, 2027\n  place 51.9 N, 2.3 W\n  soil firm loam\n"
# By hand: 3 posts and 2 bars of 2x2, 8 ft; 3 pins; one net of 6 ft 6 in by 16 ft.
NET = """frame Bean Net, net frame
  bays 2 of 8 ft
  posts 2x2, 8 ft, 18 in down, 6 ft 6 in up
  bar 2x2
  net 6 ft 6 in x 16 ft, mesh 15 cm
"""
YARD = "yard\n  2x2, 8 ft, at 3.10\n  2x4, 8 ft, at 4.60\n  2x4, 10 ft, at 6.20\n"


def season(text: str, head: str = HEAD) -> Season:
    """The season of a plan's text."""
    plan, _ = build(read_input(head + text), FEBRUARY)
    return Season(plan, FEBRUARY)


def plan(text: str, head: str = HEAD) -> Plan:
    """The plan of a text."""
    return season(text, head).plan


def needs(text: str, head: str = HEAD) -> Needs:
    """What its frames want."""
    return needs_of(season(text, head))


def wood(text: str, head: str = HEAD) -> Wood:
    """Its shed's and yard's wood."""
    return wood_of(plan(text, head))


def cutting(text: str, head: str = HEAD, lengths_m: tuple[float, ...] = ()) -> Cutting:
    """Its cutting list."""
    return cutting_of(season(text, head), lengths_m=lengths_m)


def buying(text: str, head: str = HEAD) -> Buying:
    """Its buying list."""
    return buying_of(season(text, head))


def line(text: str, what: str, head: str = HEAD) -> Line:
    """The one line of its buying list that begins so."""
    (found,) = [one for one in buying(text, head).lines if one.says.startswith(what)]
    return found
