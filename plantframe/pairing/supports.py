"""What a plant is tried on: a frame of the plan, a kind nobody has built yet, or a bare wall."""

from __future__ import annotations

from functools import cached_property, lru_cache
from typing import TYPE_CHECKING

from plantframe.catalogue import reading as catalogue
from plantframe.frozen import frozen
from plantframe.pairing.climber import word
from plantframe.pairing.imagined import ImaginedFrame, imagined
from plantframe.pairing.walls import fabric
from plantframe.pairing.wording import capital
from plantframe.plan.things import Garden
from plantframe.season.entries import entry_of, kind_of

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from plantframe.catalogue.entries import Structure
    from plantframe.catalogue.workings import Held
    from plantframe.plan.things import Bed, Thing
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.loads import Push
    from plantframe.season.season import Season

BARE_WALL = "bare wall"
# A frame whose leaves begin above a head is a roof: plants are led up a post and lie on top.
OVERHEAD_M = 1.5
# Sums of kinds whose top is a way over to the other side: the whole way is the plant's to climb.
WAYS_OVER = ("round_it", "arc")


@frozen
class Support:
    """Something a plant may be put to.

    name     the plan's own name for it, "" for a kind nobody has built
    kind     net frame, lattice … or bare wall
    worked   the frame worked out; None for a bare wall
    garden   the garden it stands in, an average one where there is no plan
    wall     the wall it stands at, or is
    bed      the bed it stands in
    """

    name: str
    kind: str
    worked: WorkedFrame | None
    garden: Garden
    wall: Thing | None = None
    bed: Bed | None = None

    @property
    def plural(self) -> bool:
        """Its kind is named in the plural: cane wires, pea sticks, stakes and twine."""
        several = self.kind.endswith("s") and not self.kind.endswith("is")
        return not self.name and (several or " and " in self.kind)

    @property
    def the(self) -> str:
        """It by its name, or its kind with an article."""
        if self.name or self.plural:
            return self.name or self.kind
        return f"{'an' if self.kind[0] in 'aeiouA' else 'a'} {self.kind}"

    @property
    def The(self) -> str:  # noqa: N802 - the same at the head of a sentence
        """The same at the head of a sentence."""
        return capital(self.the)

    def does(self, one: str, several: str) -> str:
        """It at the head of a sentence, with a verb that agrees: `Cane wires carry`."""
        return f"{self.The} {several if self.plural else one}"

    @property
    def has(self) -> str:
        """`A net frame has`, `Cane wires have`."""
        return self.does("has", "have")

    @property
    def gives(self) -> str:
        """`A net frame gives`, `Cane wires give`."""
        return self.does("gives", "give")

    @property
    def is_(self) -> str:
        """`A net frame is`, `Cane wires are`."""
        return self.does("is", "are")

    @property
    def here(self) -> str:
        """The place its light and soil are those of, in the plan's words; "" for no place."""
        if self.worked is not None and self.worked.frame.sun_h is not None:
            return self.name
        return self.wall.name if self.wall else self.bed.name if self.bed else self.name

    @property
    def bare_wall(self) -> bool:
        """Nothing but the wall."""
        return self.worked is None

    @property
    def in_plan(self) -> bool:
        """It has a block of its own in the plan."""
        return bool(self.name)

    @property
    def structure(self) -> Structure | None:
        """Its kind's entry."""
        return self.worked.structure if self.worked else None

    @cached_property
    def holds(self) -> tuple[Held, ...]:
        """What a plant can hold on to, thinnest first."""
        return self.worked.holds if self.worked else ()

    def matter(self, held: Held) -> str:
        """What a part is made of, as the catalogue names matter: net, twine, wire, wood."""
        worked = self.worked.worked if self.worked else None
        piece = worked.pieces.get(held.hold.part) if worked else None
        if piece is not None:
            return piece.part.of
        return "twine" if held.hold.part == "string" else held.hold.part  # hung on by the plan

    @property
    def height_m(self) -> float | None:
        """How high a plant can climb on it."""
        if self.worked is not None:
            return self.worked.height_m
        return self.wall.high_m if self.wall else None

    @cached_property
    def way_up_m(self) -> float | None:
        """How far a plant can climb: up, and on over where there is a way over."""
        if self.height_m is None or self.worked is None:
            return self.height_m
        return max([self.height_m, *(self.worked.figure(name) or 0.0 for name in WAYS_OVER)])

    @property
    def row_m(self) -> float | None:
        """Metres of row it gives."""
        if self.worked is not None:
            return self.worked.row_m
        return self.wall.long_m if self.wall else None

    @cached_property
    def overhead(self) -> bool:
        """Its leaves lie on a roof above head height."""
        worked = self.worked.worked if self.worked else None
        return worked is not None and worked.standing.leafy_from_m >= OVERHEAD_M

    @cached_property
    def seasonal(self) -> bool:
        """It is put up and taken down within the year."""
        return self.worked is not None and not self.worked.lasting

    @cached_property
    def folds(self) -> bool:
        """It stays for years and folds down with its plant on it."""
        worked = self.worked.worked if self.worked else None
        return (
            worked is not None
            and not self.seasonal
            and any(name.startswith("hinges.") for name in worked.facts.values)
        )

    @cached_property
    def at_wall(self) -> bool:
        """It is a wall, hangs on one, or stands at one."""
        held = self.structure.stands.held if self.structure else ""
        return self.bare_wall or self.wall is not None or held == "wall" or self.folds

    @cached_property
    def push(self) -> Push | None:
        """The wind on it in full leaf where it stands; None where it is not asked."""
        return self.worked.push_in(self.worked.place) if self.worked else None

    @cached_property
    def post_m(self) -> float | None:
        """How thick its uprights are, where they stand in the ground."""
        if self.worked is None or self.structure is None or not self.structure.stands.by:
            return None
        by = self.structure.stands.by
        sides = [self.worked.figure(f"{by}.{side}") for side in ("width", "depth")]
        known = [side for side in sides if side is not None]
        return min(known, default=None)

    @property
    def fabric(self) -> str:
        """What the wall is: masonry, cladding, skin (paint, render), failing, or "" unknown."""
        return fabric(self.wall) if self.wall else ""

    def changed(self, changes: Mapping[str, object]) -> Support | None:
        """The same support with some figures changed; None for a wall."""
        worked, structure = self.worked, self.structure
        if worked is None or structure is None:
            return None
        kept = {name: value for name, value in worked.said.items() if name not in changes}
        new = {name: value for name, value in changes.items() if value is not None}
        frame = ImaginedFrame(
            worked.frame, worked.garden, worked.bed, worked.wall, structure, {**kept, **new}
        )
        return Support(self.name, self.kind, frame, self.garden, self.wall, self.bed)


@lru_cache(maxsize=1)
def kinds() -> tuple[str, ...]:
    """Every kind of structure that plants are grown on: something to hold, and plants that do."""
    found = ((name, kind_of(name)) for name in catalogue.entry_names("structure"))
    return tuple(name for name, one in found if one is not None and one.holds and one.suits)


@lru_cache(maxsize=128)
def only_props(kind: str) -> bool:
    """It holds up plants that stand by themselves, and nothing climbs it: a ring, a brush dome."""
    structure = kind_of(kind)
    named = [entry_of(one.plant) for one in structure.suits] if structure else []
    known = [entry for entry in named if entry is not None]
    return bool(known) and all(word(entry.holds_on) == "stands alone" for entry in known)


@lru_cache(maxsize=128)
def _average(kind: str) -> ImaginedFrame | None:
    """A kind at its ordinary sizes in an average place."""
    structure = kind_of(kind)
    if structure is None or not structure.holds:
        return None
    frame = imagined(structure, {})
    return frame if frame.worked is not None else None


def of_kind(
    kind: str, garden: Garden | None = None, bed: Bed | None = None, wall: Thing | None = None
) -> Support | None:
    """A kind nobody has built, at its ordinary sizes; None where it carries no plants."""
    if garden is None and bed is None and wall is None:
        frame = _average(kind)
        return Support("", kind, frame, frame.garden) if frame else None
    structure = kind_of(kind, garden)
    if structure is None or not structure.holds:
        return None
    frame = imagined(structure, {}, garden, bed, wall)
    if frame.worked is None:
        return None
    return Support("", structure.name, frame, frame.garden, wall, bed)


def of_frame(season: Season, name: str) -> Support | None:
    """A frame of the plan; None where it is no support for plants or cannot be worked out."""
    frame = season.frames.get(name)
    if frame is None or frame.structure is None or frame.worked is None:
        return None
    if not frame.structure.holds:
        return None
    return Support(name, frame.structure.name, frame, season.plan.garden, frame.wall, frame.bed)


def of_wall(wall: Thing | None, garden: Garden | None = None) -> Support:
    """A wall with nothing on it; without a plan, one of brick or stone in good order."""
    return Support(wall.name if wall else "", BARE_WALL, None, garden or Garden(), wall)


def in_plan(season: Season) -> Iterator[Support]:
    """Every support that the plan has: its frames, then its walls."""
    for name in season.frames:
        support = of_frame(season, name)
        if support is not None:
            yield support
    for thing in season.plan.things.values():
        if thing.word == "wall":
            yield of_wall(thing, season.plan.garden)


def at_place(
    garden: Garden | None, bed: Bed | None = None, wall: Thing | None = None
) -> list[Support]:
    """Every kind nobody has built, at a place; None for an average garden."""
    found = [of_kind(kind, garden, bed, wall) for kind in kinds()]
    return [one for one in found if one is not None]


def hangs_on_a_wall(support: Support) -> bool:
    """It is of a kind that is fixed to a wall or folds down from one."""
    held = support.structure.stands.held if support.structure else ""
    return held == "wall" or support.folds
