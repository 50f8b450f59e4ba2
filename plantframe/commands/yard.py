"""What buy and cut are both asked: for which frames, and which lengths the yard has today."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.commands.asked import Refused, plan_argument
from plantframe.season.units import listed

if TYPE_CHECKING:
    import argparse
    from collections.abc import Sequence

    from plantframe.answers.answers import Answers


def arguments(parser: argparse.ArgumentParser) -> None:
    """The plan, its frames and the yard's lengths."""
    plan_argument(parser)
    parser.add_argument(
        "--frame", metavar="NAME", action="append", help="only this frame; may be given again"
    )
    parser.add_argument(
        "--lengths",
        metavar="LENGTHS",
        help='the only lengths the yard has today: "10 ft, 2.4 m"',
    )


def frames_named(answers: Answers, names: Sequence[str] | None) -> frozenset[str]:
    """The frames that were asked for, whatever the capitals."""
    known = {name.lower(): name for name in answers.season.frames}
    for name in names or ():
        if name.lower() not in known:
            there = listed(sorted(answers.season.frames), "or")
            tail = f" There are {there}." if there else ""
            raise Refused(f"No frame here is called “{name}”.{tail}")
    return frozenset(known[name.lower()] for name in names or ())


def lengths(text: str | None) -> tuple[float, ...]:
    """The lengths in `10 ft, 2.4 m`, in metres."""
    from plantframe.language.phrases import read_phrase
    from plantframe.language.values import Measure

    if text is None:
        return ()
    found = tuple(
        item.value.value
        for part in text.replace(" and ", ",").replace(";", ",").split(",")
        for item in read_phrase(part.strip())[0]
        if isinstance(item.value, Measure) and item.value.dimension == "length"
    )
    if not found or min(found) <= 0:
        raise Refused(f'“{text}” gives no lengths; type them as --lengths "8 ft, 10 ft"')
    return found
