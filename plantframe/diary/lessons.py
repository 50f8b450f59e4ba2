"""What was learned: remarks that say never or again, and what came of warnings set aside."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from plantframe.diary.years import label
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import date

    from plantframe.plan.things import Bed, Frame, Thing
    from plantframe.season.season import Season

NEVER: Final = "never"
AGAIN: Final = "again"
_NEVER = re.compile(r"\b(never|not again|no more|don['’]t)\b", re.IGNORECASE)
_AGAIN = re.compile(r"\b(again|repeat|same next year|worked|one more)\b", re.IGNORECASE)


@frozen
class Lesson:
    """A remark for another year.

    tag     never or again
    about   the frame or bed, "" for the whole garden
    words   as written
    """

    tag: str
    season: str
    about: str
    words: str
    day: date | None = None


@frozen
class Outcome:
    """A warning that was set aside, and what the log says of that frame or bed since."""

    season: str
    block: str
    rule: str
    because: str
    who: str
    when: date | None
    since: tuple[str, ...]


def lessons_of(seasons: Iterable[Season]) -> tuple[Lesson, ...]:
    """Remarks and lines of the log that say never or again, this season's first."""
    found = []
    for season in seasons:
        plan = season.plan
        said: list[tuple[str, str, date | None]] = [
            (note.about, note.words, None) for note in plan.notes
        ]
        said += [
            (entry.about, entry.words, entry.day.day if entry.day else None) for entry in plan.log
        ]
        for about, words, day in said:
            tag = tag_of(words)
            if tag:
                found.append(Lesson(tag, label(season), about, words, day))
    return tuple(found)


def tag_of(words: str) -> str:
    """Never, again, or "" where a remark says neither."""
    if _NEVER.search(words):
        return NEVER
    return AGAIN if _AGAIN.search(words) else ""


def outcomes_of(season: Season) -> tuple[Outcome, ...]:
    """Warnings set aside this season, with what the log says of their block from then on."""
    plan = season.plan
    blocks: tuple[Frame | Bed | Thing, ...] = (
        *plan.frames.values(),
        *plan.beds.values(),
        *plan.things.values(),
    )
    found = []
    for block in blocks:
        for one in block.set_asides:
            start = one.when.day if one.when else None
            since = tuple(
                entry.words
                for entry in plan.log
                if entry.about == block.name
                and (start is None or entry.day is None or entry.day.day >= start)
            )
            found.append(
                Outcome(label(season), block.name, one.rule, one.because, one.who, start, since)
            )
    return tuple(found)
