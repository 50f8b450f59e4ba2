"""What the log says was picked: weights, counts, first and last."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from plantframe.diary.years import label
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence
    from datetime import date

    from plantframe.plan.things import LogEntry
    from plantframe.season.plantings import WorkedPlanting
    from plantframe.season.season import Season

_PICKED = re.compile(
    r"\b(pick(ed|ing)?|harvest(ed)?|gathered|cut|pulled|lifted|dug)\b", re.IGNORECASE
)
_FIRST = re.compile(r"\bfirst\b", re.IGNORECASE)
_LAST = re.compile(r"\blast (pick|picked|picking|ones?|of)\b|\bpicked the last\b", re.IGNORECASE)
_COUNT = re.compile(
    r"(?<![\d.,])(\d{1,4})(?![\d.,]*\s*(?:kg|g|lb|oz|in|ft|cm|mm|m|h|%)\b)(?![\d.])"
)
_TOLD_OF: Final = re.compile(r"\b(lost|eaten|rotten|bowed|low|broke)\b", re.IGNORECASE)


@frozen
class Pick:
    """One line of the log that tells of picking.

    block     the frame or bed it is about, "" where it names none
    crop      the plant, as the plan names it; "" where nobody can tell
    weight_kg, count   None where the line gives none
    """

    season: str
    day: date | None
    block: str
    crop: str
    weight_kg: float | None
    count: int | None
    first: bool
    last: bool
    words: str


@frozen
class Total:
    """What came off one crop of one frame or bed in a season.

    kg_per_m   a metre of its row, None where the row's length or the weight is not known
    """

    season: str
    block: str
    crop: str
    weight_kg: float | None
    count: int | None
    times: int
    first: date | None
    last: date | None
    kg_per_m: float | None


def picks_of(season: Season) -> tuple[Pick, ...]:
    """Every line of a season's log that tells of picking, in the order of days."""
    found = [pick for entry in season.plan.log if (pick := _pick(entry, season)) is not None]
    return tuple(sorted(found, key=lambda pick: (pick.day is None, pick.day or season.today)))


def _pick(entry: LogEntry, season: Season) -> Pick | None:
    words = entry.words
    if not _PICKED.search(words):
        return None
    weight = sum(measure.value for measure in entry.measures if measure.dimension == "weight")
    counted = _COUNT.search(words) if not weight and not _TOLD_OF.search(words) else None
    return Pick(
        label(season),
        entry.day.day if entry.day else None,
        entry.about,
        _crop(entry, season),
        weight or None,
        int(counted[1]) if counted else None,
        bool(_FIRST.search(words)),
        bool(_LAST.search(words)),
        words,
    )


def _crop(entry: LogEntry, season: Season) -> str:
    """The crop a line means: the only one of its frame, or the one it names."""
    there = [one for one in season.plantings if one.holder == entry.about or not entry.about]
    if entry.about in season.plan.beds:
        there += [one for one in season.plantings if season.bed_name(one) == entry.about]
    named = [one for one in there if _names(entry.words, one)]
    names = list(dict.fromkeys(one.name for one in named))
    if len(names) == 1:
        return names[0]
    only = list(dict.fromkeys(one.name for one in there))
    return only[0] if entry.about and len(only) == 1 and not names else ""


def _names(words: str, planting: WorkedPlanting) -> bool:
    """Whether a line names a plant: its name, the last word of it, or the cultivar; or several."""
    said = words.lower()
    names = [planting.name, planting.name.split()[-1] if planting.name else ""]
    names += [planting.planting.cultivar]
    return any(
        re.search(rf"\b{re.escape(name.lower().rstrip('s'))}(es|s)?\b", said)
        for name in names
        if name
    )


def totals_of(seasons: Iterable[Season]) -> tuple[Total, ...]:
    """What came off each crop of each frame and bed, season by season."""
    found = []
    for season in seasons:
        by_crop: dict[tuple[str, str], list[Pick]] = {}
        for pick in picks_of(season):
            by_crop.setdefault((pick.block, pick.crop), []).append(pick)
        found += [_total(season, picks) for picks in by_crop.values()]
    return tuple(found)


def _total(season: Season, picks: Sequence[Pick]) -> Total:
    block, crop = picks[0].block, picks[0].crop
    weights = [pick.weight_kg for pick in picks if pick.weight_kg is not None]
    counts = [pick.count for pick in picks if pick.count is not None]
    days = [pick.day for pick in picks if pick.day is not None]
    weight = sum(weights) if weights else None
    row_m = _row_m(season, block, crop)
    return Total(
        label(season),
        block,
        crop,
        weight,
        sum(counts) if counts else None,
        len(picks),
        min(days, default=None),
        max(days, default=None),
        weight / row_m if weight is not None and row_m else None,
    )


def _row_m(season: Season, block: str, crop: str) -> float | None:
    rows = [
        one.row_m
        for one in season.plantings
        if one.holder == block and (one.name == crop or not crop) and one.row_m
    ]
    return rows[0] if rows else None
