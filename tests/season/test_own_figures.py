"""A figure the gardener gives outranks the catalogue's, and is told as theirs."""

from __future__ import annotations

from datetime import date

import pytest

from plantframe.answers.answers import answers_to
from plantframe.commands.why import about

PLAN = """\
garden Sallow Strip, 2027
  place 52 N, 1 W
bed Strip, 1.2 m x 12 m
frame Gate Net, net frame, in Strip
  bays 1 of 2.4 m
  posts 2x2, 2.4 m, 45 cm down
  grow climbing squash, 3 plants{weight}
"""
TODAY = date(2026, 11, 25)


@pytest.mark.parametrize(
    ("typed", "kg_per_m"),
    [
        (", 7 kg a metre", 7.0),
        (", 7 kg per metre", 7.0),
        (", 5 lb a foot", 5 * 0.45359237 / 0.3048),
        (", 5 lb per foot", 5 * 0.45359237 / 0.3048),
    ],
)
def test_a_weight_of_their_own_is_reckoned_with(typed: str, kg_per_m: float) -> None:
    answers = answers_to(PLAN.format(weight=typed), TODAY)
    assert [slip.name for slip in answers.mistakes] == []
    load = answers.season.frames["Gate Net"].load
    assert load is not None
    assert load.asked.low == load.asked.high == pytest.approx(kg_per_m)


def test_their_weight_can_quiet_the_warning_that_the_book_gives() -> None:
    book = answers_to(PLAN.format(weight=""), TODAY)
    own = answers_to(PLAN.format(weight=", 7 kg a metre"), TODAY)
    assert "too-heavy" in {one.rule.name for one in book.report.found}
    assert "too-heavy" not in {one.rule.name for one in own.report.found}


def test_why_calls_it_your_figure() -> None:
    answers = answers_to(PLAN.format(weight=", 7 kg a metre"), TODAY)
    hanging = next(one for one in about(answers, "Gate Net") if "hangs" in one.title)
    assert "your figure" in hanging.source
