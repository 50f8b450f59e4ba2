"""How much work reading is: longer plans in proportion, tangled lines not for ever."""

from __future__ import annotations

import cProfile
import time
from typing import TYPE_CHECKING

import pytest

from plantframe.language import matching, phrases, reader
from plantframe.language.lines import PART_CAP
from tests.language.reading import read
from tests.language.texts import many_lines

if TYPE_CHECKING:
    from plantframe.language.blocks import Text


def forget() -> None:
    """Forget all that was read, as a program that just started."""
    reader._read_part.cache_clear()
    phrases.read_phrase.cache_clear()
    matching._matched.clear()


def calls(text: str) -> tuple[int, Text]:
    """The functions called to read a text: the same on every machine, however busy."""
    forget()
    profile = cProfile.Profile()
    found = profile.runcall(reader.read_text, text, "long.plan")
    return sum(entry.callcount for entry in profile.getstats()), found


def test_a_plan_ten_times_as_long_takes_hardly_more_than_ten_times() -> None:
    short, _ = calls(many_lines(1_000))
    long, found = calls(many_lines(10_000))
    assert len(found.lines) == 10_001
    assert not found.mistakes
    assert long < 12 * short


def test_a_household_plan_is_not_read_twice_over() -> None:
    # some 350 calls for a line that is like no other; twice that would be a slip in the reading
    text = many_lines(300)
    count, found = calls(text)
    assert not found.mistakes
    assert count < 700 * 300


TANGLES = [
    *("½", "1 ", "donw ", "18 in donw ", "' ", "'a ", '"', "(", "(a) ", "1/1 ", "2x", "a and "),
    *("in a ", "1, ", "at 1, ", "1 to ", "north of ", "a foot and a half ", "because ", "9d ×"),
]


@pytest.mark.parametrize("tangle", TANGLES)
@pytest.mark.parametrize("word", ["posts ", "wires at ", "grow ", "ok x because ", "person ", ""])
def test_no_line_takes_long_however_it_is_tangled(word: str, tangle: str) -> None:
    line = f"  {word}{tangle * 2_000}"[:1_990]
    text = f"frame Bean Net, net frame\n{line}\n  bar 2x2\n"
    forget()
    start = time.perf_counter()
    found = reader.read_text(text, "long.plan")
    # some hundredths of a second, and minutes where a pattern tries every way to split a line
    assert time.perf_counter() - start < 10.0
    assert found.blocks[0].facts[-1].word == "bar"


def test_a_line_of_more_parts_than_anybody_types_costs_itself() -> None:
    for line, what in (
        ("  tools " + "saw, " * (PART_CAP + 1), "151 parts"),
        ("  tools " + "saw " * (PART_CAP + 1), "152 words without a comma"),
    ):
        found = read(f"garden Quarry Row, 2027\n{line}\n  dog\n")
        (slip,) = found.mistakes
        assert slip.name == "line-too-long"
        assert f"this line has {what}; {PART_CAP} is the most I read" in slip.says
        assert [one.word for one in found.blocks[0].facts] == ["dog"]


def test_a_note_may_be_as_long_as_a_line() -> None:
    found = read("note " + "never again " * 160 + "\nlog 2 May, " + "and then " * 200 + "\n")
    assert not found.mistakes
    assert len(found.blocks) == 2
