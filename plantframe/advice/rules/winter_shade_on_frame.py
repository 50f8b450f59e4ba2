"""winter-shade-on-frame: no sun reaches a cold frame at midwinter."""

from __future__ import annotations

import math
from datetime import date
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import swap
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.plan.things import Thing
from plantframe.season.beside import apart_deg, beside
from plantframe.season.units import FOOT_M, Shown

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.beside import Neighbour
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

ASIDE_DEG = 46.0  # from the noon sun's side: south-east and south-west count, east does not
TROPIC_DEG = 23.4  # nearer the equator no garden lies in winter shade


@frozen
class Facts:
    """What stands in the way, how high and how far, m; its shadow at noon, and the sun's height."""

    cover: str
    thing: str
    high_m: float
    distance_m: float
    shadow_m: float
    sun_deg: float


def check(frame: WorkedFrame, season: Season) -> Iterable[Finding]:
    """The height of what stands on the sun's side against its distance, at midwinter noon."""
    latitude = frame.garden.latitude
    if latitude is None or abs(latitude) <= TROPIC_DEG or not _glazed_in_winter(frame):
        return
    from plantframe.sky.shadow import shadow_ratio
    from plantframe.sky.sun import noon_altitude_deg

    midwinter = _midwinter(frame)
    ratio = shadow_ratio(latitude, midwinter, 12.0)
    side = 180.0 if latitude > 0 else 0.0
    for found in beside(season.plan, frame.frame.name):
        high = found.thing.high_m if isinstance(found.thing, Thing) else None
        if high is None or found.distance_m is None or frame.worked is None:
            continue
        if apart_deg(found.bearing_deg, side) > ASIDE_DEG:
            continue
        shadow = (high - frame.worked.height_m) * ratio
        if shadow <= found.distance_m:
            continue
        yield Finding(
            level="warn",
            where=frame.frame.block.where,
            block=frame.frame.name,
            subject=found.thing.name,
            facts=Facts(
                frame.frame.name,
                found.thing.name,
                high,
                found.distance_m,
                shadow,
                noon_altitude_deg(latitude, midwinter),
            ),
            by=frame.frame.on.day if frame.frame.on else None,
            candidates=partial(_ways_out, frame, found, shadow),
            ways=(_way(_roughly(shadow, Shown(frame.garden.imperial))),),
        )


def _roughly(metres: float, shown: Shown) -> str:
    """To the half metre or the foot: nobody sets out a shadow nearer."""
    step = FOOT_M if shown.imperial else 0.5
    return shown.typed(math.ceil(metres / step - 0.1) * step)


def _way(room: str) -> str:
    return f"{room} of open ground on the sun's side, or the frame kept for spring."


def _glazed_in_winter(frame: WorkedFrame) -> bool:
    """A cold frame, a hot bed: lights that are on at midwinter as far as the plan says."""
    structure = frame.structure
    if structure is None or "lights" not in structure.facts:
        return False
    on = frame.frame.on
    return on is None or _within(_midwinter(frame), on.day, on.last)


def _within(day: date, first: date, last: date) -> bool:
    """A day of the year within a span, which may go over the turn of the year."""
    yearly = [(one.month, one.day) for one in (first, day, last)]
    start, middle, end = yearly
    if start <= end:
        return start <= middle <= end
    return middle >= start or middle <= end


def _midwinter(frame: WorkedFrame) -> date:
    year = frame.garden.year or 2000
    return date(year, 6, 21) if frame.garden.southern else date(year, 12, 21)


def _ways_out(frame: WorkedFrame, found: Neighbour, shadow: float) -> Iterable[Edit]:
    """Further away, where the frame's own place gives the distance and it does not stand yet."""
    head = frame.frame.block.head
    slot = next((one for one in head.slots if one.text == found.spot.said), None)
    if frame.stands or not found.own or slot is None:
        return
    typed, _, rest = found.spot.said.partition(f" {found.spot.relation}")
    shown = Shown(frame.garden.imperial)
    further = _roughly(shadow + 0.25, shown)
    yield swap(
        head, slot.text, f"{further} {found.spot.relation}{rest}", f"{further} away, not {typed}"
    )


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    return Words(
        says=(
            f"{facts.cover}: {facts.thing} is {shown.typed(facts.high_m)} high and "
            f"{shown.typed(facts.distance_m)} off on the sun's side. At midwinter noon the sun "
            f"stands {facts.sun_deg:.0f}° high and throws about "
            f"{_roughly(facts.shadow_m, shown)} of shadow."
        ),
        if_ignored="For weeks before and after midwinter no sun reaches it, and nothing grows.",
        told=(
            f"{facts.thing}, {shown.typed(facts.high_m)} high, {shown.typed(facts.distance_m)} off."
        ),
        assumed="Level ground, and that it stands close all along.",
        sum=f"Height above the lights against the sun's height of {facts.sun_deg:.0f}°.",
    )


RULE = Rule(
    name="winter-shade-on-frame",
    summary="a hedge or wall keeps the midwinter sun from a cold frame",
    looks_at="frame",
    levels=("warn",),
    basis="sum",
    check=check,
    words=words,
)
