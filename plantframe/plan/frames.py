"""Frames, lines, covers and fences: their kind, their facts, when they stand."""

from __future__ import annotations

from datetime import date
from types import MappingProxyType
from typing import TYPE_CHECKING

from plantframe.language.edits import rewrite
from plantframe.language.near import one_slip
from plantframe.language.spots import Spot as TypedSpot
from plantframe.language.values import Measure
from plantframe.plan import names as naming
from plantframe.plan import words
from plantframe.plan.dates import Dated
from plantframe.plan.plantings import plantings_of
from plantframe.plan.things import Frame, Stood

if TYPE_CHECKING:
    from collections.abc import Iterator

    from plantframe.language.reader import Block, Fact
    from plantframe.plan.site import Site

# Facts that say a thing is built of parts, so that its kind is worth asking for.
_PLACE_FACTS = frozenset({"faces", "surface", "built", "high", "painted", "sun", "runs", "had"})
# Years a frame is wanted for that is only said to stay (common practice, no source).
_STAYS_YEARS = 10.0


def frame_of(site: Site, block: Block) -> Frame:
    """A frame, line, cover or fence."""
    facts = block.facts
    grouped: dict[str, tuple[Fact, ...]] = {}
    for fact in facts:
        grouped[fact.word] = (*grouped.get(fact.word, ()), fact)
    own = "own design" in grouped
    stays = block.fact("stays up")
    years = stays.get("years") if stays else None
    wanted = years.value if isinstance(years, Measure) else None
    sun, sun_h = words.sun(block.fact("sun"))
    built = _built_year(site, block.fact("built"))
    marks = site.marks(facts)
    if built is not None and block.fact("built"):
        site.built[block.name] = built
        for mark in marks:
            site.before_it_was_built(block.name, mark.day, mark.fact)
    return Frame(
        block.word,
        block.name,
        "" if own else _kind(site, block),
        own,
        site.spots(block),
        MappingProxyType(grouped),
        plantings_of(site, block),
        built,
        site.dated(block.fact("ready by"), "date"),
        _taken_down(site, block.fact("take down")),
        site.dated(block.fact("on"), "dates"),
        wanted if wanted is not None or stays is None else _STAYS_YEARS,
        words.wind(block.fact("wind")),
        words.soil(block.fact("soil")),
        sun,
        sun_h,
        site.dated(block.fact("lines marked"), "date"),
        site.set_asides(facts),
        marks,
        site.had(facts),
        block,
        tuple(one for fact in facts if fact.word == "stood in" for one in _stood(site, fact)),
    )


def _stood(site: Site, fact: Fact) -> Iterator[Stood]:
    """The bed that a frame stood in or was moved from; one that is gone tells nothing here."""
    slot = fact.slot("bed")
    if slot is None:
        return
    typed = TypedSpot("in", str(slot.value), text=slot.text)
    bed = site.names.find(typed.name) or ""
    known = (block.name.lower() for _, block in site.names.near(typed.name))
    if not bed and any(one_slip(typed.name.lower(), name) for name in known):
        naming.spot(typed, fact.place(slot), site.names, site.slips)  # a slip of its name
    if not bed:
        return
    years = [year for one in fact.slots for year in site.years(one.value)]
    moved = not fact.text.lower().startswith("stood")
    if not moved:
        yield from (Stood(bed, year, year, moved=False) for year in years)
        if not years:
            yield Stood(bed, 0, site.season.years[0] - 1, moved=True)
        return
    dated = site.dated(fact, "date")
    first = years[0] if years else dated.day.year if dated else site.season.years[0]
    yield Stood(bed, 0, first - 1, moved=True)


def _built_year(site: Site, built: Fact | None) -> int | None:
    """The year it was built; `built` alone is at the latest last year."""
    if built is None:
        return None
    year = next((found for found in site.years(built.get("year"))), None)
    if year is None:
        dated = site.dated(built, "date")
        year = dated.day.year if dated else None
    if year is None:
        return site.season.years[0] - 1
    if year > site.season.years[1]:
        why = f"that is after {site.season.label}: what is still to be built has no `built`."
        site.slips.say("impossible-date", built.where, text=built.text, why=why)
        return None
    return year


def _taken_down(site: Site, fact: Fact | None) -> Dated | None:
    """When it comes down: a day, or any time in a later year."""
    if fact is not None and (years := site.years(fact.get("year"))):
        return Dated(date(years[0], 1, 1), date(years[0], 12, 31), 0, str(years[0]))
    return site.dated(fact, "date")


def _kind(site: Site, block: Block) -> str:
    """The catalogue's structure a frame is, "" where it is none or must be asked about."""
    slot = block.head.slot("kind")
    if slot is None:
        return _kind_unsaid(site, block)
    said = str(slot.value)
    found = naming.kinds(said)
    if len(found) == 1:
        return found[0]
    where = block.head.place(slot)
    near = found or naming.near_kinds(said, block.word)
    edits = [rewrite(where, said, kind) for kind in near[:2]]
    told = {"word": block.word, "kind": said, "near": ", ".join(near)}
    site.slips.say("unknown-kind", where, edits, **told)
    return ""


def _kind_unsaid(site: Site, block: Block) -> str:
    """A frame whose head names no kind: its name may be one, else it is asked for."""
    named = naming.kinds(block.name)
    if len(named) == 1:
        told = {"name": block.name, "kind": named[0], "word": block.word}
        site.slips.say("kind-by-name", block.where, **told)
        return named[0]
    plain_fence = block.word == "fence" and all(fact.word in _PLACE_FACTS for fact in block.facts)
    if plain_fence:
        return ""  # a fence that only stands there: nothing hangs on what it is made of
    near = naming.kinds_in_name(block.name, block.word)
    edits = [
        rewrite(block.where, block.name, f"{block.name}, {kind}", f"say `{kind}`")
        for kind in near[:2]
    ]
    told = {"word": block.word, "name": block.name, "near": ", ".join(near)}
    site.slips.say("no-kind", block.where, edits, **told)
    return ""
