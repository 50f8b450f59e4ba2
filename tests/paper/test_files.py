"""Prints on the disk: in the folder that was named, and over nothing that somebody else made."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.paper.drawing import MADE_BY
from plantframe.paper.files import Names, NotWrittenError, write_all

OURS = f"<!DOCTYPE html>\n{MADE_BY}\n<html></html>"


@given(st.lists(st.text(max_size=80), min_size=1, max_size=8))
def test_no_name_leads_out_of_its_folder_and_none_comes_twice(names: list[str]) -> None:
    called = Names()
    made = [called.of(name, "building", ending="html") for name in names]
    assert len(set(made)) == len(made)
    for name in made:
        assert Path(name).name == name
        assert not name.startswith(".")
        assert not set('/\\:*?"<>|\0') & set(name)


def test_a_name_of_signs_alone_still_gets_a_file() -> None:
    called = Names()
    assert [called.of("<>", ending="svg"), called.of("…", ending="svg")] == [
        "print.svg",
        "print-2.svg",
    ]


def test_an_older_print_is_written_over(tmp_path: Path) -> None:
    write_all(tmp_path / "new" / "folder", [("a.html", OURS)])
    (path,) = write_all(tmp_path / "new" / "folder", [("a.html", OURS + "later")])
    assert path.read_text("utf-8").endswith("later")
    assert [one.name for one in path.parent.iterdir()] == ["a.html"]


def test_a_file_of_somebody_elses_stays_and_nothing_else_is_written(tmp_path: Path) -> None:
    (tmp_path / "b.html").write_text("my own notes", encoding="utf-8")
    with pytest.raises(NotWrittenError, match=r"b\.html is there already"):
        write_all(tmp_path, [("a.html", OURS), ("b.html", OURS)])
    assert (tmp_path / "b.html").read_text("utf-8") == "my own notes"
    assert not (tmp_path / "a.html").exists()


def test_a_link_is_never_written_through(tmp_path: Path) -> None:
    other = tmp_path / "other.html"
    other.write_text(OURS, encoding="utf-8")
    folder = tmp_path / "prints"
    folder.mkdir()
    (folder / "a.html").symlink_to(other)
    with pytest.raises(NotWrittenError):
        write_all(folder, [("a.html", "new")])
    assert other.read_text("utf-8") == OURS


def test_a_file_in_place_of_the_folder_is_said_in_a_sentence(tmp_path: Path) -> None:
    (tmp_path / "prints").write_text("x", encoding="utf-8")
    with pytest.raises(NotWrittenError, match="is a file"):
        write_all(tmp_path / "prints", [("a.html", OURS)])
