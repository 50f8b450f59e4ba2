"""The gardener's own tasks, and having buried lines marked before anybody digs."""

from __future__ import annotations

import re
from datetime import timedelta
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen, replace
from plantframe.jobs.cautions import cautions, edged
from plantframe.jobs.days import window_of
from plantframe.jobs.job import BUILD, DONE, LINES, OWN, Before, Draft, Job, Window
from plantframe.language.mistakes import Mistake
from plantframe.season.likeness import Called, best, near, slug
from plantframe.season.units import day as shown
from plantframe.season.units import listed
from plantframe.season.work import by_house_or_verge, digging_steps

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import date

    from plantframe.jobs.drafts import Drafts
    from plantframe.plan.things import Garden, Plan, Task
    from plantframe.season.frames import WorkedFrame

OWN_MARKING: Final = "services"  # the step of a kind whose own order begins with the marking
_AWAY = re.compile(r"\b(yard|shop|mill|sawmill|merchant)\b", re.IGNORECASE)  # they saw there
MARKED_DAYS: Final = 7  # marking services ask for some working days (common practice, no source)


# ---- tasks --------------------------------------------------------------------------------------
@frozen
class Waiting:
    """A task that comes after another job: its id, the task, and the job in the task's words."""

    job: str
    task: Task
    after: str


def add_task(task: Task, out: Drafts) -> Waiting | None:
    """Add a task of the gardener's own; what it waits for is found once all jobs are there."""
    what, after = _split(task)
    minutes = (task.hours * 60, task.hours * 60) if task.hours is not None else None
    job = Job(
        f"task/{slug(what)}",
        what,
        task.block.name,
        OWN,
        hands=max(task.hands, 1),
        minutes=minutes,
        tools=edged(what) if not task.spot or not _AWAY.search(task.spot.said) else (),
        who=task.who,
        whenever=f"when {task.when}" if task.when else "",
        dangers=cautions(what),
        place=task.spot.said if task.spot else "",
        where=task.block.where,
    )
    draft = Draft(job, what, _task_window(task))
    if task.moved is not None:
        draft = replace(draft, pinned=task.moved.day)
    if task.done is not None:
        draft = replace(draft, state=DONE, pinned=task.done.day)
    name = out.add(draft)
    return Waiting(name, task, after) if after else None


def _split(task: Task) -> tuple[str, str]:
    """What is done and what it comes after; `lime the bed after clear the peas` says both."""
    if task.after:
        return task.what, task.after
    what, _, after = task.what.partition(" after ")
    return (what, after) if what and after else (task.what, "")


def _task_window(task: Task) -> Window:
    """The days a task's own line leaves it."""
    window = Window()
    if task.on is not None:
        before = task.on.said.lower().startswith(("before", "by "))
        last = task.on.day - timedelta(days=1) if before else None
        window = Window(None, None, last, task.on.said) if last else window_of(task.on)
    if task.by is not None:
        window = replace(window, not_after=task.by.last, said=f"by {shown(task.by.last)}")
    return window


def put_after(waiting: Waiting, plan: Plan, out: Drafts) -> None:
    """Put a task after the job, or the whole frame, that its words mean; say if none is."""
    own = waiting.task.block.where
    meant = _meant(waiting, plan, out)
    out.befores += [
        Before(first, waiting.job, because="your own line says so", own=own) for first in meant
    ]
    if not meant:
        others = [Called(d.called, d.job.does) for d in out.by_id.values() if d.id != waiting.job]
        told = {
            "name": "the plan",
            "job": waiting.after,
            "near": ", ".join(near(waiting.after, others)),
        }
        out.mistakes.append(Mistake("no-such-job", own, told))


def _meant(waiting: Waiting, plan: Plan, out: Drafts) -> tuple[str, ...]:
    """The jobs that the words after `after` mean: a frame's building, a task, a step."""
    words = waiting.after
    head, colon, rest = words.partition(":")
    name = _named(words, plan) or (_named(head, plan) if colon else "")
    drafts = [draft for draft in out.by_id.values() if draft.id != waiting.job]
    if name:
        drafts = [draft for draft in drafts if draft.job.block == name]
        if not (colon and rest.strip()):
            return tuple(draft.id for draft in drafts if draft.job.kind == BUILD)
        words = rest.strip()
    tasks = [draft for draft in drafts if draft.job.kind == OWN]
    for among in (tasks, drafts):
        found = best(words, [Called(draft.called, draft.job.does) for draft in among])
        if found is not None:
            return (among[found].id,)
    return ()


def _named(words: str, plan: Plan) -> str:
    """The bed, frame or wall of that name, whatever the capitals and with or without `the`."""
    said = words.strip().lower().removeprefix("the ")
    names = (*plan.frames, *plan.beds, *plan.things)
    return next((name for name in names if name.lower().removeprefix("the ") == said), "")


# ---- buried lines ---------------------------------------------------------------------------
def add_lines_marked(frames: list[tuple[WorkedFrame, Mapping[str, str]]], out: Drafts) -> None:
    """Have buried lines marked a week before the first digging near the house or a road.

    frames  each frame that is to be built, with its job ids by step id
    """
    digging: dict[str, list[str]] = {}
    for frame, jobs in frames:
        if frame.structure is not None and OWN_MARKING in jobs:
            continue
        steps = [jobs[step.id] for step in digging_steps(frame) if step.id in jobs]
        marked = frame.frame.lines_marked or frame.garden.lines_marked
        if marked is not None:
            _not_before(steps, marked.day, out)
        elif steps and by_house_or_verge(frame):
            digging[frame.frame.name] = steps
    if not digging:
        return
    garden = frames[0][0].garden
    own = [name for name, draft in out.by_id.items() if _asks_for_marking(draft)]
    name = own[0] if own else out.add(_marking(list(digging), garden))
    for steps in digging.values():
        out.put(
            [name],
            steps,
            wait=(MARKED_DAYS, MARKED_DAYS),
            waits_for="the lines to be marked",
            because="nobody digs before the lines are marked",
        )


def _asks_for_marking(draft: Draft) -> bool:
    """Whether the gardener has a task for it already."""
    words = draft.job.says.lower()
    return draft.job.kind == OWN and "mark" in words and bool(re.search(r"lines|cable|pipe", words))


def _marking(frames: list[str], garden: Garden) -> Draft:
    """The job of having them marked."""
    job = Job(
        "garden/lines-marked",
        f"have buried cables and pipes marked before the digging for {listed(frames)}",
        garden.name,
        LINES,
        wait="a week for the lines to be found and marked",
        how="Ask your local service for buried lines and keep to its rules; dig by hand at a mark",
        where=garden.where,
    )
    return Draft(job, "have lines marked")


def _not_before(steps: list[str], day: date, out: Drafts) -> None:
    """Nothing is dug before the day the plan says the lines are marked."""
    for name in steps:
        out.change(name, window=replace(out.by_id[name].window, not_before=day))
