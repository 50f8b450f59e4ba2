"""why: the working in four lines: what was told, what assumed, the sum, where it comes from."""

from __future__ import annotations

import re
import sys
from typing import TYPE_CHECKING, Any

from plantframe.answers.assumed import assumed, not_checked
from plantframe.commands.asked import FINE, Refused, one_answer, plan_argument, write_json
from plantframe.frozen import frozen
from plantframe.season.loads import LIKELY, TIGHT
from plantframe.season.units import day, two_figures

if TYPE_CHECKING:
    import argparse
    from datetime import date

    from plantframe.advice.findings import Found
    from plantframe.answers.answers import Answers
    from plantframe.catalogue.sourced import Sourced
    from plantframe.commands.screen import Screen
    from plantframe.season.frames import WorkedFrame


@frozen
class Working:
    """Four lines about one thing of the plan."""

    title: str
    name: str
    told: str
    assumed: str
    sum: str
    source: str
    aside: str = ""  # the line that sets it aside, with how bad it is today
    sleeps: str = ""  # why and by whom it is set aside, where it is


def arguments(parser: argparse.ArgumentParser) -> None:
    """What it takes."""
    plan_argument(parser)
    parser.add_argument(
        "about", metavar="RULE or LINE", nargs="?", help="a warning's name, a line or a frame"
    )


def run(given: argparse.Namespace, today: date) -> int:
    """Print the working that was asked for."""
    from plantframe.commands.screen import Screen

    answers = one_answer(given.plan, today)
    workings = about(answers, given.about)
    if not workings and given.about:
        raise Refused(
            f"Nothing here is called “{given.about}”: type a warning's name, a line's number or "
            "the name of a frame."
        )
    if given.json:
        write_json({"plan": answers.plan.name, "workings": [as_data(one) for one in workings]})
        return FINE
    screen = Screen.of(sys.stdout)
    for place, one in enumerate(workings):
        if place:
            screen.line()
        show(one, screen)
    if not given.about:
        taken, missed = assumed(answers), not_checked(answers)
        if taken:
            screen.heading("Assumed, since the plan does not say")
            for line in taken:
                screen.wrapped(f"- {line}", "  ", "    ")
        if missed:
            screen.heading("Not checked")
            for line in missed:
                screen.wrapped(f"- {line}", "  ", "    ")
    return FINE


def about(answers: Answers, asked: str | None) -> list[Working]:
    """The workings for a warning's name, a line, a block's name, or everything."""
    found = list(answers.advice.active) + [aside.found for aside in answers.advice.aside]
    if asked is None:
        return [of_finding(answers, one) for one in found]
    line = re.fullmatch(r"(?:(.+?)[:,] ?(?:line )?)?(\d+)", asked.strip())
    if line:
        file, number = line[1], int(line[2])
        here = [
            one
            for one in found
            if one.finding.where.line == number and file in {None, one.finding.where.file}
        ]
        frames = [
            frame
            for frame in answers.season.frames.values()
            if _covers(frame, number) and file in {None, frame.frame.block.where.file}
        ]
        return [of_finding(answers, one) for one in here] + [
            working for frame in frames for working in of_frame(answers, frame)
        ]
    name = asked.lower()
    here = [one for one in found if name in {one.rule.name, one.finding.block.lower()}]
    out = [of_finding(answers, one) for one in here]
    for frame in answers.season.frames.values():
        if frame.frame.name.lower() == name:
            out += of_frame(answers, frame)
    return out


def _covers(frame: WorkedFrame, line: int) -> bool:
    block = frame.frame.block
    return block.where.line <= line <= block.last_line


def of_finding(answers: Answers, found: Found) -> Working:
    """The working of one finding."""
    words = found.words(answers.shown)
    where = found.finding.where
    rule = found.rule
    source = rule.basis + (f": {rule.source}" if rule.source else "")
    reviewed = f"reviewed by {rule.reviewed}" if rule.reviewed else "not yet reviewed"
    return Working(
        f"{found.finding.block or 'The garden'}, line {where.line}: {where.typed.strip()}",
        f"{found.level}  {rule.name}",
        words.told or where.typed.strip(),
        words.assumed or "Nothing beyond what the plan says.",
        words.sum or words.says,
        f"{source}; {reviewed}. A figure of your own goes in the plan and outranks this.",
        "" if found.answered else aside_line(found),
        _sleeps(answers, found),
    )


def _sleeps(answers: Answers, found: Found) -> str:
    """The reason it is set aside for, who gave it and when; "" where it is not."""
    by = next((one.by for one in answers.advice.aside if one.found == found), None)
    if by is None:
        return ""
    when = day(by.when.day) if by.when else ""
    where = by.fact.where
    return ", ".join(one for one in (f"“{by.because}”", by.who, when, f"line {where.line}") if one)


def aside_line(found: Found) -> str:
    """The line that would set a finding aside, as bad as it is today."""
    bad = f"at about {two_figures(found.times)} times" if found.times else f"at {found.level}"
    return f'ok {found.rule.name} because "…", {bad}'


def of_frame(answers: Answers, frame: WorkedFrame) -> list[Working]:
    """What hangs on a frame and what the wind does to it, warned of or not."""
    shown = answers.shown
    out = []
    name = frame.frame.name
    load, heaviest, push = frame.load, frame.heaviest, frame.push
    figures = _assumed_figures(answers, frame)
    if load is not None and heaviest is not None:
        ratio = load.ratio
        weight = heaviest.entry.wet_weight if heaviest.entry else None
        own = "your figure" if heaviest.planting.weighs_kg_per_m is not None else ""
        span = f" of {shown.length(load.span_m)}" if load.span_m else ""
        out.append(
            Working(
                f"{name}: what hangs on its {load.part}",
                _verdict(ratio.middle),
                f"{heaviest.planting.named} on a {load.part}{span}.",
                figures,
                f"{shown.hanging(load.asked)}, wet, on a {load.part} that carries "
                f"{shown.hanging_bare(load.carried)}: {two_figures(ratio.middle)} "
                f"(from {two_figures(ratio.low)} to {two_figures(ratio.high)}). "
                f"Silent below {TIGHT}, a note to {LIKELY}.",
                f"The weight: {own or _from(weight)}. The {load.part}: sum, with limits of stress "
                "and bow that are an estimate tuned to practice.",
            )
        )
    if push is not None:
        ratio = push.ratio
        weak = "its wood" if push.weak == "wood" else f"the ground ({frame.soil})"
        out.append(
            Working(
                f"{name}: the wind on its leaves",
                _verdict(ratio.middle),
                f"A post answers for {shown.area(push.area_m2)} of leaves; the place is "
                f"{frame.place}.",
                figures,
                f"The push bends it with {two_figures(push.asked.middle)} N·m at the ground (from "
                f"{two_figures(push.asked.low)} to {two_figures(push.asked.high)}); the weaker "
                f"link is {weak}, at {two_figures(push.carried.middle)}: "
                f"{two_figures(ratio.middle)}. Silent below {TIGHT}, a note to {LIKELY}.",
                "estimate tuned to practice: no standard has a value for a leafy net.",
            )
        )
    return out


def _verdict(ratio: float) -> str:
    if ratio <= TIGHT:
        return "nothing to say"
    return "tight" if ratio <= LIKELY else "too much"


def _assumed_figures(answers: Answers, frame: WorkedFrame) -> str:
    mine = [
        line.removeprefix(f"{frame.frame.name}: ")
        for line in assumed(answers)
        if line.startswith(f"{frame.frame.name}: ") or ": " not in line
    ]
    return f"{'; '.join(mine)}." if mine else "Nothing beyond what the plan says."


def _from(value: Sourced | None) -> str:
    if value is None:
        return "estimate"
    doubt = f" ({value.doubt})" if value.doubt else ""
    return ("your figure" if value.basis == "yours" else value.basis) + doubt


def show(working: Working, screen: Screen) -> None:
    """Print one working."""
    screen.ends(working.title, working.name)
    screen.labelled("told   ", working.told)
    screen.labelled("assumed", working.assumed)
    screen.labelled("sum    ", working.sum)
    screen.labelled("from   ", working.source)
    if working.sleeps:
        screen.labelled("set aside", working.sleeps)
    elif working.aside:
        screen.labelled("to set it aside", working.aside)


def as_data(working: Working) -> dict[str, Any]:
    """A working as data."""
    return {
        "title": working.title,
        "name": working.name,
        "told": working.told,
        "assumed": working.assumed,
        "sum": working.sum,
        "source": working.source,
        "set_aside_with": working.aside,
        "set_aside_because": working.sleeps,
    }
