"""needs-two: a job for two pairs of hands, and one person to do it."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from plantframe.advice.edits import set_fact
from plantframe.advice.findings import Finding, Rule, Words
from plantframe.frozen import frozen
from plantframe.season.units import listed, plural
from plantframe.season.work import marked, steps_of

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.edits import Edit
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.season import Season
    from plantframe.season.units import Shown
    from plantframe.season.work import FrameStep

MANY = 3  # more jobs than these are counted, not named


@frozen
class Facts:
    """The jobs that want two or more, how many at the most, and whether each has a way for one."""

    frame: str
    jobs: tuple[str, ...]
    hands: int
    who: str
    alone: bool


def check(frame: WorkedFrame, _season: Season) -> Iterable[Finding]:
    """Jobs for two where the plan names one builder, or knows of one person only."""
    if frame.stands or frame.builders_work:
        return
    who, named = _one_person(frame)
    if not who:
        return
    steps = steps_of(frame)
    marks = marked(frame, steps)
    gone = {*marks.done, *marks.skipped}
    wanted = [step for step in steps if step.step.hands > 1 and step.id not in gone]
    if not wanted:
        return
    alone = all(step.step.alone for step in wanted)
    line = frame.frame.fact("built by")
    yield Finding(
        # where one person lives and each job has a way for one, that is worth saying, not warning
        level="warn" if named or not alone else "note",
        where=line.where if line else frame.frame.block.where,
        block=frame.frame.name,
        facts=Facts(
            frame.frame.name,
            tuple(step.short for step in wanted),
            max(step.step.hands for step in wanted),
            who,
            alone,
        ),
        by=frame.wanted_by,
        candidates=partial(_ways_out, frame, who),
        ways=tuple(_ways(wanted)),
    )


def _one_person(frame: WorkedFrame) -> tuple[str, bool]:
    """The one person who builds it, and whether the plan names them for it; "" where more may."""
    fact = frame.frame.fact("built by")
    if fact is not None:
        names = [str(name) for name in fact.all("person")]
        known = [name for name in names if frame.garden.person(name)]
        return (names[0], True) if len(names) == 1 and known else ("", False)
    people = frame.garden.people
    return (people[0].name, False) if len(people) == 1 else ("", False)


def _ways_out(frame: WorkedFrame, who: str) -> Iterable[Edit]:
    """Somebody else of the garden helps."""
    for person in frame.garden.people:
        if person.name and person.name != who:
            yield set_fact(frame.frame, "built by", f"built by {who} and {person.name}")


def _ways(wanted: list[FrameStep]) -> Iterable[str]:
    """How one person does each; then a second for what one cannot do."""
    for step in wanted:
        if step.step.alone:
            yield f"Alone, to {step.short}: {step.step.alone}."
    left = [step.short for step in wanted if not step.step.alone]
    if left:
        yield f"Ask somebody for an hour, to {listed(left[:MANY])}."


def words(facts: Facts, _shown: Shown) -> Words:
    """It in words."""
    hands = "two pairs of hands" if facts.hands == 2 else f"{facts.hands} people"
    jobs = (
        listed([f"“{job}”" for job in facts.jobs])
        if len(facts.jobs) <= MANY
        else plural(len(facts.jobs), "job")
    )
    want = "wants" if len(facts.jobs) == 1 else "want"
    return Words(
        says=f"{facts.frame}: {jobs} {want} {hands}, and {facts.who} is alone.",
        if_ignored=(
            "Without a helper it slips half way, and is begun again."
            if facts.alone
            else "It is let go of half way, and somebody is under it."
        ),
        told=f"{facts.who} builds it.",
        sum="How many hands a job wants: common practice.",
    )


RULE = Rule(
    name="needs-two",
    summary="a job for two pairs of hands and one person to do it",
    looks_at="frame",
    levels=("note", "warn"),
    basis="common practice",
    check=check,
    words=words,
)
