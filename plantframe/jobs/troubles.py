"""What cannot be as written, in words that name the jobs: circles, order, days that do not fit."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, Final

from plantframe.frozen import replace
from plantframe.jobs.job import DONE, OPEN, OWN, Trouble
from plantframe.jobs.timing import Days, Network, held_day, ready_days
from plantframe.season.units import day as shown
from plantframe.season.units import plural

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.jobs.job import Before, Draft


LABELS: Final = {"overdue": "Is it done?", "overfull": "Too full:", "short-wait": "Mind:"}


def label(trouble: Trouble) -> str:
    """The words before a trouble in a list."""
    return LABELS.get(trouble.name, "Cannot be as written:")


def circles(left_out: Sequence[tuple[Before, tuple[str, ...]]], network: Network) -> list[Trouble]:
    """Each circle, and the line that was left out of the order because of it."""
    found = []
    for before, jobs in left_out:
        first, *others = (_called(network.drafts[name]) for name in jobs)
        turn = ", which comes before ".join((*others, first))
        line = f"“{before.own.typed.strip()}” is" if before.own else "The last of these is"
        says = (
            f"{network.drafts[jobs[0]].job.block}: a circle. {first} comes before {turn}. {line} "
            "left out of the order until you change it."
        )
        found.append(Trouble("circle", says, jobs, before.own))
    return found


def deadline(draft: Draft) -> date | None:
    """The last day the plan gives a job: the one it was moved to, or that of its own line.

    A day that is only reckoned from the frost or from years holds nobody to it.
    """
    if draft.state != OPEN:
        return None
    return draft.pinned or (None if draft.job.reckoned else draft.window.not_after)


# ---- waits that have to be the short ones -------------------------------------------------------
def hurried(network: Network) -> tuple[Network, list[Trouble]]:
    """The network with the fewest days of a wait where the most do not fit, and what that means."""
    ready = ready_days(network)
    late = [name for name in network.names if _late(network, ready, name)]
    if not late:
        return network, []
    pairs = {
        (before.first, before.then)
        for before in _behind(network, late)
        if before.wait[0] < before.wait[1]
    }
    quick = replace(network, hurried=frozenset(pairs))
    sooner = ready_days(quick)
    troubles: list[Trouble] = []
    for name in late:
        if _late(quick, sooner, name):
            continue
        behind = _behind(network, [name])
        short_ones = [before for before in behind if before.wait[0] < before.wait[1]]
        troubles += [_short_wait(before, network) for before in short_ones]
    unique = {trouble.jobs: trouble for trouble in troubles}
    return quick, list(unique.values())


def _late(network: Network, ready: Days, name: str) -> bool:
    last, first = deadline(network.drafts[name]), ready[name]
    return last is not None and first is not None and first > last


def _behind(network: Network, names: Sequence[str]) -> list[Before]:
    """Everything that goes before these jobs, however far back, up to what has a day of its own."""
    into = network.into()
    seen: set[str] = set()
    waiting = list(names)
    found: list[Before] = []
    while waiting:
        name = waiting.pop()
        if name in seen:
            continue
        seen.add(name)
        found += into[name]
        waiting += [
            before.first for before in into[name] if network.drafts[before.first].pinned is None
        ]
    return [before for before in network.befores if before in found]


def _short_wait(before: Before, network: Network) -> Trouble:
    first, then = network.drafts[before.first], network.drafts[before.then]
    low, high = before.wait
    says = (
        f"{first.job.block}: {low} to {high} days are usual for {before.waits_for}; between "
        f"{_called(first)} and {_called(then)} there is room for the fewest only."
    )
    return Trouble("short-wait", says, (first.id, then.id), then.job.where)


# ---- days that do not fit -----------------------------------------------------------------------
def misfits(network: Network, today: date, unmarked: Sequence[Draft] = ()) -> list[Trouble]:
    """Jobs whose own day comes before the day they can be done on.

    unmarked   jobs as they stand in the plan that the network takes as done because their days are
               long over: they are asked about, and what follows them is not late for their sake
    """
    ready = ready_days(network)
    into = network.into()
    found: list[Trouble] = []
    gone: dict[str, list[Draft]] = {}
    for draft in unmarked:
        if deadline(draft) is not None:
            gone.setdefault(draft.job.block, []).append(draft)
    presumed = {draft.id for draft in unmarked}
    told: set[str] = set()
    for name in network.names:
        draft = network.drafts[name]
        found += [one for one in _done_too_soon(draft, network) if not presumed & set(one.jobs)]
        last = deadline(draft)
        if last is None:
            continue
        broken = [
            before
            for before in into[name]
            if (pinned := network.drafts[before.first].pinned) is not None
            and pinned + network.wait(before) > last
        ]
        if broken:
            found += [_out_of_order(before, last, network) for before in broken]
        elif last < min(today, network.floor):
            gone.setdefault(draft.job.block, []).append(draft)
        elif _late(network, ready, name):
            late = _too_late(name, last, ready, network)
            # what waits for something late is late with it, unless it is a day of the gardener's
            # own that it waits for
            moved = network.drafts[late.jobs[0]].pinned is not None
            if moved or not told & set(late.jobs):
                found.append(late)
            told.add(name)
    return [*found, *(_overdue(block, drafts) for block, drafts in gone.items())]


def _done_too_soon(draft: Draft, network: Network) -> list[Trouble]:
    """What is done already though a job that goes before it is moved to a later day."""
    if draft.state != OPEN or draft.pinned is None:
        return []
    out_of = network.out_of()
    found: list[Trouble] = []
    waiting, seen = list(out_of[draft.id]), {draft.id}
    while waiting:
        before = waiting.pop(0)
        then = network.drafts[before.then]
        if then.state != DONE or before.then in seen:
            continue
        seen.add(before.then)
        if then.pinned is None:
            waiting += out_of[before.then]
        elif then.pinned < draft.pinned:
            found.append(_out_of_order(replace(before, first=draft.id), then.pinned, network))
    return found


def _out_of_order(before: Before, last: date, network: Network) -> Trouble:
    """Two days of the gardener's own against the order of work."""
    first, then = network.drafts[before.first], network.drafts[before.then]
    day, days = first.pinned or last, network.wait(before).days
    if day <= last:
        says = (
            f"{then.job.block}: {_called(then)} on {shown(last)} comes {_gap(day, last)} "
            f"{_called(first)} on {shown(day)}; leave {days} days for {before.waits_for}."
        )
    else:
        because = before.because or "the second cannot be done without the first"
        says = (
            f"{then.job.block}: {_called(first)} comes before {_called(then)}, yet they are down "
            f"for {shown(day)} and {shown(last)}: {because}."
        )
    where = then.job.where
    return Trouble("out-of-order", says, (first.id, then.id), where)


def _gap(first: date, then: date) -> str:
    days = (then - first).days
    return "on the same day as" if not days else f"{plural(days, 'day')} after"


def _too_late(name: str, last: date, ready: Days, network: Network) -> Trouble:
    """A day that comes before the work it waits for can be over."""
    draft = network.drafts[name]
    chain = _chain(name, ready, network)
    start = network.drafts[chain[0].first] if chain else draft
    begins = held_day(network, ready, start.id)
    first = ready[name]
    waits = [
        f"then {_days(network, before)} for {before.waits_for}"
        for before in chain
        if network.wait(before).days and before.waits_for
    ]
    stands = "is down for" if start.pinned else "can begin on"
    parts = [f"{_called(start)} {stands} {shown(begins)}" if begins else "", *waits]
    missing = plural((first - last).days, "day") if first else ""
    wanted = f"is down for {shown(last)}" if draft.pinned else f"is wanted {_wanted(draft, last)}"
    says = (
        f"{draft.job.block}: {_called(draft)} {wanted} and cannot come before "
        f"{shown(first) if first else 'that'}: {', '.join(part for part in parts if part)}. "
        f"{missing} too few: begin sooner, or move that day."
    )
    jobs = (*(before.first for before in chain), name)
    return Trouble("too-late", says, jobs, draft.job.where)


def _wanted(draft: Draft, last: date) -> str:
    said = draft.window.said
    return f"({said})" if said else f"by {shown(last)}"


def _days(network: Network, before: Before) -> str:
    return plural(network.wait(before).days, "day")


def _chain(name: str, ready: Days, network: Network) -> list[Before]:
    """The jobs that set the first day of this one, from the first of them."""
    into = network.into()
    chain: list[Before] = []
    while True:
        setting = [
            before
            for before in into[name]
            if (held := held_day(network, ready, before.first)) is not None
            and held + network.wait(before) == ready[name]
        ]
        if not setting or network.drafts[name].window.not_before == ready[name]:
            return chain[::-1]
        chain.append(setting[0])
        name = setting[0].first
        if network.drafts[name].pinned is not None:
            return chain[::-1]


def _overdue(block: str, drafts: Sequence[Draft]) -> Trouble:
    """Work whose day is over and that nobody has marked."""
    first, *others = sorted(drafts, key=lambda draft: deadline(draft) or date.max)
    day = deadline(first)
    whose = "" if first.job.kind == OWN else f"{block}: "
    on = f" ({shown(day)})" if day else ""
    if others:
        more = plural(len(others), "more job")
        says = (
            f"{whose}the days of {_called(first)}{on} and of {more} are over, and they are not "
            "marked as done. Mark them, or move them."
        )
    else:
        says = (
            f"{whose}the day of {_called(first)} is over{on}, and it is not marked as done. "
            "Mark it, or move it."
        )
    return Trouble("overdue", says, tuple(draft.id for draft in (first, *others)), first.job.where)


def _called(draft: Draft) -> str:
    return f"“{draft.job.brief}”"
