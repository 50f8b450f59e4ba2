"""heat-gap: a crop flowers in weeks that are usually too hot for it to set."""

from __future__ import annotations

from datetime import date, timedelta
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climate import normals_c
from plantframe.advice.climbers import opening
from plantframe.advice.edits import rewrite
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import is_spoken_of, place_of
from plantframe.frozen import frozen
from plantframe.season.plantings import as_range
from plantframe.season.units import MONTHS, day

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

BLOOM = timedelta(days=21)  # before the first picking (common practice, no source)
SETTING = timedelta(days=14)  # after the first picking, the heart of the crop
SHIFTS_DAYS = (-28, -42, -56, 28, 42, 56, 70)
SHADE = r"\b(shade|shaded|shade cloth)\b"


@frozen
class Facts:
    """The crop and its place, the month of its flowers and its usual highest, C; what it bears."""

    plant: str
    place: str
    month: int
    high_c: float
    drops_c: tuple[float, float]


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """The usual highest of the months of flowering, against the heat at which flowers fall."""
    entry, harvest = planting.entry, planting.harvest
    drops = as_range(entry.other.get("flowers drop")) if entry else None
    highs = normals_c(season.plan.garden, "normal high")
    if drops is None or harvest is None or not highs:
        return
    month = _too_hot(harvest[0] - BLOOM, harvest[0] + SETTING, highs, drops.low)
    if month is None or is_spoken_of(season, SHADE, planting.holder, season.bed_name(planting)):
        return
    yield Finding(
        level="warn",
        where=planting.planting.fact.where,
        block=planting.holder,
        subject=planting.name,
        facts=Facts(
            planting.name,
            place_of(season, planting),
            month,
            highs[month],
            (drops.low, drops.high),
        ),
        by=planting.in_ground.day if planting.in_ground else None,
        candidates=partial(_ways_out, planting, highs, drops.low),
        ways=("Cloth over the row that takes away about a third of the sun at midday.",),
    )


def _too_hot(first: date, last: date, highs: dict[int, float], bears_c: float) -> int | None:
    """The hottest month of those days, where most of them are hotter than it bears."""
    days = [first + timedelta(days=one) for one in range((last - first).days + 1)]
    hot = [one for one in days if highs.get(one.month, -99.0) > bears_c]
    if 2 * len(hot) <= len(days):
        return None
    return max({one.month for one in hot}, key=lambda month: highs[month])


def _ways_out(planting: WorkedPlanting, highs: dict[int, float], bears_c: float) -> Iterable[Edit]:
    """Sown or planted weeks earlier or later, so that it flowers in months known to be cooler."""
    own, harvest = planting.planting, planting.harvest
    dated, slot = (own.out, "out") if own.out is not None else (own.sow, "sow")
    if dated is None or harvest is None or own.fact.slot(slot) is None:
        return
    for days in SHIFTS_DAYS:
        shift = timedelta(days=days)
        first, last = harvest[0] - BLOOM + shift, harvest[0] + SETTING + shift
        known = {first.month, last.month, (harvest[0] + shift).month} <= highs.keys()
        if known and _too_hot(first, last, highs, bears_c) is None:
            yield rewrite(own.fact, {slot: day(dated.day + shift)})


def words(facts: Facts, shown: Shown) -> Words:
    """It in words."""
    low, high = (shown.warmth(one) for one in facts.drops_c)
    bears = low if low == high else f"{low.split()[0]} to {high}"
    return Words(
        says=(
            f"{opening(facts.plant)} {facts.place} flowers about {MONTHS[facts.month - 1]}, when "
            f"{shown.warmth(facts.high_c)} is usual. Above {bears} its flowers fall without "
            "setting."
        ),
        if_ignored="It stands green and bears nothing until it is cooler.",
        told=f"Normal high {MONTHS[facts.month - 1]} {shown.warmth(facts.high_c)}.",
        assumed="Flowers from three weeks before the first picking on.",
        sum=(
            f"{shown.warmth(facts.high_c)} against {bears}; said where most days of flowering are "
            "hotter than that."
        ),
    )


RULE = Rule(
    name="heat-gap",
    summary="a crop flowers in weeks that are usually too hot for it to set",
    looks_at="planting",
    levels=("warn",),
    basis="common practice",
    check=check,
    words=words,
)
