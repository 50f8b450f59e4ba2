"""Writes names.json, the index of all names: python -m plantframe.catalogue.index."""

from __future__ import annotations

import json
import sys
from typing import TYPE_CHECKING

from plantframe.catalogue.mistakes import CatalogueError
from plantframe.catalogue.names import INDEX, Index, tidy
from plantframe.catalogue.reading import FOLDERS, files, load
from plantframe.catalogue.structure_page import structure_from

if TYPE_CHECKING:
    from collections.abc import Iterator

KINDS = ("plant", "structure", "material")


def made() -> Index:
    """The index as the entries would have it now.

    A file that cannot be read or has no name is left out; the checks say so.
    """
    index: Index = {"own": {}, "also": {}, "group": {}, "structures": {}}
    for kind in KINDS:
        for name, raw in _entries(kind):
            _enter(index["own"], kind, name, name)
            for word in _words(raw, "also"):
                _enter(index["also"], kind, word, name)
            for word in _words(raw, "part of"):
                _enter(index["group"], kind, word, name)
    for name, raw in _entries("structure"):
        try:
            structure = structure_from(raw, name)
        except CatalogueError:
            continue
        index["structures"][name] = {
            "blocks": list(structure.blocks),
            "facts": {fact.word: fact.shape for fact in structure.facts.values()},
            "words": {
                fact.word: (fact.shape, fact.help, fact.example)
                for fact in structure.facts.values()
                if fact.shape
            },
        }
    return index


def text_of(index: Index) -> str:
    """The index as it is written: sorted, so that one changed entry changes few lines."""
    return json.dumps(index, indent=1, sort_keys=True, ensure_ascii=False) + "\n"


def _entries(kind: str) -> Iterator[tuple[str, dict[str, object]]]:
    for path in files(kind):
        try:
            raw = load(path)
        except CatalogueError:
            continue
        if isinstance(raw, dict) and isinstance(raw.get("name"), str):
            yield raw["name"], raw


def _words(raw: dict[str, object], key: str) -> list[str]:
    words = raw.get(key) or []
    return [words] if isinstance(words, str) else [str(word) for word in words]  # type: ignore[attr-defined]


def _enter(names: dict[str, dict[str, list[str]]], kind: str, word: str, name: str) -> None:
    entries = names.setdefault(kind, {}).setdefault(tidy(word), [])
    if name not in entries:
        entries.append(name)


def main() -> int:
    """Write the index beside this file."""
    INDEX.write_text(text_of(made()), encoding="utf-8")
    sys.stdout.write(f"{INDEX.name}: {sum(len(files(kind)) for kind in FOLDERS)} entries\n")
    return 0


if __name__ == "__main__":
    sys.exit(main())
