"""From blocks and facts as read to the plan: names resolved, dates worked out, slips said."""

from __future__ import annotations

from types import MappingProxyType
from typing import TYPE_CHECKING

from plantframe.frozen import replace
from plantframe.plan import names as naming
from plantframe.plan import words
from plantframe.plan.dates import Season
from plantframe.plan.entries import items_of, log_of, note_of, task_of, want_of
from plantframe.plan.frames import frame_of
from plantframe.plan.gardens import ask_for_the_place, garden_of
from plantframe.plan.grounds import bed_of, thing_of
from plantframe.plan.plantings import grown_last_year
from plantframe.plan.site import Site
from plantframe.plan.things import Plan
from plantframe.plan.varieties import varieties_of

if TYPE_CHECKING:
    from datetime import date

    from plantframe.language.files import Reading
    from plantframe.language.mistakes import Mistake
    from plantframe.language.reader import Block

_BEDS = ("bed", "border")
_THINGS = ("wall", "hedge", "tree", "path")
_FRAMES = ("frame", "line", "cover", "fence")


def build(reading: Reading, today: date) -> tuple[Plan, tuple[Mistake, ...]]:
    """The plan of a reading and the slips found on the way.

    today   stands in for the season where the plan names none
    """
    by_word: dict[str, list[Block]] = {}
    for block in reading.blocks:
        by_word.setdefault(block.word, []).append(block)

    def all_of(*words: str) -> list[Block]:
        return [block for word in words for block in by_word.get(word, [])]

    site = Site(reading, today, Season((today.year, today.year)))
    garden = garden_of(site, all_of("garden"))
    if garden.kerf_m is None:
        garden = replace(garden, kerf_m=_yards_kerf_m(all_of("yard")))
    own = varieties_of(site, all_of("variety"), garden)
    site.slips.own = own
    kept = [
        block for block in all_of(*_THINGS, *_BEDS, *_FRAMES) if site.names.add(block, site.slips)
    ]
    for block in all_of("shed", "yard", "house"):
        site.names.add_common(block)
    # the ground before the frames, so that the slips come in the order of a walk
    beds = {block.name: bed_of(site, block) for block in kept if block.word in _BEDS}
    places = [*(block for block in kept if block.word in _THINGS), *all_of("house")]
    things = {block.name or "house": thing_of(site, block) for block in places}
    frames = {block.name: frame_of(site, block) for block in kept if block.word in _FRAMES}
    for block in kept:
        naming.two_things(block, site.names, site.slips)
    plan = Plan(
        reading.name,
        garden,
        MappingProxyType(beds),
        MappingProxyType(things),
        MappingProxyType(frames),
        tuple(want_of(site, block) for block in all_of("want")),
        tuple(task_of(site, block) for block in all_of("task")),
        tuple(log_of(site, block) for block in all_of("log")),
        tuple(note_of(site, block) for block in all_of("note")),
        tuple(item for block in all_of("shed") for item in items_of(block)),
        tuple(item for block in all_of("yard") for item in items_of(block)),
        grown_last_year(site),
        frozenset(site.names.common),
        MappingProxyType(own),
    )
    ask_for_the_place(site, plan)
    return plan, tuple(site.slips.found)


def _yards_kerf_m(yards: list[Block]) -> float | None:
    """What the yard's saw takes, where it is said under `yard`."""
    facts = [fact for block in yards for fact in block.facts]
    kerf = words.first(facts, "kerf")
    return words.metres(kerf.get("length")) if kerf else None
