"""No offer is shown that was not pasted, read again and found to cure without waking worse."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from plantframe.advice.findings import severity
from plantframe.answers.answers import Answers, answers_of, answers_to
from plantframe.answers.offers import offers_for, offers_for_slip

PLANS = Path(__file__).parent.parent.parent / "plans"
TODAY = date(2026, 11, 25)
# Typed as people type, slips and all; an invented garden.
TYPED = """\
garden Sedge Corner, 2027
  place 52.1 N, 1.4 W
  frost last 6 May, first 12 October
  lines marked 2 March

bed Long Bed, 4 ft x 24 ft, runs north-south
bed Bed 3, 4' x 12'

frame Bean Net, net frame, in Lond Bed
  bays 2 of 8 ft
  posts 2x2, 8 ft, 18 down, 6½ ft up
  bar 2x2
  grow runer bean, 30 plants, sow 31 June

frame Late Net, in Bed 3
  posts 2x2, 6 ft, 1 ft down
  grow peas, sow mid March

frame Gate Net, net frame, in Bed 3
  bays 1 of 8 ft
  posts 2x2, 8 ft, 18 in down, 7 ft up
  bar 2x2
  bar 2x4
  net 5 ft x 8 ft
  grow climbing squash, 3 plants, sow 20 April
bays 2 of 4 ft
"""


def plans() -> list[tuple[str, Answers]]:
    return [
        ("quarry-row", answers_of(PLANS / "quarry-row" / "2027.plan", TODAY)),
        ("tussock-flat", answers_of(PLANS / "tussock-flat" / "2026-27.plan", TODAY)),
        ("typed", answers_to(TYPED, TODAY)),
    ]


@pytest.mark.parametrize(("name", "answers"), plans(), ids=lambda one: str(one)[:12])
def test_every_offer_for_advice_cures_when_pasted(name: str, answers: Answers) -> None:
    offered = 0
    for found in answers.advice.active:
        for edit in offers_for(answers, found):
            offered += 1
            after = answers.edited(edit)
            assert found.key not in {one.key for one in after.advice.active}
            before = {one.key for one in answers.advice.active}
            worse = [
                one.key
                for one in after.advice.active
                if one.key not in before and severity(one.level) >= severity(found.level)
            ]
            assert worse == []
    assert offered > 0, name


def test_every_offer_for_a_slip_cures_when_pasted() -> None:
    answers = answers_to(TYPED, TODAY)
    offered: dict[str, int] = {}
    for slip in answers.mistakes:
        for edit in offers_for_slip(answers, slip):
            offered[slip.name] = offered.get(slip.name, 0) + 1
            after = answers.edited(edit)
            count = sum(one.name == slip.name for one in answers.mistakes)
            assert sum(one.name == slip.name for one in after.mistakes) < count
    wanted = {"no-such-place", "no-unit", "unknown-plant", "no-kind", "same-fact-twice"}
    assert wanted <= set(offered)


def test_trying_an_edit_leaves_the_plan_as_it_was() -> None:
    answers = answers_to(TYPED, TODAY)
    before = dict(answers.reading.sources)
    for found in answers.advice.active:
        offers_for(answers, found)
    assert dict(answers.reading.sources) == before


def test_an_edit_for_another_text_is_never_offered() -> None:
    answers = answers_to(TYPED, TODAY)
    found = answers.advice.active[0]
    other = answers_to(TYPED.replace("\nframe", "\n\nframe"), TODAY)
    for edit in offers_for(other, found):
        # whatever is still offered was made to the other text and cured there
        after = other.edited(edit)
        assert found.key not in {one.key for one in after.advice.active}
