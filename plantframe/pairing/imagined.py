"""Frames on figures that no line of the plan says: a kind not built, a change being tried."""

from __future__ import annotations

from functools import cached_property
from types import MappingProxyType
from typing import TYPE_CHECKING

from plantframe.frozen import frozen
from plantframe.language.mistakes import Where
from plantframe.language.reader import Block, Fact
from plantframe.plan.things import Frame, Garden
from plantframe.season.frames import WorkedFrame

if TYPE_CHECKING:
    from collections.abc import Mapping

    from plantframe.catalogue.entries import Structure
    from plantframe.plan.things import Bed, Thing


@frozen
class ImaginedFrame(WorkedFrame):
    """A frame worked out on figures that no line of the plan says: a kind not built, a change."""

    saying: Mapping[str, object] = MappingProxyType({})

    @cached_property
    def said(self) -> Mapping[str, object]:
        """The figures it is imagined with, SI."""
        return self.saying


def imagined(
    structure: Structure,
    saying: Mapping[str, object],
    garden: Garden | None = None,
    bed: Bed | None = None,
    wall: Thing | None = None,
) -> ImaginedFrame:
    """A kind of frame as the trade builds it, with some figures of its own, at a place or none."""
    nowhere = Where("", 0)
    head = Fact("frame", (), nowhere, "")
    frame = Frame(
        word="frame",
        name="",
        kind=structure.name,
        own_design=False,
        spots=(),
        facts=MappingProxyType({}),
        plantings=(),
        built=None,
        ready_by=None,
        take_down=None,
        on=None,
        stays_years=None,
        wind="",
        soil="",
        sun="",
        sun_h=None,
        lines_marked=None,
        set_asides=(),
        marks=(),
        had=(),
        block=Block("frame", "", head, ()),
    )
    return ImaginedFrame(frame, garden or Garden(), bed, wall, structure, saying)
