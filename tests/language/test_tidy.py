"""The tidier: spacing only, twice is once, and nothing is lost."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plantframe.language.reader import Block, Fact, read_text
from plantframe.language.tidy import tidy
from tests.language.texts import MESSY, PLANS, plan_texts

TIDIED = [
    ("bed Long Bed,4 ft x 8 ft\n", "bed Long Bed, 4 ft x 8 ft\n"),
    ("bed   Long Bed ,  4 ft x 8 ft  \n", "bed Long Bed, 4 ft x 8 ft\n"),
    ("bed Long Bed\n\tsun full\n", "bed Long Bed\n  sun full\n"),
    ("bed Long Bed\n        sun full\n", "bed Long Bed\n  sun full\n"),
    ("bed Long Bed\n\u00a0sun full\n", "bed Long Bed\n  sun full\n"),
    ("\n\nbed Long Bed\n\n\n\nbed Low Bed\n\n\n", "bed Long Bed\n\nbed Low Bed\n"),
    ("bed Long Bed\r\n  sun full\r\n", "bed Long Bed\n  sun full\n"),
    ("bed Long Bed", "bed Long Bed\n"),
    ("", ""),
    ("\n \n", ""),
    ("\ufeffbed Long Bed\n", "bed Long Bed\n"),
]


@pytest.mark.parametrize(("before", "after"), TIDIED)
def test_spacing_is_evened_out(before: str, after: str) -> None:
    assert tidy(before) == after


@pytest.mark.parametrize(
    "line",
    [
        "  posts 2x2,8 ft",  # which comma is this? the gardener says
        "  net 2,4 m x 5 m",
        '  ok crowded because "we thin,  by eating"',
        "  (a remark,   as   typed ,)",
        "  posts 2x2, 8 ft (the   straight ones)",
        "  reach 1,85 m",
        "  6½ ft x 8 ft",
    ],
)
def test_what_spacing_may_mean_something_in_stays_as_it_is(line: str) -> None:
    assert tidy(f"bed Long Bed\n{line}\n") == f"bed Long Bed\n{line}\n"


def test_lines_between_merge_marks_and_lines_too_long_stay_as_they_are() -> None:
    marked = "<<<<<<< ours\n\tbar   2x2\n=======\n   bar 2x4\n>>>>>>> theirs\n"
    assert tidy(marked) == marked
    long = "bed   " + "x" * 2_000 + "\n"
    assert tidy(long) == long


def squeezed(text: str) -> str:
    """A text without its white space."""
    return "".join(text.replace("\ufeff", "").split())


def by_value(found: Fact) -> tuple[str, tuple[tuple[str, object], ...], str]:
    """A fact by its word and values, whatever its spacing."""
    slots = tuple(
        (slot.name, squeezed(slot.value) if isinstance(slot.value, str) else repr_of(slot.value))
        for slot in found.slots
    )
    return found.word, slots, squeezed(found.remark)


def repr_of(value: object) -> str:
    """A value in words, without the spacing it was typed with."""
    return squeezed(repr(value)).replace("\\xa0", "").replace("\\t", "")


def read_values(text: str) -> list[tuple[str, str, list[object]]]:
    """Everything read of a text, by value."""
    return [shown(block) for block in read_text(text, "a.plan").blocks]


def shown(block: Block) -> tuple[str, str, list[object]]:
    """A block by value."""
    return block.word, squeezed(block.name), [by_value(one) for one in (block.head, *block.facts)]


@pytest.mark.parametrize("text", [*PLANS, *MESSY])
def test_a_plan_reads_the_same_before_and_after(text: str) -> None:
    assert read_values(tidy(text)) == read_values(text)
    assert squeezed(tidy(text)) == squeezed(text)
    assert tidy(tidy(text)) == tidy(text)


@settings(max_examples=300)
@given(plan_texts())
def test_any_plan_reads_the_same_before_and_after(text: str) -> None:
    assert read_values(tidy(text)) == read_values(text)


@settings(max_examples=500)
@given(st.one_of(st.text(), plan_texts(), st.text(alphabet=" ,\t\n\u00a0()\"'“”2x48ftbed")))
def test_tidying_twice_is_tidying_once_and_loses_nothing(text: str) -> None:
    once = tidy(text)
    assert tidy(once) == once
    assert squeezed(once) == squeezed(text)
