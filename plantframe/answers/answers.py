"""Answers: a plan read, built, worked out and advised on, each step on demand and once."""

from __future__ import annotations

from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING

from plantframe.advice import engine, set_asides
from plantframe.frozen import frozen, replace
from plantframe.language.edits import Edit, EditClash, LineChange, apply
from plantframe.language.files import Reading, read_input, read_plan
from plantframe.plan.building import build
from plantframe.season.season import Season
from plantframe.season.units import Shown

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import date

    from plantframe.advice.engine import Report
    from plantframe.advice.set_asides import Settled
    from plantframe.language.mistakes import Mistake
    from plantframe.plan.things import Plan

_NOTHING: dict[str, str] = {}


@frozen
class Source:
    """Where a plan's text comes from: a file, or a text given as it is (`path` None)."""

    path: Path | None
    text: str = ""

    def read(self, overlay: Mapping[str, str]) -> Reading:
        """Read it, taking the texts of `overlay` for the files they name."""
        if self.path is None:
            return read_input(self.text, overlay)
        return read_plan(self.path, overlay)


@frozen
class Answers:
    """A plan's answers on a day.

    overlay   texts of files that stand in for what is on the disk: an edit being tried
    before    the answers that the edit was made to
    """

    source: Source
    today: date
    overlay: tuple[tuple[str, str], ...] = ()
    before: Answers | None = None

    @cached_property
    def reading(self) -> Reading:
        """The files as read."""
        return self.source.read(dict(self.overlay))

    @cached_property
    def _built(self) -> tuple[Plan, tuple[Mistake, ...]]:
        return build(self.reading, self.today)

    @property
    def plan(self) -> Plan:
        """The plan."""
        return self._built[0]

    @cached_property
    def season(self) -> Season:
        """The plan worked out."""
        return Season(self.plan, self.today, self.before.season if self.before else None)

    @cached_property
    def report(self) -> Report:
        """What the rules found."""
        return engine.run(self.season)

    @cached_property
    def advice(self) -> Settled:
        """The findings, less what is set aside."""
        from plantframe.answers.earlier import accepted_at

        return set_asides.settle(self.report.found, self.season, accepted_at(self))

    @cached_property
    def mistakes(self) -> tuple[Mistake, ...]:
        """Every slip in the text, in the order of the files and lines."""
        everything = (*self.reading.mistakes, *self._built[1], *self.advice.mistakes)
        files = {text.file: place for place, text in enumerate(self.reading.texts)}
        return tuple(
            sorted(
                everything,
                key=lambda slip: (
                    files.get(slip.where.file, len(files)),
                    slip.where.line,
                    slip.where.column,
                    slip.name,
                ),
            )
        )

    @property
    def shown(self) -> Shown:
        """How figures are written for this plan."""
        return Shown(self.plan.garden.imperial)

    @property
    def stops(self) -> bool:
        """Something reaches STOP, or a line could not be read."""
        return any(one.level == "stop" for one in self.advice.active) or any(
            slip.level == "stop" or slip.unread for slip in self.mistakes
        )

    def edited(self, edit: Edit) -> Answers:
        """The answers as they would be with an edit made; the files stay as they are.

        Raises EditClash where the edit does not fit the text.
        """
        texts = apply(edit, self.reading.sources)
        changed = {
            file: text for file, text in texts.items() if text != self.reading.sources.get(file)
        }
        overlay = tuple({**dict(self.overlay), **changed}.items())
        return Answers(self.source, self.today, overlay, self)

    def tried(self, edit: Edit) -> Answers | None:
        """The answers with an edit made, worked out once; None where it does not fit the text."""
        if edit not in self._tries:
            try:
                self._tries[edit] = self.edited(steady(edit, self.reading.sources))
            except EditClash:
                self._tries[edit] = None
        return self._tries[edit]

    @cached_property
    def _tries(self) -> dict[Edit, Answers | None]:
        return {}


def steady(edit: Edit, texts: Mapping[str, str]) -> Edit:
    """An edit with the same meaning that leaves most lines at their numbers.

    While it is tried a line taken out leaves a blank one, and a line put in takes the place of the
    next blank one: what follows stands where it stood, and need not be read and worked out again.
    """
    changes: list[LineChange] = []
    taken: set[tuple[str, int]] = {(change.file, change.line) for change in edit.changes}
    for change in edit.changes:
        if change.old is not None:
            changes.append(replace(change, new=change.new or ""))
            continue
        changes.append(change)
        lines = texts.get(change.file, "").split("\n")
        for number in range(change.line + 1, len(lines)):  # never the end of the last line
            line = lines[number - 1].rstrip("\r")
            if not line.strip() and (change.file, number) not in taken:
                taken.add((change.file, number))
                changes.append(LineChange(change.file, number, line, None))
                break
    return replace(edit, changes=tuple(changes))


def answers_of(path: str | Path, today: date) -> Answers:
    """The answers of a plan file."""
    return Answers(Source(Path(path)), today)


def answers_to(text: str, today: date) -> Answers:
    """The answers of a plan given as text."""
    return Answers(Source(None, text), today)
