"""A first plan for somebody who has none, from a few answers."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plantframe.frozen import frozen
from plantframe.language.files import read_input
from plantframe.plan.building import build

if TYPE_CHECKING:
    from datetime import date

    from plantframe.language.mistakes import Mistake


@frozen
class Told:
    """What a newcomer said, in their own words; "" and () where they said nothing."""

    name: str = ""
    year: str = ""
    place: str = ""
    last_frost: str = ""
    first_frost: str = ""
    free: str = ""
    people: tuple[str, ...] = ()
    beds: tuple[str, ...] = ()
    plants: tuple[str, ...] = ()


# What is asked, in turn: the field, the question, and whether it is asked again for more.
QUESTIONS = (
    ("name", "What is the garden called?", False),
    ("place", "Where is it? Latitude and longitude will do, as 52.1 N, 1.4 W", False),
    (
        "year",
        "Which season? As 2027, or 2026-27 in the south; an empty line for the next one",
        False,
    ),
    ("last_frost", "When is the last frost, on average? As 6 May, or none", False),
    ("first_frost", "And the first of autumn? As 12 October", False),
    ("people", "Who works there? As Maud, lifts 15 kg; an empty line ends", True),
    ("free", "When is there time for building? As Saturday 6 h", False),
    ("beds", "A bed: its name and size, as Long Bed, 1.2 m x 7.5 m; an empty line ends", True),
    ("plants", "What shall climb there? As runner bean; an empty line ends", True),
)


GROWN = ("grow runner bean, sow 20 May", "grow runner bean, sow 20 November")  # north, south


def first_plan(told: Told, today: date) -> str:
    """The text of a plan. What was not said stands in it as a remark on how to say it."""
    south = _is_southern(told.place)
    year = told.year or (_southern_season(today) if south else _northern_season(today))
    lines = [f"garden {_line(told.name) or 'Our Garden'}, {_line(year)}"]
    lines.append(
        f"  place {_line(told.place)}"
        if told.place
        else "  (Where it is, for sun and daylight: `place 52.1 N, 1.4 W`)"
    )
    lines.append(_frost(told))
    lines += [f"  person {_line(one)}" for one in told.people] or [
        "  (Who works there: `person Maud, reach 1.95 m, lifts 15 kg`)"
    ]
    lines.append(
        f"  free {_line(told.free)}"
        if told.free
        else "  (When there is time for building: `free Saturday 6 h, Wednesday 2 h`)"
    )
    lines.append("")
    for bed in told.beds:
        lines += [f"bed {_line(bed)}", "  (`sun full`, or half, or the hours it gets)", ""]
    if not told.beds:
        lines += ["(A bed begins so: `bed Long Bed, 1.2 m x 7.5 m, runs north-south`)", ""]
    lines += [f"want {_line(plant)}" for plant in told.plants]
    if not told.plants:
        lines.append("(What shall climb, and has no frame yet: `want runner bean, 20 plants`)")
    lines += [
        "",
        "(`plantframe pair` with this file says which frame suits each; then a frame goes in so:)",
        f"(`frame Bean Net, net frame, in Long Bed` and under it `{GROWN[south]}`)",
    ]
    return "\n".join(lines) + "\n"


def _is_southern(place: str) -> bool:
    """Whether a place as typed is south of the equator: 43.5 S, 172.6 E."""
    return re.search(r"\d\W*(s|south)\b", place.lower()) is not None or place.strip()[:1] == "-"


def _northern_season(today: date) -> str:
    """The season a plan begun on a day is for: from October on it is next year's."""
    return str(today.year + (today.month >= 10))


def _southern_season(today: date) -> str:
    """The season of a day in the south: it begins in winter and runs over new year."""
    first = today.year if today.month >= 7 else today.year - 1
    return f"{first}-{(first + 1) % 100:02d}"


def _frost(told: Told) -> str:
    last, first = _line(told.last_frost), _line(told.first_frost)
    if last.lower() in {"none", "never", "no frost"}:
        return "  frost none"
    parts = [f"last {last}" if last else "", f"first {first}" if first else ""]
    said = ", ".join(part for part in parts if part)
    return f"  frost {said}" if said else "  (The frosts: `frost last 6 May, first 12 October`)"


def slips_in(text: str, today: date) -> tuple[Mistake, ...]:
    """What cannot be read in it as it was said."""
    reading = read_input(text)
    _, mistakes = build(reading, today)
    return (*reading.mistakes, *mistakes)


def _line(words: str) -> str:
    """An answer as it may stand in one line of a plan."""
    return " ".join(words.split())
