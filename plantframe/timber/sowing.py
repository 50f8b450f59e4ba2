"""Seed and plants to buy, less the packets in the shed."""

from __future__ import annotations

import math
import re
from typing import TYPE_CHECKING, Final

from plantframe.catalogue.names import named
from plantframe.season.entries import entry_of
from plantframe.season.units import plural
from plantframe.timber.counters import SEED, Line
from plantframe.timber.spares import share

if TYPE_CHECKING:
    from plantframe.plan.things import Item, Plan
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

_SEED_WORDS: Final = re.compile(
    r"\b(seeds?|packets?|packs?|a|an|of|half|some|open|opened|old|plants?|young|pots?)\b",
    re.IGNORECASE,
)
_AS_ANNUAL: Final = re.compile(r"as (an )?annual", re.IGNORECASE)
_YEARS: Final = re.compile(r"year|perennial|woody|shrub|tree", re.IGNORECASE)


def seed_lines(season: Season, frames: frozenset[str] = frozenset()) -> tuple[Line, ...]:
    """A line for each plant, several plantings of one kind together."""
    groups: dict[tuple[str, str, bool], list[WorkedPlanting]] = {}
    for one in season.plantings:
        if frames and one.holder not in frames:
            continue
        if _lives_there(season, one):
            continue
        plant = one.planting.plant or one.name
        groups.setdefault((plant, one.planting.cultivar, _from_seed(one)), []).append(one)
    return tuple(_line(season.plan, group, seed=key[2]) for key, group in groups.items())


def _lives_there(season: Season, one: WorkedPlanting) -> bool:
    """A plant that lives for years and stands where it was planted some other year."""
    if not _lasting(one) or one.planting.out is not None or one.planting.sow is not None:
        return False
    frame = season.frames.get(one.holder)
    return frame is None or frame.stands


def _lasting(one: WorkedPlanting) -> bool:
    """Whether the plant lives for years; of several it may be, whether all do."""
    entries = [one.entry] if one.entry else [entry_of(name) for name in one.planting.plants]
    lives = [entry.life for entry in entries if entry is not None]
    return bool(lives) and all(
        life is not None
        and bool(_YEARS.search(life.value if life.is_word else life.unit))
        and not _AS_ANNUAL.search(life.value)
        for life in lives
    )


def _from_seed(one: WorkedPlanting) -> bool:
    if one.planting.sow is not None:
        return True
    if one.planting.out is not None or _lasting(one):
        return False
    entries = [one.entry] if one.entry else [entry_of(name) for name in one.planting.plants]
    known = [entry for entry in entries if entry is not None]
    if any(entry.life is not None and _AS_ANNUAL.search(entry.life.value) for entry in known):
        return any(entry.sow or entry.sow_indoors for entry in known)
    return bool(known)  # of what nobody knows, nobody knows whether it comes from seed


def _line(plan: Plan, group: list[WorkedPlanting], *, seed: bool) -> Line:
    first = group[0].planting
    counts = [one.planting.count for one in group]
    count = sum(number for number in counts if number is not None)
    known = all(number is not None for number in counts)
    holders = tuple(dict.fromkeys(one.holder for one in group))
    packets = _packets(plan, group[0])
    minds: list[str] = []
    if seed:
        more = math.ceil(count * (1 + share("seed")))
        says = (
            f"{first.named}, seed for {plural(count, 'plant')}" if count else f"{first.named}, seed"
        )
        if count:
            minds.append(
                f"sow about {more}, for gaps" if known else "and for the rows without a count"
            )
        if first.sow is None:
            minds.append("or young plants; the plan gives no sowing day")
    else:
        says = f"{first.named}, {plural(count, 'plant')}" if count else f"{first.named}, plants"
    minds += [f"in the shed: {item.fact.text}; look at its year" for item in packets]
    if not count:
        minds.append("the plan gives no number")
    have = 1 if packets and seed else 0
    wanted = count or 1
    return Line(
        SEED,
        first.named,
        says,
        0 if have else wanted,
        holders,
        wanted=wanted,
        from_shed=wanted if have else 0,
        minds=tuple(minds),
    )


def _packets(plan: Plan, one: WorkedPlanting) -> list[Item]:
    """Packets of that plant in the shed; of that cultivar, where both say which."""
    plant = one.planting.plant
    out = []
    for item in plan.shed:
        said = " ".join(_SEED_WORDS.sub(" ", item.what).split())
        if not said or plant is None or plant not in named("plant", said):
            continue
        cultivar = str(item.fact.get("cultivar") or "")
        if cultivar and one.planting.cultivar and cultivar != one.planting.cultivar:
            continue
        out.append(item)
    return out
