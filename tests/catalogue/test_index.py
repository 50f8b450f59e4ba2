"""The index of names is written beforehand and must be fresh."""

from __future__ import annotations

from plantframe.catalogue.index import made, text_of
from plantframe.catalogue.names import INDEX, index
from plantframe.catalogue.reading import entry_names


def test_the_index_is_what_the_entries_make_it_now() -> None:
    assert INDEX.read_text(encoding="utf-8") == text_of(made()), (
        "run: python -m plantframe.catalogue.index"
    )


def test_the_index_says_what_each_structure_heads_and_takes() -> None:
    entry = index()["structures"]["net frame"]
    assert entry["blocks"] == ["frame"]
    assert {"bays", "posts", "bar", "net"} <= set(entry["facts"])
    assert set(index()["structures"]) == set(entry_names("structure"))


def test_no_two_structures_share_a_synonym() -> None:
    shared = {word: names for word, names in index()["also"]["structure"].items() if len(names) > 1}
    own = set(index()["own"]["structure"]) & set(index()["also"]["structure"])
    assert (shared, own) == ({}, set())
