"""What a garden says of its weather, read month by month."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from plantframe.advice.climate import cold_winters, normals_c, spans
from plantframe.answers.answers import answers_to

if TYPE_CHECKING:
    from plantframe.plan.things import Garden

PLAN = """\
garden Fold End, 2027
  place 46 N, 70 W
  normal high July 36 C
  normal low January 14 F
  storms August to October
  {more}
"""


def _garden(more: str = "rains June to September") -> Garden:
    return answers_to(PLAN.format(more=more), date(2026, 11, 25)).plan.garden


def test_usual_warmth_is_kept_in_degrees_celsius_whatever_it_was_typed_in() -> None:
    garden = _garden()
    assert normals_c(garden, "normal high") == {7: 36.0}
    assert round(normals_c(garden, "normal low")[1], 6) == -10.0


def test_storms_and_rains_are_spans_of_months() -> None:
    assert spans(_garden(), "storms") == ((8, 10),)
    assert spans(_garden(), "rains") == ((6, 9),)


def test_what_the_nights_say_of_winter_goes_before_the_depth_of_frost() -> None:
    assert cold_winters(_garden("frost depth 10 cm"), -2.0)
    assert not cold_winters(_garden("frost depth 90 cm"), -12.0)
