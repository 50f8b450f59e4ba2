"""What a plant does to people, walls, neighbours and the ground, where it matters to a pairing."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.pairing.climber import word
from plantframe.pairing.wording import capital
from plantframe.season import wild
from plantframe.season.entries import entry_of
from plantframe.season.plantings import as_range
from plantframe.season.units import listed, times, two_figures

if TYPE_CHECKING:
    from collections.abc import Iterator

    from plantframe.catalogue.entries import Harm, Plant
    from plantframe.pairing.pair import Pair
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

# A fruit heavier than this slips off its vine without a sling (published: 3 lb).
SLING_KG = 1.4
# Two plants on one frame: beyond these the one smothers the other (common practice, no source).
BULLY_WEIGHT = 3.0
# Air between a frame and the wall behind (common practice, no source; print runs from 5 to 15 cm).
MASONRY_GAP_M, CLAD_GAP_M = 0.05, (0.075, 0.15)


def cautions(pair: Pair, season: Season | None = None) -> tuple[str, ...]:
    """The lines to print with a pairing, the gravest first."""
    found = [
        *_neighbours(pair),
        *(_harm(pair, harm) for harm in pair.climber.entry.harm),
        *_wild(pair),
        *_wall(pair),
        *_rotation(pair, season),
        *_needs(pair),
    ]
    return tuple(dict.fromkeys(line for line in found if line))


def disturbs(pair: Pair) -> bool:
    """It would be taken for what grows on the frame, or smother it, or be smothered."""
    return any(_neighbours(pair))


def is_tired(pair: Pair, season: Season | None) -> bool:
    """Its family was in the bed too lately."""
    return any(_rotation(pair, season))


def already_there(pair: Pair) -> tuple[WorkedPlanting, ...]:
    """What else grows on the frame this season."""
    worked = pair.support.worked
    plantings = worked.plantings if worked else ()
    return tuple(one for one in plantings if one.planting.plant != pair.climber.name)


def _neighbours(pair: Pair) -> Iterator[str]:
    """What already grows on the frame."""
    climber, frame = pair.climber, pair.support.the
    for other in already_there(pair):
        entry = other.entry
        if entry is None:
            continue
        if _mistaken(climber.entry, entry) or _mistaken(entry, climber.entry):
            poisonous = climber.said if _poisons(climber.entry) else other.name
            eaten = other.name if poisonous == climber.said else climber.said
            yield (
                f"Not on one frame with {eaten}: {poisonous} is its relative, looks like it and is "
                "poisonous."
            )
        mine, theirs = climber.wet_kg_per_m, other.weight_kg_per_m
        if mine is not None and theirs is not None:
            ratio = mine.middle / theirs.middle
            if ratio > BULLY_WEIGHT:
                yield (
                    f"{capital(climber.said)} is {times(ratio)} as heavy and smothers {other.name} "
                    f"on {frame}: give each its own bay."
                )
            elif ratio < 1 / BULLY_WEIGHT:
                yield (
                    f"{capital(other.name)} is {times(1 / ratio)} as heavy and smothers "
                    f"{climber.said} on {frame}: give each its own bay."
                )


def _mistaken(one: Plant, other: Plant) -> bool:
    """A poisonous flower that may be picked for its eaten relative."""
    return (
        one.family == other.family
        and one.grown_for == "flower"
        and other.grown_for == "food"
        and _poisons(one)
        and word(one.holds_on) == word(other.holds_on)
    )


def _poisons(plant: Plant) -> bool:
    return any(harm.kind == "poisonous" for harm in plant.harm)


def _harm(pair: Pair, harm: Harm) -> str:
    """One harm as a line, "" where it does not matter here."""
    garden, support = pair.support.garden, pair.support
    what = harm.what.rstrip(".")
    if harm.kind == "invasive":
        return ""  # all such places are told in one line
    if harm.kind == "poisonous":
        whom = [who for who in ("children", "pets") if who in harm.who]
        near = [
            name
            for name, here in (("children", garden.children), ("an animal", garden.dog))
            if here and (name != "an animal" or "pets" in whom)
        ]
        here = f" There are {listed(near)} here." if near == ["children"] else ""
        if near and not here:
            here = f" There is {listed(near)} here."
        return f"Poisonous: {what}.{here}"
    if harm.kind == "clings to cladding":
        return f"On buildings: {what}." if support.at_wall else ""
    if harm.kind == "strangles":
        return f"Crushes what it winds round: {what}."
    if harm.kind in {"thorny", "irritant"}:
        label = {"thorny": "Thorns", "irritant": "On the skin"}[harm.kind]
        return f"{label}: {what}."
    return f"{what[:1].upper()}{what[1:]}."


def _wild(pair: Pair) -> Iterator[str]:
    """Where it runs wild: here, elsewhere only, or not known."""
    lists, region = wild.lists_of(pair.climber.entry), pair.support.garden.region
    places = list(dict.fromkeys(place for one in lists for place in one.where))
    nearest: dict[str, str] = {}  # of each list the part that is closest to home
    for harm, part in wild.here(lists, region):
        nearest.setdefault(harm.what, part)
    near = list(dict.fromkeys(nearest.values()))
    barred = list(dict.fromkeys(part for one in lists if wild.bars(one) for part in one.where))
    if near:
        yield f"It runs wild in {listed(near)}, where you are: choose another plant."
    elif lists and (not region or not places):
        where = f"in {listed(places)}" if places else "in places"
        yield f"It runs wild {where}. Look it up for where you are."
    elif barred:
        yield f"It is not to be planted in {listed(barred)}. Look it up for where you are."


def _wall(pair: Pair) -> Iterator[str]:
    climber, support = pair.climber, pair.support
    if not support.at_wall:
        return
    if support.structure is not None and support.structure.planting.says:
        yield support.structure.planting.says
    worked = support.worked
    if worked is not None and worked.figure("gap") is not None:
        gaps = pair.shown.lengths(*CLAD_GAP_M)
        yield (
            f"Leave air behind it: {pair.shown.length(MASONRY_GAP_M)} on brick and stone, {gaps} "
            "on boards, shingles and render."
        )
    out = as_range(climber.entry.other.get("stands out"))
    if out is not None:
        yield (
            f"Its side branches stand out {pair.shown.length(out.high)} from the wall: not beside "
            "a narrow path."
        )
    if climber.holds_on == "clings" or climber.entry.strangles:
        yield "Keep it off gutters, downpipes, tiles and window frames, every year."
    if climber.holds_on == "clings":
        yield "Its roots or pads mark a wall for good: only where it is to stay."


def _rotation(pair: Pair, season: Season | None) -> Iterator[str]:
    """The same family in the bed within its years."""
    bed, climber = pair.support.bed, pair.climber
    if season is None or bed is None or climber.lasting:
        return
    rest = climber.entry.rotation
    if rest is None or rest.is_word:
        return
    year = season.plan.garden.year
    years = rest.usual
    for grown in reversed(season.history(bed.name)):
        families = {entry.family for name in grown.plants if (entry := entry_of(name))}
        since = year - grown.year
        if climber.entry.family in families and 0 < since < years:
            low, high = rest.low or years, rest.high or years
            ago = "last year" if since == 1 else f"{since} years ago"
            yield (
                f"{bed.name} had {grown.plant} in {grown.year}, {ago}: the same family, and "
                f"{two_figures(low)} to {two_figures(high)} years between are usual."
            )
            return


def _needs(pair: Pair) -> Iterator[str]:
    """What goes with it: a stem to a wire, slings, a mate, cool or confined roots."""
    climber, support = pair.climber, pair.support
    entry, shown = climber.entry, pair.shown
    wires = any(support.matter(held) == "wire" for held in support.holds)
    if wires and climber.holds_on == "twines" and climber.stiff:
        yield "One main stem to a wire, led beside it and never round it."
    metal = entry.other.get("on bare metal")
    if metal is not None and wires:
        yield f"Sources differ on bare metal: {metal.value}; others see no harm."
    if support.kind == "tub trellis":
        yield "Tie it to the wall behind at two points or more; a tub alone blows over."
    if support.kind == "stake" and climber.training == "leaders":
        yield "One stem to a stake, and a stout stake; practice differs on whether one will do."
    if "clematis" in entry.part_of:
        yield "Keep its roots cool: stones or low plants over its foot."
    if pair.suited is not None and pair.suited.with_:
        yield f"The trade gives it {pair.suited.with_} there."
    fruit = as_range(entry.fruit_weight)
    if fruit is not None and fruit.high > SLING_KG and climber.habit == "climber":
        yield (
            f"Fruit reaches {shown.weight(fruit.high)}: beyond {shown.weight(SLING_KG)} each wants "
            "a sling, tied to the frame and not to the vine."
        )
    male = entry.other.get("male plants")
    if male is not None:
        told = male.value if male.is_word else f"{two_figures(male.usual)}"
        yield f"Fruit and berries want male and female plants: {told}."
    said = entry.other.get("root run")
    run = as_range(said)
    if said is not None and run is not None:
        once = said.low is None  # how far it comes to in the end
        far = shown.length(run.high) if once else f"{shown.lengths(run.low, run.high)} a year"
        goes = "as far as " if once else ""
        yield f"Its roots run {goes}{far}: keep it that far from other beds."
