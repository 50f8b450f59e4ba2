"""What grows on a frame, in a bed or along a border, and what grew there last year."""

from __future__ import annotations

from types import MappingProxyType
from typing import TYPE_CHECKING

from plantframe.frozen import replace
from plantframe.language.spots import Spot
from plantframe.language.values import Measure
from plantframe.plan import names as naming
from plantframe.plan import words
from plantframe.plan.things import INSIDE, Grown, Planting

if TYPE_CHECKING:
    from collections.abc import Mapping

    from plantframe.language.reader import Block, Fact
    from plantframe.language.shapes import Slot
    from plantframe.plan.site import Site

GROWS = frozenset({"grow", "plant"})
FOOT_M = 0.3048
_FRAMES = frozenset({"frame", "line", "cover", "fence"})


def plantings_of(site: Site, block: Block) -> tuple[Planting, ...]:
    """What grows here.

    A line `sow …` or `plant out …` belongs to the `grow` above it; where there is only one
    `grow` in the block, to that one, wherever it stands.
    """
    grown = [fact for fact in block.facts if fact.word in GROWS and fact.slot("plant")]
    out: list[Planting] = []
    for fact in grown if len(grown) == 1 else ():
        _grown(site, fact, block, out)
    for fact in block.facts:
        if fact in grown and len(grown) > 1:
            _grown(site, fact, block, out)
        elif fact.word in {"sow", "plant out"}:
            if out:
                out[-1] = _dated(site, out[-1], fact)
            else:
                site.slips.say("no-plant", fact.where, text=fact.text)
    return tuple(out)


def _grown(site: Site, fact: Fact, block: Block, out: list[Planting]) -> None:
    slot = fact.slot("plant")
    if slot is not None:
        slot = naming.one_plant(fact, slot, site.slips)
        out.append(_planting(site, fact, slot, block, len(out)))


def _dated(site: Site, now: Planting, fact: Fact) -> Planting:
    """A planting with what a line of its own says of its dates."""
    return replace(
        now,
        sow=site.dated(fact, "sow", planting=True) or now.sow,
        out=site.dated(fact, "out", planting=True) or now.out,
        raised=str(fact.get("raised") or "") or now.raised,
        facts=(*now.facts, fact),
    )


def _planting(site: Site, fact: Fact, slot: Slot, block: Block, order: int) -> Planting:
    border = block.word == "border"
    entries = naming.plant_of(
        fact, slot, site.slips, quiet=border, ambiguous=border or block.word in _FRAMES
    )
    where = fact.slot("spot")
    spots = naming.spots(fact, [where], site.names, site.slips, block) if where else ()
    male, female = words.whole(fact.get("male")), words.whole(fact.get("female"))
    both = (male or 0) + (female or 0)
    return Planting(
        str(slot.value),
        entries,
        str(fact.get("cultivar") or ""),
        words.whole(fact.get("count")) or both or None,
        words.metres(fact.get("apart")),
        site.dated(fact, "sow", planting=True),
        site.dated(fact, "out", planting=True),
        str(fact.get("raised") or ""),
        words.whole(fact.get("leaders")),
        str(fact.get("pinched") or ""),
        str(fact.get("trained") or ""),
        fact.get("cut") is not None,
        site.dated(fact, "until"),
        spots[0] if spots else None,
        block.name,
        order,
        fact,
        (fact,),
        male,
        female,
        _weighed(fact),
    )


def _weighed(fact: Fact) -> float | None:
    """What the gardener says it weighs, kg per metre of row."""
    weight, each = fact.get("weighs"), fact.get("each")
    if not isinstance(weight, Measure):
        return None
    length = words.metres(each) or (FOOT_M if str(each).endswith(("foot", "ft")) else 1.0)
    return weight.value / length


def grown_last_year(site: Site) -> Mapping[str, tuple[Grown, ...]]:
    """What grew in which bed in the plans brought in as last year."""
    out: dict[str, list[Grown]] = {}
    for text in site.reading.history:
        heads = [block for block in text.blocks if block.word == "garden"]
        years = next((found for one in heads if (found := words.season_years(one))), None)
        for block in text.blocks:
            bed = _bed_named(site, block)
            for fact in block.facts if bed and years else ():
                plant = fact.get("plant")
                if fact.word in GROWS and isinstance(plant, str) and years:
                    grown = Grown(plant, years[0], naming.plants(plant, site.slips.own), fact)
                    out.setdefault(bed, []).append(grown)
            if block.word in {"bed", "border"}:
                out.setdefault(block.name, []).extend(site.had(block.facts, quiet=True))
    return MappingProxyType({bed: tuple(grown) for bed, grown in out.items()})


def _bed_named(site: Site, block: Block) -> str:
    """The bed a block of last year's plan stands in."""
    if block.word in {"bed", "border"}:
        return block.name
    for slot in block.head.slots:
        spot = slot.value
        # west of a bed is not in it
        if isinstance(spot, Spot) and spot.relation in INSIDE and spot.distance_m is None:
            found = site.names.find(spot.name)
            if found:
                return found
    return ""
