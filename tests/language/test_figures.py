"""Figures as gardeners write them: fractions, commas, number words."""

from __future__ import annotations

import pytest

from plantframe.language.figures import either_way, figure, plain_signs

READ = [
    ("5", 5.0),
    ("2.4", 2.4),
    ("2,4", 2.4),
    ("½", 0.5),
    ("6½", 6.5),
    ("6 ½", 6.5),
    ("⅔", 2 / 3),
    ("1-1/2", 1.5),
    ("1 1/2", 1.5),
    ("3/4", 0.75),
    ("3⁄4", 0.75),  # the fraction stroke of a typesetter
    ("two", 2.0),
    ("Twelve", 12.0),
    ("six and a half", 6.5),
    ("6 and a half", 6.5),
    ("half", 0.5),
    ("0.125", 0.125),
    ("0,125", 0.125),
]


@pytest.mark.parametrize(("typed", "value"), READ)
def test_a_figure_is_read_as_it_is_written(typed: str, value: float) -> None:
    assert figure(typed) == pytest.approx(value)


@pytest.mark.parametrize("typed", ["1,200", "12,500", "1,200.5", "3/0", "1.2.3", "many", ""])
def test_a_figure_that_is_two_or_none_is_not_read(typed: str) -> None:
    assert figure(typed) is None


@pytest.mark.parametrize(
    ("typed", "both"),
    [("1,200", (1200.0, 1.2)), ("2.400", (2400.0, 2.4)), ("1,200,500", (1200500.0, 1200.5))],
)
def test_three_places_after_a_sign_can_mean_two_figures(
    typed: str, both: tuple[float, float]
) -> None:
    assert either_way(typed) == both


def test_two_places_after_a_sign_mean_one_figure() -> None:
    assert either_way("2,40") is None


def test_odd_signs_are_made_plain_and_stay_in_their_places() -> None:
    typed = "6\u00a0ft\u2011long\u202f1\u20442 \u2212"
    made = plain_signs(typed)
    assert made == "6 ft-long 1/2 -"
    assert len(made) == len(typed)
