"""A frame worked out: parts, loads, hold, height and steps, each computed when asked for."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from plantframe.catalogue.mistakes import ExpressionError
from plantframe.catalogue.tape import FEET, METRES
from plantframe.catalogue.workings import work
from plantframe.frozen import frozen
from plantframe.season import loads
from plantframe.season.hung import hung_on
from plantframe.season.plantings import WorkedPlanting, as_range
from plantframe.season.said import said_of
from plantframe.season.sunlight import wall_sun_h

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import date

    from plantframe.catalogue.entries import Structure
    from plantframe.catalogue.sourced import Sourced
    from plantframe.catalogue.workings import Held, Worked, Working
    from plantframe.mechanics.ranges import Range
    from plantframe.plan.things import Bed, Frame, Garden, Thing

ORDINARY_SOIL = "firm loam"
ORDINARY_WIND = "average"
LASTING_YEARS = 2.0


@frozen
class WorkedFrame:
    """A frame of the plan with its kind's entry worked out on its own figures.

    structure   the kind's entry, None where the kind is unknown or the gardener's own
    problem     why its figures could not be worked out, in plain words; "" where they could
    """

    frame: Frame
    garden: Garden
    bed: Bed | None
    wall: Thing | None
    structure: Structure | None

    @cached_property
    def kept(self) -> dict[str, object]:
        """What others worked out from it alone, by their names, so that they do it once."""
        return {}

    # -- the entry worked out -----------------------------------------------------------
    @cached_property
    def said(self) -> Mapping[str, object]:
        """What the plan says, by `word.slot`, SI."""
        found = said_of(self.frame, self.garden)
        settles = self.structure.height if self.structure else ""
        if "high" in found and settles != "high" and self._is_a_fact(settles):
            # `high 2 m` of a frame whose posts make its height: they stand 2 m up
            by_length = {"posts.length", "posts.down"} <= found.keys()
            if not (by_length and settles == "posts.up"):
                found.setdefault(settles, found["high"])
        return found

    def _is_a_fact(self, name: str) -> bool:
        """Whether a name is that of a figure which a plan may give of this kind."""
        word, _, slot = name.partition(".")
        fact = self.structure.facts.get(word) if self.structure else None
        return fact is not None and (not slot or slot in fact.slots)

    @property
    def measure(self) -> str:
        """What the gardener measures in: feet or metres."""
        return FEET if self.garden.imperial else METRES

    @cached_property
    def _worked(self) -> tuple[Worked | None, str]:
        if self.structure is None:
            return None, ""
        try:
            return work(self.structure, self.said, self.measure), ""
        except (ExpressionError, ZeroDivisionError, ValueError, OverflowError) as error:
            return None, str(error)

    @property
    def worked(self) -> Worked | None:
        """Parts, sums, holds and steps, or None."""
        return self._worked[0]

    @property
    def problem(self) -> str:
        """Why it could not be worked out."""
        return self._worked[1]

    def figure(self, name: str) -> float | None:
        """A settled fact (`posts.down`) or a named sum (`row`) as a figure, or None."""
        if self.worked is None:
            return None
        value = self.worked.facts.values.get(name, self.worked.sums.get(name))
        return (
            float(value) if isinstance(value, int | float) and not isinstance(value, bool) else None
        )

    def word(self, name: str) -> str:
        """A settled fact that is a word, or ""."""
        if self.worked is None:
            return ""
        value = self.worked.facts.values.get(name, self.worked.sums.get(name))
        return value if isinstance(value, str) else ""

    def is_said(self, name: str) -> bool:
        """Whether the plan itself says this, and it is not assumed."""
        return self.worked is not None and self.worked.facts.origins.get(name) == "said"

    @property
    def assumed(self) -> Mapping[str, Sourced]:
        """What the plan does not say and the kind's entry takes it to be."""
        return self.worked.facts.assumed() if self.worked else {}

    # -- where it stands ----------------------------------------------------------------
    @cached_property
    def place(self) -> str:
        """sheltered, average or windy: its own, its bed's, the garden's, else average."""
        bed = self.bed.wind if self.bed else ""
        return self.frame.wind or bed or self.garden.wind or ORDINARY_WIND

    @cached_property
    def soil(self) -> str:
        """A soil class of mechanics: its own, its bed's, the garden's, else firm loam."""
        bed = self.bed.soil if self.bed else ""
        return self.frame.soil or bed or self.garden.soil or ORDINARY_SOIL

    @cached_property
    def sun_h(self) -> tuple[float, float] | None:
        """Hours of direct sun: its own, its wall's, its bed's; None where nobody can tell."""
        bed = self.bed.sun_h if self.bed else None
        return self.frame.sun_h or wall_sun_h(self.wall, self.garden) or bed

    @cached_property
    def lasting(self) -> bool:
        """It stays for more than two years."""
        if self.frame.stays_years is not None:
            return self.frame.stays_years > LASTING_YEARS
        if self.frame.take_down is not None:
            return False
        return self.structure is not None and not self.structure.seasonal

    @cached_property
    def reckoned_lasting(self) -> bool:
        """The wind sum takes it as staying for years: no light thing, or said to stay."""
        if self.frame.stays_years is not None or self.structure is None:
            return self.lasting
        return self.lasting and self.structure.stands.loads == "lasting"

    @property
    def builders_work(self) -> bool:
        """Left to a builder or an engineer."""
        return self.structure is not None and self.structure.built_by == "builder"

    # -- what grows on it ---------------------------------------------------------------
    @cached_property
    def plantings(self) -> tuple[WorkedPlanting, ...]:
        """Its plantings, worked out."""
        from plantframe.season.entries import entry_of

        row = self.worked.row_m if self.worked else None
        return tuple(
            WorkedPlanting(
                planting,
                entry_of(planting.plant, self.garden),
                row,
                self.garden,
                self.frame.name,
            )
            for planting in self.frame.plantings
        )

    @cached_property
    def heaviest(self) -> WorkedPlanting | None:
        """The planting that weighs most: two crops of one frame stand in different weeks."""
        weighed = [one for one in self.plantings if one.weight_kg_per_m is not None]
        return max(weighed, key=lambda one: one.weight_kg_per_m.middle, default=None)  # type: ignore[union-attr]

    # -- loads ----------------------------------------------------------------------------
    @cached_property
    def load(self) -> loads.Load | None:
        """What hangs on its bar or face and what that carries; None where neither is asked."""
        if self.heaviest is None:
            return None
        asked = self.heaviest.weight_kg_per_m
        return self.load_of(asked) if asked is not None else None

    def load_of(self, asked: Range) -> loads.Load | None:
        """The same for any weight, kg per metre of row."""
        worked = self.worked
        if worked is None or worked.carries is None or self.builders_work:
            return None
        carries = worked.carries
        if carries.by == "bar" and worked.span_m:
            count = worked.figure(carries.count) if carries.count else 1.0
            stick = loads.Stick(
                worked.figure(carries.wide),
                worked.figure(carries.tall),
                bool(worked.figure(carries.round)) if carries.round else False,
            )
            if stick.modulus_m3 <= 0 or worked.span_m < 0:
                return None
            shared = asked.times(1 / count) if count > 1 else asked
            return loads.bar_load(carries.section or "bar", shared, worked.span_m, stick)
        bears = as_range(carries.bears)
        if bears is not None:
            return loads.Load(carries.section or carries.by, asked, bears, worked.span_m or 0.0)
        return None

    @cached_property
    def droop(self) -> loads.Droop | None:
        """The sag of a wire under the heaviest planting, where a wire carries it."""
        if self.heaviest is None:
            return None
        asked = self.heaviest.weight_kg_per_m
        return self.droop_of(asked) if asked is not None else None

    def droop_of(self, asked: Range) -> loads.Droop | None:
        """The same for any weight, kg per metre of row."""
        worked = self.worked
        if worked is None or worked.carries is None or worked.carries.by != "wire":
            return None
        if not worked.span_m:
            return None
        carries = worked.carries
        strained = bool(worked.figure(carries.strained)) if carries.strained else False
        held = bool(worked.figure(carries.ends)) if carries.ends else False
        return loads.wire_droop(
            asked, worked.span_m, strained=strained, held=held, gauge=self.figure("wires.gauge")
        )

    @cached_property
    def push(self) -> loads.Push | None:
        """The wind on it against its posts; None where nothing grows and no net hangs in the wind.

        A net that is a sail of its own is one with nothing growing on it.
        """
        sail = self.structure is not None and self.structure.stands.push is not None
        return self.push_in(self.place) if self.plantings or sail else None

    def push_in(self, place: str) -> loads.Push | None:
        """The same in any place: sheltered, average or windy."""
        worked, structure = self.worked, self.structure
        if worked is None or structure is None or self.builders_work:
            return None
        stands = structure.stands
        if stands.held in {"wall", "ground"} or not stands.by:
            return None
        standing = worked.standing
        width, depth = self.figure(f"{stands.by}.width"), self.figure(f"{stands.by}.depth")
        if not width or not depth or standing.area_m2 <= 0 or standing.shares <= 0:
            return None  # a post of no thickness is a slip in its line, and holds nothing
        upright = loads.Upright(
            width,
            depth,
            bool(worked.facts.values.get(f"{stands.by}.round", False)),
            standing.down_m,
            standing.shares,
        )
        return loads.wind_push(
            upright,
            area_m2=standing.area_m2,
            leafy_from_m=standing.leafy_from_m,
            leafy_to_m=standing.leafy_to_m,
            place=place,
            soil=self.soil,
            lasting=self.reckoned_lasting,
            stayed=self.stayed_square,
            push=as_range(stands.push),
        )

    @cached_property
    def stayed_square(self) -> bool:
        """It has stays square to the row."""
        which = self.word("stays.which") if self.is_said("stays.which") else ""
        count = self.figure("stays.count") or 0.0
        return count > 0 and ("square" in which or "both ways" in which)

    # -- hold and height ------------------------------------------------------------------
    @property
    def holds(self) -> tuple[Held, ...]:
        """What a plant can hold on to, thinnest first: its kind's parts, and what is hung on it."""
        found = (*self.worked.holds, *hung_on(self.worked, self.said)) if self.worked else ()
        return tuple(sorted(found, key=lambda held: held.thickness_m))

    @property
    def height_m(self) -> float | None:
        """How high a plant can climb."""
        return self.worked.height_m if self.worked else None

    @property
    def row_m(self) -> float | None:
        """Metres of row it gives."""
        return self.worked.row_m if self.worked else None

    @property
    def down_m(self) -> float | None:
        """How deep its posts stand."""
        return self.worked.standing.down_m if self.worked else None

    # -- in words and days ------------------------------------------------------------------
    @property
    def uprights(self) -> str:
        """What this kind calls what stands in the ground: posts, poles, legs."""
        fact = self.structure.facts.get("posts") if self.structure else None
        return fact.called if fact else "posts"

    @cached_property
    def wanted_by(self) -> date | None:
        """The day it must stand: its own, else the first day something goes into its soil."""
        if self.frame.ready_by is not None:
            return self.frame.ready_by.day
        days = [one.in_ground.day for one in self.plantings if one.in_ground]
        return min(days, default=None)

    # -- work -------------------------------------------------------------------------------
    @property
    def steps(self) -> tuple[Working, ...]:
        """Its building steps that apply."""
        return self.worked.steps if self.worked else ()

    @property
    def stands(self) -> bool:
        """It stands already."""
        return self.frame.built is not None
