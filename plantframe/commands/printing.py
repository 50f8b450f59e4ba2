"""Where prints go: into the folder that the gardener names, and which paper they are for."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from plantframe.commands.asked import Refused

if TYPE_CHECKING:
    import argparse
    from collections.abc import Iterable

    from plantframe.paper.layout import Paper


def paper_arguments(parser: argparse.ArgumentParser) -> None:
    """The paper and the type, for what is printed in pages."""
    parser.add_argument("--letter", action="store_true", help="for letter paper instead of A4")
    parser.add_argument("--large", action="store_true", help="in large type")
    parser.add_argument("--to", metavar="FOLDER", help="write there instead of printing here")


def paper_of(given: argparse.Namespace) -> Paper:
    """The paper that was asked for."""
    from plantframe.paper.layout import A4, LETTER

    return LETTER if given.letter else A4


def write_files(folder: str, files: Iterable[tuple[str, str]]) -> None:
    """Write files and say which."""
    from plantframe.paper.files import NotWrittenError, write_all

    try:
        written = write_all(Path(folder), files)
    except NotWrittenError as error:
        raise Refused(str(error)) from None
    for path in written:
        print(path)
