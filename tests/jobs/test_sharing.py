"""Work shared out over half-days, beside a second solver that proves the best there is.

The problems are small ones made up here, of one kind with those of project scheduling with scarce
hands: jobs that follow one another, waits in days, half-days of one length, two pairs of hands.
CP-SAT of OR-Tools proves the fewest half-days; how far ours is from that is asserted, not hoped.
"""

from __future__ import annotations

import random
from datetime import date, timedelta
from typing import TYPE_CHECKING

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plantframe.frozen import replace
from plantframe.jobs.halves import AFTERNOON, MORNING, Half
from plantframe.jobs.listing import Jobs, jobs_of
from plantframe.jobs.people import Crew, Hand
from plantframe.jobs.sharing import Part, Placed, Shared, Work, share
from plantframe.language.files import read_plan
from plantframe.plan.building import build
from plantframe.season.season import Season

if TYPE_CHECKING:
    from collections.abc import Sequence
    from pathlib import Path

MONDAY = date(2027, 3, 1)
ONE, OTHER = "Isa", "Bram"
TWO = Crew((Hand(ONE), Hand(OTHER)), named=True)
LONG = 180.0


def days(count: int, minutes: float = LONG, people: tuple[str, ...] = (ONE, OTHER)) -> list[Half]:
    """So many days of a morning and an afternoon."""
    return [
        Half(MONDAY + timedelta(days=day), name, minutes, minutes, people)
        for day in range(count)
        for name in (MORNING, AFTERNOON)
    ]


def work(name: str, minutes: float, hands: int = 1, **others: object) -> Work:
    fields: dict[str, object] = {"able": (ONE, OTHER), "ready": MONDAY, **others}
    return Work(name, minutes, hands, **fields)  # type: ignore[arg-type]


def random_works(seed: int, count: int, waits: tuple[int, ...] = (0, 0, 0, 1, 3)) -> list[Work]:
    """A random project: each job after some of those before it, now and then with a wait."""
    dice = random.Random(seed)
    works: list[Work] = []
    for number in range(count):
        firsts = [one.id for one in works if dice.random() < 0.25][-3:]
        after = tuple((name, dice.choice(waits)) for name in firsts)
        minutes = float(dice.randrange(20, 150, 10))
        works.append(work(f"job {number}", minutes, dice.choice((1, 1, 2)), after=after))
    follow: dict[str, float] = {}
    for one in reversed(works):
        rest = [
            follow[then.id] + days_ * 2 * LONG
            for then in works
            for first, days_ in then.after
            if first == one.id
        ]
        follow[one.id] = one.minutes + max(rest, default=0.0)
    return [replace(one, soon=follow[one.id]) for one in works]


# ---- what must hold of any sharing out -------------------------------------------------------
def broken(works: list[Work], shared: Shared) -> list[str]:
    """What is wrong with a sharing out: its order, its waits, its hands."""
    out_of_order = [
        f"{one.id} before {name}"
        for one in works
        for name, wait in one.after
        if not in_turn(shared[name], shared[one.id], wait)
    ]
    return [*out_of_order, *overworked(works, shared)]


def in_turn(first: Placed, then: Placed, wait: int) -> bool:
    """Whether one comes after the other, by day, half-day and minute, with its wait."""
    if then.day < first.over + timedelta(days=wait):
        return False
    if wait or not (first.parts and then.parts):
        return True
    return clock(then.parts[0], then.parts[0].start) >= clock(first.parts[-1], first.parts[-1].end)


def clock(part: Part, minute: float) -> tuple[date, bool, float]:
    return part.half.day, part.half.name == AFTERNOON, round(minute, 3)


def overworked(works: list[Work], shared: Shared) -> list[str]:
    """Who is in two places, where they are not, or at work when the half-day is over."""
    wrong = []
    busy: dict[tuple[date, str, str], list[tuple[float, float]]] = {}
    for one in works:
        for part in shared[one.id].parts:
            here = set(part.half.people) & set(one.able)
            if part.end > part.half.minutes + 1e-6 or not set(part.who) <= here:
                wrong.append(f"{one.id}, {part}")
            for who in part.who:
                spans = busy.setdefault((part.half.day, part.half.name, who), [])
                if any(part.start < end - 1e-6 and begin < part.end - 1e-6 for begin, end in spans):
                    wrong.append(f"{who} in two places")
                spans.append((part.start, part.end))
    return wrong


@settings(max_examples=80)
@given(seed=st.integers(0, 10_000), count=st.integers(1, 25), hours=st.integers(1, 4))
def test_no_order_is_broken_and_nobody_is_in_two_places(seed: int, count: int, hours: int) -> None:
    works = random_works(seed, count)
    dice = random.Random(seed + 1)
    wished = [
        replace(
            w,
            last=MONDAY + timedelta(days=dice.randrange(30)) if dice.random() < 0.5 else None,
            wish=MONDAY + timedelta(days=dice.randrange(20)),
            unbroken=w.minutes + dice.choice((0, 60)),
        )
        for w in works
    ]
    shared = share(wished, days(60, hours * 60.0), TWO, {})
    assert set(shared) == {w.id for w in works}
    assert broken(wished, shared) == []


@given(seed=st.integers(0, 10_000))
def test_more_hands_never_take_longer_by_more_than_a_day(seed: int) -> None:
    """Taking jobs in turn may lose a little where it gains hands (R. L. Graham 1969, memory)."""
    works = random_works(seed, 12)
    three = Crew((*TWO.hands, Hand("Ida")), named=True)
    names = (ONE, OTHER, "Ida")
    able = [replace(w, able=names) for w in works]
    few = half_days(share(works, days(60), TWO, {}))
    many = half_days(share(able, days(60, people=names), three, {}))
    assert many <= few + 2


# ---- against a second solver ---------------------------------------------------------------------
def half_days(shared: Shared, halves: Sequence[Half] | None = None) -> int:
    """How many half-days pass until all is done."""
    halves = days(60) if halves is None else halves
    assert not any(placed.overruns for placed in shared.values())
    place = {(half.day, half.name): at for at, half in enumerate(halves)}
    last = [placed.parts[-1].half for placed in shared.values() if placed.parts]
    return max((place[half.day, half.name] for half in last), default=-1) + 1


def fewest(works: list[Work], hands: int, halves: Sequence[Half] | None = None) -> int:
    """The fewest half-days, proven by CP-SAT; jobs are not parted, and none runs over noon."""
    from ortools.sat.python import cp_model

    halves = days(60) if halves is None else halves
    model = cp_model.CpModel()
    lengths = [int(half.minutes) for half in halves]
    starts = [sum(lengths[:at]) for at in range(len(halves))]
    day = [(half.day - halves[0].day).days for half in halves]
    begins, at_half, spans = {}, {}, []
    for one in works:
        size = round(one.minutes)
        half = model.new_int_var(0, len(halves) - 1, f"half {one.id}")
        begin = model.new_int_var(0, sum(lengths), f"begin {one.id}")
        over = [start + length for start, length in zip(starts, lengths, strict=True)]
        opens, shuts = (model.new_int_var(0, sum(lengths), f"{n} {one.id}") for n in "os")
        model.add_element(half, starts, opens)
        model.add_element(half, over, shuts)
        model.add(begin >= opens)
        model.add(begin + size <= shuts)
        spans.append(model.new_fixed_size_interval_var(begin, size, one.id))
        begins[one.id], at_half[one.id] = begin, half
    for one in works:
        for name, wait in one.after:
            size = round(next(w for w in works if w.id == name).minutes)
            model.add(begins[one.id] >= begins[name] + size)
            if wait:
                first, then = (model.new_int_var(0, day[-1], f"{name} {one.id} {n}") for n in "ab")
                model.add_element(at_half[name], day, first)
                model.add_element(at_half[one.id], day, then)
                model.add(then >= first + wait)
    model.add_cumulative(spans, [one.hands for one in works], hands)
    last = model.new_int_var(0, len(halves), "last")
    model.add_max_equality(last, list(at_half.values()))
    model.minimize(last)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.max_time_in_seconds = 30
    assert solver.solve(model) == cp_model.OPTIMAL
    return int(solver.objective_value) + 1


@pytest.mark.parametrize(
    ("waits", "most_over"), [((0, 0, 0, 1, 3), 1), ((0,), 6)], ids=["with waits", "without"]
)
def test_random_projects_take_at_most_one_half_day_more_than_the_fewest(
    waits: tuple[int, ...], most_over: int
) -> None:
    """20 projects of 12 jobs for two.

    When this was written, of 100 such with waits 99 took the fewest half-days there are and one
    took one more; of 100 without, 78 and 22. Of 40 with 20 jobs and no waits 24 took the fewest and
    16 one more; of ten with 30 jobs four, four one more and two two more.
    """
    gaps = []
    for seed in range(20):
        works = random_works(seed, 12, waits)
        shared = share(works, days(60), TWO, {})
        assert broken(works, shared) == []
        gaps.append(half_days(shared) - fewest(works, 2, days(24)))
    assert min(gaps) >= 0  # else the second solver was asked something else
    assert max(gaps) <= 1
    assert sum(gaps) <= most_over


@pytest.mark.parametrize(
    ("minutes", "hands", "expected"), [(60.0, 1, 2), (60.0, 2, 3), (90.0, 2, 4)]
)
def test_small_ones_reckoned_by_hand(minutes: float, hands: int, expected: int) -> None:
    """Eight jobs for two people in half-days of three hours, counted on paper."""
    works = [work(str(number), minutes, hands) for number in range(8)]
    assert half_days(share(works, days(20), TWO, {})) == expected == fewest(works, 2)


@pytest.mark.parametrize(
    ("plan", "today"),
    [("quarry-row/2027.plan", date(2027, 3, 1)), ("tussock-flat/2026-27.plan", date(2026, 8, 20))],
)
def test_a_demo_garden_could_be_built_in_the_fewest_half_days_or_one_more(
    root: Path, plan: str, today: date
) -> None:
    """All its building as soon as there is room, with the garden's own hours, people and waits."""
    sharing = listed_from(root / "plans" / plan, today).sharing
    building = [work for work in sharing.works.values() if work.minutes]
    ids = {work.id for work in building}
    works = [
        replace(
            work,
            ready=today,
            last=None,
            wish=None,
            set_day=False,
            outdoors=False,
            unbroken=0.0,
            after=tuple(one for one in work.after if one[0] in ids),
        )
        for work in building
    ]
    halves = sharing.halves[:60]
    shared = share(works, halves, sharing.crew, {})
    assert broken(works, shared) == []
    gap = half_days(shared, halves) - fewest(works, len(sharing.crew.hands), halves)
    assert 0 <= gap <= 1


def listed_from(file: Path, today: date) -> Jobs:
    """The jobs of a plan file."""
    plan, _ = build(read_plan(file), today)
    return jobs_of(Season(plan, today))


# ---- hands ------------------------------------------------------------------------------------
def test_two_person_work_lands_when_two_are_there() -> None:
    alone, both = days(3, people=(ONE,)), days(6)[6:]
    shared = share([work("rails", 60, 2)], [*alone, *both], TWO, {})
    assert shared["rails"].day == both[0].day
    assert shared["rails"].parts[0].who == (ONE, OTHER)


def test_with_one_there_before_the_last_day_it_is_done_the_one_person_way() -> None:
    last = MONDAY + timedelta(days=2)
    works = [work("net", 40, 2, last=last, alone=True)]
    shared = share(works, [*days(3, people=(ONE,)), *days(6)[6:]], TWO, {})
    assert shared["net"].short
    assert shared["net"].day <= last
    assert shared["net"].parts[0].minutes == 80  # one pair of hands takes twice as long


def test_one_person_alone_gets_the_one_person_way() -> None:
    alone = Crew((Hand(ONE),), named=True)
    shared = share([work("net", 40, 2, able=(ONE,))], days(3, people=(ONE,)), alone, {})
    assert shared["net"].short
    assert shared["net"].parts[0].who == (ONE,)


def test_two_who_lift_it_between_them_are_chosen_before_two_who_do_not() -> None:
    crew = Crew(
        (Hand("Ann", lifts_kg=8), Hand("Ben", lifts_kg=10), Hand("Cal", lifts_kg=25)), named=True
    )
    names = ("Ann", "Ben", "Cal")
    shared = share([work("box", 10, 2, able=names, weight_kg=34)], days(2, people=names), crew, {})
    assert shared["box"].parts[0].who == ("Ben", "Cal")


def test_a_third_lends_a_hand_where_two_do_not_lift_it() -> None:
    crew = Crew(tuple(Hand(name, lifts_kg=15) for name in ("Ann", "Ben", "Cal")), named=True)
    names = ("Ann", "Ben", "Cal")
    shared = share([work("box", 10, 2, able=names, weight_kg=40)], days(2, people=names), crew, {})
    assert shared["box"].parts[0].who == names


def test_the_other_does_something_meanwhile() -> None:
    shared = share([work("bore", 60), work("dig", 60)], days(1), TWO, {})
    assert {shared[name].parts[0].start for name in ("bore", "dig")} == {0.0}
    assert {shared[name].parts[0].who for name in ("bore", "dig")} == {(ONE,), (OTHER,)}


# ---- days -------------------------------------------------------------------------------------
def test_what_finds_no_room_on_its_day_is_begun_sooner() -> None:
    last = MONDAY + timedelta(days=13)
    works = [work(f"net {n}", 170, 2, wish=last, last=last) for n in range(6)]
    shared = share(works, days(14), TWO, {})
    assert not any(placed.overruns for placed in shared.values())
    assert max(placed.day for placed in shared.values()) == last


def test_days_are_kept_where_hours_are_not_enough() -> None:
    last = MONDAY + timedelta(days=1)
    works = [work(f"net {n}", 170, 2, wish=last, last=last) for n in range(6)]
    shared = share(works, days(30), TWO, {})
    assert sum(placed.overruns for placed in shared.values()) == 2
    assert all(placed.day <= last for placed in shared.values())


def test_a_job_longer_than_any_half_day_is_done_in_several() -> None:
    shared = share([work("mortises", 400)], days(5), TWO, {})
    parts = shared["mortises"].parts
    assert [part.minutes for part in parts] == [180, 180, 40]
    assert shared["mortises"].over == MONDAY + timedelta(days=1)


def test_work_up_to_a_good_place_to_stop_is_not_parted_by_the_end_of_a_half_day() -> None:
    works = [
        work("posts", 150),
        work("net", 40, 2, after=(("posts", 0),), unbroken=60),
        work("bar", 20, 2, after=(("net", 0),)),
    ]
    shared = share(works, days(3), TWO, {})
    assert shared["net"].parts[0].half == shared["bar"].parts[0].half
    assert shared["net"].parts[0].half.name == AFTERNOON


def test_nothing_outdoors_is_done_in_the_rain_or_the_dark() -> None:
    wet, dark, dry = (
        Half(MONDAY, "", 180, 180, (ONE,), wet=True),
        Half(MONDAY + timedelta(days=1), "", 180, 30, (ONE,)),
        Half(MONDAY + timedelta(days=2), "", 180, 180, (ONE,)),
    )
    works = [work("dig", 60), work("bore", 60, outdoors=False)]
    shared = share(works, [wet, dark, dry], TWO, {})
    assert shared["dig"].day == dry.day
    assert shared["bore"].day == wet.day
