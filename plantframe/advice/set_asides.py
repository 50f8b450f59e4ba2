"""Warnings set aside with a reason: which sleep, which have woken, which say nothing now."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plantframe.advice.engine import bare, rule_named, rules
from plantframe.advice.findings import LEVELS, Found, severity
from plantframe.frozen import frozen
from plantframe.language.mistakes import Mistake
from plantframe.language.reader import nearest

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from plantframe.plan.things import Bed, Frame, Plan, SetAside, Thing
    from plantframe.season.season import Season

# A cause has clearly worsened when it is a quarter more than what was accepted.
WORSE = 1.25


@frozen
class Aside:
    """A finding that is set aside, and by what words."""

    found: Found
    by: SetAside


@frozen
class Woken:
    """A finding that was set aside and has grown worse since, or whose time has run out."""

    found: Found
    by: SetAside
    why: str


@frozen
class Settled:
    """Findings after set-asides."""

    active: tuple[Found, ...]
    aside: tuple[Aside, ...]
    woken: tuple[Woken, ...]
    mistakes: tuple[Mistake, ...]


def settle(
    found: Iterable[Found],
    season: Season,
    before: Callable[[SetAside, str], tuple[float | None, str] | None] | None = None,
) -> Settled:
    """Put aside what the plan sets aside.

    before   how bad a rule's finding in a block was when it was accepted (times, level), asked
             only where the set-aside does not say; None where nobody can know
    """
    active: list[Found] = []
    aside: list[Aside] = []
    woken: list[Woken] = []
    used: set[int] = set()
    refused: set[int] = set()
    sets = [(name, one) for name, ones in _by_block(season.plan) for one in ones]
    for one in found:
        place = next(
            (
                place
                for place, (block, by) in enumerate(sets)
                if bare(by.rule) == bare(one.rule.name) and block in {one.finding.block, ""}
            ),
            None,
        )
        if place is None:
            active.append(one)
            continue
        block, by = sets[place]
        used.add(place)
        if one.answered:
            refused.add(place)
            active.append(one)
            continue
        why = _woken(one, by, season, before, block)
        if why:
            active.append(one)
            woken.append(Woken(one, by, why))
        else:
            aside.append(Aside(one, by))
    mistakes = _mistakes(sets, used, refused, season)
    return Settled(tuple(active), tuple(aside), tuple(woken), mistakes)


def _by_block(plan: Plan) -> list[tuple[str, tuple[SetAside, ...]]]:
    holders: tuple[Frame | Bed | Thing, ...] = (
        *plan.frames.values(),
        *plan.beds.values(),
        *plan.things.values(),
    )
    own = [(holder.name, holder.set_asides) for holder in holders]
    return [*own, ("", plan.garden.set_asides)]


def _woken(
    found: Found,
    by: SetAside,
    season: Season,
    before: Callable[[SetAside, str], tuple[float | None, str] | None] | None,
    block: str,
) -> str:
    """Why it speaks again, or nothing."""
    if by.until is not None and season.today > by.until.last:
        return f"set aside until {by.until.said} only"
    times, level = by.times, by.level
    if times is None and level not in LEVELS and before is not None:
        known = before(by, block)
        if known is not None:
            times, level = known
    now = found.times
    if times is not None and now is not None:
        if now > times * WORSE:
            return f"it was about {times:.2g} times when set aside, and is {now:.2g} now"
        return ""
    if level in LEVELS and severity(found.level) > severity(level):
        return f"it was a {level} when set aside, and is a {found.level} now"
    return ""


def _all_read(plan: Plan, block: str) -> bool:
    """Every fact of the block was understood: a warning may sleep behind one that was not."""
    holder = plan.named(block)
    return holder is None or all(fact.whole for fact in holder.block.facts if fact.word != "ok")


def _mistakes(
    sets: list[tuple[str, SetAside]], used: set[int], refused: set[int], season: Season
) -> tuple[Mistake, ...]:
    out = []
    for place, (block, by) in enumerate(sets):
        rule = rule_named(by.rule)
        where = by.fact.where
        if rule is None:
            near = nearest(by.rule, [one.name for one in rules()])
            told = {"rule": by.rule, "near": ", ".join(near)}
            out.append(Mistake("unknown-rule", where, told))
        elif place in refused or (rule.answered and rule.answered_at == LEVELS[0]):
            told = {"rule": by.rule, "answer": rule.answered}
            out.append(Mistake("not-set-aside", where, told))
        elif place not in used and _all_read(season.plan, block):
            told = {"rule": by.rule, "name": block or "the garden"}
            out.append(Mistake("nothing-to-set-aside", where, told))
    return tuple(out)
