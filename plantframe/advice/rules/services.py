"""services: digging or driving posts where cables and pipes may run, and no lines marked."""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING

from plantframe.advice.edits import uprights
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.units import Shown, day, listed
from plantframe.season.work import by_house_or_verge, days_to_go, digging_steps

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

AHEAD = timedelta(days=7)  # the marking takes two to five working days
BY_HAND_M = 0.60  # either side of a mark no bar or borer goes in
DEEP_M = 0.30
MARKING = (
    "Ask the local marking service, or whoever owns the lines, and allow two to five working days."
)


@frozen
class Facts:
    """Which frames go into the ground, how deep at the most, and whether it is known to be close.

    by   the day the marking wants asking for, None where no date is known
    """

    frames: tuple[str, ...]
    down_m: float
    close: bool
    by: date | None


def check(season: Season, _season: Season) -> Iterable[Finding]:
    """Once for the garden: what is close to house or road, else what nobody has placed."""
    garden = season.plan.garden
    if garden.lines_marked is not None:
        return
    frames = sorted(season.frames.values(), key=lambda frame: frame.frame.name)
    digging = [frame for frame in frames if _digs(frame)]
    close = [frame for frame in digging if by_house_or_verge(frame) and frame.frame.spots]
    unknown = [frame for frame in digging if not _placed(frame)]
    if close:
        yield _finding(close, close=True, where_garden=False, season=season)
    elif unknown:
        yield _finding(unknown, close=False, where_garden=True, season=season)


def _placed(frame: WorkedFrame) -> bool:
    """The plan says whether it is by the house or the road."""
    return bool(frame.frame.spots) and by_house_or_verge(frame) is not None


def _digs(frame: WorkedFrame) -> bool:
    """Still to be put up by the gardener, deeper than 30 cm, and its lines not marked."""
    if frame.stands or frame.builders_work or frame.frame.lines_marked is not None:
        return False
    return bool(digging_steps(frame))


def _finding(
    frames: list[WorkedFrame], *, close: bool, where_garden: bool, season: Season
) -> Finding:
    first = frames[0]
    dates = [
        frame.wanted_by - days_to_go(frame, digging_steps(frame))
        for frame in frames
        if frame.wanted_by is not None
    ]
    by = min(dates) - AHEAD if dates else None
    fact = uprights(first.frame)
    where = fact.where if fact else first.frame.block.where
    garden = season.plan.garden
    if where_garden and garden.where is not None:
        where = garden.where
    deepest = max((frame.down_m or 0.0 for frame in frames), default=0.0)
    task = "task have the buried lines marked" + (f", by {day(by)}" if by else "")
    shown = Shown(garden.imperial)
    return Finding(
        level="stop" if close else "ask",
        where=where,
        block=first.frame.name if close else garden.name,
        facts=Facts(tuple(frame.frame.name for frame in frames), deepest, close, by),
        by=by,
        ways=(
            MARKING,
            f"Put it among the jobs: `{task}`; when it is done write `lines marked` with the date.",
            f"Within {shown.length(BY_HAND_M)} of a mark dig by hand, with no bar and no borer.",
        ),
    )


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    names = listed(facts.frames) if len(facts.frames) < 4 else f"{len(facts.frames)} frames"
    depth = shown.length(max(facts.down_m, DEEP_M))
    if facts.close:
        says = (
            f"{names}: posts go {depth} into the ground by the house or the road, where cables "
            "and pipes come in, and no lines are marked."
        )
    else:
        says = (
            f"{names}: posts go {depth} into the ground, and the plan does not say where cables "
            "and pipes run. Have they been marked?"
        )
    return Words(
        says=says,
        if_ignored="A bar or a borer through a live cable or a gas pipe can kill.",
        told=f"{names}: {depth} down.",
        sum=f"Asked of every post deeper than {shown.length(DEEP_M)}; local law may ask it of all.",
    )


RULE = Rule(
    name="services",
    summary="posts go deep near the house or the road and no buried lines are marked",
    looks_at="season",
    levels=("ask", "stop"),
    basis="common practice",
    check=check,
    words=words,
    answered="write `lines marked` with the date, under the garden or the frame",
)
