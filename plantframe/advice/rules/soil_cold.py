"""soil-cold: seed goes into ground that is still too cold for it to come up."""

from __future__ import annotations

from datetime import timedelta
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import meant, opening
from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import is_spoken_of, place_of
from plantframe.frozen import frozen
from plantframe.season.plantings import as_range
from plantframe.season.units import day
from plantframe.sky.soil import soil_warmth_c

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import date

    from plantframe.catalogue.entries import Plant
    from plantframe.language.edits import Edit
    from plantframe.language.reader import Fact
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

READING_DAYS = 10  # a reading stands for so long before the sowing
SHORT_C = 1.0  # below the least by so much before it is said: no soil is even
FARTHEST_DAYS = 90
WARMED = r"\b(film|plastic|fleece|cloche|warm the (soil|ground|bed))"


@frozen
class Facts:
    """What is sown where and when; the soil then and the least it wants, degrees C.

    read   the day the gardener read it off, None where it is an estimate
    """

    plant: str
    place: str
    sow: date
    low_c: float
    high_c: float
    wants_c: float
    read: date | None
    warm: date | None


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """The soil's warmth on the day of sowing, read or estimated, against the least for seed."""
    sow, entries = planting.planting.sow, meant(planting)
    wants = [as_range(entry.soil) for entry in entries]
    known = [one.low for one in wants if one is not None]
    if sow is None or planting.under_cover or not known or len(known) < len(entries):
        return
    if planting.planting.out is not None and planting.planting.raised not in {"", "outdoors"}:
        return
    least = min(known)
    latest = sow.day + timedelta(days=sow.give)
    warmth, read = _warmth_c(season, planting, latest)
    if warmth is None or _is_covered(planting, season):
        return
    low, high = warmth
    if high >= least - SHORT_C:
        return
    warm = _warm_enough(season, latest, least, low if read else None)
    yield Finding(
        level="warn",
        where=_line(planting).where,
        block=planting.holder,
        subject=planting.name,
        facts=Facts(
            planting.name,
            place_of(season, planting),
            sow.day,
            low,
            high,
            least,
            read,
            warm,
        ),
        by=sow.day,
        candidates=partial(_ways_out, planting, entries[0], warm),
        ways=(
            "Clear film over the ground for ten days to a fortnight beforehand warms it.",
            "A soil thermometer read on three mornings running tells better than any date.",
        ),
    )


def _warmth_c(
    season: Season, planting: WorkedPlanting, when: date
) -> tuple[tuple[float, float] | None, date | None]:
    """Likely lowest and highest; what a thermometer said not long before goes first."""
    bed = season.bed_name(planting)
    for entry in season.plan.log:
        if entry.day is None or "soil" not in entry.words.lower():
            continue
        if entry.about and entry.about not in {bed, planting.holder}:
            continue
        warm = [one.value for one in entry.measures if one.dimension == "warmth"]
        if warm and 0 <= (when - entry.day.day).days <= READING_DAYS:
            return (warm[0], warm[0]), entry.day.day
    garden = season.plan.garden
    last, first = garden.frost_last, garden.frost_first
    if last is None or first is None:
        return None, None
    found = soil_warmth_c(last.day, first.day, when)
    return ((found.low_c, found.high_c) if found else None), None


def _is_covered(planting: WorkedPlanting, season: Season) -> bool:
    """Under glass, film or fabric, or the ground is warmed beforehand."""
    bed = season.bed_name(planting)
    if is_spoken_of(season, WARMED, planting.holder, bed):
        return True
    return season.is_covered(planting)


def _warm_enough(season: Season, after: date, least_c: float, read_c: float | None) -> date | None:
    """The first day after this on which the middle of the estimate is warm enough.

    A reading shifts the estimate by as much as it differed.
    """
    last, first = season.plan.garden.frost_last, season.plan.garden.frost_first
    if last is None or first is None:
        return None
    now = soil_warmth_c(last.day, first.day, after)
    shift = read_c - now.middle_c if read_c is not None and now is not None else 0.0
    for days in range(1, FARTHEST_DAYS):
        when = after + timedelta(days=days)
        warmth = soil_warmth_c(last.day, first.day, when)
        if warmth is not None and warmth.middle_c + shift >= least_c:
            return when
    return None


def _line(planting: WorkedPlanting) -> Fact:
    """The line that gives the day of sowing."""
    for fact in reversed(planting.planting.facts):
        if fact.slot("sow") is not None:
            return fact
    return planting.planting.fact


def _ways_out(planting: WorkedPlanting, entry: Plant, warm: date | None) -> Iterable[Edit]:
    """Later; or under cover now and planted out when the ground is warm."""
    if warm is None:
        return
    fact = _line(planting)
    yield rewrite(fact, {"sow": day(warm)})
    if entry.sow_indoors is not None and fact is planting.planting.fact:
        yield rewrite(fact, {"raised": "indoors", "out": f"plant out {day(warm)}"})


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    soil = shown.warmth(facts.high_c)
    if facts.low_c != facts.high_c:
        soil = f"about {shown.warmth(facts.low_c).split()[0]} to {soil}"
    said = f"the soil was {soil} on {day(facts.read)}" if facts.read else f"the soil is {soil} then"
    warm = f" It is likely warm enough from {day(facts.warm)}." if facts.warm else ""
    return Words(
        says=(
            f"{opening(facts.plant)} {facts.place}, sown {day(facts.sow)}: {said}, and the seed "
            f"wants at least {shown.warmth(facts.wants_c)}.{warm}"
        ),
        if_ignored="It rots in the ground, or lies two or three weeks and comes up thin.",
        told=f"{opening(facts.plant)}, sown {day(facts.sow)}.",
        assumed="" if facts.read else "Soil at sowing depth, reckoned from the two frost dates.",
        sum=(
            f"{facts.high_c:.0f} °C as read against {facts.wants_c:.0f} °C at the least."
            if facts.read
            else f"{facts.high_c:.0f} °C at the most against {facts.wants_c:.0f} °C at the least; "
            "the estimate is good to two or three degrees."
        ),
    )


RULE = Rule(
    name="soil-cold",
    summary="seed goes into ground that is still too cold for it",
    looks_at="planting",
    levels=("warn",),
    basis="estimate",
    check=check,
    words=words,
)
