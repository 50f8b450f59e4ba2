"""What a plant brings to a pairing: how it holds, how high, how heavy, and for how long."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from plantframe.frozen import frozen
from plantframe.mechanics.ranges import Range
from plantframe.season.plantings import as_range, wet_weight_kg_per_m

if TYPE_CHECKING:
    from plantframe.catalogue.entries import Plant
    from plantframe.catalogue.sourced import Sourced

# Stems that neither fold nor can be unwound (common practice, no source).
STIFF = frozenset({"woody", "trunk", "stiff", "cane"})
# Longer than this and it is still there when a seasonal frame comes down.
A_SEASON_YEARS = 1.0
YEAR_DAYS = 365.0
GOURDS = "Cucurbitaceae"


def word(value: Sourced | None) -> str:
    """A value that is a word, or ""."""
    return value.value if value is not None else ""


def least(value: Sourced | None) -> float:
    """The least on a frame; 0 where only an "up to" is known.

    Beside the entry's own figure only the trade's counts: other print takes in dwarf kinds, and
    what the same plant does without a frame.
    """
    if value is None:
        return 0.0
    usual = [one for one in value.also if one.basis == "common practice" and not one.doubt]
    lows = [one.low for one in (value, *usual) if one.low is not None]
    return min(lows, default=value.middle or 0.0)


@frozen
class Climber:
    """A plant as the six questions see it.

    entry     what the catalogue knows of it
    said      the plant in the gardener's words
    leaders   stems kept to a plant, None for as the trade does it
    stopped   the plan says that its tips are pinched or cut at the top
    count     plants wanted, None where nobody says
    by_hand   the plan says that it is trained or tied to what it grows on
    """

    entry: Plant
    said: str
    leaders: int | None = None
    stopped: bool = False
    count: int | None = None
    by_hand: bool = False

    @property
    def name(self) -> str:
        """The catalogue's name for it."""
        return self.entry.name

    # -- how it holds -----------------------------------------------------------------------
    @property
    def holds_on(self) -> str:
        """twines, tendrils, leaf stalks, clings, tied in, or stands alone."""
        return word(self.entry.holds_on)

    @property
    def holds_otherwise(self) -> str:
        """How some other source says it holds, where sources differ; else ""."""
        holds = self.entry.holds_on
        others = [one.value for one in holds.also if one.value != holds.value] if holds else []
        return others[0] if others else ""

    @property
    def habit(self) -> str:
        """climber, leaner, bush, upright or low."""
        return word(self.entry.habit)

    @cached_property
    def grip_m(self) -> float | None:
        """The thickest it takes readily, by the most generous of the first figure's sides."""
        grip = self.entry.grip
        if grip is None:
            return None
        return grip.high if grip.high is not None else grip.usual

    @cached_property
    def strict_grip_m(self) -> float | None:
        """The thickest by the strictest source, where that is less than `grip_m`."""
        grip, usual = self.entry.grip, self.grip_m
        if grip is None or usual is None:
            return None
        most = [one.high for one in grip.also if one.high is not None]
        strict = min(most, default=usual)
        return strict if strict < usual else None

    @property
    def stem(self) -> str:
        """soft, brittle, flexible, cane, stiff, woody or trunk."""
        return word(self.entry.stem)

    @property
    def stiff(self) -> bool:
        """Its stems neither fold nor bend far."""
        return self.stem in STIFF

    @property
    def tied(self) -> bool:
        """It is tied or led by hand, and so can be untied."""
        return self.holds_on == "tied in" or self.training == "tie in"

    @property
    def training(self) -> str:
        """none, leaders, pinch, weave, tie in or lead."""
        return self.entry.training.kind if self.entry.training else "none"

    @property
    def staking(self) -> str:
        """How the trade holds it up where it stands more or less alone, in words; else ""."""
        said = word(self.entry.other.get("staking"))
        return "" if said.startswith("none") else said

    @property
    def propped(self) -> bool:
        """It stands up by itself, and is held up the way the trade holds up just that plant."""
        return self.holds_on == "stands alone" or (self.habit == "upright" and bool(self.staking))

    @property
    def unsupported(self) -> bool:
        """It needs no frame at all."""
        return self.holds_on in {"", "stands alone"} and not self.staking

    # -- how high, how heavy, how long ----------------------------------------------------------
    @cached_property
    def least_height_m(self) -> float:
        """The least height it grows to on a frame; 0 where nothing is known."""
        return least(self.entry.height)

    @cached_property
    def height_m(self) -> tuple[float, float] | None:
        """Low and high of its height, by the first source; 0 and high where it says "up to"."""
        height = self.entry.height
        if height is None or height.is_word:
            return None
        low = height.low if height.low is not None else height.middle or 0.0
        return low, height.high if height.high is not None else height.usual

    @cached_property
    def most_height_m(self) -> float:
        """The most that any source prints for it; 0 where nothing is known."""
        height = self.entry.height
        found = (height, *height.also) if height is not None else ()
        return max((one.high for one in found if one.high is not None), default=0.0)

    @cached_property
    def apart_m(self) -> tuple[float, float] | None:
        """How far apart its plants stand."""
        apart = as_range(self.entry.apart)
        return (apart.low, apart.high) if apart is not None else None

    @property
    def led_sideways(self) -> bool:
        """It may be led along, round or down instead of up: tied, pruned or of the gourd family."""
        led = self.tied or self.training in {"leaders", "pinch", "weave"}
        return self.stiff or led or self.entry.family == GOURDS

    @property
    def wet_kg_per_m(self) -> Range | None:
        """Wet weight at its heaviest, kg per metre of row."""
        return wet_weight_kg_per_m(self.entry, self.leaders)

    @property
    def grown_kg_per_m(self) -> Range | None:
        """The same at full size: what keeps its stems grows into the upper half of the range."""
        weight = self.wet_kg_per_m
        if weight is None or not self.keeps_stems:
            return weight
        return Range(weight.middle, weight.high, weight.high)

    @cached_property
    def stays_years(self) -> float:
        """How long it stays where it is planted."""
        stays = self.entry.stays
        if stays is None or stays.is_word:
            return 0.0
        return stays.usual / YEAR_DAYS if stays.base == "days" else stays.usual

    @property
    def lasting(self) -> bool:
        """It outstays a season."""
        return self.stays_years > A_SEASON_YEARS

    @property
    def cut_yearly(self) -> bool:
        """It is cut back every year."""
        return word(self.entry.cut_back) == "yearly"

    @property
    def keeps_stems(self) -> bool:
        """Wood from one year carries the next year's: it grows heavier as it stands."""
        return self.lasting and self.stiff and self.stem != "cane" and not self.cut_yearly

    # -- what is done with it ---------------------------------------------------------------------
    @property
    def picked(self) -> str:
        """How it is picked: by hand, cut, dug, or none."""
        return word(self.entry.picked) or "none"

    @property
    def sun_h(self) -> tuple[float, float] | None:
        """Hours of sun it wants: the least, and as much as it is glad of."""
        sun = self.entry.sun
        if sun is None or sun.is_word:
            return None
        low = sun.low if sun.low is not None else sun.usual
        return low, sun.high if sun.high is not None else low

    @property
    def row_m(self) -> float | None:
        """Metres of row that the plants wanted take up."""
        usual = as_range(self.entry.plants_per_metre)
        if self.count is None or usual is None or usual.middle <= 0:
            return None
        return self.count / usual.middle
