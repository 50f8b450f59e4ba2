"""Dates as typed, made into days of the season."""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING

from plantframe.frozen import frozen
from plantframe.language.figures import plain_signs

if TYPE_CHECKING:
    from plantframe.language.slots import When
    from plantframe.language.values import Day

MONTH_NAMES = (
    *("", "January", "February", "March", "April", "May", "June"),
    *("July", "August", "September", "October", "November", "December"),
)
# Feast days that fall on the same date each year; the movable ones are reckoned from Easter.
FIXED_FEASTS = {
    "new year": (1, 1),
    "candlemas": (2, 2),
    "lady day": (3, 25),
    "may day": (5, 1),
    "midsummer": (6, 24),
    "michaelmas": (9, 29),
    "halloween": (10, 31),
    "all saints": (11, 1),
    "martinmas": (11, 11),
    "christmas": (12, 25),
    "boxing day": (12, 26),
}
MOVABLE_FEASTS = {"good friday": -2, "easter": 0, "whitsun": 49}
# Holidays that gardeners plant by: (month, day, weekday from Monday 0), the first such weekday on
# or after that day. Memorial Day and Labor Day are of the United States, Victoria Day of Canada,
# Labour weekend of New Zealand, Cup Day of Melbourne (from memory). A day that falls otherwise in
# another country under the same name is left to be typed as a date.
WEEKDAY_FEASTS = {
    "memorial day": (5, 25, 0),
    "victoria day": (5, 18, 0),
    "labor day": (9, 1, 0),
    "labour weekend": (10, 22, 0),
    "cup day": (11, 1, 1),
}
FARTHEST_DAYS = 800  # a date so far from a frost or a feast is a slip
PARTS = {"early": 5, "mid": 15, "late": 25, "start": 1}


class DateSlip(ValueError):  # noqa: N818 - a slip of the pen, said and not raised to the user
    """A date that cannot be, or that wants asking about.

    name   the mistake's name; told what its words need; `write` lines that would cure it
    """

    def __init__(self, name: str, told: dict[str, str], write: tuple[str, ...] = ()) -> None:
        super().__init__(name)
        self.name = name
        self.told = told
        self.write = write


@frozen
class Season:
    """What dates are reckoned from.

    years        both calendar years of the season, the same one twice where it has only one
    frost_last, frost_first   the average dates, None where unsaid; `frost_none` where there is none
    """

    years: tuple[int, int]
    southern: bool = False
    frost_last: date | None = None
    frost_first: date | None = None
    frost_none: bool = False

    @property
    def label(self) -> str:
        """The season as a gardener writes it."""
        first, second = self.years
        return str(first) if first == second else f"{first}-{second % 100:02d}"

    def year_of(self, month: int) -> int:
        """The calendar year of a month of this season."""
        first, second = self.years
        if first == second:
            return first
        return first if month >= 7 else second


@frozen
class Dated:
    """A day, or the first and last of several, and how it was typed.

    give   days either way it may be meant: a month alone is its middle, give or take two weeks
    """

    day: date
    last: date
    give: int
    said: str

    @property
    def exact(self) -> bool:
        """A single day was named."""
        return self.day == self.last and self.give == 0


def resolve(when: When, season: Season) -> Dated:
    """The days a typed date means in this season.

    Raises DateSlip where there is no such day, or where it must be asked about.
    """
    if when.slashed:
        return _slashed(when, season)
    if when.anchor:
        return _anchored(when, season)
    if when.day is None:
        why = "it names no day."
        raise DateSlip("impossible-date", {"text": when.text, "why": why})
    first, give = _day(when.day, season)
    if when.last is None:
        return Dated(first, first, give, when.text)
    whole_month = when.day.day is None and not when.day.part
    start = first.replace(day=1) if whole_month else first
    stop, _ = _day(when.last, season)
    if when.last.day is None and not when.last.part:
        stop = stop.replace(day=last_of(stop.year, stop.month))
    if stop < start and when.last.year is None:
        # `1 October to 15 April` and `24 December to 6 January` run over new year
        stop = _on(stop.day, stop.month, stop.year + 1, when.text)
    return Dated(start, stop, 0, when.text)


def last_of(year: int, month: int) -> int:
    """The last day of a month."""
    import calendar  # a plan with no date wants none of it

    return calendar.monthrange(year, month)[1]


def _on(day: int, month: int, year: int, said: str) -> date:
    """A day of the calendar; `month` is 1 to 12, `year` one that plans reach to."""
    longest = last_of(year, month)
    if not 1 <= day <= longest:
        name = f"{MONTH_NAMES[month]} {year}" if month == 2 else MONTH_NAMES[month]
        write = (f"{longest} {MONTH_NAMES[month]}",) if day > longest else ()
        raise DateSlip(
            "impossible-date", {"text": said, "why": f"{name} has {longest} days."}, write
        )
    return date(year, month, day)


def _day(day: Day, season: Season) -> tuple[date, int]:
    year = day.year if day.year is not None else season.year_of(day.month)
    if not 1900 <= year <= 2200:
        why = f"no plan reaches to the year {year}."
        raise DateSlip("impossible-date", {"text": day.text, "why": why})
    if not 1 <= day.month <= 12:
        why = f"there is no month {day.month}."
        raise DateSlip("impossible-date", {"text": day.text, "why": why})
    if day.day is not None:
        return _on(day.day, day.month, year, day.text), 0
    if day.part.startswith("last "):  # `last 7 days`
        before = int(day.part.split()[1]) - 1
        return date(year, day.month, last_of(year, day.month) - before), 0
    if day.part == "end":
        return date(year, day.month, last_of(year, day.month)), 0
    if day.part:
        return date(year, day.month, PARTS[day.part]), 0 if day.part == "start" else 5
    return date(year, day.month, 15), 14


def _slashed(when: When, season: Season) -> Dated:
    """`18/5` and `5/18` can be read one way only; `5/6` is asked about."""
    first, second, *rest = (int(part) for part in plain_signs(when.text).split("/"))
    year = rest[0] if rest else None
    if year is not None and year < 100:
        year += 2000
    if year is not None and not 1900 <= year <= 2200:
        why = f"no plan reaches to the year {year}."
        raise DateSlip("impossible-date", {"text": when.text, "why": why})
    month_first = 1 <= first <= 12
    month_second = 1 <= second <= 12
    if month_first and month_second and first != second:
        tail = f" {year}" if year else ""
        choices = (f"{first} {MONTH_NAMES[second]}{tail}", f"{second} {MONTH_NAMES[first]}{tail}")
        either = f"`{choices[0]}` or `{choices[1]}`"
        raise DateSlip("which-month", {"text": when.text, "either": either}, choices)
    if not (month_first or month_second):
        raise DateSlip("impossible-date", {"text": when.text, "why": "neither is a month."})
    day, month = (first, second) if month_second else (second, first)
    found = _on(day, month, year or season.year_of(month), when.text)
    return Dated(found, found, 0, when.text)


def _anchored(when: When, season: Season) -> Dated:
    """So many days from a frost or a feast."""
    if "frost" in when.anchor:
        base = season.frost_last if "last" in when.anchor else season.frost_first
        if base is None:
            why = (
                "there is no frost here to reckon from."
                if season.frost_none
                else f"the garden does not say when its {when.anchor} is: add "
                "`frost last …, first …`."
            )
            raise DateSlip("impossible-date", {"text": when.text, "why": why})
    elif when.anchor in FIXED_FEASTS:
        month, day = FIXED_FEASTS[when.anchor]
        base = date(season.year_of(month), month, day)
    elif when.anchor in WEEKDAY_FEASTS:
        month, day, weekday = WEEKDAY_FEASTS[when.anchor]
        first = date(season.year_of(month), month, day)
        base = first + timedelta(days=(weekday - first.weekday()) % 7)
    else:
        from dateutil.easter import easter

        base = easter(season.year_of(4)) + timedelta(days=MOVABLE_FEASTS[when.anchor])
    if abs(when.from_days) > FARTHEST_DAYS:
        why = "that is years away."
        raise DateSlip("impossible-date", {"text": when.text, "why": why})
    found = base + timedelta(days=round(when.from_days))
    return Dated(found, found, 0, when.text)


def check_year(dated: Dated, season: Season, typed_year: int | None) -> None:
    """Ask about a sowing or planting dated a year off; autumn before is ordinary.

    Raises DateSlip.
    """
    if typed_year is None:
        return
    first = date(season.years[0] - 1, 8, 1) if not season.southern else date(season.years[0], 2, 1)
    last = date(season.years[1], 12, 31) if not season.southern else date(season.years[1], 9, 30)
    if first <= dated.day <= last:
        return
    day = f"{dated.day.day} {MONTH_NAMES[dated.day.month]}"
    right = season.year_of(dated.day.month)
    off = "last year" if dated.day < first else "a year ahead"
    if abs(dated.day.year - right) > 1:
        off = f"{abs(dated.day.year - right)} years off"
    told = {
        "text": dated.said,
        "off": off,
        "season": season.label,
        "likely": f"{day} {right}",
    }
    raise DateSlip("a-year-off", told, (f"{day} {right}",))
