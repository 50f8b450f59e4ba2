"""Checks of a structure's entry that need no other entry: sums, order, words, and a trial."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.catalogue.expressions import names_in
from plantframe.catalogue.facts import key_of
from plantframe.catalogue.limits import broken
from plantframe.catalogue.mistakes import ExpressionError
from plantframe.catalogue.words import (
    BLOCKS,
    CARRIED_BY,
    DANGERS,
    DRAWN_AS,
    HELD,
    LOADS,
    MATTER,
    PLACES_OF_WORK,
    RUNS,
    VIEWS,
)
from plantframe.catalogue.workings import work

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from plantframe.catalogue.entries import Part, Structure

# Said of every frame, so that any structure may ask for them; plants.count and plants.apart
# are those of what grows there.
HEAD: Final = frozenset({"long", "high", "wide", "spacing", "plants"})
# Besides the steps, a danger may lie in these.
ALWAYS: Final = frozenset({"use", "care", "down"})


def structure_faults(structure: Structure) -> Iterator[str]:
    """Everything that is wrong with a structure's entry, each in one sentence."""
    for check in (words, sums, order, dangers, limits, trial):
        yield from check(structure)


def words(structure: Structure) -> Iterator[str]:
    """The fixed words are those of the list, and what is referred to is there."""
    for what, word, allowed in _fixed_words(structure):
        if word not in allowed:
            yield f"{what}: {word!r} is none of {', '.join(sorted(allowed))}"
    if structure.built_by == "builder" and not structure.questions:
        yield "a builder's structure lists the questions to put to the builder"
    if structure.built_by == "builder" and structure.carries:
        yield "the loads of a builder's structure are not for us to work out"
    for fact in structure.facts.values():
        if fact.shape and not (fact.help and fact.example):
            yield f"facts, {fact.word}: a shape wants a sentence of help and an example"
    yield from _referred_to(structure)


def _referred_to(structure: Structure) -> Iterator[str]:
    parts, facts = structure.parts, structure.facts
    for hold in structure.holds:
        if hold.part not in parts:
            yield f"holds: there is no part {hold.part!r}"
    sections = [part.section for part in parts.values()]
    for word in [*sections, *(way.section for way in structure.carries), structure.stands.by]:
        if word and word not in facts:
            yield f"a section is asked of {word!r}, which is no fact here"


def _fixed_words(structure: Structure) -> Iterator[tuple[str, str, Iterable[str]]]:
    yield from (("block", block, BLOCKS) for block in structure.blocks)
    yield "built by", structure.built_by, ("gardener", "builder")
    yield "stands for", structure.stands_for.value, ("season", "years")
    yield "stands, held", structure.stands.held, HELD
    yield "stands, loads", structure.stands.loads, LOADS
    for part in structure.parts.values():
        yield f"parts, {part.name}", part.of, MATTER
        for place in part.places:
            yield f"parts, {part.name}, view", place.view, VIEWS
            yield f"parts, {part.name}, as", place.as_, DRAWN_AS
    yield from (("holds, runs", hold.runs, RUNS) for hold in structure.holds)
    yield from (("carries, by", way.by, CARRIED_BY) for way in structure.carries)
    yield from ((f"steps, {s.id}", s.at, PLACES_OF_WORK) for s in structure.steps + structure.down)


def sums(structure: Structure) -> Iterator[str]:
    """Every sum can be read and asks only for the entry's own facts and sums."""
    known = _known(structure)
    for where, text in _expressions(structure):
        try:
            asked = names_in(text)
        except ExpressionError as error:
            yield f"{where}: {error}"
            continue
        for name in asked - known:
            if name.startswith("said.") or ("slot" in where and _may_be_said(name, structure)):
                continue
            yield f"{where}: {name} is no fact or sum of this entry"


def _may_be_said(name: str, structure: Structure) -> bool:
    """A slot may be taken from whatever else a plan can say of the same facts."""
    word = name.partition(".")[0]
    return word in HEAD or word in {key_of(fact) for fact in structure.facts}


def _known(structure: Structure) -> set[str]:
    known = set(structure.sums) | {"i"}
    for fact in structure.facts.values():
        for slot in fact.slots:
            key = key_of(fact.word, slot)
            known.add(key)
            if slot == "section":
                known |= {key_of(fact.word, side) for side in ("width", "depth", "round")}
    return known


def _expressions(structure: Structure) -> Iterator[tuple[str, str]]:
    """Every sum of an entry, with the words that lead to it."""
    for fact in structure.facts.values():
        for slot, tried in fact.slots.items():
            ways = [way for way in tried if isinstance(way, str)]
            yield from ((f"facts, {fact.word}, slot {slot or 'default'}", way) for way in ways)
    yield from ((f"sums, {name}", text) for name, text in structure.sums.items())
    for part in structure.parts.values():
        yield from ((f"parts, {part.name}", text) for text in _of_part(part) if text)
    for hold in structure.holds:
        given = [one for one in (hold.thickness, hold.every, hold.when) if isinstance(one, str)]
        yield from ((f"holds, {hold.part}", text) for text in given if text)
    for way in structure.carries:
        of_way = (way.when, way.span, way.wide, way.tall, way.round, way.count, way.strained)
        yield from (("carries", text) for text in (*of_way, way.ends) if text)
    stands = structure.stands
    of_stands = (stands.leafy_from, stands.leafy_to, stands.metres, stands.area, stands.shares)
    yield from (("stands", text) for text in (*of_stands, stands.down) if text)
    yield "height", structure.height
    yield "lengthways", structure.lengthways
    yield "ground, along", structure.ground_along
    yield "ground, across", structure.ground_across
    yield "clear", structure.clear_front
    for limit in structure.limits:
        of_limit = (limit.least, limit.most, limit.when, limit.instead_to)
        yield from ((f"limits, {limit.fact}", text) for text in of_limit if text)
    yield from _of_work(structure)


def _of_part(part: Part) -> list[str]:
    size = part.size.strip("{}") if part.size.startswith("{") else ""
    places = [text for place in part.places for text in (*place.x, *place.y)]
    return [part.count, part.length, part.width, part.thickness, part.wood, size, *places]


def _of_work(structure: Structure) -> Iterator[tuple[str, str]]:
    work_: list[tuple[str, str, str]] = [
        *((f"steps, {step.id}", step.when, step.per) for step in structure.steps + structure.down),
        *((f"care, {care.id}", care.when, care.per) for care in structure.care),
    ]
    for where, when, per in work_:
        if when:
            yield where, when
        if per not in structure.parts:
            yield f"{where}, per", per


def order(structure: Structure) -> Iterator[str]:
    """Steps come after steps that exist, and no step comes after itself."""
    ids = [step.id for step in structure.steps]
    for step_id in {one for one in ids if ids.count(one) > 1}:
        yield f"steps: two are called {step_id!r}"
    after = {step.id: step.after for step in structure.steps}
    planting = structure.planting
    named = {"late": (structure.late.step,), "plant": planting.after + planting.before, **after}
    for where, asked in named.items():
        for one in asked:
            if one not in after:
                yield f"{where}: there is no step {one!r}"
    done: set[str] = set()
    while ready := [one for one in after if one not in done and done.issuperset(after[one])]:
        done.update(ready)
    if len(done) < len(after) and all(one in after for asked in after.values() for one in asked):
        yield f"steps: {', '.join(sorted(set(after) - done))} wait for each other"


def dangers(structure: Structure) -> Iterator[str]:
    """Each danger is of a known kind and stands with a step that exists."""
    places = {step.id for step in structure.steps + structure.down} | ALWAYS
    for danger in structure.dangers:
        if danger.kind not in DANGERS:
            yield f"dangers: {danger.kind!r} is not a kind that is known"
        if not danger.at:
            yield f"dangers, {danger.kind}: it stands with no step"
        for at in danger.at:
            if at not in places:
                yield f"dangers, {danger.kind}: there is no step {at!r}"


def limits(structure: Structure) -> Iterator[str]:
    """A limit bounds a fact of the entry, and what the entry itself assumes keeps to it."""
    known = _known(structure) | HEAD
    for limit in structure.limits:
        if not (limit.least or limit.most or limit.even):
            yield f"limits, {limit.fact}: it says neither least nor most nor even"
        for fact in (limit.fact, limit.instead):
            if fact and fact not in known:
                yield f"limits: {fact} is no fact of this entry"
    for one in broken(structure, {}):
        yield f"limits, {one.limit.fact}: what the entry itself assumes does not keep to it"


def trial(structure: Structure) -> Iterator[str]:
    """With nothing said at all it can be worked out, and nothing comes to less than nothing."""
    try:
        worked = work(structure, {})
    except ExpressionError as error:
        yield f"with nothing said it cannot be worked out: {error}"
        return
    if worked.height_m <= 0 or worked.row_m <= 0:
        yield "it has no height, or no length for plants"
    for piece in worked.pieces.values():
        measures = (*piece.lengths_m, piece.breadth_m, piece.width_m, piece.thickness_m)
        if any(measure is not None and measure <= 0 for measure in measures):
            yield f"parts, {piece.part.name}: a measure comes to nothing or less"
    for hold in worked.holds:
        if hold.thickness_m <= 0 or (hold.every_m is not None and hold.every_m <= 0):
            yield f"holds, {hold.hold.part}: a measure comes to nothing or less"
    for way in structure.carries:
        sums_of_way = (way.span, way.wide, way.tall, way.round, way.strained, way.ends)
        for text in sums_of_way:
            if text and worked.figure(text) < 0:
                yield f"carries: {text} comes to less than nothing"
