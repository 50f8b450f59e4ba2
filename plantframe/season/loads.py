"""Loads on a frame against what it carries: ranges compared, never judged fit.

The way the weight travels and how the frame stands come from its entry in the catalogue; the
formulas and the constants of practice from mechanics.
"""

from __future__ import annotations

from plantframe.frozen import frozen
from plantframe.mechanics import practice
from plantframe.mechanics.bar import bar_bow_m, bar_capacity_kg_per_m
from plantframe.mechanics.ground import SOILS, ground_moment_nm
from plantframe.mechanics.post import leafy_push_nm, push_height_m, wood_moment_nm
from plantframe.mechanics.ranges import Range, load_ratio
from plantframe.mechanics.section import (
    rectangle_inertia_m4,
    rectangle_modulus_m3,
    round_inertia_m4,
    round_modulus_m3,
)
from plantframe.mechanics.units import GRAVITY_M_PER_S2
from plantframe.mechanics.wind import garden_pressure_pa
from plantframe.mechanics.wire import (
    gauge_diameter_m,
    held_sag_m,
    sag_m,
    wire_stiffness_n,
)

# r = middle asked ÷ middle carried. Silent to the first, a note to the second, a warning beyond;
# from the third on the warning says how many times. Held in place by the known-good bench.
TIGHT, LIKELY, TIMES = 0.85, 1.1, 1.8
WIRE_MM = 2.5  # an ordinary garden wire (12½ gauge) where the plan does not say


@frozen
class Stick:
    """A bar's section: m; `tall` is its upright measure."""

    wide_m: float
    tall_m: float
    round: bool

    @property
    def modulus_m3(self) -> float:
        """Section modulus the way it lies."""
        if self.round:
            return round_modulus_m3(self.tall_m)
        return rectangle_modulus_m3(self.wide_m, self.tall_m)

    @property
    def inertia_m4(self) -> float:
        """Second moment of area the way it lies."""
        if self.round:
            return round_inertia_m4(self.tall_m)
        return rectangle_inertia_m4(self.wide_m, self.tall_m)


@frozen
class Load:
    """What hangs on a part and what the part carries, kg per metre of row.

    part    the fact word of the part: bar, panels …
    span_m  pin to pin, 0 where no span counts
    """

    part: str
    asked: Range
    carried: Range
    span_m: float
    stick: Stick | None = None

    @property
    def ratio(self) -> Range:
        """Asked over carried."""
        return load_ratio(self.asked, self.carried)

    @property
    def bow_m(self) -> float:
        """How far the bar hangs low after some weeks, m; 0 where no bar bends."""
        if self.stick is None or self.span_m <= 0:
            return 0.0
        return bar_bow_m(self.asked.middle, self.span_m, self.stick.inertia_m4)


@frozen
class Droop:
    """A wire under what hangs on it: sag in m and as a share of the span."""

    span_m: float
    sag_m: float
    held: bool
    strained: bool

    @property
    def share(self) -> float:
        """Sag over span."""
        return self.sag_m / self.span_m


@frozen
class Push:
    """The wind on the leaves a post answers for, against its wood and the ground, N·m.

    area_m2   the leaves it answers for
    height_m  where the push acts
    asked, wood, ground   low, middle, high; ground None where nothing is in the ground
    """

    area_m2: float
    height_m: float
    pressure_pa: float
    asked: Range
    wood: Range
    ground: Range | None
    stayed: bool
    lasting: bool

    @property
    def weak(self) -> str:
        """The link that gives way first: "wood" or "ground"."""
        if self.ground is not None and self.ground.middle < self.wood.middle:
            return "ground"
        return "wood"

    @property
    def carried(self) -> Range:
        """What the weak link holds."""
        if self.weak == "ground" and self.ground is not None:
            return self.ground
        return self.wood

    @property
    def ratio(self) -> Range:
        """Asked over carried."""
        return load_ratio(self.asked, self.carried)


def grade(ratio: float) -> str:
    """silent, note or warn, of asked over carried."""
    if ratio <= TIGHT:
        return "silent"
    return "note" if ratio <= LIKELY else "warn"


def bar_load(part: str, asked: Range, span_m: float, stick: Stick) -> Load:
    """What hangs on a bar from pin to pin."""
    carried = bar_capacity_kg_per_m(span_m, stick.modulus_m3, stick.inertia_m4)
    return Load(part, asked, carried, span_m, stick)


def wire_droop(
    asked: Range, span_m: float, *, strained: bool, held: bool, gauge: float | None = None
) -> Droop:
    """How far a wire hangs under what it carries.

    Between ends that hold, the wire tightens as it sags; between ends that give, the pull stays
    near what the hand gave it.
    """
    first_n = practice.STRAINED_N if strained else practice.HAND_TIGHT_N
    load_n_per_m = asked.middle * GRAVITY_M_PER_S2
    if held:
        try:
            across_m = gauge_diameter_m(gauge) if gauge else WIRE_MM / 1000
        except (KeyError, ValueError):
            across_m = WIRE_MM / 1000
        sag = held_sag_m(load_n_per_m, span_m, first_n, wire_stiffness_n(across_m))
    else:
        sag = sag_m(load_n_per_m, span_m, first_n)
    return Droop(span_m, sag, held, strained)


@frozen
class Upright:
    """What stands in the ground: m."""

    width_m: float
    depth_m: float
    round: bool
    down_m: float
    shares: float


def wind_push(
    upright: Upright,
    *,
    area_m2: float,
    leafy_from_m: float,
    leafy_to_m: float,
    place: str,
    soil: str,
    lasting: bool,
    stayed: bool,
    push: Range | None = None,
) -> Push:
    """The wind's moment at the ground against wood and ground.

    place   sheltered, average or windy
    push    the share of the pressure the area takes, where it is no leafy net
    """
    pressure_pa = garden_pressure_pa(place, stays_for_years=lasting)
    height_m = push_height_m(leafy_to_m - leafy_from_m, leafy_from_m)
    asked = leafy_push_nm(pressure_pa, area_m2, height_m)
    if push is not None:
        factor = practice.LEAF_PUSH
        asked = Range(
            asked.low / factor.low * push.low,
            asked.middle / factor.middle * push.middle,
            asked.high / factor.high * push.high,
        )
    strength = practice.ROUND_STRENGTH_PA if upright.round else practice.SAWN_STRENGTH_PA
    if upright.round:
        modulus = round_modulus_m3(upright.width_m)
    else:
        small, large = sorted((upright.width_m, upright.depth_m))
        # a stick wider than thick may be set either way; the weaker is taken
        modulus = rectangle_modulus_m3(large, small)
    wood = wood_moment_nm(modulus, strength)
    if lasting:
        wood = wood.times(practice.YEARS_STRENGTH_FACTOR)
    times = upright.shares * (practice.SQUARE_STAY_FACTOR if stayed else 1.0)
    wood = wood.times(times)
    ground = None
    if upright.down_m > 0:
        known = soil if soil in SOILS else "firm loam"
        ground = ground_moment_nm(known, upright.width_m, upright.down_m, height_m).times(times)
        if ground.middle <= 0:
            # a post no deeper than the loose top: a thousandth stands for "nothing at all"
            ground = Range(1e-3, 1e-3, 1e-3)
    return Push(area_m2, height_m, pressure_pa, asked, wood, ground, stayed, lasting)
