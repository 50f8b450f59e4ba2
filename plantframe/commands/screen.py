"""Writing to the screen: width, wrapping, and emphasis that never carries meaning alone."""

from __future__ import annotations

import os
import sys
import textwrap
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, TextIO

if TYPE_CHECKING:
    from collections.abc import Sequence

WIDEST = 96
NARROWEST = 40


@dataclass
class Screen:
    """Where an answer is written. `width` is in characters; `plain` has no emphasis."""

    out: TextIO = field(default_factory=lambda: sys.stdout)
    width: int = 80
    plain: bool = True

    @classmethod
    def of(cls, out: TextIO) -> Screen:
        """The screen as it is: plain and 80 wide where the output goes elsewhere."""
        if not out.isatty():
            return cls(out)
        import shutil  # brings every way to pack a file with it

        columns = shutil.get_terminal_size((80, 24)).columns
        plain = bool(os.environ.get("NO_COLOR")) or os.environ.get("TERM") == "dumb"
        return cls(out, max(NARROWEST, min(columns, WIDEST)), plain)

    def line(self, text: str = "") -> None:
        """One line as it is."""
        self.out.write(text.rstrip() + "\n")

    def strong(self, text: str) -> str:
        """Emphasised, where the screen can."""
        return text if self.plain else f"\033[1m{text}\033[0m"

    def heading(self, text: str) -> None:
        """A heading with an empty line before it."""
        self.line()
        self.line(self.strong(text))

    def wrapped(self, text: str, indent: str = "  ", hanging: str | None = None) -> None:
        """A paragraph, wrapped to the width."""
        for line in self._fold(text, indent, indent if hanging is None else hanging):
            self.line(line)

    def labelled(self, label: str, text: str, indent: str = "  ") -> None:
        """A label and a paragraph that hangs beside it."""
        first = f"{indent}{label}  "
        for line in self._fold(text, first, " " * len(first)):
            self.line(line)

    def ends(self, left: str, right: str) -> None:
        """Something at the left and something at the right of one line."""
        room = self.width - len(right) - 2
        if len(left) > room:
            left = left[: max(room - 1, 8)].rstrip() + "…"
        gap = max(self.width - len(left) - len(right), 2)
        self.line(f"{self.strong(left)}{' ' * gap}{right}")

    def _fold(self, text: str, first: str, rest: str) -> list[str]:
        return textwrap.wrap(
            text,
            self.width,
            initial_indent=first,
            subsequent_indent=rest,
            break_long_words=False,
            break_on_hyphens=False,
        ) or [first]


def table(rows: Sequence[tuple[str, ...]], heads: tuple[str, ...], screen: Screen) -> None:
    """A table, its last column wrapped to what room there is."""
    from tabulate import tabulate

    pad = 2 if any(heads) else 0  # what a heading has round it
    widths = [
        max([len(head) + pad, *(len(row[place]) for row in rows)])
        for place, head in enumerate(heads[:-1])
    ]
    room = max(screen.width - sum(widths) - 2 * len(heads), 20)
    folded = [(*row[:-1], textwrap.fill(row[-1], room, break_long_words=False)) for row in rows]
    text = tabulate(
        folded, headers=heads if any(heads) else (), tablefmt="plain", disable_numparse=True
    )
    for line in text.split("\n"):
        screen.line(line)
