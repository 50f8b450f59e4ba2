"""Writing prints into the folder the gardener names, over nothing but prints of our own."""

from __future__ import annotations

import os
import tempfile
from pathlib import Path
from typing import TYPE_CHECKING, Final

from plantframe.paper.drawing import MADE_BY
from plantframe.season.likeness import slug

if TYPE_CHECKING:
    from collections.abc import Iterable

OURS: Final = MADE_BY.encode("utf-8")
LOOKED_AT: Final = 400  # bytes at the head of a file in which our mark stands
LONGEST_NAME: Final = 60


class NotWrittenError(Exception):
    """A file cannot be written; the message is one plain sentence."""


class Names:
    """File names made of the names of things: letters, figures and hyphens, each once."""

    def __init__(self) -> None:
        self._taken: set[str] = set()

    def of(self, *parts: str, ending: str) -> str:
        """A name for a file; one that is taken already gets a number."""
        words = [made for part in parts if (made := slug(part)[:LONGEST_NAME].strip("-"))]
        stem = "-".join(words) or "print"
        name, count = stem, 1
        while name in self._taken:
            count += 1
            name = f"{stem}-{count}"
        self._taken.add(name)
        return f"{name}.{ending}"


def write_all(folder: Path, files: Iterable[tuple[str, str]]) -> list[Path]:
    """Write files into a folder, which is made if need be; all of them, or none.

    Raises NotWrittenError where one of the names is a file that somebody else made.
    """
    wanted = [(folder / name, text) for name, text in files]
    try:
        if folder.exists() and not folder.is_dir():
            raise NotWrittenError(f"{folder} is a file; name a folder to print into.")
        for path, _ in wanted:
            if not _may_be_written(path):
                raise NotWrittenError(
                    f"{path} is there already and no print of mine; move it, or name another "
                    "folder."
                )
        folder.mkdir(parents=True, exist_ok=True)
        for path, text in wanted:
            _write(path, text)
    except OSError as error:
        reason = (error.strerror or "it cannot be opened").lower()
        raise NotWrittenError(f"{error.filename or folder} cannot be written: {reason}.") from None
    return [path for path, _ in wanted]


def _may_be_written(path: Path) -> bool:
    """Whether nothing is there, or a print of ours; a link may lead anywhere."""
    if path.is_symlink():
        return False
    if not path.exists():
        return True
    if not path.is_file():
        return False
    with path.open("rb") as file:
        return OURS in file.read(LOOKED_AT)


def _write(path: Path, text: str) -> None:
    """Put a whole file in place at once, so that nobody meets half of one."""
    handle, name = tempfile.mkstemp(dir=path.parent, prefix=".", suffix=".part")
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(text.encode("utf-8", errors="replace"))
        Path(name).chmod(0o644)
        Path(name).replace(path)
    except OSError:
        Path(name).unlink(missing_ok=True)
        raise
