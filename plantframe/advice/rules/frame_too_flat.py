"""frame-too-flat: the lights of a cold frame lie so flat that rain stands on them, or too steep."""

from __future__ import annotations

import math
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import set_fact
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.mechanics.section import dressed_mm

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

LEAST = 1 / 12  # an inch to the foot
GRACE = 0.004  # boards are sawn to a few millimetres
GRACE_M = 1e-6
MOST_DEG = 45.0
BOARDS_IN = (6, 8, 10, 12)
BOARDS_MM = (140, 190, 240, 290)


@frozen
class Facts:
    """The cover; how far its lights fall over what depth, m; and the same as a slope."""

    cover: str
    fall_m: float
    deep_m: float
    slope_deg: float
    flat: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """The fall from back to front over the depth of the box."""
    fall, deep = frame.figure("fall"), frame.figure("size.deep")
    if frame.structure is None or "lights" not in frame.structure.facts or frame.stands:
        return
    if fall is None or not deep or fall < 0 or not _is_said(frame):
        return
    slope_deg = math.degrees(math.atan(fall / deep))
    flat = fall / deep < LEAST - GRACE
    if not flat and slope_deg <= MOST_DEG:
        return
    fact = frame.frame.fact("back") or frame.frame.fact("front") or frame.frame.fact("size")
    yield Finding(
        level="note",
        where=(fact.where if fact else frame.frame.block.where),
        block=frame.frame.name,
        facts=Facts(frame.frame.name, fall, deep, slope_deg, flat),
        by=frame.frame.on.day if frame.frame.on else frame.wanted_by,
        candidates=partial(_ways_out, frame, deep) if flat else (),
        ways=("The back propped up on a strip of wood.",) if flat else ("A lower back board.",),
    )


def _is_said(frame: WorkedFrame) -> bool:
    """The plan gives both boards, or one of them and the depth: nothing is made of assumptions."""
    given = [any(key.startswith(f"{word}.") for key in frame.said) for word in ("back", "front")]
    return any(given)


def _ways_out(frame: WorkedFrame, deep_m: float) -> Iterable[Edit]:
    """The lowest back board that falls enough, as boards are sold; else a lower front."""
    front, back = frame.figure("front.high"), frame.figure("back.high")
    if front is None or back is None:
        return
    boards = _boards(frame)
    for typed, high in boards:
        if high - front >= LEAST * deep_m - GRACE_M:
            yield set_fact(frame.frame, "back", f"back {typed}")
            break
    for typed, high in reversed(boards):
        if back - high >= LEAST * deep_m - GRACE_M:
            yield set_fact(frame.frame, "front", f"front {typed}")
            break


def _boards(frame: WorkedFrame) -> list[tuple[str, float]]:
    """Boards as they are typed, and how high they stand, m."""
    if frame.garden.imperial:
        actual = frame.garden.timber == "actual"
        return [
            (f"2x{wide}", wide * 0.0254 if actual else dressed_mm(2, wide)[1] / 1000)
            for wide in BOARDS_IN
        ]
    return [(f"45x{wide} mm", wide / 1000) for wide in BOARDS_MM]


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    fall, deep = shown.bench(facts.fall_m), shown.length(facts.deep_m)
    says = f"{facts.cover}: its lights fall {fall} over {deep}, about {facts.slope_deg:.0f}°."
    usual = shown.bench(LEAST * facts.deep_m)
    if facts.flat:
        return Words(
            says=f"{says} {usual} or more is usual.",
            if_ignored="Rain stands on them, finds the joints and runs down the bars.",
            told=f"Back and front boards of {facts.cover}.",
            sum="Common practice: an inch to the foot, one part in twelve, at the least.",
        )
    return Words(
        says=f"{says} Steeper than {MOST_DEG:.0f}° lights do not lie well.",
        if_ignored="They slide off, and there is more air inside than the sun can warm.",
        told=f"Back and front boards of {facts.cover}.",
        sum=f"{facts.slope_deg:.0f}° against {MOST_DEG:.0f}°.",
    )


RULE = Rule(
    name="frame-too-flat",
    summary="the lights of a cold frame lie too flat for rain to run off, or too steep",
    looks_at="frame",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
