"""A finding is data: which rule, where, how bad, and what was measured. Words come after."""

from __future__ import annotations

from itertools import islice
from typing import TYPE_CHECKING, Any

from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable
    from datetime import date

    from plantframe.language.edits import Edit
    from plantframe.language.mistakes import Where
    from plantframe.mechanics.ranges import Range
    from plantframe.season.season import Season
    from plantframe.season.units import Shown

LEVELS = ("note", "ask", "warn", "stop")


def severity(level: str) -> int:
    """How grave a level is: the higher the graver."""
    return LEVELS.index(level)


@frozen
class Words:
    """A finding in words.

    says        what is so and by how much, the garden's noun first, then the figures
    if_ignored  what happens if it is left so
    told        for `why`: what the plan says of it
    assumed     what was taken for granted, "" for nothing
    sum         the working, or where the judgement comes from
    """

    says: str
    if_ignored: str = ""
    told: str = ""
    assumed: str = ""
    sum: str = ""


@frozen
class Finding:
    """What a rule found.

    level       stop, warn, note or ask
    where       the line it concerns
    block       the plan's own name for the thing
    facts       what was measured: the rule's own frozen value, worded by the rule's `words`
    subject     tells several findings of one rule in one block apart (a plant, a part)
    ratio       asked over carried, where the finding rests on one
    by          the day by which it wants settling, from the thing's own dates
    candidates  edits that may cure it, the best first, or what works them out: they are only
                asked for where the finding is shown, and each is tried before it is
    ways        what helps where no edit of the plan does: sentences
    """

    level: str
    where: Where
    block: str
    facts: Any
    subject: str = ""
    ratio: Range | None = None
    by: date | None = None
    candidates: tuple[Edit, ...] | Callable[[], Iterable[Edit]] = ()
    ways: tuple[str, ...] = ()


@frozen
class Rule:
    """A rule: its name (which reads after `ok`), what it looks at, and how it speaks.

    name        states the fault: "too-heavy"
    summary     one sentence: when it fires
    looks_at    "frame", "planting", "bed", "thing" or "season": what `check` is given
    levels      the levels it can speak at
    basis       published, common practice, estimate or sum
    source      the page or table it rests on, where published
    answered    "" where it may be set aside; else how it is answered instead
    answered_at the least level at which that is so: what the law asks, only where it asks it
    """

    name: str
    summary: str
    looks_at: str
    levels: tuple[str, ...]
    basis: str
    check: Callable[[Any, Season], Iterable[Finding]]
    words: Callable[[Any, Shown], Words]
    source: str = ""
    answered: str = ""
    answered_at: str = LEVELS[0]
    reviewed: str = ""

    @property
    def alone(self) -> bool:
        """It looks at its subject alone: its `check` calls the season it is given `_season`."""
        return self.check.__code__.co_varnames[1].startswith("_")


@frozen
class Found:
    """A finding with the rule that found it."""

    rule: Rule
    finding: Finding

    @property
    def key(self) -> tuple[str, str, str]:
        """What makes it the same finding in another version of the plan."""
        return self.rule.name, self.finding.block, self.finding.subject

    @property
    def level(self) -> str:
        """Its level."""
        return self.finding.level

    @property
    def answered(self) -> str:
        """How it is answered, where it cannot be set aside; else ""."""
        grave = severity(self.level) >= severity(self.rule.answered_at)
        return self.rule.answered if grave else ""

    def candidates(self, most: int) -> tuple[Edit, ...]:
        """The first of the edits that may cure it."""
        ways = self.finding.candidates
        return tuple(islice(ways() if callable(ways) else ways, most))

    @property
    def times(self) -> float | None:
        """How many times too much, where it rests on a ratio."""
        return self.finding.ratio.middle if self.finding.ratio else None

    def words(self, shown: Shown) -> Words:
        """It in words."""
        return self.rule.words(self.finding.facts, shown)


@frozen
class Checked:
    """What was looked for and not found, counted by rule."""

    fine: tuple[str, ...] = ()
