"""The jobs of a plan while they are gathered, each under an address of its own."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from plantframe.frozen import replace
from plantframe.jobs.job import Before, Draft

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.language.mistakes import Mistake


@dataclass(slots=True)
class Drafts:
    """Jobs by their id in the order of the plan, what goes before what, and slips of wording."""

    by_id: dict[str, Draft] = field(default_factory=dict)
    befores: list[Before] = field(default_factory=list)
    mistakes: list[Mistake] = field(default_factory=list)

    def add(self, draft: Draft) -> str:
        """Take a job in; a second of the same address gets a number. Returns its id."""
        name, count = draft.id, 1
        while name in self.by_id:
            count += 1
            name = f"{draft.id}-{count}"
        self.by_id[name] = replace(draft, job=replace(draft.job, id=name))
        return name

    def put(
        self,
        firsts: Iterable[str],
        thens: Iterable[str],
        *,
        wait: tuple[int, int] = (0, 0),
        waits_for: str = "",
        because: str = "",
    ) -> None:
        """Put each of some jobs before each of others."""
        thens = tuple(thens)
        self.befores += [
            Before(first, then, wait, waits_for, because)
            for first in firsts
            for then in thens
            if first != then
        ]

    def of_block(self, name: str) -> list[Draft]:
        """The jobs of one block."""
        return [draft for draft in self.by_id.values() if draft.job.block == name]

    def change(self, name: str, **changes: object) -> None:
        """Change a draft's own fields."""
        self.by_id[name] = replace(self.by_id[name], **changes)
