"""Damaged plans: whatever becomes of a line, the others read as they did, and nothing breaks."""

from __future__ import annotations

import random
from datetime import date
from typing import TYPE_CHECKING, NamedTuple

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plantframe.language.edits import apply
from plantframe.language.files import read_plan
from plantframe.language.reader import read_text
from plantframe.plan.building import build
from plantframe.season.season import Season
from tests.language.texts import MESSY, PLANS, plan_texts

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from pathlib import Path

    from plantframe.language.blocks import Fact
    from plantframe.language.files import Reading

TODAY = date(2027, 3, 1)
BATCHES, EACH = 20, 250
SIGNS = "abzAZ019 .,;:'\"“”()[]{}<>=|/\\-–×½°£#@!?\t\u00a0\u2028\x0c\x00\x7f\u200b😀é"
GARBAGE = (
    "<<<<<<< ours",
    "=======",
    ">>>>>>> theirs",
    "frame",
    "bed Long Bed",
    "  posts",
    "((((((((((",
    '"""""',
    "'" * 9,
    "9" * 300,
    "1/0 ft",
    "read ../../../../etc/passwd",
    "read 2027",
    "garden 0000",
    "  sow 99 Smarch, 1/0, 0/0/0",
    "  place 999 N, 999 W",
    "{{count}} of {length:down} down/deep*",
    "x" * 2_500,
)


class Damaged(NamedTuple):
    """A plan's lines after damage, each with the line it was, or None where it is no more."""

    lines: list[tuple[str, int | None]]

    @property
    def text(self) -> str:
        return "\n".join(line for line, _ in self.lines)


# ---- ways to damage a plan ------------------------------------------------------------------
def touch_a_sign(chance: random.Random, plan: Damaged) -> None:
    """Delete, insert, replace or double a sign, or change two over."""
    place = chance.randrange(len(plan.lines))
    line = plan.lines[place][0]
    at = chance.randrange(len(line) + 1)
    sign = chance.choice(SIGNS)
    new = {
        0: line[:at] + line[at + 1 :],
        1: line[:at] + sign + line[at:],
        2: line[:at] + sign + line[at + 1 :],
        3: line[: at + 1] + line[at : at + 1] + line[at + 1 :],
        4: line[:at] + line[at : at + 2][::-1] + line[at + 2 :],
    }[chance.randrange(5)]
    change(plan, place, new)


def lose_the_indent(chance: random.Random, plan: Damaged) -> None:
    """A line slips to the margin, or away from it."""
    place = chance.randrange(len(plan.lines))
    line = plan.lines[place][0]
    change(plan, place, line.lstrip() if line[:1] == " " else "  " + line)


def cut_a_line(chance: random.Random, plan: Damaged) -> None:
    """A line ends in the middle, or is broken in two."""
    place = chance.randrange(len(plan.lines))
    line = plan.lines[place][0]
    at = chance.randrange(len(line) + 1)
    change(plan, place, line[:at])
    if chance.random() < 0.5:
        plan.lines.insert(place + 1, (line[at:], None))


def lose_a_line(chance: random.Random, plan: Damaged) -> None:
    """A line goes, or comes twice, or two are joined."""
    place = chance.randrange(len(plan.lines) - 1)
    match chance.randrange(3):
        case 0:
            del plan.lines[place]
        case 1:
            plan.lines.insert(place, (plan.lines[place][0], None))
        case _:
            change(plan, place, plan.lines[place][0] + plan.lines[place + 1][0])
            del plan.lines[place + 1]


def paste_garbage(chance: random.Random, plan: Damaged) -> None:
    """Something else is pasted in."""
    plan.lines.insert(chance.randrange(len(plan.lines) + 1), (chance.choice(GARBAGE), None))


def swap_phrases(chance: random.Random, plan: Damaged) -> None:
    """Two words of a line change places."""
    place = chance.randrange(len(plan.lines))
    words = plan.lines[place][0].split(" ")
    one, other = chance.randrange(len(words)), chance.randrange(len(words))
    words[one], words[other] = words[other], words[one]
    change(plan, place, " ".join(words))


def change(plan: Damaged, place: int, new: str) -> None:
    """A line is another from now on, unless it is as it was."""
    old, origin = plan.lines[place]
    plan.lines[place] = new, origin if new == old else None


WAYS: tuple[Callable[[random.Random, Damaged], None], ...] = (
    *(touch_a_sign, touch_a_sign, touch_a_sign, lose_the_indent),
    *(cut_a_line, lose_a_line, paste_garbage, swap_phrases),
)


def damaged(text: str, chance: random.Random) -> Damaged:
    """A plan damaged in one to four places."""
    plan = Damaged([(line, number) for number, line in enumerate(text.split("\n"), start=1)])
    for _ in range(chance.randint(1, 4)):
        chance.choice(WAYS)(chance, plan)
    return plan


# ---- what must hold --------------------------------------------------------------------------
def by_value(fact: Fact) -> tuple[object, ...]:
    """A fact by its word and values."""
    return (fact.word, fact.text, tuple((slot.name, slot.value) for slot in fact.slots))


def facts_by_line(text: str) -> dict[int, list[tuple[object, ...]]]:
    """Line number -> the facts read from it, used or kept, of blocks whose head was read."""
    found: dict[int, list[tuple[object, ...]]] = {}
    read = read_text(text, "2027.plan")
    for fact in (*(fact for block in read.blocks for fact in block.facts), *read.lost):
        found.setdefault(fact.where.line, []).append(by_value(fact))
    return found


def is_head(line: str) -> bool:
    """Does a line begin in column one, and is it no remark?"""
    return line[:1] not in {" ", "\t", "\u00a0", "", "("}


def heads(text: str) -> dict[int, int]:
    """Line number -> the line of the head it stands under."""
    head, found = 0, {}
    for number, line in enumerate(text.split("\n"), start=1):
        head = number if is_head(line) else head
        found[number] = head
    return found


def whole_lines(plan: Damaged, heads_before: dict[int, int]) -> Iterator[tuple[int, int]]:
    """Lines untouched under their head untouched: their number now, and their number before.

    A damaged line in column one may have become a head of its own, so what stands under it is
    left out; so is all of a text with merge marks.
    """
    head: int | None = None
    if any(line.startswith((">>>>>>>", "<<<<<<<")) for line, _ in plan.lines):
        return
    for number, (line, origin) in enumerate(plan.lines, start=1):
        if is_head(line):
            head = origin
        elif origin is not None and heads_before[origin] == head and line.strip():
            yield number, origin


def use_all(reading: Reading) -> Season:
    """Build the plan and work out everything in it."""
    plan, slips = build(reading, TODAY)
    season = Season(plan, TODAY)
    for slip in (*reading.mistakes, *slips):
        assert slip.says
        assert slip.level in {"stop", "ask", "note"}
        for edit in slip.candidates:
            assert apply(edit, reading.sources) != reading.sources, slip.says
    for frame in season.frames.values():
        assert frame.frame.name
        assert frame.load is None or frame.load
        assert frame.push is None or frame.push
        assert frame.steps is None or frame.steps is not None
    for planting in season.plantings:
        assert planting.name
    return season


WHOLE = {text: facts_by_line(text) for text in PLANS}
HEADS = {text: heads(text) for text in PLANS}


@pytest.mark.parametrize("batch", range(BATCHES))
def test_a_damaged_plan_costs_the_damaged_lines_alone(batch: int, tmp_path: Path) -> None:
    chance = random.Random(20_270_301 + batch)
    file = tmp_path / "2027.plan"
    compared = 0
    for number in range(EACH):
        text = PLANS[number % len(PLANS)]
        plan = damaged(text, chance)
        data = plan.text.encode("utf-8", errors="surrogatepass")
        bytes_too = number % 5 == 0
        if bytes_too:  # drop a byte, so that a letter breaks or a line changes
            at = chance.randrange(len(data) + 1)
            data = (
                data[:at] + bytes([chance.randrange(256)]) * chance.randint(0, 2) + data[at + 1 :]
            )
        file.write_bytes(data)
        reading = read_plan(file)
        use_all(reading)
        if bytes_too:
            continue
        found = facts_by_line(plan.text)
        for now, before in whole_lines(plan, HEADS[text]):
            assert found.get(now) == WHOLE[text].get(before), (plan.text, now)
            compared += 1
    assert compared > EACH * 10


@pytest.mark.parametrize("text", [*PLANS, *MESSY, *GARBAGE])
def test_every_plan_however_messy_is_worked_out(text: str, tmp_path: Path) -> None:
    (tmp_path / "2027.plan").write_text(text, encoding="utf-8", errors="surrogatepass")
    assert use_all(read_plan(tmp_path / "2027.plan")).plan.name == "2027"


@settings(max_examples=300)
@given(st.text())
def test_any_text_gives_slips_and_no_more(text: str) -> None:
    found = read_text(text, "any.plan")
    assert all(slip.says for slip in found.mistakes)
    assert len(found.lines) == text.removeprefix("\ufeff").count("\n") + 1


@settings(max_examples=300)
@given(plan_texts())
def test_any_text_of_a_plans_own_words_is_built(text: str) -> None:
    from plantframe.language.files import read_input

    assert use_all(read_input(text)).plan.garden.year


@settings(max_examples=200)
@given(st.binary(max_size=400))
def test_any_bytes_are_read(data: bytes) -> None:
    found = read_text(data.decode("utf-8", errors="replace"), "any.plan")
    assert all(slip.says for slip in found.mistakes)


@settings(max_examples=100)
@given(
    st.lists(st.sampled_from(["(", ")", '"', "'", ",", "2x", "½", " ", "ft", "1/"]), max_size=1990)
)
def test_no_line_takes_long_however_tangled(parts: list[str]) -> None:
    line = "".join(parts)[:1_990]
    found = read_text(f"bed Long Bed\n  {line}\n  sun full\n", "any.plan")
    assert found.blocks[0].facts[-1].word == "sun"
