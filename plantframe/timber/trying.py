"""Trying sets of boards: whether the pieces can be cut from them, at a first look and at a closer.

What may be spent on it is counted in steps, never in seconds: the same list is always cut alike.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.timber.deciding import margin, told
from plantframe.timber.diving import dive
from plantframe.timber.patterns import Patterns

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Sequence

    from plantframe.timber.bounds import Named
    from plantframe.timber.sawing import Pattern, Sawing

TURNS: Final = 1  # dives at a first look
MORE_TURNS: Final = 6  # and in all, where it stays open whether these boards give the pieces
PURSE: Final = 1600  # linear programs that all dives together may solve
MOST: Final = (2000, 8000)  # ways to cut that are listed, at a first look and at a closer
WORK: Final = (20_000, 120_000)  # branches times ways, likewise


@frozen
class Trial:
    """Boards of which it stays open whether they give the pieces, and ways to cut them."""

    named: Named
    patterns: Patterns


class Trials:
    """All that was tried. `keep` is told the sticks of every cutting found, or most of one.

    patterns  all ways known; it gains more. Of the boards that are tried it must know ways by which
              they would do, were sticks cut in fractions (`missing` finds them)
    """

    def __init__(
        self, sawing: Sawing, patterns: Patterns, keep: Callable[[Sequence[Pattern]], None]
    ) -> None:
        self.sawing = sawing
        self.patterns = patterns
        self.keep = keep
        self.purse = PURSE
        self.open: list[Trial] = []

    def gives(self, named: Named) -> bool:
        """A first look at these boards; they join the open ones where that does not tell."""
        around = margin(self.sawing, self.patterns, named.numbers)
        few = Patterns(self.sawing)
        few.add(way for way in self.patterns.ways if around is None or around.may(way))
        trial = Trial(named, few)
        if self._dived(trial, range(TURNS)):
            return True
        gives = self._told(trial, closer=False)
        if gives is None:
            self.open.append(trial)
        return bool(gives)

    def closer(self, trial: Trial) -> bool | None:
        """A closer look: whether these boards give the pieces; None where that stays open."""
        if self._dived(trial, range(TURNS, MORE_TURNS)):
            return True
        return self._told(trial, closer=True)

    def likely(self, named: Named) -> bool:
        """One dive from these boards, whatever the purse says; whether that gave the pieces."""
        sticks = dive(self.sawing, self.patterns, named.numbers, 0)
        if sticks:
            self.keep(sticks)
        return bool(sticks)

    def _dived(self, trial: Trial, turns: Iterable[int]) -> bool:
        """Settle sticks, so often as the purse still allows."""
        for turn in turns:
            if self.purse <= 0:
                break
            before = trial.patterns.solved
            sticks = dive(self.sawing, trial.patterns, trial.named.numbers, turn)
            self.purse -= trial.patterns.solved - before
            if sticks:
                self.keep(sticks)
                return True
        return False

    def _told(self, trial: Trial, *, closer: bool) -> bool | None:
        """List every way that may take part, and search."""
        around = margin(self.sawing, self.patterns, trial.named.numbers)
        ways = None if around is None else around.ways(self.sawing, MOST[closer])
        if ways is None:
            return None
        trial.patterns.add(ways)
        verdict = told(self.sawing, ways, WORK[closer], trial.named.numbers)
        if verdict.sticks:
            self.keep(verdict.sticks)
        return verdict.gives
