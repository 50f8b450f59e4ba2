"""Text on paper: nothing unprintable, nothing that a page would take for its own."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.paper.text import escaped, folded, plain, sentence, width_em


@pytest.mark.parametrize(
    ("typed", "printed"),
    [
        ("Bean\x00 Net", "Bean Net"),
        ("a\u202eb", "a b"),
        ("two\nlines", "two lines"),
        ("\ud800", ""),
        ("½ in × 4 ft", "½ in × 4 ft"),
    ],
)
def test_what_no_printer_has_a_letter_for_is_taken_out(typed: str, printed: str) -> None:
    assert plain(typed) == printed


@given(st.text())
def test_no_sign_of_a_page_comes_through(typed: str) -> None:
    assert not set("<>\"'") & set(escaped(typed))


@given(st.text(max_size=60), st.floats(4, 40))
def test_folding_loses_no_letter_and_keeps_to_the_width(typed: str, room: float) -> None:
    lines = folded(plain(typed), room)
    assert "".join("".join(lines).split()) == "".join(typed_letters(typed))
    assert all(width_em(line) <= room or len(line) == 1 for line in lines)


def typed_letters(typed: str) -> list[str]:
    return plain(typed).split()


def test_a_broad_letter_takes_more_room_than_a_narrow_one() -> None:
    assert width_em("m") > width_em("o") > width_em("i")


def test_a_sentence_begins_with_a_capital_and_has_no_stop() -> None:
    assert sentence("thread the net.") == "Thread the net"
