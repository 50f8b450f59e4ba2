"""What was learned, and what came of warnings set aside."""

from __future__ import annotations

import pytest

from plantframe.diary.lessons import lessons_of, outcomes_of, tag_of
from tests.diary.diaries import BED, HEAD, NET, season


@pytest.mark.parametrize(
    ("words", "tag"),
    [
        ("never again the same weekend as the tomatoes", "never"),
        ("never buy cheap twine", "never"),
        ("do again, a week sooner", "again"),
        ("the hazel worked", "again"),
        ("three short bays held four plants", ""),
        ("rained against the shed", ""),
    ],
)
def test_a_remark_says_never_or_again_or_neither(words: str, tag: str) -> None:
    assert tag_of(words) == tag


def test_notes_and_log_both_teach_and_keep_their_frame() -> None:
    text = (
        HEAD + BED + NET + "note Bean Net: never again on a Sunday\nnote do again: fewer plants\n"
        "log 2 October, Bean Net, never so late\n"
    )
    found = [(one.tag, one.about, one.words) for one in lessons_of([season(text)])]
    assert found == [
        ("never", "Bean Net", "never again on a Sunday"),
        ("again", "", "do again: fewer plants"),
        ("never", "Bean Net", "never so late"),
    ]


def test_a_warning_set_aside_stands_beside_what_the_log_says_since() -> None:
    text = (
        HEAD + BED + NET + '  ok too-heavy because "we pick small", Isa, 2 June\n'
        "log 1 May, Bean Net, posts set\nlog 9 August, Bean Net, bar 5 cm low\n"
    )
    (one,) = outcomes_of(season(text))
    assert (one.rule, one.because, one.who) == ("too-heavy", "we pick small", "Isa")
    assert one.since == ("bar 5 cm low",)
