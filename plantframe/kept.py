"""What is kept between runs, in the user's own cache folder: only what can be worked out again.

Nothing here may ever cost an answer: a folder that cannot be written, a file that is old or
broken, all lead to the work being done anew.
"""

from __future__ import annotations

import binascii
import marshal
import os
import sys
from functools import lru_cache
from pathlib import Path

# Part of each kept file's name: to be raised when what is kept changes its form.
FORM = 2
MARK = 4  # bytes of the checksum a kept file begins with


@lru_cache(maxsize=1)
def folder() -> Path | None:
    """The program's folder among the user's caches, made if need be; None where none can be."""
    home = os.environ.get("XDG_CACHE_HOME")
    try:
        place = (Path(home) if home else Path.home() / ".cache") / "plantframe"
        place.mkdir(parents=True, exist_ok=True)
    except (OSError, RuntimeError):
        return None
    return place if os.access(place, os.W_OK) else None


def _file(path: Path, place: Path) -> tuple[str, Path] | None:
    """What tells this state of a file from any other, and where its reading is kept."""
    try:
        state = path.stat()
    except OSError:
        return None
    stamp = f"{path}:{state.st_size}:{state.st_mtime_ns}"
    form = f"{sys.implementation.cache_tag}-{FORM}"
    return stamp, place / f"{path.parent.name}-{path.stem}-{form}.kept"


def _mark(inside: bytes) -> bytes:
    """What shows a file that a full disk or a fall cut short: `marshal` must never meet one."""
    return binascii.crc32(inside).to_bytes(MARK, "big")


def read(path: Path) -> object | None:
    """What was kept of this file as it is now, or None."""
    place = folder()
    found = _file(path, place) if place is not None else None
    if found is None:
        return None
    stamp, kept = found
    try:
        whole = kept.read_bytes()
        if _mark(whole[MARK:]) != whole[:MARK]:
            return None
        pair = marshal.loads(whole[MARK:])  # noqa: S302 - the user's own cache folder
    except (OSError, ValueError, EOFError, TypeError):
        return None
    if not isinstance(pair, tuple) or len(pair) != 2 or pair[0] != stamp:
        return None
    value: object = pair[1]
    return value


def write(path: Path, value: object) -> None:
    """Keep what was read of this file, for as long as the file stays the same."""
    place = folder()
    found = _file(path, place) if place is not None else None
    if found is None:
        return
    stamp, kept = found
    fresh = kept.with_suffix(f".{os.getpid()}")
    try:
        inside = marshal.dumps((stamp, value))  # type: ignore[arg-type]
        fresh.write_bytes(_mark(inside) + inside)
        fresh.replace(kept)  # at once, so that nobody meets half a file
    except (OSError, ValueError):
        fresh.unlink(missing_ok=True)  # a value that cannot be kept is read again next time
