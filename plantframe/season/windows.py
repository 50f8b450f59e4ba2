"""When a plant is sown, planted, picked and looked after in this garden.

Everything is reckoned from what the plan says of the place: its frosts, its latitude, the usual
warmth of its months. What cannot be reckoned is left out.
"""

from __future__ import annotations

from datetime import date, timedelta
from itertools import takewhile
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.season.normals import normals_c
from plantframe.season.plantings import as_range
from plantframe.season.times import days_words, is_tropical, time_of_year
from plantframe.season.units import MONTHS, listed

if TYPE_CHECKING:
    from collections.abc import Iterator

    from plantframe.catalogue.entries import Plant
    from plantframe.catalogue.sourced import Sourced
    from plantframe.plan.things import Garden

FROST_TENDER: Final = frozenset({"tender", "half hardy"})
LASTING: Final = frozenset({"woody", "perennial"})
# What grows under glass stands still where days are shorter (common practice, no source).
LIGHT_H: Final = 10.0
# Days that autumn's short days add to what is sown for it (common practice, no source).
SHORT_DAYS: Final = 14
LONGEST_DAYS: Final = 240  # what has not ripened by then does not ripen here
PICKED_FOR: Final = 28  # days after the last likely first picking (common practice, no source)


@frozen
class Span:
    """Days on which something is done, or happens.

    what    sow, sow indoors, plant out, pick, sow for the cold frame …
    first, last   None where only the words are known
    why     what the days are reckoned from, in a phrase; or the whole telling
    """

    what: str
    first: date | None = None
    last: date | None = None
    why: str = ""

    @property
    def says(self) -> str:
        """`10 to 24 May (from your last frost)`."""
        if self.first is None or self.last is None:
            return self.why
        days = days_words(self.first, self.last)
        return f"{days} ({self.why})" if self.why else days


def windows(entry: Plant, garden: Garden) -> tuple[Span, ...]:
    """All that can be told of a plant's year here, in the order of the work."""
    return (
        *_frosts(garden),
        *_growing(entry, garden),
        *_by_warmth(entry, garden),
        *_under_glass(entry, garden),
        *_heat(entry, garden),
        *_care(entry, garden),
    )


def harvest_days(entry: Plant) -> tuple[int, int, str] | None:
    """Days to the first picking, fewest and most, and what they count from: sowing or planting."""
    days = as_range(entry.harvest)
    if days is None or entry.harvest is None or not entry.harvest.base.startswith("days"):
        return None
    event = "sowing" if "sowing" in entry.harvest.base else "planting"
    return round(days.low), round(days.high), event


def usual(figure: Sourced | None, garden: Garden) -> tuple[date, date] | None:
    """The days that a figure counted from a frost means this season."""
    if figure is None or figure.is_word or " from " not in figure.base:
        return None
    frost = garden.frost_first if "first" in figure.base else garden.frost_last
    days = as_range(figure)
    if frost is None or days is None:
        return None
    return (
        frost.day + timedelta(days=round(days.low)),
        frost.day + timedelta(days=round(days.high)),
    )


def begins(entry: Plant, garden: Garden) -> tuple[date, date] | None:
    """The days on which it comes into its place, as seed or as a plant."""
    return usual(entry.sow, garden) or usual(entry.plant_out, garden)


def first_picking(entry: Plant, garden: Garden) -> tuple[date, date] | None:
    """Earliest and latest likely day of the first picking, of what bears in its first season."""
    found = harvest_days(entry)
    if found is None or _lasts(entry):
        return None
    sown = usual(entry.sow, garden) or usual(entry.sow_indoors, garden)
    planted = usual(entry.plant_out, garden)
    start = (sown or planted) if found[2] == "sowing" else (planted or sown)
    if start is None:
        return None
    return start[0] + timedelta(days=found[0]), start[1] + timedelta(days=found[1])


def is_over(entry: Plant, garden: Garden) -> date | None:
    """The day it is likely to be done with: at the first frost, or after some weeks of picking."""
    frost, picked = garden.frost_first, first_picking(entry, garden)
    if is_tender(entry) and frost is not None:
        return frost.day
    return picked[1] + timedelta(days=PICKED_FOR) if picked else None


def is_tender(entry: Plant) -> bool:
    """The first frost ends it."""
    return entry.tender is not None and entry.tender.value in FROST_TENDER


def _lasts(entry: Plant) -> bool:
    return entry.life is not None and entry.life.value in LASTING


# ---- the parts ----------------------------------------------------------------------------------
def _frosts(garden: Garden) -> Iterator[Span]:
    if garden.frost_none:
        low = ", as on all low ground between the tropics" if is_tropical(garden) else ""
        yield Span("frost", why=f"none here{low}")
        if low:
            yield Span("seasons", why="no cold one between the tropics: go by rain and heat")
        return
    from plantframe.sky.frost import one_in_ten_first_day, one_in_ten_last_day

    last = garden.frost_last.day if garden.frost_last else None
    if last is not None:
        late = garden.frost_late.day if garden.frost_late else one_in_ten_last_day(last)
        own = "as you say" if garden.frost_late else "estimate"
        ten = f"; one spring in ten after {_day(late)}, {own}" if late else ""
        yield Span("last frost", why=f"{_day(last)} on average{ten}")
    first = garden.frost_first.day if garden.frost_first else None
    if first is not None:
        early = one_in_ten_first_day(first)
        ten = f"; one autumn in ten before {_day(early)}, estimate" if early else ""
        yield Span("first frost", why=f"{_day(first)} on average{ten}")


def _growing(entry: Plant, garden: Garden) -> Iterator[Span]:
    if _lasts(entry):
        return
    for what, figure in (
        ("sow indoors", entry.sow_indoors),
        ("sow", entry.sow),
        ("plant out", entry.plant_out),
    ):
        days = usual(figure, garden)
        if days is not None and figure is not None:
            frost = "first" if "first" in figure.base else "last"
            yield Span(what, *days, f"from your {frost} frost")
    yield from _warm_soil(entry, garden)
    days = first_picking(entry, garden)
    if days is not None:
        yield Span("first picking", *days, "sown or planted in its usual days")
    elif is_tropical(garden) and (found := harvest_days(entry)) is not None:
        yield Span(
            "first picking", why=f"{found[0]} to {found[1]} days from {found[2]}, whenever that is"
        )
    yield from _last_sowing(entry, garden)


def _by_warmth(entry: Plant, garden: Garden) -> Iterator[Span]:
    """The first picking by the warmth that gathers, where the plan gives its usual months."""
    wants, above = as_range(entry.other.get("warmth to picking")), entry.other
    lower, upper = as_range(above.get("growth starts at")), as_range(above.get("growth slows at"))
    sown = usual(entry.sow, garden)
    if wants is None or lower is None or upper is None or sown is None:
        return
    from plantframe.sky.degree_days import days_to_reach

    highs, lows = normals_c(garden, "normal high"), normals_c(garden, "normal low")
    found = []
    for start in sown:
        days = (start + timedelta(days=day) for day in range(LONGEST_DAYS))
        known = takewhile(lambda day: day.month in highs and day.month in lows, days)
        warmth = ((lows[day.month], highs[day.month]) for day in known)
        count = days_to_reach(wants.middle, warmth, lower.middle, upper.middle)
        if count is None:
            return
        found.append(start + timedelta(days=count))
    why = f"{wants.middle:.0f} degree-days above {lower.middle:.0f} °C, by your usual months"
    yield Span("picking by warmth", min(found), max(found), why)


def _warm_soil(entry: Plant, garden: Garden) -> Iterator[Span]:
    """The day the soil is likely to be warm enough for its seed."""
    wants = as_range(entry.soil)
    last, first = garden.frost_last, garden.frost_first
    if wants is None or last is None or first is None or (entry.sow is None):
        return
    from plantframe.sky.soil import first_warm_day

    day = first_warm_day(last.day, first.day, wants.low, last.day.year)
    if day is not None:
        yield Span(
            "soil",
            why=f"{wants.low:.0f} °C, the least it comes up in, by about {_day(day)}: estimate",
        )


def _last_sowing(entry: Plant, garden: Garden) -> Iterator[Span]:
    """The last day to sow in the open and still pick before the frost."""
    found, frost = harvest_days(entry), garden.frost_first
    sown = usual(entry.sow, garden)
    if found is None or frost is None or sown is None or not is_tender(entry):
        return
    if found[2] != "sowing":
        return
    last = frost.day - timedelta(days=found[0] + SHORT_DAYS)
    if last > sown[0]:
        yield Span(
            "last sowing",
            why=f"{_day(last)}: {found[0]} days to pick and {SHORT_DAYS} for short days before "
            "your first frost",
        )


def _under_glass(entry: Plant, garden: Garden) -> Iterator[Span]:
    """The last sowing for the cold frame: near full size when days fall under ten hours."""
    figure = entry.other.get("sow for the frame")
    if figure is None:
        return
    days = usual(figure, garden)
    if days is not None:
        yield Span("sow for the cold frame", *days, "from your first frost")
    light = short_days(garden)
    found = harvest_days(entry)
    if light is None or found is None:
        return
    if light[0] is None or light[1] is None:
        yield Span("light", why="days are never shorter than ten hours here: sow at any time")
        return
    last = light[0] - timedelta(days=found[0])
    yield Span(
        "last sowing for it",
        why=f"{_day(last)}: {found[0]} days before days fall under ten hours, {_day(light[0])}; "
        f"they are longer again from {_day(light[1])}",
    )


def short_days(garden: Garden) -> tuple[date | None, date | None] | None:
    """The days on which daylight falls under ten hours and is back over them.

    A pair of None where it never falls so low; None where the plan does not say where it is.
    """
    if garden.latitude is None or not garden.year:
        return None
    from plantframe.sky.sun import light_season

    year = garden.seasons[0] or garden.year
    now = light_season(garden.latitude, LIGHT_H, year)
    then = light_season(garden.latitude, LIGHT_H, year + 1)
    if now is None or then is None:
        return None
    if now.all_year:
        return None, None
    return now.last, then.first


def _heat(entry: Plant, garden: Garden) -> Iterator[Span]:
    """Months so hot that its flowers fall."""
    drops = as_range(entry.other.get("flowers drop"))
    if drops is None:
        return
    hot = [
        MONTHS[month - 1]
        for month, high in sorted(normals_c(garden, "normal high").items())
        if high > drops.low
    ]
    if hot:
        yield Span(
            "too hot",
            why=f"{listed(hot)}: above {drops.low:.0f} °C its flowers fall; have it bear before or "
            "after",
        )


def _care(entry: Plant, garden: Garden) -> Iterator[Span]:
    """What comes round at a time of the year."""
    for care in entry.care:
        if care.from_ is None or not care.from_.is_word:
            continue
        words = care.from_.value
        if "after flowering" in words:
            flowers = entry.other.get("flowers in")
            found = time_of_year(flowers.value, garden) if flowers else None
            if found is not None:
                yield Span(care.id, why=f"after its flowers; {found.here}")
            continue
        found = time_of_year(words, garden)
        if found is not None:
            yield Span(care.id, why=found.here)


def _day(day: date) -> str:
    return f"{day.day} {MONTHS[day.month - 1]}"
