"""Entries are read when asked for; a broken one is named and costs only itself."""

from __future__ import annotations

import subprocess
import sys
from typing import TYPE_CHECKING

import pytest

from plantframe.catalogue import reading
from plantframe.catalogue.mistakes import CatalogueError
from plantframe.catalogue.reading import plant, source, structure

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from pathlib import Path


@pytest.fixture
def write(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Callable[[str, str], None]]:
    """Put entries of one's own in the place of the structures and plants."""
    monkeypatch.setattr(
        reading, "FOLDERS", dict.fromkeys(("plant", "structure", "material", "source"), tmp_path)
    )
    caches = (reading._plant, reading._structure, reading._material, reading._source)
    for cache in caches:
        cache.cache_clear()

    def put(name: str, text: str) -> None:
        (tmp_path / name).write_text(text, encoding="utf-8")

    yield put
    for cache in caches:
        cache.cache_clear()


def test_a_plant_is_found_by_its_name_and_by_a_name_that_means_it_alone() -> None:
    by_name = plant("runner bean")
    assert by_name is not None
    assert plant("Runner Beans") is by_name
    assert plant("bean") is None  # several
    assert plant("no such thing") is None


def test_a_structure_is_read_once() -> None:
    assert structure("net frame") is structure("net frame")


def test_an_unknown_source_is_none() -> None:
    assert source("no-such-page") is None


def test_reading_one_entry_reads_no_other() -> None:
    program = (
        "from plantframe.catalogue import reading;"
        "read = []; load = reading.load;"
        "reading.load = lambda path: (read.append(path.stem), load(path))[1];"
        "reading.structure('net frame'); print(*read)"
    )
    done = subprocess.run(
        [sys.executable, "-c", program], capture_output=True, text=True, check=True
    )
    assert done.stdout.split() == ["net-frame"]


def test_a_file_that_is_not_laid_out_names_itself_and_the_line(
    write: Callable[[str, str], None],
) -> None:
    write("bad.yaml", "name: bad\nis: [one\nfor: two\n")
    with pytest.raises(CatalogueError) as caught:
        structure("bad")
    assert caught.value.file == "bad.yaml"
    assert caught.value.line >= 2


@pytest.mark.parametrize(
    ("text", "line", "field"),
    [
        ("name: bad\ncolour: red\n", 2, "colour"),
        ("name: bad\nheight: {low: 3, high: 2, unit: m, basis: estimate}\n", 2, "height"),
        ("name: bad\nlatin: Malus\nsun: {value: 3, unit: hands, basis: estimate}\n", 3, "sun"),
        ("name: bad\n\ncare:\n- {id: pinch, do: pinch}\n- {id: tie}\n", 5, "care, tie"),
        ("name: bad\nheight: {value: 2, unit: m, basis: published}\n", 2, "height"),
    ],
)
def test_a_mistake_in_an_entry_names_its_line_and_field(
    write: Callable[[str, str], None], text: str, line: int, field: str
) -> None:
    write("bad.yaml", text)
    with pytest.raises(CatalogueError) as caught:
        plant("bad")
    assert (caught.value.line, caught.value.field) == (line, field)
    assert str(caught.value).startswith(f"bad.yaml, line {line}, {field}: ")


def test_a_broken_entry_leaves_the_others_readable(write: Callable[[str, str], None]) -> None:
    write("bad.yaml", "name: [")
    write("good.yaml", "name: good\n")
    with pytest.raises(CatalogueError):
        plant("bad")
    good = plant("good")
    assert good is not None
    assert good.name == "good"


def test_a_kind_has_from_the_plant_it_is_like_whatever_it_does_not_say(
    write: Callable[[str, str], None],
) -> None:
    write(
        "bean.yaml",
        "name: bean\nalso: [stick bean]\nfamily: Fabaceae\nsays: Tall.\n"
        "height: {value: 2, unit: m, basis: estimate}\nsun: {value: 6, unit: h, basis: estimate}\n",
    )
    write("dwarf.yaml", "name: dwarf\nlike: bean\nheight: {value: 40, unit: cm, basis: estimate}\n")
    dwarf = plant("dwarf")
    assert dwarf is not None
    assert dwarf.height is not None
    assert dwarf.sun is not None
    assert (dwarf.family, dwarf.height.usual, dwarf.sun.usual) == ("Fabaceae", 0.4, 6)
    assert (dwarf.also, dwarf.says) == ((), "")


@pytest.mark.parametrize("like", ["nothing", "ring"])
def test_a_likeness_that_leads_nowhere_or_round_is_said(
    write: Callable[[str, str], None], like: str
) -> None:
    write("ring.yaml", f"name: ring\nlike: {like}\n")
    with pytest.raises(CatalogueError, match="to be like"):
        plant("ring")
