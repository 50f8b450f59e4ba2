"""frost: something tender is out of doors before the last frost of spring."""

from __future__ import annotations

from datetime import date, timedelta
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import meant, opening, word
from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.plantings import WorkedPlanting, as_range
from plantframe.season.units import Shown, day
from plantframe.sky.frost import nearest, one_in_ten_last_day, spring_frost_chance

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.language.reader import Fact
    from plantframe.plan.things import Garden
    from plantframe.season.season import Season


@frozen
class Facts:
    """When it is out, and when the last frost is.

    sown     it comes up then; else it is planted out then
    margin   days beyond the average last frost that the trade waits with it
    average  the middle of many years; late the date that one year in ten is later than
    of_ten   years in ten that have a frost after it is out
    """

    plant: str
    place: str
    out: date
    sown: date | None
    margin_days: int
    average: date
    late: date
    of_ten: int


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """The first day there is something for frost to catch, against the average last frost."""
    garden, out = season.plan.garden, planting.outdoors
    if out is None or garden.frost_last is None:
        return
    entries = meant(planting)
    tender = bool(entries) and all(word(entry.tender) == "tender" for entry in entries)
    if not tender or season.is_covered(planting):
        return
    first, dated = out
    average = nearest(garden.frost_last.day, first)
    margin = min(_margin_days(entry) for entry in entries)
    # a date that leaves room (`sow May`) is taken at its latest
    latest = first + timedelta(days=dated.give)
    if latest >= average + timedelta(days=margin):
        return
    late = late_frost(garden, average)
    chance = spring_frost_chance(first, average) or 0.0
    sow = planting.planting.sow
    yield Finding(
        level="warn" if latest < average else "note",
        where=_line(planting, "out" if planting.planting.out else "sow")[0].where,
        block=planting.holder,
        subject=planting.name,
        facts=Facts(
            planting.name,
            f"{'in' if planting.holder in season.plan.beds else 'on'} {planting.holder}",
            first,
            sow.day if sow is not None and planting.planting.out is None else None,
            margin,
            average,
            late,
            round(chance * 10),
        ),
        by=dated.day,
        candidates=partial(_ways_out, planting, entries[0], late),
        ways=("Fabric or sacking over it on every clear, still night until then.",),
    )


def late_frost(garden: Garden, average: date) -> date:
    """The date that only one spring in ten has a frost after: the plan's own, or reckoned."""
    if garden.frost_late is not None:
        return nearest(garden.frost_late.day, average)
    return one_in_ten_last_day(average) or average


def _margin_days(entry: Plant) -> int:
    margin = as_range(entry.frost_margin)
    return round(margin.middle) if margin else 0


def _line(planting: WorkedPlanting, name: str) -> tuple[Fact, bool]:
    """The line that gives the date, and whether it has it."""
    for fact in reversed(planting.planting.facts):
        if fact.slot(name) is not None:
            return fact, True
    return planting.planting.fact, False


def _ways_out(planting: WorkedPlanting, entry: Plant, late: date) -> Iterable[Edit]:
    """The same thing later; raised under cover and planted out later."""
    own = planting.planting
    if own.out is not None:
        fact, _ = _line(planting, "out")
        yield rewrite(fact, {"out": day(late)})
        return
    fact, _ = _line(planting, "sow")
    # it comes up sooner in warmer soil, so these days are rather too many than too few
    yield rewrite(fact, {"sow": day(late - timedelta(days=planting.emergence_days or 0))})
    if entry.sow_indoors is not None and fact is own.fact:
        yield rewrite(fact, {"raised": "indoors", "out": f"plant out {day(late)}"})


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    plant = f"{opening(facts.plant)} {facts.place}"
    if facts.sown is not None:
        when = f"sown {day(facts.sown)} it is up about {day(facts.out)}"
    else:
        when = f"out of doors from {day(facts.out)}"
    average, late = day(facts.average), day(facts.late)
    if facts.out < facts.average:
        says = (
            f"{plant}: {when}. The average last frost is {average}: half the years have one later "
            f"still, one year in ten has one after {late}."
        )
        often = f"In about {facts.of_ten} years of 10" if facts.of_ten < 10 else "Nearly every year"
        ignored = f"{often} a frost still comes, and one such night kills it."
    else:
        says = (
            f"{plant}: {when}, hardly past the average last frost of {average}. It is usually "
            f"kept in {facts.margin_days} days longer; one year in ten has a frost after {late}."
        )
        ignored = "Cold nights set it back by weeks even where no frost comes."
    return Words(
        says=says,
        if_ignored=ignored,
        told=f"{plant}, {when}.",
        assumed=(
            "The last frosts of many years lie about the average, two years in three of them "
            "within 12 days."
        ),
        sum=f"{day(facts.out)} against {average}; one year in ten after {late}.",
    )


RULE = Rule(
    name="frost",
    summary="something tender is out of doors before the average last frost",
    looks_at="planting",
    levels=("note", "warn"),
    basis="published",
    source="University of Delaware, frost dates by probability (weather service data, 1970)",
    check=check,
    words=words,
)
