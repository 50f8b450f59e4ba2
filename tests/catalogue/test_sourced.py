"""A value in an entry: converted once, its range kept, its origin known."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.catalogue.sourced import Sourced, printed_disagrees, sourced
from plantframe.catalogue.units import UNITS, unit_named

# Exact by the international yard and pound agreement of 1959: 1 ft = 0.3048 m, 1 in = 25.4 mm,
# 1 lb = 0.453 592 37 kg (NIST Handbook 44, appendix C).
EXACT = [
    ("ft", 10, 3.048),
    ("in", 18, 0.4572),
    ("mm", 38, 0.038),
    ("lb", 51, 23.13321087),
    ("lb/ft", 7, 10.4171476),  # 0.45359237 / 0.3048 is 1.48816394 kg/m
    ("F", 60, 15.5555556),  # (60 - 32) * 5 / 9
    ("F", 32, 0.0),
    ("weeks from last frost", -2, -14.0),
    ("per ft", 2, 6.5616798),
]


@pytest.mark.published
@pytest.mark.parametrize(("unit", "typed", "base"), EXACT)
def test_units_are_converted_as_the_standards_define_them(
    unit: str, typed: float, base: float
) -> None:
    value = sourced({"value": typed, "unit": unit, "basis": "estimate"})
    assert value.low == value.middle == value.high == pytest.approx(base, rel=1e-7, abs=1e-9)


def test_a_range_has_its_mean_in_the_middle_unless_one_is_given() -> None:
    assert sourced({"low": 4, "high": 10, "unit": "kg/m", "basis": "estimate"}).middle == 7
    given_middle = {"low": 4, "middle": 8, "high": 10, "unit": "kg/m", "basis": "estimate"}
    assert sourced(given_middle).middle == 8


def test_a_range_with_one_side_keeps_the_other_open() -> None:
    grip = sourced({"high": 75, "unit": "mm", "basis": "common practice"})
    assert (grip.low, grip.middle) == (None, None)
    assert grip.high == grip.usual == 0.075


def test_a_word_is_kept_as_a_word_and_a_yes_as_yes() -> None:
    assert sourced({"value": "twines", "basis": "common practice"}).value == "twines"
    assert sourced({"value": True, "basis": "common practice"}).value == "yes"


def test_what_other_sources_say_is_kept_in_the_same_unit() -> None:
    height = sourced(
        {
            "low": 10,
            "high": 15,
            "unit": "ft",
            "basis": "estimate",
            "also": [{"low": 2.4, "high": 3.5, "unit": "m"}, {"value": 12}],
        }
    )
    assert [one.usual for one in height.also] == pytest.approx([2.95, 3.6576])


@pytest.mark.parametrize(
    ("raw", "says"),
    [
        ({"low": 3, "high": 2, "basis": "estimate"}, "out of order"),
        ({"value": 3, "unit": "hands", "basis": "estimate"}, "no unit"),
        ({"value": 3, "basis": "hearsay"}, "basis is one of"),
        ({"value": 3, "basis": "published"}, "names its source"),
        ({"value": 3, "basis": "estimate", "colour": 1}, "no part of a figure"),
        ({"basis": "estimate"}, "wants a value"),
        ({"low": "three", "high": 4, "basis": "estimate"}, "wants a figure"),
    ],
)
def test_a_value_that_says_too_little_or_too_much_is_refused(
    raw: dict[str, object], says: str
) -> None:
    with pytest.raises(ValueError, match=says):
        sourced(raw)


def test_a_printed_figure_that_disagrees_with_the_value_is_found_out() -> None:
    right = {"low": 3.0, "high": 4.6, "unit": "m", "basis": "estimate", "printed": "10 to 15 ft"}
    wrong = {**right, "high": 4.9}
    assert printed_disagrees(sourced(right)) == ""
    assert "high is 4.9" in printed_disagrees(sourced(wrong))


def test_a_printed_sentence_is_not_taken_for_a_figure() -> None:
    value = sourced({"value": 3, "unit": "m", "basis": "estimate", "printed": "tall, 8 ft or so"})
    assert printed_disagrees(value) == ""


@given(
    st.sampled_from(sorted(UNITS)),
    st.lists(st.floats(-100, 100), min_size=3, max_size=3).map(sorted),
)
def test_conversion_never_turns_a_range_round(unit: str, figures: list[float]) -> None:
    low, middle, high = figures
    value = sourced({"low": low, "middle": middle, "high": high, "unit": unit, "basis": "estimate"})
    assert value.low is not None
    assert value.middle is not None
    assert value.high is not None
    assert value.low <= value.middle <= value.high


def test_weeks_from_nothing_in_particular_are_no_unit() -> None:
    assert unit_named("weeks from breakfast") is None
    assert unit_named("week") == unit_named("weeks")


def test_a_value_without_any_figure_has_no_usual_one() -> None:
    assert Sourced(value="soft").usual != Sourced(value="soft").usual  # not a number
