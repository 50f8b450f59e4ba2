"""Jobs as the lines of a sheet, with their notes, and what has become of each."""

from __future__ import annotations

from types import MappingProxyType
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.paper.sheet import Row
from plantframe.paper.text import sentence
from plantframe.season.units import dated, day, minutes_words

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping
    from datetime import date

    from plantframe.jobs.job import Job
    from plantframe.jobs.listing import Jobs
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.units import Shown

HEAVY_KG: Final = 10.0  # a weight worth telling (common practice, no source)
A_DAY: Final = "DATE"  # stands for a date in the line that a tick becomes


@frozen
class Listed:
    """The jobs of a frame by their ids, whatever has become of them.

    ticked   the days on which the plan itself says that some were done
    """

    open: dict[str, Job]
    done: dict[str, Job]
    skipped: dict[str, Job]
    ticked: Mapping[str, date] = MappingProxyType({})

    def job(self, name: str) -> Job | None:
        """The job of that id."""
        return self.open.get(name) or self.done.get(name) or self.skipped.get(name)

    def state(self, name: str) -> str:
        """What a sheet says of a job that is not to be done any more."""
        if name in self.done:
            return f"done {day(self.ticked[name])}" if name in self.ticked else "done"
        if name in self.skipped:
            because = self.skipped[name].because
            return f"left out: {because}" if because else "left out"
        return ""


def listed_jobs(
    jobs: Jobs, kinds: Iterable[str], block: str, ticked: Mapping[str, date] = MappingProxyType({})
) -> Listed:
    """The jobs of a block that are of some kinds."""
    wanted = frozenset(kinds)

    def chosen(some: Iterable[Job]) -> dict[str, Job]:
        return {job.id: job for job in some if job.block == block and job.kind in wanted}

    return Listed(chosen(jobs.jobs), chosen(jobs.done), chosen(jobs.skipped), ticked)


def row_of(number: int, says: str, name: str, job: Job, known: Listed, shown: Shown) -> Row:
    """A line of a sheet from a job; `known` says what has become of it."""
    notes = []
    if job.weight_kg >= HEAVY_KG:
        notes.append(("", f"about {shown.weight(job.weight_kg)} to lift"))
    if job.alone:
        notes.append(("alone", job.alone))
    if job.dont_yet:
        notes.append(("not yet", job.dont_yet))
    if job.power:
        notes.append(("socket", "do it at the house"))
    if job.wait:
        notes.append(("then wait", job.wait))
    if job.how:
        notes.append(("", job.how))
    return Row(
        number,
        sentence(says),
        tuple(notes),
        job.hands,
        minutes_words(job.minutes) if job.minutes else "",
        ", ".join(job.tools),
        job.who[0] if len(job.who) == 1 else "",
        dated(job.planned) if job.planned and name in known.open else "",
        known.state(name),
        job.stop_point,
        bool(job.dangers),
    )


def about_of(frame: WorkedFrame) -> str:
    """What it is and where: net frame, in Long Bed, north end."""
    return ", ".join(word for word in (kind_words(frame), place_words(frame)) if word)


def kind_words(frame: WorkedFrame) -> str:
    """What a frame is: net frame; own design."""
    return (
        frame.structure.name if frame.structure else "own design" if frame.frame.own_design else ""
    )


def place_words(frame: WorkedFrame) -> str:
    """Where it stands, as the gardener wrote it."""
    return ", ".join(spot.said for spot in frame.frame.spots if spot.said)


def copy_back(block: str, called: str) -> str:
    """The line of the plan that a tick becomes."""
    return f"A tick becomes a line under “{block}” in the plan: done {called}, {A_DAY}"
