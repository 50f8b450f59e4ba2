"""Done, moved, skipped: the gardener's marks put on the jobs they mean."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from plantframe.frozen import replace
from plantframe.jobs.care import HALF_A_YEAR
from plantframe.jobs.job import BUILD, CARE, DONE, OPEN, SKIPPED, TAKE_DOWN
from plantframe.language.edits import rewrite
from plantframe.language.mistakes import Mistake
from plantframe.season.likeness import Called, meant, near, short, slug
from plantframe.season.rounds import done_marks, is_of_years
from plantframe.season.units import listed
from plantframe.season.work import marked

if TYPE_CHECKING:
    from plantframe.jobs.drafts import Drafts
    from plantframe.jobs.job import Draft
    from plantframe.plan.things import Bed, Mark, Thing
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season


def put_marks(season: Season, out: Drafts) -> None:
    """Put every mark of the plan on its job, and say what it was taken for, or that none is."""
    for name, frame in season.frames.items():
        of_steps = marked(frame)
        taken = [mark for mark, _ in of_steps.taken] if frame.stands else []
        needless = {id(mark.fact) for mark in (*of_steps.needless, *taken)}
        for mark in frame.frame.marks:
            drafts = out.of_block(name)
            if _of_an_earlier_round(mark, frame, drafts):
                continue
            if not _put(mark, drafts, out) and id(mark.fact) not in needless:
                _unknown(mark, name, drafts, out)
    plan = season.plan
    places: tuple[Bed | Thing, ...] = (*plan.beds.values(), *plan.things.values())
    for place in places:
        for mark in place.marks:
            drafts = out.of_block(place.name)
            if not _put(mark, drafts, out):
                _unknown(mark, place.name, drafts, out)
    for mark in plan.garden.marks:
        drafts = [*out.by_id.values()]
        if not _put(mark, drafts, out):
            _unknown(mark, plan.garden.name or "the garden", drafts, out)
    _done_with(out)


def _put(mark: Mark, drafts: list[Draft], out: Drafts) -> bool:
    """Put one mark on the job it means, building first; False where it means none."""
    building = [draft for draft in drafts if draft.job.kind == BUILD]
    for among in (building, drafts):
        found = meant(mark.job, [Called(draft.called, draft.job.does) for draft in among])
        if found:
            break
    else:
        return False
    means = [out.by_id[among[at].id] for at in found]
    said = " ".join(mark.job.lower().split())
    if all(said not in {draft.job.does.lower(), short(draft.job.does).lower()} for draft in means):
        steps = [f"“{short(draft.job.does)}”" for draft in means]
        told = {"job": mark.job, "step": listed(steps)}
        out.mistakes.append(Mistake("matched-job", mark.fact.where, told))
    for draft in means:
        out.by_id[draft.id] = _marked(draft, mark)
    return True


def _of_an_earlier_round(mark: Mark, frame: WorkedFrame, drafts: list[Draft]) -> bool:
    """Whether a line tells of a round of care that is not due this season, because it was done."""
    listed = {draft.id for draft in drafts}
    return any(
        mark in done_marks(frame, care)
        and f"{slug(frame.frame.name)}/care-{slug(care.id)}" not in listed
        for care in (frame.structure.care if frame.structure else ())
        if is_of_years(care)
    )


def _marked(draft: Draft, mark: Mark) -> Draft:
    """The job with a mark on it. What comes round goes on after it was done once."""
    day = mark.day.day if mark.day else None
    if mark.kind == "skip":
        if not mark.because:
            return draft
        return replace(draft, state=SKIPPED, job=replace(draft.job, because=mark.because))
    if mark.kind == "move":
        return replace(draft, pinned=day) if draft.state == OPEN else draft
    if draft.job.every_days is None:
        early = draft.window.not_before - HALF_A_YEAR if draft.window.not_before else None
        if draft.job.reckoned and draft.job.kind == CARE and day and early and day < early:
            return draft  # that was the round of the year before
        return replace(draft, state=DONE, pinned=day)
    if day is None:
        return draft
    start = day + timedelta(days=draft.job.every_days[1])
    return replace(draft, window=replace(draft.window, not_before=start, aim=start))


def _unknown(mark: Mark, name: str, drafts: list[Draft], out: Drafts) -> None:
    others = near(mark.job, [Called(draft.called, draft.job.does) for draft in drafts])
    told = {"name": name, "job": mark.job, "near": ", ".join(others)}
    edits = tuple(rewrite(mark.fact.where, mark.job, other) for other in others[:2])
    out.mistakes.append(Mistake("no-such-job", mark.fact.where, told, edits))


def _done_with(out: Drafts) -> None:
    """What its kind puts before a step that is done was done with it, unless a date says not."""
    firsts: dict[str, list[str]] = {}
    for before in out.befores:
        if before.own is None:
            firsts.setdefault(before.then, []).append(before.first)
    working = (BUILD, TAKE_DOWN)
    waiting = [
        name
        for name, draft in out.by_id.items()
        if draft.state == DONE and draft.job.kind in working
    ]
    while waiting:
        for first in firsts.get(waiting.pop(), ()):
            draft = out.by_id[first]
            if draft.state == OPEN and draft.pinned is None and draft.job.kind in working:
                out.change(first, state=DONE)
                waiting.append(first)
