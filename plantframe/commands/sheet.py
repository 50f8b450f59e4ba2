"""sheet: building, planting, training and take-down sheets, a page of paper each, as HTML."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING, Any

from plantframe.commands.asked import FINE, Refused, one_answer, plan_argument, write_json
from plantframe.commands.printing import paper_arguments, paper_of, write_files
from plantframe.jobs.listing import jobs_of
from plantframe.paper.labels import labels_sheet
from plantframe.paper.layout import pages_of
from plantframe.paper.neighbour import neighbour_sheet
from plantframe.paper.sheet import BUILDING, PLANTING, TAKING_DOWN, TRAINING
from plantframe.paper.sheets import ALL_KINDS, frame_sheets, place_sheets, season_sheets
from plantframe.season.units import listed

if TYPE_CHECKING:
    import argparse
    from datetime import date

    from plantframe.answers.answers import Answers
    from plantframe.jobs.listing import Jobs
    from plantframe.paper.sheet import Sheet

FLAGS = {
    "build": BUILDING,
    "planting": PLANTING,
    "training": TRAINING,
    "take_down": TAKING_DOWN,
}


def arguments(parser: argparse.ArgumentParser) -> None:
    """What it takes."""
    plan_argument(parser)
    add = parser.add_argument
    add("name", metavar="NAME", nargs="?", help="a frame, a bed or a wall; else the whole season")
    add("--build", action="store_true", help="the building sheet (so unless another is named)")
    add("--planting", action="store_true", help="the sheet for planting day")
    add("--training", action="store_true", help="the sheet for the summer's rounds")
    add("--take-down", action="store_true", help="the sheet for taking it down")
    add("--away", action="store_true", help="the neighbour's page while nobody is in")
    add("--labels", action="store_true", help="labels for the shed")
    paper_arguments(parser)


def run(given: argparse.Namespace, today: date) -> int:
    """Print the sheets that were asked for."""
    answers = one_answer(given.plan, today)
    sheets = asked_for(answers, jobs_of(answers.season), given)
    if given.json:
        write_json({"plan": answers.plan.name, "sheets": [as_data(sheet) for sheet in sheets]})
        return FINE
    _out(sheets, given)
    return FINE


def asked_for(answers: Answers, jobs: Jobs, given: argparse.Namespace) -> list[Sheet]:
    """The sheets of a frame, of a place, or of the whole season."""
    if given.away or given.labels:
        return _whole_garden(answers, jobs, given)
    kinds = [kind for flag, kind in FLAGS.items() if getattr(given, flag)]
    if not given.name:
        sheets = season_sheets(answers, jobs, kinds or ALL_KINDS)
        if not kinds:
            extra = (neighbour_sheet(answers, jobs), labels_sheet(answers))
            sheets += [sheet for sheet in extra if sheet is not None]
        if not sheets:
            raise Refused("The plan has nothing to build, plant, lead or take down.")
        return sheets
    sheets = _named(answers, jobs, given.name, kinds)
    if not sheets:
        raise Refused(f"For {given.name} there is no {listed(kinds or [BUILDING], 'or')} sheet.")
    return sheets


def _whole_garden(answers: Answers, jobs: Jobs, given: argparse.Namespace) -> list[Sheet]:
    found = []
    if given.away:
        page = neighbour_sheet(answers, jobs)
        if page is None:
            raise Refused(
                "The plan names no days from here on when nobody is at home; a line such as "
                "`away 10 to 20 July` under the garden does."
            )
        found.append(page)
    if given.labels:
        labels = labels_sheet(answers)
        if labels is None:
            raise Refused("No frame of the plan comes down, so nothing goes into the shed.")
        found.append(labels)
    return found


def _named(answers: Answers, jobs: Jobs, asked: str, kinds: list[str]) -> list[Sheet]:
    """The sheets of the frame, bed or wall of a name, whatever the capitals."""
    plan = answers.plan
    known = {name.lower(): name for name in (*plan.things, *plan.beds, *plan.frames)}
    if asked.lower() not in known:
        names = [*plan.frames, *plan.beds]
        there = f" There are {listed(names)}." if names else ""
        raise Refused(f"No frame, bed or wall here is called “{asked}”.{there}")
    name = known[asked.lower()]
    if name in answers.season.frames:
        return frame_sheets(answers, jobs, answers.season.frames[name], kinds or [BUILDING])
    place = plan.beds.get(name) or plan.things[name]
    return place_sheets(answers, jobs, place, kinds or [PLANTING])


def _out(sheets: list[Sheet], given: argparse.Namespace) -> None:
    """Print all as one document, or write each into a file of its own."""
    from plantframe.paper.files import Names
    from plantframe.paper.pages import sheets_page

    paper = paper_of(given)
    pages = [(sheet, pages_of(sheet, paper, large=given.large)) for sheet in sheets]
    if given.to is None:
        title = sheets[0].title if len(sheets) == 1 else sheets[0].garden
        every = [page for _, some in pages for page in some]
        sys.stdout.write(sheets_page(title, every, paper))
        return
    names = Names()
    write_files(
        given.to,
        [
            (
                names.of(sheet.title, sheet.kind, ending="html"),
                sheets_page(f"{sheet.title}, {sheet.kind}", some, paper),
            )
            for sheet, some in pages
        ],
    )


def as_data(sheet: Sheet) -> dict[str, Any]:
    """What a sheet says, without its layout."""
    return {
        "kind": sheet.kind,
        "title": sheet.title,
        "about": list(sheet.about),
        "mark": sheet.mark,
        "dangers": [{"says": one.says, "rows": list(one.rows)} for one in sheet.dangers],
        "numbers": [{"value": one.value, "says": one.says} for one in sheet.numbers],
        "lists": [{"title": one.title, "lines": list(one.lines)} for one in sheet.asides],
        "rows": [
            {
                "number": row.number,
                "says": row.says,
                "notes": [{"label": label or None, "says": says} for label, says in row.notes],
                "hands": row.hands,
                "who": row.who or None,
                "time": row.time or None,
                "tools": row.tools or None,
                "when": row.when or None,
                "state": row.state or None,
                "stop_point": row.stop,
            }
            for row in sheet.rows
        ],
        "labels": [list(label) for label in sheet.labels],
        "back": sheet.back or None,
    }
