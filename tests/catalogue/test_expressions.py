"""Sums in entries: what they come to, and what they refuse."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plantframe.catalogue.expressions import LONGEST, evaluate, names_in, number
from plantframe.catalogue.mistakes import ExpressionError, MissingFact

FACTS = {"bays.count": 3.0, "bays.length": 2.4, "bar.joint": "halved", "prop": True, "spacing": 0.0}


@pytest.mark.parametrize(
    ("text", "comes_to"),
    [
        ("bays.count + 1", 4),  # posts are bays and one more
        ("bays.count * bays.length", 7.2),
        ("bays.length / 2 if prop else bays.length", 1.2),
        ("1 if bar.joint == 'halved' else 2", 1),
        ("2 if bar.joint != 'halved' and prop else 5", 5),
        ("-(1 - 3)", 2),
        ("ceil(7.2 / 2.4)", 3),  # not four, for a tenth of a hair too much
        ("floor(2.4 / 0.6)", 4),
        ("max(1, 2, min(9, 3))", 3),
        ("pi * 0.5", math.pi / 2),
        ("not said.wires", True),
        ("bays.count >= 3 or spacing > 1", True),
    ],
)
def test_a_sum_comes_to_what_the_pencil_makes_it(text: str, comes_to: float) -> None:
    assert evaluate(text, FACTS) == pytest.approx(comes_to)


def test_a_leaning_pole_reaches_as_high_as_the_triangle_says() -> None:
    # 3-4-5, the builder's own
    assert number("rise(5, 3)", {}) == pytest.approx(4)
    assert number("diagonal(3, 4)", {}) == pytest.approx(5)


def test_a_hoop_that_is_half_a_circle_is_as_long_as_half_a_circle() -> None:
    assert number("hoop_arc(1.2, 0.6)", {}) == pytest.approx(math.pi * 0.6, rel=1e-6)


@given(st.floats(0.5, 3.0), st.floats(0.2, 2.0))
def test_a_hoop_is_longer_than_its_two_straight_sides_and_shorter_than_the_box(
    width: float, height: float
) -> None:
    arc = number("hoop_arc(width, height)", {"width": width, "height": height})
    assert 2 * math.hypot(width / 2, height) < arc < width + 2 * height


@pytest.mark.parametrize(
    "text",
    [
        "2 ** 9",
        "__import__('os')",
        "bays.count.real",
        "bays['count']",
        "[1, 2]",
        "'halved'",
        "lambda: 1",
        "open('x')",
        "True",
        "1 < 2 < 3",
        "bar.joint in 'halved'",
        "(x := 2)",
        "f'{bays.count}'",
        "max()",
        "max(1)",
        "rise(1)",
        "min(*bays)",
        "2 +",
        "",
        "1; 2",
        "1 // 2",
        "1 % 2",
        "~1",
        "x" * (LONGEST + 1),
        "(" * 150 + ")" * 50,
    ],
)
def test_whatever_is_not_plain_arithmetic_is_refused(text: str) -> None:
    with pytest.raises(ExpressionError):
        evaluate(text, {"x": 1.0, **FACTS})


@given(st.text(max_size=LONGEST + 20))
def test_any_text_gives_a_value_or_a_plain_refusal(text: str) -> None:
    try:
        value: object = evaluate(text, FACTS)
    except ExpressionError as error:
        value = str(error)
    assert value is not None
    assert value != ""


@pytest.mark.parametrize(
    "text",
    [
        "bays.count / spacing",
        "bar.joint + 1",
        "rise(1, 2)",
        "1 / (bays.count - 3)",
        "ceil(1e999)",
        "hoop_arc(0, 0)",
    ],
)
def test_a_sum_that_cannot_be_worked_out_says_so(text: str) -> None:
    with pytest.raises(ExpressionError):
        number(text, FACTS)


def test_a_missing_fact_is_named() -> None:
    with pytest.raises(MissingFact) as caught:
        evaluate("net.high + 1", FACTS)
    assert caught.value.name == "net.high"


def test_a_sum_knows_what_it_asks_for() -> None:
    asked = names_in("ceil(bays.count / 2) + pi * spacing if bar.joint == 'x' else i")
    assert asked == {"bays.count", "spacing", "bar.joint", "i"}
