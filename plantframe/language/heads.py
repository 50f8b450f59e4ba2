"""The heads of blocks: the name, and which of the phrases after it are facts of their own."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.frozen import replace
from plantframe.language import slots
from plantframe.language.declarations import find_block, find_fact
from plantframe.language.matching import match
from plantframe.language.values import (
    Day,
    Measure,
    Number,
    Phrase,
    Season,
    Size,
    Slashed,
    Word,
)

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.language.declarations import BlockWord, FactWord
    from plantframe.language.values import Value

# Words before the date of a task that stands in its name: `order seed by 15 January`.
_DATE_WORDS = frozenset({"by", "before", "on", "after"})


def name_of(declared: BlockWord, found: Sequence[Phrase]) -> tuple[str, list[Phrase]]:
    """The block's name and the phrases after it."""
    first = found[0]
    rest = replace(first, items=first.items[1:])
    after = [rest, *found[1:]] if rest.items else list(found[1:])
    if not rest.items:
        return "", after
    text = first.text[rest.items[0].at :]
    if declared.word in {"log", "note"}:
        column = first.column + rest.items[0].at
        return "", [Phrase(text, column, rest.items), *found[1:]]
    if declared.word in {"shed", "yard", "house"}:
        # these may go without a name; a place is no name
        got = match(declared.shape, [rest])
        placed = bool(got.slots) and not got.leftovers
        return ("", after) if placed else (text, list(found[1:]))
    if not declared.named:
        return "", after
    cut = _cut(declared, rest)
    before, tail = rest.items[:cut], replace(rest, items=rest.items[cut:])
    name = first.text[before[0].at : before[-1].end] if before else ""
    if not before and declared.word == "garden":
        name = tail.items[0].value.text  # `garden 2027` goes by its year
    more = [tail, *found[1:]] if tail.items else list(found[1:])
    plain = " ".join(name.split()).strip(" :-–—•").strip('"“”')
    return " ".join(plain.split()), more


def _cut(declared: BlockWord, rest: Phrase) -> int:
    """Where the name ends: before a garden's year, a size, a task's date, or after a colon."""
    word, last = declared.word, rest.items[-1].value
    if word == "garden":
        year = isinstance(last, Season) or (isinstance(last, Number) and 1900 <= last.value <= 2100)
        return len(rest.items) - year
    for place in range(1, len(rest.items)):
        value = rest.items[place].value
        if word != "task" and _measures(value):
            return place  # `bed Long Bed 4 ft x 8 ft`
        if "{size}" in declared.shape and value is last and isinstance(value, Size):
            return place  # `bed Long Bed 4x8`: a size whose unit is asked for
        if word == "task" and place + 1 == len(rest.items) and isinstance(value, Day | Slashed):
            return place  # `start tomatoes 20 March`
        if not isinstance(value, Word):
            continue
        if word != "task" and value.text.endswith(":") and place + 1 < len(rest.items):
            return place + 1
        if word == "task" and _dates_the_task(rest, place):
            return place
    return len(rest.items)


def _dates_the_task(rest: Phrase, place: int) -> bool:
    """Whether a task's words end here in a date: `order seed by 15 January`."""
    if rest.words[place] not in _DATE_WORDS:
        return False
    taken = slots.take("date", rest, place + 1, frozenset())
    return taken is not None and taken[1] == len(rest.items)


def _measures(value: Value) -> bool:
    """Whether a value is a length or a size with its unit: no part of a name."""
    if isinstance(value, Size):
        return not value.bare
    return isinstance(value, Measure) and value.dimension == "length"


def head_parts(
    declared: BlockWord, rest: Sequence[Phrase]
) -> tuple[list[Phrase], list[tuple[FactWord, int, Phrase]]]:
    """The phrases of a head that are its own, and those that are facts (`built 2024`)."""
    own: list[Phrase] = []
    facts: list[tuple[FactWord, int, Phrase]] = []
    for part in (piece for one in rest for piece in _uncommaed(declared, one)):
        fact, count = find_fact(part.words, declared.word)
        if fact is None or declared.word not in fact.blocks or declared.word in {"task", "want"}:
            own.append(part)
        elif _is_fact(declared, fact, count, part):
            facts.append((fact, count, part))
        else:
            own.append(part)
    return own, facts


def _uncommaed(declared: BlockWord, part: Phrase) -> tuple[Phrase, ...]:
    """A phrase of a head, parted where a comma was left out: `4 ft x 16 ft runs east-west`."""
    if len(part.items) < 3 or not match(declared.shape, [part]).leftovers:
        return (part,)
    for place in range(1, len(part.items)):
        tail = replace(part, items=part.items[place:])
        fact, count = find_fact(tail.words, declared.word)
        if fact is None or not fact.must_say or declared.word not in fact.blocks:
            continue
        said = match(fact.shape, [replace(part, items=tail.items[count:])], strict=True)
        before = replace(part, items=part.items[:place])
        own = match(declared.shape, [before], strict=True)
        if said.slots and own.slots and not said.leftovers and not own.leftovers:
            return before, tail
    return (part,)


def _is_fact(declared: BlockWord, fact: FactWord, count: int, part: Phrase) -> bool:
    """`faces east` is a fact; `stakes` and `net frame` are kinds, though facts begin so too."""
    if "{kind}" in declared.shape and slots.names_a_kind(part):
        return False
    tail = replace(part, items=part.items[count:])
    if not tail.items:
        return not fact.must_say
    got = match(fact.shape, [tail], strict=True)
    if count > 1 or (got.slots and not got.leftovers):
        return True
    head = match(declared.shape, [part])  # `painted brick` is what a wall is made of
    return not head.slots or bool(head.leftovers)


# Blocks that are mostly one line.
LINES_ALONE = frozenset({"want", "task", "log", "note"})


def is_a_head(found: Sequence[Phrase], inside: BlockWord | None) -> bool:
    """Whether an indented line opens a block all the same: `  bed Top Bed` under a garden.

    inside   the block it is indented under, None where there is none or its head means nothing
    """
    first = found[0]
    declared = find_block(first.words[0])
    if declared is None or (inside is not None and inside.details != "facts"):
        return False
    fact, _ = find_fact(first.words, inside.word if inside else "")
    if fact is not None and inside is not None and inside.word in fact.blocks:
        return False
    if len(first.items) == 1:
        return not declared.named and declared.word not in LINES_ALONE
    second = first.text[first.items[1].at :]
    return declared.word in LINES_ALONE or (declared.named and second[:1].isupper())


def looks_like_a_head(found: Sequence[Phrase]) -> bool:
    """Whether a line reads as if it opened something: `Trellis: Old Rose`, `fram Bean Net, net`.

    Its lines are then kept for it, and not counted to the block above.
    """
    items = found[0].items
    first = items[0].value
    if len(items) < 2 or not isinstance(first, Word) or not first.plain.isalpha():
        return False
    named = items[1].value.text[:1].isupper() and len(found) > 1
    return named or first.text[:1].isupper() or first.text.endswith(":")
