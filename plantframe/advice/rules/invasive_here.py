"""invasive-here: a plant that runs wild where the garden is, by a printed list."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.climbers import meant, opening
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.advice.mentions import place_of
from plantframe.frozen import frozen
from plantframe.season import wild
from plantframe.season.regions import may_lie_in

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.catalogue.entries import Harm
    from plantframe.plan.things import Garden
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season
    from plantframe.season.units import Shown


@frozen
class Facts:
    """The plant and its place, what the list says and of where, its year; "" where to be asked."""

    plant: str
    place: str
    says: str
    where: str
    year: int | None
    region: str


def check(planting: WorkedPlanting, season: Season) -> Iterable[Finding]:
    """The printed lists that name the plant, against the garden's own region."""
    garden = season.plan.garden
    lists = _lists(planting)
    if garden.region:
        for harm, part in wild.here(lists, garden.region)[:1]:
            level = "note" if wild.is_mild(harm) else "warn"
            yield _finding(planting, season, level, harm, part)
        return
    hard = [one for one in lists if _can_be_here(one, garden)]
    if hard and planting is _first(season, garden):
        yield _finding(planting, season, "ask", hard[0], " and ".join(hard[0].where))


def _lists(planting: WorkedPlanting) -> list[Harm]:
    """Printed lists only, and only where every plant the name can mean is on one."""
    entries = meant(planting)
    found = [wild.printed_lists(entry) for entry in entries]
    return list(found[0]) if found and all(found) else []


def _can_be_here(harm: Harm, garden: Garden) -> bool:
    """The answer would be a warning, and the garden can lie there by its degrees."""
    if wild.is_mild(harm):
        return False
    return any(
        may_lie_in(garden.latitude, garden.longitude, part)
        for part in harm.where
        if part != "warm regions"
    )


def _first(season: Season, garden: Garden) -> WorkedPlanting | None:
    """The first planting of the plan that the region matters for: it is asked for once."""
    for planting in season.plantings:
        if any(_can_be_here(one, garden) for one in _lists(planting)):
            return planting
    return None


def _finding(
    planting: WorkedPlanting, season: Season, level: str, harm: Harm, part: str
) -> Finding:
    facts = Facts(
        planting.name,
        place_of(season, planting),
        harm.what,
        part,
        harm.year,
        season.plan.garden.region,
    )
    asked = ("Write `region` and the country or state under the garden.",)
    settled = ("Ask the local office that keeps the list what stands on it today.",)
    return Finding(
        level=level,
        where=planting.planting.fact.where,
        block=planting.holder,
        subject=planting.name,
        facts=facts,
        by=planting.in_ground.day if planting.in_ground else None,
        ways=asked if level == "ask" else (*settled, "A native climber that holds on alike."),
    )


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    year = f" ({facts.year})" if facts.year else ""
    if not facts.region:
        return Words(
            says=(
                f"{opening(facts.plant)} {facts.place} runs wild in some parts of the world "
                f"({facts.where}). Which country or state is the garden in?"
            ),
            if_ignored="Where it is listed, it may be against the law to plant it.",
            told="The plan names no region.",
            sum=f"{opening(facts.says)}{year}.",
        )
    return Words(
        says=(
            f"{opening(facts.plant)} {facts.place}: print has it for {facts.where} as "
            f"“{facts.says}”{year}."
        ),
        if_ignored="Birds and roots carry it over the fence, and it may be against the law.",
        told=f"Region {facts.region}.",
        assumed="The list as it was printed; lists change.",
        sum="A printed list; `plantframe facts` and the plant's name gives its source.",
    )


RULE = Rule(
    name="invasive-here",
    summary="a plant that runs wild where the garden is, by a printed list",
    looks_at="planting",
    levels=("note", "ask", "warn"),
    basis="published",
    check=check,
    words=words,
    source="the list printed for the plant in its own entry",
)
