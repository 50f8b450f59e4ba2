"""Finding and reading the files of a plan: one file, a folder, what `read` brings in."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import lru_cache
from pathlib import Path
from typing import TYPE_CHECKING

from plantframe.frozen import frozen
from plantframe.language.mistakes import Mistake, Where
from plantframe.language.near import nearest
from plantframe.language.reader import FILE_CAP, Block, Text, read_text

if TYPE_CHECKING:
    from collections.abc import Mapping

DEPTH_CAP = 8
SUFFIX = ".plan"
STANDARD_INPUT = "-"
_TWO_BYTE_MARKS = (b"\xff\xfe", b"\xfe\xff")  # how UTF-16 and UTF-32 files begin


class NoSuchPlan(Exception):  # noqa: N818 - what it says, not how it is handled
    """The plan asked for is not there; the message is one plain sentence."""


@frozen
class Reading:
    """A plan's files as read, before anything is made of them.

    name      what the plan is called: its file's name without the ending, or the folder's
    main      the file the plan was asked for by
    texts     this season's files, the main one first
    history   files brought in with `as last year`
    sources   file name -> text, of every file read
    mistakes  slips of finding and reading files
    """

    name: str
    main: str
    texts: tuple[Text, ...]
    history: tuple[Text, ...]
    sources: Mapping[str, str]
    mistakes: tuple[Mistake, ...] = ()

    @property
    def blocks(self) -> tuple[Block, ...]:
        """Every block of the season, file after file."""
        return tuple(block for text in self.texts for block in text.blocks)


@dataclass(slots=True)
class _Gathering:
    folder: Path
    root: Path
    overlay: Mapping[str, str]
    texts: list[Text] = field(default_factory=list)
    history: list[Text] = field(default_factory=list)
    sources: dict[str, str] = field(default_factory=dict)
    mistakes: list[Mistake] = field(default_factory=list)


@lru_cache(maxsize=64)
def _read_cached(text: str, file: str) -> Text:
    return read_text(text, file)


def plans_in(path: str) -> list[Path]:
    """The plans a command is asked about.

    That is the file itself, or each plan in a folder that no other file there reads.
    Raises NoSuchPlan where there is none.
    """
    given = Path(path)
    if given.is_dir():
        files = sorted(file for file in given.glob(f"*{SUFFIX}") if file.is_file())
        if not files:
            msg = f"there is no plan (a file named something{SUFFIX}) in the folder {path}."
            raise NoSuchPlan(msg)
        read = {other for file in files for other in _read_by(file)}
        tops = [file for file in files if file.resolve() not in read]
        return tops or files[-1:]
    if given.is_file():
        return [given]
    beside = Path(f"{path}{SUFFIX}")
    if beside.is_file():
        return [beside]
    folder = given.parent
    near = ""
    if folder.is_dir():
        found = nearest(given.name, [file.name for file in folder.glob(f"*{SUFFIX}")])
        near = f" Nearest: {', '.join(found)}." if found else ""
    msg = f"there is no plan {path}.{near}"
    raise NoSuchPlan(msg)


def _read_by(file: Path) -> set[Path]:
    """The files that a plan brings in itself."""
    try:
        imports = _read_cached(_decode(file), file.name).imports
    except NoSuchPlan:
        return set()
    found = set()
    for wanted in imports:
        try:
            found.add(_with_ending(file.parent / wanted.name).resolve())
        except (OSError, ValueError, RuntimeError):
            continue
    return found


def _with_ending(path: Path) -> Path:
    return path if path.name.endswith(SUFFIX) else path.with_name(path.name + SUFFIX)


def read_plan(path: str | Path, overlay: Mapping[str, str] | None = None) -> Reading:
    """Read a plan and all it brings in.

    path      the plan's file
    overlay   file name -> text, used instead of what is on the disk (an edit being tried)
    Raises NoSuchPlan where the file cannot be read at all.
    """
    file = Path(path)
    folder = file.parent
    gathering = _Gathering(folder, _root(folder), overlay or {})
    _gather(file, gathering, (), history=False, asked=None)
    return _finished(file.stem, file.name, gathering)


def read_input(text: str, overlay: Mapping[str, str] | None = None) -> Reading:
    """Read a plan that was given as text, as on standard input."""
    folder = Path.cwd()
    gathering = _Gathering(folder, _root(folder), overlay or {})
    name = "standard input"
    text = gathering.overlay.get(name, text)
    gathering.sources[name] = text
    one = _read_cached(text, name)
    gathering.texts.append(one)
    for wanted in one.imports:
        _follow(wanted.name, wanted.where, folder, gathering, (), history=wanted.history)
    return _finished(name, name, gathering)


def _finished(name: str, main: str, gathering: _Gathering) -> Reading:
    mistakes = [slip for text in (*gathering.texts, *gathering.history) for slip in text.mistakes]
    return Reading(
        name,
        main,
        tuple(gathering.texts),
        tuple(gathering.history),
        gathering.sources,
        (*gathering.mistakes, *mistakes),
    )


def _gather(
    file: Path,
    gathering: _Gathering,
    above: tuple[Path, ...],
    *,
    history: bool,
    asked: Where | None,
) -> None:
    name = _shown(file, gathering.folder)
    if name in gathering.overlay:
        source = gathering.overlay[name]
    else:
        try:
            source = _decode(file)
        except NoSuchPlan as error:
            if asked is None:
                raise
            gathering.mistakes.append(Mistake("read-unread", asked, {"says": str(error)}))
            return
    gathering.sources[name] = source
    text = _read_cached(source, name)
    (gathering.history if history else gathering.texts).append(text)
    for wanted in text.imports:
        _follow(
            wanted.name,
            wanted.where,
            file.parent,
            gathering,
            (*above, file.resolve()),
            history=history or wanted.history,
        )


def _follow(
    name: str,
    where: Where,
    beside: Path,
    gathering: _Gathering,
    above: tuple[Path, ...],
    *,
    history: bool,
) -> None:
    """Bring in what a `read` line names, or say why not."""
    try:
        target = beside / (name if name.endswith(SUFFIX) else name + SUFFIX)
        resolved = target.resolve()
    except (OSError, ValueError, RuntimeError):
        told = {"name": name[:60], "near": ""}
        gathering.mistakes.append(Mistake("read-missing", where, told))
        return
    if not resolved.is_relative_to(gathering.root.resolve()):
        told = {"name": name[:60], "root": f"the folder {gathering.root.resolve().name}"}
        gathering.mistakes.append(Mistake("read-climbs", where, told))
    elif resolved in above:
        circle = " → ".join(
            [*(path.stem for path in above[above.index(resolved) :]), resolved.stem]
        )
        gathering.mistakes.append(Mistake("read-cycle", where, {"circle": circle}))
    elif len(above) >= DEPTH_CAP:
        gathering.mistakes.append(Mistake("read-too-deep", where, {"cap": str(DEPTH_CAP)}))
    elif not _is_file(target) and _shown(target, gathering.folder) not in gathering.overlay:
        near = nearest(name, [file.stem for file in beside.glob(f"*{SUFFIX}")])
        told = {"name": name[:60], "near": ", ".join(near)}
        gathering.mistakes.append(Mistake("read-missing", where, told))
    elif _shown(target, gathering.folder) not in gathering.sources:
        _gather(target, gathering, above, history=history, asked=where)


def _is_file(path: Path) -> bool:
    try:
        return path.is_file()
    except (OSError, ValueError):
        return False


def _decode(file: Path) -> str:
    try:
        if file.stat().st_size > FILE_CAP * 4:
            size = f"{file.stat().st_size // 1_000_000} million bytes"
            msg = f"{file.name} holds {size}; {FILE_CAP:,} characters is the most I read."
            raise NoSuchPlan(msg)
        found = file.read_bytes()
    except OSError as error:
        reason = error.strerror or "it cannot be opened"
        msg = f"the plan {file} cannot be read: {reason.lower()}."
        raise NoSuchPlan(msg) from None
    if found.startswith(_TWO_BYTE_MARKS):
        msg = f"{file.name} is saved in letters of two bytes; save it as UTF-8, and I can read it."
        raise NoSuchPlan(msg)
    # what is not UTF-8 becomes U+FFFD, and the reader says which line holds it
    return found.decode("utf-8", errors="replace")


def _shown(file: Path, folder: Path) -> str:
    """The file's name as messages give it: seen from the plan's own folder."""
    try:
        return str(file.relative_to(folder))
    except ValueError:
        return str(file)


def _root(folder: Path) -> Path:
    """The repository that holds the folder, or the folder itself."""
    resolved = folder.resolve()
    for place in (resolved, *resolved.parents):
        if (place / ".git").exists():
            return place
    return resolved
