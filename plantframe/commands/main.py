"""The program `plantframe`: which commands there are, and how each is called."""

from __future__ import annotations

import argparse
import gc
import os
import sys
from contextlib import suppress
from datetime import date
from importlib import import_module
from typing import TYPE_CHECKING, NoReturn

from plantframe.commands.asked import FAILED, FINE, Refused, day
from plantframe.language.files import NoSuchPlan
from plantframe.language.near import nearest

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

RARELY = (100_000, 20, 20)  # new values before rings are looked for
TRACE = "PLANTFRAME_TRACE"  # set by those who work on plantframe

# Each command is a module of its name beside this one, with `arguments(parser)` and
# `run(given, today)`; only the one that is called is loaded.
COMMANDS = {
    "check": "slips in the text, then advice, worst and soonest first",
    "pair": "what suits what: for a want, a plant, a frame, a bed or a wall",
    "jobs": "the jobs in order: build, plant, train, pick, take down",
    "buy": "what to buy by shop counter, less the shed; the note for the yard",
    "cut": "which board gives which pieces, each board on one line",
    "calendar": "the jobs as a file for a calendar program (iCalendar)",
    "log": "what was picked and learned: totals, by year, by frame; beds by year",
    "next": "next year's plan from this one, the crops left blank",
    "start": "a first plan from a few questions, or from what is said here",
    "draw": "a frame with its measures, a bed with its rows and shade, the boards to saw (SVG)",
    "sheet": "building, planting, training and take-down sheets, a page each (HTML to print)",
    "book": "the whole season in one file to print or to carry on a phone (HTML)",
    "why": "the working in four lines: told, assumed, sum, source",
    "facts": "what is known of a plant, a structure, a material or a warning",
    "tidy": "even spacing; no word, figure or remark is touched",
}


class _Parser(argparse.ArgumentParser):
    def error(self, message: str) -> NoReturn:
        raise Refused(f"{message[:1].upper()}{message[1:]}. Try `{self.prog} --help`.")


def main(arguments: Sequence[str] | None = None) -> int:
    """Run a command; its exit status.

    0 nothing to stop for; 1 something to stop for, or a line that could not be read; 2 the
    command could not be carried out.
    """
    # a plan makes very many small values and hardly a ring of them; to look for rings as often as
    # Python does by itself takes a tenth of the time
    gc.set_threshold(*RARELY)
    _open_streams()
    try:
        status = _run(list(sys.argv[1:] if arguments is None else arguments))
        sys.stdout.flush()
    except (Refused, NoSuchPlan) as error:
        from plantframe.commands.screen import beside

        text = str(error)
        beside(f"plantframe: {text[:1].lower()}{text[1:]}")
        return FAILED
    except OSError as error:
        return _not_written(error)
    except KeyboardInterrupt:
        return 130
    except Exception as error:  # the last net: a gardener never meets a traceback
        if os.environ.get(TRACE):
            raise
        from plantframe.commands.screen import beside

        beside(
            "plantframe: something is wrong in plantframe itself "
            f"({type(error).__name__}: {error}); your files are as they were. "
            f"With {TRACE}=1 it says where."
        )
        return FAILED
    return status


def _open_streams() -> None:
    """Make what is written UTF-8; a stream that was closed before the start leads nowhere."""
    for name, mode in (("stdin", "r"), ("stdout", "w"), ("stderr", "w")):
        stream = getattr(sys, name)
        if stream is None:
            setattr(sys, name, open(os.devnull, mode, encoding="utf-8"))  # noqa: SIM115, PTH123
        elif name == "stdin":
            continue
        elif hasattr(stream, "reconfigure"):
            stream.reconfigure(encoding="utf-8", errors="replace")


def _not_written(error: OSError) -> int:
    """End after an answer that could not be written, or a file that could not be used."""
    if not isinstance(error, BrokenPipeError):
        where = f"{error.filename}: " if error.filename else ""
        from plantframe.commands.screen import beside

        beside(f"plantframe: {where}{(error.strerror or str(error)).lower()}.")
    if error.filename is None:
        # nobody hears what is still to be said (`| head`, a full disk): let the end be quiet
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    return FINE if isinstance(error, BrokenPipeError) else FAILED


def program() -> NoReturn:
    """Run what was typed, and end at once.

    Everything is written by then. To take down a hundred thousand values one by one, as Python
    does at its end, would make a household wait a sixth longer for each answer.
    """
    status = main()
    with suppress(OSError):
        sys.stderr.flush()
    os._exit(status)


def _run(words: list[str]) -> int:
    first = words[0] if words else "--help"
    if first in {"-h", "--help", "help"}:
        print(overview())
        return FINE
    if first == "--version":
        from plantframe import __version__

        print(f"plantframe {__version__}")
        return FINE
    if first not in COMMANDS:
        near = nearest(first, COMMANDS)
        tail = f" Nearest: {', '.join(near)}." if near else ""
        raise Refused(f"There is no command “{first}”.{tail} Try `plantframe --help`.")
    command = import_module(f"plantframe.commands.{first}")
    given = _parser(first, command.arguments).parse_args(words[1:])
    today = given.today or date.today()  # noqa: DTZ011 - a garden's day is the day on the wall
    status: int = command.run(given, today)
    return status


def overview() -> str:
    """The commands, a line each."""
    width = max(len(name) for name in COMMANDS)
    lines = [f"  {name:{width}}  {says}" for name, says in COMMANDS.items()]
    return "\n".join(
        [
            "plantframe COMMAND PLAN …",
            "Reads a garden's season plan and answers from it.",
            "",
            *lines,
            "",
            "`plantframe COMMAND --help` tells more. A plan is a file, a folder, or - for what",
            "is piped in. Every command takes --today DATE, which stands for today, and --json.",
        ]
    )


def _parser(name: str, arguments: Callable[[argparse.ArgumentParser], None]) -> _Parser:
    says = COMMANDS[name]
    parser = _Parser(prog=f"plantframe {name}", description=f"{says[:1].upper()}{says[1:]}.")
    arguments(parser)
    parser.add_argument("--today", type=day, default=None, metavar="DATE", help="stands for today")
    parser.add_argument("--json", action="store_true", help="the same answer as data")
    parser.add_argument(
        "--voice", choices=("beginner", "seasoned"), default="seasoned", help="how much to say"
    )
    return parser
