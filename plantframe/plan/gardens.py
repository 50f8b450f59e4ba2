"""The garden of a plan: its season, its place, its people, and what else it says of itself."""

from __future__ import annotations

from types import MappingProxyType
from typing import TYPE_CHECKING, Final

from plantframe.language.mistakes import Where
from plantframe.language.values import Measure
from plantframe.plan import names as naming
from plantframe.plan import words
from plantframe.plan.dates import Season
from plantframe.plan.things import Away, Garden, Person

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from plantframe.language.reader import Block, Fact
    from plantframe.plan.dates import Dated
    from plantframe.plan.site import Site
    from plantframe.plan.things import Plan

TROPIC_DEG: Final = 23.44  # the sun's greatest declination


def garden_of(site: Site, blocks: list[Block]) -> Garden:
    """The garden of these heads; settles the season that dates are reckoned from.

    A garden in places.plan and one in 2027.plan are the same garden: the head with a year names
    it, and the facts of all count.
    """
    imperial = words.imperial(site.reading.blocks)
    if not blocks:
        this = site.today.year
        typed = next((line for text in site.reading.texts[:1] for line in text.lines), "")
        where = Where(site.reading.main, 1, 1, typed)
        site.slips.say("no-garden", where, year=str(this), head="")
        return Garden(year=this, seasons=(this, this), imperial=imperial)
    block = next((one for one in blocks if words.season_years(one)), blocks[0])
    _one_garden(site, block, blocks)
    facts = [fact for one in blocks for fact in one.facts]
    latitude, longitude = words.place(facts)
    southern = latitude is not None and latitude < 0
    years = _years(site, block, southern=southern)
    site.season = Season(years, southern)
    frosts = [fact for fact in facts if fact.word in {"frost", "last frost", "first frost"}]
    last, first, late = (_frost(site, frosts, slot) for slot in ("last", "first", "late"))
    none = any(fact.get("none") is not None for fact in frosts)
    # low ground between the tropics has none; on high ground the plan says when it comes
    none = none or (not frosts and latitude is not None and abs(latitude) < TROPIC_DEG)
    last_day, first_day = last.day if last else None, first.day if first else None
    site.season = Season(years, southern, last_day, first_day, none)
    grouped: dict[str, tuple[Fact, ...]] = {}
    for fact in facts:
        grouped[fact.word] = (*grouped.get(fact.word, ()), fact)

    def said(word: str, slot: str) -> object:
        return next((fact.get(slot) for fact in grouped.get(word, ())), None)

    return Garden(
        name=block.name,
        year=years[1] if southern else years[0],
        seasons=years,
        latitude=latitude,
        longitude=longitude,
        frost_last=last,
        frost_first=first,
        frost_late=late,
        frost_none=none,
        wind=words.wind(words.first(facts, "wind")),
        wind_from=str(said("wind", "direction") or ""),
        soil=words.soil(words.first(facts, "soil")),
        people=_people(grouped),
        free_h=_free(site, grouped.get("free", ())),
        away=_away(site, grouped.get("away", ())),
        tools=tuple(str(tool) for fact in grouped.get("tools", ()) for tool in fact.all("stuff")),
        power=_words(grouped.get("power", ())),
        household=words.whole(said("household", "count") or said("people", "many")),
        children=words.ages(words.first(facts, "children")),
        dog="dog" in grouped,
        region=_words(grouped.get("region", ())),
        frost_depth_m=words.metres(said("frost depth", "length")),
        lines_marked=site.dated(words.first(facts, "lines marked"), "date"),
        overhead=(*grouped.get("overhead line", ()), *grouped.get("no lines overhead", ())),
        timber=str(said("timber", "means") or ""),
        kerf_m=words.metres(said("kerf", "length")),
        imperial=imperial,
        facts=MappingProxyType(grouped),
        set_asides=site.set_asides(facts),
        where=block.where,
        marks=site.marks(facts),
    )


def _one_garden(site: Site, block: Block, blocks: Iterable[Block]) -> None:
    """Say of a head with another name that all the heads are read as one garden."""
    for other in blocks:
        named = other.name and not other.name[0].isdigit()
        if named and naming.key_of(other.name) != naming.key_of(block.name):
            told = {"name": block.name, "other": other.name}
            site.slips.say("two-gardens", other.where, **told)


def _words(facts: Iterable[Fact]) -> str:
    """All the words of a fact, with their commas."""
    return ", ".join(str(text) for fact in facts for text in fact.all("text"))


def _frost(site: Site, facts: Iterable[Fact], slot: str) -> Dated | None:
    return next((found for fact in facts if (found := site.dated(fact, slot))), None)


def _years(site: Site, block: Block, *, southern: bool) -> tuple[int, int]:
    years = words.season_years(block)
    if years is None:
        this = site.today.year
        head = f"garden {block.name}, {this}"
        site.slips.say("no-garden", block.where, year=str(this), head=head)
        years = (this, this)
    if southern and years[0] == years[1]:
        # one year for a southern plan is the one in which most of it is picked
        return years[0] - 1, years[0]
    return years


def _people(grouped: Mapping[str, tuple[Fact, ...]]) -> tuple[Person, ...]:
    """Those with a line of their own, then those who are only named."""
    own = [_person(fact) for fact in grouped.get("person", ())]
    known = {person.name.lower() for person in own}
    named = {
        str(name): fact
        for fact in grouped.get("people", ())
        for name in fact.all("name")
        if str(name).lower() not in known
    }
    return (*own, *(Person(name, None, None, fact) for name, fact in named.items()))


def _person(fact: Fact) -> Person:
    lifts = fact.get("lifts")
    return Person(
        str(fact.get("name") or ""),
        words.metres(fact.get("reach")),
        lifts.value if isinstance(lifts, Measure) else None,
        fact,
    )


def _free(site: Site, facts: Iterable[Fact]) -> MappingProxyType[str, float]:
    for fact in facts:
        names = [slot.name for slot in fact.slots]
        if fact.whole and names and names[-1] == "weekday":
            day = fact.slots[-1].text
            example = f"free {day} 4 h"
            site.slips.say("nothing-after", fact.where, word=f"free {day}", example=example)
    return MappingProxyType(dict(words.free_h(facts)))


def _away(site: Site, facts: Iterable[Fact]) -> tuple[Away, ...]:
    out = []
    for fact in facts:
        who = str(fact.get("person") or "")
        for slot in fact.slots:
            span = site.date_in(slot, fact) if slot.name == "dates" else None
            if span is not None:
                out.append(Away(span.day, span.last, who))
    return tuple(out)


def ask_for_the_place(site: Site, plan: Plan) -> None:
    """Ask where the garden is, where an answer hangs on it."""
    garden = plan.garden
    if garden.latitude is not None or garden.frost_last is not None or garden.frost_none:
        return
    missing = []
    if any(planting.sow or planting.out for planting in plan.plantings):
        missing.append("whether frost can catch what is sown or planted")
    if any(frame.kind == "cold frame" for frame in plan.frames.values()):
        missing.append("which way the lights should face")
    if not missing:
        return
    where = garden.where or Where(site.reading.main, 1)
    example = "place 52.1 N, 1.4 W` and `frost last 6 May, first 12 October"
    site.slips.say("no-place", where, example=example, missing=" or ".join(missing))
