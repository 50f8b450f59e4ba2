"""The things of a plan, frozen, each knowing the lines it was read from. Lengths in metres."""

from __future__ import annotations

from functools import cached_property
from types import MappingProxyType
from typing import TYPE_CHECKING

from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import date

    from plantframe.language.mistakes import Where
    from plantframe.language.reader import Block, Fact
    from plantframe.language.slots import Section
    from plantframe.language.values import Measure, Size
    from plantframe.plan.dates import Dated

    Typed = Measure | Size

# What stands in a bed; `west of Long Bed` and `2 m from Long Bed` do not.
INSIDE = frozenset({"", "in", "on", "at", "over", "along", "across"})

NONE: Mapping[str, tuple[Fact, ...]] = MappingProxyType({})


@frozen
class Person:
    """Somebody who works in the garden. None where the plan does not say."""

    name: str
    reach_m: float | None
    lifts_kg: float | None
    fact: Fact


@frozen
class Away:
    """Days when somebody, or everybody, is not there."""

    first: date
    last: date
    who: str


@frozen
class Garden:
    """What the garden says about itself; None (or empty) where it says nothing.

    latitude, longitude  degrees, south and west negative
    year                 the calendar year of the season's main part; `seasons` both of a
                         southern season
    frost_last, frost_first   average dates; `frost_none` where there is none
    wind                 "sheltered", "average", "windy" or ""
    free_h               weekday (monday …) -> hours
    timber               "nominal", "actual" or ""
    imperial             lengths in the plan are mostly in feet and inches
    """

    name: str = ""
    year: int = 0
    seasons: tuple[int, int] = (0, 0)
    latitude: float | None = None
    longitude: float | None = None
    frost_last: Dated | None = None
    frost_first: Dated | None = None
    frost_late: Dated | None = None
    frost_none: bool = False
    wind: str = ""
    wind_from: str = ""
    soil: str = ""
    people: tuple[Person, ...] = ()
    free_h: Mapping[str, float] = MappingProxyType({})
    away: tuple[Away, ...] = ()
    tools: tuple[str, ...] = ()
    power: str = ""
    household: int | None = None
    children: tuple[float, ...] | None = None
    dog: bool = False
    region: str = ""
    frost_depth_m: float | None = None
    lines_marked: Dated | None = None
    overhead: tuple[Fact, ...] = ()
    timber: str = ""
    kerf_m: float | None = None
    imperial: bool = False
    facts: Mapping[str, tuple[Fact, ...]] = NONE
    set_asides: tuple[SetAside, ...] = ()
    where: Where | None = None
    marks: tuple[Mark, ...] = ()

    @property
    def southern(self) -> bool:
        """South of the equator."""
        return self.latitude is not None and self.latitude < 0

    def person(self, name: str) -> Person | None:
        """The person of that name, whatever the capitals."""
        return next((one for one in self.people if one.name.lower() == name.lower()), None)


@frozen
class Spot:
    """Where a thing is, its name resolved.

    relation    in, on, north, south …, from, over, at …
    thing       the thing's own name in the plan, "" where it names none the plan knows
    said        the place in the gardener's words
    distance_m  edge to edge
    part        north end, middle …
    along_m     from and to
    """

    relation: str = ""
    thing: str = ""
    said: str = ""
    distance_m: float | None = None
    part: str = ""
    along_m: tuple[float, float] | None = None


@frozen
class Grown:
    """What grew in a bed in a year. `plants` are the catalogue entries the name can mean."""

    plant: str
    year: int
    plants: tuple[str, ...]
    fact: Fact | None = None


@frozen
class Stood:
    """A bed that a frame stood in before: from one year to another, 0 and 9999 where not said."""

    bed: str
    first: int
    last: int
    moved: bool


@frozen
class SetAside:
    """A warning the gardener has set aside, in the block it concerns."""

    rule: str
    because: str
    who: str
    when: Dated | None
    until: Dated | None
    times: float | None
    level: str
    fact: Fact


@frozen
class Mark:
    """A job that is done, moved or skipped, in the words of its step."""

    kind: str  # done, move, skip
    job: str
    day: Dated | None
    who: str
    because: str
    fact: Fact


@frozen
class Own:
    """One figure or word of the gardener's.

    word    the catalogue's word for it: height, wet weight, sow, tender, train
    low     in SI; days from the last frost for sowing and planting out
    says    the words, where it is no figure; `sowing` or `planting` of a harvest
    """

    word: str
    low: float = 0.0
    high: float = 0.0
    says: str = ""


@frozen
class Variety:
    """A plant as the gardener knows it.

    like      the catalogue's plant that the rest is taken from: itself where its own are changed
    figures   what is said of it, in the order of the lines
    """

    name: str
    like: str
    also: tuple[str, ...]
    figures: tuple[Own, ...]
    where: Where


class VarietyName(str):
    """A plant's name that knows the gardener's own entry, wherever the name is handed on."""

    __slots__ = ("variety",)
    variety: Variety

    @classmethod
    def of(cls, variety: Variety) -> VarietyName:
        """The name of a variety."""
        made = cls(variety.name)
        made.variety = variety
        return made


@frozen
class Planting:
    """What grows on a frame, in a bed or along a border.

    said     the plant as typed; `plants` the catalogue entries it can mean: one where it is
             clear, several where it must be asked about, none where nothing is known
    order    0 for the first `grow` of its block, 1 for the second …
    male, female   how many of each, where the plan says
    weighs_kg_per_m   what the gardener has weighed: it outranks the catalogue's figure
    """

    said: str
    plants: tuple[str, ...]
    cultivar: str
    count: int | None
    apart_m: float | None
    sow: Dated | None
    out: Dated | None
    raised: str
    leaders: int | None
    pinched: str
    trained: str
    cut: bool
    until: Dated | None
    spot: Spot | None
    block: str
    order: int
    fact: Fact
    facts: tuple[Fact, ...] = ()
    male: int | None = None
    female: int | None = None
    weighs_kg_per_m: float | None = None

    @property
    def plant(self) -> str | None:
        """The catalogue entry, where there is just one it can be."""
        return self.plants[0] if len(self.plants) == 1 else None

    @property
    def named(self) -> str:
        """The plant with its cultivar, as a gardener writes it."""
        return f"{self.said} '{self.cultivar}'" if self.cultivar else self.said


@frozen
class Bed:
    """A bed or a border. `sun_h` is the range of hours of direct sun, None where unsaid."""

    word: str
    name: str
    length_m: float | None
    width_m: float | None
    runs: str
    sun: str
    sun_h: tuple[float, float] | None
    soil: str
    wind: str
    raised_m: float | None
    had: tuple[Grown, ...]
    plantings: tuple[Planting, ...]
    spots: tuple[Spot, ...]
    set_asides: tuple[SetAside, ...]
    block: Block
    marks: tuple[Mark, ...] = ()


@frozen
class Thing:
    """A wall, hedge, tree, path or the house.

    faces   compass point a wall faces, "" where unsaid
    sun_h   hours of direct sun on a wall, where the plan gives them
    """

    word: str
    name: str
    high_m: float | None
    wide_m: float | None
    long_m: float | None
    faces: str
    surface: str
    eaves_m: float | None
    overhang_m: float | None
    painted: int | None
    sun: str
    sun_h: tuple[float, float] | None
    plantings: tuple[Planting, ...]
    spots: tuple[Spot, ...]
    set_asides: tuple[SetAside, ...]
    block: Block
    marks: tuple[Mark, ...] = ()


@frozen
class Frame:
    """A frame, line, cover or fence.

    kind       the catalogue entry it is, "" where unknown or of the gardener's own design
    facts      fact word -> the facts of that word, as read
    built      it stands already, since that year
    had        what it bore itself, in whichever bed it stood
    stood      the beds it stood in before
    """

    word: str
    name: str
    kind: str
    own_design: bool
    spots: tuple[Spot, ...]
    facts: Mapping[str, tuple[Fact, ...]]
    plantings: tuple[Planting, ...]
    built: int | None
    ready_by: Dated | None
    take_down: Dated | None
    on: Dated | None
    stays_years: float | None
    wind: str
    soil: str
    sun: str
    sun_h: tuple[float, float] | None
    lines_marked: Dated | None
    set_asides: tuple[SetAside, ...]
    marks: tuple[Mark, ...]
    had: tuple[Grown, ...]
    block: Block
    stood: tuple[Stood, ...] = ()

    def bed_in(self, year: int) -> str:
        """The bed it stood in in a year before, "" where the plan does not tell.

        A frame is moved before it is sown at, so the crop of the year of a move is the new bed's.
        """
        for one in self.stood:
            if one.first <= year <= one.last:
                return one.bed
        since = max((one.last for one in self.stood if one.moved), default=None)
        if since is None or year <= since:
            return ""
        return next((one.thing for one in self.spots if one.relation in INSIDE), "")

    def fact(self, word: str) -> Fact | None:
        """The first fact of that word."""
        found = self.facts.get(word, ())
        return found[0] if found else None

    def spot(self, *relations: str) -> Spot | None:
        """The first place with one of these relations that names a thing of the plan."""
        return next((one for one in self.spots if one.relation in relations and one.thing), None)


@frozen
class Want:
    """A plant that has no frame yet."""

    said: str
    plants: tuple[str, ...]
    cultivar: str
    count: int | None
    row_m: float | None
    spot: Spot | None
    block: Block


@frozen
class Task:
    """A job of the gardener's own."""

    what: str
    by: Dated | None
    on: Dated | None
    done: Dated | None
    moved: Dated | None
    after: str
    when: str
    hours: float | None
    hands: int
    who: tuple[str, ...]
    spot: Spot | None
    block: Block


@frozen
class LogEntry:
    """What happened on a day: the words kept, known measures picked out."""

    day: Dated | None
    about: str
    words: str
    measures: tuple[Measure, ...]
    block: Block


@frozen
class Note:
    """A remark, on the whole garden or on one thing."""

    about: str
    words: str
    block: Block


@frozen
class Item:
    """A line of the shed or the yard."""

    what: str
    count: float | None
    section: Section | None
    size: Size | None
    lengths_m: tuple[float, ...]
    mesh_m: float | None
    nail: int | None
    price: float | None
    fact: Fact


@frozen
class Plan:
    """A season's plan.

    history   what grew where in plans brought in with `as last year`
    own       the gardener's own plants, by their names in small letters
    """

    name: str
    garden: Garden
    beds: Mapping[str, Bed]
    things: Mapping[str, Thing]
    frames: Mapping[str, Frame]
    wants: tuple[Want, ...]
    tasks: tuple[Task, ...]
    log: tuple[LogEntry, ...]
    notes: tuple[Note, ...]
    shed: tuple[Item, ...]
    yard: tuple[Item, ...]
    history: Mapping[str, tuple[Grown, ...]]
    places: frozenset[str] = frozenset()
    own: Mapping[str, VarietyName] = MappingProxyType({})

    @property
    def plantings(self) -> tuple[Planting, ...]:
        """Every planting of the plan."""
        holders: tuple[Frame | Bed | Thing, ...] = (
            *self.frames.values(),
            *self.beds.values(),
            *self.things.values(),
        )
        return tuple(planting for holder in holders for planting in holder.plantings)

    def named(self, name: str) -> Bed | Thing | Frame | None:
        """The bed, frame, wall … of that name."""
        return self.frames.get(name) or self.beds.get(name) or self.things.get(name)

    @cached_property
    def placed_by(self) -> Mapping[str, tuple[tuple[Bed | Thing | Frame, Spot], ...]]:
        """What is placed by a thing of some name, and how: west of Long Bed, on Barn Wall."""
        found: dict[str, list[tuple[Bed | Thing | Frame, Spot]]] = {}
        everything: tuple[Bed | Thing | Frame, ...] = (
            *self.beds.values(),
            *self.things.values(),
            *self.frames.values(),
        )
        for one in everything:
            for spot in one.spots:
                found.setdefault(spot.thing, []).append((one, spot))
        return MappingProxyType({name: tuple(some) for name, some in found.items()})

    def bed_of(self, frame: Frame) -> Bed | None:
        """The bed a frame stands in."""
        spot = next(
            (one for one in frame.spots if one.thing in self.beds and one.relation in INSIDE), None
        )
        return self.beds[spot.thing] if spot else None

    def wall_of(self, frame: Frame) -> Thing | None:
        """The wall a frame stands at."""
        for spot in frame.spots:
            thing = self.things.get(spot.thing)
            if thing is not None and thing.word in {"wall", "house"}:
                return thing
        return None
