"""The language page: fresh, and every line that it shows reads as it says."""

from __future__ import annotations

import re

import pytest

from plantframe.language.declarations import BlockWord, FactWord, language
from plantframe.language.page import SLOTS, page, page_file, written
from plantframe.language.prose import PROSE
from plantframe.language.shapes import patterns
from plantframe.language.slots import TYPES
from tests.language.reading import HEADS, read

SHOWN = re.findall(r"```\n(.*?)```", PROSE, re.DOTALL)
TYPED = re.findall(r"`([^`\n]+)`", re.sub(r"```.*?```", "", PROSE, flags=re.DOTALL))
DECLARED: list[BlockWord | FactWord] = [*language().blocks, *language().facts]
OTHER_HEADS = {"want": "want cucumber", "task": "task order seed"}


def test_the_page_is_fresh() -> None:
    assert page_file().read_text("utf-8") == page(), "python -m plantframe.language.page"


def test_every_block_and_fact_is_on_the_page() -> None:
    headings = re.findall(r"^### (.+)$", page(), re.MULTILINE)
    declared = [word.word for word in DECLARED]
    assert headings == declared


@pytest.mark.parametrize("block", language().blocks, ids=lambda block: block.word)
def test_the_example_of_a_block_is_read_with_every_word_understood(block: BlockWord) -> None:
    found = read(block.example + "\n")
    assert not found.mistakes
    (one,) = found.blocks
    assert one.word == block.word
    assert one.head.whole
    assert len(one.facts) >= block.example.count("\n")
    assert all(fact.whole for fact in one.facts)


@pytest.mark.parametrize("fact", language().facts, ids=lambda fact: fact.word)
def test_the_example_of_a_fact_is_read_with_every_word_understood(fact: FactWord) -> None:
    for under in fact.blocks:
        head = HEADS.get(under) or OTHER_HEADS[under]
        found = read(f"{head}\n  {fact.example}\n")
        assert not found.mistakes, under
        one = found.blocks[0].facts[0]
        assert (one.word, one.whole) == (fact.word, True)
        assert one.slots or not fact.must_say


@pytest.mark.parametrize("text", SHOWN)
def test_every_plan_in_the_prose_is_understood(text: str) -> None:
    found = read(text)
    assert not found.mistakes
    assert all(fact.whole for block in found.blocks for fact in (block.head, *block.facts))


def test_the_prose_shows_what_it_speaks_of() -> None:
    assert len(SHOWN) >= 5
    assert len(TYPED) > 60


@pytest.mark.parametrize(
    "line", [line for line in TYPED if line.split()[0] in {"garden", "task", "read"}]
)
def test_every_line_named_in_the_prose_is_understood(line: str) -> None:
    found = read(line + "\n")
    assert not found.mistakes
    assert found.blocks or found.imports


def test_a_gardener_is_told_what_stands_in_every_slot() -> None:
    assert set(SLOTS) >= {
        piece.type
        for word in DECLARED
        for pattern in patterns(word.shape)
        for piece in pattern.pieces
        if piece.type not in {"", "choice"}
    }
    assert set(SLOTS) <= TYPES


def test_a_shape_is_told_without_a_brace() -> None:
    for word in DECLARED:
        told = written(word.shape)
        assert not re.search(r"[{}|_]", told)
        assert "?" not in told
    assert (
        written("{count} of? {length}?, or_less") == "*how many* (of / off / no / nr / no.) "
        "(*a length*); or less"
    )


def test_every_declaration_has_its_help_and_a_topic() -> None:
    for fact in language().facts:
        assert fact.topic
        assert fact.help.endswith((".", "…"))
        assert fact.example.startswith(fact.word)
    for block in language().blocks:
        assert block.help.endswith(".")
