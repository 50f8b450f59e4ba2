"""Which fact a line opens: by its first word, or with a figure, a year or the sun before it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.catalogue.names import named
from plantframe.frozen import frozen, replace
from plantframe.language import slots
from plantframe.language.declarations import FactWord, find_fact
from plantframe.language.values import Cultivar, Item, Measure, Number, Word

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.language.values import Phrase


_LONGEST_PLANT = 4  # words in the name of a plant
_WINDS = frozenset({("sheltered",), ("windy",), ("exposed",), ("very", "windy")})
_ABLE = frozenset({"reaches", "lifts", "carries"})


@frozen
class Opening:
    """The fact that a line opens.

    count     how many of the first phrase's items are its word
    phrases   the line's phrases, with the word in front
    here      the fact may stand under this block
    """

    fact: FactWord
    count: int
    phrases: tuple[Phrase, ...]
    here: bool


def opening(found: Sequence[Phrase], block: str) -> Opening | None:
    """The fact a detail line opens under a block, None where no word opens any.

    block   the block's word, "" where its head could not be read and any fact will do
    """
    phrases = tuple(found)
    fact, count = find_fact(found[0].words, block)
    if fact is not None and _stands(fact, block) and fact.word in {"sow", "plant out"}:
        return _sown(fact, count, phrases, block) or Opening(fact, count, phrases, here=True)
    if fact is not None and _stands(fact, block):
        return Opening(fact, count, phrases, here=True)
    for other in (figure_first, _sun_behind, _year_first, _wind_alone, _person_first):
        opened = other(phrases, block)
        if opened is not None:
            return opened
    return None if fact is None else Opening(fact, count, phrases, here=False)


def _stands(fact: FactWord | None, block: str) -> bool:
    return fact is not None and (not block or block in fact.blocks)


def figure_first(phrases: tuple[Phrase, ...], block: str) -> Opening | None:
    """`6 poles, 8 ft`, `2 m high`: a figure before the word; in a shed it only counts."""
    first = phrases[0]
    if block in {"shed", "yard"} or len(first.items) < 2:
        return None
    figure = first.items[0]
    fact, count = find_fact(first.words[1:], block)
    measured = isinstance(figure.value, Number | Measure)
    if not measured or fact is None or not _stands(fact, block):
        return None
    of = [Item(Word("of"), figure.end, figure.end)] if isinstance(figure.value, Number) else []
    items = (*first.items[1 : 1 + count], figure, *of, *first.items[1 + count :])
    return Opening(fact, count, (replace(first, items=items), *phrases[1:]), here=True)


def _sown(fact: FactWord, count: int, phrases: tuple[Phrase, ...], block: str) -> Opening | None:
    """`sow pole beans 18 May`: a crop, with its word for the date put before the date."""
    first = phrases[0]
    grow, _ = find_fact(("grow",), block)
    items = first.items[count:]
    tail = replace(first, items=items)
    if grow is None or not items or not _names_a_plant(tail):
        return None
    dated = next(
        (
            place
            for place in range(1, len(items))
            if slots.take("date", tail, place, frozenset()) is not None
        ),
        len(items),
    )
    word = [Item(Word(part), first.items[0].at, first.items[0].end) for part in fact.word.split()]
    moved = (*items[:dated], *(word if dated < len(items) else ()), *items[dated:])
    return Opening(grow, 0, (replace(first, items=moved), *phrases[1:]), here=True)


def _names_a_plant(part: Phrase) -> bool:
    """Whether a plant is named here, with or without a count or a cultivar before it."""
    start = 0
    while start < len(part.items) and isinstance(part.items[start].value, Number | Cultivar):
        start += 1
    words = part.words[start : start + _LONGEST_PLANT]
    return any(named("plant", " ".join(words[:after])) for after in range(len(words), 0, -1))


def _wordless(word: str, phrases: tuple[Phrase, ...], block: str) -> Opening | None:
    """A line that is all of a fact under this block, its word left out."""
    fact, _ = find_fact((word,), block)
    if fact is None or not _stands(fact, block):
        return None
    return Opening(fact, 0, phrases, here=True)


def _sun_behind(phrases: tuple[Phrase, ...], block: str) -> Opening | None:
    """`full sun`, `half shade`."""
    behind = phrases[0].words[-1] in {"sun", "shade"}
    return _wordless("sun", phrases, block) if behind else None


def _year_first(phrases: tuple[Phrase, ...], block: str) -> Opening | None:
    """`2025: beans`, of what a bed had."""
    taken = slots.take("year", phrases[0], 0, frozenset())
    more = taken is not None and (len(phrases) > 1 or len(phrases[0].items) > taken[1])
    return _wordless("had", phrases, block) if more and block in {"bed", "border"} else None


def _wind_alone(phrases: tuple[Phrase, ...], block: str) -> Opening | None:
    """`windy, from the west`: the wind's class without its word."""
    return _wordless("wind", phrases, block) if phrases[0].words in _WINDS else None


def _person_first(phrases: tuple[Phrase, ...], block: str) -> Opening | None:
    """`Wim lifts 15 kg`: a name, and what the person can do."""
    words = phrases[0].words
    able = len(words) > 2 and words[1] in _ABLE
    return _wordless("person", phrases, block) if able else None
