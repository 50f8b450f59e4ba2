"""Names in a plan: what they mean, and what to say of one that means nothing."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from functools import cache, lru_cache
from types import MappingProxyType
from typing import TYPE_CHECKING

from plantframe.catalogue.names import all_names, index, named, singular_forms, tidy
from plantframe.frozen import replace
from plantframe.language.edits import Edit, a_line_each, rewrite, useful
from plantframe.language.mistakes import Mistake, Where
from plantframe.language.near import MOST, nearest
from plantframe.language.slots import Spot as TypedSpot
from plantframe.language.spots import compass
from plantframe.plan.things import Spot

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from plantframe.language.reader import Block, Fact
    from plantframe.language.shapes import Slot

# Words that stand for a thing of the plan without being its name.
COMMON = {"shed", "yard", "house", "store"}
NONE_OWN: Mapping[str, str] = MappingProxyType({})
# What stands between two plants in a line for one.
_JOINTS = (";", " and ", " & ", " + ", "/")
MOST_NAMED = 4  # names that are told at once
# Words that only name a kind of thing, so that `the hedge` means the one hedge there is.
KINDS = {"wall", "hedge", "tree", "path", "house", "bed", "border", "fence"}


@dataclass(slots=True)
class Slips:
    """The mistakes found while a plan is built, and the edits that may cure them.

    own   the gardener's own plants by tidy name
    """

    found: list[Mistake] = field(default_factory=list)
    own: Mapping[str, str] = field(default_factory=dict)

    def say(self, slip: str, where: Where, edits: Iterable[Edit] = (), /, **told: str) -> None:
        """Keep a mistake."""
        self.found.append(Mistake(slip, where, told, useful(edits)))


def at(where: Where, column: int) -> Where:
    """The same line at another column."""
    return Where(where.file, where.line, column, where.typed)


def key_of(name: str) -> str:
    """What a name is known by, whatever its capitals and the spaces in it."""
    return " ".join(name.lower().split())


@dataclass(slots=True)
class Names:
    """Every named thing of the plan: its name as written, by its small letters."""

    by_key: dict[str, Block] = field(default_factory=dict)
    common: set[str] = field(default_factory=set)

    def add(self, block: Block, slips: Slips) -> bool:
        """Take a block's name in; False (and said) where another has it already."""
        key = key_of(block.name)
        other = self.by_key.get(key)
        if other is None:
            self.by_key[key] = block
            return True
        first, second = other.where, block.where
        told = {
            "name": block.name,
            "first": f"the {other.word} on line {first.line}"
            + (f" of {first.file}" if first.file != second.file else ""),
            "second": f"the {block.word} on line {second.line}",
        }
        fresh = f"{block.name} 2"
        edit = rewrite(second, block.name, fresh, f"call the second “{fresh}”")
        slips.say("same-name", second, (edit,), **told)
        return False

    def add_common(self, block: Block) -> None:
        """Take in a shed, yard or house, which may go by its word or by a name of its own."""
        self.common.add(block.word)
        if block.name:
            self.by_key.setdefault(key_of(block.name), block)

    def find(self, said: str) -> str | None:
        """The thing's name as written, for a name as typed elsewhere, or None."""
        key = key_of(said)
        for form in (key, key.removeprefix("the ")):
            if form in self.by_key:
                return self.by_key[form].name
            if form in self.common:
                return form
        bare = key.removeprefix("the ")
        if bare in KINDS:
            of_kind = [block.name for block in self.by_key.values() if block.word == bare]
            if len(of_kind) == 1:
                return of_kind[0]
        return None

    def of_kind(self, word: str) -> str:
        """The names of the first things of a kind, for one who typed a name that is none."""
        found = [block.name for block in self.by_key.values() if word in {block.word, "place"}]
        return ", ".join(found[:MOST_NAMED])

    def near(self, said: str) -> tuple[tuple[str, Block], ...]:
        """Up to four names near this one, each with its block."""
        names = [block.name for block in self.by_key.values()]
        return tuple(
            (name, self.by_key[key_of(name)]) for name in nearest(said.removeprefix("the "), names)
        )


def spots(
    fact: Fact, slots: Iterable[Slot], names: Names, slips: Slips, holder: Block | None = None
) -> tuple[Spot, ...]:
    """The places in some slots of a fact, their names resolved.

    holder   the block whose fact it is: `the wall` there is the one that it stands on
    """
    return tuple(
        spot(slot.value, fact.place(slot), names, slips, holder)
        for slot in slots
        if isinstance(slot.value, TypedSpot)
    )


def spot(
    typed: TypedSpot, where: Where, names: Names, slips: Slips, holder: Block | None = None
) -> Spot:
    """One place, its name resolved; of two (`between Long Bed and Low Bed`) the first."""
    thing = ""
    if typed.name:
        first, both, second = typed.name.partition(" and ")
        ends = [names.find(name) for name in (first, second)] if both else []
        found = names.find(typed.name) or (ends[0] if all(ends) and ends else None)
        if found is None and holder is not None:
            found = _its_own(typed.name, holder, names)
        if found is not None:
            thing = found
        else:
            _unresolved(typed, where, names, slips)
    return Spot(typed.relation, thing, typed.text, typed.distance_m, typed.part, typed.along_m)


def _its_own(said: str, holder: Block, names: Names) -> str | None:
    """Of several walls the one that a block is or stands on, where one typed `the wall` in it."""
    bare = key_of(said).removeprefix("the ")
    if bare not in KINDS:
        return None
    if holder.word == bare:
        return holder.name
    for slot in holder.head.slots:
        if isinstance(slot.value, TypedSpot):
            found = names.find(slot.value.name) or ""
            block = names.by_key.get(key_of(found))
            if block is not None and block.word == bare:
                return found
    return None


def _unresolved(typed: TypedSpot, where: Where, names: Names, slips: Slips) -> None:
    """Say that a name means nothing, unless it is plain words (`over the blueberries`)."""
    bare = typed.name.lower().removeprefix("the ")
    wall = re.fullmatch(r"(\S+(?: \S+)?) wall", bare)
    side, used = compass(tuple(wall[1].split())) if wall else ("", 0)
    if wall and used == len(wall[1].split()):
        slips.say("which-wall", where, name=typed.name, side=side)
        return
    near = names.near(typed.name)
    capital = typed.name.removeprefix("the ")[:1].isupper()
    if not capital and not any(_alike(typed.name, name) for name, _ in near):
        return
    shown = ", ".join(f"{name} (line {block.where.line})" for name, block in near)
    edits = [rewrite(where, typed.name, name) for name, _ in near[:2]]
    what = {"in": "bed", "on": "wall"}.get(typed.relation, "place")
    there = "" if near else names.of_kind(what)
    told = {"what": what, "name": typed.name, "near": shown, "there": there}
    slips.say("no-such-place", where, edits, **told)


def _alike(said: str, name: str) -> bool:
    """Near enough to be a slip of the same name, and not just other words."""
    import difflib

    return difflib.SequenceMatcher(None, said.lower(), name.lower()).ratio() >= 0.8


def two_things(block: Block, names: Names, slips: Slips) -> None:
    """Ask about a name that holds ` on `, ` in ` or ` by ` and a name of the plan."""
    match = re.fullmatch(r"(.+?) (on|in|by|at) (.+)", block.name)
    if not match:
        return
    place = names.find(match[3])
    if place is None or place.lower() == block.name.lower():
        return
    link = match[2]
    edit = rewrite(
        block.where,
        block.name,
        f"{match[1]}, {link} {match[3]}",
        f"{match[1]}, {link} {match[3]}",
    )
    told = {"name": block.name, "short": match[1], "link": link, "place": place}
    slips.say("two-things-in-a-name", block.where, (edit,), **told)


def plants(said: str, own: Mapping[str, str] = NONE_OWN) -> tuple[str, ...]:
    """The plants a name can mean; a word or two of description may stand before.

    own   the gardener's own plants by tidy name: they come before the catalogue's

    A name that is a slip away from a plant's is a slip, not a description: `runer bean`.
    """
    for form in singular_forms(tidy(said)) if own else ():
        if form in own:
            return (own[form],)
    found = _of_the_catalogue(said)
    return tuple(own.get(tidy(name), name) for name in found) if own else found


def _of_the_catalogue(said: str) -> tuple[str, ...]:
    found = named("plant", said)
    if found:
        return tuple(found)
    for form in singular_forms(tidy(said).replace(" ", "")):
        if form in _joined():
            return tuple(named("plant", _joined()[form]))
    words = said.split()
    for start in range(1, len(words)):
        found = named("plant", " ".join(words[start:]))
        if found:
            return () if _slip_of_a_name(said) else tuple(found)
    return ()


@cache
def _joined() -> dict[str, str]:
    """Names of several words by what they are when typed as one: runnerbean, sweetpea."""
    return {name.replace(" ", ""): name for name in all_names("plant") if " " in name}


@lru_cache(maxsize=1024)
def _slip_of_a_name(said: str) -> bool:
    import difflib

    names = all_names("plant")
    return any(
        difflib.get_close_matches(form, names, n=1, cutoff=0.88)
        for form in singular_forms(tidy(said))
    )


def near_plants(said: str, own: Mapping[str, str] = NONE_OWN) -> tuple[str, ...]:
    """Up to four plants whose names look like the one typed, each by one name."""
    found = nearest(said, [*own.values(), *all_names("plant")])
    by_plants = {plants(name, own): name for name in reversed(found)}
    return tuple(name for name in found if name in by_plants.values())


def kinds(said: str) -> tuple[str, ...]:
    """The catalogue's structures a kind can mean."""
    return tuple(named("structure", said))


def near_kinds(said: str, word: str) -> tuple[str, ...]:
    """Up to four kinds near this one, of those that go under this block word."""
    fitting = fitting_kinds(word)
    near = nearest(said, [name for name in all_names("structure") if kinds(name)])
    own = dict.fromkeys(kind for name in near for kind in kinds(name) if kind in fitting)
    return tuple(own)[:MOST]


def kinds_in_name(name: str, word: str) -> tuple[str, ...]:
    """Up to four kinds a frame may be by its name: those named in it first, then those alike."""
    words = [one.strip(".,:;'\"").lower() for one in name.split()]
    fitting = fitting_kinds(word)
    found: dict[str, None] = {}
    for length in range(len(words), 0, -1):
        for start in range(len(words) - length + 1):
            for kind in kinds(" ".join(words[start : start + length])):
                if kind in fitting:
                    found[kind] = None
    for kind in fitting if len(found) < MOST else ():
        if set(kind.split()) & set(words) - {"frame"}:
            found[kind] = None
    return tuple(found)[:MOST]


@cache
def fitting_kinds(word: str) -> tuple[str, ...]:
    """The kinds that go under a block word."""
    return tuple(
        name
        for name, entry in index()["structures"].items()
        if word in entry["blocks"] or "any" in entry["blocks"]
    )


def one_plant(fact: Fact, slot: Slot, slips: Slips) -> Slot:
    """A slot that names a plant; of two in it (`carrots; spring onions`) the first, and said."""
    said = str(slot.value)
    first, joint, second = next(
        (parted for sign in _JOINTS if (parted := said.partition(sign))[1]), (said, "", "")
    )
    first, second = first.strip(), second.strip()
    whole = not joint or tidy(said) in slips.own or named("plant", said)
    if whole or not plants(first, slips.own) or not plants(second, slips.own):
        return slot
    where = fact.place(slot)
    place = where.typed.find(said, where.column - 1)
    opener = re.match(r"\s*\w+", where.typed)
    lead = opener[0] if opener and opener.end() <= place else "  grow"
    line = where.typed[:place] + first + where.typed[place + len(said) :]
    edit = a_line_each(where, line, f"{lead} {second}")
    slips.say("two-plants", where, (edit,), plant=second)
    return replace(slot, value=first, text=first)


def plant_of(
    fact: Fact, slot: Slot, slips: Slips, *, quiet: bool, ambiguous: bool
) -> tuple[str, ...]:
    """The plants a slot names; a name that means none or several is said.

    quiet       say nothing of an unknown plant
    ambiguous   leave a name with several meanings to the advice
    """
    said = str(slot.value)
    found = plants(said, slips.own)
    where = fact.place(slot)
    if not found and not quiet:
        near = near_plants(said, slips.own)
        edits = [rewrite(where, said, name) for name in near[:2]]
        slips.say("unknown-plant", where, edits, plant=said, near=", ".join(near))
    if len(found) > 1 and not ambiguous:
        shown = f"{', '.join(found[:-1])} or {found[-1]}"
        edits = [rewrite(where, said, name) for name in found[:2]]
        slips.say("which-plant", where, edits, plant=said, near=shown)
    return found
