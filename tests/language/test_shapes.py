"""Shapes: compiled as written, and every way of writing a fact is read as what it says."""

from __future__ import annotations

import pytest

from plantframe.catalogue.names import index
from plantframe.language.declarations import FactWord, find_fact, language
from plantframe.language.matching import match
from plantframe.language.phrases import phrase
from plantframe.language.shapes import (
    Pattern,
    Piece,
    literal_words,
    opening_words,
    patterns,
    without,
)
from plantframe.language.slots import TYPES
from plantframe.language.vocabulary import ITEM
from tests.language.reading import HEADS, read

# What may be typed for each type of slot.
SAMPLES = {
    "count": "4",
    "number": "1.3",
    "year": "2025",
    "season": "2026-27",
    "length": "2.4 m",
    "lengths": "30 to 45 cm",
    "section": "45x95 mm",
    "cut": "45x95 mm",
    "size": "2 m x 5 m",
    "date": "18 May",
    "dates": "10 to 20 July",
    "hours": "6 h",
    "weekday": "Saturday",
    "direction": "south-west",
    "facing": "south facing",
    "line": "north-south",
    "degrees": "52.1 N",
    "spot": "north end",
    "place": "the drive",
    "weight": "15 kg",
    "weights": "5 to 7 kg",
    "years": "15 years",
    "whiles": "60 to 70 days",
    "time": "2 weeks",
    "warmth": "8 C",
    "pull": "300 N",
    "gauge": "12 gauge",
    "speed": "80 km/h",
    "volume": "40 l",
    "nail": "20d",
    "money": "£4.20",
    "cultivar": "'Tall Piper'",
    "reason": "it held",
    "words": "quite so",
    "plant": "pole bean",
    "kind": "net frame",
    "stuff": "larch",
    "name": "Maud",
    "text": "as we like it",
    "rule": "too-heavy",
    "job": "set the posts",
    "person": "Wim",
}
# Facts that begin with words of their own, before anything else can be told from those.
FIRST = {
    "ok": "too-heavy",
    "done": "set the posts",
    "move": "weave the bar to 2 May",
    "skip": "the stays",
}


def typed(piece: Piece) -> str:
    """What may be typed for a piece."""
    if piece.type == "choice":
        return " ".join(piece.choices[0])
    return SAMPLES[piece.type] if piece.type else piece.word


def written(pattern: Pattern) -> str:
    """A phrase that a pattern describes, with all that may be left out of it."""
    return " ".join(typed(piece) for piece in pattern.pieces)


CASES = [
    (fact, pattern)
    for fact in language().facts
    for pattern in patterns(fact.shape)
    if pattern.pieces[0].type != "text"
]


@pytest.mark.parametrize(
    ("fact", "pattern"), CASES, ids=[f"{fact.word}: {pattern.text}" for fact, pattern in CASES]
)
def test_every_way_of_writing_a_fact_is_read_as_what_it_says(
    fact: FactWord, pattern: Pattern
) -> None:
    first = FIRST.get(fact.word, "")
    opens = pattern.pieces[0].type in {"rule", "job"}
    line = f"{fact.word} {written(pattern)}"
    if first and not opens:
        line = f"{fact.word} {first}, {written(pattern)}"
    head = HEADS.get(fact.blocks[0], "want cucumber")
    found = read(f"{head}\n  {line}\n").blocks[0].facts[0]
    assert (found.word, found.whole) == (fact.word, True), line
    names = {slot.name for slot in found.slots}
    assert names >= {piece.name for piece in pattern.pieces if piece.type}, (line, found.slots)


def test_every_type_has_a_sample_that_it_takes() -> None:
    assert set(SAMPLES) == TYPES
    for kind, sample in SAMPLES.items():
        got = match(f"{{{kind}:it}}", [phrase(sample, 1)])
        assert [slot.name for slot in got.slots] == ["it"], kind
        assert not got.leftovers


def test_the_shapes_that_kinds_bring_along_compile() -> None:
    for kind, names in index()["structures"].items():
        for word, shape in names["facts"].items():
            for pattern in patterns(shape) if shape else ():
                for piece in pattern.pieces:
                    literal = piece.type in {"", "choice"}
                    assert literal or piece.type in TYPES, (kind, word)
                    assert not (piece.type == "choice" and piece.name == "kind"), (kind, word)


def test_a_word_that_only_some_kinds_know_stands_under_any_frame() -> None:
    own = [
        word
        for names in index()["structures"].values()
        for word, shape in names["facts"].items()
        if shape
    ]
    assert own
    for word in own:
        fact, count = find_fact(tuple(word.split()), "frame")
        assert fact is not None, word
        assert count == len(word.split())
        assert {"frame", "line", "cover", "fence"} <= set(fact.blocks)


def test_a_pattern_says_what_it_must_have() -> None:
    one, other, third = patterns("{count} of? {length}?, down/deep {length:down}, {stuff:wood}*")
    assert (one.needed, one.literals, one.slots) == (1, 0, ("count", "length"))
    assert one.must_fill == {"count"}
    assert (other.literals, other.slots, other.pieces[0].word) == (1, ("down",), "down")
    assert third.repeats
    assert third.takes_stuff
    assert not one.greedy


def test_a_choice_tries_its_longest_words_first_and_shows_them_as_written() -> None:
    (pattern,) = patterns("{flat|on the flat|on edge:lie}")
    (piece,) = pattern.pieces
    assert piece.choices[0] == ("flat",)
    assert piece.tried[0] == ("on", "the", "flat")
    (slot,) = match("{flat|on the flat|on edge:lie}", [phrase("on the flat", 1)]).slots
    assert slot.value == "on the flat"


def test_a_slot_is_filled_once_unless_it_may_come_again() -> None:
    got = match("{length} long?, {length:down} down", [phrase("8 ft", 1), phrase("6 ft", 9)])
    assert [slot.text for slot in got.slots] == ["8 ft"]
    assert [left.text for left in got.leftovers] == ["6 ft"]
    again = match("{length}*", [phrase("8 ft", 1), phrase("6 ft", 9)])
    assert [slot.text for slot in again.slots] == ["8 ft", "6 ft"]


def test_the_words_of_a_shape_are_known() -> None:
    shape = "{length:down} down/deep, in {concrete|sleeves:set}, up {length:up}"
    assert set(literal_words(shape)) == {"down", "deep", "concrete", "sleeves"}
    assert opening_words(shape) == {"in", "up"}
    assert without(shape, "set", "up") == "{length:down} down/deep"


def test_a_shed_line_takes_all_that_a_shop_sells_by() -> None:
    assert {piece.type for pattern in patterns(ITEM) for piece in pattern.pieces} >= {
        *("count", "cut", "size", "length", "nail", "money", "gauge", "stuff", "weight"),
    }
