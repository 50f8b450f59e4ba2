"""Cross-sections of sticks and boards: what they measure and are called, what rips into what."""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.mechanics.section import dressed_mm
from plantframe.season.entries import material_of
from plantframe.season.said import actual_m
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Mapping

    from plantframe.language.slots import Section as Typed
    from plantframe.plan.things import Garden

SAME_MM: Final = 1  # sections measured to the millimetre, from inches or from a rule
_THICK_IN: Final = (1, 2, 3, 4)  # nominal sizes the rule of the standard reaches to
_WIDE_IN: Final = (2, 3, 4, 6, 8, 10, 12)
_STICK: Final = 1.3  # a stick is hardly wider than thick
STOUTER_MM: Final = 7  # a ripped stick may be so much wider than the stick it stands for


@frozen
class Section:
    """A section by what it measures, in whole mm; `thick_mm` is the smaller side."""

    thick_mm: int
    wide_mm: int
    round: bool = False

    @property
    def area_m2(self) -> float:
        """Its area."""
        share = 0.7854 if self.round else 1.0
        return self.thick_mm * self.wide_mm / 1e6 * share

    def same_as(self, other: Section) -> bool:
        """Whether they measure the same, as near as timber is measured."""
        return (
            self.round == other.round
            and abs(self.thick_mm - other.thick_mm) <= SAME_MM
            and abs(self.wide_mm - other.wide_mm) <= SAME_MM
        )

    def ripped(self, kerf_m: float) -> Section | None:
        """What each half measures, ripped down the middle; None where they are no sticks."""
        if self.round or self.wide_mm < 2 * self.thick_mm:
            return None
        half = int((self.wide_mm - kerf_m * 1000) / 2 + 0.5)
        if half > _STICK * self.thick_mm:
            return None
        return Section(min(half, self.thick_mm), max(half, self.thick_mm))

    def stands_for(self, other: Section) -> bool:
        """Whether a ripped stick of this section may be used where the other is wanted."""
        if self.round or other.round:
            return False
        thinner = other.thick_mm - self.thick_mm, other.wide_mm - self.wide_mm
        stouter = self.thick_mm - other.thick_mm, self.wide_mm - other.wide_mm
        return max(thinner) <= SAME_MM and max(stouter) <= STOUTER_MM

    def name(self, garden: Garden) -> str:
        """What it is asked for by: `2x4`, `45x90 mm`, `100 mm round`."""
        if self.round:
            return f"{Shown(garden.imperial).bench(self.wide_mm / 1000)} round"
        trade = trade_names().get((self.thick_mm, self.wide_mm))
        if trade and garden.timber != "actual" and garden.imperial:
            return trade
        return f"{self.thick_mm}x{self.wide_mm} mm"

    def measures(self, garden: Garden) -> str:
        """What it measures in inches, where its name does not say: `1-1/2 x 3-1/2 in`; else ""."""
        if self.round or not garden.imperial:
            return ""
        return self.inches()

    def asked_for(self, garden: Garden) -> str:
        """Its name at the counter; one that is no trade size in inches too, in such a garden."""
        name = self.name(garden)
        inches = self.measures(garden) if name.endswith("mm") else ""
        return f"{name} ({inches})" if inches else name

    def inches(self) -> str:
        """Its sides to a sixteenth: `1-1/2 x 3-1/2 in`."""
        tape = Shown(imperial=True)
        thick, wide = (tape.exact(side / 1000) for side in (self.thick_mm, self.wide_mm))
        return f"{thick.removesuffix(' in')} x {wide}"


def section_m(width_m: float, depth_m: float, *, is_round: bool) -> Section:
    """The section of these sides."""
    thick, wide = sorted((round(width_m * 1000), round(depth_m * 1000)))
    return Section(thick, wide, is_round)


def typed_section(typed: Typed, garden: Garden, word: str = "") -> Section:
    """The section a line of the plan means: a trade size measures what it is dressed to."""
    width, depth, is_round = actual_m(typed, garden, word)
    return section_m(width, depth, is_round=is_round)


@lru_cache(maxsize=1)
def trade_names() -> Mapping[tuple[int, int], str]:
    """The trade's name of each dressed section.

    Source: PS 20, American Softwood Lumber Standard, as the catalogue gives it.
    """
    entry = material_of("trade sizes")
    sizes = entry.sizes if entry else {}
    found = {}
    for name, figures in sizes.items():
        sides = sorted(round(figures[side].usual * 1000) for side in ("thickness", "width"))
        found[sides[0], sides[1]] = name
    for thick in _THICK_IN:
        for wide in _WIDE_IN:
            if wide >= thick:
                found.setdefault(dressed_mm(thick, wide), f"{thick}x{wide}")
    return found
