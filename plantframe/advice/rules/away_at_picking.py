"""away-at-picking: nobody is at home for days when a crop wants picking every two or three."""

from __future__ import annotations

from datetime import date, timedelta
from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.climbers import opening
from plantframe.advice.edits import add_task
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.plantings import as_range
from plantframe.season.units import day, listed

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.plan.things import Away
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

OFTEN_DAYS = 4.0  # what is picked at least so often
MISSED_DAYS = 3
CROPS_FOR = timedelta(days=42)  # after the first picking (common practice, no source)


@frozen
class Facts:
    """What wants picking, on which days nobody is there, and how many those are."""

    crops: tuple[str, ...]
    first: date
    last: date
    days: int


def check(season: Season, _season: Season) -> Iterable[Finding]:
    """Once for each time away: the days of it in which something is picked often."""
    garden = season.plan.garden
    facts = garden.facts.get("away", ())
    for away in garden.away:
        if not _everybody(away, season) or _somebody_picks(season):
            continue
        missed = [(_missed(one, away), one) for one in season.plantings]
        due = [(days, one) for days, one in missed if days > MISSED_DAYS]
        if not due:
            continue
        longest = max(days for days, _ in due)
        names = tuple(dict.fromkeys(one.name for _, one in due))
        where = facts[0].where if facts else due[0][1].planting.fact.where
        yield Finding(
            level="note",
            where=where,
            block=garden.name,
            subject=day(away.first),
            facts=Facts(names, away.first, away.last, longest),
            by=away.first,
            candidates=partial(_ways_out, season, due[0][1], names, away),
            ways=("Pick everything clean the day before, the small ones too.",),
        )


def _everybody(away: Away, season: Season) -> bool:
    """Nobody is left at home."""
    people = season.plan.garden.people
    if not away.who:
        return True
    return len(people) == 1 and people[0].name.lower() == away.who.lower()


def _somebody_picks(season: Season) -> bool:
    """A task gives the picking to somebody."""
    return any("pick" in task.block.head.text.lower() for task in season.plan.tasks)


def _missed(planting: WorkedPlanting, away: Away) -> int:
    """Days away in which it wants picking."""
    entry, harvest = planting.entry, planting.harvest
    if entry is None or harvest is None:
        return 0
    often = [
        every
        for care in entry.care
        if care.id == "pick" and (every := as_range(care.every)) is not None
    ]
    if not often or often[0].low > OFTEN_DAYS:
        return 0
    first, last = max(harvest[0], away.first), min(harvest[1] + CROPS_FOR, away.last)
    return max(0, (last - first).days + 1)


def _ways_out(
    season: Season, planting: WorkedPlanting, names: tuple[str, ...], away: Away
) -> Iterable[Edit]:
    """Somebody asked to pick."""
    holder = season.plan.named(planting.holder)
    if holder is not None:
        what = f"ask somebody to pick the {listed(names)}, by {day(away.first)}"
        yield add_task(holder.block, what)


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    crops = listed(facts.crops)
    return Words(
        says=(
            f"{opening(crops)}: nobody is at home from {day(facts.first)} to {day(facts.last)}, "
            f"and on {facts.days} of those days picking is due, every second or third."
        ),
        if_ignored="Pods and fruit left to ripen stop the plant from setting more.",
        told=f"Away {day(facts.first)} to {day(facts.last)}.",
        assumed="About six weeks of picking from the first on.",
        sum=(
            f"{facts.days} days of picking missed; said of more than {MISSED_DAYS}, and of "
            f"crops picked every {OFTEN_DAYS:.0f} days or oftener."
        ),
    )


RULE = Rule(
    name="away-at-picking",
    summary="nobody is at home when a crop wants picking every two or three days",
    looks_at="season",
    levels=("note",),
    basis="common practice",
    check=check,
    words=words,
)
