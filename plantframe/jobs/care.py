"""Work that comes round: what a frame's kind and a plant ask for again and again."""

from __future__ import annotations

import re
from datetime import date, timedelta
from typing import TYPE_CHECKING, Final

from plantframe.catalogue.expressions import evaluate
from plantframe.catalogue.mistakes import ExpressionError
from plantframe.frozen import replace
from plantframe.jobs.building import place_of
from plantframe.jobs.covering import spans_on
from plantframe.jobs.days import time_of_year
from plantframe.jobs.job import CARE, PICK, TRAIN, Draft, Job, Window
from plantframe.jobs.needed import needed
from plantframe.season.likeness import slug
from plantframe.season.rounds import last_done
from plantframe.season.times import is_tropical, names_a_time

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from plantframe.catalogue.entries import Care, Danger, Plant, PlantCare
    from plantframe.catalogue.sourced import Sourced
    from plantframe.jobs.drafts import Drafts
    from plantframe.plan.things import Garden
    from plantframe.season.frames import WorkedFrame
    from plantframe.season.plantings import WorkedPlanting

PICKING: Final = frozenset({"pick", "cut", "gather", "pull"})
# What gives a plant its support; on a frame that is the frame's own building.
SUPPORTING: Final = frozenset({"stick", "brush", "ring", "stake", "cane", "string", "weave"})
WATER: Final = "water"
GROWING: Final = "while something grows there"
# Cautions that come with a tool: without it the round is done from the ground, off the wire.
TOOLS_OF: Final = {
    "ladder": frozenset({"steps", "ladder"}),
    "whip": frozenset({"goggles", "wire strainer"}),
}
HALF_A_YEAR: Final = timedelta(days=180)
SELDOM_DAYS: Final = 60  # a round that comes more seldom belongs to a time of year
AFTER_FLOWERS: Final = timedelta(days=30)  # while the cut can still be made (common practice)
_COLD = re.compile(r"\b(snow|frost|ice)\b")
_WHILE_GROWING = re.compile(r"while it grows|while fruit|growing season")

Offsets = dict[str, tuple[str, Window | None]]
"""What a round is counted from (sowing, planting): the job that begins it, "" where it is over
already, and its window."""


# ---- a plant's rounds -------------------------------------------------------------------------
def add_rounds(
    planting: WorkedPlanting,
    job: Callable[[str, str], Job],
    offsets: Offsets,
    ends: date | None,
    out: Drafts,
    *,
    framed: bool,
) -> tuple[str, ...]:
    """Add the rounds a plant asks for.

    job   makes a job of this planting from a name and what is done
    ends  the last day of the crop, None where it stays
    framed  a frame of the plan holds it up already
    Returns the ids of those that end with the crop.
    """
    entry = planting.entry
    if entry is None:
        return ()
    ending: list[str] = []
    placed, in_place = offsets["planting"]
    for care in entry.care:
        if framed and care.id in SUPPORTING:
            continue
        window, counted = _begins(care, entry, planting.garden, offsets)
        if _frost_of(care) and planting.garden.frost_none:
            continue  # nothing is done before a frost that never comes
        if placed and (_before_it_is_there(window, in_place) or _of_later_years(care, entry)):
            continue
        says = _small(care.do)
        made = job(f"{slug(planting.planting.said)}-{slug(care.id)}", f"{planting.name}: {says}")
        yearly = _years(care.every) is not None
        every = None if yearly else _every(care.every)
        until = None if yearly else _until(care, planting.garden, offsets) or ends
        row = planting.row_m
        made = replace(
            made,
            kind=_kind(care, yearly=yearly),
            hands=care.hands,
            tools=care.tools,
            minutes=_range(care.minutes_per_metre, row) if row else None,
            every_days=every,
            until=until if every else None,
            how=_told(window),
            whenever=_whenever(care, planting.garden) if window is None and not counted else "",
        )
        called = f"{care.id} {slug(planting.planting.said)}"
        name = out.add(Draft(made, called, window or Window(), in_time=every is None))
        if placed:
            out.put([placed], [name], wait=counted or (0, 0), waits_for="the plant to grow")
        if not yearly:
            ending.append(name)
    return tuple(ending)


def _whenever(care: PlantCare, garden: Garden) -> str:
    """The words for when a round begins, where they give no days here."""
    words = care.from_.value if care.from_ else ""
    if care.from_ is not None and (frost := _frost_of(care)):
        ends = [one for one in (care.from_.low, care.from_.high) if one is not None]
        weeks = sorted({round(abs(days) / 7) for days in ends})
        side = "before" if min(ends) < 0 else "after"
        return f"{' to '.join(str(one) for one in weeks)} weeks {side} the {frost}"
    return "in its own time" if names_a_time(words) and is_tropical(garden) else words


def _frost_of(care: PlantCare) -> str:
    """The frost from which a round is counted, "" where it is not."""
    base = care.from_.base.removeprefix("days from ") if care.from_ else ""
    return base if base in {"last frost", "first frost"} else ""


def _told(window: Window | None) -> str:
    """The time of year with its days, as a sentence."""
    if window is None or window.not_after is None or " here: " not in window.said:
        return ""
    return f"{window.said[:1].upper()}{window.said[1:]}."


def _kind(care: PlantCare, *, yearly: bool) -> str:
    if care.id in PICKING:
        return PICK
    # whoever looks after the garden waters it; leading and pinching are the gardener's own
    return CARE if yearly or care.id == WATER else TRAIN


def _begins(
    care: PlantCare, entry: Plant, garden: Garden, offsets: Offsets
) -> tuple[Window | None, tuple[int, int] | None]:
    """The window in which a round begins, or the days it begins after its plant is in place."""
    begins = care.from_
    if begins is None:
        return None, None
    if begins.is_word:
        once = _every(care.every) is None or _years(care.every) is not None
        return _in_season(begins.value, entry, garden, whole=once), None
    event = begins.base.removeprefix("days from ")
    days = round(begins.usual if begins.low is None else begins.low)
    if event in offsets:
        job, window = offsets[event]
        if job:
            return None, (days, days)
        return _days_on(window, days), None
    frost = {"last frost": garden.frost_last, "first frost": garden.frost_first}.get(event)
    if frost is None:
        return None, None
    most = round(begins.usual if begins.high is None else begins.high)
    first, last = frost.day + timedelta(days=days), frost.day + timedelta(days=most)
    return Window(first, None, max(last, first + timedelta(days=7)), f"your {event}"), None


def _in_season(words: str, entry: Plant, garden: Garden, *, whole: bool) -> Window | None:
    """A time of year; for what is done after flowering, the month after the last flower.

    whole   any day of it will do; else it is where the rounds begin
    """
    if "after flowering" in words:
        flowers = entry.other.get("flowers in")
        found = time_of_year(flowers.value, garden) if flowers else None
        if found is None or found.not_after is None:
            return None
        return Window(found.not_after, None, found.not_after + AFTER_FLOWERS, words)
    found = time_of_year(words, garden)
    if found is None or whole:
        return found
    return Window(found.not_before, found.not_before, None, found.said)


def _days_on(window: Window | None, days: int) -> Window | None:
    """The window some days after another."""
    if window is None or window.aim is None:
        return None
    start = window.aim + timedelta(days=days)
    return Window(start, start, None, window.said)


def _before_it_is_there(window: Window | None, in_place: Window | None) -> bool:
    """Whether a round of this year is over before its plant is in the ground."""
    if window is None or window.not_after is None or in_place is None:
        return False
    return in_place.aim is None or window.not_after < in_place.aim


def _of_later_years(care: PlantCare, entry: Plant) -> bool:
    """Whether a round is for a plant that has borne: picking it, and cutting what has borne."""
    bears = entry.harvest
    if bears is None or bears.is_word or bears.base != "years":
        return False
    first = bears.usual if bears.low is None else bears.low
    return first >= 1 and (care.id in PICKING or _years(care.every) is not None)


def _until(care: PlantCare, garden: Garden, offsets: Offsets) -> date | None:
    """The last day the plant's own entry gives a round."""
    if care.until is None:
        return None
    if care.until.is_word:
        found = time_of_year(care.until.value, garden)
        return found.not_after if found else None
    event = care.until.base.removeprefix("days from ")
    days = timedelta(days=round(care.until.usual))
    frost = {"last frost": garden.frost_last, "first frost": garden.frost_first}.get(event)
    if frost is not None:
        return frost.day + days
    window = offsets.get(event, ("", None))[1]
    return window.aim + days if window and window.aim else None


# ---- a frame's rounds -------------------------------------------------------------------------
def add_frame_care(
    frame: WorkedFrame,
    stands: Iterable[str],
    growing: Iterable[tuple[str, Window | None, date | None]],
    today: date,
    out: Drafts,
) -> None:
    """Add what a frame's kind asks for while it stands.

    stands   the jobs with which it stands
    growing  for each planting the job that places it, its window and its last day
    """
    if frame.structure is None:
        return
    stands, growing = tuple(stands), tuple(growing)
    for care in frame.structure.care:
        if not _wanted(care, frame) or (_COLD.search(care.event) and frame.garden.frost_none):
            continue
        years = _years(care.every)
        draft = _frame_round(care, frame, growing)
        if years is not None:
            due = _due(care, years, frame, draft.window)
            if due is None:
                continue
            draft = replace(draft, job=replace(draft.job, reckoned=due))
        name = out.add(draft)
        out.put(stands, [name])
        for span in spans_on(frame, today)[1:] if _comes_often(care) else ():
            # it is on since last year, and wants the same while it is
            out.add(_frame_round(care, frame, growing, span))
        if _WHILE_GROWING.search(care.season):
            out.put([job for job, _, _ in growing if job], [name])


def _comes_often(care: Care) -> bool:
    """Whether it comes round in weeks or days, while a cover is on."""
    every = None if _years(care.every) is not None else _every(care.every)
    often = every is not None and every[1] < SELDOM_DAYS
    return often and not care.event and not _WHILE_GROWING.search(care.season)


def _frame_round(
    care: Care,
    frame: WorkedFrame,
    growing: tuple[tuple[str, Window | None, date | None], ...],
    span: tuple[date, date] | None = None,
) -> Draft:
    """One round of a frame; `span` the days its lights are on, where not the plan's own."""
    structure = frame.structure
    dangers = structure.dangers if structure else ()
    every = None if _years(care.every) is not None else _every(care.every)
    window = time_of_year(care.season, frame.garden) if care.season else None
    until, whenever = None, care.event
    if every is not None and every[1] < SELDOM_DAYS:
        if _WHILE_GROWING.search(care.season):
            starts = [one.aim for _, one, _ in growing if one and one.aim]
            window = Window(min(starts), min(starts)) if starts else None
            until = max((end for _, _, end in growing if end), default=None)
        elif frame.frame.on is not None:
            begins, until = span or (frame.frame.on.day, frame.frame.on.last)
            window = Window(begins, begins)
        elif window is not None:
            until = window.not_after
            window = Window(window.not_before, window.not_before)
        if care.id == WATER and window is not None:
            window = _once_it_grows(window, growing)
        if window is None:
            whenever = GROWING if care.id == WATER or not _means_here(care, frame) else care.season
    job = Job(
        f"{slug(frame.frame.name)}/care-{slug(care.id)}",
        f"{frame.frame.name}: {care.do}",
        frame.frame.name,
        CARE,
        hands=care.hands,
        tools=care.tools,
        minutes=_range(care.minutes, _times(care.per, frame)),
        dangers=tuple(
            danger.says for danger in dangers if "care" in danger.at and _concerns(danger, care)
        ),
        place=place_of(frame),
        how=needed(care, frame),
        every_days=every if not care.event else None,
        until=until,
        whenever=whenever,
        where=frame.frame.block.where,
    )
    return Draft(job, care.id, window or Window())


def _means_here(care: Care, frame: WorkedFrame) -> bool:
    """Whether a round's season means anything here: between the tropics none does."""
    return not (names_a_time(care.season) and is_tropical(frame.garden))


def _once_it_grows(
    window: Window, growing: Iterable[tuple[str, Window | None, date | None]]
) -> Window | None:
    """The days of a round that wants something growing there; None where nothing is due to."""
    ends = [end for _, _, end in growing]
    starts = [one.aim if one else None for _, one, _ in growing]
    if not ends or window.aim is None:
        return None
    if any(start is None for start in starts):
        return window  # it grows there already, or nobody knows
    first = min(start for start in starts if start)
    return replace(window, not_before=max(window.aim, first), aim=max(window.aim, first))


def _concerns(danger: Danger, care: Care) -> bool:
    """Whether a caution is one for this round: no ladder falls where nobody climbs."""
    tools = TOOLS_OF.get(danger.kind)
    return tools is None or bool(tools & set(care.tools))


def _wanted(care: Care, frame: WorkedFrame) -> bool:
    """Whether this frame is one that asks for it."""
    if not care.when:
        return True
    if frame.worked is None:
        return False
    try:
        return bool(evaluate(care.when, {**frame.worked.facts.values, **frame.worked.sums}))
    except ExpressionError:
        return False


def _due(care: Care, years: tuple[float, float], frame: WorkedFrame, window: Window) -> str | None:
    """Why a round that comes by years is due in its time of this season; None where it is not."""
    starts = window.not_before or date(frame.garden.year, 1, 1)
    # what was done in the half-year before its time is this round, done early
    last, _ = last_done(frame, care, starts - HALF_A_YEAR)
    year = starts.year
    if last is None or year - last < years[0]:
        return None
    if years[0] <= 1:
        return f"once a year; it stands since {last}"
    shown = f"{years[0]:.0f}" if years[0] == years[1] else f"{years[0]:.0f} to {years[1]:.0f}"
    return f"last done in {last}; due every {shown} years"


# ---- figures ------------------------------------------------------------------------------------
def _times(per: str, frame: WorkedFrame) -> float:
    """How many times the minutes count."""
    worked = frame.worked
    if worked is None:
        return 1.0
    if per in worked.pieces:
        return float(worked.pieces[per].count)
    try:
        return worked.figure(per)
    except ExpressionError:
        return 0.0  # counted by a part of which there is none here


def _range(minutes: Sourced | None, times: float) -> tuple[float, float] | None:
    if minutes is None:
        return None
    low = minutes.usual if minutes.low is None else minutes.low
    high = minutes.usual if minutes.high is None else minutes.high
    return low * times, high * times


def _years(every: Sourced | None) -> tuple[float, float] | None:
    """From and to, of what comes round by years."""
    if every is None or every.base != "years":
        return None
    low = every.usual if every.low is None else every.low
    high = every.usual if every.high is None else every.high
    return low, high


def _every(every: Sourced | None) -> tuple[int, int] | None:
    """From and to in days, of what comes round oftener."""
    if every is None or every.is_word:
        return None
    low = every.usual if every.low is None else every.low
    high = every.usual if every.high is None else every.high
    return max(round(low), 1), max(round(high), 1)


def _small(does: str) -> str:
    """A sentence of an entry as the end of a line: a small letter first, no full stop."""
    text = " ".join(does.split()).rstrip(".")
    return text[:1].lower() + text[1:]
