"""A second solver on lists made at random: OR-Tools' constraint solver, board by board.

It is told nothing of patterns or bounds: only that each piece lies on one stick, that a stick holds
its pieces and the cuts between them, and that boards cost what they cost.
"""

from __future__ import annotations

import random
from itertools import pairwise

import pytest
from ortools.sat.python import cp_model

from plantframe.timber.sawing import Sawing, Stock, Wanted, faults
from plantframe.timber.solver import solve


def made_up(seed: int) -> Sawing:
    """A small list: mixed lengths and prices, odd old boards, sometimes boards to be ripped."""
    dice = random.Random(seed)
    lengths = dice.sample(range(300, 2390, 5), dice.randint(3, 6))
    wanted = tuple(Wanted(length, dice.randint(1, 3)) for length in sorted(lengths))
    bought = dice.sample([2400, 3000, 3600, 4200], dice.randint(1, 3))
    stocks = [Stock(length, dice.randint(40, 60) * length // 600) for length in bought]
    stocks += [
        Stock(dice.randrange(500, 2400, 10), 0, dice.randint(1, 2))
        for _ in range(dice.randint(0, 3))
    ]
    if dice.random() < 0.4:
        length = dice.choice(bought)
        stocks.append(Stock(length, stocks[0].cost * 3 // 2, None, 2))
    return Sawing(wanted, tuple(stocks), 3)


def least_by_ortools(sawing: Sawing) -> int:
    model = cp_model.CpModel()
    pieces = sum(one.count for one in sawing.wanted)
    used, held = [], []
    for stock in sawing.stocks:
        most = pieces if stock.available is None else stock.available
        boards = [
            model.new_bool_var("")
            for _ in range(-(-most // stock.sticks) if stock.available is None else most)
        ]
        for first, second in pairwise(boards):
            model.add_implication(second, first)
        for board in boards:
            used.append(stock.cost * board)
            for _ in range(stock.sticks):
                counts = [
                    model.new_int_var(0, one.count if one.length <= stock.length else 0, "")
                    for one in sawing.wanted
                ]
                room = sum(
                    count * (one.length + sawing.kerf)
                    for count, one in zip(counts, sawing.wanted, strict=True)
                )
                model.add(room <= (stock.length + sawing.kerf) * board)
                held.append(counts)
    for place, one in enumerate(sawing.wanted):
        model.add(sum(counts[place] for counts in held) == one.count)
    model.minimize(sum(used))
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.random_seed = 1
    assert solver.solve(model) == cp_model.OPTIMAL
    return round(solver.objective_value)


@pytest.mark.parametrize("seed", range(24))
def test_another_solver_finds_nothing_cheaper_and_nothing_dearer(seed: int) -> None:
    sawing = made_up(seed)
    found = solve(sawing)
    assert found is not None
    assert faults(sawing, found.plan) == []
    assert found.proven
    assert found.cost == least_by_ortools(sawing)
