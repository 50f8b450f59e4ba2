"""One job told twice: a round of care that the gardener has put into a task already."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.frozen import replace
from plantframe.jobs.job import CARE, OWN
from plantframe.season.likeness import Called, best

if TYPE_CHECKING:
    from plantframe.jobs.drafts import Drafts
    from plantframe.season.season import Season


def join_with_tasks(season: Season, out: Drafts) -> None:
    """A task that is a round of a frame takes what the round knows, and the round goes."""
    for name in season.frames:
        tasks = {task.block.where for task in season.tasks_about(name)}
        own = [d for d in out.by_id.values() if d.job.kind == OWN and d.job.where in tasks]
        for round_ in out.of_block(name):
            job = round_.job
            if job.kind != CARE or job.every_days is not None or job.whenever or not own:
                continue
            called = [Called(round_.called, job.does)]
            same = [draft for draft in own if best(draft.job.says, called) == 0]
            if same:
                _join(same[0].id, round_.id, out)


def _join(task: str, round_: str, out: Drafts) -> None:
    """Give the task the round's time, hands, parts and cautions where it has none of its own."""
    own, job = out.by_id[task].job, out.by_id[round_].job
    out.change(
        task,
        job=replace(
            own,
            minutes=own.minutes or job.minutes,
            hands=max(own.hands, job.hands),
            tools=own.tools or job.tools,
            how=own.how or job.how,
            alone=own.alone or job.alone,
            dangers=tuple(dict.fromkeys((*job.dangers, *own.dangers))),
            place=own.place or job.place,
        ),
    )
    window = out.by_id[task].window
    if window.not_before is None and window.aim is None and window.not_after is None:
        out.change(task, window=out.by_id[round_].window)
    del out.by_id[round_]
    out.befores = [
        replace(one, first=task if one.first == round_ else one.first)
        if round_ in (one.first, one.then)
        else one
        for one in out.befores
        if one.then != round_
    ]
