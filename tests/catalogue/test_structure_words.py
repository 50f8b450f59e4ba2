"""The words structures take facts by are words of the language, or bring their own shape."""

from __future__ import annotations

import pytest

from plantframe.catalogue.names import index
from plantframe.catalogue.words import SAME_FACT
from plantframe.language.declarations import language
from plantframe.language.shapes import patterns

KINDS = sorted(index()["structures"])
DECLARED = {spelling for fact in language().facts for spelling in fact.spellings}
OWN = [
    (kind, word, *spoken)
    for kind, entry in index()["structures"].items()
    for word, spoken in entry["words"].items()
]


@pytest.mark.parametrize("kind", KINDS)
def test_every_fact_word_is_declared_by_the_language_or_here(kind: str) -> None:
    entry = index()["structures"][kind]
    unknown = [word for word, shape in entry["facts"].items() if not shape and word not in DECLARED]
    assert unknown == []


@pytest.mark.parametrize(("kind", "word", "shape", "help_", "example"), OWN)
def test_a_word_of_its_own_has_a_shape_a_sentence_and_an_example(
    kind: str, word: str, shape: str, help_: str, example: str
) -> None:
    assert patterns(shape), kind
    assert help_.endswith(".")
    assert example.startswith(word)


def test_one_word_has_one_shape_whichever_structure_takes_it() -> None:
    shapes: dict[str, set[str]] = {}
    for _, word, shape, _, _ in OWN:
        shapes.setdefault(word, set()).add(shape)
    assert {word: several for word, several in shapes.items() if len(several) > 1} == {}


def test_every_other_word_for_a_fact_means_a_word_the_structures_use() -> None:
    used = {word for entry in index()["structures"].values() for word in entry["facts"]}
    assert set(SAME_FACT.values()) <= used
