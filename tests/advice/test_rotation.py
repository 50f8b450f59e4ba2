"""Two crops of one family on a bed that had it lately are one message, and one of each is one."""

from __future__ import annotations

from datetime import date

import pytest

from plantframe.answers.answers import answers_to

PLAN = """\
garden Fold End, 2027
  place 52 N, 1 W
  frost last 6 May, first 12 October
  lines marked 2 March
bed East Bed, 1.2 m x 8 m
  sun full
  had pea in 2026
frame Bean Net, net frame, in East Bed
  bays 2 of 1.8 m
  posts 38x38 mm, 2.4 m, 45 cm down, 1.95 m up
  bar 38x38 mm
  grow {first}
  grow runner bean, 10 plants, sow 20 May
"""


@pytest.mark.parametrize(
    ("first", "said"),
    [
        ("pole bean, 10 plants, sow 20 May", ["Pole bean"]),
        ("cucumber, 2 plants, plant out 10 June", ["Runner bean"]),
    ],
)
def test_a_family_is_named_once_at_the_first_of_it(first: str, said: list[str]) -> None:
    one = answers_to(PLAN.format(first=first), date(2026, 11, 25))
    found = [each for each in one.report.found if each.rule.name == "same-family-too-soon"]
    assert [each.words(one.shown).says.split(" on ")[0] for each in found] == said
