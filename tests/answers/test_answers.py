"""What holds of a plan's answers however the plan is written."""

from __future__ import annotations

import random
from datetime import date
from pathlib import Path

import pytest

from plantframe.answers.answers import Answers, answers_of, answers_to
from plantframe.answers.assumed import not_checked

PLANS = Path(__file__).parent.parent.parent / "plans"
TODAY = date(2026, 11, 25)
MAIN = PLANS / "quarry-row" / "2027.plan"


def whole() -> str:
    """The main demo garden in one text."""
    files = ("places", "shed", "2027")
    texts = [(MAIN.parent / f"{name}.plan").read_text(encoding="utf-8") for name in files]
    lines = [line for line in "\n".join(texts).split("\n") if not line.startswith("read ")]
    return "\n".join(lines)


def blocks(text: str) -> list[str]:
    """The text in its blocks."""
    out: list[str] = []
    for line in text.split("\n"):
        if out and (line[:1] in {" ", "(", ""} and line.strip()):
            out[-1] += "\n" + line
        elif line.strip():
            out.append(line)
    return out


def found(answers: Answers) -> list[tuple[str, str, str, str]]:
    """Every finding: rule, block, subject, what is said."""
    return sorted(
        (one.rule.name, one.finding.block, one.finding.subject, one.words(answers.shown).says)
        for one in answers.report.found
    )


@pytest.mark.parametrize("seed", range(6))
def test_findings_do_not_depend_on_the_order_of_blocks(seed: int) -> None:
    parts = blocks(whole())
    random.Random(seed).shuffle(parts)
    assert found(answers_to("\n".join(parts) + "\n", TODAY)) == found(answers_to(whole(), TODAY))


@pytest.mark.parametrize("seed", range(6))
def test_findings_do_not_depend_on_the_order_of_facts(seed: int) -> None:
    dice = random.Random(seed)
    parts = []
    for part in blocks(whole()):
        head, *facts = part.split("\n")
        if not head.startswith("garden"):
            dice.shuffle(facts)
        parts.append("\n".join([head, *facts]))
    assert found(answers_to("\n".join(parts) + "\n", TODAY)) == found(answers_to(whole(), TODAY))


def test_an_unrelated_block_changes_no_finding() -> None:
    more = whole() + "\nbed Far Bed, 1 m x 3 m\n  sun full\npath Far Path, 1.2 m wide\n"
    assert found(answers_to(more, TODAY)) == found(answers_to(whole(), TODAY))


def test_the_folder_and_the_one_text_say_the_same_of_its_frames() -> None:
    folder = {one[:2] for one in found(answers_of(MAIN, TODAY))}
    text = {one[:2] for one in found(answers_to(whole(), TODAY))}
    # last year's plan, which only the folder reads, knows what grew where
    assert text <= folder
    assert {name for name, _ in folder - text} <= {"same-family-too-soon", "fixed-frame-pins-crop"}


def test_an_edit_tried_reads_only_once_and_leaves_the_rest_as_it_was() -> None:
    answers = answers_of(MAIN, TODAY)
    heavy = next(one for one in answers.advice.active if one.rule.name == "too-heavy")
    edit = heavy.candidates(1)[0]
    after = answers.tried(edit)
    assert after is answers.tried(edit)
    assert after is not None
    same = [name for name in answers.season.frames if name != "Squash Net"]
    assert all(after.season.frames[name] is answers.season.frames[name] for name in same)
    assert after.season.frames["Squash Net"] is not answers.season.frames["Squash Net"]


def test_what_is_kept_of_a_frame_is_what_reading_it_afresh_gives() -> None:
    answers = answers_of(MAIN, TODAY)
    for one in answers.advice.active:
        for edit in one.candidates(3):
            after = answers.tried(edit)
            if after is None:
                continue
            afresh = Answers(answers.source, TODAY, after.overlay)
            assert found(after) == found(afresh)


def test_a_plant_whose_kind_is_not_said_is_told_among_what_was_not_checked() -> None:
    text = "garden Fold End, 2027\n  place 52 N, 1 W\ncover Fleece, low tunnel\n"
    one = answers_to(f"{text}  grow courgette, 3 plants\n", TODAY)
    assert "courgette in Fleece (which kind is not said)" in not_checked(one)
    sure = answers_to(f"{text}  grow bush courgette, 3 plants\n", TODAY)
    assert not [line for line in not_checked(sure) if "courgette" in line]
