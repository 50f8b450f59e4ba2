"""Bars that bowed, as the log tells, and the same pairing come again."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from plantframe.diary.years import label, seasons_of
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import date

    from plantframe.language.files import Reading
    from plantframe.season.season import Season

TWICE: Final = 2
_BOWED = re.compile(
    r"\b(bow(ed|ing|s)?|sag(ged|ging|s)?|hangs? low|hung low|bent|broke|snapped|low)\b",
    re.IGNORECASE,
)
_PART = re.compile(r"\b(bar|bars|ridge|rail|pole|wire|panel|beam|top)\b", re.IGNORECASE)


@frozen
class Bow:
    """A line of the log that tells of a bar hanging low.

    kind    the sort of frame; `plants` what grew on it
    low_m   how far it hung, None where the line does not say
    """

    season: str
    block: str
    kind: str
    plants: tuple[str, ...]
    low_m: float | None
    words: str


@frozen
class Again:
    """A plant that bowed the bar of a sort of frame twice or oftener, and comes on one again."""

    plant: str
    kind: str
    block: str
    seasons: tuple[str, ...]

    @property
    def says(self) -> str:
        """It in a sentence."""
        when = ", ".join(dict.fromkeys(self.seasons))
        often = {2: "twice", 3: "three times"}.get(len(self.seasons), f"{len(self.seasons)} times")
        return (
            f"{self.block}: a bar of yours has bowed under {self.plant} {often} ({when}), and "
            f"{self.plant} is on a {self.kind} again."
        )


def bowed_again_in(reading: Reading, today: date) -> tuple[Again, ...]:
    """The same, of a plan as read; earlier seasons are built only where some log tells of a bow."""
    texts = (*reading.texts, *reading.history)
    logs = [block for text in texts for block in text.blocks if block.word == "log"]
    if sum(_tells(block.where.typed) for block in logs) < TWICE:
        return ()
    return bowed_again(seasons_of(reading, today))


def _tells(words: str) -> bool:
    """Whether a line tells of a bar hanging low."""
    return bool(_BOWED.search(words) and _PART.search(words))


def bows_of(season: Season) -> tuple[Bow, ...]:
    """Every line of a season's log that tells of a bar hanging low."""
    found = []
    for entry in season.plan.log:
        if not _tells(entry.words):
            continue
        frame = season.frames.get(entry.about)
        lengths = [one.value for one in entry.measures if one.dimension == "length"]
        plants = (
            tuple(dict.fromkeys(one.planting.plant or one.name for one in frame.plantings))
            if frame
            else ()
        )
        kind = frame.frame.kind if frame else ""
        low = lengths[0] if lengths else None
        found.append(Bow(label(season), entry.about, kind, plants, low, entry.words))
    return tuple(found)


def bowed_again(seasons: Sequence[Season]) -> tuple[Again, ...]:
    """Pairings of this season under which a bar has bowed at least twice before or already.

    seasons   this one first
    """
    before: dict[tuple[str, str], list[str]] = {}
    for season in seasons:
        for bow in bows_of(season):
            for plant in bow.plants:
                before.setdefault((plant, bow.kind), []).append(bow.season)
    found = []
    for frame in seasons[0].frames.values():
        for plant in dict.fromkeys(one.planting.plant or one.name for one in frame.plantings):
            times = before.get((plant, frame.frame.kind), [])
            if len(times) >= TWICE:
                kind = frame.frame.kind or frame.frame.word
                found.append(Again(plant, kind, frame.frame.name, tuple(sorted(times))))
    return tuple(found)
