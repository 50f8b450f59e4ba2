"""What is drawn: a frame of the plan, or a kind of structure at its ordinary sizes."""

from __future__ import annotations

import re
from types import MappingProxyType
from typing import TYPE_CHECKING

from plantframe.catalogue.facts import key_of
from plantframe.catalogue.mistakes import ExpressionError
from plantframe.catalogue.sourced import Sourced
from plantframe.catalogue.wares import UNNAMED, part_words, several, sized
from plantframe.catalogue.words import SAME_FACT
from plantframe.catalogue.workings import work
from plantframe.frozen import frozen
from plantframe.language.slots import Section
from plantframe.season.units import plural

if TYPE_CHECKING:
    from collections.abc import Mapping

    from plantframe.catalogue.entries import Structure
    from plantframe.catalogue.workings import Pieces, Worked
    from plantframe.plan.things import Frame
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.units import Shown

SURFACES = frozenset({"net", "mesh", "cloth", "pane"})  # bought by width and length
CUT_AT_BENCH = frozenset({"wood", "strip", "pane", "cane"})
SHEETS = frozenset({"strip", "brush"})  # a panel, a hurdle: of laths or rods, but bought whole
FINE_MESH_M = 0.03
AS_LONG = "as long as the gap"
_MEASURED = re.compile(r"\d\s*(mm|cm|m|in|ft)\b")


@frozen
class Subject:
    """Something with parts that have places.

    name    the frame's own, or the kind's
    typed   cross-sections as the gardener wrote them, by fact word: posts -> 2x2
    """

    name: str
    structure: Structure
    worked: Worked
    shown: Shown
    typed: Mapping[str, str] = MappingProxyType({})

    def figure(self, name: str) -> float | None:
        """A settled fact (`posts.down`) or a sum (`step`) as a figure, or None."""
        value = self.worked.facts.values.get(name, self.worked.sums.get(name))
        number = isinstance(value, int | float) and not isinstance(value, bool)
        return float(value) if number else None  # type: ignore[arg-type]

    def tape(self, metres: float) -> str:
        """A length set out with the tape on the ground: as near as at the bench, in its units."""
        if self.shown.imperial or metres >= 1:
            return self.shown.bench(metres)
        return f"{round(metres * 200) / 2:g} cm"

    def called(self, word: str) -> str:
        """What this kind calls a fact: poles, foot posts."""
        fact = self.structure.facts.get(word)
        return fact.called if fact else word

    def thickness(self, pieces: Pieces) -> str:
        """The cross-section of a stick: as typed, as the trade names it, or as measured."""
        word = pieces.part.section
        if typed := self.typed.get(key_of(word), ""):
            return f"{typed} round" if pieces.round and "round" not in typed else typed
        if pieces.width_m is None or pieces.depth_m is None:
            return ""
        printed = self._trade_name(word)
        if printed and self.shown.imperial:
            return printed
        if pieces.round:
            return f"{self.shown.bench(pieces.width_m)} round"
        wide, deep = self._side(pieces.width_m), self._side(pieces.depth_m)
        number, _, unit = wide.rpartition(" ")
        return f"{number} × {deep}" if deep.endswith(f" {unit}") else f"{wide} × {deep}"

    def _side(self, metres: float) -> str:
        """A side of a cross-section: as the trade sells it, to the millimetre."""
        return self.shown.bench(metres) if self.shown.imperial else f"{metres * 1000:.0f} mm"

    def _trade_name(self, word: str) -> str:
        key = f"{key_of(word)}.section"
        taken = self.worked.facts.origins.get(key)
        return taken.printed if isinstance(taken, Sourced) else ""

    def piece_words(self, name: str, pieces: Pieces, *, counted: bool = True) -> str:
        """A part as a line of a list: `3 posts, 2x2, 8 ft`."""
        size = self._to_buy_by(pieces.size)
        whole = pieces.part.of in SHEETS and pieces.breadth_m is not None
        bought = bool(size) and (whole or pieces.part.of not in CUT_AT_BENCH)
        if bought and counted:
            said = [part_words(pieces.count, name, pieces.part.of, size)]
        else:
            said = [plural(pieces.count, name, several(name)) if counted else name]
        if thick := self.thickness(pieces):
            said.append(thick)
        if pieces.part.of in SURFACES and pieces.length_m and pieces.breadth_m:
            wide, long = (self._long(pieces, one) for one in (pieces.breadth_m, pieces.length_m))
            said.append(f"{wide} × {long}")
            mesh = self.figure("net.mesh") or self.figure("mesh.length")
            if mesh and pieces.part.of in {"net", "mesh"}:
                said.append(f"mesh {self.mesh_words(mesh)}")
        elif pieces.length_m and pieces.breadth_m and pieces.part.of in SHEETS:
            wide, long = self._long(pieces, pieces.breadth_m), self._lengths(pieces)
            said.append(f"{wide} × {long}")
        elif pieces.length_m and pieces.part.of not in UNNAMED and not _MEASURED.search(size):
            said.append(self._lengths(pieces))
        if size and not (bought and counted):
            said.append(size)
        return ", ".join(said)

    def _to_buy_by(self, size: str) -> str:
        """The words to buy a part by, with the length where they only say what it must span."""
        size = sized(size, imperial=self.shown.imperial)
        long = self.figure("hooks.length") or self.figure("gap")
        if AS_LONG not in size or not long:
            return size
        return size.replace(AS_LONG, f"{self.shown.bench(long)} long")

    def mesh_words(self, mesh_m: float) -> str:
        """The mesh of a net: `15 cm`, and `5 mm` where it is fine."""
        return self.shown.length(mesh_m) if mesh_m >= FINE_MESH_M else self.shown.bench(mesh_m)

    def _long(self, pieces: Pieces, metres: float) -> str:
        """A length: of wood and panes as at the bench, of nets, wire and rope as outdoors."""
        bench = pieces.part.of in CUT_AT_BENCH
        return self.shown.bench(metres) if bench else self.shown.length(metres)

    def _lengths(self, pieces: Pieces) -> str:
        shortest, longest = min(pieces.lengths_m), max(pieces.lengths_m)
        said = self._long(pieces, longest)
        first = self._long(pieces, shortest)
        return said if first == said else f"{first} to {said}"


def subject_of(frame: WorkedFrame, shown: Shown) -> Subject | None:
    """A frame of the plan; None where its kind is unknown or its figures do not work out."""
    if frame.structure is None or frame.worked is None:
        return None
    return Subject(frame.frame.name, frame.structure, frame.worked, shown, _typed(frame.frame))


def subject_of_kind(structure: Structure, shown: Shown) -> Subject | None:
    """A kind at its ordinary sizes; None where its entry does not work out."""
    try:
        return Subject(structure.name, structure, work(structure, {}), shown)
    except (ExpressionError, ZeroDivisionError, ValueError, OverflowError):
        return None


def _typed(frame: Frame) -> Mapping[str, str]:
    """Each cross-section of the plan as it was typed."""
    found = {}
    for word, facts in frame.facts.items():
        for fact in facts:
            section = fact.get("section")
            if isinstance(section, Section):
                found[key_of(SAME_FACT.get(word, word))] = section.text.strip()
    return MappingProxyType(found)
