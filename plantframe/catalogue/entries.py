"""What the catalogue holds: a structure, a plant, a material, a source, and their parts."""

from __future__ import annotations

from types import MappingProxyType
from typing import TYPE_CHECKING

from plantframe.catalogue.sourced import Sourced
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Mapping

Slot = tuple[str | Sourced, ...]
"""What a slot of a fact is taken to be when the plan does not say: sums and values, in the
order in which they are tried."""


@frozen
class Fact:
    """A word a structure takes facts by, and what is assumed of it.

    word     the fact's word in the plan: posts, bar, net
    called   what this structure calls it: poles, legs
    shape    how a line of it is written, only where no other room declares the word
    help     one plain sentence, with the shape
    example  a line as it is typed, with the shape
    sides    the slots that a size such as 6 ft x 16 ft fills, in the order typed
    slots    name of a slot ("" for a fact that is one value) -> what is assumed
    """

    word: str
    called: str
    shape: str = ""
    help: str = ""
    example: str = ""
    sides: tuple[str, ...] = ()
    slots: Mapping[str, Slot] = MappingProxyType({})


@frozen
class Place:
    """Where the pieces of a part stand in a drawing, as sums of i, the piece's number from 0.

    view    front, side or top
    x, y    start and end along, and up (top view: across); equal where it does not run
    as_     line, area, or arc (half an ellipse from x[0] to x[1], y[1] its crown)
    """

    view: str
    x: tuple[str, str]
    y: tuple[str, str]
    as_: str = "line"


@frozen
class Part:
    """Pieces of one kind. Sums are in m.

    of         what it is made of, a word of MATTER
    count      how many
    section    the fact word whose width and depth it has
    length     of a stick, wire, twine; of a net or sheet, along the row
    width      of a net, board or sheet, the other way
    thickness  of a sheet
    size       of a nail, screw or fitting: the words to buy it by, or a fact's name in {}
    wood       sum that gives the wood's name
    cut        what is done to its ends: pointed, tapered ...
    places     where they stand
    """

    name: str
    of: str
    count: str
    section: str = ""
    length: str = ""
    width: str = ""
    thickness: str = ""
    size: str = ""
    wood: str = ""
    cut: str = ""
    places: tuple[Place, ...] = ()


@frozen
class Hold:
    """What a plant can hold on to.

    part       name of the part
    thickness  across what the plant must go round (a sum in m, or a value)
    runs       up, across, or both
    every      from one to the next, in m, or None where that says nothing
    when       a sum that must be true for it to be there, or ""
    """

    part: str
    thickness: str | Sourced
    runs: str
    every: str | Sourced | None = None
    when: str = ""


@frozen
class Carries:
    """How the weight travels.

    when       a sum that must be true for this way, or ""
    by         bar, wire, mesh (a face that is given its load below) or none (the support
               stands under each plant and takes its own)
    section    the fact word of the bar or wire
    span       from support to support, pin to pin
    wide, tall sideways and upright measure of the bar, m
    round      a sum, true where it is round
    count      how many such bars share a metre of row
    bears      what a metre of row bears, where experience gives it and not a sum
    strained, ends   sums, true where a wire is strained and where its ends hold
    """

    by: str
    when: str = ""
    section: str = ""
    span: str = ""
    wide: str = ""
    tall: str = ""
    round: str = ""
    count: str = "1"
    bears: Sourced | None = None
    strained: str = ""
    ends: str = ""


@frozen
class Stands:
    """How it stands against wind.

    by           the fact word of what stands in the ground
    held         alone, braces itself, elsewhere (hooked, roofed over, in pairs), wall, ground
    loads        light (put up each year, or light: the season's gust) or lasting
    leafy_from   height at which the leaves begin, m
    leafy_to     height of their top where the plant fills it, m
    metres       metres of row that one post answers for
    area         leafy area in m2, where it is not height times metres
    shares       how many share the push
    push         part of the wind's pressure the area takes, where it is not a leafy net
    down         how deep it stands, m
    least_down   the least depth the trade gives this kind, or None
    """

    by: str
    held: str
    loads: str
    leafy_from: str = "0"
    leafy_to: str = ""
    metres: str = ""
    area: str = ""
    shares: str = "1"
    push: Sourced | None = None
    down: str = ""
    least_down: Sourced | None = None


@frozen
class Wait:
    """What must pass after a step before the next: from low to high days, and for what."""

    days: Sourced
    for_: str


@frozen
class Step:
    """One step of building, planting's place among them, or taking down.

    at       bench, there, yard, wood
    minutes  for one person or the hands named, times what `per` counts
    per      a part's name, or a sum; "1" for the whole
    alone    how one person does it
    not_yet  what must not have been done before it
    stop     whether work may be left for a while after it
    when     a sum that must be true for it to be wanted, or ""
    season   the time of year it belongs to, in words, or ""
    """

    id: str
    do: str
    after: tuple[str, ...] = ()
    at: str = "there"
    minutes: Sourced | None = None
    per: str = "1"
    hands: int = 1
    tools: tuple[str, ...] = ()
    power: bool = False
    alone: str = ""
    not_yet: str = ""
    wait: Wait | None = None
    stop: bool = False
    when: str = ""
    season: str = ""
    dangers: tuple[str, ...] = ()


@frozen
class Care:
    """Work that comes round on what stands.

    every     how often (days or years), or None where an event calls for it
    season    the time of year, in words
    event     what calls for it: after a gale, when a fruit is fist-sized
    per       a part's name, or a sum
    needs     parts or goods it uses up
    when      a sum that must be true for it to be wanted, or ""
    """

    id: str
    do: str
    every: Sourced | None = None
    season: str = ""
    event: str = ""
    minutes: Sourced | None = None
    per: str = "1"
    hands: int = 1
    tools: tuple[str, ...] = ()
    needs: tuple[str, ...] = ()
    when: str = ""


@frozen
class Danger:
    """A caution that stands with its steps.

    kind   a key of DANGERS
    says   the caution
    at     ids of steps, or use, down, care
    """

    kind: str
    says: str
    at: tuple[str, ...]


@frozen
class Late:
    """The step that cannot be undone or done late, and why."""

    step: str
    because: str


@frozen
class Limit:
    """What a figure of the plan must keep to, or the thing cannot be built.

    fact     the figure, as sums know it: posts.count, circle
    what     what it is, in words: the circle, poles
    least, most   sums, "" where there is none
    even     whether it is a count of things that go in pairs
    when     a sum that must be true for the limit to be asked, or ""
    because  why, after the figures
    instead  another figure that may give way, and the sum it then comes to; or ""
    """

    fact: str
    what: str
    because: str
    least: str = ""
    most: str = ""
    even: bool = False
    when: str = ""
    instead: str = ""
    instead_to: str = ""


@frozen
class Planting:
    """Where planting stands in the order.

    own_order  whether the plant may be there before the frame
    after      steps that must be done first; empty with own_order false: all of them
    before     steps that come after planting
    says       one sentence about it
    """

    own_order: bool = False
    after: tuple[str, ...] = ()
    before: tuple[str, ...] = ()
    says: str = ""


@frozen
class Suited:
    """A plant the trade grows on it at ordinary size, with the limits that go with that.

    plant  name of a plant's entry
    bay    the longest bay for it, or None
    with_  what it wants besides, in words: stays, slings
    """

    plant: str
    bay: Sourced | None = None
    with_: str = ""


@frozen
class Structure:
    """A kind of structure: everything parts, drawings, jobs, sheets and advice need of it.

    part_of      looser words that may mean several kinds: trellis, wires
    fails        how it goes wrong, each in a few words
    limits       what its figures must keep to, or it cannot be built
    clear_front  free ground it needs in front, a sum in m, and why
    ground_along, ground_across   what it covers on the ground, sums in m
    """

    name: str
    also: tuple[str, ...]
    part_of: tuple[str, ...]
    blocks: tuple[str, ...]
    says: str
    suits: tuple[Suited, ...]
    stands_for: Sourced
    life: Sourced | None
    fails: tuple[str, ...]
    built_by: str
    questions: tuple[str, ...]
    facts: Mapping[str, Fact]
    sums: Mapping[str, str]
    parts: Mapping[str, Part]
    holds: tuple[Hold, ...]
    carries: tuple[Carries, ...]
    stands: Stands
    height: str
    lengthways: str
    ground_along: str
    ground_across: str
    clear_front: str
    clear_because: str
    steps: tuple[Step, ...]
    late: Late
    planting: Planting
    down: tuple[Step, ...]
    storage: str
    care: tuple[Care, ...]
    dangers: tuple[Danger, ...]
    limits: tuple[Limit, ...] = ()
    reviewed: str = ""

    @property
    def seasonal(self) -> bool:
        """Whether it is put up and taken down within the year."""
        return self.stands_for.value == "season"


@frozen
class Training:
    """How a plant is led: kind (none, leaders, pinch, weave, tie ...), one line of how."""

    kind: str
    how: str = ""
    leaders: int | None = None
    basis: str = "common practice"
    source: str | None = None
    doubt: str = ""


@frozen
class PlantCare:
    """Work a plant asks for again and again.

    from_   when it begins: words, or days from sowing, planting, a frost
    every   days between rounds, or None for once
    minutes_per_metre   of row
    """

    id: str
    do: str
    from_: Sourced | None = None
    until: Sourced | None = None
    every: Sourced | None = None
    minutes_per_metre: Sourced | None = None
    hands: int = 1
    tools: tuple[str, ...] = ()


@frozen
class Harm:
    """What a plant can do to people, animals, houses or the country round."""

    kind: str
    what: str
    who: tuple[str, ...] = ()
    where: tuple[str, ...] = ()
    year: int | None = None
    basis: str = "common practice"
    source: str | None = None
    doubt: str = ""


@frozen
class Emergence:
    """Days from sowing to the first leaves, by warmth of the soil.

    table   pairs of soil warmth in C and days, warmest last
    """

    table: tuple[tuple[float, float], ...]
    basis: str
    source: str | None = None
    doubt: str = ""


@frozen
class Plant:
    """A plant. Figures in m, kg, kg/m, C, days and so on; None where nothing is known.

    other   figures an entry gives beyond those named here, by their own words
    yours   the file and line where the gardener says something of it themselves
    """

    name: str
    also: tuple[str, ...]
    part_of: tuple[str, ...]
    latin: str
    family: str
    family_name: str
    like: str
    grown_for: str
    life: Sourced | None
    habit: Sourced | None
    holds_on: Sourced | None
    strangles: bool
    grip: Sourced | None
    height: Sourced | None
    wet_weight: Sourced | None
    weight_by_area: Sourced | None
    weight_by_leaders: Mapping[int, Sourced]
    sun: Sourced | None
    stem: Sourced | None
    stays: Sourced | None
    plants_per_metre: Sourced | None
    apart: Sourced | None
    rows_apart: Sourced | None
    tender: Sourced | None
    sow: Sourced | None
    sow_indoors: Sourced | None
    plant_out: Sourced | None
    soil: Sourced | None
    soil_best: Sourced | None
    emergence: Emergence | None
    harvest: Sourced | None
    frost_margin: Sourced | None
    picked: Sourced | None
    fruit_across: Sourced | None
    fruit_weight: Sourced | None
    mesh: Sourced | None
    training: Training | None
    flowers_on: Sourced | None
    cut_back: Sourced | None
    care: tuple[PlantCare, ...]
    rotation: Sourced | None
    harm: tuple[Harm, ...]
    says: str
    other: Mapping[str, Sourced]
    reviewed: str = ""
    yours: str = ""

    @property
    def known_as(self) -> str:
        """The name that other entries know it by: of a gardener's own, the plant it is like."""
        return self.like if self.yours and self.like else self.name


@frozen
class Material:
    """Timber, net, wire and the like: figures by their own words, and sizes as sold.

    kind      timber, net, wire, nail, sheet, twine ...
    figures   life in soil, density, ...
    sizes     name of a size as asked for ("2x4", "20d") -> figures by their own words
    """

    name: str
    also: tuple[str, ...]
    kind: str
    says: str
    figures: Mapping[str, Sourced]
    sizes: Mapping[str, Mapping[str, Sourced]]


@frozen
class Source:
    """A page that was read: standard, handbook, extension, society, government, paper, trade.

    general   it speaks of many crops together, so what it says counts once for all of them
    """

    key: str
    title: str
    publisher: str
    year: str
    kind: str
    note: str = ""
    general: bool = False
