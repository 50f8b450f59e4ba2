"""Lists of boards and pieces whose least cost is known: printed, or proven by another method.

Sources, each beside its list in cutting-stock.json. "printed": the least is printed with the list.
"reckoned": the list is a textbook's or was made for this check, and its least was found and proven
by an arc-flow program (Valério de Carvalho 1999), not by the column generation used here.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from plantframe.timber.longest_first import longest_first
from plantframe.timber.sawing import Sawing, Stock, Wanted, faults
from plantframe.timber.solver import solve

LISTS = json.loads((Path(__file__).parent / "cutting-stock.json").read_text(encoding="utf-8"))
PRINTED = [one for one in LISTS if one["known"] == "printed"]
RECKONED = [one for one in LISTS if one["known"] == "reckoned"]


def sawing(one: dict[str, Any]) -> Sawing:
    return Sawing(
        tuple(Wanted(length, count) for length, count in one["wanted"]),
        tuple(Stock(length, cost) for length, cost in one["stocks"]),
        one["kerf"],
    )


def assert_least(one: dict[str, Any]) -> None:
    problem = sawing(one)
    found = solve(problem)
    assert found is not None
    assert faults(problem, found.plan) == []
    assert found.plan.cost(problem) == found.cost == one["least"]
    assert found.bound == one["least"]
    assert found.proven


@pytest.mark.published
@pytest.mark.parametrize("one", PRINTED, ids=lambda one: one["name"])
def test_a_printed_list_is_cut_at_the_printed_cost_and_no_less(one: dict[str, Any]) -> None:
    assert_least(one)


@pytest.mark.parametrize("one", RECKONED, ids=lambda one: one["name"])
def test_a_list_is_cut_at_the_cost_another_method_proved_least(one: dict[str, Any]) -> None:
    assert_least(one)


@pytest.mark.parametrize("one", LISTS, ids=lambda one: one["name"])
def test_the_longest_piece_first_never_beats_the_least(one: dict[str, Any]) -> None:
    problem = sawing(one)
    plan = longest_first(problem)
    assert plan is not None
    assert faults(problem, plan) == []
    assert plan.cost(problem) >= one["least"]
