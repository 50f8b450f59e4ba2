"""What nobody has marked, though its days are long over: taken as done for what follows it.

Most gardeners mark little. A row sown in May, or given up, asks for no frame in July, while its
picking goes on; the list asks once whether it is done, and reckons the rest from the day it was
due.
"""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING, Final

from plantframe.frozen import replace
from plantframe.jobs.job import BUILD, DONE, OPEN, PLANT, SOW

if TYPE_CHECKING:
    from datetime import date

    from plantframe.jobs.timing import Days, Network

LONG_OVER: Final = timedelta(days=14)  # later than anybody sows late (common practice, no source)


def presumed_done(network: Network, last: Days, today: date) -> dict[str, date]:
    """Jobs that are taken as done, with the day they were due.

    That is sowing and planting whose last day is two weeks over, and what was to stand before it;
    pruning and the like, whose time of year is over; nothing that the gardener moved, and nothing
    that waits for a day still to come.
    """
    into = network.into()
    over = [name for name in network.names if _in_the_ground(network, last, name, today)]
    found: dict[str, date] = {}
    for name in over:
        chain = [name]
        seen = {name}
        for one in chain:
            for before in into[one]:
                if before.first not in seen:
                    seen.add(before.first)
                    chain.append(before.first)
        drafts = [network.drafts[one] for one in chain]
        if any(one.state == OPEN and one.pinned and one.pinned >= today for one in drafts):
            continue
        for draft in drafts:
            day = last[draft.id]
            usual = draft.state == OPEN and draft.pinned is None and draft.job.every_days is None
            if usual and draft.job.kind in {BUILD, SOW, PLANT} and day is not None and day < today:
                found[draft.id] = day
    for name in network.names:
        draft, day = network.drafts[name], last[name]
        waits = draft.state == OPEN and draft.pinned is None and name not in found
        if draft.in_time and waits and day is not None and day < today - LONG_OVER:
            found[name] = day
    return found


def _in_the_ground(network: Network, last: Days, name: str, today: date) -> bool:
    draft, day = network.drafts[name], last[name]
    if draft.state != OPEN or draft.pinned is not None or draft.job.kind not in {SOW, PLANT}:
        return False
    return day is not None and day < today - LONG_OVER


def as_done(network: Network, done: dict[str, date]) -> Network:
    """The network with some jobs done on their days."""
    drafts = dict(network.drafts)
    for name, day in done.items():
        drafts[name] = replace(drafts[name], state=DONE, pinned=day)
    return replace(network, drafts=drafts)
