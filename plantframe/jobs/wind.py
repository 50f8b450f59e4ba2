"""Before wind: what stands, the weakest first, and what to tie down."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.jobs.covering import spans_on
from plantframe.jobs.job import BUILD, TAKE_DOWN

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import date

    from plantframe.jobs.job import Job
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season

LEAFY_AFTER: Final = timedelta(days=45)  # from planting to leaves that catch wind (common practice)
COVERED: Final = "cover"


@frozen
class Exposed:
    """A frame in the wind.

    ratio   the push of a gale on it in full leaf over what holds it, None where nobody can tell
    weak    what gives way first: posts, ground, cover or fixings
    leafy   there are leaves on it by now
    after   what to look at when it is over
    """

    frame: WorkedFrame
    ratio: float | None
    weak: str
    leafy: bool
    after: tuple[Job, ...]


def before_wind(season: Season, jobs: Sequence[Job], day: date) -> tuple[Exposed, ...]:
    """What stands on a day, the weakest first; covers, which lift, before what nobody can tell."""
    found = []
    for name, frame in season.frames.items():
        own = [job for job in jobs if job.block == name]
        if _stands(frame, own, day):
            found.append(_exposed(frame, own, day))
    return tuple(sorted(found, key=_weakest))


def _stands(frame: WorkedFrame, jobs: Sequence[Job], day: date) -> bool:
    """Whether it is up by then: nothing of its building is still to do, and it is not down."""
    building = [job for job in jobs if job.kind == BUILD and not job.whenever]
    down = [job for job in jobs if job.kind == TAKE_DOWN]
    # work that nobody marked: a frame whose day is over and whose crop is in is taken to stand
    wanted = frame.wanted_by
    in_use = wanted is not None and wanted <= day
    if not in_use and any(job.planned is None or job.planned > day for job in building):
        return False
    downs = [job.planned for job in down if job.planned is not None]
    spans = spans_on(frame, day)
    if spans:
        return any(first <= day <= last for first, last in spans)
    return not downs or day <= max(downs)


def _exposed(frame: WorkedFrame, jobs: Sequence[Job], day: date) -> Exposed:
    push = frame.push
    weak = push.weak if push is not None else ""
    if frame.frame.word == COVERED:
        weak = COVERED
    elif push is None:
        weak = "fixings" if frame.structure and frame.structure.stands.held == "wall" else ""
    elif weak == "wood":
        weak = frame.uprights
    planted = [one.in_ground.day for one in frame.plantings if one.in_ground]
    lasting = any(one.in_ground is None for one in frame.plantings)
    leafy = lasting or any(one + LEAFY_AFTER <= day for one in planted)
    ratio = push.ratio.middle if push is not None else None
    after = tuple(job for job in jobs if "gale" in job.whenever or "wind" in job.whenever)
    return Exposed(frame, ratio, weak, leafy, after)


def _weakest(one: Exposed) -> tuple[bool, float]:
    """Leafy frames by how much is asked of them, then covers, then the rest."""
    if one.ratio is not None:
        return False, -(one.ratio if one.leafy else one.ratio / 3)
    return True, 0.0 if one.weak == COVERED else 1.0
