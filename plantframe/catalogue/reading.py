"""The catalogue as it is used: an entry is read when it is asked for, and once."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING, Final, TypeVar

from plantframe import kept
from plantframe.catalogue.material_page import material_from, source_from
from plantframe.catalogue.mistakes import CatalogueError
from plantframe.catalogue.names import index, named, singular_forms, stem_of, tidy
from plantframe.catalogue.plant_page import NOT_INHERITED, plant_from
from plantframe.catalogue.structure_page import structure_from

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator

    import yaml

    from plantframe.catalogue.entries import Material, Plant, Source, Structure

E = TypeVar("E")

HERE: Final = Path(__file__).parent
FOLDERS: Final = {
    "plant": HERE / "plants",
    "structure": HERE / "structures",
    "material": HERE / "materials",
    "source": HERE / "sources",
}


def file_of(kind: str, name: str) -> Path:
    """Where the entry of that name would stand: "runner bean" in plants/runner-bean.yaml."""
    return FOLDERS[kind] / f"{stem_of(name)}.yaml"


def files(kind: str) -> list[Path]:
    """The files of a kind that are there."""
    return sorted(FOLDERS[kind].glob("*.yaml"))


def entry_names(kind: str) -> list[str]:
    """The names of every entry of a kind, by the index; of sources, their keys."""
    if kind == "source":
        return [path.stem for path in files(kind)]
    return sorted({name for names in index()["own"].get(kind, {}).values() for name in names})


def plant(name: str) -> Plant | None:
    """The plant of that name, or of a name that means it alone; None where there is none.

    Raises CatalogueError where its file cannot be read.
    """
    found = _the_one("plant", name)
    return _plant(found) if found else None


def structure(name: str) -> Structure | None:
    """The structure of that name, or of a name that means it alone; None where there is none."""
    found = _the_one("structure", name)
    return _structure(found) if found else None


def material(name: str) -> Material | None:
    """The material of that name, or of a name that means it alone; None where there is none."""
    found = _the_one("material", name)
    return _material(found) if found else None


def source(key: str) -> Source | None:
    """The source with that key; None where there is none."""
    return _source(key) if (FOLDERS["source"] / f"{key}.yaml").is_file() else None


def plants_named(text: str) -> list[str]:
    """The plants a word can mean: none, one, or several that have to be asked about.

    Capitals, hyphens and plurals do not matter: "Runner Beans" is runner bean; "beans" is
    every kind of bean.
    """
    return list(named("plant", text))


def structures_named(text: str) -> list[str]:
    """The structures a word can mean, as for plants."""
    return list(named("structure", text))


def materials_named(text: str) -> list[str]:
    """The materials a word can mean, as for plants."""
    return list(named("material", text))


def near(name: str, among: Iterable[str]) -> list[str]:
    """Up to four of the names that look like the one typed, nearest first."""
    return list(_near(name, tuple(among)))


@lru_cache(maxsize=1024)
def _near(name: str, among: tuple[str, ...]) -> tuple[str, ...]:
    from difflib import get_close_matches  # takes longer to load than a short plan to read

    by_key = {tidy(one): one for one in reversed(among)}
    found: dict[str, None] = {}
    for form in singular_forms(tidy(name)):
        for key in get_close_matches(form, by_key, n=4, cutoff=0.72):
            found[by_key[key]] = None
    return tuple(found)[:4]


@lru_cache(maxsize=1024)
def _the_one(kind: str, name: str) -> str | None:
    """The stem of the file that a name means alone."""
    if file_of(kind, name).is_file():
        return stem_of(name)
    found = named(kind, name)
    return stem_of(found[0]) if len(found) == 1 else None


@lru_cache(maxsize=512)
def _plant(stem: str) -> Plant:
    path = FOLDERS["plant"] / f"{stem}.yaml"
    return _read(path, lambda raw: plant_from(_with_likeness(raw, path), path.name))


@lru_cache(maxsize=256)
def _structure(stem: str) -> Structure:
    path = FOLDERS["structure"] / f"{stem}.yaml"
    return _read(path, lambda raw: structure_from(raw, path.name))


@lru_cache(maxsize=64)
def _material(stem: str) -> Material:
    path = FOLDERS["material"] / f"{stem}.yaml"
    return _read(path, lambda raw: material_from(raw, path.name))


@lru_cache(maxsize=256)
def _source(key: str) -> Source:
    path = FOLDERS["source"] / f"{key}.yaml"
    return _read(path, lambda raw: source_from(raw, path.name))


def _with_likeness(raw: object, path: Path, below: tuple[str, ...] = ()) -> object:
    """Fill a kind in from the plant it is like."""
    if not isinstance(raw, dict) or "like" not in raw:
        return raw
    like = str(raw["like"])
    base_path = file_of("plant", like)
    if like in below or not base_path.is_file():
        raise CatalogueError(path.name, 0, "like", f"there is no plant {like!r} to be like")
    base = _with_likeness(load(base_path), base_path, (*below, str(raw.get("name"))))
    if not isinstance(base, dict):
        raise CatalogueError(base_path.name, 0, "", "it wants words with values under them")
    return {**{k: v for k, v in base.items() if k not in NOT_INHERITED}, **raw}


def _read(path: Path, make: Callable[[object], E]) -> E:
    """Make an entry of a file, and give a mistake in it its line."""
    try:
        return make(load(path))
    except CatalogueError as error:
        if error.line or error.file != path.name:
            raise
        line = _line_of(path, error.field)
        raise CatalogueError(error.file, line, error.field, error.says) from None


def load(path: Path) -> object:
    """The file as plain words, figures, lists and mappings. Raises CatalogueError."""
    before = kept.read(path)
    if before is not None:
        return before
    value = _parsed(path)
    kept.write(path, value)
    return value


def _parsed(path: Path) -> object:
    import yaml

    loader = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
    try:
        text = path.read_text(encoding="utf-8")
        return yaml.load(text, Loader=loader)  # noqa: S506 - both loaders make plain values only
    except (OSError, UnicodeDecodeError) as error:
        raise CatalogueError(path.name, 0, "", "the file cannot be read") from error
    except yaml.YAMLError as error:
        mark = getattr(error, "problem_mark", None)
        line = mark.line + 1 if mark else 0
        says = "a bracket, a quote, a colon or a space is out of place here or just above"
        raise CatalogueError(path.name, line, "", says) from error


def _line_of(path: Path, field: str) -> int:
    """The line of a file that the words of a field lead to, as far as they lead."""
    import yaml

    try:
        node: object = yaml.compose(path.read_text(encoding="utf-8"), Loader=yaml.SafeLoader)
    except (OSError, UnicodeDecodeError, yaml.YAMLError):
        return 0
    line = 1
    for word in field.split(", ") if field else ():
        if isinstance(node, yaml.MappingNode):
            pairs = {key.value: (key, value) for key, value in node.value}
        elif isinstance(node, yaml.SequenceNode):
            pairs = {name: (one, one) for name, one in _numbered(node)}
        else:
            return line
        if word not in pairs:
            return line
        key, node = pairs[word]
        line = key.start_mark.line + 1
    return line


def _numbered(node: yaml.SequenceNode) -> Iterator[tuple[str, yaml.Node]]:
    """The parts of a list under their ids, or their numbers from 1."""
    import yaml

    for number, one in enumerate(node.value, 1):
        name = str(number)
        if isinstance(one, yaml.MappingNode):
            name = next((value.value for key, value in one.value if key.value == "id"), name)
        yield name, one
