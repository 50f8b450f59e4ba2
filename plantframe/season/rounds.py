"""When a round of care that comes by years was last done: by a mark, a fact or the building."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.language.slots import When
from plantframe.language.values import Number
from plantframe.language.values import Season as TypedSeason
from plantframe.season.likeness import Called, best
from plantframe.season.work import day_in

if TYPE_CHECKING:
    from datetime import date

    from plantframe.catalogue.entries import Care
    from plantframe.language.reader import Fact
    from plantframe.plan.things import Mark
    from plantframe.season.frames import WorkedFrame

# The fact that dates a round of care, where it is not called as the round is.
DATED_BY: Final = {"paint": "painted", "recoat": "finish"}
YEARLY: Final = 1.5  # rounds that come oftener are jobs of every year


def is_of_years(care: Care) -> bool:
    """Whether a round comes every few years, not every year or oftener."""
    return care.every is not None and care.every.base == "years" and care.every.usual >= YEARLY


def done_marks(frame: WorkedFrame, care: Care) -> list[Mark]:
    """The `done` lines of a frame, with a day, that mean a round."""
    cares = frame.structure.care if frame.structure else ()
    called = [Called(one.id, one.do) for one in cares]
    return [
        mark
        for mark in frame.frame.marks
        if mark.kind == "done"
        and mark.day is not None
        and (found := best(mark.job, called)) is not None
        and cares[found].id == care.id
    ]


def last_done(
    frame: WorkedFrame, care: Care, before: date | None = None
) -> tuple[int | None, Fact | None]:
    """The year a round was last done and the line that says so, else the year of building.

    before   marks from that day on are of a round still to be reckoned
    """
    done = [
        (mark.day.day, mark.fact)
        for mark in done_marks(frame, care)
        if mark.day and (before is None or mark.day.day < before)
    ]
    if done:
        day, fact = max(done, key=lambda one: one[0])
        return day.year, fact
    said = frame.frame.fact(DATED_BY.get(care.id, care.id))
    year = _year_in(said, frame) if said is not None else None
    return (year, said) if year is not None else (frame.frame.built, None)


def _year_in(fact: Fact, frame: WorkedFrame) -> int | None:
    """The year that a fact such as `strips new spring 2023` gives."""
    for name in ("year", "since", "date"):
        value = fact.get(name)
        if isinstance(value, Number):
            return int(value.value)
        if isinstance(value, TypedSeason):
            return value.first
        if (
            isinstance(value, When)
            and value.day is not None
            and (name == "since" or value.day.year)
        ):
            dated = day_in(fact, name, frame.garden)
            if dated is not None:
                return dated.day.year
    return None
