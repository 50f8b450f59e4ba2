"""Writing to the screen: width, wrapping, and emphasis that never carries meaning alone."""

from __future__ import annotations

import os
import re
import sys
import textwrap
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, TextIO

if TYPE_CHECKING:
    from collections.abc import Sequence

WIDEST = 96
NARROWEST = 40
BOLD, NOT_BOLD = "\033[1m", "\033[0m"

# Signs that steer a screen instead of standing on it: those of ISO/IEC 6429 (C0, DEL, C1) and the
# embeddings, overrides and isolates of Unicode Standard Annex 9, which turn a line about. JSON
# writes C0 by number of itself, so the others stand apart.
BEYOND_C0 = "\x7f-\x9f\u202a-\u202e\u2066-\u2069"
_STEERING = re.compile(f"[\x00-\x08\x0b-\x1f{BEYOND_C0}]")


def shown(text: str) -> str:
    """The text as it may go to a screen: a sign that would steer it has a visible stand-in."""
    return _STEERING.sub(_stand_in, text)


def _stand_in(sign: re.Match[str]) -> str:
    code = ord(sign[0])
    return chr(0x2400 + code) if code < 0x20 else "\u2421" if code == 0x7F else "\ufffd"


def beside(text: str) -> None:
    """Write a line beside the answer, where a file made of the answer does not get it."""
    sys.stderr.write(f"{shown(text)}\n")


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
        parts = re.split(r"(\033\[[01]m)", text.rstrip()) if not self.plain else [text.rstrip()]
        self.out.write("".join(p if p in {BOLD, NOT_BOLD} else shown(p) for p in parts) + "\n")

    def strong(self, text: str) -> str:
        """Emphasised, where the screen can."""
        return text if self.plain else f"{BOLD}{shown(text)}{NOT_BOLD}"

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
