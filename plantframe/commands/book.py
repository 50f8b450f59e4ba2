"""book: everything for the season in one file that prints and that a phone can show."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING

from plantframe.commands.asked import FINE, one_answer, plan_argument, write_json
from plantframe.commands.printing import paper_arguments, paper_of, write_files

if TYPE_CHECKING:
    import argparse
    from datetime import date


def arguments(parser: argparse.ArgumentParser) -> None:
    """What it takes."""
    plan_argument(parser)
    paper_arguments(parser)


def run(given: argparse.Namespace, today: date) -> int:
    """Print the book, write it into a folder, or tell its contents as data."""
    from plantframe.paper.book import book
    from plantframe.paper.files import Names

    answers = one_answer(given.plan, today)
    if given.json:
        from plantframe.commands.sheet import as_data
        from plantframe.jobs.listing import jobs_of
        from plantframe.paper.sheets import ALL_KINDS, season_sheets

        sheets = season_sheets(answers, jobs_of(answers.season), ALL_KINDS)
        write_json({"plan": answers.plan.name, "sheets": [as_data(sheet) for sheet in sheets]})
        return FINE
    text = book(answers, paper_of(given), large=given.large)
    if given.to is None:
        sys.stdout.write(text)
        return FINE
    name = Names().of(answers.plan.garden.name or answers.plan.name, "book", ending="html")
    write_files(given.to, [(name, text)])
    return FINE
