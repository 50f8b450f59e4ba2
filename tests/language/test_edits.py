"""Edits: lines replaced, inserted, deleted, in one file or several, or a clash said."""

from __future__ import annotations

import pytest

from plantframe.language.edits import (
    Edit,
    EditClash,
    LineChange,
    apply,
    delete,
    lengthen,
    rewrite,
)
from plantframe.language.mistakes import Where

PLAN = "garden Quarry Row, 2027\nbed Long Bed\n  sun full\n"
TEXTS = {"2027.plan": PLAN, "places.plan": "bed Low Bed\n"}


def made(*changes: LineChange, texts: dict[str, str] | None = None) -> dict[str, str]:
    """The texts with these changes made."""
    return apply(Edit("try", changes), TEXTS if texts is None else texts)


def test_a_line_is_replaced() -> None:
    out = made(LineChange("2027.plan", 3, "  sun full", "  sun half"))
    assert out["2027.plan"] == PLAN.replace("full", "half")
    assert out["places.plan"] == TEXTS["places.plan"]


def test_a_line_is_deleted() -> None:
    out = made(LineChange("2027.plan", 3, "  sun full", None))
    assert out["2027.plan"] == "garden Quarry Row, 2027\nbed Long Bed\n"


def test_a_line_goes_in_at_the_top_and_at_the_bottom() -> None:
    top = made(LineChange("2027.plan", 0, None, "read places"))
    assert top["2027.plan"].startswith("read places\ngarden Quarry Row")
    bottom = made(LineChange("2027.plan", 3, None, "  runs north-south"))
    assert bottom["2027.plan"] == PLAN + "  runs north-south\n"


def test_a_line_goes_in_behind_a_last_line_that_has_no_end() -> None:
    out = made(LineChange("a.plan", 1, None, "  sun full"), texts={"a.plan": "bed Long Bed"})
    assert out["a.plan"] == "bed Long Bed\n  sun full"


def test_several_changes_are_numbered_by_the_text_before_them() -> None:
    out = made(
        LineChange("2027.plan", 0, None, "read places"),
        LineChange("2027.plan", 2, "bed Long Bed", "bed Larch Bed"),
        LineChange("2027.plan", 3, "  sun full", None),
        LineChange("2027.plan", 3, None, "  sun half"),
        LineChange("2027.plan", 3, None, "  runs north-south"),
    )
    assert out["2027.plan"] == (
        "read places\ngarden Quarry Row, 2027\nbed Larch Bed\n  sun half\n  runs north-south\n"
    )


def test_an_edit_may_touch_several_files() -> None:
    out = made(
        LineChange("2027.plan", 2, "bed Long Bed", "bed Larch Bed"),
        LineChange("places.plan", 1, "bed Low Bed", "bed Lower Bed"),
    )
    assert "Larch" in out["2027.plan"]
    assert out["places.plan"] == "bed Lower Bed\n"


def test_windows_line_ends_stay() -> None:
    texts = {"a.plan": PLAN.replace("\n", "\r\n")}
    out = made(
        LineChange("a.plan", 3, "  sun full", "  sun half"),
        LineChange("a.plan", 3, None, "  runs north-south"),
        texts=texts,
    )
    assert out["a.plan"] == (
        "garden Quarry Row, 2027\r\nbed Long Bed\r\n  sun half\r\n  runs north-south\r\n"
    )


def test_a_mark_at_the_start_of_the_file_stays() -> None:
    texts = {"a.plan": "\ufeff" + PLAN}
    out = made(
        LineChange("a.plan", 1, "garden Quarry Row, 2027", "garden Quarry Row, 2028"), texts=texts
    )
    assert out["a.plan"] == "\ufeff" + PLAN.replace("2027", "2028")


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (
            LineChange("2027.plan", 3, "  sun none", "  sun half"),
            "line 3 of 2027.plan is no longer",
        ),
        (LineChange("2027.plan", 30, "  sun full", None), "line 30 of 2027.plan is no longer"),
        (LineChange("2027.plan", 30, None, "  sun full"), "2027.plan has no line 30"),
        (
            LineChange("2026.plan", 1, None, "read places"),
            "2026.plan is not one of the plan's files",
        ),
    ],
)
def test_an_edit_written_for_another_text_says_so(change: LineChange, said: str) -> None:
    with pytest.raises(EditClash) as clash:
        made(change)
    assert said in str(clash.value)


def test_a_clash_changes_nothing() -> None:
    texts = dict(TEXTS)
    with pytest.raises(EditClash):
        made(
            LineChange("places.plan", 1, "bed Low Bed", "bed Lower Bed"),
            LineChange("2027.plan", 3, "  sun none", None),
            texts=texts,
        )
    assert texts == TEXTS


def test_a_rewrite_finds_its_words_from_the_place_of_the_slip_on() -> None:
    where = Where("a.plan", 4, 14, "  posts 2x2, 2 m, 2 down")
    assert rewrite(where, "2", "2 in").changes[0].new == "  posts 2x2, 2 in m, 2 down"
    where = Where("a.plan", 4, 19, "  posts 2x2, 2 m, 2 down")
    assert rewrite(where, "2", "2 in").changes[0].new == "  posts 2x2, 2 m, 2 in down"


def test_words_are_added_before_a_remark() -> None:
    where = Where("a.plan", 1, 1, "wall West Wall (the old one)")
    assert (
        lengthen(where, ", faces west").changes[0].new == "wall West Wall, faces west (the old one)"
    )
    where = Where("a.plan", 1, 1, "wall West Wall  ")
    assert lengthen(where, ", faces west").changes[0].new == "wall West Wall, faces west"


def test_an_edit_says_what_it_does() -> None:
    where = Where("a.plan", 1, 1, "bed Lond Bed")
    assert rewrite(where, "Lond", "Long").says == "write `Long`"
    assert lengthen(where, ", 1 m x 2 m").says == "add `1 m x 2 m`"
    assert delete(where, "keep line 3").changes == (LineChange("a.plan", 1, "bed Lond Bed", None),)
