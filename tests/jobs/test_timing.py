"""The days of jobs: whatever days a plan gives, the order of the trade is never broken."""

from __future__ import annotations

from datetime import date, timedelta

from hypothesis import given, settings
from hypothesis import strategies as st

from plantframe.jobs.days import FreeDays
from plantframe.jobs.gathering import gather
from plantframe.jobs.job import Before, Draft, Job, Window
from plantframe.jobs.timing import Network, last_days, planned_days, ready_days
from tests.jobs.gardens import BEANS, HEAD, JANUARY, NET, listed, season, the

SPRING = st.dates(date(2027, 2, 1), date(2027, 7, 31))
MOVED = {
    "bean-net/mark": "draw a pencil line round each post at the depth it will stand",
    "bean-net/firm": "firm the soil round every post with the heel",
    "bean-net/net": "thread the net on the posts",
    "bean-net/bar": "weave the bar through the top row of meshes",
}


def typed(day: date) -> str:
    return day.isoformat()


@settings(max_examples=60)
@given(
    sow=SPRING,
    ready=st.none() | SPRING,
    down=st.none() | st.dates(date(2027, 8, 1), date(2027, 11, 30)),
    moves=st.dictionaries(st.sampled_from(sorted(MOVED)), SPRING),
    finish=st.booleans(),
    saturdays=st.booleans(),
    today=st.dates(date(2026, 12, 1), date(2027, 8, 31)),
)
def test_no_order_of_an_entry_is_broken_whatever_the_dates(
    sow: date,
    ready: date | None,
    down: date | None,
    moves: dict[str, date],
    finish: bool,
    saturdays: bool,
    today: date,
) -> None:
    lines = [f"  grow pole bean, sow {typed(sow)}"]
    lines += [f"  ready by {typed(ready)}"] if ready else []
    lines += [f"  take down {typed(down)}"] if down else []
    lines += [f"  move {MOVED[name]} to {typed(day)}" for name, day in moves.items()]
    lines += ["  finish oil"] if finish else []
    head = HEAD + ("  free Saturday 6 h\n" if saturdays else "")
    text = head + NET + "\n".join(lines) + "\n"
    found = listed(text, today)
    place = {job.id: at for at, job in enumerate(found.jobs)}
    day = {job.id: job.planned for job in found.jobs}
    told = {pair for one in found.troubles for pair in [one.jobs] if one.name == "out-of-order"}
    overdue = {job.id for job in found.jobs if job.overdue}
    for before in gather(season(text, today)).befores:
        first, then = before.first, before.then
        if first not in place or then not in place:
            continue
        assert place[first] < place[then], (first, then)
        one, other = day[first], day[then]
        if one is None or other is None:
            continue
        kept = one + timedelta(days=before.wait[0]) <= other
        if then in moves:  # what was moved stays moved; against the order that is told
            assert other == moves[then]
            known = {name for trouble in found.troubles for name in trouble.jobs}
            assert kept or (first, then) in told or then in known or then in overdue
        else:
            assert kept, (first, one, then, other)


@settings(max_examples=40)
@given(sow=SPRING, today=st.dates(date(2026, 12, 1), date(2027, 1, 31)), oiled=st.booleans())
def test_a_job_is_planned_between_its_earliest_and_its_latest_day(
    sow: date, today: date, oiled: bool
) -> None:
    finish = "  finish oil\n" if oiled else ""
    text = f"{HEAD}  free Saturday 6 h\n{NET}{finish}  grow tall pea, sow {typed(sow)}\n"
    found = listed(text, today)
    if found.troubles:
        return
    for job in found.jobs:
        if job.planned is not None:
            assert job.earliest is None or job.earliest <= job.planned
            assert job.latest is None or job.planned <= job.latest


@given(sow=SPRING, later=st.integers(1, 30))
def test_sowing_later_never_makes_a_step_due_sooner(sow: date, later: int) -> None:
    def latest(day: date) -> dict[str, date | None]:
        found = listed(f"{HEAD}{NET}  grow pole bean, sow {typed(day)}\n")
        return {job.id: job.latest for job in found.jobs if job.kind == "build"}

    soon, late = latest(sow), latest(sow + timedelta(days=later))
    for name, day in soon.items():
        after = late[name]
        assert day is not None
        assert after is not None
        assert day <= after


# ---- by hand ------------------------------------------------------------------------------------
def job(name: str, window: Window | None = None, pinned: date | None = None) -> Draft:
    return Draft(Job(name, name, "Net", "build"), name, window or Window(), pinned=pinned)


def network(drafts: list[Draft], befores: list[Before]) -> Network:
    by_id = {draft.id: draft for draft in drafts}
    return Network(tuple(by_id), by_id, befores, JANUARY)


def test_three_jobs_and_a_wait_reckoned_by_hand() -> None:
    """Coat, fourteen days, set, sow on 18 May: set by 18 May, coat by 4 May, each a week before."""
    sow = Window(date(2027, 5, 18), date(2027, 5, 18), date(2027, 5, 18))
    found = network(
        [job("coat"), job("set"), job("sow", sow)],
        [Before("coat", "set", (7, 14)), Before("set", "sow")],
    )
    ready = ready_days(found)
    last = last_days(found, ready)
    planned = planned_days(found, last, FreeDays(season(HEAD).plan.garden))
    assert ready == {
        "coat": JANUARY,
        "set": JANUARY + timedelta(days=14),
        "sow": date(2027, 5, 18),
    }
    assert last["coat"] == date(2027, 5, 4)
    assert last["set"] == date(2027, 5, 18)
    assert planned == {
        "coat": date(2027, 4, 27),
        "set": date(2027, 5, 11),
        "sow": date(2027, 5, 18),
    }


def test_what_is_moved_holds_what_goes_before_it_and_what_comes_after() -> None:
    found = network(
        [job("net"), job("bar", pinned=date(2027, 5, 2)), job("pins")],
        [Before("net", "bar"), Before("bar", "pins")],
    )
    ready = ready_days(found)
    assert last_days(found, ready)["net"] == date(2027, 5, 2)
    assert ready["pins"] == date(2027, 5, 2)


def test_today_is_the_first_day_for_what_is_not_done() -> None:
    found = listed(HEAD + NET + BEANS, date(2027, 5, 16))
    assert the(found, "bean-net/mark").planned == date(2027, 5, 16)
    assert the(found, "bean-net/sow-pole-bean").planned == date(2027, 5, 18)
