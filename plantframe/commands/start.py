"""start: a first plan, from flags or from a few questions."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

from plantframe.commands.asked import FINE, Refused, write_json
from plantframe.commands.next import write_new
from plantframe.commands.screen import beside
from plantframe.diary.first_plan import QUESTIONS, Told, first_plan, slips_in

if TYPE_CHECKING:
    import argparse
    from datetime import date

ONCE = (
    ("name", "NAME", "what the garden is called"),
    ("year", "YEAR", "the season: 2027, or 2026-27 in the south"),
    ("place", "PLACE", "where it is: 52.1 N, 1.4 W"),
    ("last-frost", "DAY", "the average last frost: 6 May, or none"),
    ("first-frost", "DAY", "the average first frost: 12 October"),
    ("free", "HOURS", "when there is time: Saturday 6 h, Wednesday 2 h"),
)
AGAIN = (
    ("person", "people", "who works there: Maud, lifts 15 kg"),
    ("bed", "beds", "a bed: Long Bed, 1.2 m x 7.5 m"),
    ("grow", "plants", "what shall climb: runner bean"),
)
MOST = 40  # answers to one question; nobody has more beds or plants to begin with


def arguments(parser: argparse.ArgumentParser) -> None:
    """What it takes."""
    for name, shown, says in ONCE:
        parser.add_argument(f"--{name}", metavar=shown, default="", help=says)
    for name, field, says in AGAIN:
        parser.add_argument(
            f"--{name}",
            dest=field,
            metavar=name.upper(),
            action="append",
            default=[],
            help=f"{says}; as often as there are more",
        )
    parser.add_argument("--to", metavar="FILE", help="write it there, never over an old plan")


def run(given: argparse.Namespace, today: date) -> int:
    """Print a first plan, or write it into a new file."""
    told = Told(
        given.name,
        given.year,
        given.place,
        given.last_frost,
        given.first_frost,
        given.free,
        tuple(given.people),
        tuple(given.beds),
        tuple(given.plants),
    )
    if told == Told() and sys.stdin.isatty():
        told = _asked()
    text = first_plan(told, today)
    slips = slips_in(text, today)
    if given.json:
        write_json(
            {
                "text": text,
                "mistakes": [
                    {"name": one.name, "line": one.where.line, "says": one.says} for one in slips
                ],
            }
        )
        return FINE
    for slip in slips:
        # said beside the plan, not in it, so that what is printed can go straight into a file
        beside(f"line {slip.where.line}: {slip.says}")
    if given.to is None:
        sys.stdout.write(text)
        return FINE
    write_new(Path(given.to), text)
    print(f"{given.to}: a first plan. `plantframe check {given.to}` says what it lacks.")
    return FINE


def _asked() -> Told:
    """The answers to the questions; an empty one leaves a thing out.

    Raises Refused where the answers end before the questions do.
    """
    answers: dict[str, str | tuple[str, ...]] = {}
    try:
        for field, question, again in QUESTIONS:
            print(f"{question}:")
            if not again:
                answers[field] = input("  ").strip()
                continue
            several: list[str] = []
            while len(several) < MOST and (answer := input("  ").strip()):
                several.append(answer)
            answers[field] = tuple(several)
    except EOFError:
        raise Refused("The questions were broken off; nothing was written.") from None
    return Told(**answers)  # type: ignore[arg-type]
