"""tidy: even spacing, printed or written; no word, figure or remark is touched."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

from plantframe.commands.asked import FINE, Refused, plan_argument
from plantframe.language.files import STANDARD_INPUT, plans_in
from plantframe.language.tidy import tidy

if TYPE_CHECKING:
    import argparse
    from datetime import date


def arguments(parser: argparse.ArgumentParser) -> None:
    """What it takes."""
    plan_argument(parser, "+")
    parser.add_argument(
        "--write", action="store_true", help="write the file instead of printing it"
    )


def run(given: argparse.Namespace, _today: date) -> int:
    """Tidy each plan; of a folder, every plan in it."""
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
