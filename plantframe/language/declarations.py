"""What a declaration of a block or a fact is, and how a line's first words find theirs."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import lru_cache

from plantframe.catalogue.names import index
from plantframe.frozen import frozen


@frozen
class FactWord:
    """A fact: the word it starts with, how it is written, and what it is for.

    blocks    the block words under which it stands
    also      other spellings of the word
    repeats   it may come several times in one block
    must_say  its word alone says nothing (`dog` and `own design` do say something)
    topic     what it is about, as a heading says it
    """

    word: str
    shape: str
    help: str
    example: str
    blocks: tuple[str, ...]
    also: tuple[str, ...] = ()
    repeats: bool = False
    must_say: bool = False
    topic: str = ""

    @property
    def spellings(self) -> tuple[str, ...]:
        """The word and the others it may be written with."""
        return (self.word, *self.also)


@frozen
class BlockWord:
    """A block: its word, how its head goes on after the name, and what stands under it.

    named    the first phrase of the head is the block's name
    details  "facts", or "items" (shed, yard), or "plants" (border): what a line under it is
             when it does not begin with one of its fact words
    """

    word: str
    shape: str
    help: str
    example: str
    named: bool = True
    details: str = "facts"
    also: tuple[str, ...] = ()


@dataclass(slots=True)
class Language:
    """Every declared word. Filled once by the vocabulary, then only read."""

    facts: list[FactWord] = field(default_factory=list)
    blocks: list[BlockWord] = field(default_factory=list)
    topic: str = ""  # what the facts declared next are about

    def fact(
        self,
        word: str,
        shape: str,
        *,
        blocks: str,
        help: str,  # noqa: A002 - reads as prose where words are declared
        example: str,
        also: str = "",
        repeats: bool = False,
        alone: bool = False,
    ) -> None:
        """Declare a fact. `alone`: its word may stand by itself."""
        others = tuple(part.strip() for part in also.split(",") if part.strip())
        must_say = not (alone or "{text}" in shape)
        self.facts.append(
            FactWord(
                word,
                shape,
                help,
                example,
                tuple(blocks.split()),
                others,
                repeats,
                must_say,
                self.topic,
            )
        )

    def block(
        self,
        word: str,
        shape: str,
        *,
        help: str,  # noqa: A002 - reads as prose where words are declared
        example: str,
        named: bool = True,
        details: str = "facts",
        also: str = "",
    ) -> None:
        """Declare a block."""
        others = tuple(part.strip() for part in also.split(",") if part.strip())
        self.blocks.append(BlockWord(word, shape, help, example, named, details, others))


@lru_cache(maxsize=1)
def language() -> Language:
    """The whole language as declared."""
    from plantframe.language import vocabulary

    return vocabulary.LANGUAGE


@lru_cache(maxsize=1)
def _fact_table() -> dict[tuple[str, ...], list[FactWord]]:
    table: dict[tuple[str, ...], list[FactWord]] = {}
    for fact in (*language().facts, *_structures_own()):
        for spelling in fact.spellings:
            table.setdefault(tuple(spelling.split()), []).append(fact)
    return table


@lru_cache(maxsize=1)
def _structures_own() -> tuple[FactWord, ...]:
    """The facts that only kinds of frame know, with the shapes their entries give.

    They stand under any frame, line, cover or fence, whatever its kind: a line is read in the
    same way wherever it stands, so that one damaged head does not change how its lines read.
    """
    from plantframe.language.vocabulary import BUILT

    known = {fact.word for fact in language().facts}
    shapes: dict[str, dict[str, None]] = {}
    for names in index()["structures"].values():
        for word, shape in names["facts"].items():
            if shape and word not in known:
                shapes.setdefault(word, {})[shape] = None
    return tuple(
        FactWord(word, ", ".join(written), "", "", tuple(BUILT.split()))
        for word, written in sorted(shapes.items())
    )


@lru_cache(maxsize=1)
def _block_table() -> dict[str, BlockWord]:
    return {
        spelling: block for block in language().blocks for spelling in (block.word, *block.also)
    }


LONGEST_WORD = 4


def find_fact(words: tuple[str, ...], block: str) -> tuple[FactWord | None, int]:
    """The fact these words open, preferring one of this block's, and how many words it took.

    A word that belongs to other blocks is still found: its line is then read in the same way
    wherever it stands, so that one damaged head does not change how its lines read.
    """
    table = _fact_table()
    elsewhere: tuple[FactWord | None, int] = (None, 0)
    for count in range(min(LONGEST_WORD, len(words)), 0, -1):
        for fact in table.get(words[:count], ()):
            if block in fact.blocks:
                return fact, count
            if elsewhere[0] is None:
                elsewhere = fact, count
    return elsewhere


def find_block(word: str) -> BlockWord | None:
    """The block that this word opens."""
    return _block_table().get(word)


def block_words() -> tuple[str, ...]:
    """All words that open a block."""
    return tuple(_block_table())


def fact_words(block: str) -> tuple[str, ...]:
    """All words of the facts that stand under this block, those of a few kinds last."""
    every = (*language().facts, *_structures_own())
    return tuple(fact.word for fact in every if block in fact.blocks)
