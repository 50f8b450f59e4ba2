"""Whether given boards give the pieces: a second solver agrees, and no way that serves is lost."""

from __future__ import annotations

import random
from itertools import product

import pytest
from ortools.sat.python import cp_model

from plantframe.timber.deciding import margin, missing, told
from plantframe.timber.diving import dive
from plantframe.timber.patterns import Patterns
from plantframe.timber.sawing import Pattern, Sawing, Stock, Wanted, faults, whole_plan


def made_up(seed: int) -> tuple[Sawing, tuple[int, ...]]:
    """A small list, and boards that hold hardly more than its length."""
    dice = random.Random(seed)
    lengths = sorted(dice.sample(range(200, 1400, 5), dice.randint(3, 6)))
    wanted = tuple(Wanted(length, dice.randint(1, 3)) for length in lengths)
    stocks = [Stock(length, length) for length in sorted(dice.sample([1500, 1800, 2100, 2400], 2))]
    stocks.append(Stock(dice.choice([1500, 1800]), 900, None, 2))
    sawing = Sawing(wanted, tuple(stocks), 3)
    need = sum((one.length + 3) * one.count for one in wanted) * dice.uniform(1.02, 1.12)
    numbers = [0, 0, 0]
    while sum(sawing.room(s) * s.sticks * n for s, n in zip(stocks, numbers, strict=True)) < need:
        numbers[dice.randrange(3)] += 1
    return sawing, tuple(numbers)


def by_ortools(sawing: Sawing, numbers: tuple[int, ...]) -> bool:
    """Whether the pieces fit, stick by stick; nothing of patterns or worths is told."""
    model = cp_model.CpModel()
    held = []
    for stock, number in zip(sawing.stocks, numbers, strict=True):
        for _ in range(number * stock.sticks):
            counts = [model.new_int_var(0, one.count, "") for one in sawing.wanted]
            pairs = zip(counts, sawing.wanted, strict=True)
            room = sum(count * (one.length + sawing.kerf) for count, one in pairs)
            model.add(room <= stock.length + sawing.kerf)
            held.append(counts)
    for place, one in enumerate(sawing.wanted):
        model.add(sum(counts[place] for counts in held) >= one.count)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    return solver.solve(model) != cp_model.INFEASIBLE


SEEDS = range(40)


@pytest.mark.parametrize("seed", SEEDS)
def test_another_solver_says_the_same_of_boards_that_hold_hardly_enough(seed: int) -> None:
    sawing, numbers = made_up(seed)
    patterns = Patterns(sawing)
    if missing(sawing, patterns, numbers) is not None:
        assert not by_ortools(sawing, numbers)
        return
    around = margin(sawing, patterns, numbers)
    assert around is not None
    ways = around.ways(sawing, 2000)
    assert ways is not None
    verdict = told(sawing, ways, 100_000, numbers)
    assert verdict.gives is by_ortools(sawing, numbers)


def test_lists_for_the_second_solver_are_of_both_sorts() -> None:
    answers = {by_ortools(*made_up(seed)) for seed in SEEDS}
    assert answers == {True, False}


@pytest.mark.parametrize("seed", SEEDS)
def test_a_dive_that_ends_well_cuts_all_pieces_from_those_boards(seed: int) -> None:
    sawing, numbers = made_up(seed)
    patterns = Patterns(sawing)
    if missing(sawing, patterns, numbers) is not None:
        return
    sticks = dive(sawing, patterns, numbers, 0)
    if not sticks:
        return
    plan = whole_plan(sawing, sticks)
    assert all(have <= may for have, may in zip(plan.boards, numbers, strict=True))
    made = [sum(stick.counts[place] for stick in sticks) for place in range(len(sawing.wanted))]
    assert all(count >= one.count for count, one in zip(made, sawing.wanted, strict=True))
    assert not [fault for fault in faults(sawing, plan) if "fit" in fault]


def test_most_dives_end_well_where_the_pieces_can_be_cut() -> None:
    could = [seed for seed in SEEDS if by_ortools(*made_up(seed))]
    ended = []
    for seed in could:
        sawing, numbers = made_up(seed)
        patterns = Patterns(sawing)
        if missing(sawing, patterns, numbers) is None and dive(sawing, patterns, numbers, 0):
            ended.append(seed)
    assert len(ended) * 10 >= len(could) * 9


def test_every_way_that_wastes_little_enough_is_listed() -> None:
    # all ways of three lengths in sticks of 100, counted out; two sticks for 50 + 50 and 60 + 40
    sawing = Sawing((Wanted(60, 1), Wanted(50, 2), Wanted(40, 1)), (Stock(100, 1),), 0)
    patterns = Patterns(sawing)
    assert missing(sawing, patterns, [2]) is None
    around = margin(sawing, patterns, [2])
    assert around is not None
    ways = around.ways(sawing, 100)
    assert ways is not None
    full = {
        counts
        for counts in product(range(2), range(3), range(2))
        if sawing.used(counts) <= 100
        and all(
            counts[place] == one.count or sawing.used(counts) + one.length > 100
            for place, one in enumerate(sawing.wanted)
        )
    }
    # nothing may be wasted: the two that fill a stick serve
    assert {(1, 0, 1), (0, 2, 0)} <= {way.counts for way in ways} <= full
    assert all(around.may(way) for way in ways)
    assert not around.may(Pattern(0, (0, 0, 1)))


def test_too_many_ways_are_not_listed_at_all() -> None:
    wanted = tuple(Wanted(length, 3) for length in range(100, 200, 7))
    sawing = Sawing(wanted, (Stock(1000, 1),), 3)
    patterns = Patterns(sawing)
    assert missing(sawing, patterns, [9]) is None
    around = margin(sawing, patterns, [9])
    assert around is not None
    assert around.ways(sawing, 50) is None


def test_any_boards_of_a_cost_are_asked_about_together() -> None:
    # by hand: three of 60 are three sticks of 100, or one of 100 and one of 120
    sawing = Sawing((Wanted(60, 3),), (Stock(100, 7), Stock(120, 9)), 0)
    ways = [Pattern(0, (1,)), Pattern(1, (2,))]
    assert told(sawing, ways, 1000, None, cost=15.5).gives is False
    assert told(sawing, ways, 1000, None, cost=16.5).gives is True
    assert told(sawing, ways, 1000, None, cost=21.5, count=1.5).gives is False
