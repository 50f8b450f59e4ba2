"""The program `plantframe`: its arguments, and what each command prints."""

from __future__ import annotations

import argparse
import os
import sys
from datetime import date
from typing import TYPE_CHECKING, NoReturn

from plantframe.language.files import STANDARD_INPUT, NoSuchPlan, plans_in

if TYPE_CHECKING:
    from collections.abc import Sequence

    from plantframe.answers.answers import Answers

FINE, STOPS, FAILED = 0, 1, 2
TRACE = "PLANTFRAME_TRACE"  # set by those who work on plantframe


class Refused(Exception):  # noqa: N818 - what the command is, not an error of ours
    """The command cannot be carried out; the message is one plain sentence."""


class _Parser(argparse.ArgumentParser):
    def error(self, message: str) -> NoReturn:
        raise Refused(f"{message[:1].upper()}{message[1:]}. Try `plantframe {self.topic} --help`.")

    topic = ""


def _day(text: str) -> date:
    try:
        return date.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"“{text}” is no date; type it as 2027-05-18") from None


def _parser() -> _Parser:
    parser = _Parser(
        prog="plantframe",
        description="Reads a garden's season plan and says what is wrong with it, what suits "
        "what, and what to do in what order.",
    )
    parser.add_argument("--version", action="store_true", help="print the version")
    commands = parser.add_subparsers(dest="command", metavar="COMMAND")

    def add(name: str, says: str, *, plans: str = "") -> argparse.ArgumentParser:
        one = commands.add_parser(name, help=says, description=says)
        one.topic = name
        if plans:
            nargs = None if plans == "1" else plans
            one.add_argument("plan", metavar="PLAN", nargs=nargs, help="a plan, a folder, or -")
        one.add_argument(
            "--today", type=_day, default=None, metavar="DATE", help="stands for today"
        )
        one.add_argument("--json", action="store_true", help="the same answer as data")
        one.add_argument(
            "--voice", choices=("beginner", "seasoned"), default="seasoned", help="how much to say"
        )
        return one

    check = add("check", "Slips in the text, then advice, worst and soonest first.", plans="+")
    check.add_argument("--all", action="store_true", help="every warning, not the first screen")

    pair = add("pair", "What suits what: for a want, a plant, a frame, a bed or a wall.", plans="?")
    pair.add_argument("name", metavar="NAME", nargs="?", help="a plant, a frame, a bed or a wall")
    pair.add_argument("--plant", metavar="NAME", help="without a plan: every kind of frame for it")
    pair.add_argument("--structure", metavar="KIND", help="without a plan: every plant for it")

    jobs = add("jobs", "The jobs in order: build, plant, train, pick, take down.", plans="1")
    jobs.add_argument("--day", type=_day, metavar="DATE", help="the jobs of one day")
    jobs.add_argument("--week", type=_day, metavar="DATE", help="the jobs of the week of a day")
    jobs.add_argument("--for", dest="person", metavar="PERSON", help="one person's jobs")
    jobs.add_argument("--frame", metavar="NAME", help="the jobs of one frame or bed")
    jobs.add_argument("--walk", action="store_true", help="at most eight lines for ten minutes")
    jobs.add_argument("--weeks", action="store_true", help="hours wanted and free, and what waits")
    jobs.add_argument("--away", action="store_true", help="the neighbour's page while nobody is in")
    jobs.add_argument(
        "--before-wind", action="store_true", help="what stands today, the weakest first"
    )
    jobs.add_argument("--rain", type=_day, metavar="DATE", help="what a day of rain moves")

    why = add("why", "The working in four lines: told, assumed, sum, source.", plans="1")
    why.add_argument("about", metavar="RULE or LINE", nargs="?", help="a warning's name or a line")

    facts = add("facts", "What is known of a plant, a structure, a material or a warning.")
    facts.add_argument("name", metavar="NAME", nargs="*", help="its name")
    for whole in ("plants", "structures", "materials", "rules", "sources"):
        facts.add_argument(f"--{whole}", action="store_true", help=f"list the {whole}")

    tidy = add("tidy", "Even spacing; no word, figure or remark is touched.", plans="+")
    tidy.add_argument("--write", action="store_true", help="write the file instead of printing it")
    return parser


def main(arguments: Sequence[str] | None = None) -> int:
    """Run a command; its exit status.

    0 nothing to stop for; 1 something to stop for, or a line that could not be read; 2 the
    command could not be carried out.
    """
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(encoding="utf-8", errors="replace")
    try:
        return _run(list(sys.argv[1:] if arguments is None else arguments))
    except (Refused, NoSuchPlan) as error:
        text = str(error)
        sys.stderr.write(f"plantframe: {text[:1].lower()}{text[1:]}\n")
        return FAILED
    except BrokenPipeError:
        # the reader of a pipe went away (`| head`); that is no fault of the plan
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return FINE
    except KeyboardInterrupt:
        return 130
    except Exception as error:  # the last net: a gardener never meets a traceback
        if os.environ.get(TRACE):
            raise
        sys.stderr.write(
            "plantframe: something is wrong in plantframe itself "
            f"({type(error).__name__}: {error}); your files are as they were. "
            f"With {TRACE}=1 it says where.\n"
        )
        return FAILED


def _run(arguments: list[str]) -> int:
    parser = _parser()
    given = parser.parse_args(arguments)
    if given.version:
        from plantframe import __version__

        print(f"plantframe {__version__}")
        return FINE
    if given.command is None:
        parser.print_help()
        return FINE
    today = given.today or date.today()  # noqa: DTZ011 - a garden's day is the day on the wall
    if given.command == "check":
        return _check(given, today)
    if given.command == "tidy":
        return _tidy(given)
    if given.command == "facts":
        from plantframe.commands import facts

        return facts.run(given)
    if given.command == "pair":
        from plantframe.commands import pair

        return pair.run(given, today)
    if given.command == "jobs":
        from plantframe.commands import jobs

        return jobs.run(given, today)
    from plantframe.commands import why

    return why.run(given, today)


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
    """Data to the screen, the same bytes for the same answer."""
    import json

    sys.stdout.write(json.dumps(data, ensure_ascii=False, indent=2) + "\n")


def _check(given: argparse.Namespace, today: date) -> int:
    from plantframe.commands import check
    from plantframe.commands.screen import Screen

    answers = answers_for(given.plan, today)
    if given.json:
        data = [check.as_data(one) for one in answers]
        write_json(data[0] if len(data) == 1 else data)
    else:
        screen = Screen.of(sys.stdout)
        for place, one in enumerate(answers):
            if place:
                screen.line()
            check.show(one, screen, given.voice, everything=given.all)
    return STOPS if any(one.stops for one in answers) else FINE


def _tidy(given: argparse.Namespace) -> int:
    from pathlib import Path

    from plantframe.language.tidy import tidy

    for path in given.plan:
        if path == STANDARD_INPUT:
            sys.stdout.write(tidy(sys.stdin.buffer.read().decode("utf-8", errors="replace")))
            continue
        folder = Path(path).is_dir()
        files = sorted(Path(path).glob("*.plan")) if folder else plans_in(path)
        for file in files:
            try:
                before = file.read_bytes().decode("utf-8")
            except UnicodeDecodeError:
                raise Refused(
                    f"{file} holds something that is not text; mend that first."
                ) from None
            after = tidy(before)
            if not given.write:
                sys.stdout.write(after)
            elif after != before:
                file.write_text(after, encoding="utf-8", newline="\n")
                sys.stdout.write(f"{file}: tidied\n")
    return FINE
