"""What every command asks of its arguments: plans, days, and what to do where they mean nothing."""

from __future__ import annotations

import argparse
import sys
from datetime import date
from typing import TYPE_CHECKING

from plantframe.language.files import STANDARD_INPUT, plans_in

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.answers.answers import Answers

FINE, STOPS, FAILED = 0, 1, 2
FIRST_YEAR, LAST_YEAR = 1900, 2200  # as for the dates of a plan


class Refused(Exception):  # noqa: N818 - what the command is, not an error of ours
    """The command cannot be carried out; the message is one plain sentence."""


def day(text: str) -> date:
    """A day as given on the command line: 2027-05-18, or 18 May 2027."""
    try:
        found = _written(text) or date.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"“{text}” is no date; type it as 2027-05-18") from None
    if not FIRST_YEAR <= found.year <= LAST_YEAR:
        raise argparse.ArgumentTypeError(f"no plan reaches to the year {found.year}")
    return found


def _written(text: str) -> date | None:
    """A day with the name of its month; None where it is not written so.

    Raises ValueError where there is no such day.
    """
    words = text.replace(",", " ").split()
    if len(words) != 3 or not words[2].isdecimal():
        return None
    from plantframe.season.units import MONTHS

    for number, name in ((words[0], words[1]), (words[1], words[0])):
        months = [at for at, one in enumerate(MONTHS, start=1) if _same_month(name, one)]
        if number.isdecimal() and months:
            return date(int(words[2]), months[0], int(number))
    return None


def _same_month(typed: str, name: str) -> bool:
    """Whether a word is a month's name, or its beginning of three letters or more."""
    return len(typed) >= 3 and name.lower().startswith(typed.lower().rstrip("."))


def plan_argument(parser: argparse.ArgumentParser, nargs: str | None = None) -> None:
    """The plan, or plans, that a command is about."""
    parser.add_argument("plan", metavar="PLAN", nargs=nargs, help="a plan, a folder of plans, or -")


def answers_for(paths: Sequence[str], today: date) -> list[Answers]:
    """The answers of every plan that the paths name.

    Raises NoSuchPlan where one is not there.
    """
    from plantframe.answers.answers import answers_of, answers_to

    out = []
    for path in paths:
        if path == STANDARD_INPUT:
            text = sys.stdin.buffer.read().decode("utf-8", errors="replace")
            out.append(answers_to(text, today))
        else:
            out += [answers_of(file, today) for file in plans_in(path)]
    for one in out:
        one.reading  # noqa: B018 - reads the files now, so that what is missing is said at once
    return out


def one_answer(path: str, today: date) -> Answers:
    """The answers of one plan; of a folder with several, the last by name."""
    return answers_for([path], today)[-1]


def write_json(data: object) -> None:
    """Data to the screen, the same bytes for the same answer.

    The text is kept whole: a sign that would steer a screen goes by its number.
    """
    import json
    import re

    from plantframe.commands.screen import BEYOND_C0

    text = json.dumps(data, ensure_ascii=False, indent=2)
    sys.stdout.write(re.sub(f"[{BEYOND_C0}]", lambda sign: f"\\u{ord(sign[0]):04x}", text) + "\n")
