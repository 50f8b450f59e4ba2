"""What it asks of the gardener, week by week, and whether the hours are there."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.frozen import frozen
from plantframe.pairing.pair import Pair, fair, good, out
from plantframe.season.units import listed, two_figures

if TYPE_CHECKING:
    from plantframe.catalogue.entries import PlantCare
    from plantframe.pairing.climber import Climber
    from plantframe.pairing.matches import Reason

WEEK_DAYS, MONTH_DAYS = 7, 31
PICKING = frozenset({"pick", "cut", "pull", "gather"})
# Minutes a metre each week beyond which a row is felt (estimate).
MUCH = 8.0
# Of the hours a week that the plan gives to building, this share on one row is felt.
SHARE = 0.5
USUAL_ROW_M = 2.5


@frozen
class Work:
    """The work of a plant: minutes a metre each week in its season, and in the whole year.

    Picking is kept apart: it is what the row is grown for.
    """

    weekly: float
    weekly_jobs: tuple[str, ...]
    yearly: float
    yearly_jobs: tuple[str, ...]
    picking: float


def work_of(climber: Climber) -> Work:
    """What its care comes to."""
    weekly = yearly = picking = 0.0
    often: list[str] = []
    seldom: list[str] = []
    for care in climber.entry.care:
        minutes = care.minutes_per_metre.usual if care.minutes_per_metre else 0.0
        days = _every_days(care)
        if care.id in PICKING:
            picking += minutes * WEEK_DAYS / days if days else 0.0
        elif days is not None and days <= MONTH_DAYS:
            weekly += minutes * WEEK_DAYS / days
            often.append(care.id)
        else:
            yearly += minutes
            seldom.append(care.id)
    return Work(weekly, tuple(often), yearly, tuple(dict.fromkeys(seldom)), picking)


def upkeeping(pair: Pair) -> Reason:
    """Minutes a metre each week, and what is done in them."""
    climber = pair.climber
    work = work_of(climber)
    per, metres = ("for 10 ft of row", 3.048) if pair.shown.imperial else ("a metre", 1.0)
    parts = []
    if work.weekly_jobs:
        minutes = _minutes(work.weekly * metres)
        parts.append(f"about {minutes} {per} each week in season ({listed(work.weekly_jobs)})")
    if work.yearly_jobs:
        minutes = _minutes(work.yearly * metres)
        parts.append(f"{minutes} {per} in the year ({listed(work.yearly_jobs)})")
    asks = (
        f"{climber.said.capitalize()} asks {listed(parts)}."
        if parts
        else (f"{climber.said.capitalize()} asks next to nothing.")
    )
    if work.picking:
        asks = f"{asks} Picking takes {_minutes(work.picking * metres)} more."
    how = climber.entry.training.how if climber.entry.training else ""
    says = f"{asks} {how}".strip()
    if climber.entry.strangles:
        return fair("upkeep", f"{says} Left to itself for a summer it goes where it likes.")
    return _hours(pair, work, says) or (
        fair("upkeep", says) if work.weekly > MUCH else good("upkeep", says)
    )


def _hours(pair: Pair, work: Work, says: str) -> Reason | None:
    """The hours asked against the hours there are, where the plan says."""
    free = sum(pair.support.garden.free_h.values())
    if not free:
        return None
    row = pair.climber.row_m or pair.support.row_m or USUAL_ROW_M
    asked = (work.weekly + work.picking) * row / 60
    if asked <= SHARE * free:
        return None
    told = (
        f"On {pair.shown.length(row)} of row that is {two_figures(asked)} hours a week, of the "
        f"{two_figures(free)} you have."
    )
    if asked > free:
        return out("upkeep", f"{told} {says}")
    return fair("upkeep", f"{told} {says}")


def _every_days(care: PlantCare) -> float | None:
    """From one round to the next in days, None for once or for years."""
    every = care.every
    if every is None or every.is_word or every.base != "days":
        return None
    return every.usual


def _minutes(minutes: float) -> str:
    """Minutes as one would guess them: whole ones, above twenty by fives."""
    whole = round(minutes / 5) * 5 if minutes > 20 else max(round(minutes), 1)
    return f"{whole} minute" if whole == 1 else f"{whole} minutes"
