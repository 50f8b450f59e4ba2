"""Files: one, a folder, what `read` brings in, and all that can be wrong with them."""

from __future__ import annotations

import os
from typing import TYPE_CHECKING

import pytest

from plantframe.language.files import (
    DEPTH_CAP,
    NoSuchPlan,
    Reading,
    plans_in,
    read_input,
    read_plan,
)

if TYPE_CHECKING:
    from pathlib import Path

PLACES = "bed Long Bed, 4 ft x 24 ft\nbed Low Bed\n"
LAST = "garden Quarry Row, 2026\nframe Bean Net, net frame, in Long Bed\n  grow pole bean\n"
THIS = (
    "read places\nread 2026 as last year\ngarden Quarry Row, 2027\n"
    "frame Bean Net, net frame, in Low Bed\n"
)


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A garden: places, last year, this year."""
    for name, text in {"places": PLACES, "2026": LAST, "2027": THIS}.items():
        (tmp_path / f"{name}.plan").write_text(text, encoding="utf-8")
    return tmp_path


def names(reading: Reading) -> list[str]:
    """The names of the slips of a reading."""
    return [slip.name for slip in reading.mistakes]


def test_a_plan_brings_in_what_it_reads(folder: Path) -> None:
    reading = read_plan(folder / "2027.plan")
    assert (reading.name, reading.main) == ("2027", "2027.plan")
    assert [text.file for text in reading.texts] == ["2027.plan", "places.plan"]
    assert [block.name for block in reading.blocks] == [
        "Quarry Row",
        "Bean Net",
        "Long Bed",
        "Low Bed",
    ]
    assert not reading.mistakes
    assert set(reading.sources) == {"2027.plan", "places.plan", "2026.plan"}


def test_last_year_is_history_and_its_names_clash_with_none(folder: Path) -> None:
    reading = read_plan(folder / "2027.plan")
    assert [text.file for text in reading.history] == ["2026.plan"]
    assert [block.name for block in reading.blocks].count("Bean Net") == 1


def test_what_last_year_reads_is_history_too(folder: Path) -> None:
    (folder / "2026.plan").write_text("read old\n" + LAST, encoding="utf-8")
    (folder / "old.plan").write_text("bed Old Bed\n", encoding="utf-8")
    reading = read_plan(folder / "2027.plan")
    assert [text.file for text in reading.history] == ["2026.plan", "old.plan"]


def test_a_file_read_twice_is_read_once(folder: Path) -> None:
    (folder / "2027.plan").write_text("read places\n" + THIS, encoding="utf-8")
    reading = read_plan(folder / "2027.plan")
    assert [text.file for text in reading.texts] == ["2027.plan", "places.plan"]


@pytest.mark.parametrize("name", ["places", "places.plan", '"places"', "places (the beds)"])
def test_a_name_to_read_needs_no_ending_and_may_have_quotes(folder: Path, name: str) -> None:
    (folder / "2027.plan").write_text(f"read {name}\n", encoding="utf-8")
    assert [text.file for text in read_plan(folder / "2027.plan").texts][1:] == ["places.plan"]


def test_a_plan_that_is_not_there_names_its_nearest(folder: Path) -> None:
    (folder / "2027.plan").write_text("read plaxes\n", encoding="utf-8")
    (slip,) = read_plan(folder / "2027.plan").mistakes
    assert (slip.name, slip.where.line, slip.where.typed) == ("read-missing", 1, "read plaxes")
    assert "no plan “plaxes” beside this one. Nearest: places." in slip.says


def test_plans_that_read_each_other_are_read_once(folder: Path) -> None:
    (folder / "places.plan").write_text("read 2027\n" + PLACES, encoding="utf-8")
    reading = read_plan(folder / "2027.plan")
    (slip,) = reading.mistakes
    assert slip.name == "read-cycle"
    assert "2027 → places → 2027" in slip.says
    assert (slip.where.file, slip.where.line) == ("places.plan", 1)
    assert len(reading.blocks) == 4


def test_a_plan_that_reads_itself_is_read_once(folder: Path) -> None:
    (folder / "places.plan").write_text("read places\n" + PLACES, encoding="utf-8")
    reading = read_plan(folder / "places.plan")
    assert names(reading) == ["read-cycle"]
    assert len(reading.blocks) == 2


@pytest.mark.parametrize("name", ["../secret", "../../etc/passwd", "/etc/passwd", "sub/../../x"])
def test_reading_stays_inside_the_folder(folder: Path, name: str) -> None:
    (folder.parent / "secret.plan").write_text("bed Secret\n", encoding="utf-8")
    (folder / "2027.plan").write_text(f"read {name}\n", encoding="utf-8")
    reading = read_plan(folder / "2027.plan")
    assert names(reading) == ["read-climbs"]
    assert "`read` stays inside" in reading.mistakes[0].says
    assert not reading.blocks


def test_inside_a_repository_reading_may_climb_to_its_top(folder: Path) -> None:
    (folder / ".git").mkdir()
    deep = folder / "years"
    deep.mkdir()
    (deep / "2027.plan").write_text("read ../places\nread ../../secret\n", encoding="utf-8")
    (folder.parent / "secret.plan").write_text("bed Secret\n", encoding="utf-8")
    reading = read_plan(deep / "2027.plan")
    assert names(reading) == ["read-climbs"]
    assert [block.name for block in reading.blocks] == ["Long Bed", "Low Bed"]


def test_a_link_out_of_the_folder_climbs(folder: Path) -> None:
    (folder.parent / "secret.plan").write_text("bed Secret\n", encoding="utf-8")
    (folder / "link.plan").symlink_to(folder.parent / "secret.plan")
    (folder / "2027.plan").write_text("read link\n", encoding="utf-8")
    assert names(read_plan(folder / "2027.plan")) == ["read-climbs"]


def test_plans_read_plans_only_so_deep(folder: Path) -> None:
    for number in range(DEPTH_CAP + 3):
        (folder / f"{number}.plan").write_text(
            f"read {number + 1}\nbed Bed {number}\n", encoding="utf-8"
        )
    reading = read_plan(folder / "0.plan")
    assert names(reading) == ["read-too-deep"]
    assert f"{DEPTH_CAP} deep at most" in reading.mistakes[0].says
    assert len(reading.blocks) == DEPTH_CAP


@pytest.mark.parametrize("name", ["x" * 3_000, "a\x00b", "nul\x00", "~nobody/x", "."])
def test_a_name_no_file_can_have_is_only_missing(folder: Path, name: str) -> None:
    (folder / "2027.plan").write_text(f"read {name[:1_900]}\n", encoding="utf-8")
    reading = read_plan(folder / "2027.plan")
    assert names(reading) in (["read-missing"], ["read-climbs"])


def test_an_overlay_stands_in_for_the_disk(folder: Path) -> None:
    reading = read_plan(folder / "2027.plan", {"places.plan": "bed Larch Bed\n"})
    assert [block.name for block in reading.texts[1].blocks] == ["Larch Bed"]
    main = read_plan(folder / "2027.plan", {"2027.plan": "bed Only Bed\n"})
    assert [block.name for block in main.blocks] == ["Only Bed"]


def test_an_overlay_may_hold_a_file_that_is_not_there_yet(folder: Path) -> None:
    overlay = {"2027.plan": "read new\n", "new.plan": "bed New Bed\n"}
    reading = read_plan(folder / "2027.plan", overlay)
    assert [block.name for block in reading.blocks] == ["New Bed"]


def test_standard_input_is_a_plan_too(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(folder)
    reading = read_input("read places\nread nothing\nbed Mine\n")
    assert reading.main == "standard input"
    assert [block.name for block in reading.blocks] == ["Mine", "Long Bed", "Low Bed"]
    assert names(reading) == ["read-missing"]
    assert read_input("", {"standard input": "bed Mine\n"}).blocks[0].name == "Mine"


# ---- what a command is given ----------------------------------------------------------------
def test_a_folder_is_each_plan_that_no_other_reads(folder: Path) -> None:
    (folder / "shed.plan").write_text("shed\n", encoding="utf-8")
    assert [path.name for path in plans_in(str(folder))] == ["2027.plan", "shed.plan"]


def test_a_folder_of_plans_in_a_circle_is_its_last(folder: Path) -> None:
    (folder / "places.plan").write_text("read 2027\n" + PLACES, encoding="utf-8")
    (folder / "2026.plan").write_text("read places\n", encoding="utf-8")
    assert [path.name for path in plans_in(str(folder))] == ["places.plan"]


def test_a_plan_needs_no_ending(folder: Path) -> None:
    assert plans_in(str(folder / "2027")) == [folder / "2027.plan"]
    assert plans_in(str(folder / "2027.plan")) == [folder / "2027.plan"]


def test_a_missing_plan_names_its_nearest(folder: Path) -> None:
    with pytest.raises(NoSuchPlan, match=r"there is no plan .*2072\.plan\. Nearest: 2027\.plan"):
        plans_in(str(folder / "2072.plan"))
    with pytest.raises(NoSuchPlan, match="there is no plan"):
        plans_in(str(folder / "nowhere" / "2027.plan"))


def test_a_folder_without_plans_says_so(tmp_path: Path) -> None:
    with pytest.raises(NoSuchPlan, match=r"no plan \(a file named something\.plan\)"):
        plans_in(str(tmp_path))


def test_a_folder_named_as_a_plan_is_no_plan(folder: Path) -> None:
    (folder / "x.plan").mkdir()
    assert "x.plan" not in [path.name for path in plans_in(str(folder))]
    (folder / "2027.plan").write_text("read x\n", encoding="utf-8")
    assert names(read_plan(folder / "2027.plan")) == ["read-missing"]
    with pytest.raises(NoSuchPlan, match="cannot be read"):
        read_plan(folder / "x.plan")


def test_a_plan_nobody_may_read_says_so(folder: Path) -> None:
    file = folder / "places.plan"
    file.chmod(0)
    try:
        if os.access(file, os.R_OK):  # whoever runs this may read everything
            file.unlink()
        reading = read_plan(folder / "2027.plan")
        assert names(reading) in (["read-unread"], ["read-missing"])
        assert reading.blocks
    finally:
        if file.exists():
            file.chmod(0o600)


def test_a_missing_file_says_so_in_one_sentence(tmp_path: Path) -> None:
    with pytest.raises(NoSuchPlan) as error:
        read_plan(tmp_path / "2027.plan")
    said = str(error.value)
    assert "cannot be read" in said
    assert said.endswith(".")
    assert "\n" not in said


def test_a_file_of_ten_million_bytes_is_not_read_whole(folder: Path) -> None:
    huge = folder / "huge.plan"
    huge.write_bytes(b"bed Long Bed\n" * 250_000)
    (slip,) = read_plan(huge).mistakes
    assert slip.name == "file-too-large"
    huge.write_bytes(b"bed Long Bed\n" * 800_000)
    with pytest.raises(NoSuchPlan, match=r"huge\.plan holds 10 million bytes; 1,000,000"):
        read_plan(huge)
    (folder / "2027.plan").write_text("read huge\nbed Mine\n", encoding="utf-8")
    reading = read_plan(folder / "2027.plan")
    assert names(reading) == ["read-unread"]
    assert reading.mistakes[0].says.startswith("huge.plan holds 10 million bytes")
    assert [block.name for block in reading.blocks] == ["Mine"]


def test_a_file_of_more_than_a_million_signs_is_named_with_its_cap(folder: Path) -> None:
    (folder / "2027.plan").write_text("bed Long Bed\n" * 100_000, encoding="utf-8")
    (slip,) = read_plan(folder / "2027.plan").mistakes
    assert slip.name == "file-too-large"
    assert "1,000,000" in slip.says


def test_bytes_that_are_no_text_cost_their_lines(folder: Path) -> None:
    (folder / "2027.plan").write_bytes(
        b"bed Long Bed, 6\xbd ft x 8 ft\nbed Low Bed\n  sun full\n\xff\xfe\x00\n"
    )
    reading = read_plan(folder / "2027.plan")
    assert names(reading) == ["bad-byte", "bad-byte"]
    assert [block.name for block in reading.blocks] == ["Low Bed"]


def test_a_file_saved_in_two_byte_letters_says_how_to_save_it(folder: Path) -> None:
    for encoding in ("utf-16", "utf-32"):
        (folder / "2027.plan").write_bytes("bed Long Bed\n".encode(encoding))
        with pytest.raises(NoSuchPlan, match="save it as UTF-8"):
            read_plan(folder / "2027.plan")


def test_windows_line_ends_tabs_and_a_mark_at_the_start_are_read(folder: Path) -> None:
    (folder / "2027.plan").write_bytes(b"\xef\xbb\xbfbed Long Bed\r\n\tsun full\r\n")
    reading = read_plan(folder / "2027.plan")
    assert not reading.mistakes
    assert reading.blocks[0].facts[0].get("kind") == "full"


def test_an_empty_file_is_an_empty_plan(folder: Path) -> None:
    (folder / "2027.plan").write_bytes(b"")
    reading = read_plan(folder / "2027.plan")
    assert (reading.blocks, reading.mistakes) == ((), ())
