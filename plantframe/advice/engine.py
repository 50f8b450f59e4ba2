"""Running the rules over a season, one after another; each rule is found by being in the folder."""

from __future__ import annotations

from functools import lru_cache
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING, Any

from plantframe.advice.findings import Found, Rule, severity
from plantframe.frozen import frozen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from plantframe.advice.findings import Finding
    from plantframe.season.season import Season

FOLDER = Path(__file__).parent / "rules"


@frozen
class Report:
    """What the rules found.

    found   every finding, before set-asides
    fine    the rules that looked at something and found nothing
    """

    found: tuple[Found, ...]
    fine: tuple[str, ...]


@lru_cache(maxsize=1)
def rules() -> tuple[Rule, ...]:
    """Every rule, by name."""
    found = []
    for file in sorted(FOLDER.glob("*.py")):
        if file.stem != "__init__":
            module = import_module(f"plantframe.advice.rules.{file.stem}")
            found.append(module.RULE)
    return tuple(sorted(found, key=lambda rule: rule.name))


def rule_named(name: str) -> Rule | None:
    """The rule of that name; an apostrophe may be left out."""
    return next((rule for rule in rules() if bare(rule.name) == bare(name)), None)


def bare(name: str) -> str:
    """A rule's name as it is compared: `won't-fold` and `wont-fold` are one."""
    return name.replace("'", "").replace("\u2019", "")


def cases_file(rule: Rule) -> Path:
    """The file of a rule's cases."""
    return FOLDER / f"{rule.name.replace('-', '_').replace(chr(39), '')}.yaml"


def run(season: Season) -> Report:
    """Ask every rule about everything it looks at."""
    found: list[Found] = []
    fine: list[str] = []
    for rule in rules():
        subjects = list(_subjects(rule, season))
        here = [Found(rule, one) for subject in subjects for one in _asked(rule, subject, season)]
        found += here
        if subjects and not here:
            fine.append(rule.name)
    return Report(tuple(sorted(_one_cause(found), key=order)), tuple(fine))


def _asked(rule: Rule, subject: Any, season: Season) -> tuple[Finding, ...]:
    """What a rule finds in a subject. A rule that looks at nothing else is asked once of each.

    While offers are tried, most frames are the very same in plan after plan.
    """
    kept: dict[str, Any] | None = getattr(subject, "kept", None) if rule.alone else None
    if kept is None:
        return tuple(rule.check(subject, season))
    if rule.name not in kept:
        kept[rule.name] = tuple(rule.check(subject, season))
    found: tuple[Finding, ...] = kept[rule.name]
    return found


def _subjects(rule: Rule, season: Season) -> Iterable[object]:
    if rule.looks_at == "frame":
        return season.frames.values()
    if rule.looks_at == "planting":
        return season.plantings
    if rule.looks_at == "bed":
        return season.plan.beds.values()
    if rule.looks_at == "thing":
        return season.plan.things.values()
    return (season,)


def order(found: Found) -> tuple[int, str, str, int, str, str]:
    """Worst first, then soonest, then as the plan runs."""
    finding = found.finding
    by = finding.by.isoformat() if finding.by else "9999"
    where = finding.where
    return -severity(finding.level), by, where.file, where.line, found.rule.name, finding.subject


# Where two rules can speak of one cause, the first speaks instead of the second.
INSTEAD = {
    ("needs-real-engineering", "too-heavy"),
    ("needs-real-engineering", "too-shallow-permanent"),
    ("sail-too-big", "too-shallow-seasonal"),
    ("heavy-lift", "needs-two"),
    ("nothing-to-hold", "support-too-fat"),
    ("frame-too-short-lived", "too-heavy"),
    ("won't-fold", "too-heavy"),
    ("won't-fold", "nothing-to-hold"),
    ("won't-fold", "support-too-fat"),
    ("vine-outgrows", "not-a-climber"),
    ("ends-unbraced", "wire-will-sag"),
    ("won't-fold", "frame-too-short-lived"),
}


def _one_cause(found: list[Found]) -> list[Found]:
    """One message for one cause."""
    names = {(one.rule.name, one.finding.block) for one in found}
    return [
        one
        for one in found
        if not any(
            (first, one.finding.block) in names
            for first, second in INSTEAD
            if second == one.rule.name
        )
    ]
