"""Who is there to do a job, and who of them can: hands, lifts, saws and axes, days away."""

from __future__ import annotations

import re
from itertools import combinations
from typing import TYPE_CHECKING, Final

from plantframe.frozen import frozen
from plantframe.language.values import Word
from plantframe.mechanics.lifting import LOAD_CONSTANT_KG
from plantframe.season.work import day_in

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence
    from datetime import date

    from plantframe.jobs.job import Job
    from plantframe.plan.things import Garden, Person

# Where the plan names nobody, two share the garden, as most that grow on frames do (common
# practice, no source); they get no names.
NOBODY_NAMED: Final = ("one", "the other")
EDGED: Final = ("saw", "axe")


@frozen
class Hand:
    """One of those who work here.

    here      the days a helper is there, None for somebody who lives here
    away      days they are not
    lifts_kg  what they lift: their own figure, or the usual most
    with_     saw, axe: what the plan says is theirs; `without` what it says is not
    """

    name: str
    here: tuple[date, date] | None = None
    away: tuple[tuple[date, date], ...] = ()
    lifts_kg: float = LOAD_CONSTANT_KG
    with_: frozenset[str] = frozenset()
    without: frozenset[str] = frozenset()

    def is_there(self, day: date) -> bool:
        """Whether they are there on a day."""
        if self.here is not None and not self.here[0] <= day <= self.here[1]:
            return False
        return not any(first <= day <= last for first, last in self.away)


@frozen
class Crew:
    """Those who work in a garden. `named` where the plan names them."""

    hands: tuple[Hand, ...]
    named: bool

    def there(self, day: date) -> tuple[str, ...]:
        """The names of those who are there on a day."""
        return tuple(hand.name for hand in self.hands if hand.is_there(day))

    def able(self, job: Job) -> tuple[str, ...]:
        """Who can do a job: those the plan names for it, and with saw or axe whose they are."""
        own = {name.lower() for name in job.who}
        named = [hand for hand in self.hands if hand.name.lower() in own]
        if named and len(named) >= job.hands:
            return tuple(hand.name for hand in named)
        wanted = {tool for tool in EDGED if any(_is(tool, one) for one in job.tools)}
        # where several work together one saws, and the other holds
        alone = job.hands < 2 or not any(self._may(hand, wanted) for hand in self.hands)
        found = [
            hand for hand in self.hands if hand in named or not alone or self._may(hand, wanted)
        ]
        return tuple(hand.name for hand in found)

    def leading(self, job: Job) -> tuple[str, ...]:
        """Of those whom a job of several wants, the ones of whom one must be there: at the saw."""
        wanted = {tool for tool in EDGED if any(_is(tool, one) for one in job.tools)}
        if job.hands < 2 or not wanted:
            return ()
        return tuple(hand.name for hand in self.hands if self._may(hand, wanted))

    def _may(self, hand: Hand, tools: Iterable[str]) -> bool:
        """Whether the plan leaves them a saw and an axe, where the job wants one."""
        return all(
            tool in hand.with_
            or (tool not in hand.without and not any(tool in one.with_ for one in self.hands))
            for tool in tools
        )

    def lifting(self, names: Sequence[str], hands: int, weight_kg: float) -> tuple[str, ...]:
        """Of some names the first few that lift a weight between them; more where it is heavy.

        () where so many hands are not there. All of them where even they do not lift it: that is
        for the warnings to say.
        """
        if len(names) < hands:
            return ()
        if weight_kg <= 0:
            return tuple(names[:hands])
        lifts = {hand.name: hand.lifts_kg for hand in self.hands}
        for count in range(hands, len(names) + 1):
            for some in combinations(names, count):
                if sum(lifts[name] for name in some) >= weight_kg:
                    return some
        return tuple(names)


def crew_of(garden: Garden) -> Crew:
    """The people of a garden; two without names where it names nobody."""
    if not garden.people:
        away = _away(garden, "")
        return Crew(tuple(Hand(name, away=away) for name in NOBODY_NAMED), named=False)
    return Crew(tuple(_hand(person, garden) for person in garden.people), named=True)


def _hand(person: Person, garden: Garden) -> Hand:
    here = day_in(person.fact, "here", garden)
    said = {_plain(value) for value in person.fact.all("tools")}
    return Hand(
        person.name,
        (here.day, here.last) if here else None,
        _away(garden, person.name),
        person.lifts_kg if person.lifts_kg is not None else LOAD_CONSTANT_KG,
        frozenset(tool for tool in EDGED if tool in said),
        frozenset(tool for tool in EDGED if f"no {tool}" in said),
    )


def _plain(value: object) -> str:
    return (value.text if isinstance(value, Word) else str(value)).strip().lower()


def _away(garden: Garden, name: str) -> tuple[tuple[date, date], ...]:
    """The days somebody is away, and those when everybody is."""
    return tuple(
        (one.first, one.last)
        for one in garden.away
        if not one.who or one.who.lower() == name.lower()
    )


def _is(tool: str, words: str) -> bool:
    """Whether a tool's name is a saw or an axe: `hand saw` is, a `borer` is not."""
    return re.search(rf"\b{tool}s?\b", words.lower()) is not None
