"""Checks of all the data: python -m plantframe.catalogue.checks prints what is wrong."""

from __future__ import annotations

import re
import sys
from collections.abc import Mapping
from typing import TYPE_CHECKING, Final

from plantframe.catalogue.index import made, text_of
from plantframe.catalogue.mistakes import CatalogueError
from plantframe.catalogue.names import INDEX, stem_of
from plantframe.catalogue.reading import (
    FOLDERS,
    entry_names,
    files,
    material,
    plant,
    plants_named,
    source,
)
from plantframe.catalogue.reading import structure as structure_named
from plantframe.catalogue.sourced import Sourced, printed_disagrees
from plantframe.catalogue.structure_checks import structure_faults

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from pathlib import Path

    from plantframe.catalogue.entries import Source, Structure

# What a plant's figure must measure; a word (twines, hardy) fits anywhere but here.
QUANTITIES: Final = {
    "grip": ("m",),
    "height": ("m",),
    "wet_weight": ("kg/m",),
    "weight_by_area": ("kg/m2",),
    "sun": ("h",),
    "plants_per_metre": ("per m",),
    "apart": ("m",),
    "rows_apart": ("m",),
    "soil": ("C",),
    "soil_best": ("C",),
    "harvest": (
        "days",
        "years",
    ),
    "frost_margin": ("days",),
    "fruit_across": ("m",),
    "fruit_weight": ("kg",),
    "mesh": ("m",),
    "rotation": ("years",),
}
SOURCE_KINDS: Final = (
    "agency",
    "book",
    "botanic garden",
    "database",
    "encyclopaedia",
    "extension",
    "government",
    "grower",
    "guideline",
    "handbook",
    "magazine",
    "newspaper",
    "paper",
    "society",
    "standard",
    "trade",
    "university",
)
_ADDRESS = re.compile(r"https?://|www\.|\.(?:com|org|net|edu|gov)\b", re.IGNORECASE)
# Words that promise what no table can: they are never said of a structure or a plant.
_PROMISE = re.compile(r"\b(?:safe|approved|certified|guaranteed|passes)\b", re.IGNORECASE)


def faults() -> list[str]:
    """Everything that is wrong with the data, each in one sentence that names its file."""
    found = [f"{path.name}: {says}" for path, says in _each()]
    found += [f"{INDEX.name}: it is out of date; run python -m plantframe.catalogue.index"] * (
        not INDEX.is_file() or INDEX.read_text(encoding="utf-8") != text_of(made())
    )
    found += unused_sources()
    return found


def _each() -> Iterator[tuple[Path, str]]:
    readers: dict[str, Callable[[str], object]] = {
        "plant": plant,
        "structure": structure_named,
        "material": material,
        "source": source,
    }
    for kind, folder in FOLDERS.items():
        for path in files(kind):
            yield from ((path, says) for says in text_faults(path))
            try:
                entry = readers[kind](path.stem)
            except CatalogueError as error:
                yield path, str(error)
                continue
            yield from ((path, says) for says in entry_faults(kind, entry, folder / path.name))


def entry_faults(kind: str, entry: object, path: Path) -> Iterator[str]:
    """What is wrong with one entry that could be read."""
    name = str(getattr(entry, "key", None) or getattr(entry, "name", ""))
    if kind != "source" and stem_of(name) != path.stem:
        yield f"the entry is called {name!r}, the file {path.name!r}"
    if kind == "source" and name != path.stem:
        yield f"the source's key is {name!r}, the file {path.name!r}"
    yield from figure_faults(entry)
    checks: dict[str, Callable[[object], Iterator[str]]] = {
        "structure": _structure,
        "plant": _plant,
        "source": _source,
    }
    if kind in checks:
        yield from checks[kind](entry)


def _structure(entry: object) -> Iterator[str]:
    structure: Structure = entry  # type: ignore[assignment]
    yield from structure_faults(structure)
    for suited in structure.suits:
        if not plants_named(suited.plant):
            yield f"for: there is no plant {suited.plant!r}"


def _plant(entry: object) -> Iterator[str]:
    for name, bases in QUANTITIES.items():
        value = getattr(entry, name)
        if value is not None and not value.is_word and value.base.split(" from ")[0] not in bases:
            yield f"{name.replace('_', ' ')} is in {value.unit!r}, no {' or '.join(bases)}"


def _source(entry: object) -> Iterator[str]:
    found: Source = entry  # type: ignore[assignment]
    if found.kind not in SOURCE_KINDS:
        yield f"its kind is {found.kind!r}, none of {', '.join(SOURCE_KINDS)}"


def figure_faults(entry: object) -> Iterator[str]:
    """A published figure has a source that is here, and agrees with what was printed."""
    for where, value in figures_in(entry):
        if value.source and source(value.source) is None:
            yield f"{where}: there is no source {value.source!r}"
        if says := printed_disagrees(value):
            yield f"{where}: {says}"


def figures_in(entry: object, where: str = "") -> Iterator[tuple[str, Sourced]]:
    """Every value of an entry, with the words that lead to it."""
    if isinstance(entry, Sourced):
        yield where, entry
        for one in entry.also:
            yield from figures_in(one, f"{where}, also")
    elif hasattr(entry, "FIELDS"):
        for one_field in entry.FIELDS:
            name = one_field.rstrip("_").replace("_", " ")
            yield from figures_in(getattr(entry, one_field), _joined(where, name))
    elif isinstance(entry, Mapping):
        for key, one in entry.items():
            yield from figures_in(one, _joined(where, str(key)))
    elif isinstance(entry, tuple):
        for one in entry:
            yield from figures_in(one, _joined(where, getattr(one, "id", "")))


def _joined(*words: str) -> str:
    return ", ".join(word for word in words if word)


def sources_of(entry: object) -> set[str]:
    """The keys of every source an entry names, its figures' and its own."""
    keys: set[str] = {value.source for _, value in figures_in(entry) if value.source}
    for name in ("emergence", "training", "harm"):
        found = getattr(entry, name, None)
        each = found if isinstance(found, tuple) else (found,)
        keys |= {one.source for one in each if getattr(one, "source", None)}
    return keys


def unused_sources() -> list[str]:
    """Sources that no entry names."""
    used: set[str] = set()
    kinds: dict[str, Callable[[str], object]] = {
        "plant": plant,
        "structure": structure_named,
        "material": material,
    }
    for kind, read in kinds.items():
        for name in entry_names(kind):
            try:
                used |= sources_of(read(name))
            except CatalogueError:
                continue  # said already, with its line
    return [
        f"{key}.yaml: no entry names this source"
        for key in entry_names("source")
        if key not in used
    ]


def text_faults(path: Path) -> Iterator[str]:
    """What can be seen in the text alone: a word twice under one head, an address, a promise."""
    import yaml

    text = path.read_text(encoding="utf-8")
    if address := _ADDRESS.search(text):
        yield f"it holds an address, {address[0]!r}"
    if promise := _PROMISE.search(text):
        yield f"it promises too much with {promise[0]!r}"
    try:
        root = yaml.compose(text, Loader=yaml.SafeLoader)
    except yaml.YAMLError:
        return  # said where the entry is read
    yield from _twice(root)


def _twice(node: object) -> Iterator[str]:
    import yaml

    if isinstance(node, yaml.MappingNode):
        seen: set[str] = set()
        for key, value in node.value:
            if key.value in seen:
                yield f"line {key.start_mark.line + 1}: {key.value!r} stands here twice"
            seen.add(key.value)
            yield from _twice(value)
    elif isinstance(node, yaml.SequenceNode):
        for one in node.value:
            yield from _twice(one)


def main() -> int:
    """Print what is wrong; 1 where anything is."""
    found = faults()
    for says in found:
        sys.stdout.write(f"{says}\n")
    sys.stdout.write(f"{len(found)} to mend\n" if found else "nothing to mend\n")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
