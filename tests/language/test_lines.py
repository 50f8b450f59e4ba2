"""Lines: which nobody can read, and where the phrases of the others stand."""

from __future__ import annotations

import pytest

from plantframe.language.lines import FILE_CAP, LINE_CAP, readable, split, typed_lines
from tests.language.reading import FILE, block, fact, read, said

FINE = "bed Long Bed, 4 ft x 8 ft\n  sun full\n"


def test_only_a_line_feed_ends_a_line() -> None:
    text = "bed Long\u2028Bed\x0c\r\n  sun full\x0b\r\n  had pea in 2025\x85\n"
    assert len(typed_lines(text)) == 4
    assert typed_lines(text)[1] == "  sun full\x0b"


def test_odd_white_space_within_a_line_breaks_no_line_number() -> None:
    text = "garden Quarry Row, 2027\x0c\n(a\u2028remark)\nbed Long\u2029Bed\n  sun  full\n  posts\n"
    found = read(text)
    assert found.blocks[1].facts[0].where.line == 4
    assert [slip.where.line for slip in found.mistakes] == [5]


def test_a_mark_at_the_start_and_windows_line_ends_are_passed_over() -> None:
    plain = read(FINE)
    assert read("\ufeff" + FINE.replace("\n", "\r\n")).blocks == plain.blocks


@pytest.mark.parametrize("indent", [" ", "  ", "\t", "\u00a0", " \t ", "          "])
def test_any_indent_is_an_indent(indent: str) -> None:
    assert [one.word for one in read(f"bed Long Bed\n{indent}sun full\n").blocks[0].facts] == [
        "sun"
    ]


def test_a_line_too_long_costs_itself() -> None:
    text = f"bed Long Bed\n  sun full\n  had {'pea ' * 60_000}\n  runs north-south\n"
    found = read(text)
    assert [one.word for one in found.blocks[0].facts] == ["sun", "runs"]
    (slip,) = found.mistakes
    assert (slip.name, slip.where.line, slip.unread) == ("line-too-long", 3, True)
    assert f"{LINE_CAP:,} is the most I read" in slip.says
    assert len(slip.where.typed) <= 80


def test_a_line_just_short_enough_is_read() -> None:
    line = "  had " + "pea in 2025, " * 150
    assert len(line) <= LINE_CAP
    assert not read(f"bed Long Bed\n{line}\n").mistakes


def test_a_file_too_large_is_not_read_and_says_so() -> None:
    found = read("bed Long Bed\n" + " " * FILE_CAP)
    assert not found.blocks
    (slip,) = found.mistakes
    assert slip.name == "file-too-large"
    assert f"{FILE_CAP:,} is the most I read" in slip.says


def test_a_byte_that_is_no_text_costs_its_line() -> None:
    text = b"bed Long Bed\n  sun full \xbd\n  runs north-south\n".decode("utf-8", errors="replace")
    found = read(text)
    assert [one.word for one in found.blocks[0].facts] == ["runs"]
    (slip,) = found.mistakes
    assert (slip.name, slip.where.line, slip.where.column) == ("bad-byte", 2, 12)
    assert "Type it again; the rest of the file is read." in slip.says


@pytest.mark.parametrize(
    ("text", "spans", "words"),
    [
        (
            "bed A\n<<<<<<< ours\n  sun full\n=======\n  sun half\n>>>>>>> theirs\n  runs N-S\n",
            [("2", "6")],
            ["runs"],
        ),
        ("bed A\n<<<<<<< ours\n  sun full\n", [("2", "2")], ["sun"]),
        ("bed A\n  sun full\n>>>>>>> theirs\n", [("3", "3")], ["sun"]),
        ("bed A\n=======\n  sun full\n", [("2", "2")], ["sun"]),
        (
            "bed A\n<<<<<<< a\n<<<<<<< b\n  sun full\n>>>>>>> c\n  runs N-S\n",
            [("2", "2"), ("3", "5")],
            ["runs"],
        ),
    ],
)
def test_merge_marks_cost_what_stands_between_them(
    text: str, spans: list[tuple[str, str]], words: list[str]
) -> None:
    found = read(text)
    assert [(slip.told["first"], slip.told["last"]) for slip in found.mistakes] == spans
    assert {slip.name for slip in found.mistakes} == {"merge-marks"}
    assert [one.word for one in found.blocks[0].facts] == words


def test_phrases_know_their_columns() -> None:
    typed = "  posts 2x2,  8 ft (the straight ones), 18 in down"
    fit, _ = readable([typed], FILE)
    (line,) = split(fit)
    assert not line.head
    assert line.remark == "(the straight ones)"
    for phrase in line.phrases:
        assert typed[phrase.column - 1 :].startswith(phrase.text.split("  ")[0])
    assert [phrase.column for phrase in line.phrases] == [3, 15, 41]


def test_a_comma_in_a_quoted_reason_parts_nothing() -> None:
    found = fact('ok crowded because "we thin, by eating", Maud')
    assert said(found) == {"rule": "crowded", "reason": "we thin, by eating", "person": "Maud"}


def test_an_inch_sign_opens_no_quotation() -> None:
    found = fact("net 6'6\" x 16', mesh 6\", two widths tied")
    assert said(found)["mesh"] == pytest.approx(0.1524)
    assert said(found)["widths"] == 2


def test_brackets_within_brackets_are_one_remark() -> None:
    found = fact("bar 2x2 (from the old net (the long one) by the gate)")
    assert found.remark == "(from the old net (the long one) by the gate)"
    assert found.whole


def test_a_bracket_that_never_closes_is_a_remark_to_the_end() -> None:
    found = fact("bar 2x2 (from the old net, on edge")
    assert found.remark == "(from the old net, on edge"
    assert "lie" not in said(found)


def test_a_name_is_the_same_whatever_its_spaces_and_remarks() -> None:
    for head in ("bed Long  Bed", "bed Long\u00a0Bed", "bed Long (the old) Bed", 'bed "Long Bed"'):
        assert block(head).name == "Long Bed"


def test_a_head_may_have_a_remark() -> None:
    found = block("bed Long Bed (the one by the gate), 4 ft x 8 ft")
    assert found.name == "Long Bed"
    assert found.head.remark == "(the one by the gate)"
    assert "size" in said(found.head)


def test_an_empty_text_is_an_empty_plan() -> None:
    for text in ("", "\n", "   \n\t\n", "\ufeff", "(only a remark)"):
        found = read(text)
        assert (found.blocks, found.mistakes) == ((), ())
