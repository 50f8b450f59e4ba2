"""next: next year's plan from this one."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

from plantframe.commands.asked import FINE, Refused, one_answer, plan_argument, write_json
from plantframe.diary.next_year import next_plan
from plantframe.season.units import listed, plural

if TYPE_CHECKING:
    import argparse
    from datetime import date


def arguments(parser: argparse.ArgumentParser) -> None:
    """What it takes."""
    plan_argument(parser)
    parser.add_argument("--to", metavar="FILE", help="write it there, never over an old plan")


def run(given: argparse.Namespace, today: date) -> int:
    """Print next year's plan, or write it into a new file."""
    answers = one_answer(given.plan, today)
    carried = next_plan(answers.reading, answers.season)
    if given.json:
        write_json(
            {
                "plan": answers.plan.name,
                "season": carried.label,
                "text": carried.text,
                "stands": list(carried.stands),
                "came_down": list(carried.down),
            }
        )
        return FINE
    if given.to is None:
        sys.stdout.write(carried.text)
        return FINE
    write_new(Path(given.to), carried.text)
    stands = f"; {listed(carried.stands)} stand" if carried.stands else ""
    down = f"; {plural(len(carried.down), 'frame')} left out as taken down" if carried.down else ""
    print(f"{given.to}: the plan of {carried.label}{stands}{down}. Crops are for you to choose.")
    return FINE


def write_new(file: Path, text: str) -> None:
    """Write a new file; one that is there is never written over.

    Raises Refused.
    """
    try:
        with file.open("x", encoding="utf-8", newline="\n") as out:
            out.write(text)
    except FileExistsError:
        raise Refused(f"{file} is there already; choose another name.") from None
    except OSError as error:
        reason = (error.strerror or "it cannot be opened").lower()
        raise Refused(f"{file} cannot be written: {reason}.") from None
