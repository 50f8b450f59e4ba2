"""A flower border: what stands up among its neighbours, and what each plant is held up with."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from plantframe.catalogue import reading as catalogue
from plantframe.pairing.cautions import cautions
from plantframe.pairing.climber import Climber
from plantframe.pairing.light import lighting
from plantframe.pairing.matches import BARRED, OUT, VERDICTS, Matches, Pairing, Reject
from plantframe.pairing.pair import Pair, fair, good
from plantframe.pairing.supports import Support
from plantframe.pairing.upkeep import upkeeping
from plantframe.pairing.wording import capital
from plantframe.season import wild
from plantframe.season.entries import entry_of
from plantframe.season.plantings import as_range
from plantframe.season.told import sentence
from plantframe.season.units import Shown, listed

if TYPE_CHECKING:
    from collections.abc import Iterator

    from plantframe.catalogue.entries import Plant
    from plantframe.catalogue.sourced import Sourced
    from plantframe.pairing.matches import Reason
    from plantframe.plan.things import Bed
    from plantframe.season.season import Season

# Taller than its neighbours by this much, a plant is an accent (common practice, no source).
ACCENT: Final = 1.3
# And narrow: it spreads no wider than this share of its height.
NARROW: Final = 0.5
BARE: Final = "no support"
# Props, the least trouble first; a word of the catalogue's own lines on staking begins each.
PROPS: Final = (BARE, "brush", "ring", "cane", "stake", "cage")
# A life that ends with the year, as a sentence says it.
LIVES: Final = {
    "annual": "an annual",
    "tender perennial grown as annual": "a tender perennial grown as an annual",
}
TALL_M: Final = 0.9  # an accent where no neighbour's height is known


def for_border(season: Season, bed: Bed) -> Matches:
    """What may go into a border, tall upright accents that need no prop first."""
    here = [(one.name, one.planting.count, one.entry) for one in season.held_by(bed.name)]
    known = {entry.name for _, _, entry in here if entry is not None}
    neighbours = [height for _, _, entry in here if entry and (height := _height_m(entry))]
    support = Support("", "border", None, season.plan.garden, None, bed)
    ranked: list[tuple[tuple[object, ...], Pairing]] = []
    rejected = []
    for entry in _flowers(season):
        if entry.name in known:
            continue
        if says := wild.barred(entry, season.plan.garden.region):
            rejected.append(Reject(entry.name, "", bed.name, BARRED, says))
            continue
        pair = Pair(Climber(entry, entry.name), support)
        reasons = tuple(_reasons(pair, neighbours))
        out = next((one for one in reasons if one.verdict == OUT), None)
        if out is not None:
            rejected.append(Reject(entry.name, "", bed.name, out.question, out.says))
            continue
        prop = prop_of(entry)
        place = (
            tuple(VERDICTS.index(one.verdict) for one in reasons),
            PROPS.index(prop),
            -(_height_m(entry) or 0.0),
            entry.name,
        )
        ranked.append((place, Pairing(entry.name, "", prop, reasons, cautions(pair, season))))
    remarks = tuple(_told(here, Shown(season.plan.garden.imperial)))
    ranked.sort(key=lambda one: one[0])
    return Matches(bed.name, tuple(one for _, one in ranked), tuple(rejected), remarks)


def prop_of(entry: Plant) -> str:
    """What holds it up: no support, brush, ring, cane, stake or cage."""
    said = entry.other.get("staking")
    words = said.value if said is not None else ""
    if not words or words.startswith(("none", "usually none")):
        return BARE
    found = {word: words.find(word) for word in PROPS if word in words}
    return min(found, key=lambda word: found[word], default=BARE)


def _flowers(season: Season) -> Iterator[Plant]:
    """The standing flowers of the catalogue and of the gardener's own."""
    for name in (*season.plan.own.values(), *catalogue.entry_names("plant")):
        entry = entry_of(name, season.plan.garden)
        if entry is None or entry.grown_for != "flower" or entry.habit is None:
            continue
        if entry.habit.value == "upright":
            yield entry


def _height_m(entry: Plant) -> float | None:
    height = as_range(entry.height)
    return height.middle if height is not None else None


def _reasons(pair: Pair, neighbours: list[float]) -> Iterator[Reason]:
    climber, entry = pair.climber, pair.climber.entry
    name = capital(climber.said)
    said = entry.other.get("staking")
    prop = prop_of(entry)
    if prop == BARE:
        tail = re.split(r"[,;] ", said.value, maxsplit=1)[1:] if said is not None else []
        more = f"; {tail[0]}" if tail else ""
        yield good("hold", f"{name} stands by itself{more}.")
    else:
        yield fair(
            "hold", f"{name} wants {_words(said, pair.shown) or prop}{_ring(entry, pair.shown)}."
        )
    yield good("carry", f"{name} stands on its own stems.")
    yield _among(pair, neighbours)
    life = entry.life.value if entry.life else ""
    if life in {"perennial", "woody"}:
        yield good("outlast", f"{name} is a perennial and stays.")
    else:
        lives = LIVES.get(life, "there for a season")
        yield fair("outlast", f"{name} is {lives}: sown or set out anew.")
    yield lighting(pair)
    yield upkeeping(pair)


def _among(pair: Pair, neighbours: list[float]) -> Reason:
    """How it stands among its neighbours."""
    entry, name = pair.climber.entry, capital(pair.climber.said)
    height, spread = as_range(entry.height), as_range(entry.other.get("spread"))
    if height is None:
        return fair("reach", f"Nobody has said how tall {pair.climber.said} grows.")
    tall = pair.shown.lengths(height.low, height.high)
    tallest = max(neighbours, default=0.0)
    needed = sorted(neighbours)[len(neighbours) // 2] * ACCENT if neighbours else TALL_M
    narrow = spread is None or spread.middle <= NARROW * height.middle
    if height.middle < needed:
        near = f"no taller than its neighbours, {pair.shown.length(tallest)} at most"
        return fair("reach", f"{name} grows {tall}: {near if neighbours else 'no accent'}.")
    if not narrow:
        return fair("reach", f"{name} grows {tall} and broad: a bush more than an accent.")
    above = "an upright accent above its neighbours" if neighbours else "an upright accent"
    return good("reach", f"{name} grows {tall}: {above}.")


def _ring(entry: Plant, shown: Shown) -> str:
    across = as_range(entry.other.get("ring across"))
    if across is None or prop_of(entry) != "ring":
        return ""
    return f", {shown.lengths(across.low, across.high)} across"


def _words(said: Sourced | None, shown: Shown) -> str:
    """How the trade holds it up, in the gardener's units."""
    return "" if said is None else sentence(said.value, imperial=shown.imperial)


def _told(here: list[tuple[str, int | None, Plant | None]], shown: Shown) -> Iterator[str]:
    """What each plant that is there is held up with, those of one prop together."""
    by_prop: dict[str, list[str]] = {}
    for name, _, entry in here:
        if entry is None:
            continue
        said = entry.other.get("staking")
        none = said is None or said.value == "none"
        words = "no support" if none else _words(said, shown)
        by_prop.setdefault(f"{words}{_ring(entry, shown)}", []).append(name)
    for words, names in by_prop.items():
        yield f"{capital(listed(names))}: {words}."
    unknown = [name for name, _, entry in here if entry is None]
    if unknown:
        yield f"Nothing is known of {listed(unknown)}."
    yield "For a climber on a pole, wigwam or obelisk in it, name the climber."
