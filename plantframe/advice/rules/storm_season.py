"""storm-season: a tall leafy row stands in the months of great storms."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climate import is_in, spans
from plantframe.advice.edits import add_task
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import is_spoken_of
from plantframe.advice.seasons import within
from plantframe.frozen import frozen
from plantframe.season.units import MONTHS

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

TALL_M = 1.5
GALE_M_PER_S = 25.0  # 90 km/h
AIR_KG_PER_M3 = 1.25
SHARE = (0.5, 1.0)  # of the wind's pressure that a leafy net takes, folded back to stiff
G_M_PER_S2 = 9.81
READY = r"\b(storm|gale|blow|cyclone|hurricane|typhoon|lay (it )?down|drop the)"


@frozen
class Facts:
    """The frame; its leafy face in m2; the push of a gale on it, as a weight in kg; when."""

    frame: str
    face_m2: float
    push_kg: tuple[float, float]
    months: tuple[int, int]


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """A light, tall row that is up in months the plan calls stormy."""
    structure, worked, high = frame.structure, frame.worked, frame.height_m
    storms = spans(frame.garden, "storms")
    if not storms or structure is None or worked is None or high is None or high < TALL_M:
        return
    stands = structure.stands
    if not frame.plantings or frame.builders_work or stands.held in {"wall", "ground"}:
        return
    if stands.loads != "light" or frame.lasting:
        return
    months = next((one for one in storms if _is_up(frame, one)), None)
    if months is None or is_spoken_of(season, READY, frame.frame.name):
        return
    face = worked.row_m * high
    pressure = AIR_KG_PER_M3 * GALE_M_PER_S**2 / 2
    low, high_kg = (pressure * share * face / G_M_PER_S2 for share in SHARE)
    yield Finding(
        level="warn",
        where=frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(frame.frame.name, face, (low, high_kg), months),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame),
        ways=("Pins that draw by hand, so that it is down within the hour.",),
    )


def _is_up(frame: WorkedFrame, months: tuple[int, int]) -> bool:
    """It is up, and in leaf, in one of those months as far as its dates say."""
    start = frame.wanted_by
    down, frost = frame.frame.take_down, frame.garden.frost_first
    end = down.day if down else frost.day if frost else None
    if start is None or end is None:
        return True
    leafy = start.month % 12 + 1  # a month on
    return any(
        is_in(month, (months,)) and within(month, leafy, end.month) for month in range(1, 13)
    )


def _ways_out(frame: WorkedFrame) -> Iterable[Edit]:
    """What to do when a storm is forecast, among the jobs."""
    yield add_task(frame.frame.block, f"before a storm lay {frame.frame.name} down and tie it")


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    low, high = (shown.weight(one) for one in facts.push_kg)
    gale = "56 miles an hour" if shown.imperial else "90 km an hour"
    first, last = (MONTHS[month - 1] for month in facts.months)
    return Words(
        says=(
            f"{facts.frame} stands in leaf in the stormy months, {first} to {last}. A gale of "
            f"{gale} pushes on its {shown.area(facts.face_m2)} with the weight of "
            f"{low.split()[0]} to {high}."
        ),
        if_ignored="Nothing light withstands that: posts snap and the whole row comes down.",
        told=f"Storms {first} to {last}.",
        assumed="The gale in the open, square on to the row; leaves fold back or do not.",
        sum="Half the weight of the air times the speed squared, half to all of it on the face.",
    )


RULE = Rule(
    name="storm-season",
    summary="a tall leafy row stands in the months of great storms",
    looks_at="frame",
    levels=("warn",),
    basis="sum",
    check=check,
    words=words,
)
