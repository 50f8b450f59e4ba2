"""The pairing adviser: for a plant, a want, a frame, a kind of frame, a bed or a wall."""

from __future__ import annotations

from functools import lru_cache
from itertools import islice
from typing import TYPE_CHECKING

from plantframe.catalogue import reading as catalogue
from plantframe.catalogue.names import all_names
from plantframe.frozen import replace
from plantframe.pairing import judging, supports, turns
from plantframe.pairing.amounts import amounts
from plantframe.pairing.border import for_border
from plantframe.pairing.climber import Climber
from plantframe.pairing.matches import RULED_OUT_BY, Matches, Pairing, Reject, Turn
from plantframe.pairing.pair import Pair
from plantframe.pairing.trials import Judged, judge
from plantframe.pairing.tying import meant_for
from plantframe.season import wild
from plantframe.season.entries import entry_of
from plantframe.season.own_plants import names_in
from plantframe.season.told import sentence, told
from plantframe.season.units import listed

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from plantframe.catalogue.entries import Plant
    from plantframe.pairing.supports import Support
    from plantframe.plan.things import Bed, Planting, Thing, Want
    from plantframe.season.season import Season


# -- the askings ------------------------------------------------------------------------------


def for_plant(season: Season | None, plant: str, *, count: int | None = None) -> Matches:
    """Every support for a plant: those of the plan, and every kind nobody has built yet.

    season   None asks without a plan: every kind in an average place
    plant    as a gardener says it; where it can mean several all are ranked, and a remark asks
    """
    names = names_in(season.plan if season else None, plant)
    if not names:
        return Matches(plant, remarks=(_unknown(plant, "plant"),))
    return _for_names(season, plant, names, count=count)


def for_want(season: Season, want: Want) -> Matches:
    """Every support for what a plan wants, at the place where it is wanted."""
    if not want.plants:
        return Matches(want.said, remarks=(_unknown(want.said, "plant"),))
    spot = want.spot
    bed = season.beds.get(spot.thing) if spot else None
    thing = season.plan.things.get(spot.thing) if spot else None
    wall = thing if thing is not None and thing.word == "wall" else None
    return _for_names(season, want.said, want.plants, bed=bed, wall=wall, count=want.count)


def for_frame(season: Season, name: str) -> Matches:
    """Every plant of the catalogue on a frame of the plan."""
    support = supports.of_frame(season, name)
    if support is None:
        return Matches(name, remarks=(_no_support(season, name),))
    judged = _all_on(support, season)
    remarks = []
    if support.worked is not None and support.worked.plantings:
        growing = listed([one.name for one in support.worked.plantings])
        remarks.append(f"This season {name} has {growing}.")
    found = _matches(name, judged, (*remarks, *_left_out()))
    return replace(found, turns=tuple(_turns(support, judged)))


def for_structure(kind: str) -> Matches:
    """Every plant of the catalogue on a kind of frame, of ordinary size in an average place."""
    names = catalogue.structures_named(kind)
    if not names:
        return Matches(kind, remarks=(_unknown(kind, "structure"),))
    support = supports.of_kind(names[0])
    if support is None:
        return Matches(
            kind, remarks=(f"A {names[0]} gives climbing plants nothing to hold on to.",)
        )
    judged = _all_on(support, None)
    remarks = [f"Taken at its ordinary sizes: {_sizes(support)}."]
    if len(names) > 1:
        remarks.append(f"“{kind}” may also mean {listed(names[1:], 'or')}.")
    return _matches(names[0], judged, (*remarks, *_left_out()))


def for_place(season: Season, name: str) -> Matches:
    """What may grow in a bed or on a wall: each plant once, on what suits it best there."""
    plan = season.plan
    bed, wall = season.beds.get(name), plan.things.get(name)
    if bed is None and (wall is None or wall.word != "wall"):
        return Matches(name, remarks=(f"There is no bed or wall called {name} in the plan.",))
    if bed is not None and bed.word == "border":
        return for_border(season, bed)
    here = _at(season, bed, wall)
    best: list[Judged] = []
    for climber in _climbers(season):
        pairs = [Pair(climber, support) for support in here]
        judged = [judge(pair, season, tried=False) for pair in pairs if _belongs(pair)]
        ranked = [one for one in judged if one.place is not None]
        if judged:
            first = (
                min(ranked, key=lambda one: one.place or ())
                if ranked
                else max(judged, key=_how_far)
            )
            best.append(judge(first.pair, season))
    return _matches(name, best, _left_out())


def is_back_in(season: Season, plant: str, frame: str) -> bool:
    """Whether a plant is no longer ruled out on a frame: asked of the season after an edit."""
    names = names_in(season.plan, plant)
    support, entry = supports.of_frame(season, frame), entry_of(names[0] if names else None)
    if support is None or entry is None:
        return False
    if wild.barred(entry, season.plan.garden.region):
        return False
    pair = Pair(_climber(entry, support), support)
    return judging.ruled_out(judging.reasons(pair)) is None


def _turns(support: Support, judged: list[Judged]) -> Iterator[Turn]:
    """What shares the frame with each crop on it, and what has it before and after."""
    plantings = support.worked.plantings if support.worked else ()
    fit = sorted((one for one in judged if one.place is not None), key=lambda one: one.place or ())
    fitting = [one.pair for one in fit]
    climbing = [pair.climber.entry for pair in fitting]
    alone = [entry for entry in _plants() if Climber(entry, entry.name).unsupported]
    eaten = [entry for entry in alone if entry.grown_for == "food"]
    for crop in plantings[:1]:
        yield from islice(turns.sharing(crop, fitting), turns.MOST_TOLD)
    for crop in plantings[-1:]:
        yield from islice(turns.following(crop, climbing), turns.MOST_TOLD)
        yield from islice(turns.following(crop, eaten), turns.MOST_TOLD)
    for crop in plantings[:1]:
        yield from islice(turns.preceding(crop, [*climbing, *eaten]), turns.MOST_TOLD)


# -- many pairs -------------------------------------------------------------------------------


def _for_names(
    season: Season | None,
    asked: str,
    names: tuple[str, ...],
    *,
    bed: Bed | None = None,
    wall: Thing | None = None,
    count: int | None = None,
) -> Matches:
    """Every support for a plant, or for each plant that a loose name can mean."""
    entries = [entry for name in names if (entry := entry_of(name)) is not None]
    if entries and all(Climber(entry, entry.name).unsupported for entry in entries):
        return Matches(
            asked, remarks=(f"{asked.capitalize()} stands on its own and wants no frame.",)
        )
    here = _everything(season, bed, wall)
    pairs = [
        Pair(_climber(entry, support, count), support) for entry in entries for support in here
    ]
    judged = [judge(pair, season) for pair in pairs if _belongs(pair)]
    remarks = []
    if len(entries) == 1 and entries[0].says:
        imperial = season is not None and season.plan.garden.imperial
        remarks.append(sentence(entries[0].says, imperial=imperial))
        many = amounts(entries[0], season.plan.garden if season else None, count)
        remarks += [many] if many else []
    if len(entries) > 1:
        kinds = listed([entry.name for entry in entries], "or")
        remarks.append(f"“{asked}” may be {kinds}: each is ranked here; say which it is.")
    if season is None:
        remarks.append("Without a plan: every kind at its ordinary sizes, in an average place.")
    return _matches(asked, judged, tuple(remarks))


def _everything(season: Season | None, bed: Bed | None, wall: Thing | None) -> list[Support]:
    """The supports of the plan, and every kind that it does not have."""
    if season is None:
        return [*supports.at_place(None), supports.of_wall(None)]
    own = list(supports.in_plan(season))
    built = {support.kind for support in own}
    return [*own, *(one for one in _new(season, bed, wall) if one.kind not in built)]


def _new(season: Season, bed: Bed | None, wall: Thing | None) -> list[Support]:
    """Every kind nobody has built that could stand at a place: on a wall what hangs on walls."""
    new = supports.at_place(season.plan.garden, bed, wall)
    if bed is None and wall is None:
        return new
    return [one for one in new if supports.hangs_on_a_wall(one) == (wall is not None)]


def _at(season: Season, bed: Bed | None, wall: Thing | None) -> list[Support]:
    """What stands in a bed or at a wall, the wall itself, and every kind that could."""
    place = bed or wall
    own = [
        support
        for support in supports.in_plan(season)
        if place is not None and place in (support.bed, support.wall)
    ]
    return [*own, *_new(season, bed, wall)]


def _all_on(support: Support, season: Season | None) -> list[Judged]:
    pairs = [Pair(climber, support) for climber in _climbers(season, support)]
    return [judge(pair, season) for pair in pairs if _belongs(pair)]


def _belongs(pair: Pair) -> bool:
    """Whether the pair is worth a word: nobody asks of a rose on a ring, or of a peony on wires."""
    if pair.support.in_plan:
        return True
    if pair.climber.propped:
        return meant_for(pair)
    return not supports.only_props(pair.support.kind)


def _climbers(season: Season | None = None, support: Support | None = None) -> list[Climber]:
    """Every plant that wants holding up, the gardener's own with them, as it grows here."""
    found = (entry_of(name) for name in (season.plan.own.values() if season else ()))
    own = {entry.name: entry for entry in found if entry is not None}
    every = {**{entry.name: entry for entry in _plants()}, **own}
    return [
        _climber(entry, support)
        for entry in every.values()
        if not Climber(entry, entry.name).unsupported
    ]


@lru_cache(maxsize=1)
def _plants() -> tuple[Plant, ...]:
    found = (entry_of(name) for name in catalogue.entry_names("plant"))
    return tuple(entry for entry in found if entry is not None)


def _climber(entry: Plant, support: Support | None, count: int | None = None) -> Climber:
    """A plant as it is grown: as the plan says where it grows there already, else as usual."""
    if support is not None:
        entry = told(entry, imperial=support.garden.imperial)
    planting = _planting(entry, support)
    if planting is None:
        return Climber(entry, entry.name, count=count)
    stopped = bool(planting.pinched or planting.cut)
    tie = support.worked.frame.fact("tie") if support and support.worked else None
    # `tie at 1.9 m` is where poles meet; `tie with soft twine` is for plants
    tied = bool(planting.trained) or (tie is not None and tie.get("height") is None)
    wanted = count or planting.count
    return Climber(entry, entry.name, planting.leaders, stopped, wanted, tied)


def _planting(entry: Plant, support: Support | None) -> Planting | None:
    worked = support.worked if support else None
    plantings = worked.frame.plantings if worked else ()
    return next((one for one in plantings if one.plant == entry.name), None)


def _matches(asked: str, judged: Iterable[Judged], remarks: tuple[str, ...]) -> Matches:
    """Ranked best first; rejects in the order of the questions, then by name."""
    everything = list(judged)
    ranked = sorted(
        (one for one in everything if one.place is not None), key=lambda one: one.place or ()
    )
    rejected = sorted(
        (one.came_to for one in everything if isinstance(one.came_to, Reject)),
        key=lambda one: (
            not one.frame,
            RULED_OUT_BY.index(one.because),
            one.frame,
            one.kind,
            one.plant,
        ),
    )
    return Matches(
        asked,
        tuple(one.came_to for one in ranked if isinstance(one.came_to, Pairing)),
        tuple(rejected),
        remarks,
    )


def _how_far(judged: Judged) -> int:
    """How many questions a reject passed before one ruled it out."""
    came_to = judged.came_to
    index = RULED_OUT_BY.index
    return index(came_to.because) if isinstance(came_to, Reject) else len(RULED_OUT_BY)


# -- remarks ----------------------------------------------------------------------------------


def _left_out() -> tuple[str, ...]:
    alone = [entry for entry in _plants() if Climber(entry, entry.name).unsupported]
    return (f"{len(alone)} plants that stand on their own are left out.",) if alone else ()


def _unknown(said: str, kind: str) -> str:
    near = catalogue.near(said, all_names(kind))
    nearest = f" Nearest: {listed(near, 'or')}." if near else ""
    return f"Nothing is known of “{said}”.{nearest}"


def _no_support(season: Season, name: str) -> str:
    frame = season.frames.get(name)
    if frame is None:
        near = catalogue.near(name, season.frames)
        nearest = f" Nearest: {listed(near, 'or')}." if near else ""
        return f"There is no frame called {name} in the plan.{nearest}"
    if frame.structure is None:
        return f"{name} is of a kind that is not known, so nothing can be said of what it holds."
    if frame.worked is None:
        return f"{name} cannot be worked out: {frame.problem}."
    return f"{name} gives climbing plants nothing to hold on to."


def _sizes(support: Support) -> str:
    """Height and length of a kind as the trade builds it."""
    shown = Pair(_climbers()[0], support).shown
    parts = []
    if support.height_m:
        parts.append(f"{shown.length(support.height_m)} high")
    if support.row_m:
        parts.append(f"{shown.length(support.row_m)} of row")
    return listed(parts) or "as the trade builds it"
